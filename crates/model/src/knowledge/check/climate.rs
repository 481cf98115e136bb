//! Places and their months.

use super::{Seen, said, within};
use crate::knowledge::places::MONTHS;
use crate::knowledge::reader::{Flaw, Reader, each_row, headers};
use crate::knowledge::rows::number;
use std::collections::BTreeMap;

/// Lines of a place stand together and agree on where it is; figures are in limits; low, mean and high are in order.
pub(super) fn places(text: &str, flaws: &mut Vec<Flaw>) {
    let (mut lines, mut begun) = (Seen::default(), Seen::default());
    let mut last: Option<(String, [String; 3])> = None;
    let mut temperatures: BTreeMap<&str, Vec<Option<f64>>> = BTreeMap::new();
    each_row(
        text,
        "climate_normals.csv",
        headers::CLIMATE,
        flaws,
        |r, cells| {
            let (name, quantity) = (cells[0], cells[4]);
            said(r, "place", name);
            lines.once(r, "quantity-twice", &format!("{name}: {quantity}"));
            let place = [cells[1], cells[2], cells[3]].map(str::to_owned);
            match &last {
                Some((before, there)) if before == name => {
                    if *there != place {
                        r.flaw("place-moved", name);
                    }
                }
                _ => {
                    begun.once(r, "place-twice", name);
                    temperatures.clear();
                }
            }
            last = Some((name.to_owned(), place));
            limits(r, &cells);
            let months = cells[5..5 + MONTHS]
                .iter()
                .map(|cell| number(cell))
                .collect();
            temperatures.insert(known_quantity(quantity), months);
            in_order(r, &temperatures, name);
        },
    );
}

fn limits(r: &mut Reader<'_>, cells: &[&str; 19]) {
    within(r, cells[1], -90.0, 90.0);
    within(r, cells[2], -180.0, 180.0);
    within(r, cells[3], -430.0, 5_000.0);
    let (low, high) = if cells[4] == "rain_mm" {
        (0.0, 2_500.0)
    } else {
        (-30.0, 50.0)
    };
    for cell in &cells[5..5 + MONTHS] {
        within(r, cell, low, high);
        if cell.is_empty() {
            r.flaw("empty", "month");
        }
    }
}

fn known_quantity(word: &str) -> &'static str {
    ["tmin_c", "tmean_c", "tmax_c"]
        .into_iter()
        .find(|q| *q == word)
        .unwrap_or("other")
}

/// A month whose low is above its mean, or mean above its high.
fn in_order(r: &mut Reader<'_>, months: &BTreeMap<&str, Vec<Option<f64>>>, place: &str) {
    for (low, high) in [
        ("tmin_c", "tmean_c"),
        ("tmean_c", "tmax_c"),
        ("tmin_c", "tmax_c"),
    ] {
        let (Some(low), Some(high)) = (months.get(low), months.get(high)) else {
            continue;
        };
        if low
            .iter()
            .zip(high)
            .any(|(l, h)| matches!((l, h), (Some(l), Some(h)) if l > h))
        {
            r.flaw("temperatures-out-of-order", place);
        }
    }
}
