//! Header to columns: known ones found by name, unknown ones kept, missing and doubled ones refused.

use super::records::{Record, Records};
use super::refusal::{Fault, Refusal, shorten};
use crate::watering::CROWN_ACROSS;
use model::{Arg, Finding, Severity};
use std::collections::BTreeMap;
use std::io::Read;

/// The columns of a kind of file.
pub struct Layout {
    /// Columns without which the file makes no sense.
    pub required: &'static [&'static str],
    /// Columns that may be left out: everything in them is unknown then.
    pub optional: &'static [&'static str],
}

/// Columns this program adds to the file of refused rows; quietly left out when a mended file is read again.
pub const REFUSED_COLUMNS: [&str; 3] = ["refused_line", "refused_column", "refused_because"];

/// A known column: its name and where it stands, if it is there.
#[derive(Clone, Copy, Debug)]
pub struct Col {
    /// Name as documented.
    pub name: &'static str,
    /// Index in the row.
    pub at: Option<usize>,
}

/// A file whose header has been understood.
pub struct Table<R> {
    records: Records<R>,
    record: Record,
    headers: Vec<String>,
    unknown: Vec<(usize, String)>,
    blank_rows: i64,
    done: bool,
}

impl<R: Read> Table<R> {
    /// Reads the header. Names are matched without regard to case or blanks around them.
    pub fn open(read: R, layout: &Layout) -> Result<Table<R>, Refusal> {
        let mut records = Records::open(read)?;
        let mut record = Record::default();
        records.read(&mut record)?;
        let headers = record.to_vec();
        let names: Vec<String> = headers.iter().map(|h| plain(h)).collect();
        doubled(record.line, &names)?;
        missing(record.line, &names, layout)?;
        let known = |n: &str| layout.required.contains(&n) || layout.optional.contains(&n);
        let unknown = names
            .iter()
            .enumerate()
            .filter(|(_, n)| !known(n) && !n.is_empty() && !REFUSED_COLUMNS.contains(&n.as_str()))
            .map(|(i, _)| (i, headers[i].trim().to_owned()))
            .collect();
        Ok(Table {
            records,
            record,
            headers,
            unknown,
            blank_rows: 0,
            done: false,
        })
    }

    /// Finds a known column.
    pub fn column(&self, name: &'static str) -> Col {
        Col {
            name,
            at: self.headers.iter().position(|h| plain(h) == name),
        }
    }

    /// Goes to the next row that holds anything. `None` at the end and after a refusal of the whole file.
    pub fn advance(&mut self) -> Option<Result<(), Refusal>> {
        while !self.done {
            match self.records.read(&mut self.record) {
                Err(refusal) => {
                    self.done = true;
                    return Some(Err(refusal));
                }
                Ok(false) => self.done = true,
                Ok(true) if self.record.is_blank() => self.blank_rows += 1,
                Ok(true) => return Some(self.check_width().map_err(|fault| self.refuse(fault))),
            }
        }
        None
    }

    fn check_width(&self) -> Result<(), Fault> {
        let (have, want) = (self.record.len(), self.headers.len());
        let spare = (want..have).all(|i| self.record.cell(i).is_empty());
        if have == want || (have > want && spare) {
            return Ok(());
        }
        let code = if have > want {
            "intake-too-many-cells"
        } else {
            "intake-too-few-cells"
        };
        Err(Fault::cell(code, "", "")
            .with("have", Arg::Count(have as i64))
            .with("want", Arg::Count(want as i64)))
    }

    /// Makes a fault of the present row a refusal.
    pub fn refuse(&self, fault: Fault) -> Refusal {
        Refusal::row(self.record.line, fault, self.record.to_vec())
    }

    /// Line of the present row.
    pub fn line(&self) -> u64 {
        self.record.line
    }

    /// A cell of the present row; empty where the column is not there.
    pub fn cell(&self, column: Col) -> &str {
        column.at.map_or("", |i| self.record.cell(i))
    }

    /// The cells of the unknown columns of the present row that hold anything.
    pub fn extra(&self) -> BTreeMap<String, String> {
        let cells = self
            .unknown
            .iter()
            .map(|(i, name)| (name.clone(), self.record.cell(*i).to_owned()));
        cells.filter(|(_, cell)| !cell.is_empty()).collect()
    }

    /// Header cells as they came.
    pub fn headers(&self) -> &[String] {
        &self.headers
    }

    /// Columns nobody here knows.
    pub fn unknown_columns(&self) -> Vec<&str> {
        self.unknown.iter().map(|(_, name)| name.as_str()).collect()
    }

    /// Remarks on the file as a whole.
    pub fn remarks(&self) -> Vec<Finding> {
        let mut out = Vec::new();
        // known to the plan of watering, though no field of a palm
        let odd = self
            .unknown_columns()
            .into_iter()
            .filter(|name| *name != CROWN_ACROSS);
        for name in odd {
            out.push(
                Finding::new("intake-unknown-column", Severity::Info)
                    .with("column", Arg::Text(shorten(name))),
            );
        }
        if self.blank_rows > 0 {
            out.push(
                Finding::new("intake-blank-rows", Severity::Info)
                    .with("count", Arg::Count(self.blank_rows)),
            );
        }
        if self.records.delimiter() != b',' {
            let name = if self.records.delimiter() == b';' {
                "intake-semicolon"
            } else {
                "intake-tab"
            };
            out.push(
                Finding::new("intake-separator", Severity::Info).with("separator", Arg::Code(name)),
            );
        }
        out
    }
}

/// A header name as it is compared: no blanks around it, small letters.
fn plain(header: &str) -> String {
    header.trim().to_lowercase()
}

fn doubled(line: u64, names: &[String]) -> Result<(), Refusal> {
    let twice = names
        .iter()
        .enumerate()
        .find(|(i, n)| !n.is_empty() && names[..*i].contains(n));
    let Some((_, name)) = twice else {
        return Ok(());
    };
    let finding = Finding::new("intake-doubled-column", Severity::Refuse)
        .with("column", Arg::Text(shorten(name)));
    let mut refusal = Refusal::file(line, finding);
    refusal.column = shorten(name);
    Err(refusal)
}

fn missing(line: u64, names: &[String], layout: &Layout) -> Result<(), Refusal> {
    let lacking: Vec<&str> = layout
        .required
        .iter()
        .copied()
        .filter(|r| !names.iter().any(|n| n == r))
        .collect();
    let Some(first) = lacking.first() else {
        return Ok(());
    };
    let near = nearest_header(names, first, layout);
    let code = if near.is_some() {
        "intake-missing-columns-near"
    } else {
        "intake-missing-columns"
    };
    let mut finding = Finding::new(code, Severity::Refuse)
        .with("columns", Arg::Text(lacking.join(", ")))
        .with("found", Arg::Text(shorten(&names.join(", "))));
    if let Some(near) = near {
        finding = finding.with("near", Arg::Text(shorten(near)));
    }
    let mut refusal = Refusal::file(line, finding);
    refusal.column = (*first).to_owned();
    Err(refusal)
}

/// An unknown header that looks like a slip of the wanted one.
fn nearest_header<'a>(names: &'a [String], wanted: &str, layout: &Layout) -> Option<&'a str> {
    let known = |n: &str| layout.required.contains(&n) || layout.optional.contains(&n);
    names
        .iter()
        .filter(|n| !known(n) && n.len() < 60)
        .map(|n| (strsim::damerau_levenshtein(n, wanted), n.as_str()))
        .filter(|(d, _)| *d <= 2)
        .min()
        .map(|(_, n)| n)
}
