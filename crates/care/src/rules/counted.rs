//! No live frond goes off a crown that nobody has counted lately.
//!
//! Says: count green and yellowing first; a count older than 60 days (assumed) no longer carries a cut of live fronds.
//! Source: assumed.
//! Would change it: the spread of the reading itself, once it is narrow enough without a count.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const NEVER: Say = Say::new("live-never-counted", Severity::Refuse);
const OLD: Say = Say::new("live-count-old", Severity::Refuse);

/// The rule.
pub const RULE: Rule = Rule {
    key: "counted",
    part: Part::Take,
    says: &[NEVER, OLD],
    check,
};

/// Days a count carries a cut of live fronds (assumed).
pub const COUNT_CARRIES_DAYS: i32 = 60;

fn check(sight: &Sight) -> Spoken {
    let finding = match sight.crown.counted_days_ago {
        None => sight.say(&NEVER),
        Some(days) if days > COUNT_CARRIES_DAYS => {
            sight.say(&OLD).with("ago", Arg::Days(days.into()))
        }
        Some(_) => return Spoken::silent(),
    };
    Spoken::limit(finding, Limit::live_at_most(0))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn an_old_count_carries_nothing_live() {
        let mut scene = Scene::full("Sabal palmetto");
        for (ago, said) in [
            (None, &["live-never-counted"][..]),
            (Some(61), &["live-count-old"]),
            (Some(60), &[]),
        ] {
            scene.crown.counted_days_ago = ago;
            assert_eq!(codes(&super::RULE, &scene), said, "{ago:?}");
        }
    }
}
