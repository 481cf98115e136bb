//! Whether the crown answered: what was seen and counted before a feeding against what is seen and counted since.

use super::marks_stay;
use crown::Quantiles;
use model::knowledge::{Knowledge, Strength};
use model::{Day, Inspection};

/// New fronds that must have come before the new ones can tell (assumed: the newest was formed before the feeding).
const NEW_FRONDS: u32 = 3;
/// Days before old fronds can tell: four months, the least that marks take to show (`latency` of the disorder).
const LEAST_DAYS: i32 = 120;
/// The crown has grown or shrunk when it differs by more than this share (assumed).
const CLEAR: f64 = 0.1;

/// A crown on a day, by the crown's model.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Crown {
    /// Live fronds.
    pub live: Quantiles,
    /// Share of a frond's life that hunger takes.
    pub shortfall: Quantiles,
    /// Probability of hunger.
    pub hunger: f64,
}

/// What can be said.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Verdict {
    /// Nobody has looked since.
    NotLooked,
    /// Too early to tell.
    TooEarly,
    /// Looked, but not for its signs.
    NotLookedFor,
    /// Its signs are gone, or the crown grows.
    Answering,
    /// As before.
    Same,
    /// Worse.
    Worse,
}

impl Verdict {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Verdict::NotLooked => "not-looked",
            Verdict::TooEarly => "too-early",
            Verdict::NotLookedFor => "not-looked-for",
            Verdict::Answering => "answering",
            Verdict::Same => "same",
            Verdict::Worse => "worse",
        }
    }
}

/// The check on a feeding.
#[derive(Clone, PartialEq, Debug)]
pub struct Answer {
    /// What can be said.
    pub verdict: Verdict,
    /// New fronds counted since.
    pub new_fronds: u32,
    /// Signs of the shortage that the last look before it had.
    pub before: Vec<String>,
    /// Signs that the last look since has.
    pub still: Vec<String>,
    /// Signs that were there before and were looked for and not found since.
    pub gone: Vec<String>,
    /// Live fronds in the median, on the day of it and now, where the crown's model was asked.
    pub live: Option<(f64, f64)>,
}

/// Checks a feeding of a day against a shortage, by the looks at one stem (oldest first) and the crown on the day of it and
/// today.
pub fn verdict(
    knowledge: &Knowledge,
    against: &str,
    fed_on: Day,
    looks: &[Inspection],
    crowns: Option<(Crown, Crown)>,
) -> Answer {
    let own: Vec<&str> = knowledge
        .sign_links
        .iter()
        .filter(|link| link.disorder == against && link.strength != Strength::Excludes)
        .map(|link| link.sign.as_str())
        .collect();
    let of = |signs: &[String]| -> Vec<String> {
        let kept = signs.iter().filter(|sign| own.contains(&sign.as_str()));
        kept.cloned().collect()
    };
    let before = looks.iter().rev().find(|look| look.date <= fed_on);
    let since: Vec<&Inspection> = looks.iter().filter(|look| look.date > fed_on).collect();
    let last = since.last();
    let had = before.map(|look| of(&look.signs)).unwrap_or_default();
    let still = last.map(|look| of(&look.signs)).unwrap_or_default();
    let not = last.map(|look| of(&look.absent)).unwrap_or_default();
    let mut answer = Answer {
        verdict: Verdict::NotLooked,
        new_fronds: since.iter().filter_map(|look| look.new_leaves).sum(),
        gone: had.iter().filter(|s| not.contains(s)).cloned().collect(),
        live: crowns.map(|(then, now)| (then.live.q50, now.live.q50)),
        before: had,
        still,
    };
    if let Some(last) = last {
        let days = last.date.since(fed_on);
        answer.verdict = if marks_stay(against) {
            by_crown(&answer, days, crowns)
        } else {
            by_new_fronds(&answer, !not.is_empty())
        };
    }
    answer
}

/// Shortages that show on new fronds: enough new ones, and what they look like.
fn by_new_fronds(answer: &Answer, looked_for: bool) -> Verdict {
    if answer.new_fronds < NEW_FRONDS {
        return Verdict::TooEarly;
    }
    match (answer.still.is_empty(), looked_for) {
        (true, true) => Verdict::Answering,
        (true, false) => Verdict::NotLookedFor,
        (false, _) if answer.still.len() > answer.before.len() => Verdict::Worse,
        (false, _) if answer.still.len() < answer.before.len() => Verdict::Answering,
        (false, _) => Verdict::Same,
    }
}

/// Shortages that show on old fronds, whose marks stay: the crown grows, or it does not.
fn by_crown(answer: &Answer, days: i32, crowns: Option<(Crown, Crown)>) -> Verdict {
    if days < LEAST_DAYS {
        return Verdict::TooEarly;
    }
    let Some((then, now)) = crowns else {
        return Verdict::NotLookedFor;
    };
    let grown = (now.live.q50 - then.live.q50) / then.live.q50.max(1.0);
    let more_marks = answer.still.len() > answer.before.len();
    match grown {
        g if g > CLEAR => Verdict::Answering,
        g if g < -CLEAR => Verdict::Worse,
        _ if !answer.gone.is_empty() && answer.still.is_empty() => Verdict::Answering,
        _ if more_marks => Verdict::Worse,
        _ => Verdict::Same,
    }
}
