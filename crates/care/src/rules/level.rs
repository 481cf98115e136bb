//! Nothing live at or above level.
//!
//! Says: a live frond whose tip line stands at or above the horizontal through the crown's base (clock 9 and 3) stays.
//! Strict reading: a frond exactly at 9 or 3 stays as well.
//! Source: [horizontal_line_extension], [horizontal_line_a300_now]; older contract wordings say 45 degrees above level
//! [angle_45_old_wording] or, by what looks like a drafting error, 90 [angle_90_contract_wording].
//! Would change it: nothing known.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const LEVEL: Say = Say::new("level-line", Severity::Refuse)
    .on(&["horizontal_line_extension", "horizontal_line_a300_now"])
    .against(&["angle_45_old_wording", "angle_90_contract_wording"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "level",
    part: Part::Take,
    says: &[LEVEL],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let below = sight.crown.below_level;
    let finding = sight
        .say(&LEVEL)
        .with("below", Arg::Count(below.into()))
        .with("live", Arg::Count(sight.crown.live().into()));
    Spoken::limit(finding, Limit::live_at_most(below))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, limit};

    #[test]
    fn only_what_hangs_below_level_may_go() {
        let mut scene = Scene::full("Phoenix canariensis");
        scene.crown.below_level = 16;
        assert_eq!(limit(&super::RULE, &scene).live, Some(16));
        scene.crown.below_level = 0;
        assert_eq!(limit(&super::RULE, &scene).live, Some(0));
    }
}
