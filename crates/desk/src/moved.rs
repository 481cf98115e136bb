//! Moved palms: where each stands on its way to being established.

use crate::office::Office;
use care::moving::{Calendar, PROMISE_DAYS, calendar, promise, tripped};
use care::{Progress, Settled, progress};
use crown::{ExpectedLoss, PalmReading, Reading};
use model::{Day, Finding, Inspection, Knowledge, Move, PalmRecord, Tending};
use rayon::prelude::*;
use std::sync::Arc;

/// A palm counts as recently moved for so many days (assumed, as in the reading).
pub const RECENT_DAYS: i32 = 540;
/// So many palms are read at once; of more, those moved last.
pub const MOST: usize = 300;

/// What the promise of a stem rests on, and how it stands.
#[derive(Clone, PartialEq, Debug)]
pub struct StemMoved {
    /// The stem.
    pub stem: u16,
    /// What ageing and the move will make.
    pub promise: ExpectedLoss,
    /// What has broken it.
    pub trips: Vec<Finding>,
    /// How far it has come.
    pub progress: Progress,
}

/// A moved palm.
#[derive(Clone, Debug)]
pub struct Moved {
    /// The palm.
    pub record: Arc<PalmRecord>,
    /// The day it was dug.
    pub moved_on: Day,
    /// Days since.
    pub days: i32,
    /// What was noted of the last move, if anything was.
    pub noted: Option<Move>,
    /// Its stems, the one that needs a person most first.
    pub stems: Vec<StemMoved>,
    /// When to look, and what was looked at.
    pub calendar: Calendar<'static>,
    /// The last look.
    pub last_look: Option<Day>,
    /// Today.
    pub today: Day,
}

/// How a moved palm stands, worst first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum State {
    /// More lost than promised, or the spear is not firm.
    Tripped,
    /// Nobody has looked since it was moved.
    NotSeen,
    /// A look is due.
    Due,
    /// The promise holds.
    Holds,
    /// It has arrived.
    Established,
}

impl State {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            State::Tripped => "tripped",
            State::NotSeen => "not-seen",
            State::Due => "due",
            State::Holds => "holds",
            State::Established => "established",
        }
    }
}

impl Moved {
    /// The stem that needs a person most.
    pub fn worst(&self) -> &StemMoved {
        &self.stems[0]
    }

    /// Whether every stem is established.
    pub fn established(&self) -> bool {
        self.stems
            .iter()
            .all(|s| s.progress.settled == Settled::Established)
    }

    /// How it stands.
    pub fn state(&self) -> State {
        if self.stems.iter().any(|s| !s.trips.is_empty()) {
            State::Tripped
        } else if self.established() {
            State::Established
        } else if self.last_look.is_none_or(|day| day < self.moved_on) {
            State::NotSeen
        } else if self.calendar.next.is_some_and(|day| day <= self.today) {
            State::Due
        } else {
            State::Holds
        }
    }
}

/// All palms that stand and were moved lately, worst first; and how many more there are than are read at once.
pub fn all(office: &Office) -> (Vec<Moved>, usize) {
    let (state, today) = (office.state(), office.today());
    let recent = |record: &&Arc<PalmRecord>| {
        let days = record.palm.moved_on.map(|day| today.since(day));
        days.is_some_and(|days| (0..=RECENT_DAYS).contains(&days))
    };
    let mut records: Vec<Arc<PalmRecord>> = state.standing().filter(recent).cloned().collect();
    records.sort_by_key(|r| (core::cmp::Reverse(r.palm.moved_on), r.palm.tag.clone()));
    let more = records.len().saturating_sub(MOST);
    records.truncate(MOST);
    let mut moved: Vec<Moved> = records
        .par_iter()
        .filter_map(|record| of(office, record))
        .collect();
    moved.sort_by_key(|m| {
        let next = m.calendar.next.unwrap_or(m.today.plus(10_000));
        (m.state(), next, m.record.palm.tag.clone())
    });
    (moved, more)
}

/// How one palm stands; `None` if it was never moved.
pub fn of(office: &Office, record: &Arc<PalmRecord>) -> Option<Moved> {
    let reading = office.reading(record.id)?;
    from(record, &reading, office.today())
}

fn from(record: &Arc<PalmRecord>, reading: &PalmReading, today: Day) -> Option<Moved> {
    let mut stems: Vec<StemMoved> = reading
        .stems
        .iter()
        .filter_map(|(stem, own)| stem_of(record, *stem, own, today))
        .collect();
    // a stable sort: among equals the lower number first
    stems.sort_by_key(|s| {
        (
            core::cmp::Reverse(s.trips.len()),
            s.progress.settled == Settled::Established,
        )
    });
    let moved_on = stems.first()?.progress.moved_on;
    let settled = stems
        .iter()
        .map(|s| s.progress.settled)
        .find(|s| *s != Settled::Established)
        .unwrap_or(Settled::Established);
    let looks: Vec<Day> = record.inspections.iter().map(|look| look.date).collect();
    let last_look = looks.iter().copied().filter(|day| *day <= today).max();
    Some(Moved {
        moved_on,
        days: today.since(moved_on),
        noted: last_move(record).cloned(),
        calendar: calendar(moved_on, &looks, today, settled, Knowledge::embedded()),
        last_look,
        stems,
        record: record.clone(),
        today,
    })
}

fn stem_of(record: &PalmRecord, stem: u16, reading: &Reading, today: Day) -> Option<StemMoved> {
    let looks: Vec<Inspection> = record.looks(stem).cloned().collect();
    let progress = progress(reading, &record.palm, today)?;
    // looks before the move say nothing of how it was borne
    let since: Vec<Inspection> = looks
        .into_iter()
        .filter(|look| look.date >= progress.moved_on)
        .collect();
    Some(StemMoved {
        stem,
        promise: promise(reading),
        trips: tripped(reading, &since),
        progress,
    })
}

/// The last move that was noted with more than its day.
pub fn last_move(record: &PalmRecord) -> Option<&Move> {
    let moves = record
        .tended
        .iter()
        .filter_map(|tended| match &tended.what {
            Tending::Moved(moved) => Some(moved),
            _ => None,
        });
    moves.max_by_key(|moved| moved.dug_on)
}

/// Weeks that a promise reaches ahead.
pub fn promise_weeks() -> i64 {
    i64::from(PROMISE_DAYS / 7)
}
