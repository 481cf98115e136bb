//! Open formats out of the ledger: CSV as it is read, entries as JSON lines, GeoJSON (RFC 7946).
//!
//! What [`palms`] and [`inspections`] write, [`crate::intake`] reads back the same, unknown columns included. Palms that
//! left the register are not among them; [`entries`] has everything.

mod columns;
mod geojson;
mod log;
mod moves;
mod sites;
mod tables;
mod weather;

pub use geojson::geojson;
pub use log::{blades, cleanings, cuts, touches};
pub use moves::moves;
pub use sites::{crews, sites};
pub use tables::{inspections, palms};
pub use weather::weather;

use ledger::Ledger;
use std::io::Write;

/// Why an export stopped.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The output could not be written.
    #[error(transparent)]
    Write(#[from] std::io::Error),
    /// The output could not be written as CSV.
    #[error(transparent)]
    Csv(#[from] csv::Error),
    /// The ledger could not be read.
    #[error(transparent)]
    Ledger(#[from] ledger::Error),
    /// An entry is no JSON.
    #[error("entry {0}: {1}")]
    Entry(u64, ledger::wire::BadLine),
    /// An object could not be written as JSON.
    #[error(transparent)]
    Json(#[from] serde_json::Error),
}

/// Entries read from the ledger at a time.
const PAGE: usize = 1000;

/// Every entry, one JSON object a line, in the order of arrival, with sequence and chain hash. Returns how many.
pub fn entries(ledger: &dyn Ledger, mut out: impl Write) -> Result<u64, Error> {
    let mut after = 0;
    loop {
        let page = ledger.records(after, PAGE)?;
        let Some((last, _, _)) = page.last() else {
            return Ok(after);
        };
        let last = *last;
        for (seq, hash, record) in page {
            let line = record
                .to_line(seq, hash)
                .map_err(|bad| Error::Entry(seq, bad))?;
            writeln!(out, "{line}")?;
        }
        after = last;
    }
}

#[cfg(test)]
mod tests;
