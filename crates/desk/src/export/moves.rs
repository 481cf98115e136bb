//! `moves.csv`.

use super::Error;
use super::columns::Extra;
use super::tables::{count, date, number, standing};
use crate::intake::MOVE_COLUMNS;
use model::state::PalmRecord;
use model::{Metres, Move, State, Tending};
use std::io::Write;

/// Writes `moves.csv`, by tag and day; returns the number of rows.
pub fn moves(state: &State, out: impl Write) -> Result<u64, Error> {
    let all = || standing(state).flat_map(|record| of(record).map(move |moved| (record, moved)));
    let extra = Extra::of(all().map(|(_, moved)| &moved.extra), &MOVE_COLUMNS);
    let mut out = csv::Writer::from_writer(out);
    out.write_record(MOVE_COLUMNS.into_iter().chain(extra.headers()))?;
    let mut rows = 0;
    for (record, moved) in all() {
        let cells = cells(&record.palm.tag, moved).into_iter();
        out.write_record(cells.chain(extra.cells(&moved.extra)).collect::<Vec<_>>())?;
        rows += 1;
    }
    out.flush()?;
    Ok(rows)
}

fn of(record: &PalmRecord) -> impl Iterator<Item = &Move> {
    record
        .tended
        .iter()
        .filter_map(|tended| match &tended.what {
            Tending::Moved(moved) => Some(moved),
            _ => None,
        })
}

fn cells(tag: &str, moved: &Move) -> [String; 12] {
    let metres = |m: Option<Metres>| number(m.map(|m| m.0));
    [
        tag.to_owned(),
        moved.dug_on.to_string(),
        date(moved.planted_on),
        moved.from.clone(),
        metres(moved.ball_radius),
        metres(moved.ball_depth),
        moved.leaves.map_or("", |l| l.word()).to_owned(),
        count(moved.fronds_taken),
        metres(moved.deeper),
        moved.bracing.clone(),
        moved.soil.clone(),
        moved.notes.clone(),
    ]
}
