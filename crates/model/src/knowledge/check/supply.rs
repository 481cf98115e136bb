//! Soils, factors, figures of watering, products, feeding: unique keys, words in both languages, names that resolve,
//! figures in limits and in order.

use super::{Seen, is_key, said, within};
use crate::knowledge::Knowledge;
use crate::knowledge::reader::{Flaw, Reader, each_row};
use crate::knowledge::rows::number;
use crate::knowledge::supply::{
    FACTORS, FACTORS_HEADER, FEEDING, FEEDING_HEADER, FIGURES, FIGURES_HEADER, PRODUCTS,
    PRODUCTS_HEADER, SOILS, SOILS_HEADER,
};
use crate::knowledge::tables::Tables;

/// All that is wrong with the five tables.
pub(super) fn supply(tables: &Tables, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    soils(tables.soils, flaws);
    factors(tables.factors, known, flaws);
    figures(tables.water_figures, flaws);
    products(tables.products, flaws);
    feeding(tables.feeding, known, flaws);
}

fn key(r: &mut Reader<'_>, keys: &mut Seen, key: &str) {
    if !is_key(key) {
        r.flaw("not-a-key", key);
    }
    keys.once(r, "key-twice", key);
}

fn texts(r: &mut Reader<'_>, en: &str, es: &str) {
    said(r, "text", en);
    said(r, "text_es", es);
    if en == es {
        r.flaw("not-translated", en);
    }
}

fn in_order(r: &mut Reader<'_>, low: &str, high: &str, least: f64, most: f64) {
    within(r, low, least, most);
    within(r, high, least, most);
    if let (Some(a), Some(b)) = (number(low), number(high))
        && a > b
    {
        r.flaw("out-of-order", &format!("{low}..{high}"));
    }
}

fn soils(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(text, SOILS, SOILS_HEADER, flaws, |r, c: [&str; 12]| {
        key(r, &mut keys, c[0]);
        texts(r, c[1], c[2]);
        for at in [3, 5, 7] {
            in_order(r, c[at], c[at + 1], 0.0, 0.6);
        }
        in_order(r, c[9], c[10], -20.0, 20.0);
        // what is held is no more than the wettest capacity above the driest wilting point
        if let (Some(fc), Some(wp), Some(held)) = (number(c[4]), number(c[5]), number(c[8]))
            && held > fc - wp + 1e-9
        {
            r.flaw("out-of-order", c[8]);
        }
    });
}

fn factors(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(text, FACTORS, FACTORS_HEADER, flaws, |r, c: [&str; 9]| {
        key(r, &mut keys, c[0]);
        texts(r, c[6], c[7]);
        in_order(r, c[4], c[5], 0.05, 6.0);
        if c[1] != "*" && !known.species.iter().any(|s| s.name == c[1]) {
            r.flaw("unknown-species", c[1]);
        }
        if !matches!(
            c[3],
            "any" | "dry" | "moist" | "desert" | "coast" | "inland"
        ) {
            r.flaw("not-a-word", c[3]);
        }
    });
}

fn figures(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(text, FIGURES, FIGURES_HEADER, flaws, |r, c: [&str; 6]| {
        key(r, &mut keys, c[0]);
        in_order(r, c[1], c[2], 0.0, 1000.0);
        said(r, "unit", c[3]);
        said(r, "note", c[5]);
    });
}

fn products(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(
        text,
        PRODUCTS,
        PRODUCTS_HEADER,
        flaws,
        |r, c: [&str; 12]| {
            key(r, &mut keys, c[0]);
            texts(r, c[1], c[2]);
            texts(r, c[9], c[10]);
            for cell in &c[3..7] {
                within(r, cell, 0.0, 100.0);
            }
        },
    );
}

fn feeding(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(text, FEEDING, FEEDING_HEADER, flaws, |r, c: [&str; 14]| {
        key(r, &mut keys, c[0]);
        texts(r, c[11], c[12]);
        in_order(r, c[4], c[5], 0.0, 10_000.0);
        in_order(r, c[8], c[9], 0.0, 1000.0);
        within(r, c[7], 1.0, 12.0);
        if !matches!(c[2], "*" | "maintenance") && known.disorder(c[2]).is_none() {
            r.flaw("unknown-disorder", c[2]);
        }
        if !c[3].is_empty() && known.product(c[3]).is_none() {
            r.flaw("unknown-product", c[3]);
        }
        if !matches!(c[6], "" | "g/m2" | "g" | "d") {
            r.flaw("no-unit", c[6]);
        }
        if c[1] == "rate" && (c[3].is_empty() || c[6].is_empty()) {
            r.flaw("no-figure", c[0]);
        }
    });
}
