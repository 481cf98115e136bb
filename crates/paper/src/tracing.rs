//! The trace report for the owner and the plant health authority.

mod facts;
mod palms;
mod write;

use crate::leaf::{Frame, Leaf};
use crate::press::{self, Template};
use crate::refs::Work;
use crate::{Error, Pdf};
use desk::tracing::TraceAnswer;
use model::knowledge::DisorderRow;
use serde::Serialize;

/// The report of a trace. `disorder` is the row that the trace was asked with, if one was named.
pub fn trace_report(
    leaf: &Leaf,
    answer: &TraceAnswer,
    disorder: Option<&DisorderRow>,
) -> Result<Pdf, Error> {
    let found = answer.exposed.len() + answer.sources.len();
    if found > MOST {
        return Err(Error::TooMany { found, limit: MOST });
    }
    press::print(TEMPLATE, &write::sheet(leaf, answer, disorder), leaf.day)
}

/// Most palms in one report; more are for the CSV file.
const MOST: usize = 2_000;

const TEMPLATE: Template = Template {
    name: "trace.typ",
    text: include_str!("../sheets/trace.typ"),
};

/// The report with all words chosen, as the template reads it.
#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    /// What must be known first.
    notices: Vec<String>,
    facts: Vec<Fact>,
    meaning: Heap,
    summary: Option<Table>,
    sections: Vec<Section>,
    near: Option<Table>,
    lists: Vec<Heap>,
    sources: String,
    works: Vec<Work>,
    closing: String,
    signatures: Vec<String>,
}

#[derive(Serialize)]
struct Fact {
    label: String,
    value: String,
}

/// A title with points below it.
#[derive(Serialize)]
struct Heap {
    title: String,
    items: Vec<Point>,
}

#[derive(Serialize)]
struct Point {
    text: String,
    numbers: Vec<usize>,
    mark: Option<String>,
}

#[derive(Serialize)]
struct Table {
    title: String,
    lead: String,
    heads: Vec<String>,
    rows: Vec<Row>,
}

#[derive(Serialize)]
struct Row {
    tag: String,
    what: String,
    /// "certain" or "possible" in a frame; nothing where the question does not arise.
    sure: Option<String>,
    certain: bool,
    cells: Vec<String>,
}

#[derive(Serialize)]
struct Section {
    title: String,
    lead: String,
    groups: Vec<Group>,
}

#[derive(Serialize)]
struct Group {
    title: Option<String>,
    palms: Vec<Palm>,
}

#[derive(Serialize)]
struct Palm {
    tag: String,
    what: String,
    sure: String,
    certain: bool,
    lines: Vec<String>,
    steps: Vec<Link>,
}

/// A step of a chain in words.
#[derive(Serialize)]
struct Link {
    text: String,
    between: String,
}

#[cfg(test)]
mod tests;
