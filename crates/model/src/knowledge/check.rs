//! What must hold of the tables, beyond that they can be read.
//!
//! One function a table; each walks the raw text again, so that every flaw names its line. The limits are wide: they
//! catch slips (a missing decimal point, centimetres for metres), not surprising palms.

mod cleaners;
mod climate;
mod effort;
mod ills;
mod names;
mod supply;
mod texts;
mod tools;
mod transplant;

use super::Knowledge;
use super::reader::{Flaw, Reader};
use super::rows::{number, range};
use super::tables::Tables;
use std::collections::BTreeMap;

/// All that is wrong with the tables, by table and line; empty when they are in order.
pub fn check(tables: &Tables) -> Vec<Flaw> {
    let (known, mut flaws) = Knowledge::from_tables(tables);
    texts::sources(tables.sources, &mut flaws);
    names::palmtraits(tables.palmtraits, &known, &mut flaws);
    names::species(tables.species, &mut flaws);
    names::synonyms(tables.synonyms, &known, &mut flaws);
    names::genera(tables.genera, &known, &mut flaws);
    texts::rules(tables.rules, &mut flaws);
    texts::safety(tables.safety, &mut flaws);
    cleaners::cleaners(tables.cleaners, &disorders(&known), &mut flaws);
    transplant::transplant(tables.transplant, &known, &mut flaws);
    supply::supply(tables, &known, &mut flaws);
    tools::tools(tables.tools, &mut flaws);
    effort::effort(tables, &mut flaws);
    ills::ills(tables, &known, &mut flaws);
    climate::places(tables.climate, &mut flaws);
    flaws.sort();
    flaws.dedup();
    flaws
}

/// Keys of disorders that other tables may name.
fn disorders(known: &Knowledge) -> std::collections::BTreeSet<&str> {
    known.disorders.iter().map(|d| d.key.as_str()).collect()
}

/// What was seen so far and on which line: refuses what comes twice.
#[derive(Default)]
struct Seen(BTreeMap<String, u64>);

impl Seen {
    /// Notes a value; a flaw if it was there before, telling on which line.
    fn once(&mut self, r: &mut Reader<'_>, code: &'static str, value: &str) {
        if let Some(line) = self.0.insert(value.to_owned(), r.line) {
            r.flaw(code, &format!("{value} (line {line})"));
        }
    }
}

/// A flaw if the cell holds a number outside the limits. Cells that are no number are reported where they are read.
fn within(r: &mut Reader<'_>, cell: &str, low: f64, high: f64) {
    if number(cell).is_some_and(|x| x < low || x > high) {
        r.flaw("out-of-limits", cell);
    }
}

/// The same for both ends of a range.
fn range_within(r: &mut Reader<'_>, cell: &str, low: f64, high: f64) {
    if range(cell).is_some_and(|x| x.low.is_some_and(|l| l < low) || x.high < low || x.high > high)
    {
        r.flaw("out-of-limits", cell);
    }
}

/// A flaw if a cell that must say something is empty, or has spaces around it.
fn said(r: &mut Reader<'_>, what: &str, cell: &str) {
    if cell.is_empty() {
        r.flaw("empty", what);
    } else if cell.trim() != cell {
        r.flaw("stray-space", cell);
    }
}

/// A key: lower case letters, digits, and `-`, `_` or `.` between them.
fn is_key(text: &str) -> bool {
    let inner =
        |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || matches!(c, '-' | '_' | '.');
    text.starts_with(|c: char| c.is_ascii_alphanumeric()) && text.chars().all(inner)
}
