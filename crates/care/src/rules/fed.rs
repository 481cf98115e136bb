//! Live fronds come off a fed and healthy palm only.
//!
//! Says: where hunger has a probability above 0.2 or a decline above 0.1 (assumed), no live frond goes.
//! Source: the allowance is for palms with no shortage [well_fed_allowance]; taking hungry leaves hastens decline
//! [k_leaf_removal_hastens].
//! Would change it: a leaf analysis.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use crown::Explanation;
use model::{Arg, Severity};

const NOT_FED: Say = Say::new("live-not-fed", Severity::Refuse)
    .on(&["well_fed_allowance", "k_leaf_removal_hastens"]);
const NOT_WELL: Say = Say::new("live-decline-open", Severity::Refuse);

/// The rule.
pub const RULE: Rule = Rule {
    key: "fed",
    part: Part::Take,
    says: &[NOT_FED, NOT_WELL],
    check,
};

/// Up to this probability of hunger a palm is called fed (assumed).
pub const HUNGER_AT_MOST: f64 = 0.2;
/// Up to this probability of a decline a palm is called healthy (assumed).
pub const DECLINE_AT_MOST: f64 = 0.1;

fn check(sight: &Sight) -> Spoken {
    let p = sight.crown.probabilities;
    let mut spoken = Spoken::silent();
    for (say, explanation, most) in [
        (NOT_FED, Explanation::Hunger, HUNGER_AT_MOST),
        (NOT_WELL, Explanation::Decline, DECLINE_AT_MOST),
    ] {
        let share = p[explanation.index()];
        if share > most {
            spoken.limit = Limit::live_at_most(0);
            spoken
                .findings
                .push(sight.say(&say).with("share", Arg::Share(share)));
        }
    }
    spoken
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn hunger_and_decline_each_stand_against_live_cuts() {
        let mut scene = Scene::full("Elaeis guineensis");
        for (p, said) in [
            ([0.7, 0.0, 0.2, 0.1], &[][..]),
            ([0.7, 0.0, 0.21, 0.09], &["live-not-fed"]),
            ([0.7, 0.0, 0.1, 0.2], &["live-decline-open"]),
            ([0.2, 0.0, 0.4, 0.4], &["live-not-fed", "live-decline-open"]),
        ] {
            scene.crown.probabilities = p;
            assert_eq!(codes(&super::RULE, &scene), said, "{p:?}");
        }
    }
}
