//! Tools: unique keys, words in both languages, lengths in limits and in order, a pole where it is held by one.

use super::{Seen, is_key, said, within};
use crate::knowledge::reader::{Flaw, each_row};
use crate::knowledge::rows::number;
use crate::knowledge::tools::{HEADER, TOOLS};

/// All that is wrong with the table.
pub(super) fn tools(text: &str, flaws: &mut Vec<Flaw>) {
    let (mut keys, mut names) = (Seen::default(), Seen::default());
    each_row(text, TOOLS, HEADER, flaws, |r, c: [&str; 12]| {
        if !is_key(c[0]) {
            r.flaw("not-a-key", c[0]);
        }
        keys.once(r, "key-twice", c[0]);
        for at in [1, 9] {
            said(r, HEADER[at], c[at]);
            said(r, HEADER[at + 1], c[at + 1]);
            if c[at] == c[at + 1] {
                r.flaw("not-translated", c[at]);
            }
        }
        names.once(r, "name-twice", c[1]);
        within(r, c[5], 0.5, 12.0);
        within(r, c[6], 0.5, 12.0);
        within(r, c[7], 0.5, 30.0);
        within(r, c[8], 0.5, 3.0);
        let pole = number(c[5]).zip(number(c[6]));
        if pole.is_some_and(|(low, high)| low > high) {
            r.flaw("out-of-order", &format!("{}..{}", c[5], c[6]));
        }
        if (c[4] == "pole") != pole.is_some() {
            r.flaw("no-figure", c[0]);
        }
        if (c[3] == "none") != matches!(c[4], "machine" | "ladder") {
            r.flaw("not-a-word", c[3]);
        }
    });
}
