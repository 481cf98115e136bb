//! A cut that is not needed is better not made.
//!
//! Says: where less than half the full crown is green, or where nothing is dead, skip the visit.
//! Source: few green fronds as a reason to skip a visit are common practice, no source [low_green_count_check]; half
//! the number is what many landscape palms carry [typical_crown_deficit]; the share itself is assumed.
//! Would change it: a hazard, such as a loose frond over a path.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const TOO_FEW: Say = Say::new("skip-too-few-green", Severity::Act)
    .on(&["low_green_count_check", "typical_crown_deficit"])
    .practice();
const NOTHING_DEAD: Say = Say::new("skip-nothing-dead", Severity::Info).practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "skip_visit",
    part: Part::Take,
    says: &[TOO_FEW, NOTHING_DEAD],
    check,
};

/// Below this share of the full number in green fronds a visit is better skipped (assumed).
const TOO_FEW_BELOW: f64 = 0.5;

fn check(sight: &Sight) -> Spoken {
    let crown = &sight.crown;
    let mut spoken = Spoken::silent();
    if f64::from(crown.green) < TOO_FEW_BELOW * crown.full_crown {
        let full = crown.full_crown.round() as i64;
        let finding = sight
            .say(&TOO_FEW)
            .with("green", Arg::Count(crown.green.into()))
            .with("full", Arg::Count(full));
        spoken = spoken.and(finding);
    }
    if crown.brown == 0 {
        spoken.and(sight.say(&NOTHING_DEAD))
    } else {
        spoken
    }
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn a_poor_or_a_clean_crown_is_left_alone() {
        let mut scene = Scene::full("Syagrus romanzoffiana");
        scene.crown.full_crown = 30.0;
        for (green, brown, said) in [
            (15, 2, &[][..]),
            (14, 2, &["skip-too-few-green"]),
            (28, 0, &["skip-nothing-dead"]),
            (3, 0, &["skip-too-few-green", "skip-nothing-dead"]),
        ] {
            (scene.crown.green, scene.crown.brown) = (green, brown);
            assert_eq!(
                codes(&super::RULE, &scene),
                said,
                "{green} green, {brown} brown"
            );
        }
    }
}
