//! Cleaners: unique keys, words in both languages, figures in limits and in order, one name an agent.

use super::{Seen, is_key, said, within};
use crate::knowledge::cleaners::{GERMS, HEADER, TABLE};
use crate::knowledge::reader::{Flaw, Reader, each_row, list};
use crate::knowledge::rows::number;
use std::collections::{BTreeMap, BTreeSet};

/// All that is wrong with the table; `disorders` are the keys it may name.
pub(super) fn cleaners(text: &str, disorders: &BTreeSet<&str>, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    let mut names: BTreeMap<String, (String, String)> = BTreeMap::new();
    each_row(text, TABLE, HEADER, flaws, |r, cells: [&str; 16]| {
        let [
            key,
            agent,
            name,
            name_es,
            mix,
            mix_es,
            strength,
            low,
            high,
            ..,
        ] = cells;
        let [against, _, _, indirect, caution, caution_es, _] =
            [9, 10, 11, 12, 13, 14, 15].map(|i| cells[i]);
        for key in [key, agent] {
            if !is_key(key) {
                r.flaw("not-a-key", key);
            }
        }
        keys.once(r, "key-twice", key);
        for (what, cell) in HEADER.iter().zip(cells) {
            let may_be_empty = matches!(*what, "strength_pct" | "with_soil");
            if !may_be_empty {
                said(r, what, cell);
            }
        }
        let own = (name.to_owned(), name_es.to_owned());
        if names.entry(agent.to_owned()).or_insert(own.clone()) != &own {
            r.flaw("agent-named-otherwise", name);
        }
        for (en, es) in [(mix, mix_es), (caution, caution_es)] {
            if en == es {
                r.flaw("not-translated", en);
            }
        }
        figures(r, strength, low, high);
        germs(r, against, indirect, disorders);
    });
}

fn figures(r: &mut Reader<'_>, strength: &str, low: &str, high: &str) {
    within(r, strength, 0.01, 100.0);
    within(r, low, 0.0, 1440.0);
    within(r, high, 0.0, 1440.0);
    if let (Some(low), Some(high)) = (number(low), number(high))
        && low > high
    {
        r.flaw("out-of-order", &format!("{low}..{high}"));
    }
}

/// Every word is one that is known; a row for germs of other plants alone is indirect.
fn germs(r: &mut Reader<'_>, against: &str, indirect: &str, disorders: &BTreeSet<&str>) {
    let words = list(against);
    for word in &words {
        if !GERMS.contains(&word.as_str()) && !disorders.contains(word.as_str()) {
            r.flaw("unknown-disorder", word);
        }
    }
    let elsewhere = |word: &String| {
        matches!(
            word.as_str(),
            "erwinia-amylovora" | "fusarium-cubense" | "fusarium-vasinfectum"
        )
    };
    if words.iter().all(elsewhere) && indirect != "yes" {
        r.flaw("not-marked-indirect", against);
    }
}
