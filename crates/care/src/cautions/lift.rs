//! Caution: working from a lift.
//!
//! Says: harness and lanyard on the boom's own anchor, never on the palm; the machine's plate sets the wind limit,
//! commonly 12.5 m/s (28 mph) for outdoor machines, none for indoor ones; no single federal figure binds.
//! Speaks where the crown is out of a pole's reach, where a skirt hangs, or where the trunk's height is unknown.
//! Source: [lift_tie_off] (clauses from memory), [lift_wind_rating], [lift_wind_rating_si], [lift_wind_osha].
//! Would change it: the machine's own manual.

use crate::method::stand;
use crate::plan::Stand;
use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const LIFT: Say = Say::new("caution-lift", Severity::Caution).on(&[
    "lift_tie_off",
    "lift_wind_rating",
    "lift_wind_rating_si",
    "lift_wind_osha",
    "defer_all",
]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "lift",
    part: Part::Caution,
    says: &[LIFT],
    check,
};

fn check(sight: &Sight) -> Spoken {
    match stand(sight) {
        Stand::Lift | Stand::LiftFromAbove | Stand::Unknown => Spoken::note(sight.say(&LIFT)),
        Stand::Ground | Stand::GroundWithPole => Spoken::silent(),
    }
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};
    use model::Metres;

    #[test]
    fn a_lift_is_minded_where_one_may_be_needed() {
        let mut scene = Scene::full("Sabal palmetto");
        for (height, said) in [
            (Some(4.0), &[][..]),
            (Some(9.0), &["caution-lift"]),
            (None, &["caution-lift"]),
        ] {
            scene.palm.trunk_height = height.map(Metres);
            assert_eq!(codes(&super::RULE, &scene), said, "{height:?}");
        }
    }
}
