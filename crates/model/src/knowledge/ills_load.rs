//! `signs.csv`, `disorders.csv`, `disorder_signs.csv`, `weights.csv` and `disagreements.csv`: from text to rows.

use super::Knowledge;
use super::ills::{
    Course, DayRange, DisagreementRow, DisorderRow, Family, HoldKind, Host, HostKind, Part,
    SignLink, SignRow, Spread, Strength, Texts, WeightRow,
};
use super::origin::SourceIndex;
use super::reader::{Flaw, Reader, each_row, list};
use crate::sourced::SourceKey;
use std::collections::BTreeMap;

/// First lines of the tables.
pub(super) mod headers {
    #[rustfmt::skip]
    pub const SIGNS: [&str; 8] = [
        "key", "part", "name", "name_es", "how", "how_es", "minutes", "sources",
    ];
    #[rustfmt::skip]
    pub const DISORDERS: [&str; 25] = [
        "key", "name", "name_es", "family", "about", "about_es", "organism", "hosts", "spread",
        "latency_min_days", "latency_max_days", "decline_min_days", "decline_max_days",
        "common", "course", "hold", "confirm", "confirm_es", "sample", "sample_es",
        "first", "first_es", "never", "never_es", "sources",
    ];
    pub const LINKS: [&str; 4] = ["disorder", "sign", "strength", "sources"];
    pub const WEIGHTS: [&str; 5] = ["key", "value", "text", "text_es", "sources"];
    #[rustfmt::skip]
    pub const DISAGREEMENTS: [&str; 12] = [
        "key", "disorders", "question", "question_es", "one", "one_es", "one_sources",
        "other", "other_es", "other_sources", "we", "we_es",
    ];
}

/// Where the rows of a key are.
#[derive(Debug, Default)]
pub(super) struct At {
    signs: BTreeMap<String, usize>,
    disorders: BTreeMap<String, usize>,
    weights: BTreeMap<String, usize>,
}

impl Knowledge {
    /// The sign with this key.
    pub fn sign(&self, key: &str) -> Option<&SignRow> {
        self.ills_at.signs.get(key).map(|&i| &self.signs[i])
    }

    /// The disorder with this key.
    pub fn disorder(&self, key: &str) -> Option<&DisorderRow> {
        self.ills_at.disorders.get(key).map(|&i| &self.disorders[i])
    }

    /// The number with this key among the assumed weights of the judgement.
    pub fn weight(&self, key: &str) -> Option<f64> {
        self.ills_at
            .weights
            .get(key)
            .map(|&i| self.weights[i].value)
    }

    /// The signs of a disorder, those that speak against it too, in the order of the file.
    pub fn links_of<'k>(&'k self, disorder: &'k str) -> impl Iterator<Item = &'k SignLink> {
        self.sign_links
            .iter()
            .filter(move |link| link.disorder == disorder)
    }

    /// What is disputed about a disorder, in the order of the file.
    pub fn disagreements_on<'k>(
        &'k self,
        disorder: &'k str,
    ) -> impl Iterator<Item = &'k DisagreementRow> {
        self.disagreements
            .iter()
            .filter(move |row| row.disorders.iter().any(|d| d == disorder))
    }
}

/// The texts of the five tables.
pub(super) struct IllTables<'a> {
    pub signs: &'a str,
    pub disorders: &'a str,
    pub links: &'a str,
    pub weights: &'a str,
    pub disagreements: &'a str,
}

/// Reads the five tables: their rows, and where each key is.
pub(super) fn read(text: &IllTables<'_>, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> (Ills, At) {
    let ills = Ills {
        signs: signs(text.signs, index, flaws),
        disorders: disorders(text.disorders, index, flaws),
        links: links(text.links, index, flaws),
        weights: weights(text.weights, index, flaws),
        disagreements: disagreements(text.disagreements, index, flaws),
    };
    let at = At {
        signs: places(ills.signs.iter().map(|r| &r.key)),
        disorders: places(ills.disorders.iter().map(|r| &r.key)),
        weights: places(ills.weights.iter().map(|r| &r.key)),
    };
    (ills, at)
}

/// The rows of the five tables.
pub(super) struct Ills {
    pub signs: Vec<SignRow>,
    pub disorders: Vec<DisorderRow>,
    pub links: Vec<SignLink>,
    pub weights: Vec<WeightRow>,
    pub disagreements: Vec<DisagreementRow>,
}

fn places<'k>(keys: impl Iterator<Item = &'k String>) -> BTreeMap<String, usize> {
    keys.enumerate().map(|(i, key)| (key.clone(), i)).collect()
}

fn signs(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<SignRow> {
    let mut rows = Vec::new();
    each_row(text, "signs.csv", headers::SIGNS, flaws, |r, cells| {
        rows.extend(sign(r, cells, index));
    });
    rows
}

fn sign(r: &mut Reader<'_>, cells: [&str; 8], index: &SourceIndex) -> Option<SignRow> {
    let [key, part, name, name_es, how, how_es, minutes, sources] = cells;
    let o = index.origin(r, sources)?;
    Some(SignRow {
        key: key.to_owned(),
        part: r.word(&Part::ALL, part)?,
        name: Texts::of(name, name_es),
        how: Texts::of(how, how_es),
        minutes: figure(r, minutes)?,
        basis: o.basis,
        sources: o.sources,
    })
}

fn disorders(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<DisorderRow> {
    let mut rows = Vec::new();
    let (table, header) = ("disorders.csv", headers::DISORDERS);
    each_row(text, table, header, flaws, |r, cells| {
        rows.extend(disorder(r, cells, index));
    });
    rows
}

fn disorder(r: &mut Reader<'_>, cells: [&str; 25], index: &SourceIndex) -> Option<DisorderRow> {
    let pair = |at: usize| Texts::of(cells[at], cells[at + 1]);
    let o = index.origin(r, cells[24])?;
    let family = r.word(&Family::ALL, cells[3])?;
    let hosts = list(cells[7])
        .iter()
        .filter_map(|cell| host(r, cell))
        .collect();
    let spread = list(cells[8]);
    let hold = match cells[15] {
        "" => None,
        code => Some(r.word(&HoldKind::ALL, code)?),
    };
    Some(DisorderRow {
        key: cells[0].to_owned(),
        name: pair(1),
        family,
        about: pair(4),
        organism: cells[6].to_owned(),
        hosts,
        spread: spread
            .iter()
            .filter_map(|cell| r.word(&Spread::ALL, cell))
            .collect(),
        latency: days(r, cells[9], cells[10]),
        decline: days(r, cells[11], cells[12]),
        common: figure(r, cells[13])?,
        course: r.word(&Course::ALL, cells[14])?,
        hold,
        confirm: pair(16),
        sample: pair(18),
        first: pair(20),
        never: pair(22),
        basis: o.basis,
        sources: o.sources,
    })
}

fn links(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<SignLink> {
    let mut rows = Vec::new();
    let (table, header) = ("disorder_signs.csv", headers::LINKS);
    each_row(text, table, header, flaws, |r, cells| {
        let [disorder, sign, strength, sources] = cells;
        let Some(o) = index.origin(r, sources) else {
            return;
        };
        if let Some(strength) = r.word(&Strength::ALL, strength) {
            rows.push(SignLink {
                disorder: disorder.to_owned(),
                sign: sign.to_owned(),
                strength,
                basis: o.basis,
                sources: o.sources,
            });
        }
    });
    rows
}

fn weights(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<WeightRow> {
    let mut rows = Vec::new();
    each_row(text, "weights.csv", headers::WEIGHTS, flaws, |r, cells| {
        let [key, value, text, text_es, sources] = cells;
        let Some(o) = index.origin(r, sources) else {
            return;
        };
        if let Some(value) = figure(r, value) {
            rows.push(WeightRow {
                key: key.to_owned(),
                value,
                text: Texts::of(text, text_es),
                basis: o.basis,
                sources: o.sources,
            });
        }
    });
    rows
}

fn disagreements(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<DisagreementRow> {
    let mut rows = Vec::new();
    let (table, header) = ("disagreements.csv", headers::DISAGREEMENTS);
    each_row(text, table, header, flaws, |r, cells: [&str; 12]| {
        let pair = |at: usize| Texts::of(cells[at], cells[at + 1]);
        let mut side =
            |at: usize| -> Option<Vec<SourceKey>> { index.origin(r, cells[at]).map(|o| o.sources) };
        if let (Some(one_sources), Some(other_sources)) = (side(6), side(9)) {
            rows.push(DisagreementRow {
                key: cells[0].to_owned(),
                disorders: list(cells[1]),
                question: pair(2),
                one: pair(4),
                one_sources,
                other: pair(7),
                other_sources,
                we: pair(10),
            });
        }
    });
    rows
}

/// `Name:kind`.
fn host(r: &mut Reader<'_>, cell: &str) -> Option<Host> {
    let (name, kind) = cell.rsplit_once(':').unwrap_or((cell, ""));
    Some(Host {
        name: name.to_owned(),
        kind: r.word(&HostKind::ALL, kind)?,
    })
}

fn days(r: &mut Reader<'_>, min: &str, max: &str) -> DayRange {
    DayRange {
        min: day(r, min),
        max: day(r, max),
    }
}

/// Whole days; empty (does not apply) and `unknown` are nothing.
fn day(r: &mut Reader<'_>, cell: &str) -> Option<u32> {
    match cell {
        "" | "unknown" => None,
        cell => r.or_flaw(cell.parse().ok(), "not-a-day-count", cell),
    }
}

/// A number that must be there.
fn figure(r: &mut Reader<'_>, cell: &str) -> Option<f64> {
    r.or_flaw(super::rows::number(cell), "not-a-number", cell)
}
