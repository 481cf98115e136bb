//! `blades.csv`, `cuts.csv`, `cleanings.csv` and `touches.csv`.

use super::Error;
use super::columns::Extra;
use super::tables::{count, number};
use crate::blades::told;
use model::state::{BladeRecord, BladeTouch, Touch};
use model::{CutMade, Moment, PalmId, State};
use std::io::Write;

const BLADE_COLUMNS: [&str; 5] = ["tag", "kind", "kit", "holder", "notes"];

const CUT_COLUMNS: [&str; 12] = [
    "time",
    "started",
    "blade",
    "tag",
    "stem",
    "off_green",
    "off_yellowing",
    "off_brown",
    "off_stalks",
    "who",
    "despite",
    "notes",
];

const CLEANING_COLUMNS: [&str; 8] = [
    "time",
    "blade",
    "agent",
    "strength_pct",
    "contact_min",
    "brushed",
    "bath_mixed",
    "who",
];

const TOUCH_COLUMNS: [&str; 8] = [
    "time",
    "blade",
    "what",
    "tag",
    "agent",
    "strength_pct",
    "contact_min",
    "who",
];

/// Writes `blades.csv`: blades in service, by tag; returns the number of rows.
pub fn blades(state: &State, out: impl Write) -> Result<u64, Error> {
    let all = || {
        state
            .blade_tags()
            .values()
            .filter_map(|id| state.blade(*id))
    };
    let extra = Extra::of(all().map(|r| &r.blade.extra), &BLADE_COLUMNS);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(BLADE_COLUMNS.into_iter().chain(extra.headers()))?;
    let mut rows = 0;
    for record in all() {
        let blade = &record.blade;
        let own = [
            blade.tag.clone(),
            blade.kind.word().to_owned(),
            blade.kit.clone(),
            blade.holder.clone(),
            blade.notes.clone(),
        ];
        let cells = own.into_iter().chain(extra.cells(&blade.extra));
        out.write_record(cells.collect::<Vec<_>>())?;
        rows += 1;
    }
    out.flush()?;
    Ok(rows)
}

/// Writes `cuts.csv` in the order of time; returns the number of rows.
pub fn cuts(state: &State, out: impl Write) -> Result<u64, Error> {
    let cuts: Vec<(&BladeRecord, &BladeTouch, &CutMade)> = touched(state)
        .into_iter()
        .filter_map(|(record, touch)| match &touch.what {
            Touch::Cut(cut) => Some((record, touch, &**cut)),
            _ => None,
        })
        .collect();
    let extra = Extra::of(cuts.iter().map(|(.., cut)| &cut.extra), &CUT_COLUMNS);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(CUT_COLUMNS.into_iter().chain(extra.headers()))?;
    for (record, touch, cut) in &cuts {
        let own = [
            touch.at.to_string(),
            moment(cut.started),
            record.blade.tag.clone(),
            palm_tag(state, cut.palm),
            cut.stem.to_string(),
            count(cut.off.green),
            count(cut.off.yellowing),
            count(cut.off.brown),
            count(cut.off.stalks),
            cut.crew.clone(),
            cut.despite.clone(),
            cut.notes.clone(),
        ];
        let cells = own.into_iter().chain(extra.cells(&cut.extra));
        out.write_record(cells.collect::<Vec<_>>())?;
    }
    out.flush()?;
    Ok(cuts.len() as u64)
}

/// Writes `cleanings.csv` in the order of time; agent and strength are those of the bath where the cleaning tells none.
/// Returns the number of rows.
pub fn cleanings(state: &State, out: impl Write) -> Result<u64, Error> {
    let all = touched(state);
    let extras = all.iter().filter_map(|(_, touch)| match &touch.what {
        Touch::Cleaned(cleaning) => Some(&cleaning.extra),
        _ => None,
    });
    let extra = Extra::of(extras, &CLEANING_COLUMNS);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(CLEANING_COLUMNS.into_iter().chain(extra.headers()))?;
    let mut rows = 0;
    for (record, touch) in &all {
        let Touch::Cleaned(cleaning) = &touch.what else {
            continue;
        };
        let how = told(state, cleaning, touch.at);
        let bath = cleaning.bath.and_then(|id| state.baths.get(&id));
        let own = [
            touch.at.to_string(),
            record.blade.tag.clone(),
            how.agent.to_owned(),
            number(how.strength_pct),
            number(how.contact_min),
            how.brushed.map_or("", yes_or_no).to_owned(),
            moment(bath.map(|bath| bath.mixed)),
            cleaning.by.clone(),
        ];
        let cells = own.into_iter().chain(extra.cells(&cleaning.extra));
        out.write_record(cells.collect::<Vec<_>>())?;
        rows += 1;
    }
    out.flush()?;
    Ok(rows)
}

/// Writes `touches.csv`: cuts and cleanings in the order of time; returns the number of rows.
pub fn touches(state: &State, out: impl Write) -> Result<u64, Error> {
    let mut out = csv::Writer::from_writer(out);
    out.write_record(TOUCH_COLUMNS)?;
    let mut rows = 0;
    for (record, touch) in touched(state) {
        let none = String::new;
        let (what, tag, agent, strength, contact, who) = match &touch.what {
            Touch::Cut(cut) => {
                let tag = palm_tag(state, cut.palm);
                ("cut", tag, none(), none(), none(), cut.crew.clone())
            }
            Touch::Cleaned(cleaning) => {
                let how = told(state, cleaning, touch.at);
                (
                    "clean",
                    none(),
                    how.agent.to_owned(),
                    number(how.strength_pct),
                    number(how.contact_min),
                    cleaning.by.clone(),
                )
            }
            Touch::Lent(_) | Touch::Returned => continue,
        };
        let (time, blade) = (touch.at.to_string(), record.blade.tag.clone());
        let what = what.to_owned();
        out.write_record([time, blade, what, tag, agent, strength, contact, who])?;
        rows += 1;
    }
    out.flush()?;
    Ok(rows)
}

/// Everything that blades did, retired ones included, in the order of time.
fn touched(state: &State) -> Vec<(&BladeRecord, &BladeTouch)> {
    let records = state.blades.values().map(|record| &**record);
    let mut all: Vec<(&BladeRecord, &BladeTouch)> = records
        .flat_map(|record| record.touches.iter().map(move |touch| (record, touch)))
        .collect();
    all.sort_by_key(|(_, touch)| (touch.at, touch.entry));
    all
}

/// The tag of a palm, standing or not; the id of one that nobody registered.
fn palm_tag(state: &State, palm: PalmId) -> String {
    match state.palm(palm) {
        Some(record) => record.palm.tag.clone(),
        None => palm.0.to_string(),
    }
}

fn moment(at: Option<Moment>) -> String {
    at.map_or_else(String::new, |at| at.to_string())
}

fn yes_or_no(yes: bool) -> &'static str {
    if yes { "yes" } else { "no" }
}
