//! From table text to rows. What cannot be read is left out and reported.

use super::Knowledge;
use super::names::Names;
use super::origin::SourceIndex;
use super::reader::{Flaw, each_row, headers, list};
use super::rows::{Genus, HowSeen, RuleRow, SafetyRow, Source, Synonym};
use super::tables::Tables;
use super::{cleaners, effort, facts, ills_load, places, supply, tools, traits, transplant};
use crate::species::LeafForm;

/// Reads all tables.
pub(super) fn load(tables: &Tables) -> (Knowledge, Vec<Flaw>) {
    let mut flaws = Vec::new();
    let mut known = Knowledge {
        sources: sources(tables.sources, &mut flaws),
        ..Knowledge::default()
    };
    for (i, source) in known.sources.iter().enumerate() {
        for key in std::iter::once(&source.key).chain(&source.also) {
            known.source_at.insert(key.clone(), i);
        }
    }
    let index = SourceIndex {
        sources: &known.sources,
        at: &known.source_at,
    };
    known.genera = genera(tables.genera, &index, &mut flaws);
    known.species = traits::read(tables.palmtraits, &mut flaws);
    facts::merge(tables.species, &index, &mut known.species, &mut flaws);
    facts::fill_from_genera(&mut known.species, &known.genera);
    known.synonyms = synonyms(tables.synonyms, &index, &mut flaws);
    known.rules = rules(tables.rules, &index, &mut flaws);
    known.safety = safety(tables.safety, &index, &mut flaws);
    let texts = ills_load::IllTables {
        signs: tables.signs,
        disorders: tables.disorders,
        links: tables.disorder_signs,
        weights: tables.weights,
        disagreements: tables.disagreements,
    };
    let (ills, ills_at) = ills_load::read(&texts, &index, &mut flaws);
    known.cleaners = cleaners::cleaners(tables.cleaners, &index, &mut flaws);
    known.transplant = transplant::read(tables.transplant, &index, &mut flaws);
    known.soils = supply::soils(tables.soils, &index, &mut flaws);
    known.factors = supply::factors(tables.factors, &index, &mut flaws);
    known.water_figures = supply::figures(tables.water_figures, &index, &mut flaws);
    known.products = supply::products(tables.products, &index, &mut flaws);
    known.feeding = supply::feeding(tables.feeding, &index, &mut flaws);
    known.tools = tools::tools(tables.tools, &index, &mut flaws);
    known.effort = effort::read(tables.effort, effort::EFFORT, &index, &mut flaws);
    known.debris = effort::read(tables.debris, effort::DEBRIS, &index, &mut flaws);
    known.places = places::places(tables.climate, &index, &mut flaws);
    (known.signs, known.disorders) = (ills.signs, ills.disorders);
    (known.sign_links, known.weights) = (ills.links, ills.weights);
    known.disagreements = ills.disagreements;
    known.ills_at = ills_at;
    known.rule_at = known
        .rules
        .iter()
        .enumerate()
        .map(|(i, r)| (r.key.clone(), i))
        .collect();
    known.safety_at = known
        .safety
        .iter()
        .enumerate()
        .map(|(i, r)| (r.key.clone(), i))
        .collect();
    known.names = Names::of(&known.species, &known.synonyms);
    (known, flaws)
}

fn sources(text: &str, flaws: &mut Vec<Flaw>) -> Vec<Source> {
    let mut rows = Vec::new();
    each_row(
        text,
        "sources.csv",
        headers::SOURCES,
        flaws,
        |r, [key, also, title, author, publisher, year, identifier, seen]| {
            let how_seen = match seen {
                "read" => HowSeen::Read,
                "memory" => HowSeen::Memory,
                other => return r.flaw("how-seen", other),
            };
            let own = str::to_owned;
            rows.push(Source {
                key: own(key),
                also: list(also),
                title: own(title),
                author: own(author),
                publisher: own(publisher),
                year: own(year),
                identifier: own(identifier),
                how_seen,
            });
        },
    );
    rows
}

fn synonyms(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<Synonym> {
    let mut rows = Vec::new();
    each_row(
        text,
        "synonyms.csv",
        headers::SYNONYMS,
        flaws,
        |r, [name, accepted, sources]| {
            if let Some(o) = index.origin(r, sources) {
                let (name, accepted) = (name.to_owned(), accepted.to_owned());
                rows.push(Synonym {
                    name,
                    accepted,
                    basis: o.basis,
                    sources: o.sources,
                });
            }
        },
    );
    rows.sort_by(|a, b| a.name.cmp(&b.name));
    rows
}

fn genera(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<Genus> {
    let mut rows = Vec::new();
    each_row(
        text,
        "genera.csv",
        headers::GENERA,
        flaws,
        |r, [name, form, shaft, sources, note]| {
            let Some(o) = index.origin(r, sources) else {
                return;
            };
            let (leaf_form, crownshaft) = (facts::leaf_form(r, form), facts::yes_no(r, shaft));
            rows.push(Genus {
                name: name.to_owned(),
                leaf_form: leaf_form.map(|f: LeafForm| o.of(f)),
                crownshaft: crownshaft.map(|c| o.of(c)),
                note: note.to_owned(),
            });
        },
    );
    rows.sort_by(|a, b| a.name.cmp(&b.name));
    rows
}

fn rules(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<RuleRow> {
    let mut rows = Vec::new();
    each_row(
        text,
        "pruning_rules.csv",
        headers::RULES,
        flaws,
        |r, [key, text, text_es, value, unit, applies_to, sources]| {
            let Some(o) = index.origin(r, sources) else {
                return;
            };
            let own = str::to_owned;
            rows.push(RuleRow {
                key: own(key),
                text: own(text),
                text_es: own(text_es),
                value: own(value),
                unit: own(unit),
                applies_to: own(applies_to),
                basis: o.basis,
                sources: o.sources,
            });
        },
    );
    rows
}

fn safety(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<SafetyRow> {
    let mut rows = Vec::new();
    each_row(
        text,
        "safety.csv",
        headers::SAFETY,
        flaws,
        |r,
         [
            key,
            text,
            text_es,
            value,
            unit,
            condition,
            condition_es,
            sources,
        ]| {
            let Some(o) = index.origin(r, sources) else {
                return;
            };
            let own = str::to_owned;
            rows.push(SafetyRow {
                key: own(key),
                text: own(text),
                text_es: own(text_es),
                value: own(value),
                unit: own(unit),
                condition: own(condition),
                condition_es: own(condition_es),
                basis: o.basis,
                sources: o.sources,
            });
        },
    );
    rows
}
