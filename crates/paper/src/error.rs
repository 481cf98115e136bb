//! What can stand in the way of a sheet.

use model::{Arg, Finding, Severity};

/// Why there is no sheet.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub enum Error {
    /// Nothing that could stand on it.
    #[error("nothing to print")]
    Empty,
    /// Nothing in the register carries this tag.
    #[error("no such tag: {0}")]
    NoSuch(String),
    /// More than one file should have.
    #[error("{found}, at most {limit}")]
    TooMany {
        /// How many there are.
        found: usize,
        /// How many there may be.
        limit: usize,
    },
    /// The address is not one a phone could open.
    #[error("not an address: {0}")]
    Base(String),
    /// The address of one label is too long for a code that a phone can read.
    #[error("address too long for a label: {0}")]
    TooLong(String),
    /// The template did not take its data: a defect of ours.
    #[error("template: {0}")]
    Template(String),
}

impl Error {
    /// The same for people, in their language.
    pub fn finding(&self) -> Finding {
        let refuse = |code| Finding::new(code, Severity::Refuse);
        match self {
            Error::Empty => refuse("sheet-empty"),
            Error::NoSuch(tag) => refuse("sheet-no-such").with("tag", Arg::Text(tag.clone())),
            Error::TooMany { found, limit } => refuse("sheet-too-many")
                .with("found", Arg::Count(*found as i64))
                .with("limit", Arg::Count(*limit as i64)),
            Error::Base(base) => refuse("sheet-base-bad").with("base", Arg::Text(base.clone())),
            Error::TooLong(tag) => refuse("sheet-too-long").with("tag", Arg::Text(tag.clone())),
            Error::Template(why) => refuse("sheet-broken").with("why", Arg::Text(why.clone())),
        }
    }
}
