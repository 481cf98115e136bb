//! From table text to rows. What cannot be read is left out and reported.

use super::Knowledge;
use super::names::Names;
use super::rows::{Genus, HowSeen, Place, RuleRow, SafetyRow, Source, Synonym, number};
use super::tables::Tables;
use super::{facts, traits};
use crate::climate::{Climate, Month};
use crate::sourced::{Basis, SourceKey, Sourced};
use crate::species::LeafForm;
use crate::units::Position;
use std::collections::BTreeMap;

/// Something wrong with a table.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Flaw {
    /// File name of the table.
    pub table: &'static str,
    /// Line in the file, the header being 1; 0 where no single line is to blame.
    pub line: u64,
    /// Stable code, kebab case.
    pub code: &'static str,
    /// What was found.
    pub found: String,
}

/// One table being read: its rows and the flaws met.
pub(super) struct Reader<'f> {
    pub table: &'static str,
    pub line: u64,
    pub flaws: &'f mut Vec<Flaw>,
}

impl Reader<'_> {
    /// Notes a flaw on the line being read.
    pub fn flaw(&mut self, code: &'static str, found: &str) {
        self.flaws.push(Flaw {
            table: self.table,
            line: self.line,
            code,
            found: found.to_owned(),
        });
    }

    /// The value, or a flaw if the cell is not empty and could not be read.
    pub fn or_flaw<T>(&mut self, value: Option<T>, code: &'static str, cell: &str) -> Option<T> {
        if value.is_none() {
            self.flaw(code, cell);
        }
        value
    }

    /// A number; empty and `unknown` are nothing.
    pub fn number(&mut self, cell: &str) -> Option<f64> {
        if cell.is_empty() || cell == "unknown" {
            return None;
        }
        self.or_flaw(number(cell), "not-a-number", cell)
    }
}

/// Reads a table line by line; a wrong header or a line of the wrong width is a flaw and skipped.
pub(super) fn each_row<const N: usize>(
    text: &str,
    table: &'static str,
    header: [&str; N],
    flaws: &mut Vec<Flaw>,
    mut row: impl FnMut(&mut Reader<'_>, [&str; N]),
) {
    let mut csv = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut record = csv::StringRecord::new();
    let mut reader = Reader {
        table,
        line: 1,
        flaws,
    };
    let mut first = true;
    loop {
        reader.line = csv.position().line();
        match csv.read_record(&mut record) {
            Ok(false) => break,
            Ok(true) => {}
            Err(error) => {
                reader.flaw("not-csv", &error.to_string());
                break;
            }
        }
        reader.line = record.position().map_or(reader.line, csv::Position::line);
        let mut cells = [""; N];
        cells
            .iter_mut()
            .zip(record.iter())
            .for_each(|(cell, text)| *cell = text);
        if core::mem::take(&mut first) {
            if record.len() != N || cells != header {
                reader.flaw("wrong-header", &record.iter().collect::<Vec<_>>().join(","));
                return;
            }
        } else if record.len() != N {
            reader.flaw("wrong-width", &record.len().to_string());
        } else {
            row(&mut reader, cells);
        }
    }
}

/// How a value is known and where from: the cell of source keys, resolved.
#[derive(Clone, PartialEq, Debug)]
pub(super) struct Origin {
    pub basis: Basis,
    pub sources: Vec<SourceKey>,
}

impl Origin {
    /// A value with this origin.
    pub fn of<T>(&self, value: T) -> Sourced<T> {
        Sourced {
            value,
            basis: self.basis,
            sources: self.sources.clone(),
        }
    }
}

/// Keys of sources to their index and whether they are memory or practice.
pub(super) struct SourceIndex<'a> {
    sources: &'a [Source],
    at: &'a BTreeMap<String, usize>,
}

impl SourceIndex<'_> {
    /// Reads a cell of source keys. `assumed` stands alone and names no source. A value is only as well known as the
    /// weakest of its sources: recalled before practice before published.
    pub fn origin(&self, reader: &mut Reader<'_>, cell: &str) -> Option<Origin> {
        if cell == "assumed" {
            return Some(Origin {
                basis: Basis::Assumed,
                sources: Vec::new(),
            });
        }
        if cell.is_empty() {
            reader.flaw("no-source", "");
            return None;
        }
        let mut origin = Origin {
            basis: Basis::Published,
            sources: Vec::new(),
        };
        for key in cell.split(';') {
            let Some(&at) = self.at.get(key) else {
                reader.flaw("unknown-source", key);
                return None;
            };
            let source = &self.sources[at];
            origin.basis = weaker(origin.basis, basis_of(source));
            origin.sources.push(SourceKey::new(&source.key));
        }
        Some(origin)
    }
}

fn basis_of(source: &Source) -> Basis {
    match (source.key.as_str(), source.how_seen) {
        ("common-practice", _) => Basis::Practice,
        (_, HowSeen::Memory) => Basis::Memory,
        (_, HowSeen::Read) => Basis::Published,
    }
}

fn weaker(a: Basis, b: Basis) -> Basis {
    let rank = |basis| match basis {
        Basis::Memory => 2,
        Basis::Practice => 1,
        _ => 0,
    };
    if rank(b) > rank(a) { b } else { a }
}

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
    known.places = places(tables.climate, &index, &mut flaws);
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

/// The parts of a cell between semicolons, trimmed.
pub(super) fn list(cell: &str) -> Vec<String> {
    cell.split(';')
        .map(str::trim)
        .filter(|part| !part.is_empty())
        .map(str::to_owned)
        .collect()
}

fn sources(text: &str, flaws: &mut Vec<Flaw>) -> Vec<Source> {
    let header = [
        "key",
        "also",
        "title",
        "author",
        "publisher",
        "year",
        "identifier",
        "how_seen",
    ];
    let mut rows = Vec::new();
    each_row(
        text,
        "sources.csv",
        header,
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
        ["name", "accepted", "sources"],
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
    let header = ["genus", "leaf_form", "crownshaft", "sources", "note"];
    each_row(
        text,
        "genera.csv",
        header,
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
    let header = [
        "key",
        "text",
        "text_es",
        "value",
        "unit",
        "applies_to",
        "sources",
    ];
    each_row(
        text,
        "pruning_rules.csv",
        header,
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
    let header = [
        "key",
        "text",
        "text_es",
        "value",
        "unit",
        "condition",
        "sources",
    ];
    each_row(
        text,
        "safety.csv",
        header,
        flaws,
        |r, [key, text, text_es, value, unit, condition, sources]| {
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
                basis: o.basis,
                sources: o.sources,
            });
        },
    );
    rows
}

const MONTHS: usize = 12;

/// One line is one quantity of a place; lines of a place stand together.
fn places(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<Place> {
    let mut rows: Vec<Place> = Vec::new();
    let header = [
        "place",
        "lat",
        "lon",
        "elevation_m",
        "quantity",
        "jan",
        "feb",
        "mar",
        "apr",
        "may",
        "jun",
        "jul",
        "aug",
        "sep",
        "oct",
        "nov",
        "dec",
        "sources",
        "note",
    ];
    each_row(text, "climate_normals.csv", header, flaws, |r, cells| {
        let Some(o) = index.origin(r, cells[17]) else {
            return;
        };
        if rows.last().is_none_or(|p| p.name != cells[0]) {
            let (lat, lon) = (r.number(cells[1]), r.number(cells[2]));
            let (Some(lat), Some(lon)) = (lat, lon) else {
                return r.flaw("no-position", cells[0]);
            };
            rows.push(Place {
                name: cells[0].to_owned(),
                position: Position { lat, lon },
                elevation_m: r.number(cells[3]),
                climate: Climate::default(),
                note: cells[18].to_owned(),
            });
        }
        let Some(place) = rows.last_mut() else { return };
        let Some(slot) = quantity(cells[4]) else {
            return r.flaw("unknown-quantity", cells[4]);
        };
        for m in 0..MONTHS {
            *slot(&mut place.climate.months[m]) = r.number(cells[5 + m]);
        }
        let new = o
            .sources
            .into_iter()
            .filter(|s| !place.climate.sources.contains(s))
            .collect::<Vec<_>>();
        place.climate.sources.extend(new);
    });
    rows
}

/// The field of a month that a line fills.
fn quantity(word: &str) -> Option<fn(&mut Month) -> &mut Option<f64>> {
    match word {
        "tmean_c" => Some(|m| &mut m.tmean_c),
        "tmin_c" => Some(|m| &mut m.tmin_c),
        "tmax_c" => Some(|m| &mut m.tmax_c),
        "rain_mm" => Some(|m| &mut m.rain_mm),
        _ => None,
    }
}
