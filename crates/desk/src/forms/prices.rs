//! The form of the price list: currency, prices, tax, the keeper's own figures.
//!
//! Fields: `currency`, `digits`, `tax`, `notes`; each price under its key of `effort.csv` (`price.trip` ...), each figure
//! under its key of `effort.csv` or `debris.csv`. Empty: not set, the assumed one holds.

use super::field::{Fields, text_arg};
use super::save::{Stop, entry_id, record};
use super::{Trouble, Typed};
use crate::office::Office;
use model::knowledge::EffortRow;
use model::{Arg, Body, Finding, Knowledge, Prices, Severity};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::str::FromStr;

/// The largest price, in the smallest unit of the currency: more is a slip.
const MOST: i64 = 1_000_000_000_000;

/// Rows that a keeper may set figures for, with the key under which they are kept.
pub fn own_figures() -> impl Iterator<Item = (String, &'static EffortRow)> {
    let known = Knowledge::embedded();
    let effort = known.effort.iter().filter(|row| row.unit != "money");
    effort.map(|row| (row.key.clone(), row)).chain(
        known
            .debris
            .iter()
            .map(|row| (format!("debris.{}", row.key), row)),
    )
}

/// Rows of prices, with the key under which they are kept.
pub fn own_prices() -> impl Iterator<Item = (&'static str, &'static EffortRow)> {
    let rows = Knowledge::embedded().effort.iter();
    rows.filter_map(|row| Some((row.key.strip_prefix("price.")?, row)))
}

/// A price list as the form shows it for editing.
pub fn typed_prices(prices: &Prices) -> Typed {
    let mut typed = Typed::default();
    typed.set("currency", prices.currency.as_str());
    typed.set("digits", prices.digits.to_string());
    typed.set("notes", prices.notes.as_str());
    if let Some(tax) = prices.tax_pct {
        typed.set("tax", tax.to_string());
    }
    for (key, row) in own_prices() {
        if let Some(price) = prices.prices.get(key) {
            let price = Decimal::new(*price, u32::from(prices.digits));
            typed.set(&row.key, price.to_string());
        }
    }
    for (key, row) in own_figures() {
        if let Some(figure) = prices.figures.get(&key) {
            typed.set(&row.key, figure.to_string());
        }
    }
    typed
}

/// Checks the form. Prices and figures of the list before that the form does not show are kept.
pub fn prices(typed: &Typed, before: Option<&Prices>) -> Result<Prices, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let currency = fields.text("currency").to_uppercase();
    if currency.len() != 3 || !currency.bytes().all(|b| b.is_ascii_uppercase()) {
        fields.refuse("currency", "form-prices-currency");
    }
    let digits = fields.count("digits", 4).unwrap_or(2) as u8;
    let mut list = Prices {
        currency,
        digits,
        tax_pct: fields.number("tax", 0.0..=100.0),
        notes: fields.text("notes"),
        ..before.cloned().unwrap_or_default()
    };
    for (key, row) in own_prices() {
        let smallest = fields.some(&row.key).map(|text| in_smallest(text, digits));
        match smallest {
            None => drop(list.prices.remove(key)),
            Some(Ok(smallest)) => drop(list.prices.insert(key.to_owned(), smallest)),
            Some(Err(finding)) => fields.add(&row.key, finding),
        }
    }
    for (key, row) in own_figures() {
        if fields.some(&row.key).is_none() {
            list.figures.remove(&key);
        } else if let Some(figure) = fields.number(&row.key, 0.0001..=10_000.0) {
            list.figures.insert(key, figure);
        }
    }
    fields.or(list)
}

/// A price as typed, in the smallest unit of the currency.
fn in_smallest(text: &str, digits: u8) -> Result<i64, Finding> {
    let refuse = |code| Finding::new(code, Severity::Refuse);
    let plain = text.replace(',', ".");
    let amount = Decimal::from_str(&plain)
        .ok()
        .filter(|_| plain.bytes().all(|b| b.is_ascii_digit() || b == b'.'))
        .ok_or_else(|| refuse("form-price-not-read").with("found", text_arg(text)))?;
    let smallest = Decimal::from(10_i64.pow(u32::from(digits)))
        .checked_mul(amount)
        .map(|x| x.normalize());
    let smallest = smallest.ok_or_else(|| refuse("form-price-too-large"))?;
    if smallest.scale() > 0 {
        return Err(refuse("form-price-digits").with("n", Arg::Count(i64::from(digits))));
    }
    smallest
        .to_i64()
        .filter(|n| *n <= MOST)
        .ok_or_else(|| refuse("form-price-too-large"))
}

/// Sets the price list. A form that changes nothing writes nothing.
pub fn save_prices(office: &Office, typed: &Typed) -> Result<(), Stop> {
    let state = office.state();
    let before = state.work.prices.as_ref();
    let list = prices(typed, before)?;
    if before == Some(&list) {
        return Ok(());
    }
    record(
        office,
        Body::PricesSet(list),
        entry_id(typed.get("id")),
        None,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;

    fn typed(pairs: &[(&str, &str)]) -> Typed {
        Typed::of(
            [("currency", "eur"), ("digits", "2")]
                .iter()
                .chain(pairs)
                .copied(),
        )
    }

    #[test]
    fn prices_are_kept_to_the_smallest_unit() {
        let list = prices(
            &typed(&[
                ("price.trip", "75.10"),
                ("price.crew_hour", "92,5"),
                ("tax", "8.25"),
            ]),
            None,
        )
        .unwrap();
        assert_eq!(list.currency, "EUR");
        assert_eq!(list.prices["trip"], 7510);
        assert_eq!(list.prices["crew_hour"], 9250);
        assert_eq!(list.tax_pct, Some(8.25));
        assert!(!list.prices.contains_key("lift_day"));
        // and back
        let again = prices(&typed_prices(&list), Some(&list)).unwrap();
        assert_eq!(again, list);
    }

    #[test]
    fn figures_are_the_keepers_own() {
        let list = prices(&typed(&[("look", "4"), ("loose", "120")]), None).unwrap();
        assert_eq!(list.figures["look"], 4.0);
        assert_eq!(list.figures["debris.loose"], 120.0);
        let emptied = prices(&typed(&[]), Some(&list)).unwrap();
        assert!(emptied.figures.is_empty());
    }

    #[test]
    fn what_is_no_price_is_refused_at_its_field() {
        for (text, code) in [
            ("dear", "form-price-not-read"),
            ("-3", "form-price-not-read"),
            ("1.005", "form-price-digits"),
            ("99999999999999", "form-price-too-large"),
        ] {
            let got = codes(prices(&typed(&[("price.trip", text)]), None));
            assert_eq!(got, [("price.trip", code)], "{text}");
        }
        let got = codes(prices(&typed(&[("currency", "euro")]), None));
        assert_eq!(got, [("currency", "form-prices-currency")]);
        let got = codes(prices(&typed(&[("look", "-1")]), None));
        assert_eq!(got, [("look", "form-number-out-of-range")]);
    }
}
