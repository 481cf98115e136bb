//! At most as many live fronds as will have grown back by the next visit.
//!
//! Says: the plan takes none; an owner who asks may have so many, from a full, fed and settled crown. Without a next
//! visit in the book nothing is sure to have grown back, and none is allowed.
//! Source: strict reading, live healthy fronds should not be removed at all [live_healthy_leave], which is why the
//! plan by itself takes none; the allowance for those who ask is [well_fed_allowance], shown as the looser reading.
//! Would change it: a date in the book.

use super::may_lose_live;
use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const ALLOWANCE: Say = Say::new("live-allowance", Severity::Info)
    .on(&["live_healthy_leave"])
    .against(&["well_fed_allowance"]);
const NO_VISIT: Say = Say::new("live-no-next-visit", Severity::Refuse)
    .on(&["live_healthy_leave", "well_fed_allowance"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "regrowth",
    part: Part::Take,
    says: &[ALLOWANCE, NO_VISIT],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let back = sight.crown.regrowth.zip(sight.next_visit);
    let limit = Limit::live_at_most(back.map_or(0, |(n, _)| n));
    if !may_lose_live(sight) {
        // another rule says why nothing live goes; a number would only tempt
        return Spoken {
            findings: Vec::new(),
            limit,
        };
    }
    let Some((n, visit)) = back else {
        return Spoken::limit(sight.say(&NO_VISIT), limit);
    };
    let most = Arg::Count(n.min(sight.crown.below_level).into());
    let finding = sight
        .say(&ALLOWANCE)
        .with("n", most)
        .with("visit", Arg::Date(visit));
    Spoken::limit(finding, limit)
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes, limit};

    #[test]
    fn the_allowance_is_what_grows_back() {
        let mut scene = Scene::full("Washingtonia robusta");
        scene.crown.regrowth = Some(12);
        assert_eq!(
            (
                codes(&super::RULE, &scene),
                limit(&super::RULE, &scene).live
            ),
            (vec!["live-allowance"], Some(12))
        );
        scene.crown.probabilities = [0.3, 0.0, 0.7, 0.0];
        assert_eq!(
            (
                codes(&super::RULE, &scene),
                limit(&super::RULE, &scene).live
            ),
            (vec![], Some(12))
        );
        scene.crown.probabilities = [1.0, 0.0, 0.0, 0.0];
        scene.crown.regrowth = None;
        scene.next_visit = None;
        assert_eq!(
            (
                codes(&super::RULE, &scene),
                limit(&super::RULE, &scene).live
            ),
            (vec!["live-no-next-visit"], Some(0))
        );
    }
}
