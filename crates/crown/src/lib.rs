//! The living crown: from dated counts to what is going on and what will come.
//!
//! A crown is a queue. Fronds are born at the top, one per unit of the *leaf clock*, age, turn yellow, die, and
//! fall or hang. Pure: told everything, asks nothing. `docs/crown.md` has the model with its sources.

pub mod answer;
pub mod case;
pub mod prior;
pub mod reading;

pub use answer::{
    Cut, DueWindow, Explanation, Forecast, LossReading, Picture, PictureFrond, Quantiles, Recovery, Tint, Tripwire,
};
pub use case::StemCase;
pub use prior::{Hang, LogSpread, Prior};
pub use reading::{PalmReading, Reading, Sampler, read, read_palm};
