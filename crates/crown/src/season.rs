//! The season: how fast the leaf clock runs at a place on a day, relative to the place for which r is stated.
//!
//! With monthly mean temperatures: `w = g(T(day)) / reference`, `g(T) = clamp((T - Tbase)/(Topt - Tbase), 0, 1)`,
//! Tbase 7 °C [fao-date-ch4], Topt 32 °C [agrihunt-2012], both for date palms and assumed for the others. T(day) is a
//! smooth yearly curve (a constant and six harmonics) whose mean over each month is the given monthly mean.
//! Without: `w = 1 + 0.25 cos(2 pi (day of year - 205)/365.25)` in the north, half a year later in the south, 1 within
//! 15° of the equator (assumed).

use model::{Climate, Day, math};
use std::f64::consts::TAU;

/// Temperature below which the clock stands still, °C [fao-date-ch4].
pub const T_BASE_C: f64 = 7.0;
/// Temperature at which it runs fastest, °C [agrihunt-2012].
pub const T_OPT_C: f64 = 32.0;
/// Year's mean of g at the place for which r is stated: 0.717, from the Miami normals in `knowledge/climate`
/// (most figures for r come from southern Florida; assumed for the others). A test recomputes it.
pub const REFERENCE_GROWTH: f64 = 0.717;

const SLOTS: usize = 365;
const YEAR_DAYS: f64 = 365.2425;
const MONTH_STARTS: [f64; 13] = [
    0.0, 31.0, 59.0, 90.0, 120.0, 151.0, 181.0, 212.0, 243.0, 273.0, 304.0, 334.0, 365.0,
];

/// The running integral of w over a year, ready for look-ups.
#[derive(Clone, PartialEq, Debug)]
pub struct Season {
    /// `sum[i]` is the integral of w from 1 January to day i, in days; 366 values.
    sum: Vec<f64>,
}

impl Season {
    /// The season of a place: from its climate if all twelve means are known, else from its latitude (degrees).
    pub fn of(climate: Option<&Climate>, latitude: Option<f64>) -> Season {
        match climate.and_then(Climate::tmean) {
            Some(means) => Season::from_monthly_means(&means),
            None => Season::from_latitude(latitude),
        }
    }

    /// From twelve monthly mean temperatures, °C, January first.
    pub fn from_monthly_means(means: &[f64; 12]) -> Season {
        let curve = YearCurve::with_monthly_means(means);
        Season::from_daily(|day| growth(curve.at(day + 0.5)) / REFERENCE_GROWTH)
    }

    /// Without climate: from the latitude in degrees; unknown latitude takes the northern season.
    pub fn from_latitude(latitude: Option<f64>) -> Season {
        let latitude = latitude.unwrap_or(45.0);
        let amplitude = if latitude.abs() <= 15.0 { 0.0 } else { 0.25 };
        let peak = if latitude < 0.0 {
            205.0 - 365.25 / 2.0
        } else {
            205.0
        };
        Season::from_daily(|day| 1.0 + amplitude * math::cos(TAU * (day + 1.0 - peak) / 365.25))
    }

    fn from_daily(w: impl Fn(f64) -> f64) -> Season {
        let mut sum = Vec::with_capacity(SLOTS + 1);
        let mut total = 0.0;
        sum.push(0.0);
        for day in 0..SLOTS {
            total += w(day as f64);
            sum.push(total);
        }
        Season { sum }
    }

    /// Integral of w in days from an arbitrary origin to the moment `days` after 1970-01-01.
    fn until(&self, days: f64) -> f64 {
        let years = days / YEAR_DAYS;
        let whole = years.floor();
        let place = (years - whole) * SLOTS as f64;
        let slot = (place as usize).min(SLOTS - 1);
        let part = place - slot as f64;
        whole * self.sum[SLOTS] + self.sum[slot] + part * (self.sum[slot + 1] - self.sum[slot])
    }

    /// Integral of w between two days, in days: equal to `to - from` where w is 1.
    pub fn between(&self, from: Day, to: Day) -> f64 {
        self.between_days(f64::from(from.0), f64::from(to.0))
    }

    /// The same with days since 1970-01-01, fractions allowed.
    pub fn between_days(&self, from: f64, to: f64) -> f64 {
        (self.until(to) - self.until(from)) * (YEAR_DAYS / SLOTS as f64)
    }
}

/// Growth at a temperature in °C, 0..=1.
pub fn growth(celsius: f64) -> f64 {
    ((celsius - T_BASE_C) / (T_OPT_C - T_BASE_C)).clamp(0.0, 1.0)
}

/// A smooth yearly curve: a constant, five cosine and sine pairs and the sixth sine (the sixth cosine averages to
/// nothing over a month).
struct YearCurve {
    coefficients: [f64; 12],
}

impl YearCurve {
    /// The curve whose mean over each month is the given one: twelve equations, twelve coefficients.
    fn with_monthly_means(means: &[f64; 12]) -> YearCurve {
        let mut rows = [[0.0; 13]; 12];
        for (month, row) in rows.iter_mut().enumerate() {
            let (from, to) = (MONTH_STARTS[month], MONTH_STARTS[month + 1]);
            for (k, cell) in row[..12].iter_mut().enumerate() {
                *cell = basis_mean(k, from, to);
            }
            row[12] = means[month];
        }
        YearCurve {
            coefficients: solve(rows),
        }
    }

    fn at(&self, day: f64) -> f64 {
        self.coefficients
            .iter()
            .enumerate()
            .map(|(k, c)| c * basis(k, day))
            .sum()
    }
}

/// Basis function k at a day of the year: 1, cos, sin, cos 2, sin 2, ..., cos 5, sin 5, sin 6.
fn basis(k: usize, day: f64) -> f64 {
    let angle = TAU * day / SLOTS as f64;
    let harmonic = k.div_ceil(2) as f64;
    match k {
        0 => 1.0,
        11 => math::sin(6.0 * angle),
        _ if k % 2 == 1 => math::cos(harmonic * angle),
        _ => math::sin(harmonic * angle),
    }
}

/// Mean of the basis function over an interval of days, by its integral.
fn basis_mean(k: usize, from: f64, to: f64) -> f64 {
    if k == 0 {
        return 1.0;
    }
    let rate = TAU * k.div_ceil(2) as f64 / SLOTS as f64;
    let span = rate * (to - from);
    if k % 2 == 1 && k != 11 {
        (math::sin(rate * to) - math::sin(rate * from)) / span
    } else {
        (math::cos(rate * from) - math::cos(rate * to)) / span
    }
}

/// Gaussian elimination with partial pivoting of a 12 x 12 system with its right-hand side in column 12.
fn solve(mut rows: [[f64; 13]; 12]) -> [f64; 12] {
    for column in 0..12 {
        let pivot = (column..12)
            .max_by(|&a, &b| rows[a][column].abs().total_cmp(&rows[b][column].abs()))
            .unwrap_or(column);
        rows.swap(column, pivot);
        let lead = rows[column];
        for row in rows.iter_mut().skip(column + 1) {
            let factor = row[column] / lead[column];
            for (cell, above) in row.iter_mut().zip(&lead).skip(column) {
                *cell -= factor * above;
            }
        }
    }
    let mut out = [0.0; 12];
    for row in (0..12).rev() {
        let known: f64 = (row + 1..12).map(|k| rows[row][k] * out[k]).sum();
        out[row] = (rows[row][12] - known) / rows[row][row];
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Miami monthly means, °C, from the published daily averages in `knowledge/climate` [us-weather-history-2015].
    fn miami() -> [f64; 12] {
        let place = model::Knowledge::embedded()
            .climate_near(25.8, -80.3)
            .expect("Miami is in the table")
            .0;
        place.climate.tmean().expect("twelve means")
    }

    #[test]
    fn the_curve_keeps_the_monthly_means() {
        let means = miami();
        let curve = YearCurve::with_monthly_means(&means);
        for month in 0..12 {
            let (from, to) = (MONTH_STARTS[month], MONTH_STARTS[month + 1]);
            let steps = 4000;
            let mean: f64 = (0..steps)
                .map(|i| curve.at(from + (to - from) * (i as f64 + 0.5) / steps as f64))
                .sum::<f64>()
                / steps as f64;
            assert!(
                (mean - means[month]).abs() < 1e-3,
                "month {month}: {mean} against {}",
                means[month]
            );
        }
        let (low, high) = (0..365).fold((f64::MAX, f64::MIN), |(l, h), d| {
            let t = curve.at(f64::from(d));
            (l.min(t), h.max(t))
        });
        assert!(
            low > means[0] - 2.0 && high < means[7] + 2.0,
            "no wiggles: {low}..{high}"
        );
    }

    #[test]
    fn the_reference_is_southern_florida() {
        let curve = YearCurve::with_monthly_means(&miami());
        let mean = (0..365)
            .map(|d| growth(curve.at(f64::from(d) + 0.5)))
            .sum::<f64>()
            / 365.0;
        assert!((mean - REFERENCE_GROWTH).abs() < 0.002, "{mean}");
        let season = Season::from_monthly_means(&miami());
        let year = season.between(
            Day::from_ymd(2025, 1, 1).unwrap(),
            Day::from_ymd(2026, 1, 1).unwrap(),
        );
        assert!((year - 365.0).abs() < 1.5, "{year}");
    }

    #[test]
    fn a_cooler_place_grows_fewer_fronds_and_the_south_is_half_a_year_off() {
        let cool = Season::from_monthly_means(&miami().map(|t| t - 8.0));
        let year = |s: &Season| s.between(Day(20_000), Day(20_365));
        assert!(year(&cool) < 0.6 * 365.0);
        let north = Season::from_latitude(Some(28.0));
        let south = Season::from_latitude(Some(-28.0));
        let july = (
            Day::from_ymd(2026, 7, 1).unwrap(),
            Day::from_ymd(2026, 8, 1).unwrap(),
        );
        assert!(
            north.between(july.0, july.1) > 31.0 * 1.2
                && south.between(july.0, july.1) < 31.0 * 0.8
        );
        let tropics = Season::from_latitude(Some(10.0));
        assert!((tropics.between(july.0, july.1) - 31.0).abs() < 1e-6);
        let unknown = Season::from_latitude(None);
        assert_eq!(unknown, north);
    }

    #[test]
    fn spans_add_up() {
        let s = Season::from_latitude(Some(40.0));
        let whole = s.between(Day(19_000), Day(20_111));
        let parts = s.between(Day(19_000), Day(19_777)) + s.between(Day(19_777), Day(20_111));
        assert!((whole - parts).abs() < 1e-9 && (whole - 1111.0).abs() < 60.0);
    }
}
