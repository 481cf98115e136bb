//! Caution: eyes.
//!
//! Says: eye protection for every cut, above all below a cut and at spines.
//! Source: [eye_protection] (from memory).
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const EYES: Say = Say::new("caution-eyes", Severity::Caution).on(&["eye_protection", "defer_all"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "eyes",
    part: Part::Caution,
    says: &[EYES],
    check,
};

fn check(sight: &Sight) -> Spoken {
    Spoken::note(sight.say(&EYES))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn eyes_are_always_minded() {
        assert_eq!(
            codes(&super::RULE, &Scene::full("Sabal palmetto")),
            ["caution-eyes"]
        );
    }
}
