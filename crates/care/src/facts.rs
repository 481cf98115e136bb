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

/// Established: production is back and the loss is ordinary for a settled palm; else 540 days (assumed).
fn settled(reading: &Reading, palm: &Palm, today: Day) -> Settled {
    // a move still to come has moved nothing yet
    let Some(moved_on) = palm.moved_on.filter(|day| *day <= today) else {
        return Settled::NeverMoved;
    };
    let days = today.since(moved_on);
    let known = days >= ESTABLISHED_NOT_BEFORE_DAYS
        && pace_is_back(reading, today)
        && loss_is_ordinary(reading);
    if days >= ESTABLISHED_AFTER_DAYS || known {
        return Settled::Established;
    }
    Settled::NotYet {
        moved_on,
        assumed_by: moved_on.plus(ESTABLISHED_AFTER_DAYS),
    }
}

/// This year's growth against next year's: the same months, so the season drops out.
fn pace_is_back(reading: &Reading, today: Day) -> bool {
    let this_year = reading.regrowth(today.plus(365)).q50;
    let both_years = reading.regrowth(today.plus(730)).q50;
    this_year >= PACE_BACK * (both_years - this_year)
}

/// What was lost is within what ageing alone makes. No loss to look at is not ordinary: it is not known.
fn loss_is_ordinary(reading: &Reading) -> bool {
    let Some(loss) = reading.loss() else {
        return false;
    };
    let ageing = loss.expected[Explanation::Ageing.index()];
    matches!((loss.lost, ageing), (Some(lost), Some((_, high))) if lost <= high)
}

/// A count that is not negative. `f64 as u32` saturates, so nonsense cannot wrap.
fn whole(x: f64, to: fn(f64) -> f64) -> u32 {
    to(x).max(0.0) as u32
}
