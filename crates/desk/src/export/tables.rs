//! `palms.csv` and `inspections.csv`.

use super::Error;
use super::columns::Extra;
use model::state::PalmRecord;
use model::{Clock, Day, Inspection, Metres, Palm, Spear, State};
use std::io::Write;
use std::sync::Arc;

const PALM_COLUMNS: [&str; 15] = [
    "tag",
    "species",
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
];

const INSPECTION_COLUMNS: [&str; 16] = [
    "tag",
    "stem",
    "date",
    "green",
    "yellowing",
    "brown",
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
];

/// Standing palms in the order of their tags.
pub(super) fn standing(state: &State) -> impl Iterator<Item = &Arc<PalmRecord>> {
    state.tags().values().filter_map(|id| state.palm(*id))
}

/// Writes `palms.csv`; returns the number of rows.
pub fn palms(state: &State, out: impl Write) -> Result<u64, Error> {
    let extra = Extra::of(standing(state).map(|r| &r.palm.extra), &PALM_COLUMNS);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(PALM_COLUMNS.into_iter().chain(extra.headers()))?;
    let mut rows = 0;
    for record in standing(state) {
        let cells = palm_cells(&record.palm)
            .into_iter()
            .chain(extra.cells(&record.palm.extra));
        out.write_record(cells.collect::<Vec<_>>())?;
        rows += 1;
    }
    out.flush()?;
    Ok(rows)
}

fn palm_cells(palm: &Palm) -> [String; 15] {
    let metres = |m: Option<Metres>| number(m.map(|m| m.0));
    [
        palm.tag.clone(),
        palm.species.clone(),
        palm.site.clone(),
        palm.stems.to_string(),
        date(palm.planted_on),
        date(palm.moved_on),
        date(palm.last_cleaned_on),
        metres(palm.trunk_height),
        number(palm.position.map(|p| p.lat)),
        number(palm.position.map(|p| p.lon)),
        palm.over.clone(),
        metres(palm.wires),
        palm.notes.clone(),
        number(palm.full_crown),
        number(palm.fronds_per_year),
    ]
}

/// Writes `inspections.csv`, by tag, stem and date; returns the number of rows.
pub fn inspections(state: &State, out: impl Write) -> Result<u64, Error> {
    let all = standing(state).flat_map(|r| &r.inspections);
    let extra = Extra::of(all.map(|i| &i.extra), &INSPECTION_COLUMNS);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(INSPECTION_COLUMNS.into_iter().chain(extra.headers()))?;
    let mut rows = 0;
    for record in standing(state) {
        for inspection in &record.inspections {
            let cells = inspection_cells(&record.palm.tag, inspection)
                .into_iter()
                .chain(extra.cells(&inspection.extra));
            out.write_record(cells.collect::<Vec<_>>())?;
            rows += 1;
        }
    }
    out.flush()?;
    Ok(rows)
}

fn inspection_cells(tag: &str, i: &Inspection) -> [String; 16] {
    let clock = |c: Option<Clock>| number(c.map(|c| c.0));
    [
        tag.to_owned(),
        i.stem.to_string(),
        i.date.to_string(),
        count(i.green),
        count(i.yellowing),
        count(i.brown),
        count(i.new_leaves),
        count(i.removed.green),
        count(i.removed.yellowing),
        count(i.removed.brown),
        i.spear.map_or("", Spear::word).to_owned(),
        clock(i.clock_left),
        clock(i.clock_right),
        i.signs.join(";"),
        i.absent.join(";"),
        i.notes.clone(),
    ]
}

pub(super) fn date(day: Option<Day>) -> String {
    day.map_or_else(String::new, |d| d.to_string())
}

pub(super) fn count(n: Option<u32>) -> String {
    n.map_or_else(String::new, |n| n.to_string())
}

/// The shortest text that reads back as the same number.
pub(super) fn number(x: Option<f64>) -> String {
    x.map_or_else(String::new, |x| x.to_string())
}
