//! Nobody cuts: what a suspicion asks for, in words.

use super::super::cutting::Line;
use super::super::picker;
use super::super::said::Speaker;
use crate::views::history;
use care::judge::{HoldAdvice, hold_reason};

/// So many disorders behind a hold are named.
const BEHIND: usize = 3;

/// A hold that the judgement asks for.
#[derive(Clone, PartialEq, Debug)]
pub struct AdviceView {
    /// Its reason code, as the form of holds takes it.
    pub reason: &'static str,
    /// What is suspected.
    pub title: String,
    /// Why: the sign, or the disorders behind it with their probability.
    pub why: String,
    /// The disorders behind it: keys and names.
    pub because: Vec<(&'static str, String)>,
    /// What to do instead of cutting, whom to tell, what ends it.
    pub what: [Line; 3],
    /// Whether such a hold is in force already.
    pub set: bool,
}

/// An advised hold in words; `set` are the reasons in force.
pub fn advice(speaker: &Speaker, hold: &HoldAdvice, set: &[&str]) -> AdviceView {
    let reason = hold_reason(hold.kind);
    let what = what_to_do(speaker, reason);
    let because: Vec<(&'static str, String)> = hold
        .because
        .iter()
        .take(BEHIND)
        .map(|key| (*key, super::disorder_name(speaker, key)))
        .collect();
    AdviceView {
        reason,
        title: history::hold_reason(speaker, reason),
        why: why(speaker, hold),
        because,
        what,
        set: set.contains(&reason),
    }
}

/// What to do instead, whom to tell and what ends it, for a reason that has words for that.
pub fn what_to_do(speaker: &Speaker, reason: &str) -> [Line; 3] {
    ["instead", "tell", "ends"].map(|what| Line {
        name: speaker.say(&format!("advice-{what}")),
        value: speaker.say(&format!("hold-{what}-{reason}")),
    })
}

fn why(speaker: &Speaker, hold: &HoldAdvice) -> String {
    let share = ("share", speaker.measure.percent(hold.probability).into());
    match hold.sign {
        Some(sign) => {
            let sign = ("sign", picker::name_of(speaker, sign).into());
            speaker.text("advice-why-sign", &[sign, share])
        }
        None => speaker.text("advice-why-share", &[share]),
    }
}
