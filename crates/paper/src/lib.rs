//! Sheets of paper: what pages show, as PDF.
//!
//! A sheet is a template under `sheets/` and plain data with all words already chosen. The compiler of the templates is
//! a library; it sees the template, the data and our fonts, and nothing else: no file, no network, no clock. The same
//! data give the same bytes.

mod clauses;
mod error;
mod fonts;
mod labels;
mod leaf;
mod press;
mod qr;
mod refs;

pub use clauses::clauses;
pub use error::Error;
pub use labels::{Label, labels};
pub use leaf::{Leaf, Size};

/// A finished sheet.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Pdf {
    /// The file.
    pub bytes: Vec<u8>,
    /// How many pages it has.
    pub pages: usize,
}

#[cfg(test)]
mod testing;
