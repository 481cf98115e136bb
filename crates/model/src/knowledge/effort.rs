//! What work takes and what it leaves behind: `effort.csv` and `debris.csv`, tables of one form.

use super::Knowledge;
use super::ills::Texts;
use super::origin::SourceIndex;
use super::reader::{Flaw, each_row};
use crate::sourced::{Basis, SourceKey};

pub(super) const EFFORT: &str = "effort.csv";
pub(super) const DEBRIS: &str = "debris.csv";
pub(super) const HEADER: [&str; 9] = [
    "key", "low", "mid", "high", "unit", "given", "text", "text_es", "sources",
];

/// A figure with a stretch: one time in ten it is below `low`, one time in ten above `high`.
#[derive(Clone, PartialEq, Debug)]
pub struct EffortRow {
    /// Stable key; prices and figures of the keeper use it, too.
    pub key: String,
    /// Seldom less.
    pub low: f64,
    /// As a rule.
    pub mid: f64,
    /// Seldom more.
    pub high: f64,
    /// Unit: `min`, `min/m3`, `min/100m`, `times`, `share/m`, `kg`, `kg/m`, `kg/m3`, `m`, `people`, `log`, `visits`.
    pub unit: String,
    /// Which of `low`, `mid`, `high` the sources give; the others are assumed.
    pub given: Vec<String>,
    /// In our words.
    pub text: Texts,
    /// How what is given is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

impl Knowledge {
    /// The row of `effort.csv` or `debris.csv` with this key; `debris.csv` has its keys under `debris.`, as in
    /// `debris.loose`.
    pub fn effort_row(&self, key: &str) -> Option<&EffortRow> {
        match key.strip_prefix("debris.") {
            Some(key) => self.debris.iter().find(|row| row.key == key),
            None => self.effort.iter().find(|row| row.key == key),
        }
    }
}

/// Reads one of the two tables.
pub(super) fn read(
    text: &str,
    table: &'static str,
    index: &SourceIndex,
    flaws: &mut Vec<Flaw>,
) -> Vec<EffortRow> {
    let mut rows = Vec::new();
    each_row(text, table, HEADER, flaws, |r, c: [&str; 9]| {
        let Some(o) = index.origin(r, c[8]) else {
            return;
        };
        let [Some(low), Some(mid), Some(high)] = [c[1], c[2], c[3]].map(|cell| r.number(cell))
        else {
            return r.flaw("no-figure", c[0]);
        };
        rows.push(EffortRow {
            key: c[0].to_owned(),
            low,
            mid,
            high,
            unit: c[4].to_owned(),
            given: super::reader::list(c[5]),
            text: Texts::of(c[6], c[7]),
            basis: o.basis,
            sources: o.sources,
        });
    });
    rows
}
