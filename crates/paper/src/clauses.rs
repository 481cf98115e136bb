//! The clause sheet for outside firms: what to cut and what to leave, clean blades, holds, wires, the log.
//!
//! The demands are ours; every fact in them is a row of the tables and carries its sources. Where sources differ the
//! stricter one is the clause and the other is named below it.

mod baths;
mod outline;

use crate::leaf::{Frame, Leaf};
use crate::press::{self, Template};
use crate::refs::{Refs, Work};
use crate::{Error, Pdf, rows};
use baths::Bath;
use desk::views::Speaker;
use model::{Basis, SourceKey};
use outline::{Item, Part};
use serde::Serialize;

/// The clause sheet, to be filled in by hand and signed.
pub fn clauses(leaf: &Leaf) -> Result<Pdf, Error> {
    press::print(TEMPLATE, &sheet(leaf), leaf.day)
}

const TEMPLATE: Template = Template {
    name: "clauses.typ",
    text: include_str!("../sheets/clauses.typ"),
};

#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    notice: String,
    lead: String,
    blanks: Vec<String>,
    sections: Vec<Section>,
    baths: Baths,
    log: Log,
    signatures: Vec<String>,
    signature: String,
    sources: String,
    works: Vec<Work>,
    closing: String,
}

#[derive(Serialize)]
struct Section {
    title: String,
    clauses: Vec<Clause>,
    /// Whether the table of baths stands at its end.
    baths: bool,
}

#[derive(Serialize)]
struct Clause {
    text: String,
    /// The figure and when it holds, where the text leaves them out.
    figure: Option<String>,
    numbers: Vec<usize>,
    mark: Option<String>,
    /// What another source says.
    otherwise: Vec<Clause>,
}

#[derive(Serialize)]
struct Baths {
    title: String,
    heads: Vec<String>,
    rows: Vec<Bath>,
    otherwise: String,
}

#[derive(Serialize)]
struct Log {
    title: String,
    heads: Vec<String>,
    rows: usize,
}

fn sheet(leaf: &Leaf) -> Sheet {
    let mut writer = Writer {
        leaf,
        speaker: Speaker::new(leaf.measure),
        refs: Refs::default(),
    };
    let sections = outline::PARTS
        .iter()
        .map(|part| writer.section(part))
        .collect();
    let baths = writer.baths();
    let say = |codes: &[&str]| codes.iter().map(|code| leaf.say(code)).collect();
    Sheet {
        frame: leaf.frame(&leaf.say("clauses-title")),
        notice: leaf.say("clauses-notice"),
        lead: leaf.say("clauses-lead"),
        blanks: say(&outline::BLANKS),
        sections,
        baths,
        log: Log {
            title: leaf.say("clauses-log-title"),
            heads: say(&outline::LOG),
            rows: 14,
        },
        signatures: say(&["clauses-sign-keeper", "clauses-sign-firm"]),
        signature: leaf.say("clauses-signature"),
        sources: leaf.say("sheet-sources"),
        works: writer.refs.works(&writer.speaker),
        closing: leaf.say("common-closing"),
    }
}

struct Writer<'a> {
    leaf: &'a Leaf,
    speaker: Speaker,
    refs: Refs,
}

impl Writer<'_> {
    fn section(&mut self, part: &Part) -> Section {
        Section {
            title: self.leaf.say(part.title),
            clauses: part.items.iter().map(|item| self.clause(item)).collect(),
            baths: part.baths,
        }
    }

    fn clause(&mut self, item: &Item) -> Clause {
        match item {
            Item::Own(code) => self.said(self.leaf.say(code), None, Basis::Published, &[]),
            Item::Row(key) => self.row(key),
            Item::Stricter(key, others) => {
                // the clause takes its numbers before those that differ
                let mut clause = self.row(key);
                clause.otherwise = others.iter().map(|other| self.row(other)).collect();
                clause
            }
        }
    }

    /// The clause of a row of the rules or of the cautions.
    fn row(&mut self, key: &str) -> Clause {
        match rows::row(&self.speaker, key) {
            Some(row) => self.said(row.text, row.figure, row.basis, row.sources),
            // a row that went away shows its key: seen, and refused by a test
            None => self.said(key.to_owned(), None, Basis::Assumed, &[]),
        }
    }

    fn said(
        &mut self,
        text: String,
        figure: Option<String>,
        basis: Basis,
        sources: &[SourceKey],
    ) -> Clause {
        Clause {
            text,
            figure,
            numbers: self.refs.numbers(sources),
            mark: self.speaker.basis(basis),
            otherwise: Vec::new(),
        }
    }
}

#[cfg(test)]
mod tests;
