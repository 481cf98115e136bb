//! Air: pressure, vapour, wind.

use model::math;

/// Saturation vapour pressure in kPa at a temperature in °C (eq. 11).
pub fn saturation(celsius: f64) -> f64 {
    0.6108 * math::exp(17.27 * celsius / (celsius + 237.3))
}

/// Mean saturation vapour pressure of a day in kPa (eq. 12): the mean of those at its extremes, because that at the mean
/// temperature is too low.
pub fn mean_saturation(tmax_c: f64, tmin_c: f64) -> f64 {
    (saturation(tmax_c) + saturation(tmin_c)) / 2.0
}

/// Slope of the saturation curve in kPa per °C (eq. 13).
pub fn slope(celsius: f64) -> f64 {
    let from_zero = celsius + 237.3;
    4098.0 * saturation(celsius) / (from_zero * from_zero)
}

/// Pressure of the air in kPa at a height in metres above the sea (eq. 7).
pub fn pressure(elevation_m: f64) -> f64 {
    101.3 * math::pow((293.0 - 0.0065 * elevation_m) / 293.0, 5.26)
}

/// Psychrometric constant in kPa per °C at a pressure in kPa (eq. 8).
pub fn psychrometric(pressure_kpa: f64) -> f64 {
    0.665e-3 * pressure_kpa
}

/// Vapour pressure in kPa from a dry and a wet bulb in °C (eq. 15); `coefficient` per °C is that of the instrument,
/// 0.000662 where it is ventilated.
pub fn vapour_by_bulbs(dry_c: f64, wet_c: f64, pressure_kpa: f64, coefficient: f64) -> f64 {
    saturation(wet_c) - coefficient * pressure_kpa * (dry_c - wet_c)
}

/// Vapour pressure in kPa from the extremes of temperature and of relative humidity, in percent (eq. 17).
pub fn vapour_by_extremes(tmax_c: f64, tmin_c: f64, rhmax_pct: f64, rhmin_pct: f64) -> f64 {
    (saturation(tmin_c) * rhmax_pct + saturation(tmax_c) * rhmin_pct) / 200.0
}

/// Vapour pressure in kPa from the mean relative humidity in percent (eq. 19); less good than the extremes.
pub fn vapour_by_mean(tmax_c: f64, tmin_c: f64, rhmean_pct: f64) -> f64 {
    rhmean_pct / 100.0 * mean_saturation(tmax_c, tmin_c)
}

/// Factor from the wind at a height in metres over grass to that at 2 m (eq. 47).
pub fn wind_factor(height_m: f64) -> f64 {
    4.87 / math::ln(67.8 * height_m - 5.42)
}
