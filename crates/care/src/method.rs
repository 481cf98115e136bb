//! How to cut: with what, from where, how long a stub.

use crate::cautions::skirt;
use crate::plan::{Method, Stand, Tool};
use crate::reach::{HAND_REACH, pole_top};
use crate::rules::stub;
use crate::sight::Sight;
use model::Finding;

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

/// Where the cutter stands, with whatever tool of the table it takes: hands reach 8 ft and a pole 21 to 22 ft (common
/// practice, no source). [`crate::reach`] says with which tool and where.
pub fn stand(sight: &Sight) -> Stand {
    if skirt::hangs(sight) {
        return Stand::LiftFromAbove;
    }
    match sight.palm.trunk_height {
        None => Stand::Unknown,
        Some(h) if h <= HAND_REACH => Stand::Ground,
        Some(h) if h <= pole_top(sight.knowledge) => Stand::GroundWithPole,
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
            (Some(2.4), 3, Stand::Ground),
            (Some(2.5), 3, Stand::GroundWithPole),
            (Some(6.5), 3, Stand::GroundWithPole),
            (Some(6.6), 3, Stand::Lift),
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
