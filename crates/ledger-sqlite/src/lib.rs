//! The default storage engine: one SQLite file in a data folder.
//!
//! WAL, `synchronous=FULL` (a batch is on the disk before [`Ledger::append`] returns), one writer at a time across
//! processes, triggers that refuse any change to what is written. The hash chain is over the records' own text, so the
//! file can be checked with nothing but SQLite and BLAKE3.

mod keep;
mod rows;
mod schema;

pub use keep::{restore, verify};
pub use schema::{FILE, SCHEMA_VERSION};

use ledger::{Added, ChainHash, Error, Head, Kept, Ledger, Record, Verdict};
use model::{Entry, EntryId};
use rows::{Row, words};
use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior, params};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

/// A ledger in a data folder. Several processes may have the same folder open.
pub struct Sqlite {
    folder: PathBuf,
    connection: Mutex<Connection>,
}

impl Sqlite {
    /// Opens the ledger of a folder; makes folder and ledger if they are not there.
    pub fn open(folder: &Path) -> Result<Sqlite, Error> {
        std::fs::create_dir_all(folder)
            .map_err(|e| Error::Engine(format!("cannot make {}: {e}", folder.display())))?;
        Sqlite::with(folder, schema::open(&folder.join(FILE))?)
    }

    /// Opens the ledger of a folder that has one; refuses to make one.
    pub fn open_existing(folder: &Path) -> Result<Sqlite, Error> {
        schema::must_exist(folder)?;
        Sqlite::open(folder)
    }

    fn with(folder: &Path, connection: Connection) -> Result<Sqlite, Error> {
        connection.set_prepared_statement_cache_capacity(32);
        Ok(Sqlite {
            folder: folder.to_owned(),
            connection: Mutex::new(connection),
        })
    }

    /// The data folder.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Writes the whole ledger into one new file while others go on writing, checks it, and returns its head.
    pub fn backup(&self, to: &Path) -> Result<Head, Error> {
        keep::backup(&self.lock(), to)
    }

    // A panic cannot leave a transaction open: dropping it rolls back. So a poisoned lock is taken over.
    fn lock(&self) -> MutexGuard<'_, Connection> {
        self.connection
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
    }
}

impl Ledger for Sqlite {
    fn append(&self, entries: &[Entry]) -> Result<Vec<Added>, Error> {
        let records = entries
            .iter()
            .map(Record::from_entry)
            .collect::<Result<Vec<_>, _>>()?;
        let mut connection = self.lock();
        let write = connection
            .transaction_with_behavior(TransactionBehavior::Immediate)
            .map_err(words)?;
        let before = rows::head(&write).map_err(words)?;
        let mut head = before;
        let added = records
            .iter()
            .map(|record| add(&write, &mut head, record))
            .collect::<Result<Vec<_>, _>>()?;
        if head != before {
            let set = params![head.seq as i64, head.hash.0];
            write
                .execute("UPDATE head SET seq = ?1, hash = ?2", set)
                .map_err(words)?;
            write.commit().map_err(words)?;
        }
        Ok(added)
    }

    fn read(&self, after: u64, limit: usize) -> Result<Vec<Kept>, Error> {
        Ok(rows::page(&self.lock(), after, limit)
            .map_err(words)?
            .into_iter()
            .map(Row::into_kept)
            .collect())
    }

    fn records(&self, after: u64, limit: usize) -> Result<Vec<(u64, ChainHash, Record)>, Error> {
        let page = rows::page(&self.lock(), after, limit).map_err(words)?;
        Ok(page
            .into_iter()
            .map(|row| (row.seq, row.hash, row.record))
            .collect())
    }

    fn find(&self, ids: &[EntryId]) -> Result<Vec<Kept>, Error> {
        let connection = self.lock();
        let found = ids
            .iter()
            .filter_map(|id| rows::by_id(&connection, *id).transpose());
        found
            .map(|row| row.map(Row::into_kept).map_err(words))
            .collect()
    }

    fn head(&self) -> Result<Head, Error> {
        rows::head(&self.lock()).map_err(words)
    }

    fn verify(&self) -> Result<Verdict, Error> {
        keep::verify(&self.folder)
    }

    fn meta(&self, name: &str) -> Result<Option<String>, Error> {
        let connection = self.lock();
        let mut query = connection
            .prepare_cached("SELECT value FROM meta WHERE name = ?1")
            .map_err(words)?;
        query
            .query_row([name], |row| row.get(0))
            .optional()
            .map_err(words)
    }

    fn set_meta(&self, name: &str, value: &str) -> Result<(), Error> {
        let set = "INSERT INTO meta (name, value) VALUES (?1, ?2) ON CONFLICT (name) DO UPDATE SET value = excluded.value";
        self.lock()
            .execute(set, [name, value])
            .map(drop)
            .map_err(words)
    }
}

/// Adds one record at the head, or finds it there already.
fn add(write: &Transaction, head: &mut Head, record: &Record) -> Result<Added, Error> {
    if let Some(there) = rows::by_id(write, record.id).map_err(words)? {
        return if there.record.says_the_same(record) {
            Ok(Added::Already(there.seq))
        } else {
            Err(Error::Differs(record.id))
        };
    }
    let seq = head.seq + 1;
    let hash = head.hash.next(seq, record);
    rows::insert(
        write,
        &Row {
            seq,
            hash,
            record: record.clone(),
        },
    )
    .map_err(words)?;
    *head = Head { seq, hash };
    Ok(Added::New(seq))
}
