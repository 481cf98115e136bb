//! The SQLite engine keeps what every engine promises, and its own file safe.

use ledger::conformance::{entry, run};
use ledger::{Added, Error, Ledger};
use rusqlite::Connection;
use spearleaf_ledger_sqlite::{FILE, Sqlite};
use std::path::Path;
use tempfile::TempDir;

/// A ledger in a folder of its own that goes away with it.
struct Own {
    ledger: Sqlite,
    _folder: TempDir,
}

impl Ledger for Own {
    fn append(&self, entries: &[model::Entry]) -> Result<Vec<Added>, Error> {
        self.ledger.append(entries)
    }
    fn read(&self, after: u64, limit: usize) -> Result<Vec<ledger::Kept>, Error> {
        self.ledger.read(after, limit)
    }
    fn records(
        &self,
        after: u64,
        limit: usize,
    ) -> Result<Vec<(u64, ledger::ChainHash, ledger::Record)>, Error> {
        self.ledger.records(after, limit)
    }
    fn find(&self, ids: &[model::EntryId]) -> Result<Vec<ledger::Kept>, Error> {
        self.ledger.find(ids)
    }
    fn head(&self) -> Result<ledger::Head, Error> {
        self.ledger.head()
    }
    fn verify(&self) -> Result<ledger::Verdict, Error> {
        self.ledger.verify()
    }
    fn meta(&self, name: &str) -> Result<Option<String>, Error> {
        self.ledger.meta(name)
    }
    fn set_meta(&self, name: &str, value: &str) -> Result<(), Error> {
        self.ledger.set_meta(name, value)
    }
}

#[test]
fn the_sqlite_engine_conforms() {
    run(&|| {
        let folder = tempfile::tempdir().unwrap();
        Box::new(Own {
            ledger: Sqlite::open(folder.path()).unwrap(),
            _folder: folder,
        })
    });
}

#[test]
fn what_was_kept_is_there_after_reopening_and_in_other_processes_hands() {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().join("data");
    let one = Sqlite::open(&place).unwrap();
    let other = Sqlite::open_existing(&place).unwrap();
    let odd = model::Entry {
        by: "nul \0 inside".into(),
        device: String::new(),
        ..entry(3)
    };
    one.append(&[entry(1)]).unwrap();
    other.append(&[entry(2), odd.clone()]).unwrap();
    assert_eq!(one.append(&[entry(2)]).unwrap(), [Added::Already(2)]);
    assert_eq!(one.read(0, 9).unwrap(), other.read(0, 9).unwrap());
    let head = one.head().unwrap();
    drop((one, other));
    let again = Sqlite::open(&place).unwrap();
    assert_eq!(again.head().unwrap(), head);
    assert_eq!(again.read(2, 1).unwrap()[0].entry, odd);
    assert_eq!(again.verify().unwrap(), ledger::Verdict::Whole(head));
}

fn raw(folder: &Path) -> Connection {
    Connection::open(folder.join(FILE)).unwrap()
}

#[test]
fn entries_cannot_be_changed_or_deleted() {
    let folder = tempfile::tempdir().unwrap();
    Sqlite::open(folder.path())
        .unwrap()
        .append(&[entry(1), entry(2)])
        .unwrap();
    let file = raw(folder.path());
    for (sql, why) in [
        ("UPDATE entries SET written_by = 'x'", "never changed"),
        ("DELETE FROM entries WHERE seq = 2", "never deleted"),
        (
            "REPLACE INTO entries SELECT seq, hash, id, 0, 0, '', '', '', 1, '', NULL FROM entries",
            "without gaps",
        ),
        (
            "INSERT INTO entries SELECT 9, hash, zeroblob(16), 0, 0, '', '', '', 1, '', NULL FROM head",
            "without gaps",
        ),
        ("UPDATE head SET seq = 1", "only moves on"),
        ("DELETE FROM head", "never deleted"),
    ] {
        let refused = file.execute(sql, []).unwrap_err().to_string();
        assert!(refused.contains(why), "{sql}: {refused}");
    }
}

#[test]
fn strange_files_are_left_alone() {
    let refuse = |prepare: &dyn Fn(&Path)| {
        let folder = tempfile::tempdir().unwrap();
        prepare(folder.path());
        let before = std::fs::read(folder.path().join(FILE)).unwrap();
        let refused = Sqlite::open(folder.path())
            .err()
            .expect("refused")
            .to_string();
        assert_eq!(std::fs::read(folder.path().join(FILE)).unwrap(), before);
        assert!(spearleaf_ledger_sqlite::verify(folder.path()).is_err());
        refused
    };
    let newer = refuse(&|folder| {
        drop(Sqlite::open(folder).unwrap());
        raw(folder)
            .execute_batch("PRAGMA user_version = 99")
            .unwrap();
    });
    assert!(
        newer.contains("newer version of Spearleaf (tables of version 99"),
        "{newer}"
    );
    let foreign = refuse(&|folder| {
        raw(folder)
            .execute_batch("CREATE TABLE recipes (name)")
            .unwrap()
    });
    assert!(foreign.contains("not a ledger of Spearleaf"), "{foreign}");
    let junk = refuse(&|folder| {
        std::fs::write(folder.join(FILE), b"a letter to my aunt\n".repeat(500)).unwrap()
    });
    assert!(
        junk.contains("damaged") && junk.contains("restore the last backup"),
        "{junk}"
    );
    let none = Sqlite::open_existing(tempfile::tempdir().unwrap().path())
        .err()
        .unwrap()
        .to_string();
    assert!(none.contains("no ledger here"), "{none}");
}

#[test]
fn an_empty_file_left_by_a_crash_becomes_a_ledger() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::write(folder.path().join(FILE), b"").unwrap();
    let ledger = Sqlite::open(folder.path()).unwrap();
    assert_eq!(ledger.append(&[entry(1)]).unwrap(), [Added::New(1)]);
}
