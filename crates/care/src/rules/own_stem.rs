//! On palms of several stems every frond is followed down to its own stem before it is cut.
//!
//! Says: crowns grow through each other; a frond counted on one stem may belong to the next.
//! Source: common practice, no source.
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const FOLLOW: Say = Say::new("follow-to-own-stem", Severity::Info).practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "own_stem",
    part: Part::Method,
    says: &[FOLLOW],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if sight.palm.stems < 2 {
        return Spoken::silent();
    }
    Spoken::note(
        sight
            .say(&FOLLOW)
            .with("stems", Arg::Count(sight.palm.stems.into())),
    )
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn speaks_of_several_stems_only() {
        let mut scene = Scene::full("Phoenix reclinata");
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.palm.stems = 2;
        assert_eq!(codes(&super::RULE, &scene), ["follow-to-own-stem"]);
    }
}
