//! The cuts of a round to come, in their order, for the rotation of blade sets.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use std::io::Read;

const LAYOUT: Layout = Layout {
    required: &["tag", "minutes"],
    optional: &["needs_clean"],
};

/// Longest cut that is believed, minutes: a day.
const LONGEST_CUT: f64 = 1440.0;

/// One cut to come.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundRow {
    /// The palm.
    pub tag: String,
    /// Minutes of cutting.
    pub minutes: f64,
    /// Whether the blade must be clean before it, where the file says so.
    pub needs_clean: Option<bool>,
}

struct Columns {
    tag: Col,
    minutes: Col,
    needs_clean: Col,
}

/// Reads the cuts of a round row by row.
pub struct RoundReader<R> {
    table: Table<R>,
    columns: Columns,
}

impl<R: Read> RoundReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<RoundReader<R>, Refusal> {
        let table = Table::open(read, &LAYOUT)?;
        let columns = Columns {
            tag: table.column("tag"),
            minutes: table.column("minutes"),
            needs_clean: table.column("needs_clean"),
        };
        Ok(RoundReader { table, columns })
    }

    fn row(&self) -> Result<RoundRow, Fault> {
        let (t, c) = (&self.table, &self.columns);
        let minutes = cells::number(c.minutes, t.cell(c.minutes), 0.0, LONGEST_CUT)?;
        let needs_clean = match t.cell(c.needs_clean) {
            "" => None,
            yes if yes.eq_ignore_ascii_case("yes") => Some(true),
            no if no.eq_ignore_ascii_case("no") => Some(false),
            other => {
                return Err(Fault::cell(
                    "rotation-not-yes-or-no",
                    c.needs_clean.name,
                    other,
                ));
            }
        };
        Ok(RoundRow {
            tag: cells::tag(c.tag, t.cell(c.tag))?,
            minutes: minutes.ok_or_else(|| Fault::cell("rotation-no-minutes", "minutes", ""))?,
            needs_clean,
        })
    }
}

rows!(RoundReader<R>, RoundRow, <R>);
about!(RoundReader<R>, <R>, table);
