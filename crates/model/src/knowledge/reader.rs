//! Reading a table: line by line, what is wrong noted, nothing guessed.

use super::rows::number;

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

    /// What a word of the file stands for.
    pub fn word<T: Copy>(&mut self, all: &[(T, &str)], cell: &str) -> Option<T> {
        let known = all.iter().find(|(_, word)| *word == cell);
        self.or_flaw(known.map(|(value, _)| *value), "not-a-word", cell)
    }

    /// A number; empty and `unknown` are nothing.
    pub fn number(&mut self, cell: &str) -> Option<f64> {
        if cell.is_empty() || cell == "unknown" {
            return None;
        }
        self.or_flaw(number(cell), "not-a-number", cell)
    }
}

/// The first line of every table.
pub(super) mod headers {
    pub const PALMTRAITS: [&str; 13] = crate::knowledge::traits::HEADER;
    pub const SPECIES: [&str; 5] = crate::knowledge::facts::HEADER;
    pub const SYNONYMS: [&str; 3] = ["name", "accepted", "sources"];
    pub const GENERA: [&str; 5] = ["genus", "leaf_form", "crownshaft", "sources", "note"];
    pub const RULES: [&str; 7] = [
        "key",
        "text",
        "text_es",
        "value",
        "unit",
        "applies_to",
        "sources",
    ];
    pub const SAFETY: [&str; 8] = [
        "key",
        "text",
        "text_es",
        "value",
        "unit",
        "condition",
        "condition_es",
        "sources",
    ];
    pub const SOURCES: [&str; 8] = [
        "key",
        "also",
        "title",
        "author",
        "publisher",
        "year",
        "identifier",
        "how_seen",
    ];
    #[rustfmt::skip]
    pub const CLIMATE: [&str; 19] = [
        "place", "lat", "lon", "elevation_m", "quantity",
        "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec",
        "sources", "note",
    ];
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

/// The parts of a cell between semicolons, trimmed.
pub(super) fn list(cell: &str) -> Vec<String> {
    cell.split(';')
        .map(str::trim)
        .filter(|part| !part.is_empty())
        .map(str::to_owned)
        .collect()
}
