//! Readings, forecasts and cut plans over many palms, from files alone: no data folder, bounded memory.
//!
//! A [`Gather`] takes palms, inspections (in any order) and climates as they are read and keeps what readings and plans
//! need: about 400 bytes a palm and 28 bytes an inspection. [`Gather::done`] sorts them into a [`Yard`]. [`each`] then
//! goes through the palms on all cores and hands the results on in the order of the file, so the output is the same
//! whatever the number of cores.

mod answer;
mod look;
mod plans;
mod run;
mod table;
mod yard;

pub use answer::{Ask, NEEDS_A_PERSON, PalmAnswer, StemAnswer, answer};
pub use plans::{Visit, asked_for, plans};
pub use run::{each, in_order};
pub use table::{FORECAST_COLUMNS, READINGS_COLUMNS, forecast_rows, quantities, readings_rows};
pub use yard::{Gather, Kind, Yard, stem_cases};

#[cfg(test)]
mod tests;
