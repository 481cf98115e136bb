//! From a reading to the plain numbers the rules look at: the only place in `care` that asks the crown's model.

use crate::case::{CrownFacts, CutCase, Settled};
use crate::sight::Sight;
use crown::{Cut, Explanation, Reading};
use model::{Day, Inspection, Palm};

/// A count is taken as it stands for so many days; after that the reading's median speaks (assumed).
const COUNT_STANDS_DAYS: i32 = 14;
/// A moved palm counts as established after so many days at the latest (assumed, `docs/crown.md`).
pub const ESTABLISHED_AFTER_DAYS: i32 = 540;
/// Nobody calls a palm established sooner than this: the shortest time production takes to come back
/// (assumed, `docs/crown.md`).
const ESTABLISHED_NOT_BEFORE_DAYS: i32 = 180;
/// A frond counts as hanging below level when all but a tenth of it does (assumed: the medians are no finer).
const LEVEL_SLACK: f64 = 0.1;
/// Share of next year's growth that this year must reach for production to be back (assumed).
const PACE_BACK: f64 = 0.9;

/// The case as rules see it.
pub fn sight<'a>(case: &CutCase<'a>) -> Sight<'a> {
    Sight {
        palm: case.palm,
        species: case.species,
        inspections: seen(case),
        crown: facts(case),
        holds: case.holds,
        today: case.today,
        next_visit: case.next_visit,
        judgement: case.judgement,
        grounds: case.grounds,
        knowledge: case.knowledge,
    }
}

/// Inspections up to today.
fn seen<'a>(case: &CutCase<'a>) -> &'a [Inspection] {
    let end = case.inspections.partition_point(|i| i.date <= case.today);
    &case.inspections[..end]
}

fn facts(case: &CutCase) -> CrownFacts {
    let reading = case.reading;
    let seen = seen(case);
    let [green, yellowing, brown] = counts(reading, seen, case.today);
    let next = case.next_visit.filter(|day| *day > case.today);
    CrownFacts {
        green,
        yellowing,
        brown,
        counted_days_ago: seen
            .iter()
            .rev()
            .find(|i| i.live().is_some())
            .map(|i| case.today.since(i.date)),
        below_level: whole(reading.below_level() + LEVEL_SLACK, f64::floor).min(green + yellowing),
        probabilities: worse(reading.probabilities, case.palm_probabilities),
        regrowth: next.map(|day| whole(reading.regrowth(day).q50, f64::round)),
        fronds_per_year: reading.regrowth(case.today.plus(365)).q50 * 365.25 / 365.0,
        full_crown: reading.full_crown.q50,
        settled: settled(reading, case.palm, case.today),
    }
}

/// Green, yellowing and brown fronds on the stem today: a fresh count less what was taken, else the medians.
fn counts(reading: &Reading, seen: &[Inspection], today: Day) -> [u32; 3] {
    let expected = reading.forecast(Cut::NONE, today);
    let fresh = seen
        .last()
        .filter(|i| today.since(i.date) <= COUNT_STANDS_DAYS);
    let now = |count: Option<u32>, taken: Option<u32>, median: f64| {
        count.map_or_else(
            || whole(median, f64::round),
            |n| n.saturating_sub(taken.unwrap_or(0)),
        )
    };
    let count = |f: fn(&Inspection) -> Option<u32>| fresh.and_then(f);
    [
        now(
            count(|i| i.green),
            count(|i| i.removed.green),
            expected.green.q50,
        ),
        now(
            count(|i| i.yellowing),
            count(|i| i.removed.yellowing),
            expected.yellowing.q50,
        ),
        now(
            count(|i| i.brown),
            count(|i| i.removed.brown),
            expected.brown_on.q50,
        ),
    ]
}

/// Of the stem's and the palm's probabilities the ones that speak more strongly against cutting.
fn worse(stem: [f64; 4], palm: [f64; 4]) -> [f64; 4] {
    let mut out = [0.0; 4];
    for (i, slot) in out.iter_mut().enumerate() {
        let ageing = i == Explanation::Ageing.index();
        *slot = if ageing {
            stem[i].min(palm[i])
        } else {
            stem[i].max(palm[i])
        };
    }
    out
}

/// How far a moved palm has come.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Progress {
    /// The move.
    pub moved_on: Day,
    /// Days since.
    pub days: i32,
    /// This year's growth as a share of next year's: the same months, so the season drops out. At most 1.
    pub pace: f64,
    /// That share is large enough.
    pub pace_back: bool,
    /// What was lost is within what ageing alone makes; `None`: no count can tell.
    pub loss_ordinary: Option<bool>,
    /// Too early for anybody to call it established, whatever the counts say.
    pub too_early: bool,
    /// The answer of it all.
    pub settled: Settled,
    /// Established because enough days have passed, not because counts show it.
    pub by_date_alone: bool,
}

/// Established: production is back and the loss is ordinary for a settled palm; else 540 days (assumed). `None`: it was
/// never moved, as far as is known.
pub fn progress(reading: &Reading, palm: &Palm, today: Day) -> Option<Progress> {
    // a move still to come has moved nothing yet
    let moved_on = palm.moved_on.filter(|day| *day <= today)?;
    let days = today.since(moved_on);
    let too_early = days < ESTABLISHED_NOT_BEFORE_DAYS;
    let pace = pace(reading, today);
    let pace_back = pace >= PACE_BACK;
    let loss_ordinary = loss_is_ordinary(reading);
    let known = !too_early && pace_back && loss_ordinary == Some(true);
    let by_date = days >= ESTABLISHED_AFTER_DAYS;
    Some(Progress {
        moved_on,
        days,
        pace,
        pace_back,
        loss_ordinary,
        too_early,
        settled: if by_date || known {
            Settled::Established
        } else {
            Settled::NotYet {
                moved_on,
                assumed_by: moved_on.plus(ESTABLISHED_AFTER_DAYS),
            }
        },
        by_date_alone: by_date && !known,
    })
}

fn settled(reading: &Reading, palm: &Palm, today: Day) -> Settled {
    progress(reading, palm, today).map_or(Settled::NeverMoved, |p| p.settled)
}

/// This year's growth as a share of next year's.
fn pace(reading: &Reading, today: Day) -> f64 {
    let this_year = reading.regrowth(today.plus(365)).q50;
    let next_year = reading.regrowth(today.plus(730)).q50 - this_year;
    if next_year > 0.0 {
        (this_year / next_year).min(1.0)
    } else {
        0.0
    }
}

/// Whether what was lost is within what ageing alone makes.
fn loss_is_ordinary(reading: &Reading) -> Option<bool> {
    let loss = reading.loss()?;
    let (_, high) = loss.expected[Explanation::Ageing.index()]?;
    Some(loss.lost? <= high)
}

/// A count that is not negative. `f64 as u32` saturates, so nonsense cannot wrap.
fn whole(x: f64, to: fn(f64) -> f64) -> u32 {
    to(x).max(0.0) as u32
}
