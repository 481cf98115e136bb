//! The port to storage: append entries, read entries; memory engine, wire records, conformance suite.
//!
//! What every engine promises, held by [`conformance`]:
//!
//! - A batch is kept whole or not at all; when [`Ledger::append`] returns, it is kept, whatever happens next.
//! - An entry already there is quietly taken as done; the same id with other content is refused ([`Error::Differs`]).
//! - Entries are numbered from 1 without gaps in the order of arrival, and each carries a hash over itself and the hash
//!   before, so that a changed, missing or moved entry shows ([`Ledger::verify`]).
//! - Nothing is ever changed or deleted.

pub mod chain;
pub mod conformance;
pub mod memory;
pub mod wire;

pub use chain::{ChainHash, Verdict};
pub use memory::Memory;
pub use wire::Record;

use model::{Entry, EntryId};

/// Storage failed or refused.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The engine's own words.
    #[error("{0}")]
    Engine(String),
    /// An entry with this id is there already and says something else. Nothing of the batch was kept.
    #[error("entry {} is already in the ledger with different content; write a correction instead", .0.0)]
    Differs(EntryId),
    /// The entry cannot be written so that it reads back the same (a number that is not finite, a date out of range).
    #[error("entry {} cannot be kept: {why}", id.0)]
    Content {
        /// Which entry.
        id: EntryId,
        /// What cannot be kept.
        why: String,
    },
    /// The ledger is broken, or is none: what was found, and what to do.
    #[error("{0}")]
    Broken(String),
}

/// An entry as it is kept.
#[derive(Clone, PartialEq, Debug)]
pub struct Kept {
    /// Place in the order of arrival, from 1.
    pub seq: u64,
    /// Hash over this entry and the hash before.
    pub hash: ChainHash,
    /// The entry.
    pub entry: Entry,
}

/// The end of the chain; sequence 0 and [`ChainHash::ORIGIN`] when the ledger is empty.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Head {
    /// Sequence of the last entry.
    pub seq: u64,
    /// Its hash.
    pub hash: ChainHash,
}

/// What became of an entry that was handed in.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Added {
    /// Kept under this sequence.
    New(u64),
    /// Was there already, under this sequence.
    Already(u64),
}

/// A place where entries are kept, append-only.
pub trait Ledger: Send + Sync {
    /// Keeps a batch, all or nothing; one answer per entry, in order.
    fn append(&self, entries: &[Entry]) -> Result<Vec<Added>, Error>;

    /// Up to `limit` entries that arrived after sequence `after`, in the order of arrival. 0 reads from the start.
    fn read(&self, after: u64, limit: usize) -> Result<Vec<Kept>, Error>;

    /// The same as they travel: records, with sequence and hash. For export; decodes nothing.
    fn records(&self, after: u64, limit: usize) -> Result<Vec<(u64, ChainHash, Record)>, Error>;

    /// Entries by id, those that are there, in the order asked.
    fn find(&self, ids: &[EntryId]) -> Result<Vec<Kept>, Error>;

    /// The end of the chain.
    fn head(&self) -> Result<Head, Error>;

    /// Recomputes the whole chain.
    fn verify(&self) -> Result<Verdict, Error>;

    /// A small named value beside the entries (settings of this folder), not part of the chain.
    fn meta(&self, name: &str) -> Result<Option<String>, Error>;

    /// Sets a small named value.
    fn set_meta(&self, name: &str, value: &str) -> Result<(), Error>;
}
