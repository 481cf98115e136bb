//! What work takes and leaves behind: unique keys, words in both languages, figures in order, and no figure that claims
//! a source without saying which of the three it gives.

use super::{Seen, is_key, said, within};
use crate::knowledge::effort::{DEBRIS, EFFORT, HEADER};
use crate::knowledge::reader::{Flaw, each_row};
use crate::knowledge::rows::number;
use crate::knowledge::tables::Tables;

/// All that is wrong with the two tables.
pub(super) fn effort(tables: &Tables, flaws: &mut Vec<Flaw>) {
    table(tables.effort, EFFORT, flaws);
    table(tables.debris, DEBRIS, flaws);
}

fn table(text: &str, name: &'static str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(text, name, HEADER, flaws, |r, c: [&str; 9]| {
        if !is_key(c[0]) {
            r.flaw("not-a-key", c[0]);
        }
        keys.once(r, "key-twice", c[0]);
        said(r, "unit", c[4]);
        said(r, "text", c[6]);
        said(r, "text_es", c[7]);
        if c[6] == c[7] {
            r.flaw("not-translated", c[6]);
        }
        for cell in [c[1], c[2], c[3]] {
            within(r, cell, 0.0, 1_000.0);
        }
        if let (Some(low), Some(mid), Some(high)) = (number(c[1]), number(c[2]), number(c[3]))
            && !(low <= mid && mid <= high)
        {
            r.flaw("out-of-order", c[0]);
        }
        if (c[8] == "assumed") != c[5].is_empty() {
            r.flaw("given-unclear", c[0]);
        }
        for given in c[5].split(';').filter(|g| !g.is_empty()) {
            if !matches!(given, "low" | "mid" | "high") {
                r.flaw("not-a-word", given);
            }
        }
    });
}
