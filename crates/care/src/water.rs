//! Water: what the air takes, what the soil around the roots holds.
//!
//! The method is that of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes, Smith 1998), source key `fao56`;
//! equation numbers in the comments are its own. `crates/care/tests/fao56.rs` holds every worked figure of the paper
//! that is in `cases/water/fao56.csv`.

pub mod air;
pub mod evaporation;
pub mod soil;
pub mod sun;

pub use evaporation::{Hour, Weather, hargreaves, reference_day, reference_hour};
pub use soil::{Store, adjusted_fraction};
