//! `climate.csv`.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use model::climate::Month;
use model::{Arg, Climate, Finding, Severity};
use std::collections::{BTreeMap, HashMap};
use std::io::Read;

const LAYOUT: Layout = Layout {
    required: &["site", "month"],
    optional: &["tmean_c", "tmin_c", "tmax_c", "rain_mm"],
};

/// One month of one site.
#[derive(Clone, PartialEq, Debug)]
pub struct ClimateRow {
    /// The site, as written in `palms.csv`.
    pub site: String,
    /// 1..=12.
    pub month: u8,
    /// Its means.
    pub means: Month,
}

/// Reads `climate.csv` row by row; refuses a month given twice for a site.
pub struct ClimateReader<R> {
    table: Table<R>,
    site: Col,
    month: Col,
    temperatures: [Col; 3],
    rain: Col,
    seen: HashMap<(String, u8), u64>,
}

impl<R: Read> ClimateReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<ClimateReader<R>, Refusal> {
        let table = Table::open(read, &LAYOUT)?;
        Ok(ClimateReader {
            site: table.column("site"),
            month: table.column("month"),
            temperatures: ["tmean_c", "tmin_c", "tmax_c"].map(|name| table.column(name)),
            rain: table.column("rain_mm"),
            seen: HashMap::new(),
            table,
        })
    }

    fn row(&mut self) -> Result<ClimateRow, Fault> {
        let t = &self.table;
        let site = cells::text(self.site, t.cell(self.site))?;
        let cell = t.cell(self.month);
        let month = cells::whole(self.month, cell, 12)
            .ok()
            .flatten()
            .filter(|m| *m >= 1);
        let month = month.ok_or_else(|| Fault::cell("intake-bad-month", "month", cell))? as u8;
        let [mean, min, max] = self
            .temperatures
            .map(|col| cells::number(col, t.cell(col), -60.0, 60.0));
        let rain_mm = cells::number(self.rain, t.cell(self.rain), 0.0, 5000.0)?;
        let means = Month {
            tmean_c: mean?,
            tmin_c: min?,
            tmax_c: max?,
            rain_mm,
        };
        if let Some(first) = self.seen.get(&(site.clone(), month)) {
            return Err(Fault::cell("intake-doubled-month", "month", cell)
                .with("first", Arg::Count(*first as i64)));
        }
        self.seen.insert((site.clone(), month), t.line());
        Ok(ClimateRow { site, month, means })
    }
}

/// Gathers months into climates by site, with a remark for each site whose twelve mean temperatures are not all known.
pub fn climates(
    rows: impl IntoIterator<Item = ClimateRow>,
) -> (BTreeMap<String, Climate>, Vec<Finding>) {
    let mut sites: BTreeMap<String, Climate> = BTreeMap::new();
    for row in rows {
        sites.entry(row.site).or_default().months[usize::from(row.month) - 1] = row.means;
    }
    let incomplete = sites
        .iter()
        .filter(|(_, c)| c.tmean().is_none())
        .map(|(site, _)| {
            Finding::new("intake-climate-incomplete", Severity::Caution)
                .with("site", Arg::Text(site.clone()))
        });
    let findings = incomplete.collect();
    (sites, findings)
}

rows!(ClimateReader<R>, ClimateRow, <R>);
about!(ClimateReader<R>, <R>, table);
