//! Species, synonyms and genera: names and figures.

use super::{Seen, range_within, said, within};
use crate::knowledge::Knowledge;
use crate::knowledge::reader::{Flaw, each_row, headers};
use crate::species::Species;

/// The trait table: well-formed names, each once, and figures a palm can have.
pub(super) fn palmtraits(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut names = Seen::default();
    each_row(
        text,
        "palmtraits.csv",
        headers::PALMTRAITS,
        flaws,
        |r, cells| {
            if !is_binomial(cells[0]) {
                r.flaw("not-a-name", cells[0]);
            }
            names.once(r, "name-twice", &cells[0].to_lowercase());
            if known.source("palmtraits-1.0").is_none() {
                r.flaw("unknown-source", "palmtraits-1.0");
            }
            within(r, cells[7], 0.0, 200.0); // stem, m: the longest rattan measured is near 170
            within(r, cells[8], 0.0, 250.0); // stem, cm
            within(r, cells[9], 1.0, 200.0); // fronds
            within(r, cells[10], 0.05, 30.0); // blade, m: raffia reaches 25
            within(r, cells[11], 0.01, 30.0); // rachis, m
            within(r, cells[12], 0.0, 10.0); // petiole, m
        },
    );
}

/// Facts: each once a species, known names, figures in limits, something said.
pub(super) fn species(text: &str, flaws: &mut Vec<Flaw>) {
    let mut facts = Seen::default();
    each_row(
        text,
        "species.csv",
        headers::SPECIES,
        flaws,
        |r, [name, fact, value, sources, note]| {
            if !is_binomial(name) {
                r.flaw("not-a-name", name);
            }
            facts.once(r, "fact-twice", &format!("{name}: {fact}"));
            said(r, "value", value);
            if value == "unknown" && !sources.is_empty() {
                r.flaw("unknown-with-source", sources);
            }
            if value == "unknown" && note.is_empty() {
                r.flaw("unknown-without-reason", fact);
            }
            match fact {
                "live_leaves" => range_within(r, value, 1.0, 250.0),
                "leaves_per_year" => range_within(r, value, 0.5, 80.0),
                "leaf_length_m" => within(r, value, 0.05, 30.0),
                "max_height_m" => within(r, value, 0.0, 200.0),
                "trunk_diameter_m" => within(r, value, 0.005, 2.5),
                "hardiness_c" => within(r, value, -35.0, 15.0),
                _ => {}
            }
        },
    );
}

/// Synonyms: one species each, never an accepted name, and the species must be there.
pub(super) fn synonyms(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut names = Seen::default();
    each_row(
        text,
        "synonyms.csv",
        headers::SYNONYMS,
        flaws,
        |r, [name, accepted, _]| {
            if !is_binomial(name) {
                r.flaw("not-a-name", name);
            }
            names.once(r, "synonym-twice", &name.to_lowercase());
            if by_name(known, name).is_some() {
                r.flaw("synonym-is-accepted", name);
            }
            if by_name(known, accepted).is_none() {
                r.flaw("accepted-name-unknown", accepted);
            }
        },
    );
}

/// Genera: each once, and only such as have species; every genus of the species has its row.
pub(super) fn genera(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut names = Seen::default();
    each_row(
        text,
        "genera.csv",
        headers::GENERA,
        flaws,
        |r, [name, ..]| {
            names.once(r, "genus-twice", name);
            if known.relatives(name).is_empty() {
                r.flaw("genus-without-species", name);
            }
        },
    );
    for species in &known.species {
        if !names.0.contains_key(species.genus()) {
            let found = species.name.clone();
            flaws.push(Flaw {
                table: "genera.csv",
                line: 0,
                code: "genus-missing",
                found,
            });
        }
    }
}

fn by_name<'a>(known: &'a Knowledge, name: &str) -> Option<&'a Species> {
    known
        .species
        .binary_search_by(|s| s.name.as_str().cmp(name))
        .ok()
        .map(|at| &known.species[at])
}

/// Genus and epithet: two words of letters (hyphens allowed in the epithet), only the first with a capital.
fn is_binomial(name: &str) -> bool {
    let Some((genus, epithet)) = name.split_once(' ') else {
        return false;
    };
    let small =
        |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_lowercase() || b == b'-');
    let (first, rest) = genus.split_at_checked(1).unwrap_or(("", ""));
    first.bytes().all(|b| b.is_ascii_uppercase()) && small(rest) && small(epithet)
}
