//! How to cut: with what, from where, how long a stub.

use crate::cautions::skirt;
use crate::plan::{Method, Stand, Tool};
use crate::rules::stub;
use crate::sight::Sight;
use model::{Finding, Metres};

/// Crown bases up to this height are within hand's reach from the ground (assumed).
pub const HAND_REACH: Metres = Metres(2.0);
/// Crown bases up to this height are within a pole's reach from the ground (assumed).
pub const POLE_REACH: Metres = Metres(5.0);

/// The method, with the findings of the method rules.
pub fn method(sight: &Sight, findings: Vec<Finding>) -> Method {
    Method {
        stub: stub::length(sight),
        tool: if sight.crownshaft() {
            Tool::Hand
        } else {
            Tool::Saw
        },
        stand: stand(sight),
        findings,
    }
}

/// Where the cutter stands.
pub fn stand(sight: &Sight) -> Stand {
    if skirt::hangs(sight) {
        return Stand::LiftFromAbove;
    }
    match sight.palm.trunk_height {
        None => Stand::Unknown,
        Some(h) if h <= HAND_REACH => Stand::Ground,
        Some(h) if h <= POLE_REACH => Stand::GroundWithPole,
        Some(_) => Stand::Lift,
    }
}

#[cfg(test)]
mod tests {
    use crate::plan::{Stand, Tool};
    use crate::scene::Scene;
    use model::Metres;

    #[test]
    fn the_stand_follows_height_and_skirt() {
        let mut scene = Scene::full("Washingtonia robusta");
        for (height, brown, stand) in [
            (None, 3, Stand::Unknown),
            (Some(1.0), 3, Stand::Ground),
            (Some(5.0), 3, Stand::GroundWithPole),
            (Some(5.1), 3, Stand::Lift),
            (Some(1.0), 30, Stand::LiftFromAbove),
        ] {
            scene.palm.trunk_height = height.map(Metres);
            scene.crown.brown = brown;
            assert_eq!(
                super::stand(&scene.sight()),
                stand,
                "{height:?} m, {brown} dead"
            );
        }
    }

    #[test]
    fn a_crownshaft_palm_needs_no_blade() {
        let method = super::method(&Scene::full("Roystonea regia").sight(), Vec::new());
        assert_eq!((method.tool, method.stub), (Tool::Hand, None));
    }
}
