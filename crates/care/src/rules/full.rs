//! Live fronds come off a full crown only.
//!
//! Says: a crown below nine tenths of its full number (assumed) has none to spare.
//! Source: most landscape palms in Florida already carry about half their number [typical_crown_deficit]; coconut
//! with 13 of 31 leaves kept lost yield for years [coconut_13_of_31]; against it stands the trial in which 18 of 31
//! cost nothing [coconut_18_of_31], itself contradicted [coconut_18_conflict].
//! Would change it: a measured share for the species.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const NOT_FULL: Say = Say::new("live-not-full", Severity::Refuse)
    .on(&[
        "typical_crown_deficit",
        "coconut_13_of_31",
        "coconut_18_conflict",
    ])
    .against(&["coconut_18_of_31"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "full",
    part: Part::Take,
    says: &[NOT_FULL],
    check,
};

/// Share of the full number from which on a crown is called full (assumed).
pub const FULL_FROM: f64 = 0.9;

fn check(sight: &Sight) -> Spoken {
    if f64::from(sight.crown.live()) >= FULL_FROM * sight.crown.full_crown {
        return Spoken::silent();
    }
    let finding = sight
        .say(&NOT_FULL)
        .with("live", Arg::Count(sight.crown.live().into()))
        .with("full", Arg::Count(sight.crown.full_crown.round() as i64));
    Spoken::limit(finding, Limit::live_at_most(0))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn full_begins_at_nine_tenths() {
        let mut scene = Scene::full("Cocos nucifera");
        scene.crown.full_crown = 30.0;
        for (green, said) in [(27, &[][..]), (26, &["live-not-full"])] {
            (scene.crown.green, scene.crown.yellowing) = (green, 0);
            assert_eq!(codes(&super::RULE, &scene), said, "{green}");
        }
    }
}
