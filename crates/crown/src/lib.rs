//! The living crown: from dated counts to what is going on and what will come.
//!
//! A crown is a queue. Fronds are born at the top, one per unit of the *leaf clock*, age, turn yellow, die, and
//! fall or hang. Pure: told everything, asks nothing. `docs/crown.md` has the model with its sources.
//!
//! Reading order: `season` and `life` (the two clocks), `lanes` and `draws` (how many crowns are computed at
//! once), `explain/` (one file an explanation), `track` (a crown through time), `weigh` (counts against crowns),
//! `reading` (the door), then what follows from it: `forecast`, `loss`, `recovery`, `due`, `rhythm`, `picture`.

// rows of numbers that belong together are walked by one index
#![allow(clippy::needless_range_loop)]
// tests may use what the model may not: the reference's own functions
#![cfg_attr(test, allow(clippy::disallowed_methods, clippy::disallowed_macros))]

pub mod answer;
pub mod case;
mod draws;
mod due;
pub mod explain;
mod forecast;
mod lanes;
pub mod life;
mod loss;
mod palm;
mod picture;
pub mod prior;
mod quantile;
pub mod reading;
mod recovery;
mod refine;
mod rhythm;
pub mod season;
pub mod spiral;
mod track;
mod weigh;

pub use answer::{
    Cut, DueWindow, ExpectedLoss, Explanation, Forecast, LossReading, Picture, PictureFrond,
    Quantiles, Recovery, Tint, Tripwire,
};
pub use case::StemCase;
pub use draws::Sampler;
pub use palm::{PalmReading, read_palm};
pub use prior::{Hang, LogSpread, Prior};
pub use reading::{Reading, read};
pub use rhythm::Rhythm;

#[cfg(test)]
mod tests;
