//! The office: one ledger, the state folded from it, readings and plans derived from that.

use crate::world::World;
use ledger::Ledger;
use model::{Body, Day, Entry, EntryId, Finding, Moment, PalmId, State};
use std::sync::Arc;

/// A thing to record, before it has become an entry.
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

/// One ledger at work. Share it behind an `Arc`; all methods take `&self`.
pub struct Office {
    _todo: (),
}

impl Office {
    /// Opens a ledger and folds it.
    pub fn open(ledger: Arc<dyn Ledger>, world: World) -> Result<Office, ledger::Error> {
        let _ = (ledger, world);
        todo!("ledger helper")
    }

    /// Today, as the world says.
    pub fn today(&self) -> Day {
        todo!("ledger helper")
    }

    /// Now, as the world says (forms: helper `forms`).
    pub fn now(&self) -> Moment {
        todo!("ledger helper")
    }

    /// A fresh id for the entry a form will become (forms: helper `forms`).
    pub fn new_id(&self) -> EntryId {
        todo!("ledger helper")
    }

    /// The state now: a cheap snapshot that stays as it is while others write.
    pub fn state(&self) -> Arc<State> {
        todo!("ledger helper")
    }

    /// Records notes in one transaction: all or none. An id already in the ledger is quietly taken as done.
    pub fn record(&self, notes: Vec<Note>) -> Result<Vec<Entry>, Refused> {
        let _ = notes;
        todo!("ledger helper")
    }

    /// The reading of a palm as of today; cached until the palm's entries or the day change. `None`: no such palm.
    pub fn reading(&self, palm: PalmId) -> Option<Arc<crown::PalmReading>> {
        let _ = palm;
        todo!("ledger helper")
    }

    /// All entries about a palm, oldest first, for its history.
    pub fn history(&self, palm: PalmId) -> Result<Vec<Entry>, ledger::Error> {
        let _ = palm;
        todo!("ledger helper")
    }
}
