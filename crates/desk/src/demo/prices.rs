//! The demo's price list: what the keeper charges. The tip's price is left open, so that an assumed one is seen.

use super::KEEPER;
use super::book::Book;
use model::{Body, Day, Prices};
use std::collections::BTreeMap;

/// Days before today on which the list was set.
const SET: i32 = 30;

/// Writes the list.
pub(super) fn write(today: Day, book: &mut Book) {
    let prices = [
        ("trip", 4_800),
        ("lift_day", 38_500),
        ("crew_hour", 9_600),
        ("haul_m3", 1_450),
    ];
    let list = Prices {
        currency: "USD".to_owned(),
        digits: 2,
        prices: prices.map(|(key, cents)| (key.to_owned(), cents)).into(),
        figures: BTreeMap::from([("set-up".to_owned(), 2.0)]),
        tax_pct: Some(7.0),
        notes: "Valid for thirty days. Work starts once the gate is open and the ground is clear."
            .to_owned(),
    };
    book.write(today.plus(-SET), 9, KEEPER, Body::PricesSet(list), None);
}
