//! `palms.csv`.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use model::{Arg, Day, Finding, Metres, Palm, Position, Severity};
use std::collections::HashMap;
use std::io::Read;

const LAYOUT: Layout = Layout {
    required: &["tag", "species"],
    optional: &[
        "site",
        "stems",
        "planted_on",
        "moved_on",
        "last_cleaned_on",
        "trunk_height_m",
        "lat",
        "lon",
        "over",
        "wires_m",
        "notes",
        "full_crown",
        "fronds_per_year",
    ],
};

/// Most stems that are believed.
const MOST_STEMS: u32 = 200;

/// Taller than any palm ever measured; a larger figure is most likely in feet.
const TALLEST_M: f64 = 80.0;

struct Columns {
    tag: Col,
    species: Col,
    site: Col,
    stems: Col,
    planted_on: Col,
    moved_on: Col,
    last_cleaned_on: Col,
    trunk_height_m: Col,
    lat: Col,
    lon: Col,
    over: Col,
    wires_m: Col,
    notes: Col,
    full_crown: Col,
    fronds_per_year: Col,
}

impl Columns {
    fn of(table: &Table<impl Read>) -> Columns {
        Columns {
            tag: table.column("tag"),
            species: table.column("species"),
            site: table.column("site"),
            stems: table.column("stems"),
            planted_on: table.column("planted_on"),
            moved_on: table.column("moved_on"),
            last_cleaned_on: table.column("last_cleaned_on"),
            trunk_height_m: table.column("trunk_height_m"),
            lat: table.column("lat"),
            lon: table.column("lon"),
            over: table.column("over"),
            wires_m: table.column("wires_m"),
            notes: table.column("notes"),
            full_crown: table.column("full_crown"),
            fronds_per_year: table.column("fronds_per_year"),
        }
    }
}

/// Reads `palms.csv` row by row; refuses doubled tags. Where `stems` is empty one stem is taken.
pub struct PalmReader<R> {
    table: Table<R>,
    columns: Columns,
    seen: HashMap<String, u64>,
    today: Option<Day>,
}

impl<R: Read> PalmReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<PalmReader<R>, Refusal> {
        let table = Table::open(read, &LAYOUT)?;
        let columns = Columns::of(&table);
        Ok(PalmReader {
            table,
            columns,
            seen: HashMap::new(),
            today: None,
        })
    }

    /// From now on dates after `today` are refused: what has not happened cannot be recorded.
    pub fn not_after(mut self, today: Day) -> PalmReader<R> {
        self.today = Some(today);
        self
    }

    fn palm(&mut self) -> Result<Palm, Fault> {
        let (t, c) = (&self.table, &self.columns);
        let tag = cells::tag(c.tag, t.cell(c.tag))?;
        if let Some(first) = self.seen.get(&tag) {
            return Err(Fault::cell("intake-doubled-tag", "tag", &tag)
                .with("first", Arg::Count(*first as i64)));
        }
        let palm = Palm {
            tag: tag.clone(),
            species: cells::text(c.species, t.cell(c.species))?,
            site: cells::text(c.site, t.cell(c.site))?,
            stems: stems(c.stems, t.cell(c.stems))?,
            planted_on: self.past(c.planted_on)?,
            moved_on: self.past(c.moved_on)?,
            last_cleaned_on: self.past(c.last_cleaned_on)?,
            trunk_height: cells::number(
                c.trunk_height_m,
                t.cell(c.trunk_height_m),
                0.0,
                TALLEST_M,
            )?
            .map(Metres),
            position: position(c, t.cell(c.lat), t.cell(c.lon))?,
            over: cells::text(c.over, t.cell(c.over))?,
            wires: cells::number(c.wires_m, t.cell(c.wires_m), 0.0, 10_000.0)?.map(Metres),
            full_crown: cells::number(c.full_crown, t.cell(c.full_crown), 1.0, 1000.0)?,
            fronds_per_year: cells::number(
                c.fronds_per_year,
                t.cell(c.fronds_per_year),
                0.1,
                1000.0,
            )?,
            notes: cells::text(c.notes, t.cell(c.notes))?,
            extra: t.extra(),
        };
        self.seen.insert(tag, t.line());
        Ok(palm)
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

fn stems(column: Col, cell: &str) -> Result<u16, Fault> {
    match cells::whole(column, cell, MOST_STEMS)? {
        None => Ok(1),
        Some(0) => Err(Fault::cell("intake-no-stem", column.name, cell)),
        Some(n) => Ok(n as u16),
    }
}

fn position(c: &Columns, lat: &str, lon: &str) -> Result<Option<Position>, Fault> {
    let lat_deg = cells::number(c.lat, lat, -90.0, 90.0)?;
    let lon_deg = cells::number(c.lon, lon, -180.0, 180.0)?;
    match (lat_deg, lon_deg) {
        (Some(lat), Some(lon)) => Ok(Some(Position { lat, lon })),
        (None, None) => Ok(None),
        (Some(_), None) => Err(Fault::cell("intake-half-position", "lon", lon)),
        (None, Some(_)) => Err(Fault::cell("intake-half-position", "lat", lat)),
    }
}

/// Things that are odd but possible.
fn remarks(palm: &Palm) -> Vec<Finding> {
    let mut out = Vec::new();
    if let (Some(planted), Some(moved)) = (palm.planted_on, palm.moved_on) {
        // dug, held in a yard, planted: up to a year is usual, more is most likely a slip
        if planted.since(moved) > 365 {
            out.push(
                Finding::new("intake-moved-long-before-planted", Severity::Caution)
                    .with("moved", Arg::Date(moved))
                    .with("planted", Arg::Date(planted)),
            );
        }
    }
    out
}

rows!(PalmReader<R>, Palm, <R>, table, |reader| {
    let palm = reader.palm()?;
    let remarks = remarks(&palm);
    Ok((palm, remarks))
});
about!(PalmReader<R>, <R>, table);
