//! Judgements: what ails a palm, from what was seen on it.
//!
//! `care::judge` weighs; here is what it is told. [`Told`] is its evidence with everything owned, made from a registered
//! palm ([`Told::of_record`]) or from a row of a file.

mod cases;
mod judged;
mod names;
mod table;
mod told;

pub use cases::Cases;
pub use judged::{Judged, in_brief, of_record};
pub use names::{minutes_of, name_of};
pub use table::{JUDGEMENT_COLUMNS, judgement_rows, weight_key};
pub use told::{LOOKS_WITHIN_DAYS, Told};

#[cfg(test)]
mod tests;
