//! Signs, disorders, what links them, weights and disagreements.

use super::{Seen, is_key, said, within};
use crate::knowledge::Knowledge;
use crate::knowledge::ills_load::headers;
use crate::knowledge::reader::{Flaw, Reader, each_row, list};
use crate::knowledge::tables::Tables;
use std::collections::BTreeMap;

/// Signs that no disorder shows: rules listen to them.
pub(super) const BY_RULE: [&str; 6] = ["nest", "bats", "bees", "skirt", "fruit", "spear-leaning"];
/// Not a disorder: it needs no second sign.
const AGEING: &str = "natural-senescence";
/// Signs longer than this do not fit a button.
const NAME_CHARS: usize = 62;

/// All that is wrong with the five tables.
pub(super) fn ills(tables: &Tables, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    signs(tables.signs, known, flaws);
    disorders(tables.disorders, known, flaws);
    links(tables.disorder_signs, known, flaws);
    weights(tables.weights, flaws);
    disagreements(tables.disagreements, known, flaws);
}

fn signs(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let (mut keys, mut names) = (Seen::default(), Seen::default());
    each_row(text, "signs.csv", headers::SIGNS, flaws, |r, cells| {
        let [key, _, name, name_es, how, how_es, minutes, _] = cells;
        keyed(r, &mut keys, key);
        both(r, ["name", "name_es"], [name, name_es]);
        both(r, ["how", "how_es"], [how, how_es]);
        for name in [name, name_es] {
            names.once(r, "name-twice", &name.to_lowercase());
            if name.chars().count() > NAME_CHARS {
                r.flaw("too-long", name);
            }
        }
        within(r, minutes, 0.1, 60.0);
        let linked = known.sign_links.iter().any(|link| link.sign == key);
        if linked == BY_RULE.contains(&key) {
            r.flaw(
                if linked {
                    "rule-sign-linked"
                } else {
                    "sign-without-disorder"
                },
                key,
            );
        }
    });
}

fn disorders(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    let (table, header) = ("disorders.csv", headers::DISORDERS);
    each_row(text, table, header, flaws, |r, cells: [&str; 25]| {
        let key = cells[0];
        keyed(r, &mut keys, key);
        for at in [1, 4, 16, 20, 22] {
            both(r, [header[at], header[at + 1]], [cells[at], cells[at + 1]]);
        }
        if cells[18].is_empty() != cells[19].is_empty() {
            r.flaw("not-translated", cells[18]);
        }
        hosts(r, cells[7], known);
        said(r, "spread", cells[8]);
        for at in [9, 11] {
            ordered_days(r, cells[at], cells[at + 1]);
        }
        within(r, cells[13], 0.01, 1.0);
        let least = if key == AGEING { 1 } else { 2 };
        let positive = known
            .links_of(key)
            .filter(|link| link.strength != crate::knowledge::Strength::Excludes);
        if positive.count() < least {
            r.flaw("too-few-signs", key);
        }
    });
}

/// Every host is all palms, a genus or a species of the tables, and comes once.
fn hosts(r: &mut Reader<'_>, cell: &str, known: &Knowledge) {
    said(r, "hosts", cell);
    let mut names = Seen::default();
    for host in list(cell) {
        let name = host
            .rsplit_once(':')
            .map_or(host.as_str(), |(name, _)| name);
        names.once(r, "host-twice", name);
        let genus = || known.genera.binary_search_by(|g| g.name.as_str().cmp(name));
        let species = || {
            known
                .species
                .binary_search_by(|s| s.name.as_str().cmp(name))
        };
        if name != "*" && genus().is_err() && species().is_err() {
            r.flaw("unknown-host", name);
        }
    }
}

fn ordered_days(r: &mut Reader<'_>, min: &str, max: &str) {
    within(r, min, 0.0, 3650.0);
    within(r, max, 0.0, 3650.0);
    if let (Ok(low), Ok(high)) = (min.parse::<u32>(), max.parse::<u32>())
        && low > high
    {
        r.flaw("out-of-order", &format!("{low}..{high}"));
    }
}

fn links(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut pairs = Seen::default();
    let (table, header) = ("disorder_signs.csv", headers::LINKS);
    each_row(text, table, header, flaws, |r, [disorder, sign, ..]| {
        pairs.once(r, "link-twice", &format!("{disorder}: {sign}"));
        if known.disorder(disorder).is_none() {
            r.flaw("unknown-disorder", disorder);
        }
        if known.sign(sign).is_none() {
            r.flaw("unknown-sign", sign);
        }
    });
}

fn weights(text: &str, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    let mut strengths = BTreeMap::new();
    let mut end = 0;
    each_row(text, "weights.csv", headers::WEIGHTS, flaws, |r, cells| {
        let [key, value, text, text_es, _] = cells;
        keyed(r, &mut keys, key);
        both(r, ["text", "text_es"], [text, text_es]);
        within(r, value, 0.0, 3650.0);
        if let Some(strength) = key.strip_prefix("strength-") {
            within(r, value, 0.001, 0.999);
            strengths.extend(value.parse::<f64>().map(|v| (strength.to_owned(), v)));
        }
        end = r.line;
    });
    let of = |word: &str| strengths.get(word).copied();
    let falling = [of("always"), of("usual"), of("sometimes"), of("rare")];
    if falling.windows(2).any(|pair| pair[0] <= pair[1]) {
        flaws.push(Flaw {
            table: "weights.csv",
            line: end,
            code: "strengths-out-of-order",
            found: format!("{falling:?}"),
        });
    }
}

fn disagreements(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    let (table, header) = ("disagreements.csv", headers::DISAGREEMENTS);
    each_row(text, table, header, flaws, |r, cells: [&str; 12]| {
        keyed(r, &mut keys, cells[0]);
        for at in [2, 4, 7, 10] {
            both(r, [header[at], header[at + 1]], [cells[at], cells[at + 1]]);
        }
        for disorder in list(cells[1]) {
            if known.disorder(&disorder).is_none() {
                r.flaw("unknown-disorder", &disorder);
            }
        }
    });
}

fn keyed(r: &mut Reader<'_>, keys: &mut Seen, key: &str) {
    if !is_key(key) || key.contains('_') {
        r.flaw("not-a-key", key);
    }
    keys.once(r, "key-twice", key);
}

/// Both languages say something, and not the same words.
fn both(r: &mut Reader<'_>, columns: [&str; 2], cells: [&str; 2]) {
    for (column, cell) in columns.iter().zip(cells) {
        said(r, column, cell);
    }
    if cells[0] == cells[1] && !cells[0].is_empty() {
        r.flaw("not-translated", cells[0]);
    }
}
