//! `weather.csv`.

use super::Error;
use super::tables::number;
use crate::intake::WEATHER_COLUMNS;
use model::State;
use std::io::Write;

/// Writes `weather.csv`, by site and day; returns the number of rows.
pub fn weather(state: &State, out: impl Write) -> Result<u64, Error> {
    let mut out = csv::Writer::from_writer(out);
    out.write_record(WEATHER_COLUMNS)?;
    let mut rows = 0;
    for day in state.work.weather.values().flat_map(|days| days.values()) {
        out.write_record([
            day.day.to_string(),
            day.site.clone(),
            number(day.t_min),
            number(day.t_max),
            number(day.humidity),
            number(day.wind),
            number(day.radiation),
            number(day.sunshine),
            number(day.rain),
        ])?;
        rows += 1;
    }
    out.flush()?;
    Ok(rows)
}
