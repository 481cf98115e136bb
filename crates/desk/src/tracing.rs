//! Traces: which palms a blade may have carried a disorder to, and from which it may have come.
//!
//! `docs/trace.md` has the meaning. A [`Book`] is a log of touches with names, from a file or from the register; an
//! [`Ask`] names the case palms and what is known of the disorder; a [`TraceAnswer`] holds all that the page, the report
//! and the files show. Times are UTC; days are UTC days.

mod answer;
mod ask;
mod book;
mod lanes;
mod nearby;
mod reckon;
mod register;
mod run;
mod table;
mod verdict;
mod ways;

pub use answer::{
    Between, CaseTold, Exposure, HostWord, LatencyTold, LogSpan, Nearby, Passed, Stand, Step,
    TraceAnswer, Travel, Way,
};
pub use ask::{Ask, CaseAsk, Direction, disorder};
pub use book::{BladeName, Book, BookMaker, Cleaned, Mark};
pub use nearby::distance;
pub use register::book_of;
pub use run::{Judge, answer};
pub use table::{EXPOSURE_COLUMNS, exposure_rows, passed};
pub use verdict::Verdict;

use model::{Finding, Knowledge, State};

/// A trace of what the register knows, by the rules and tables of this program.
pub fn of_state(state: &State, ask: &Ask) -> Result<TraceAnswer, Finding> {
    of_book(&book_of(state), ask)
}

/// A trace of a log, by the rules and tables of this program.
pub fn of_book(book: &Book, ask: &Ask) -> Result<TraceAnswer, Finding> {
    let known = Knowledge::embedded();
    let disorder = ask.disorder.map(|row| row.key.as_str());
    answer(
        book,
        ask,
        &|cleaned| Verdict::of(cleaned, disorder, known),
        known,
    )
}

#[cfg(test)]
mod tests;
