//! When a visit is worth it.

use crate::answer::{Cut, DueWindow};
use crate::quantile::weighted;
use crate::reading::Reading;
use model::Day;

/// Days between two values that are followed.
pub(crate) const STEP: i32 = 28;
/// Steps that are followed: two years.
pub(crate) const STEPS: i32 = 26;

impl Reading {
    /// The due window: `earliest` is the first day on which at least `tidy` dead fronds hang in the median, `latest`
    /// the last day on which no more than `limit` hang in three of four cases. Followed for two years.
    pub fn due(&self, tidy: u32, limit: u32) -> DueWindow {
        let days: Vec<Day> = (0..=STEPS).map(|s| self.as_of.plus(s * STEP)).collect();
        let hanging: Vec<[f64; 2]> = self.walk(Cut::NONE, &days, |_, crowns| {
            weighted(self.weigh(|r, i| crowns[r].brown[i]), [0.50, 0.75])
        });
        let median: Vec<f64> = hanging.iter().map(|q| q[0]).collect();
        let upper: Vec<f64> = hanging.iter().map(|q| q[1]).collect();
        DueWindow {
            earliest: first_day(&median, f64::from(tidy)).map(|d| self.as_of.plus(d.ceil() as i32)),
            latest: first_day(&upper, f64::from(limit)).map(|d| self.as_of.plus(d.floor() as i32)),
        }
    }
}

/// Days until a series with a value every [`STEP`] days first reaches `goal`.
pub(crate) fn first_day(series: &[f64], goal: f64) -> Option<f64> {
    let at = series.iter().position(|v| *v >= goal)?;
    if at == 0 {
        return Some(0.0);
    }
    let part = (goal - series[at - 1]) / (series[at] - series[at - 1]);
    Some(f64::from(STEP) * (at as f64 - 1.0 + part))
}
