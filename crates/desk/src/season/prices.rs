//! What a visit costs: the keeper's price list, and assumed figures where it is silent.

use model::Prices;
use rounds::season::Tariff;

/// Prices by key where the keeper has none, in hundredths (all assumed: they weigh trips against hours, and are no offer).
pub const ASSUMED: [(&str, i64); 5] = [
    ("trip", 6_000),
    ("lift_day", 32_000),
    ("crew_hour", 9_500),
    ("haul_m3", 1_200),
    ("tip_m3", 800),
];
/// Hours of work on a site in a day (assumed).
const DAY_HOURS: f64 = 7.0;

/// Prices of a season, and which of them are assumed.
#[derive(Clone, PartialEq, Debug)]
pub struct SeasonPrices {
    /// For the planner.
    pub tariff: Tariff,
    /// ISO 4217 code; empty: nobody has said.
    pub currency: String,
    /// Digits after the point.
    pub digits: u8,
    /// Keys that are assumed.
    pub assumed: Vec<&'static str>,
}

impl SeasonPrices {
    /// From the keeper's list.
    pub fn of(list: Option<&Prices>) -> SeasonPrices {
        let digits = list.map_or(2, |list| list.digits);
        let unit = (0..digits).fold(1, |unit, _| unit * 10);
        let mut assumed = Vec::new();
        let mut price = |key: &'static str| {
            let told = list.and_then(|list| list.prices.get(key));
            told.copied().unwrap_or_else(|| {
                assumed.push(key);
                let usual = ASSUMED
                    .iter()
                    .find(|(k, _)| *k == key)
                    .map_or(0, |(_, p)| *p);
                usual * unit / 100
            })
        };
        let (trip, lift_day, crew_hour) = (price("trip"), price("lift_day"), price("crew_hour"));
        let debris_m3 = price("haul_m3") + price("tip_m3");
        let hours = list.and_then(|list| list.figures.get("day_hours"));
        SeasonPrices {
            tariff: Tariff {
                trip,
                lift_day,
                crew_hour,
                debris_m3,
                // a frond a storm brings down is gathered by hand: two minutes of a crew (assumed)
                storm_frond: crew_hour / 30,
                day_hours: hours.copied().filter(|h| *h > 0.0).unwrap_or(DAY_HOURS),
            },
            currency: list.map(|list| list.currency.clone()).unwrap_or_default(),
            digits,
            assumed,
        }
    }

    /// A sum as it is written: `1234.50 USD`; without a currency the figure alone.
    pub fn write(&self, sum: i64) -> String {
        let unit = (0..self.digits).fold(1, |unit: i64, _| unit * 10);
        let (whole, part) = (sum.abs() / unit, sum.abs() % unit);
        let sign = if sum < 0 { "−" } else { "" };
        let figure = match self.digits {
            0 => format!("{sign}{whole}"),
            digits => format!("{sign}{whole}.{part:0width$}", width = usize::from(digits)),
        };
        match self.currency.is_empty() {
            true => figure,
            false => format!("{figure}\u{a0}{}", self.currency),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_keepers_prices_go_before_assumed_ones() {
        let none = SeasonPrices::of(None);
        assert_eq!(none.assumed.len(), 5);
        assert_eq!((none.tariff.trip, none.tariff.debris_m3), (6_000, 2_000));
        assert_eq!(none.write(-123_405), "−1234.05");
        let mut list = Prices {
            currency: "JPY".to_owned(),
            digits: 0,
            ..Prices::default()
        };
        list.prices.insert("trip".to_owned(), 9_000);
        let own = SeasonPrices::of(Some(&list));
        assert_eq!((own.tariff.trip, own.tariff.lift_day), (9_000, 320));
        assert!(!own.assumed.contains(&"trip"));
        assert_eq!(own.write(9_000), "9000\u{a0}JPY");
    }
}
