//! `climate_normals.csv`: monthly means of places.

use super::origin::SourceIndex;
use super::reader::{Flaw, each_row, headers};
use super::rows::Place;
use crate::climate::{Climate, Month};
use crate::units::Position;

pub(super) const MONTHS: usize = 12;

/// One line is one quantity of a place; lines of a place stand together.
pub(super) fn places(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<Place> {
    let mut rows: Vec<Place> = Vec::new();
    each_row(
        text,
        "climate_normals.csv",
        headers::CLIMATE,
        flaws,
        |r, cells| {
            let Some(o) = index.origin(r, cells[17]) else {
                return;
            };
            if rows.last().is_none_or(|p| p.name != cells[0]) {
                let (lat, lon) = (r.number(cells[1]), r.number(cells[2]));
                let (Some(lat), Some(lon)) = (lat, lon) else {
                    return r.flaw("no-position", cells[0]);
                };
                rows.push(Place {
                    name: cells[0].to_owned(),
                    position: Position { lat, lon },
                    elevation_m: r.number(cells[3]),
                    climate: Climate::default(),
                    note: cells[18].to_owned(),
                });
            }
            let Some(place) = rows.last_mut() else { return };
            let Some(slot) = quantity(cells[4]) else {
                return r.flaw("unknown-quantity", cells[4]);
            };
            for m in 0..MONTHS {
                *slot(&mut place.climate.months[m]) = r.number(cells[5 + m]);
            }
            let new = o
                .sources
                .into_iter()
                .filter(|s| !place.climate.sources.contains(s))
                .collect::<Vec<_>>();
            place.climate.sources.extend(new);
        },
    );
    rows
}

/// The field of a month that a line fills.
fn quantity(word: &str) -> Option<fn(&mut Month) -> &mut Option<f64>> {
    match word {
        "tmean_c" => Some(|m| &mut m.tmean_c),
        "tmin_c" => Some(|m| &mut m.tmin_c),
        "tmax_c" => Some(|m| &mut m.tmax_c),
        "rain_mm" => Some(|m| &mut m.rain_mm),
        _ => None,
    }
}
