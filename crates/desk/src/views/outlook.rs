//! The forecast as a table: what would be counted at a date.

use super::said::Speaker;
use crown::{Cut, Forecast, Quantiles, Reading};
use model::Day;

/// Horizons shown, days ahead: 4, 8, 26 and 52 weeks.
pub const HORIZONS: [i32; 4] = [28, 56, 182, 364];

/// A count with its interval.
#[derive(Clone, PartialEq, Debug)]
pub struct Cell {
    /// Median.
    pub median: String,
    /// 5 to 95 %, in words.
    pub range: String,
    /// The same in figures, for tables.
    pub band: String,
}

/// What would be counted at one date.
#[derive(Clone, PartialEq, Debug)]
pub struct OutlookRow {
    /// "4 weeks".
    pub ahead: String,
    /// The date.
    pub date: String,
    /// Live, green, yellowing, brown still on, lost since the last look.
    pub cells: [Cell; 5],
}

/// Keys of the columns, in order.
pub const COLUMNS: [&str; 5] = ["live", "green", "yellowing", "brown", "lost"];

/// The table of a stem if `cut` comes off today.
pub fn view(speaker: &Speaker, reading: &Reading, cut: Cut) -> Vec<OutlookRow> {
    let days: Vec<Day> = HORIZONS.iter().map(|d| reading.as_of.plus(*d)).collect();
    let forecasts = reading.forecasts(cut, &days);
    HORIZONS
        .iter()
        .zip(days.iter().zip(&forecasts))
        .map(|(ahead, (day, forecast))| OutlookRow {
            ahead: speaker.text("outlook-weeks", &[("n", i64::from(ahead / 7).into())]),
            date: speaker.measure.date(*day),
            cells: cells(speaker, forecast),
        })
        .collect()
}

fn cells(speaker: &Speaker, f: &Forecast) -> [Cell; 5] {
    [f.live, f.green, f.yellowing, f.brown_on, f.lost].map(|q| cell(speaker, &q))
}

/// A quantity with its interval.
pub fn cell(speaker: &Speaker, q: &Quantiles) -> Cell {
    Cell {
        median: speaker.measure.about(q.q50),
        range: speaker.measure.counts(q.q05, q.q95),
        band: speaker.measure.band(q.q05, q.q95),
    }
}
