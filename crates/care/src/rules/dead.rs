//! Wholly dead fronds may come off at any time.
//!
//! Says: what is brown throughout may go; any green left means that the frond still feeds the palm.
//! Source: [remove_dead_ok], [dead_leaf_definition].
//! Would change it: frost (see `frost.rs`), a hold.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const DEAD: Say =
    Say::new("dead-any-time", Severity::Info).on(&["remove_dead_ok", "dead_leaf_definition"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "dead",
    part: Part::Take,
    says: &[DEAD],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if sight.crown.brown == 0 {
        return Spoken::silent();
    }
    Spoken::note(
        sight
            .say(&DEAD)
            .with("n", Arg::Count(sight.crown.brown.into())),
    )
}

#[cfg(test)]
mod tests {
    use crate::rule::Limit;
    use crate::scene::{Scene, codes, limit};

    #[test]
    fn dead_fronds_are_never_limited_here() {
        let mut scene = Scene::full("Sabal palmetto");
        scene.crown.brown = 0;
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.crown.brown = 7;
        assert_eq!(codes(&super::RULE, &scene), ["dead-any-time"]);
        assert_eq!(limit(&super::RULE, &scene), Limit::FREE);
    }
}
