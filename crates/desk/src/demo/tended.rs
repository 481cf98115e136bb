//! Weather of the demo's region, and what its palms were given: water in the yard, feed in the garden.
//!
//! The weather is made up near the monthly means of the nearest known place.

use super::book::Book;
use super::dice::Dice;
use super::roster::{SITES, plots};
use super::{CREW, KEEPER, id};
use crate::office::place_nearby;
use model::{Body, Day, Feeding, PalmId, Position, Tending, Watering, WeatherDay};

/// Days of weather before today.
const WEATHER_DAYS: i32 = 60;
/// A wet day comes so often.
const WET: f64 = 0.25;

/// Waterings in the yard: tag, days before today, litres each time (nothing: nobody wrote it down), words.
type Water = (&'static str, &'static [i32], Option<f64>, &'static str);

const WATER: [Water; 6] = [
    (
        "Q-01",
        &[13, 11, 9, 7, 5, 3, 1],
        Some(380.0),
        "hose, two rings",
    ),
    ("Q-02", &[15, 12, 9, 6, 3], Some(400.0), "hose"),
    ("Q-05", &[10, 8, 6, 4, 2, 1], Some(160.0), ""),
    ("Q-13", &[12, 8, 4], Some(150.0), "drip overnight"),
    ("Q-16", &[9, 6, 3], None, "hose"),
    ("Q-09", &[21, 14], Some(120.0), "water cart"),
];

/// Feedings: tag, days before today, product, grams, ground in square metres, against, words.
type Feed = (
    &'static str,
    i32,
    &'static str,
    f64,
    Option<f64>,
    &'static str,
    &'static str,
);

const FEED: [Feed; 4] = [
    (
        "T-08",
        191,
        "slow-potassium",
        1500.0,
        Some(20.0),
        "k-deficiency",
        "raked in under the crown",
    ),
    (
        "T-08",
        98,
        "slow-potassium",
        1500.0,
        Some(20.0),
        "k-deficiency",
        "",
    ),
    ("T-07", 118, "palm-blend", 1400.0, Some(19.0), "", ""),
    ("T-07", 40, "palm-blend", 1400.0, Some(19.0), "", ""),
];

/// Writes weather, waterings and feedings.
pub(super) fn write(today: Day, book: &mut Book) {
    for ago in (1..=WEATHER_DAYS).rev() {
        let day = today.plus(-ago);
        book.write(day, 23, KEEPER, Body::WeatherNoted(weather(day)), None);
    }
    for (n, plot) in plots().iter().enumerate() {
        let palm = PalmId(id(n as u64).0);
        for (_, days, litres, words) in WATER.iter().filter(|own| own.0 == plot.tag) {
            let water = Watering {
                litres: *litres,
                notes: (*words).to_owned(),
            };
            for ago in *days {
                let what = Tending::Watered(water.clone());
                book.write(
                    today.plus(-ago),
                    12,
                    CREW,
                    Body::Tended { palm, what },
                    None,
                );
            }
        }
        for (_, ago, product, grams, area, against, words) in
            FEED.iter().filter(|own| own.0 == plot.tag)
        {
            let what = Tending::Fed(Feeding {
                product: (*product).to_owned(),
                grams: Some(*grams),
                area_m2: *area,
                against: (*against).to_owned(),
                notes: (*words).to_owned(),
            });
            book.write(
                today.plus(-ago),
                13,
                CREW,
                Body::Tended { palm, what },
                None,
            );
        }
    }
}

/// Weather of a day: the same on every run, whatever day is today.
fn weather(day: Day) -> WeatherDay {
    let (_, month, _) = day.ymd();
    let [lat, lon] = SITES[0].2;
    let means = place_nearby(Position { lat, lon })
        .map(|place| place.climate.months[(month - 1) as usize])
        .unwrap_or_default();
    let mut dice = Dice::new(0x0ea7_4e50 + u64::from(day.of_year() as u16));
    let shift = 1.6 * dice.normal();
    let wet = dice.chance(WET);
    let fall = dice.between(0.3, 1.7);
    let tenth = |x: f64| (x * 10.0).round() / 10.0;
    let cloud = if wet { 2.5 } else { 0.0 };
    WeatherDay {
        t_min: means.tmin_c.map(|t| tenth(t + shift)),
        t_max: means
            .tmax_c
            .map(|t| tenth((t + shift - cloud).max(means.tmin_c.unwrap_or(t) + shift + 1.0))),
        rain: means.rain_mm.map(|mm| {
            if wet {
                tenth(mm / 30.4 / WET * fall)
            } else {
                0.0
            }
        }),
        ..WeatherDay::blank("", day)
    }
}
