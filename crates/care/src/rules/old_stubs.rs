//! Old base stubs go with a reciprocating saw; no chain saw comes near the trunk.
//!
//! Says: a chain saw slips into the trunk, and a trunk does not heal; it also cannot be cleaned between palms without
//! taking it apart. On Canary Island date palms no chain saw at all, on fronds and stalks either.
//! Source: common practice, no source; [cidp_no_chainsaw_leaves]; cleaning [chainsaw_apart].
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const STUBS: Say = Say::new("old-stubs-saw", Severity::Info)
    .on(&["chainsaw_apart"])
    .practice();
const NO_CHAIN: Say = Say::new("no-chain-saw-at-all", Severity::Refuse)
    .on(&["cidp_no_chainsaw_leaves", "chainsaw_apart"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "old_stubs",
    part: Part::Method,
    says: &[STUBS, NO_CHAIN],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if sight.crownshaft() {
        return Spoken::silent();
    }
    let spoken = Spoken::note(sight.say(&STUBS));
    if sight.name() == "Phoenix canariensis" {
        spoken.and(sight.say(&NO_CHAIN))
    } else {
        spoken
    }
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn no_chain_saw_on_the_trunk() {
        assert_eq!(
            codes(&super::RULE, &Scene::full("Butia odorata")),
            ["old-stubs-saw"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("Phoenix canariensis")),
            ["old-stubs-saw", "no-chain-saw-at-all"]
        );
    }
}
