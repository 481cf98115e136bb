//! What the air takes from short grass in a day: by all that was measured, by temperatures, by monthly means.

use super::{WaterCase, figure};
use crate::water::{Weather, air, hargreaves, reference_day, sun};
use model::{Day, Span, WeatherDay};

/// Days of weather that the page of a palm looks back on for a gap.
const GAP_DAYS: i32 = 14;

/// How it was reckoned.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum How {
    /// Penman-Monteith, everything measured.
    Full,
    /// Penman-Monteith, with what the paper puts in the place of what was not measured.
    Part,
    /// Hargreaves, temperatures only.
    Temperatures,
    /// The mean of the last days with weather (assumed).
    LastDays,
    /// Hargreaves from the monthly means of the nearest known place.
    Climate,
    /// Nothing is known: anything that climates do.
    Anywhere,
}

impl How {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            How::Full => "full",
            How::Part => "part",
            How::Temperatures => "temperatures",
            How::LastDays => "last-days",
            How::Climate => "climate",
            How::Anywhere => "anywhere",
        }
    }
}

/// What was not measured, and what stood in for it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum StandIn {
    /// The lowest temperature as dew point.
    Humidity,
    /// 2 m/s.
    Wind,
    /// The range of temperature.
    Sun,
    /// Sea level (assumed).
    Elevation,
}

impl StandIn {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            StandIn::Humidity => "humidity",
            StandIn::Wind => "wind",
            StandIn::Sun => "sun",
            StandIn::Elevation => "elevation",
        }
    }
}

/// What the air takes from short grass in a day.
#[derive(Clone, PartialEq, Debug)]
pub struct Reference {
    /// mm a day.
    pub mm: Span,
    /// How it was reckoned.
    pub how: How,
    /// What stood in.
    pub stood_in: Vec<StandIn>,
}

/// On a day, past or to come.
pub(super) fn on(case: &WaterCase, day: Day) -> Reference {
    measured(case, day)
        .or_else(|| {
            if day >= case.today {
                last_days(case)
            } else {
                None
            }
            .filter(|_| case.climate.is_none())
        })
        .or_else(|| by_climate(case, day))
        .or_else(|| last_days(case))
        .unwrap_or_else(|| Reference {
            mm: figure(case.knowledge, "reference-anywhere"),
            how: How::Anywhere,
            stood_in: Vec::new(),
        })
}

/// By what was measured on that day.
pub(super) fn measured(case: &WaterCase, day: Day) -> Option<Reference> {
    let (weather, latitude) = (case.weather.get(&day)?, case.latitude?.to_radians());
    let (tmin, tmax) = (weather.t_min?, weather.t_max?);
    let of_year = day.of_year() as u16;
    let more = weather.humidity.is_some()
        || weather.wind.is_some()
        || weather.radiation.is_some()
        || weather.sunshine.is_some();
    if !more {
        return Some(Reference {
            mm: Span::of(hargreaves(latitude, of_year, tmax, tmin)),
            how: How::Temperatures,
            stood_in: Vec::new(),
        });
    }
    let stood_in = stood_in(case, weather);
    let on = |coast| {
        reference_day(&Weather {
            latitude,
            elevation_m: case.elevation_m.unwrap_or(0.0),
            day: of_year,
            tmax_c: tmax,
            tmin_c: tmin,
            vapour_kpa: weather
                .humidity
                .map(|rh| air::vapour_by_mean(tmax, tmin, rh)),
            wind_ms: weather.wind,
            light_mj: light(weather, latitude, of_year),
            coast,
            into_ground_mj: 0.0,
        })
    };
    let mm = match case.coastal {
        Some(coast) => Span::of(on(coast)),
        // only the sun by temperatures asks for the coast; elsewhere both are the same
        None => Span::between(on(false), on(true)),
    };
    Some(Reference {
        mm,
        how: if stood_in.iter().all(|s| *s == StandIn::Elevation) {
            How::Full
        } else {
            How::Part
        },
        stood_in,
    })
}

fn stood_in(case: &WaterCase, weather: &WeatherDay) -> Vec<StandIn> {
    let sun = weather.radiation.or(weather.sunshine);
    [
        (weather.humidity.is_none(), StandIn::Humidity),
        (weather.wind.is_none(), StandIn::Wind),
        (sun.is_none(), StandIn::Sun),
        (case.elevation_m.is_none(), StandIn::Elevation),
    ]
    .into_iter()
    .filter_map(|(missing, stand_in)| missing.then_some(stand_in))
    .collect()
}

/// At the ground, MJ a square metre: measured, or from the hours of sunshine.
fn light(weather: &WeatherDay, latitude: f64, of_year: u16) -> Option<f64> {
    let from_hours = |hours: f64| {
        let daylight = sun::daylight_hours(latitude, of_year);
        let above = sun::above_air(latitude, of_year);
        (daylight > 0.0).then(|| sun::at_ground(above, hours.min(daylight), daylight, 0.25, 0.5))
    };
    weather
        .radiation
        .or_else(|| weather.sunshine.and_then(from_hours))
}

/// By the month's mean extremes of the nearest known place, on the day itself.
fn by_climate(case: &WaterCase, day: Day) -> Option<Reference> {
    let (_, month, _) = day.ymd();
    let means = &case.climate?.months[(month - 1) as usize];
    let (tmin, tmax) = (means.tmin_c?, means.tmax_c?);
    let latitude = case.latitude?.to_radians();
    Some(Reference {
        mm: Span::of(hargreaves(latitude, day.of_year() as u16, tmax, tmin)),
        how: How::Climate,
        stood_in: Vec::new(),
    })
}

/// The mean of the last days that have weather.
fn last_days(case: &WaterCase) -> Option<Reference> {
    let days = figure(case.knowledge, "days-alike").high as i32;
    let back = figure(case.knowledge, "look-back").high as i32;
    let known: Vec<Span> = (1..=back)
        .filter_map(|ago| Some(measured(case, case.today.plus(-ago))?.mm))
        .take(days as usize)
        .collect();
    let sum = known.iter().copied().reduce(Span::plus)?;
    Some(Reference {
        mm: sum.scaled(1.0 / known.len() as f64),
        how: How::LastDays,
        stood_in: Vec::new(),
    })
}

/// How many of the last days have no weather that the need can be reckoned from.
pub(super) fn days_without_weather(case: &WaterCase) -> i32 {
    let known = |ago: &i32| {
        let weather = case.weather.get(&case.today.plus(-ago));
        weather.is_some_and(|w| w.t_min.is_some() && w.t_max.is_some())
    };
    GAP_DAYS - (1..=GAP_DAYS).filter(known).count() as i32
}

/// Rain of a day, mm: measured, else from none to the month's share by the climate, else from none on.
pub(super) fn rain(case: &WaterCase, day: Day) -> Span {
    if let Some(mm) = case.weather.get(&day).and_then(|w| w.rain) {
        return Span::of(mm);
    }
    let (year, month, _) = day.ymd();
    let next = if month == 12 {
        Day::from_ymd(year + 1, 1, 1)
    } else {
        Day::from_ymd(year, month + 1, 1)
    };
    let days = Day::from_ymd(year, month, 1)
        .zip(next)
        .map_or(30, |(first, next)| next.since(first));
    let month = case.climate.map(|c| c.months[(month - 1) as usize]);
    let mean = month.and_then(|m| m.rain_mm).unwrap_or(0.0) / f64::from(days);
    Span::between(0.0, mean)
}
