//! Refused rows, written out so that they can be mended and read again.

use super::refusal::Refusal;
use super::table::REFUSED_COLUMNS;
use std::io::Write;

/// A CSV file of refused rows: the columns as they came, then line, column and why.
pub struct RefusedFile<W: Write> {
    out: csv::Writer<W>,
    kept: Vec<usize>,
    width: usize,
    /// Rows written.
    pub rows: u64,
}

impl<W: Write> RefusedFile<W> {
    /// Writes the header. The three columns an earlier run added are replaced, not doubled.
    pub fn new(write: W, headers: &[String]) -> csv::Result<RefusedFile<W>> {
        let mut out = csv::WriterBuilder::new().flexible(true).from_writer(write);
        let ours = |h: &str| REFUSED_COLUMNS.contains(&h.trim().to_lowercase().as_str());
        let kept: Vec<usize> = (0..headers.len()).filter(|i| !ours(&headers[*i])).collect();
        out.write_record(
            kept.iter()
                .map(|i| headers[*i].as_str())
                .chain(REFUSED_COLUMNS),
        )?;
        Ok(RefusedFile {
            out,
            kept,
            width: headers.len(),
            rows: 0,
        })
    }

    /// Writes one refused row with its reason in words. Refusals of whole files have no row and are passed over.
    /// Cells beyond the header's width are kept, after the reason.
    pub fn write(&mut self, refusal: &Refusal, because: &str) -> csv::Result<()> {
        if refusal.record.is_empty() {
            return Ok(());
        }
        let cell = |i: &usize| refusal.record.get(*i).map_or("", String::as_str);
        let mut cells: Vec<&str> = self.kept.iter().map(cell).collect();
        let line = refusal.line.to_string();
        cells.extend([line.as_str(), refusal.column.as_str(), because]);
        cells.extend(refusal.record.iter().skip(self.width).map(String::as_str));
        self.rows += 1;
        self.out.write_record(&cells)
    }

    /// Writes what is still in the buffer.
    pub fn finish(mut self) -> std::io::Result<()> {
        self.out.flush()
    }
}
