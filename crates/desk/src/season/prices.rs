//! What a visit costs: the prices and figures of the estimate ([`crate::estimating`]) as the planner weighs them.

use crate::estimating::{PRICES, PriceList, money, told_figures};
use model::{Knowledge, State};
use rounds::season::Tariff;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// A frond that a storm brings down is gathered by hand: so many minutes of a crew (assumed).
const STORM_FROND_MIN: i64 = 2;

/// Prices of a season, and which of them are assumed.
#[derive(Clone, PartialEq, Debug)]
pub struct SeasonPrices {
    /// For the planner, in the smallest unit of the currency.
    pub tariff: Tariff,
    /// The list behind it.
    pub list: PriceList,
    /// Keys of prices that nobody set.
    pub assumed: Vec<&'static str>,
}

impl SeasonPrices {
    /// From the keeper's list and figures, the tables where they are silent.
    ///
    /// The planner cannot weigh trips against hours without a price: in a currency for which none is assumed a missing one
    /// stands to the prices that are set as the assumed ones do to each other.
    pub fn of(state: &State) -> SeasonPrices {
        let known = Knowledge::embedded();
        let list = PriceList::of(state.work.prices.as_ref(), known);
        let scale = scale(&list);
        let price = |key: &'static str| match list.prices.get(key) {
            Some(price) => smallest(&list, price.amount),
            None => smallest(&list, assumed(key) * scale),
        };
        let crew_hour = price("crew_hour");
        let unset = |key: &&str| list.prices.get(key).is_none_or(|price| price.assumed);
        SeasonPrices {
            tariff: Tariff {
                trip: price("trip"),
                lift_day: price("lift_day"),
                crew_hour,
                debris_m3: price("haul_m3") + price("tip_m3"),
                storm_frond: crew_hour * STORM_FROND_MIN / 60,
                day_hours: told_figures(state).mid("day").max(1.0) / 60.0,
            },
            assumed: PRICES.into_iter().filter(unset).collect(),
            list,
        }
    }

    /// A sum of the planner as an amount of the list.
    pub fn amount(&self, sum: i64) -> Decimal {
        Decimal::new(sum, u32::from(self.list.digits))
    }
}

/// The table's price; the tables are checked to hold all.
fn assumed(key: &str) -> Decimal {
    money::assumed(Knowledge::embedded(), key).unwrap_or_default()
}

/// How many times the assumed prices the set ones are, on the whole; one where none is set.
fn scale(list: &PriceList) -> Decimal {
    let set = list.prices.iter().filter(|(_, price)| !price.assumed);
    let sums = set.fold([Decimal::ZERO; 2], |[own, table], (key, price)| {
        [own + price.amount, table + assumed(key)]
    });
    match sums {
        [own, table] if !own.is_zero() && !table.is_zero() => own / table,
        _ => Decimal::ONE,
    }
}

fn smallest(list: &PriceList, amount: Decimal) -> i64 {
    let unit = Decimal::from(10_i64.pow(u32::from(list.digits)));
    (list.round(amount) * unit)
        .to_i64()
        .unwrap_or(i64::MAX / 1_000_000)
}

#[cfg(test)]
mod tests {
    use super::*;
    use model::Prices;

    fn with(prices: Prices) -> SeasonPrices {
        let mut state = State::default();
        std::sync::Arc::make_mut(&mut state.work).prices = Some(prices);
        SeasonPrices::of(&state)
    }

    /// The tables' own prices: 60 a trip, 350 a lift day, 90 an hour, 15 and 12 a cubic metre (assumed, `effort.csv`).
    #[test]
    fn without_a_list_the_estimates_prices_are_taken() {
        let none = SeasonPrices::of(&State::default());
        assert_eq!(none.assumed, PRICES);
        let tariff = none.tariff;
        assert_eq!(
            (tariff.trip, tariff.lift_day, tariff.crew_hour),
            (6_000, 35_000, 9_000)
        );
        assert_eq!((tariff.debris_m3, tariff.storm_frond), (2_700, 300));
        assert_eq!(tariff.day_hours, 7.0);
        assert_eq!(none.amount(123_405).to_string(), "1234.05");
    }

    #[test]
    fn the_keepers_prices_and_figures_go_before() {
        let mut list = Prices {
            currency: "USD".to_owned(),
            digits: 2,
            ..Prices::default()
        };
        list.prices.insert("trip".to_owned(), 9_000);
        list.figures.insert("day".to_owned(), 360.0);
        let own = with(list);
        assert_eq!((own.tariff.trip, own.tariff.lift_day), (9_000, 35_000));
        assert_eq!(own.tariff.day_hours, 6.0);
        assert!(!own.assumed.contains(&"trip") && own.assumed.len() == 4);
    }

    /// Ten thousand yen an hour: what is missing is in proportion, not 60 yen a trip.
    #[test]
    fn in_another_currency_the_rest_is_in_proportion() {
        let mut list = Prices {
            currency: "JPY".to_owned(),
            digits: 0,
            ..Prices::default()
        };
        list.prices.insert("crew_hour".to_owned(), 9_000);
        let yen = with(list);
        assert_eq!((yen.tariff.trip, yen.tariff.lift_day), (6_000, 35_000));
        assert_eq!(yen.assumed.len(), 4);
        assert_eq!(yen.amount(9_000).to_string(), "9000");
    }
}
