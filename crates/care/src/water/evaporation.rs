//! Reference evapotranspiration: what the air takes from a wide, short, well-watered grass cover, mm.

use super::{air, sun};

/// Wind at 2 m where nobody has measured it, m/s: mean of some 2000 stations (table 4 of the paper).
pub const WIND_WHERE_UNKNOWN: f64 = 2.0;
/// The wind is never taken as less, m/s.
pub const LEAST_WIND: f64 = 0.5;

/// What is known of a day. Absent is unknown; the paper says what stands in.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Weather {
    /// Latitude in radians, south negative.
    pub latitude: f64,
    /// Height above the sea, m.
    pub elevation_m: f64,
    /// Day of the year, 1..=366.
    pub day: u16,
    /// Highest temperature, °C.
    pub tmax_c: f64,
    /// Lowest temperature, °C.
    pub tmin_c: f64,
    /// Vapour pressure, kPa; where unknown the dew point is taken as the lowest temperature (eq. 48).
    pub vapour_kpa: Option<f64>,
    /// Wind at 2 m, m/s; where unknown [`WIND_WHERE_UNKNOWN`].
    pub wind_ms: Option<f64>,
    /// At the ground, MJ a square metre; where unknown, by the range of temperature.
    pub light_mj: Option<f64>,
    /// On a coast: the range of temperature says less of the sun there (eq. 50).
    pub coast: bool,
    /// Heat into the ground, MJ a square metre; small in a day, taken as none where unknown (eq. 42).
    pub into_ground_mj: f64,
}

impl Weather {
    /// Vapour pressure, kPa, known or from the lowest temperature.
    pub fn vapour(&self) -> f64 {
        self.vapour_kpa
            .unwrap_or_else(|| air::saturation(self.tmin_c))
    }

    /// At the ground, MJ a square metre, known or from the range of temperature.
    pub fn light(&self) -> f64 {
        let above = sun::above_air(self.latitude, self.day);
        let k = if self.coast { 0.19 } else { 0.16 };
        self.light_mj
            .unwrap_or_else(|| sun::by_temperature(above, self.tmax_c, self.tmin_c, k))
    }

    /// Long waves that leave, MJ a square metre.
    pub fn long_waves(&self) -> f64 {
        let above = sun::above_air(self.latitude, self.day);
        let clear = sun::clear_sky(above, self.elevation_m);
        // where the sun does not rise nothing says how clear the sky is: half of it is taken as covered
        let share = if clear > 0.0 {
            self.light() / clear
        } else {
            0.5
        };
        let emission = (sun::emission(self.tmax_c) + sun::emission(self.tmin_c)) / 2.0;
        sun::long_waves(emission, self.vapour(), share)
    }

    /// Net radiation, MJ a square metre (eq. 40).
    pub fn net(&self) -> f64 {
        sun::kept(self.light()) - self.long_waves()
    }
}

/// Reference evapotranspiration of a day, mm (Penman-Monteith, eq. 6). Never less than nothing.
pub fn reference_day(w: &Weather) -> f64 {
    let tmean = (w.tmax_c + w.tmin_c) / 2.0;
    let (slope, gamma) = (
        air::slope(tmean),
        air::psychrometric(air::pressure(w.elevation_m)),
    );
    let wind = w.wind_ms.unwrap_or(WIND_WHERE_UNKNOWN).max(LEAST_WIND);
    let dryness = (air::mean_saturation(w.tmax_c, w.tmin_c) - w.vapour()).max(0.0);
    let energy = 0.408 * slope * (w.net() - w.into_ground_mj);
    let draught = gamma * 900.0 / (tmean + 273.0) * wind * dryness;
    ((energy + draught) / (slope + gamma * (1.0 + 0.34 * wind))).max(0.0)
}

/// What is known of an hour.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Hour {
    /// Height above the sea, m.
    pub elevation_m: f64,
    /// Temperature, °C.
    pub t_c: f64,
    /// Relative humidity, percent.
    pub rh_pct: f64,
    /// Wind at 2 m, m/s.
    pub wind_ms: f64,
    /// At the ground, MJ a square metre.
    pub light_mj: f64,
    /// Share of clear-sky light that arrives; at night that of the hours before sunset.
    pub clear_share: f64,
    /// Whether the sun is up.
    pub by_day: bool,
}

impl Hour {
    /// Vapour pressure, kPa (eq. 54).
    pub fn vapour(&self) -> f64 {
        air::saturation(self.t_c) * self.rh_pct / 100.0
    }

    /// Long waves that leave, MJ a square metre.
    pub fn long_waves(&self) -> f64 {
        sun::long_waves(
            sun::emission(self.t_c) / 24.0,
            self.vapour(),
            self.clear_share,
        )
    }

    /// Net radiation, MJ a square metre.
    pub fn net(&self) -> f64 {
        sun::kept(self.light_mj) - self.long_waves()
    }

    /// Heat into the ground, MJ a square metre (eq. 45, 46).
    pub fn into_ground(&self) -> f64 {
        self.net() * if self.by_day { 0.1 } else { 0.5 }
    }
}

/// Reference evapotranspiration of an hour, mm (eq. 53). Dew counts as negative.
pub fn reference_hour(hour: &Hour) -> f64 {
    let (slope, gamma) = (
        air::slope(hour.t_c),
        air::psychrometric(air::pressure(hour.elevation_m)),
    );
    let energy = 0.408 * slope * (hour.net() - hour.into_ground());
    let dryness = air::saturation(hour.t_c) - hour.vapour();
    let draught = gamma * 37.0 / (hour.t_c + 273.0) * hour.wind_ms * dryness;
    (energy + draught) / (slope + gamma * (1.0 + 0.34 * hour.wind_ms))
}

/// Reference evapotranspiration of a day, mm, from temperatures alone (Hargreaves, eq. 52). Latitude in radians.
pub fn hargreaves(latitude: f64, day: u16, tmax_c: f64, tmin_c: f64) -> f64 {
    let tmean = (tmax_c + tmin_c) / 2.0;
    let above = sun::above_air(latitude, day) * sun::MM_PER_MJ;
    (0.0023 * (tmean + 17.8) * (tmax_c - tmin_c).max(0.0).sqrt() * above).max(0.0)
}
