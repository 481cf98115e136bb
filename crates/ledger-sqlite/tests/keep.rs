//! Backup, restore, and what verifying finds.

use ledger::chain::Fault;
use ledger::conformance::entry;
use ledger::{Head, Ledger, Verdict};
use rusqlite::Connection;
use spearleaf_ledger_sqlite::{FILE, Sqlite, restore, verify};
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// A folder with a ledger of `count` entries, closed, all in the one file.
fn filled(count: u64) -> (TempDir, Head) {
    let folder = tempfile::tempdir().unwrap();
    let ledger = Sqlite::open(folder.path()).unwrap();
    ledger
        .append(&(0..count).map(entry).collect::<Vec<_>>())
        .unwrap();
    let head = ledger.head().unwrap();
    drop(ledger);
    assert_eq!(names(folder.path()), [FILE]);
    (folder, head)
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|f| f.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn a_backup_restores_to_the_same_ledger() {
    let (folder, head) = filled(2500);
    let other = tempfile::tempdir().unwrap();
    let file = other.path().join("monday.backup");
    let ledger = Sqlite::open(folder.path()).unwrap();
    ledger.set_meta("language", "es").unwrap();
    assert_eq!(ledger.backup(&file).unwrap(), head);
    ledger.append(&[entry(9000)]).unwrap();
    assert_eq!(names(other.path()), ["monday.backup"]);
    let place = other.path().join("new/folder");
    assert_eq!(restore(&file, &place).unwrap(), head);
    let restored = Sqlite::open(&place).unwrap();
    assert_eq!(
        restored.read(0, 9999).unwrap(),
        ledger.read(0, 2500).unwrap()
    );
    assert_eq!(restored.meta("language").unwrap().as_deref(), Some("es"));
    assert_eq!(restored.verify().unwrap(), Verdict::Whole(head));
    restored.append(&[entry(9000)]).unwrap();
    assert_eq!(restored.head().unwrap(), ledger.head().unwrap());
}

#[test]
fn backup_and_restore_overwrite_nothing() {
    let (folder, _) = filled(3);
    let ledger = Sqlite::open(folder.path()).unwrap();
    let file = folder.path().join("b");
    ledger.backup(&file).unwrap();
    let again = ledger.backup(&file).unwrap_err().to_string();
    assert!(again.contains("there already"), "{again}");
    let full = restore(&file, folder.path()).unwrap_err().to_string();
    assert!(full.contains("not empty"), "{full}");
    let missing = restore(&folder.path().join("c"), &folder.path().join("d"))
        .unwrap_err()
        .to_string();
    assert!(missing.contains("no such file"), "{missing}");
    assert!(ledger.backup(Path::new("/no/such/folder/b")).is_err());
}

#[test]
fn a_damaged_backup_is_not_restored() {
    let (folder, _) = filled(300);
    let other = tempfile::tempdir().unwrap();
    let file = other.path().join("b");
    Sqlite::open(folder.path()).unwrap().backup(&file).unwrap();
    flip(&file, b"number 205");
    let refused = restore(&file, &other.path().join("new"))
        .unwrap_err()
        .to_string();
    assert!(refused.contains("damaged at entry 206"), "{refused}");
    assert!(!other.path().join("new").exists());
    fs::write(&file, &fs::read(&file).unwrap()[..9000]).unwrap();
    assert!(restore(&file, &other.path().join("new")).is_err());
    fs::write(&file, b"").unwrap();
    assert!(restore(&file, &other.path().join("new")).is_err());
    assert_eq!(names(other.path()), ["b"]);
}

/// Flips one bit of the first place where `what` stands in a file.
fn flip(file: &Path, what: &[u8]) {
    let mut bytes = fs::read(file).unwrap();
    let at = bytes
        .windows(what.len())
        .position(|window| window == what)
        .expect("stands in the file");
    bytes[at] ^= 1;
    fs::write(file, bytes).unwrap();
}

/// Changes the file behind the ledger's back, with the guards taken off.
fn meddle(folder: &Path, sql: &str) -> Verdict {
    let file: PathBuf = folder.join(FILE);
    let connection = Connection::open(&file).unwrap();
    let guards: Vec<String> = connection
        .prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'")
        .unwrap()
        .query_map([], |row| row.get(0))
        .unwrap()
        .collect::<Result<_, _>>()
        .unwrap();
    for guard in guards {
        connection
            .execute_batch(&format!("DROP TRIGGER {guard}"))
            .unwrap();
    }
    connection.execute_batch(sql).unwrap();
    verify(folder).unwrap()
}

#[test]
fn verifying_finds_a_flipped_bit() {
    let (folder, head) = filled(300);
    assert_eq!(verify(folder.path()).unwrap(), Verdict::Whole(head));
    flip(&folder.path().join(FILE), b"number 117");
    assert_eq!(
        verify(folder.path()).unwrap(),
        Verdict::Broken {
            seq: 118,
            what: Fault::Altered
        }
    );
}

#[test]
fn verifying_finds_every_edit_of_a_row() {
    for set in [
        "at = at + 1",
        "written_at = 0",
        "written_by = 'Somebody'",
        "device = ''",
        "kind = 'note'",
        "version = 2",
        "body = body || ' '",
        "replaces = NULL",
        "id = zeroblob(16)",
        "hash = zeroblob(32)",
    ] {
        let (folder, _) = filled(12);
        let verdict = meddle(
            folder.path(),
            &format!("UPDATE entries SET {set} WHERE seq = 7"),
        );
        assert_eq!(
            verdict,
            Verdict::Broken {
                seq: 7,
                what: Fault::Altered
            },
            "{set}"
        );
    }
}

#[test]
fn verifying_finds_missing_moved_and_added_rows() {
    let missing = |seq| Verdict::Broken {
        seq,
        what: Fault::Missing,
    };
    for (sql, expected) in [
        ("DELETE FROM entries WHERE seq = 1", missing(1)),
        ("DELETE FROM entries WHERE seq = 7", missing(7)),
        ("DELETE FROM entries WHERE seq = 12", missing(12)),
        ("DELETE FROM entries", missing(1)),
        (
            "DELETE FROM entries WHERE seq = 7; UPDATE entries SET seq = seq - 1 WHERE seq > 7",
            Verdict::Broken { seq: 7, what: Fault::Altered },
        ),
        ("UPDATE head SET seq = 11", Verdict::Broken { seq: 12, what: Fault::HeadDiffers }),
        ("UPDATE head SET hash = zeroblob(32)", Verdict::Broken { seq: 12, what: Fault::HeadDiffers }),
        (
            "UPDATE entries SET seq = CASE seq WHEN 3 THEN -4 WHEN 4 THEN -3 END WHERE seq IN (3, 4);
             UPDATE entries SET seq = -seq WHERE seq < 0",
            Verdict::Broken { seq: 3, what: Fault::Altered },
        ),
    ] {
        let (folder, _) = filled(12);
        assert_eq!(meddle(folder.path(), sql), expected, "{sql}");
    }
}

#[test]
fn no_flipped_byte_goes_by_unseen_and_changes_an_entry() {
    let (folder, head) = filled(40);
    let file = folder.path().join(FILE);
    let sound = fs::read(&file).unwrap();
    let entries = Sqlite::open(folder.path()).unwrap().read(0, 99).unwrap();
    for step in 0..200 {
        let mut bytes = sound.clone();
        let at = step * 7919 % bytes.len();
        bytes[at] ^= 0x20;
        fs::write(&file, &bytes).unwrap();
        // Refused, found, or the byte was in room that holds nothing: then every entry reads as before.
        if let Ok(Verdict::Whole(found)) = verify(folder.path()) {
            assert_eq!(found, head);
            let read = Sqlite::open(folder.path()).and_then(|ledger| ledger.read(0, 99));
            assert!(read.is_ok_and(|read| read == entries), "byte {at}");
        }
    }
}
