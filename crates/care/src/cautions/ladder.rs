//! Caution: ladders.
//!
//! Says: no saw work from a ladder leant on a palm trunk, which is round, smooth and hit by falling fronds; a pole from
//! the ground or a lift. Where a ladder is used for anything else, its foot stands a quarter of its working length out.
//! Speaks where the crown is out of hand's reach.
//! Source: [ladder_palm] (common practice, no source), [ladder_ratio], [ladder_top_rungs].
//! Would change it: nothing known.

use crate::method::stand;
use crate::plan::Stand;
use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const LADDER: Say = Say::new("caution-ladder", Severity::Caution)
    .on(&[
        "ladder_palm",
        "ladder_ratio",
        "ladder_top_rungs",
        "defer_all",
    ])
    .practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "ladder",
    part: Part::Caution,
    says: &[LADDER],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if stand(sight) == Stand::Ground {
        return Spoken::silent();
    }
    Spoken::note(sight.say(&LADDER))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};
    use model::Metres;

    #[test]
    fn no_ladder_on_a_trunk_out_of_reach() {
        let mut scene = Scene::full("Phoenix roebelenii");
        for (height, said) in [
            (Some(1.2), &[][..]),
            (Some(2.6), &["caution-ladder"]),
            (None, &["caution-ladder"]),
        ] {
            scene.palm.trunk_height = height.map(Metres);
            assert_eq!(codes(&super::RULE, &scene), said, "{height:?}");
        }
    }
}
