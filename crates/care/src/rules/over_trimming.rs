//! A cut that reaches up to the level line or past it is over-trimming.
//!
//! Says: refused as a whole, whatever part of it could pass. Speaks only when somebody asks for a cut.
//! Source: 40 fronds cut to 15 is over-trimmed: common practice, no source; nothing at or above level and a half
//! sphere at least must remain [horizontal_line_extension, horizontal_line_a300_now]; rooster-tailing is
//! unacceptable [rooster_tail_not_acceptable]. A city's quarter of the canopy, written for trees, says less clearly
//! the same [city_limit_25].
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use crown::Cut;
use model::{Arg, Finding, Severity};

const OVER: Say = Say::new("over-trimming", Severity::Refuse)
    .on(&[
        "horizontal_line_extension",
        "horizontal_line_a300_now",
        "rooster_tail_not_acceptable",
    ])
    .against(&[
        "city_limit_25",
        "angle_45_old_wording",
        "angle_90_contract_wording",
    ])
    .practice();

/// The rule; in a plan nobody asks, so it keeps silent there.
pub const RULE: Rule = Rule {
    key: "over_trimming",
    part: Part::Take,
    says: &[OVER],
    check: |_| Spoken::silent(),
};

/// The finding, if the cut over-trims.
pub fn finding(sight: &Sight, cut: Cut) -> Option<Finding> {
    let (live, below) = (sight.crown.live(), sight.crown.below_level);
    if cut.live() <= below {
        return None;
    }
    let count = |n: u32| Arg::Count(n.into());
    Some(
        sight
            .say(&OVER)
            .with("asked", count(cut.live()))
            .with("live", count(live))
            .with("left", count(live.saturating_sub(cut.live())))
            .with("below", count(below)),
    )
}

#[cfg(test)]
mod tests {
    use crate::scene::Scene;
    use crown::Cut;

    /// 40 fronds cut to 15 is over-trimmed: common practice, no source.
    #[test]
    fn forty_to_fifteen_is_over_trimming() {
        let mut scene = Scene::full("Phoenix canariensis");
        (
            scene.crown.green,
            scene.crown.yellowing,
            scene.crown.below_level,
        ) = (40, 0, 16);
        for (asked, over) in [(25, true), (17, true), (16, false), (0, false)] {
            let cut = Cut {
                green: asked,
                ..Cut::NONE
            };
            assert_eq!(
                super::finding(&scene.sight(), cut).is_some(),
                over,
                "{asked}"
            );
        }
    }
}
