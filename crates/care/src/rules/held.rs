//! Hold: somebody set one for a reason of their own, or because a laboratory has found a disease.
//!
//! Says: nobody cuts until it is lifted or its last day has passed; who set it knows why. Of a disease that a laboratory
//! has found the authority says what is done; until then whatever touches the palm touches no other.
//! Source: the keeper's own entry; disinfect when cutting out disease [disease_cut_each].
//! Would change it: lifting the hold.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::state::Hold;
use model::{Arg, Finding, Severity};

const SET: Say = Say::new("hold-set", Severity::Refuse).practice();
const NOTED: Say = Say::new("hold-set-noted", Severity::Refuse).practice();

const CONFIRMED: Say = Say::new("hold-lab-confirmed", Severity::Refuse)
    .on(&["disease_cut_each"])
    .practice();

/// Reason of a hold that somebody sets on a laboratory's result.
pub const LAB: &str = "lab-confirmed";

/// The rule.
pub const RULE: Rule = Rule {
    key: "held",
    part: Part::Hold,
    says: &[SET, NOTED, CONFIRMED],
    check,
};

/// Reasons that have a rule of their own.
const ELSEWHERE: [&str; 11] = [
    "nest",
    "bats",
    "bees",
    "wilt-suspect",
    "phytoplasma-suspect",
    "bud-rot-suspect",
    "trunk-rot-suspect",
    "weevil-suspect",
    "conk",
    "spear",
    "wires",
];

fn check(sight: &Sight) -> Spoken {
    let findings: Vec<Finding> = sight
        .holds_in_force()
        .filter(|hold| !ELSEWHERE.contains(&hold.reason.as_str()))
        .map(|hold| finding(sight, hold))
        .collect();
    let limit = if findings.is_empty() {
        Limit::FREE
    } else {
        Limit::NOTHING
    };
    Spoken { findings, limit }
}

fn finding(sight: &Sight, hold: &Hold) -> Finding {
    let since = Arg::Date(hold.since.day());
    if hold.reason == LAB {
        return sight.say(&CONFIRMED).with("since", since);
    }
    let words = if hold.note.trim().is_empty() && hold.reason != "keeper" {
        &hold.reason
    } else {
        &hold.note
    };
    if words.trim().is_empty() {
        return sight.say(&SET).with("since", since);
    }
    sight
        .say(&NOTED)
        .with("since", since)
        .with("note", Arg::Text(words.trim().to_owned()))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn a_reason_nobody_knows_still_holds() {
        let mut scene = Scene::full("Cocos nucifera");
        scene.hold("keeper");
        assert_eq!(codes(&super::RULE, &scene), ["hold-set"]);
        scene.holds[0].note = "owner away".into();
        assert_eq!(codes(&super::RULE, &scene), ["hold-set-noted"]);
        scene.holds[0].reason = "a-reason-of-a-later-version".into();
        scene.holds[0].note.clear();
        assert_eq!(codes(&super::RULE, &scene), ["hold-set-noted"]);
        scene.holds[0].reason = "nest".into();
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.holds[0].reason = super::LAB.into();
        assert_eq!(codes(&super::RULE, &scene), ["hold-lab-confirmed"]);
    }
}
