//! Data folders: the only place that names the storage engine.

use crate::talk::Talk;
use anyhow::{Context, bail};
use desk::office::{Office, Refused};
use desk::world::World;
use ledger::{Head, Ledger, Verdict};
use ledger_sqlite::Sqlite;
use std::path::Path;
use std::sync::Arc;

/// Where commands look for a data folder unless told.
pub const DEFAULT: &str = "spearleaf-data";

/// The ledger of a folder that has one.
pub fn ledger(folder: &Path) -> anyhow::Result<Sqlite> {
    Ok(Sqlite::open_existing(folder)?)
}

/// An office over the ledger of a folder; `create` makes folder and ledger if they are not there.
pub fn office(folder: &Path, create: bool, talk: &Talk) -> anyhow::Result<Office> {
    let ledger = if create {
        Sqlite::open(folder)?
    } else {
        ledger(folder)?
    };
    let ledger: Arc<dyn Ledger> = Arc::new(ledger);
    Office::open(ledger, world(talk)).with_context(|| folder.display().to_string())
}

/// The machine's clock, fresh ids, and this machine's name.
fn world(talk: &Talk) -> World {
    let name = ["HOSTNAME", "COMPUTERNAME"]
        .iter()
        .find_map(|v| std::env::var(v).ok());
    World::here(&name.unwrap_or_else(|| "unnamed".to_owned()), talk.as_of)
}

/// Recomputes the chain of a folder's ledger.
pub fn verify(folder: &Path) -> anyhow::Result<Verdict> {
    Ok(ledger_sqlite::verify(folder)?)
}

/// Writes a folder's ledger into one new file.
pub fn backup(folder: &Path, file: &Path) -> anyhow::Result<Head> {
    Ok(ledger(folder)?.backup(file)?)
}

/// Fills a new or empty folder from a backup.
pub fn restore(file: &Path, folder: &Path) -> anyhow::Result<Head> {
    Ok(ledger_sqlite::restore(file, folder)?)
}

/// Why a note was not recorded, in words.
pub fn refused(talk: &Talk, refused: Refused) -> anyhow::Error {
    match refused {
        Refused::Ledger(error) => error.into(),
        Refused::Findings(findings) => {
            let words: Vec<String> = findings.iter().map(|f| talk.measure.finding(f)).collect();
            anyhow::anyhow!(words.join(" "))
        }
    }
}

/// Whether a folder is there and holds anything.
pub fn holds_something(folder: &Path) -> anyhow::Result<bool> {
    match std::fs::read_dir(folder) {
        Ok(mut entries) => Ok(entries.next().is_some()),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(false),
        Err(error) => bail!("{}: {error}", folder.display()),
    }
}
