//! Making, opening and upgrading the file.

use crate::rows::words;
use ledger::Error;
use rusqlite::{Connection, OpenFlags, TransactionBehavior};
use std::path::Path;
use std::time::Duration;

/// Name of the ledger inside a data folder.
pub const FILE: &str = "ledger.sqlite";

/// Version of the tables that this program writes.
pub const SCHEMA_VERSION: i64 = MIGRATIONS.len() as i64;

/// Marks the file as a ledger of ours ("SPRL"), so that another program's file is not taken for one.
const APPLICATION_ID: i64 = 0x5350_524C;

/// How long a writer waits for another.
const PATIENCE: Duration = Duration::from_secs(15);

/// Step n brings version n to version n + 1. Steps are only ever added.
const MIGRATIONS: [&str; 1] = ["
    CREATE TABLE entries (
        seq INTEGER PRIMARY KEY,
        hash BLOB NOT NULL CHECK (length(hash) = 32),
        id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
        at INTEGER NOT NULL,
        written_at INTEGER NOT NULL,
        written_by TEXT NOT NULL,
        device TEXT NOT NULL,
        kind TEXT NOT NULL,
        version INTEGER NOT NULL,
        body TEXT NOT NULL,
        replaces BLOB CHECK (length(replaces) = 16)
    ) STRICT;
    CREATE TABLE head (
        one INTEGER PRIMARY KEY CHECK (one = 1),
        seq INTEGER NOT NULL,
        hash BLOB NOT NULL CHECK (length(hash) = 32)
    ) STRICT;
    INSERT INTO head VALUES (1, 0, zeroblob(32));
    CREATE TABLE meta (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
    CREATE TRIGGER entries_stay BEFORE DELETE ON entries
        BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
    CREATE TRIGGER entries_stay_as_they_are BEFORE UPDATE ON entries
        BEGIN SELECT RAISE(ABORT, 'entries are never changed; write a correction'); END;
    CREATE TRIGGER entries_arrive_in_order BEFORE INSERT ON entries
        WHEN NEW.seq <> 1 + coalesce((SELECT max(seq) FROM entries), 0)
        BEGIN SELECT RAISE(ABORT, 'entries are numbered without gaps'); END;
    CREATE TRIGGER head_stays BEFORE DELETE ON head
        BEGIN SELECT RAISE(ABORT, 'the head is never deleted'); END;
    CREATE TRIGGER head_goes_on BEFORE UPDATE ON head WHEN NEW.seq <= OLD.seq
        BEGIN SELECT RAISE(ABORT, 'the head only moves on'); END;
"];

/// Opens a file for writing; makes it, or brings it up to this version, if needed.
pub(crate) fn open(file: &Path) -> Result<Connection, Error> {
    let mut connection = Connection::open(file).map_err(|e| at(file, words(e)))?;
    configure(&mut connection).map_err(|e| at(file, e))?;
    Ok(connection)
}

/// Opens a file for reading only; refuses what is not a ledger of this version or an earlier one.
pub(crate) fn open_to_read(file: &Path) -> Result<Connection, Error> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(file, flags).map_err(|e| at(file, words(e)))?;
    connection.busy_timeout(PATIENCE).map_err(words)?;
    match version(&connection).map_err(|e| at(file, e))? {
        0 => Err(at(file, Error::Broken("there is no ledger in it".into()))),
        _ => Ok(connection),
    }
}

/// Refuses a folder without a ledger.
pub(crate) fn must_exist(folder: &Path) -> Result<(), Error> {
    if folder.join(FILE).is_file() {
        return Ok(());
    }
    let place = folder.display();
    Err(Error::Broken(format!(
        "{place}: no ledger here (no file {FILE}); check the data folder, or start a new one"
    )))
}

fn at(file: &Path, error: Error) -> Error {
    match error {
        Error::Engine(why) => Error::Engine(format!("{}: {why}", file.display())),
        Error::Broken(why) => Error::Broken(format!("{}: {why}", file.display())),
        other => other,
    }
}

fn configure(connection: &mut Connection) -> Result<(), Error> {
    connection.busy_timeout(PATIENCE).map_err(words)?;
    // Before anything is written: a file of somebody else, or of a newer version, is left alone.
    version(connection)?;
    connection
        .pragma_update(None, "journal_mode", "WAL")
        .map_err(words)?;
    connection
        .pragma_update(None, "synchronous", "FULL")
        .map_err(words)?;
    connection
        .pragma_update(None, "trusted_schema", false)
        .map_err(words)?;
    connection
        .pragma_update(None, "cell_size_check", true)
        .map_err(words)?;
    upgrade(connection, &MIGRATIONS)
}

/// Runs the steps that are missing, in one transaction: a program killed in the middle leaves the old version.
fn upgrade(connection: &mut Connection, steps: &[&str]) -> Result<(), Error> {
    if version(connection)? == steps.len() as i64 {
        return Ok(());
    }
    let write = connection
        .transaction_with_behavior(TransactionBehavior::Immediate)
        .map_err(words)?;
    // Asked again under the lock: another process may have been faster.
    let done = usize::try_from(version(&write)?).unwrap_or(0);
    for step in steps.iter().skip(done) {
        write.execute_batch(step).map_err(words)?;
    }
    write
        .pragma_update(None, "application_id", APPLICATION_ID)
        .map_err(words)?;
    write
        .pragma_update(None, "user_version", steps.len() as i64)
        .map_err(words)?;
    write.commit().map_err(words)
}

/// The version of a file's tables, 0 for an empty file. Refuses other programs' files and newer versions.
fn version(connection: &Connection) -> Result<i64, Error> {
    let pragma = |name| {
        connection
            .pragma_query_value(None, name, |row| row.get::<_, i64>(0))
            .map_err(words)
    };
    let (application, version) = (pragma("application_id")?, pragma("user_version")?);
    let tables: i64 = connection
        .query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))
        .map_err(words)?;
    match (application, version, tables) {
        (0, 0, 0) => Ok(0),
        (APPLICATION_ID, 1.., _) if version > SCHEMA_VERSION => Err(Error::Broken(format!(
            "this ledger was written by a newer version of Spearleaf (tables of version {version}, this program knows \
             up to {SCHEMA_VERSION}); nothing was changed; use the newer program"
        ))),
        (APPLICATION_ID, 1.., 1..) => Ok(version),
        _ => Err(Error::Broken(
            "this is a database, but not a ledger of Spearleaf; nothing was changed".into(),
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn batches_are_on_the_disk_before_they_are_acknowledged() {
        let folder = tempfile::tempdir().unwrap();
        let connection = open(&folder.path().join(FILE)).unwrap();
        let mode = connection
            .pragma_query_value(None, "journal_mode", |row| row.get::<_, String>(0))
            .unwrap();
        // 2 is FULL: https://sqlite.org/pragma.html#pragma_synchronous
        let synchronous = connection
            .pragma_query_value(None, "synchronous", |row| row.get::<_, i64>(0))
            .unwrap();
        assert_eq!((mode.as_str(), synchronous), ("wal", 2));
    }

    #[test]
    fn steps_run_once_and_in_order() {
        let mut connection = Connection::open_in_memory().unwrap();
        upgrade(&mut connection, &MIGRATIONS).unwrap();
        upgrade(&mut connection, &MIGRATIONS).unwrap();
        let later = [
            MIGRATIONS[0],
            "CREATE TABLE one (n); INSERT INTO one VALUES (1);",
            "UPDATE one SET n = n + 1;",
        ];
        upgrade(&mut connection, &later).unwrap();
        let n: i64 = connection
            .query_row("SELECT n FROM one", [], |row| row.get(0))
            .unwrap();
        assert_eq!(n, 2);
        let refused = version(&connection).unwrap_err().to_string();
        assert!(
            refused.contains("newer version of Spearleaf (tables of version 3"),
            "{refused}"
        );
    }

    #[test]
    fn a_step_that_fails_leaves_the_old_version() {
        let mut connection = Connection::open_in_memory().unwrap();
        upgrade(&mut connection, &MIGRATIONS).unwrap();
        upgrade(
            &mut connection,
            &[MIGRATIONS[0], "CREATE TABLE one (n);", "no such thing"],
        )
        .unwrap_err();
        assert_eq!(version(&connection).unwrap(), 1);
        let tables = "SELECT count(*) FROM sqlite_schema WHERE name = 'one'";
        assert_eq!(
            connection
                .query_row(tables, [], |row| row.get::<_, i64>(0))
                .unwrap(),
            0
        );
    }
}
