//! Hold: wilt or another decline to death is suspected.
//!
//! Says: nobody trims; a blade carries a wilt to the next palm, and trimming hides what has to be seen. Instead:
//! photographs, a sample taken by or for a plant clinic with a clean blade used for nothing else, a talk with the
//! extension office. Speaks when somebody set the hold, when one-sided browning was seen, or when a decline is the
//! more probable explanation (at least 0.5, assumed).
//! Source: trimming before an inspection hides wilt [inspect_before_trim_purchase]; disinfect between cuts when
//! cutting out disease [disease_cut_each].
//! Would change it: a laboratory result.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::rules::suspect;
use crate::sight::Sight;
use crown::Explanation;
use model::{Arg, Severity};

const ROWS: &[&str] = &["inspect_before_trim_purchase", "disease_cut_each"];
const SUSPECT: Say = Say::new("hold-wilt-suspect", Severity::Refuse).on(ROWS);
const DECLINE: Say = Say::new("hold-decline-likely", Severity::Refuse).on(ROWS);

/// The rule.
pub const RULE: Rule = Rule {
    key: "wilt",
    part: Part::Hold,
    says: &[SUSPECT, DECLINE],
    check,
};

/// From this probability on a decline is suspected (assumed).
pub const DECLINE_LIKELY: f64 = 0.5;

/// Signs of the fronds dying on one side first.
const SIGNS: [&str; 2] = ["one-sided-browning", "wilt"];

/// Whether a sign or a person says so.
pub fn suspected(sight: &Sight) -> bool {
    SIGNS.iter().any(|s| sight.sign(s)) || sight.hold("wilt-suspect").is_some()
}

fn check(sight: &Sight) -> Spoken {
    let share = sight.crown.probabilities[Explanation::Decline.index()];
    if suspected(sight) {
        return Spoken::limit(sight.say(&SUSPECT), Limit::NOTHING);
    }
    // a named suspicion says more than the counts
    if share >= DECLINE_LIKELY && !suspect::judged(sight) {
        return Spoken::limit(
            sight.say(&DECLINE).with("share", Arg::Share(share)),
            Limit::NOTHING,
        );
    }
    Spoken::silent()
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn a_suspicion_holds_from_a_person_a_sign_or_the_reading() {
        let mut scene = Scene::full("Syagrus romanzoffiana");
        scene.crown.probabilities = [0.51, 0.0, 0.0, 0.49];
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.crown.probabilities = [0.5, 0.0, 0.0, 0.5];
        assert_eq!(codes(&super::RULE, &scene), ["hold-decline-likely"]);
        scene.look().signs.push("one-sided-browning".into());
        assert_eq!(codes(&super::RULE, &scene), ["hold-wilt-suspect"]);
        let mut scene = Scene::full("Syagrus romanzoffiana");
        scene.hold("wilt-suspect");
        assert_eq!(codes(&super::RULE, &scene), ["hold-wilt-suspect"]);
    }
}
