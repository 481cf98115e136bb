//! The memory engine: for tests and for looking at files without a data folder.

use crate::chain::{ChainHash, Verdict, Walk};
use crate::wire::Record;
use crate::{Added, Error, Head, Kept, Ledger};
use model::{Entry, EntryId};
use std::collections::BTreeMap;
use std::sync::{Mutex, MutexGuard, PoisonError};

/// A ledger that lives as long as the process.
#[derive(Default)]
pub struct Memory {
    inner: Mutex<Inner>,
}

#[derive(Default)]
struct Inner {
    rows: Vec<(ChainHash, Record)>,
    by_id: BTreeMap<EntryId, u64>,
    meta: BTreeMap<String, String>,
}

impl Inner {
    fn head(&self) -> Head {
        let hash = self.rows.last().map_or(ChainHash::ORIGIN, |row| row.0);
        Head {
            seq: self.rows.len() as u64,
            hash,
        }
    }

    fn push(&mut self, record: Record) -> Result<Added, Error> {
        if let Some(&seq) = self.by_id.get(&record.id) {
            let there = &self.rows[seq as usize - 1].1;
            return if there.says_the_same(&record) {
                Ok(Added::Already(seq))
            } else {
                Err(Error::Differs(record.id))
            };
        }
        let Head { seq, hash } = self.head();
        let seq = seq + 1;
        self.by_id.insert(record.id, seq);
        self.rows.push((hash.next(seq, &record), record));
        Ok(Added::New(seq))
    }

    fn cut_back(&mut self, len: usize) {
        for (_, record) in self.rows.drain(len..) {
            self.by_id.remove(&record.id);
        }
    }

    fn kept(&self, seq: u64) -> Kept {
        let (hash, record) = &self.rows[seq as usize - 1];
        Kept {
            seq,
            hash: *hash,
            entry: record.to_entry(),
        }
    }
}

impl Memory {
    /// An empty ledger.
    pub fn new() -> Memory {
        Memory::default()
    }

    // A panic elsewhere leaves at most a batch half cut back; the data itself is sound, so a poisoned lock is taken over.
    fn lock(&self) -> MutexGuard<'_, Inner> {
        self.inner.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Ledger for Memory {
    fn append(&self, entries: &[Entry]) -> Result<Vec<Added>, Error> {
        let records = entries
            .iter()
            .map(Record::from_entry)
            .collect::<Result<Vec<_>, _>>()?;
        let mut inner = self.lock();
        let before = inner.rows.len();
        let done: Result<Vec<_>, _> = records
            .into_iter()
            .map(|record| inner.push(record))
            .collect();
        if done.is_err() {
            inner.cut_back(before);
        }
        done
    }

    fn read(&self, after: u64, limit: usize) -> Result<Vec<Kept>, Error> {
        let inner = self.lock();
        let last = inner.rows.len() as u64;
        Ok((after.saturating_add(1)..=last)
            .take(limit)
            .map(|seq| inner.kept(seq))
            .collect())
    }

    fn records(&self, after: u64, limit: usize) -> Result<Vec<(u64, ChainHash, Record)>, Error> {
        let inner = self.lock();
        let numbered = (1..)
            .zip(&inner.rows)
            .skip(usize::try_from(after).unwrap_or(usize::MAX))
            .take(limit);
        Ok(numbered
            .map(|(seq, (hash, record))| (seq, *hash, record.clone()))
            .collect())
    }

    fn find(&self, ids: &[EntryId]) -> Result<Vec<Kept>, Error> {
        let inner = self.lock();
        Ok(ids
            .iter()
            .filter_map(|id| inner.by_id.get(id))
            .map(|&seq| inner.kept(seq))
            .collect())
    }

    fn head(&self) -> Result<Head, Error> {
        Ok(self.lock().head())
    }

    fn verify(&self) -> Result<Verdict, Error> {
        let inner = self.lock();
        let mut walk = Walk::default();
        for (seq, (hash, record)) in (1..).zip(&inner.rows) {
            if let Err(broken) = walk.step(seq, *hash, record) {
                return Ok(broken);
            }
        }
        Ok(walk.end(inner.head()))
    }

    fn meta(&self, name: &str) -> Result<Option<String>, Error> {
        Ok(self.lock().meta.get(name).cloned())
    }

    fn set_meta(&self, name: &str, value: &str) -> Result<(), Error> {
        self.lock().meta.insert(name.to_owned(), value.to_owned());
        Ok(())
    }
}
