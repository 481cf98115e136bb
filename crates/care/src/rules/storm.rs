//! No thinning ahead of a storm.
//!
//! Says: no live frond goes; dead and loose ones may.
//! Source: [no_prestorm_cut]; coconuts cut hard five weeks before a hurricane had no vigorous leaf after it, unpruned
//! ones a block away were hardly hurt [storm_coconut_pair]; pruned oil palms broke more [oilpalm_crown_fracture].
//! Would change it: nothing known.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const STORM: Say = Say::new("storm-no-thinning", Severity::Refuse).on(&[
    "no_prestorm_cut",
    "storm_coconut_pair",
    "oilpalm_crown_fracture",
]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "storm",
    part: Part::Take,
    says: &[STORM],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if !sight.grounds.storm_expected {
        return Spoken::silent();
    }
    Spoken::limit(
        sight.say(&STORM),
        Limit {
            live: Some(0),
            yellowing_stay: true,
            dead_stay: false,
        },
    )
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes, limit};

    #[test]
    fn a_storm_stops_live_cuts_only() {
        let mut scene = Scene::full("Cocos nucifera");
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.grounds.storm_expected = true;
        assert_eq!(codes(&super::RULE, &scene), ["storm-no-thinning"]);
        assert!(
            limit(&super::RULE, &scene).live == Some(0) && !limit(&super::RULE, &scene).dead_stay
        );
    }
}
