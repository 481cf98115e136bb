//! Sun: what reaches the top of the air, what of it reaches the ground, what leaves again. MJ a square metre.

use model::math;
use std::f64::consts::PI;

/// Solar constant, MJ a square metre and minute.
const SOLAR: f64 = 0.0820;
/// Stefan-Boltzmann constant, MJ a square metre, day and K⁴.
const STEFAN_BOLTZMANN: f64 = 4.903e-9;
/// Share of short waves that a grass cover throws back.
pub const ALBEDO: f64 = 0.23;
/// Millimetres of water evaporated by one MJ a square metre (1 / 2.45, the paper rounds to 0.408).
pub const MM_PER_MJ: f64 = 1.0 / 2.45;

/// Angle of the year in radians on its day `j`, 1..=366.
fn year_angle(j: u16) -> f64 {
    2.0 * PI * f64::from(j) / 365.0
}

/// Inverse relative distance of the sun (eq. 23).
pub fn closeness(j: u16) -> f64 {
    1.0 + 0.033 * math::cos(year_angle(j))
}

/// Declination of the sun in radians (eq. 24).
pub fn declination(j: u16) -> f64 {
    0.409 * math::sin(year_angle(j) - 1.39)
}

/// Hour angle of sunset in radians at a latitude in radians (eq. 25): 0 where the sun does not rise, pi where it does
/// not set.
pub fn sunset_angle(latitude: f64, j: u16) -> f64 {
    let cosine = (-math::tan(latitude) * math::tan(declination(j))).clamp(-1.0, 1.0);
    math::atan2((1.0 - cosine * cosine).sqrt(), cosine)
}

/// Hours of daylight (eq. 34).
pub fn daylight_hours(latitude: f64, j: u16) -> f64 {
    24.0 / PI * sunset_angle(latitude, j)
}

/// At the top of the air in a day, MJ a square metre (eq. 21).
pub fn above_air(latitude: f64, j: u16) -> f64 {
    let sunset = sunset_angle(latitude, j);
    24.0 * 60.0 / PI * SOLAR * closeness(j) * beam(latitude, j, -sunset, sunset) / 2.0
}

/// At the top of the air between two hour angles in radians, MJ a square metre (eq. 28); nothing while the sun is down.
pub fn above_air_between(latitude: f64, j: u16, from: f64, to: f64) -> f64 {
    let sunset = sunset_angle(latitude, j);
    let (from, to) = (from.clamp(-sunset, sunset), to.clamp(-sunset, sunset));
    12.0 * 60.0 / PI * SOLAR * closeness(j) * beam(latitude, j, from, to)
}

/// The part of eq. 21 and 28 that depends on latitude and hours.
fn beam(latitude: f64, j: u16, from: f64, to: f64) -> f64 {
    let lean = declination(j);
    (to - from) * math::sin(latitude) * math::sin(lean)
        + math::cos(latitude) * math::cos(lean) * (math::sin(to) - math::sin(from))
}

/// Seasonal correction of solar time in hours (eq. 32).
pub fn equation_of_time(j: u16) -> f64 {
    let b = 2.0 * PI * (f64::from(j) - 81.0) / 364.0;
    0.1645 * math::sin(2.0 * b) - 0.1255 * math::cos(b) - 0.025 * math::sin(b)
}

/// Hour angle in radians at a clock time in hours (eq. 31); longitudes in degrees west, of the place and of the middle
/// of its time zone.
pub fn hour_angle(j: u16, clock_h: f64, zone_west: f64, place_west: f64) -> f64 {
    PI / 12.0 * (clock_h + 0.06667 * (zone_west - place_west) + equation_of_time(j) - 12.0)
}

/// At the ground, from hours of sunshine out of the possible (eq. 35); `a` and `b` are 0.25 and 0.5 where nobody has
/// measured them.
pub fn at_ground(above_air: f64, sunshine_h: f64, daylight_h: f64, a: f64, b: f64) -> f64 {
    (a + b * sunshine_h / daylight_h) * above_air
}

/// At the ground, from the range of temperature in a day (eq. 50); `k` is 0.16 inland and 0.19 on a coast.
pub fn by_temperature(above_air: f64, tmax_c: f64, tmin_c: f64, k: f64) -> f64 {
    k * (tmax_c - tmin_c).max(0.0).sqrt() * above_air
}

/// At the ground under a clear sky at a height in metres above the sea (eq. 37).
pub fn clear_sky(above_air: f64, elevation_m: f64) -> f64 {
    (0.75 + 2e-5 * elevation_m) * above_air
}

/// Emission of a black body in a day at a temperature in °C, MJ a square metre.
pub fn emission(celsius: f64) -> f64 {
    let kelvin = celsius + 273.16;
    let square = kelvin * kelvin;
    STEFAN_BOLTZMANN * square * square
}

/// Long waves that leave, MJ a square metre and day (eq. 39), from the day's emission, vapour in kPa, and the share of
/// clear-sky light that arrives (at most 1).
pub fn long_waves(emission: f64, vapour_kpa: f64, clear_share: f64) -> f64 {
    emission * (0.34 - 0.14 * vapour_kpa.sqrt()) * (1.35 * clear_share.min(1.0) - 0.35)
}

/// Short waves kept by a grass cover (eq. 38).
pub fn kept(at_ground: f64) -> f64 {
    (1.0 - ALBEDO) * at_ground
}

/// Heat into the ground in a month from the means of the month before and the month itself or the one after (eq. 43, 44),
/// MJ a square metre and day: `0.07` with the month after, `0.14` with the month itself.
pub fn into_ground(before_c: f64, then_c: f64, coefficient: f64) -> f64 {
    coefficient * (then_c - before_c)
}
