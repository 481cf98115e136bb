//! Crownshaft palms are taken by hand, once the sheath has split, pulling upward.
//!
//! Says: never forced, never cut at the sheath; nothing live is ever taken, because a fed crownshaft palm never needs
//! pruning and drops its dead fronds by itself.
//! Source: [crownshaft_no_prune]; pulling upward by hand once the sheath has split is common practice, no source.
//! Would change it: nothing known.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const BY_HAND: Say = Say::new("crownshaft-by-hand", Severity::Refuse)
    .on(&["crownshaft_no_prune"])
    .practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "crownshaft",
    part: Part::Take,
    says: &[BY_HAND],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if !sight.crownshaft() {
        return Spoken::silent();
    }
    Spoken::limit(
        sight.say(&BY_HAND),
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
    fn nothing_live_comes_off_a_crownshaft_palm() {
        let scene = Scene::full("Roystonea regia");
        assert_eq!(codes(&super::RULE, &scene), ["crownshaft-by-hand"]);
        assert_eq!(limit(&super::RULE, &scene).live, Some(0));
        assert_eq!(codes(&super::RULE, &Scene::full("Sabal palmetto")), [""; 0]);
        // unknown is not yes
        assert_eq!(codes(&super::RULE, &Scene::full("Dypsis decaryi")), [""; 0]);
    }
}
