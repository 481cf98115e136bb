//! Bytes to records in bounded memory: one buffer of fixed size, whatever is fed in.

use super::refusal::Refusal;
use model::{Arg, Finding, Severity};
use std::io::{BufRead, BufReader, Cursor, Read};

/// Longest row, in bytes of its cells. A row of a register is a few hundred bytes; a longer one is junk or a quotation
/// mark that was never closed.
pub const MAX_RECORD: usize = 64 * 1024;

/// Most columns a file may have.
pub const MAX_COLUMNS: usize = 256;

/// One row's cells, reused from row to row.
#[derive(Debug, Default)]
pub struct Record {
    text: String,
    ends: Vec<usize>,
    /// Line on which the row begins.
    pub line: u64,
}

impl Record {
    /// Number of cells.
    pub fn len(&self) -> usize {
        self.ends.len()
    }

    /// Cell by index, blanks around it taken off; empty beyond the end.
    pub fn cell(&self, index: usize) -> &str {
        self.raw(index).trim()
    }

    fn raw(&self, index: usize) -> &str {
        let Some(&end) = self.ends.get(index) else {
            return "";
        };
        let start = if index == 0 { 0 } else { self.ends[index - 1] };
        &self.text[start..end]
    }

    /// All cells as they came.
    pub fn to_vec(&self) -> Vec<String> {
        (0..self.len()).map(|i| self.raw(i).to_owned()).collect()
    }

    /// Whether no cell holds anything.
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }
}

/// The records of a CSV file (RFC 4180; any line ends; comma, semicolon or tab, whichever the header uses).
pub struct Records<R> {
    input: BufReader<std::io::Chain<Cursor<Vec<u8>>, R>>,
    parser: csv_core::Reader,
    delimiter: u8,
    line: u64,
    out: Vec<u8>,
    ends: Vec<usize>,
}

impl<R: Read> Records<R> {
    /// Looks at the first line for the separator and for signs that this is no text at all.
    pub fn open(mut read: R) -> Result<Records<R>, Refusal> {
        let mut head = head(&mut read)?;
        if head.starts_with(&[0xFF, 0xFE]) || head.starts_with(&[0xFE, 0xFF]) {
            return Err(Refusal::file(
                1,
                Finding::new("intake-utf16", Severity::Refuse),
            ));
        }
        if head.starts_with(&[0xEF, 0xBB, 0xBF]) {
            head.drain(..3);
        }
        if head.iter().all(u8::is_ascii_whitespace) {
            return Err(Refusal::file(
                0,
                Finding::new("intake-empty-file", Severity::Refuse),
            ));
        }
        let delimiter = delimiter(&head);
        Ok(Records {
            input: BufReader::with_capacity(MAX_RECORD, Cursor::new(head).chain(read)),
            parser: csv_core::ReaderBuilder::new().delimiter(delimiter).build(),
            delimiter,
            line: 1,
            out: vec![0; MAX_RECORD],
            ends: vec![0; MAX_COLUMNS],
        })
    }

    /// The character between cells.
    pub fn delimiter(&self) -> u8 {
        self.delimiter
    }

    /// Reads the next record into `record`; `false` at the end of the file.
    pub fn read(&mut self, record: &mut Record) -> Result<bool, Refusal> {
        use csv_core::ReadRecordResult as Step;
        self.skip_line_ends()?;
        record.line = self.line;
        let (mut filled, mut ended) = (0, 0);
        loop {
            let input = self
                .input
                .fill_buf()
                .map_err(|e| unreadable(self.line, &e))?;
            let (step, taken, wrote, closed) =
                self.parser
                    .read_record(input, &mut self.out[filled..], &mut self.ends[ended..]);
            self.line += input[..taken].iter().filter(|b| **b == b'\n').count() as u64;
            self.input.consume(taken);
            filled += wrote;
            ended += closed;
            match step {
                Step::InputEmpty => {}
                Step::Record => break,
                Step::End => return Ok(false),
                Step::OutputFull => {
                    return Err(too_long(record.line, "intake-row-too-long", MAX_RECORD));
                }
                Step::OutputEndsFull => {
                    return Err(too_long(
                        record.line,
                        "intake-too-many-columns",
                        MAX_COLUMNS,
                    ));
                }
            }
        }
        self.take_text(record, filled, ended)?;
        Ok(true)
    }

    fn take_text(&self, record: &mut Record, filled: usize, ended: usize) -> Result<(), Refusal> {
        let bytes = &self.out[..filled];
        if bytes.iter().any(|b| *b < 0x20 && !b"\t\r\n".contains(b)) {
            return Err(Refusal::file(
                record.line,
                Finding::new("intake-not-text", Severity::Refuse),
            ));
        }
        let text = core::str::from_utf8(bytes)
            .map_err(|e| not_utf8(record.line, bytes, &self.ends[..ended], e.valid_up_to()))?;
        record.text.clear();
        record.text.push_str(text);
        record.ends.clear();
        record.ends.extend_from_slice(&self.ends[..ended]);
        // a cell cannot end inside a character: the separator and the quotation mark are ASCII
        debug_assert!(record.ends.iter().all(|e| record.text.is_char_boundary(*e)));
        Ok(())
    }

    /// Line ends before a record belong to no record; taking them here keeps the line numbers right.
    fn skip_line_ends(&mut self) -> Result<(), Refusal> {
        loop {
            let input = self
                .input
                .fill_buf()
                .map_err(|e| unreadable(self.line, &e))?;
            let skipped = input
                .iter()
                .take_while(|b| matches!(b, b'\r' | b'\n'))
                .count();
            self.line += input[..skipped].iter().filter(|b| **b == b'\n').count() as u64;
            let more = skipped > 0 && skipped == input.len();
            self.input.consume(skipped);
            if !more {
                return Ok(());
            }
        }
    }
}

/// The first line, or the first [`MAX_RECORD`] bytes of a file without line ends.
fn head(read: &mut impl Read) -> Result<Vec<u8>, Refusal> {
    let mut head = Vec::new();
    let mut chunk = [0u8; 4096];
    while head.len() < MAX_RECORD && !head.contains(&b'\n') {
        match read.read(&mut chunk) {
            Ok(0) => break,
            Ok(n) => head.extend_from_slice(&chunk[..n]),
            Err(e) if e.kind() == std::io::ErrorKind::Interrupted => {}
            Err(e) => return Err(unreadable(1, &e)),
        }
    }
    Ok(head)
}

fn delimiter(head: &[u8]) -> u8 {
    let first = head
        .split(|b| *b == b'\n')
        .find(|l| !l.trim_ascii().is_empty())
        .unwrap_or(head);
    [b',', b';', b'\t']
        .into_iter()
        .find(|d| first.contains(d))
        .unwrap_or(b',')
}

fn too_long(line: u64, code: &'static str, limit: usize) -> Refusal {
    Refusal::file(
        line,
        Finding::new(code, Severity::Refuse).with("limit", Arg::Count(limit as i64)),
    )
}

fn not_utf8(line: u64, bytes: &[u8], ends: &[usize], at: usize) -> Refusal {
    let cell = ends
        .iter()
        .copied()
        .filter(|end| *end <= at)
        .max()
        .unwrap_or(0);
    let finding = Finding::new("intake-not-utf8", Severity::Refuse)
        .with("line", Arg::Count(line as i64))
        .with(
            "byte",
            Arg::Text(format!("{:02X}", bytes.get(at).copied().unwrap_or(0))),
        )
        .with(
            "before",
            Arg::Text(super::refusal::shorten(&tail(&bytes[cell..at]))),
        );
    Refusal::file(line, finding)
}

/// The last characters before a bad byte, to find the place in an editor.
fn tail(bytes: &[u8]) -> String {
    let text = String::from_utf8_lossy(bytes);
    let skip = text.chars().count().saturating_sub(20);
    text.chars().skip(skip).collect()
}

fn unreadable(line: u64, error: &std::io::Error) -> Refusal {
    let finding = Finding::new("intake-unreadable", Severity::Refuse)
        .with("why", Arg::Text(error.to_string()));
    Refusal::file(line, finding)
}
