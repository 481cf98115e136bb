//! The office: one ledger, the state folded from it, readings derived from that.

mod check;
mod readings;

pub(crate) use readings::{climate as climate_nearby, place as place_nearby};
#[cfg(test)]
mod tests;

use crate::demo;
use crate::world::World;
use check::Check;
use ledger::{Added, Ledger, Record};
use model::state::Fold;
use model::{
    Body, Climate, Day, Entry, EntryId, Finding, Moment, Palm, PalmId, PalmRecord, Severity,
    Species, State,
};
use rayon::prelude::*;
use readings::Readings;
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError, RwLock};

/// A thing to record, before it has become an entry.
#[derive(Clone, PartialEq, Debug)]
pub struct Note {
    /// Given by the writer (a form carries one, so that sending twice records once); else made here.
    pub id: Option<EntryId>,
    /// When it happened.
    pub at: Moment,
    /// Who says so.
    pub by: String,
    /// What.
    pub body: Body,
    /// The entry it corrects.
    pub replaces: Option<EntryId>,
}

/// Why something was not recorded.
#[derive(Debug)]
pub enum Refused {
    /// The note makes no sense against the state: what is wrong, and what to do.
    Findings(Vec<Finding>),
    /// The ledger could not write.
    Ledger(ledger::Error),
}

impl From<ledger::Error> for Refused {
    fn from(error: ledger::Error) -> Refused {
        Refused::Ledger(error)
    }
}

/// One ledger at work. Share it behind an `Arc`; all methods take `&self`.
pub struct Office {
    ledger: Arc<dyn Ledger>,
    world: World,
    marked_demo: bool,
    book: Mutex<Book>,
    snapshot: RwLock<Arc<State>>,
    readings: Readings,
}

/// What has been read of the ledger.
#[derive(Default)]
struct Book {
    fold: Fold,
    seq: u64,
    /// The latest moment of writing that is not absurdly late.
    written: Option<Moment>,
}

/// Entries read from the ledger at a time.
const PAGE: usize = 20_000;

/// An entry written further ahead of now than this comes from a wrong clock and does not pull ours along, ms.
const CLOCKS_DIFFER: i64 = 3_600_000;

/// The name under which the ledger keeps that it is a demo.
const DEMO: &str = "demo";

impl Office {
    /// Opens a ledger and folds it.
    pub fn open(ledger: Arc<dyn Ledger>, world: World) -> Result<Office, ledger::Error> {
        let marked_demo = ledger.meta(DEMO)?.is_some();
        let (book, snapshot) = (Mutex::default(), RwLock::default());
        let office = Office {
            ledger,
            world,
            marked_demo,
            book,
            snapshot,
            readings: Readings::default(),
        };
        office.refresh()?;
        Ok(office)
    }

    /// Today, as the world says.
    pub fn today(&self) -> Day {
        self.world.today()
    }

    /// Now, as the world says.
    pub fn now(&self) -> Moment {
        (self.world.now)()
    }

    /// A fresh id for the entry that a form or a note will become.
    pub fn new_id(&self) -> EntryId {
        EntryId((self.world.new_id)())
    }

    /// Whether this is the demo, to be said on every page.
    pub fn is_demo(&self) -> bool {
        self.marked_demo || demo::is_demo(&self.state())
    }

    /// The ledger itself, for export, backup and settings.
    pub fn ledger(&self) -> &Arc<dyn Ledger> {
        &self.ledger
    }

    /// The state now: a cheap snapshot that stays as it is while others write.
    pub fn state(&self) -> Arc<State> {
        self.snapshot
            .read()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }

    /// Whether an entry of this id is in the ledger.
    pub fn has(&self, id: EntryId) -> bool {
        self.book().fold.knows(id)
    }

    /// Takes in what others (another process, a sync) have written to the ledger since. [`Office::record`] does it too.
    pub fn refresh(&self) -> Result<(), ledger::Error> {
        self.catch_up(&mut self.book())
    }

    /// Records notes in one transaction: all or none. An id already in the ledger is quietly taken as done if it says
    /// the same (`at`, `by` and the moment of writing aside), and refused if it does not. Returns one entry per note.
    pub fn record(&self, notes: Vec<Note>) -> Result<Vec<Entry>, Refused> {
        let mut book = self.book();
        self.catch_up(&mut book)?;
        let notes: Vec<(EntryId, Note)> = notes
            .into_iter()
            .map(|note| (note.id.unwrap_or_else(|| self.new_id()), note))
            .collect();
        let mut there = self.already_there(&book, &notes)?;
        let new: Vec<&(EntryId, Note)> = notes
            .iter()
            .filter(|(id, _)| !there.contains_key(id))
            .collect();
        let findings =
            differing(&there, &notes).chain(Check::new(&book.fold, self.latest_day()).all(&new));
        let findings: Vec<Finding> = findings.collect();
        if !findings.is_empty() {
            return Err(Refused::Findings(findings));
        }
        let written_at = book.next_writing(self.now());
        let entries: Vec<Entry> = new
            .into_iter()
            .map(|(id, note)| self.entry(*id, note, written_at))
            .collect();
        self.ledger.append(&entries)?;
        self.catch_up(&mut book)?;
        there.extend(entries.into_iter().map(|entry| (entry.id, entry)));
        Ok(notes
            .iter()
            .filter_map(|(id, _)| there.get(id).cloned())
            .collect())
    }

    /// Takes entries in that were written elsewhere (an export, another device), as they are, in one transaction.
    /// Nothing is judged: what makes no sense becomes a finding of the state. Returns how many were new.
    pub fn take_in(&self, entries: &[Entry]) -> Result<usize, ledger::Error> {
        let mut book = self.book();
        let added = self.ledger.append(entries)?;
        self.catch_up(&mut book)?;
        Ok(added
            .iter()
            .filter(|added| matches!(added, Added::New(_)))
            .count())
    }

    /// The reading of a palm as of today; the ones asked for last are kept until the palm's record or the day changes.
    /// `None`: no such palm.
    pub fn reading(&self, palm: PalmId) -> Option<Arc<crown::PalmReading>> {
        let record = self.state().palm(palm)?.clone();
        Some(self.readings.get(&record, self.today()))
    }

    /// The reading of a palm as it would have been made on a day; made anew each time.
    pub fn reading_on(&self, record: &PalmRecord, day: Day) -> crown::PalmReading {
        self.readings.make(record, day)
    }

    /// The readings of all standing palms, on all cores, each handed to `see` as soon as it is made and kept no longer
    /// than `see` keeps it (a reading is large). The order is that of completion.
    pub fn readings(&self, see: impl Fn(PalmId, &crown::PalmReading) + Sync) {
        let (state, today) = (self.state(), self.today());
        let standing: Vec<_> = state.standing().collect();
        standing
            .par_iter()
            .for_each(|record| see(record.id, &self.readings.make(record, today)));
    }

    /// What the species name of a palm resolves to. Remembered, so cheap for a hundred thousand palms.
    pub fn species(&self, palm: &Palm) -> Option<&'static Species> {
        self.readings.kind(&palm.species).species
    }

    /// The climate of a palm's place: the nearest known place within 100 km.
    pub fn climate(&self, palm: &Palm) -> Option<&'static Climate> {
        readings::climate(palm)
    }

    /// All entries about a palm, oldest first, for its history: corrected and withdrawn ones and lifted holds, too.
    pub fn history(&self, palm: PalmId) -> Result<Vec<Entry>, ledger::Error> {
        match self.state().palm(palm) {
            Some(record) => Ok(self
                .ledger
                .find(&record.entries)?
                .into_iter()
                .map(|kept| kept.entry)
                .collect()),
            None => Ok(Vec::new()),
        }
    }

    fn book(&self) -> MutexGuard<'_, Book> {
        // What is in the book came from the ledger; whoever panicked while holding it wrote nothing wrong.
        self.book.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn catch_up(&self, book: &mut Book) -> Result<(), ledger::Error> {
        let before = book.seq;
        let now = self.now();
        loop {
            let records = self.ledger.records(book.seq, PAGE)?;
            let Some((last, ..)) = records.last() else {
                break;
            };
            book.seq = *last;
            book.take_in(records.iter().map(|(_, _, record)| record), now);
        }
        if book.seq != before {
            *self
                .snapshot
                .write()
                .unwrap_or_else(PoisonError::into_inner) = book.fold.state();
        }
        Ok(())
    }

    /// Entries of the ledger with the ids of notes.
    fn already_there(
        &self,
        book: &Book,
        notes: &[(EntryId, Note)],
    ) -> Result<BTreeMap<EntryId, Entry>, ledger::Error> {
        let known: Vec<EntryId> = notes
            .iter()
            .map(|(id, _)| *id)
            .filter(|id| book.fold.knows(*id))
            .collect();
        Ok(self
            .ledger
            .find(&known)?
            .into_iter()
            .map(|kept| (kept.entry.id, kept.entry))
            .collect())
    }

    fn entry(&self, id: EntryId, note: &Note, written_at: Moment) -> Entry {
        Entry {
            id,
            at: note.at,
            written_at,
            by: note.by.clone(),
            device: self.world.device.clone(),
            body: note.body.clone(),
            replaces: note.replaces,
        }
    }

    /// The last day that is not in the future. A day fixed for looking back does not forbid to record what has happened.
    fn latest_day(&self) -> Day {
        self.today().max(self.world.calendar_day())
    }
}

impl Book {
    fn take_in<'a>(&mut self, records: impl Iterator<Item = &'a Record>, now: Moment) {
        let records: Vec<&Record> = records.collect();
        let entries: Vec<Entry> = records.into_par_iter().map(Record::to_entry).collect();
        let near = entries
            .iter()
            .map(|entry| entry.written_at)
            .filter(|m| m.0 <= now.0.saturating_add(CLOCKS_DIFFER));
        self.written = near.chain(self.written).max();
        self.fold.apply(entries);
    }

    /// Later than everything written before, even if the clock went back or stands still: what is written last counts.
    fn next_writing(&self, now: Moment) -> Moment {
        self.written
            .map_or(now, |written| now.max(Moment(written.0 + 1)))
    }
}

/// Notes whose id is taken by an entry that says something else.
fn differing<'a>(
    there: &'a BTreeMap<EntryId, Entry>,
    notes: &'a [(EntryId, Note)],
) -> impl Iterator<Item = Finding> + 'a {
    notes.iter().filter_map(|(id, note)| {
        let entry = there.get(id)?;
        let same = entry.body == note.body && entry.replaces == note.replaces;
        (!same).then(|| Finding::new("recorded-otherwise", Severity::Refuse))
    })
}
