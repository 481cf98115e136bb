//! `touches.csv`: what blades cut and how they were cleaned.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use model::{Arg, Day, Moment};
use std::io::Read;

const LAYOUT: Layout = Layout {
    required: &["time", "blade", "what", "tag"],
    optional: &["agent", "strength_pct", "contact_min", "who"],
};

/// Longest contact that is believed, minutes: a week.
const LONGEST_CONTACT: f64 = 10_080.0;

/// One thing a blade did.
#[derive(Clone, PartialEq, Debug)]
pub struct TouchRow {
    /// When it ended.
    pub at: Moment,
    /// Tag of the blade.
    pub blade: String,
    /// What.
    pub what: TouchWhat,
}

/// A cut or a cleaning.
#[derive(Clone, PartialEq, Debug)]
pub enum TouchWhat {
    /// A cut of the palm with this tag.
    Cut(String),
    /// A cleaning.
    Clean {
        /// As written; empty if not noted.
        agent: String,
        /// Percent by volume in the bath.
        strength_pct: Option<f64>,
        /// Minutes of contact.
        contact_min: Option<f64>,
    },
}

struct Columns {
    time: Col,
    blade: Col,
    what: Col,
    tag: Col,
    agent: Col,
    strength_pct: Col,
    contact_min: Col,
}

/// Reads `touches.csv` row by row, in any order of time.
pub struct TouchReader<R> {
    table: Table<R>,
    columns: Columns,
    today: Option<Day>,
}

impl<R: Read> TouchReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<TouchReader<R>, Refusal> {
        let table = Table::open(read, &LAYOUT)?;
        let columns = Columns {
            time: table.column("time"),
            blade: table.column("blade"),
            what: table.column("what"),
            tag: table.column("tag"),
            agent: table.column("agent"),
            strength_pct: table.column("strength_pct"),
            contact_min: table.column("contact_min"),
        };
        Ok(TouchReader {
            table,
            columns,
            today: None,
        })
    }

    /// From now on moments after `today` are refused, wherever on earth it is still today.
    pub fn not_after(mut self, today: Day) -> TouchReader<R> {
        self.today = Some(today);
        self
    }

    fn row(&self) -> Result<TouchRow, Fault> {
        let (t, c) = (&self.table, &self.columns);
        let at = self.time(c.time)?;
        let blade = t.cell(c.blade);
        if blade.is_empty() {
            return Err(Fault::cell("touches-no-blade", "blade", blade));
        }
        let blade = cells::tag(c.blade, blade)?;
        let what = match t.cell(c.what) {
            "cut" => self.cut()?,
            "clean" => self.clean()?,
            other => return Err(Fault::cell("touches-bad-what", "what", other)),
        };
        Ok(TouchRow { at, blade, what })
    }

    fn time(&self, col: Col) -> Result<Moment, Fault> {
        /// The day begins up to 14 hours earlier and ends up to 12 hours later than in Greenwich.
        const WEST: i64 = 12 * 3_600_000;
        let cell = self.table.cell(col);
        let Some(at) = Moment::parse(cell) else {
            // a time that would do with a zone behind it
            let zoned = Moment::parse(&format!("{cell}Z")).is_some();
            let code = if zoned {
                "touches-no-zone"
            } else {
                "touches-bad-time"
            };
            return Err(Fault::cell(code, "time", cell));
        };
        match self.today {
            Some(today) if Moment(at.0 - WEST).day() > today => {
                Err(Fault::cell("intake-date-in-future", "time", cell)
                    .with("today", Arg::Date(today)))
            }
            _ => Ok(at),
        }
    }

    fn cut(&self) -> Result<TouchWhat, Fault> {
        let (t, c) = (&self.table, &self.columns);
        for col in [c.agent, c.strength_pct, c.contact_min] {
            if !t.cell(col).is_empty() {
                return Err(Fault::cell("touches-cut-cleaned", col.name, t.cell(col)));
            }
        }
        Ok(TouchWhat::Cut(cells::tag(c.tag, t.cell(c.tag))?))
    }

    fn clean(&self) -> Result<TouchWhat, Fault> {
        let (t, c) = (&self.table, &self.columns);
        Ok(TouchWhat::Clean {
            agent: cells::text(c.agent, t.cell(c.agent))?,
            strength_pct: cells::number(c.strength_pct, t.cell(c.strength_pct), 0.0, 100.0)?,
            contact_min: cells::number(c.contact_min, t.cell(c.contact_min), 0.0, LONGEST_CONTACT)?,
        })
    }
}

rows!(TouchReader<R>, TouchRow, <R>);
about!(TouchReader<R>, <R>, table);
