//! `inspections.csv`.

use super::cells::{self, Side};
use super::known::{Known, KnownPalm};
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use model::{Arg, Day, Finding, Inspection, Removed, Severity, Spear};
use std::collections::HashMap;
use std::io::Read;

const LAYOUT: Layout = Layout {
    required: &["tag", "date", "green", "yellowing", "brown"],
    optional: &[
        "stem",
        "new_leaves",
        "removed_green",
        "removed_yellowing",
        "removed_brown",
        "spear",
        "clock_left",
        "clock_right",
        "signs",
        "absent",
        "notes",
    ],
};

/// More unknown tags than this get no offer of the nearest: looking for it costs time in proportion to the register.
const MOST_OFFERS: u32 = 50;

/// One inspection of one palm.
#[derive(Clone, PartialEq, Debug)]
pub struct InspectionRow {
    /// The palm's tag.
    pub tag: String,
    /// The palm's index in [`Known`].
    pub palm: u32,
    /// What was seen.
    pub inspection: Inspection,
}

struct Columns {
    tag: Col,
    stem: Col,
    date: Col,
    green: Col,
    yellowing: Col,
    brown: Col,
    new_leaves: Col,
    removed_green: Col,
    removed_yellowing: Col,
    removed_brown: Col,
    spear: Col,
    clock_left: Col,
    clock_right: Col,
    signs: Col,
    absent: Col,
    notes: Col,
}

impl Columns {
    fn of(table: &Table<impl Read>) -> Columns {
        Columns {
            tag: table.column("tag"),
            stem: table.column("stem"),
            date: table.column("date"),
            green: table.column("green"),
            yellowing: table.column("yellowing"),
            brown: table.column("brown"),
            new_leaves: table.column("new_leaves"),
            removed_green: table.column("removed_green"),
            removed_yellowing: table.column("removed_yellowing"),
            removed_brown: table.column("removed_brown"),
            spear: table.column("spear"),
            clock_left: table.column("clock_left"),
            clock_right: table.column("clock_right"),
            signs: table.column("signs"),
            absent: table.column("absent"),
            notes: table.column("notes"),
        }
    }
}

/// Reads `inspections.csv` row by row against the palms that are known. Any order of rows is taken; the same stem twice
/// on a day is refused. Where `stem` is empty stem 1 is taken if the palm has one stem, else the row is refused.
pub struct InspectionReader<'k, R> {
    table: Table<R>,
    columns: Columns,
    known: &'k Known,
    seen: HashMap<(u32, u16, Day), u64>,
    latest: HashMap<(u32, u16), Day>,
    out_of_order: i64,
    offers: u32,
    today: Option<Day>,
}

impl<'k, R: Read> InspectionReader<'k, R> {
    /// Reads the header.
    pub fn open(read: R, known: &'k Known) -> Result<InspectionReader<'k, R>, Refusal> {
        let table = Table::open(read, &LAYOUT)?;
        let columns = Columns::of(&table);
        Ok(InspectionReader {
            table,
            columns,
            known,
            seen: HashMap::new(),
            latest: HashMap::new(),
            out_of_order: 0,
            offers: 0,
            today: None,
        })
    }

    /// From now on dates after `today` are refused.
    pub fn not_after(mut self, today: Day) -> InspectionReader<'k, R> {
        self.today = Some(today);
        self
    }

    fn row(&mut self) -> Result<InspectionRow, Fault> {
        let tag = cells::tag(self.columns.tag, self.table.cell(self.columns.tag))?;
        let palm = self.palm(&tag)?;
        let stem = self.stem(palm)?;
        let date = self.date(palm)?;
        let inspection = self.inspection(stem, date)?;
        self.once_a_day(palm.index, stem, date)?;
        Ok(InspectionRow {
            tag,
            palm: palm.index,
            inspection,
        })
    }

    fn palm(&mut self, tag: &str) -> Result<KnownPalm, Fault> {
        if let Some(palm) = self.known.get(tag) {
            return Ok(palm);
        }
        self.offers += 1;
        let offer = if self.offers <= MOST_OFFERS {
            self.known.nearest(tag)
        } else {
            None
        };
        Err(match offer {
            None => Fault::cell("intake-unknown-palm", "tag", tag),
            Some(near) => Fault::cell("intake-unknown-palm-near", "tag", tag)
                .with("offer", Arg::Text(near.to_owned())),
        })
    }

    fn stem(&self, palm: KnownPalm) -> Result<u16, Fault> {
        let cell = self.table.cell(self.columns.stem);
        let most = |f: Fault| f.with("stems", Arg::Count(i64::from(palm.stems)));
        match cells::whole(self.columns.stem, cell, u32::from(u16::MAX))? {
            None if palm.stems == 1 => Ok(1),
            None => Err(most(Fault::cell("intake-which-stem", "stem", cell))),
            Some(n) if n >= 1 && n <= u32::from(palm.stems) => Ok(n as u16),
            Some(_) => Err(most(Fault::cell("intake-no-such-stem", "stem", cell))),
        }
    }

    fn date(&self, palm: KnownPalm) -> Result<Day, Fault> {
        let cell = self.table.cell(self.columns.date);
        let fault = |code| Fault::cell(code, "date", cell);
        let day = cells::date(self.columns.date, cell)?.ok_or_else(|| fault("intake-no-date"))?;
        if let Some(today) = self.today.filter(|t| day > *t) {
            return Err(fault("intake-date-in-future").with("today", Arg::Date(today)));
        }
        // a palm dug elsewhere may have been counted before it was planted here, but not before both
        let begin = palm
            .planted_on
            .map(|p| palm.moved_on.map_or(p, |m| m.min(p)));
        match begin {
            Some(begin) if day < begin && palm.moved_on.is_none() => {
                Err(fault("intake-before-planting").with("planted", Arg::Date(begin)))
            }
            _ => Ok(day),
        }
    }

    fn inspection(&self, stem: u16, date: Day) -> Result<Inspection, Fault> {
        let (t, c) = (&self.table, &self.columns);
        let count = |col: Col| cells::count(col, t.cell(col));
        let inspection = Inspection {
            green: count(c.green)?,
            yellowing: count(c.yellowing)?,
            brown: count(c.brown)?,
            new_leaves: count(c.new_leaves)?,
            removed: Removed {
                green: count(c.removed_green)?,
                yellowing: count(c.removed_yellowing)?,
                brown: count(c.removed_brown)?,
            },
            spear: spear(c.spear, t.cell(c.spear))?,
            clock_left: cells::clock(c.clock_left, t.cell(c.clock_left), Side::Left)?,
            clock_right: cells::clock(c.clock_right, t.cell(c.clock_right), Side::Right)?,
            signs: signs(&cells::text(c.signs, t.cell(c.signs))?),
            absent: signs(&cells::text(c.absent, t.cell(c.absent))?),
            notes: cells::text(c.notes, t.cell(c.notes))?,
            extra: t.extra(),
            ..Inspection::blank(stem, date)
        };
        not_more_off_than_on("removed_green", inspection.removed.green, inspection.green)?;
        not_more_off_than_on(
            "removed_yellowing",
            inspection.removed.yellowing,
            inspection.yellowing,
        )?;
        not_more_off_than_on("removed_brown", inspection.removed.brown, inspection.brown)?;
        Ok(inspection)
    }

    fn once_a_day(&mut self, palm: u32, stem: u16, date: Day) -> Result<(), Fault> {
        let line = self.table.line();
        if let Some(first) = self.seen.get(&(palm, stem, date)) {
            let fault = Fault::cell("intake-twice-a-day", "date", &date.to_string());
            return Err(fault.with("first", Arg::Count(*first as i64)));
        }
        self.seen.insert((palm, stem, date), line);
        let latest = self.latest.entry((palm, stem)).or_insert(date);
        if *latest > date {
            self.out_of_order += 1;
        }
        *latest = date.max(*latest);
        Ok(())
    }
}

fn spear(col: Col, cell: &str) -> Result<Option<Spear>, Fault> {
    if cell.is_empty() {
        return Ok(None);
    }
    let word = cell.to_lowercase();
    Spear::parse(&word).map(Some).ok_or_else(|| {
        let words: Vec<&str> = Spear::ALL.iter().map(|(_, w)| *w).collect();
        Fault::cell("intake-bad-spear", col.name, cell).with("words", Arg::Text(words.join(", ")))
    })
}

/// Keys with `;` between.
pub(super) fn signs(cell: &str) -> Vec<String> {
    cell.split(';')
        .map(str::trim)
        .filter(|s| !s.is_empty())
        .map(str::to_owned)
        .collect()
}

fn not_more_off_than_on(
    column: &'static str,
    off: Option<u32>,
    on: Option<u32>,
) -> Result<(), Fault> {
    match (off, on) {
        (Some(off), Some(on)) if off > on => {
            Err(
                Fault::cell("intake-more-off-than-on", column, &off.to_string())
                    .with("counted", Arg::Count(i64::from(on))),
            )
        }
        _ => Ok(()),
    }
}

rows!(InspectionReader<'k, R>, InspectionRow, <'k, R>);
about!(InspectionReader<'k, R>, <'k, R>, table, |reader, mut remarks| {
    if reader.out_of_order > 0 {
        let finding = Finding::new("intake-out-of-order", Severity::Info);
        remarks.push(finding.with("count", Arg::Count(reader.out_of_order)));
    }
    remarks
});
