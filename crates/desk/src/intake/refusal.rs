//! What is said of a row or a file that cannot be taken.

use crate::measure::Measure;
use model::{Arg, Finding, Severity};

/// A row that was taken.
#[derive(Clone, PartialEq, Debug)]
pub struct Row<T> {
    /// Line of the file on which it begins, the header being line 1.
    pub line: u64,
    /// What it says.
    pub value: T,
    /// Remarks that do not keep it out.
    pub remarks: Vec<Finding>,
}

/// How much is refused.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Scope {
    /// This row; the next may be good.
    Row,
    /// The rest of the file: no row follows.
    File,
}

/// A row or a file that was not taken: where, what was found, what was expected.
#[derive(Clone, PartialEq, Debug)]
pub struct Refusal {
    /// Row or file.
    pub scope: Scope,
    /// Line of the file, the header being line 1; 0 where no line is to blame.
    pub line: u64,
    /// Column name; empty where the whole row is to blame.
    pub column: String,
    /// The cell as it came, at most [`FOUND_SHOWN`] characters of it; empty where no cell is to blame.
    pub found: String,
    /// Code and arguments of what was expected; `found` and `column` are among the arguments.
    pub finding: Box<Finding>,
    /// The whole row as it came, so that it can be written out and mended; empty for files.
    pub record: Vec<String>,
}

/// Characters of a refused cell that are repeated in a message.
pub const FOUND_SHOWN: usize = 60;

impl Refusal {
    /// Refuses the rest of a file.
    pub fn file(line: u64, finding: Finding) -> Refusal {
        Refusal {
            scope: Scope::File,
            line,
            column: String::new(),
            found: String::new(),
            finding: Box::new(finding),
            record: Vec::new(),
        }
    }

    /// The refusal in words: file, line, column, what was found, what was expected.
    pub fn say(&self, file: &str, measure: &Measure) -> String {
        let words = measure.words;
        let key = match (self.line, self.column.as_str()) {
            (0, _) => "intake-where-file",
            (_, "") => "intake-where-line",
            _ => "intake-where-cell",
        };
        let at = [
            ("file", file.to_owned().into()),
            ("line", self.line.to_string().into()),
            ("column", self.column.clone().into()),
        ];
        let (place, what) = (words.text(key, &at), measure.finding(&self.finding));
        words.text(
            "intake-refused",
            &[("where", place.into()), ("what", what.into())],
        )
    }

    /// Refuses one row.
    pub fn row(line: u64, fault: Fault, record: Vec<String>) -> Refusal {
        let Fault {
            column,
            found,
            finding,
        } = fault;
        Refusal {
            scope: Scope::Row,
            line,
            column: column.to_owned(),
            found,
            finding,
            record,
        }
    }
}

/// What is wrong with a cell, before it is known which line it stands on.
#[derive(Clone, PartialEq, Debug)]
pub struct Fault {
    /// Column name; empty for the whole row.
    pub column: &'static str,
    /// The cell, shortened.
    pub found: String,
    /// Code and arguments.
    pub finding: Box<Finding>,
}

impl Fault {
    /// A fault of a cell.
    pub fn cell(code: &'static str, column: &'static str, found: &str) -> Fault {
        let found = shorten(found);
        let finding = Finding::new(code, Severity::Refuse)
            .with("column", Arg::Text(column.to_owned()))
            .with("found", Arg::Text(found.clone()));
        Fault {
            column,
            found,
            finding: Box::new(finding),
        }
    }

    /// The same with one more argument of its words.
    pub fn with(mut self, name: &'static str, arg: Arg) -> Fault {
        self.finding.args.push((name, arg));
        self
    }
}

/// The first characters of a text, control characters made visible.
pub fn shorten(text: &str) -> String {
    let mut out: String = text
        .chars()
        .take(FOUND_SHOWN)
        .map(|c| if c.is_control() { '\u{fffd}' } else { c })
        .collect();
    if text.chars().nth(FOUND_SHOWN).is_some() {
        out.push('…');
    }
    out
}
