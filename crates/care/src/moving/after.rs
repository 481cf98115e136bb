//! After the move: the promise to the owner, what breaks it, and when to look.

use crate::case::Settled;
use crown::{ExpectedLoss, Reading};
use model::knowledge::{MoveTopic, TransplantRow};
use model::{Arg, Day, Finding, Inspection, Knowledge, Severity, Spear};

/// Days that a promise reaches ahead.
pub const PROMISE_DAYS: i32 = 56;
/// More than this was lost with less probability than this under ageing and move together: tripped.
const UNUSUAL: f64 = 0.05;
/// A look this share of the interval before its day counts for it (assumed).
const EARLY: f64 = 0.25;

/// What ageing and the move will make by eight weeks from today, counted from the last look.
pub fn promise(reading: &Reading) -> ExpectedLoss {
    reading.expected_loss(reading.as_of.plus(PROMISE_DAYS))
}

/// What has broken the promise: a spear that is not firm at the last look that says, or more lost than ageing and move
/// make in 19 of 20 cases. Empty: it holds.
pub fn tripped(reading: &Reading, looks: &[Inspection]) -> Vec<Finding> {
    let seen = looks.iter().filter(|look| look.date <= reading.as_of);
    let spear = seen
        .filter_map(|look| Some((look.spear?, look.date)))
        .next_back();
    let spear = spear
        .filter(|(spear, _)| *spear != Spear::Firm)
        .map(|(spear, on)| {
            let code = match spear {
                Spear::Pulled => "moved-tripped-spear-pulled",
                Spear::Down => "moved-tripped-spear-down",
                Spear::Firm | Spear::Leaning => "moved-tripped-spear-leaning",
            };
            Finding::new(code, Severity::Act).with("on", Arg::Date(on))
        });
    let loss = reading.loss().and_then(|loss| {
        let unusual = loss.tail_probability.is_some_and(|p| p < UNUSUAL);
        unusual.then(|| {
            Finding::new("moved-tripped-loss", Severity::Act)
                .with("n", Arg::Count(loss.lost.unwrap_or(0.0).round() as i64))
                .with("most", Arg::Count(loss.ordinary.1.round() as i64))
                .with("since", Arg::Date(loss.since))
                .with("until", Arg::Date(loss.until))
        })
    });
    spear.into_iter().chain(loss).collect()
}

/// How a day of the calendar stands.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LookState {
    /// Somebody looked, on this day.
    Done(Day),
    /// Nobody looked, and the next one is on.
    Missed,
    /// It is time.
    Due,
    /// Still to come.
    Ahead,
}

/// A day of the calendar.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct LookDay<'k> {
    /// The row: what to look at, and who says so.
    pub row: &'k TransplantRow,
    /// The day.
    pub on: Day,
    /// How it stands.
    pub state: LookState,
}

/// When to look at a moved palm: often at first, then ever more rarely.
#[derive(Clone, PartialEq, Debug)]
pub struct Calendar<'k> {
    /// All days.
    pub days: Vec<LookDay<'k>>,
    /// The next look: may lie in the past. `None`: established, or the calendar is over.
    pub next: Option<Day>,
}

/// The calendar of a palm dug on `moved_on` and looked at on `looks` (any order).
pub fn calendar<'k>(
    moved_on: Day,
    looks: &[Day],
    today: Day,
    settled: Settled,
    knowledge: &'k Knowledge,
) -> Calendar<'k> {
    let rows: Vec<(&TransplantRow, i32)> = knowledge
        .moving(MoveTopic::Look)
        .filter_map(|row| Some((row, row.figure?.high as i32)))
        .collect();
    // the first day on which a look counts for a row
    let opens: Vec<i32> = (0..rows.len())
        .map(|k| {
            let before = k.checked_sub(1).map_or(0, |j| rows[j].1);
            rows[k].1 - (f64::from(rows[k].1 - before) * EARLY) as i32
        })
        .collect();
    let passed = today.since(moved_on);
    let days: Vec<LookDay> = rows
        .iter()
        .enumerate()
        .map(|(k, (row, after))| {
            let end = opens.get(k + 1).copied().unwrap_or(i32::MAX);
            let within = |day: &&Day| (opens[k]..end).contains(&day.since(moved_on));
            let state = match looks.iter().filter(|d| **d <= today).filter(within).min() {
                Some(day) => LookState::Done(*day),
                None if passed >= end => LookState::Missed,
                None if passed >= opens[k] => LookState::Due,
                None => LookState::Ahead,
            };
            LookDay {
                row,
                on: moved_on.plus(*after),
                state,
            }
        })
        .collect();
    let open = |day: &&LookDay| matches!(day.state, LookState::Due | LookState::Ahead);
    let next = match settled {
        Settled::Established => None,
        _ => days.iter().find(open).map(|day| day.on),
    };
    Calendar { days, next }
}
