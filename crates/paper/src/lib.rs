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
mod order;
mod owner;
mod press;
mod qr;
mod quote;
mod refs;
mod round;
mod rows;
mod summary;
mod tracing;

pub use clauses::clauses;
pub use error::Error;
pub use labels::{Choice, Groups, Label, blade_labels, groups, labels, palm_labels};
pub use leaf::{Leaf, Size};
pub use owner::owner_sheet;
pub use quote::quote;
pub use round::crew_sheet;
pub use summary::owner_summary;
pub use tracing::trace_report;

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
