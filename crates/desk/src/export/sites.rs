//! `sites.csv` and `crews.csv`.

use super::Error;
use super::columns::Extra;
use super::tables::{count, number};
use crate::intake::{CREW_COLUMNS, SITE_COLUMNS};
use crate::timetable::{write_closed, write_hours, write_rules};
use model::{CrewWords, Position, Site, State};
use std::collections::BTreeMap;
use std::io::Write;

/// Writes `sites.csv`, by name; returns the number of rows.
pub fn sites(state: &State, out: impl Write) -> Result<u64, Error> {
    let rows = state.work.sites.values();
    let rows = rows.map(|site| (&site.extra, site_cells(site).to_vec()));
    table(&SITE_COLUMNS, rows.collect(), out)
}

/// Writes `crews.csv`, by name, gone ones included; returns the number of rows.
pub fn crews(state: &State, out: impl Write) -> Result<u64, Error> {
    let rows = state.work.crews.values();
    let rows = rows.map(|crew| (&crew.extra, crew_cells(crew).to_vec()));
    table(&CREW_COLUMNS, rows.collect(), out)
}

fn table(
    columns: &[&str],
    rows: Vec<(&BTreeMap<String, String>, Vec<String>)>,
    out: impl Write,
) -> Result<u64, Error> {
    let extra = Extra::of(rows.iter().map(|(extra, _)| *extra), columns);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(columns.iter().copied().chain(extra.headers()))?;
    let count = rows.len() as u64;
    for (own, cells) in rows {
        let cells = cells.into_iter().chain(extra.cells(own));
        out.write_record(cells.collect::<Vec<_>>())?;
    }
    out.flush()?;
    Ok(count)
}

fn site_cells(site: &Site) -> [String; 14] {
    [
        site.name.clone(),
        site.owner.clone(),
        lat(site.gate),
        lon(site.gate),
        write_hours(&site.hours),
        write_closed(&site.closed),
        site.soil.clone(),
        answer(site.coastal),
        answer(site.weevil_area),
        number(site.line_kv),
        write_rules(&site.no_feeding),
        count(site.tidy),
        count(site.limit),
        site.notes.clone(),
    ]
}

fn crew_cells(crew: &CrewWords) -> [String; 12] {
    [
        crew.name.clone(),
        count(crew.people),
        lat(crew.from),
        lon(crew.from),
        lat(crew.to),
        lon(crew.to),
        write_hours(crew.hours.as_slice()),
        crew.skills.join(";"),
        crew.kit.join(";"),
        number(crew.room_m3),
        answer(crew.gone.then_some(true)),
        crew.notes.clone(),
    ]
}

fn lat(place: Option<Position>) -> String {
    number(place.map(|p| p.lat))
}

fn lon(place: Option<Position>) -> String {
    number(place.map(|p| p.lon))
}

fn answer(answer: Option<bool>) -> String {
    match answer {
        Some(true) => "yes".to_owned(),
        Some(false) => "no".to_owned(),
        None => String::new(),
    }
}
