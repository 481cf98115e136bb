//! `signs.csv`: what was seen on palms, to be judged.

use super::cells;
use super::inspections::signs;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use model::{Arg, Day};
use std::io::Read;

const LAYOUT: Layout = Layout {
    required: &["tag", "species", "signs"],
    optional: &[
        "absent",
        "date",
        "moved_on",
        "planted_on",
        "frost_on",
        "storm_on",
        "lat",
    ],
};

/// What was seen on one palm.
#[derive(Clone, PartialEq, Debug)]
pub struct SignsRow {
    /// The palm's tag.
    pub tag: String,
    /// Its species as written; may be empty.
    pub species: String,
    /// Keys of signs seen.
    pub signs: Vec<String>,
    /// Keys of signs looked for and not there.
    pub absent: Vec<String>,
    /// The day of the look.
    pub date: Option<Day>,
    /// Day it was dug and moved.
    pub moved_on: Option<Day>,
    /// Day it was planted where it stands.
    pub planted_on: Option<Day>,
    /// Day of the last frost that may have hurt it.
    pub frost_on: Option<Day>,
    /// Day of the last storm that may have hurt it.
    pub storm_on: Option<Day>,
    /// Degrees, north positive.
    pub lat: Option<f64>,
}

struct Columns {
    tag: Col,
    species: Col,
    signs: Col,
    absent: Col,
    date: Col,
    moved_on: Col,
    planted_on: Col,
    frost_on: Col,
    storm_on: Col,
    lat: Col,
}

/// Reads a file of signs row by row. A palm may stand in it as often as it was looked at.
pub struct SignsReader<R> {
    table: Table<R>,
    columns: Columns,
    today: Option<Day>,
}

impl<R: Read> SignsReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<SignsReader<R>, Refusal> {
        let table = Table::open(read, &LAYOUT)?;
        let columns = Columns {
            tag: table.column("tag"),
            species: table.column("species"),
            signs: table.column("signs"),
            absent: table.column("absent"),
            date: table.column("date"),
            moved_on: table.column("moved_on"),
            planted_on: table.column("planted_on"),
            frost_on: table.column("frost_on"),
            storm_on: table.column("storm_on"),
            lat: table.column("lat"),
        };
        Ok(SignsReader {
            table,
            columns,
            today: None,
        })
    }

    /// From now on dates after `today` are refused.
    pub fn not_after(mut self, today: Day) -> SignsReader<R> {
        self.today = Some(today);
        self
    }

    fn row(&self) -> Result<SignsRow, Fault> {
        let (t, c) = (&self.table, &self.columns);
        let keys = |col: Col| Ok(signs(&cells::text(col, t.cell(col))?));
        Ok(SignsRow {
            tag: cells::tag(c.tag, t.cell(c.tag))?,
            species: cells::text(c.species, t.cell(c.species))?,
            signs: keys(c.signs)?,
            absent: keys(c.absent)?,
            date: self.past(c.date)?,
            moved_on: self.past(c.moved_on)?,
            planted_on: self.past(c.planted_on)?,
            frost_on: self.past(c.frost_on)?,
            storm_on: self.past(c.storm_on)?,
            lat: cells::number(c.lat, t.cell(c.lat), -90.0, 90.0)?,
        })
    }

    fn past(&self, column: Col) -> Result<Option<Day>, Fault> {
        let cell = self.table.cell(column);
        let day = cells::date(column, cell)?;
        match (day, self.today) {
            (Some(day), Some(today)) if day > today => {
                Err(Fault::cell("intake-date-in-future", column.name, cell)
                    .with("today", Arg::Date(today)))
            }
            _ => Ok(day),
        }
    }
}

rows!(SignsReader<R>, SignsRow, <R>);
about!(SignsReader<R>, <R>, table);
