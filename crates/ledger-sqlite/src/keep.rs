//! Verify, backup, restore.

use crate::rows::{self, words};
use crate::schema::{self, FILE};
use ledger::chain::{Fault, Walk};
use ledger::{Error, Head, Verdict};
use rusqlite::Connection;
use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};

/// Rows walked at a time.
const PAGE: usize = 1000;

/// Recomputes the whole chain of a folder's ledger, reading only. A file too damaged to read is a verdict, not an error;
/// an error is a folder without a ledger, or one of a newer version.
pub fn verify(folder: &Path) -> Result<Verdict, Error> {
    schema::must_exist(folder)?;
    verify_file(&folder.join(FILE))
}

fn verify_file(file: &Path) -> Result<Verdict, Error> {
    let connection = schema::open_to_read(file)?;
    // One snapshot for the whole walk, however much others write meanwhile.
    connection.execute_batch("BEGIN").map_err(words)?;
    let chain = walk(&connection);
    match &chain {
        Verdict::Whole(_) => Ok(structure(&connection).unwrap_or(chain)),
        Verdict::Broken { .. } => Ok(chain),
    }
}

fn walk(connection: &Connection) -> Verdict {
    let unreadable = |seq, error: rusqlite::Error| Verdict::Broken {
        seq,
        what: Fault::Unreadable(error.to_string()),
    };
    let head = match rows::head(connection) {
        Ok(head) => head,
        Err(error) => return unreadable(0, error),
    };
    let mut walk = Walk::default();
    let mut seq = 0;
    loop {
        // Page by page, and row by row where a page cannot be read, to name the first bad one.
        let page =
            match rows::page(connection, seq, PAGE).or_else(|_| rows::page(connection, seq, 1)) {
                Ok(page) if page.is_empty() => return walk.end(head),
                Ok(page) => page,
                Err(error) => return unreadable(seq + 1, error),
            };
        for row in page {
            if let Err(broken) = walk.step(row.seq, row.hash, &row.record) {
                return broken;
            }
            seq = row.seq;
        }
    }
}

/// SQLite's own check of pages and indexes, for damage that no row shows.
fn structure(connection: &Connection) -> Option<Verdict> {
    let unreadable = |why| {
        Some(Verdict::Broken {
            seq: 0,
            what: Fault::Unreadable(why),
        })
    };
    match connection.query_row("PRAGMA integrity_check(1)", [], |row| {
        row.get::<_, String>(0)
    }) {
        Ok(answer) if answer == "ok" => None,
        Ok(answer) => unreadable(answer),
        Err(error) => unreadable(error.to_string()),
    }
}

/// Writes one new file: complete and on the disk, or not there at all.
pub(crate) fn backup(connection: &Connection, to: &Path) -> Result<Head, Error> {
    if to.exists() {
        return Err(Error::Engine(format!(
            "{} is there already; give the backup a new name",
            to.display()
        )));
    }
    let part = Part::beside(to);
    let name = part
        .0
        .to_str()
        .ok_or_else(|| Error::Engine("the name of the backup is not UTF-8".into()))?;
    connection
        .execute("VACUUM INTO ?1", [name])
        .map_err(words)?;
    let head = must_be_whole(&part.0)?;
    part.settle(to)
        .map_err(|e| Error::Engine(format!("cannot write {}: {e}", to.display())))?;
    Ok(head)
}

/// Fills an empty or new folder from a backup. The backup is checked first; nothing is written if it is not whole.
pub fn restore(backup: &Path, folder: &Path) -> Result<Head, Error> {
    let place = folder.display();
    let engine = |e: io::Error| Error::Engine(format!("{place}: {e}"));
    if folder.exists() && fs::read_dir(folder).map_err(engine)?.next().is_some() {
        return Err(Error::Engine(format!(
            "{place} is not empty; restore only fills a new or empty folder"
        )));
    }
    if !backup.is_file() {
        return Err(Error::Engine(format!("{}: no such file", backup.display())));
    }
    let head = must_be_whole(backup)?;
    fs::create_dir_all(folder).map_err(engine)?;
    let file = folder.join(FILE);
    let part = Part::beside(&file);
    fs::copy(backup, &part.0).map_err(engine)?;
    let copied = must_be_whole(&part.0)?;
    if copied != head {
        return Err(Error::Engine(format!(
            "{} changed while it was read; try again",
            backup.display()
        )));
    }
    part.settle(&file).map_err(engine)?;
    Ok(head)
}

fn must_be_whole(file: &Path) -> Result<Head, Error> {
    match verify_file(file)? {
        Verdict::Whole(head) => Ok(head),
        Verdict::Broken { seq, what } => Err(Error::Broken(format!(
            "{}: damaged at entry {seq}: {what}; nothing was written",
            file.display()
        ))),
    }
}

/// A file being written beside its place; removed unless it gets there.
struct Part(PathBuf);

impl Part {
    fn beside(place: &Path) -> Part {
        let mut name = place.file_name().unwrap_or_default().to_owned();
        name.push(format!(".{}.part", std::process::id()));
        Part(place.with_file_name(name))
    }

    /// Puts the file in its place, on the disk.
    fn settle(&self, place: &Path) -> io::Result<()> {
        File::open(&self.0)?.sync_all()?;
        fs::rename(&self.0, place)?;
        let folder = place
            .parent()
            .filter(|parent| !parent.as_os_str().is_empty())
            .unwrap_or(Path::new("."));
        // Some systems cannot open a folder; there the rename is as durable as the system makes it.
        File::open(folder)
            .and_then(|folder| folder.sync_all())
            .or(Ok(()))
    }
}

impl Drop for Part {
    fn drop(&mut self) {
        // Gone already when it was settled.
        let _ = fs::remove_file(&self.0);
    }
}
