//! Sources, rules and cautions.

use super::{Seen, is_key, said};
use crate::knowledge::reader::{Flaw, Reader, each_row, headers, list};
use crate::knowledge::rows::range;

/// Keys unique, other keys included; a title for each.
pub(super) fn sources(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(
        text,
        "sources.csv",
        headers::SOURCES,
        flaws,
        |r, [key, also, title, ..]| {
            for key in std::iter::once(key.to_owned()).chain(list(also)) {
                if !is_key(&key) {
                    r.flaw("not-a-key", &key);
                }
                keys.once(r, "key-twice", &key);
            }
            said(r, "title", title);
        },
    );
}

/// Pruning rules: unique keys, words in both languages, readable figures.
pub(super) fn rules(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(
        text,
        "pruning_rules.csv",
        headers::RULES,
        flaws,
        |r, [key, en, es, value, unit, applies_to, _]| {
            said(r, "applies_to", applies_to);
            worded(r, &mut keys, [key, en, es, value, unit]);
        },
    );
}

/// Cautions: the same.
pub(super) fn safety(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(
        text,
        "safety.csv",
        headers::SAFETY,
        flaws,
        |r, [key, en, es, value, unit, condition, condition_es, _]| {
            if !condition.is_empty() {
                said(r, "condition_es", condition_es);
            }
            worded(r, &mut keys, [key, en, es, value, unit]);
        },
    );
}

fn worded(r: &mut Reader<'_>, keys: &mut Seen, [key, en, es, value, unit]: [&str; 5]) {
    if !is_key(key) {
        r.flaw("not-a-key", key);
    }
    keys.once(r, "key-twice", key);
    said(r, "text", en);
    said(r, "text_es", es);
    if value.contains("..") && range(value).is_none() {
        r.flaw("not-a-range", value);
    }
    let figure = range(value).is_some();
    if figure && unit.is_empty() {
        r.flaw("no-unit", value);
    }
}
