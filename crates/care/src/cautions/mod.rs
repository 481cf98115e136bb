//! Cautions, one a file: what to mind before and during the work.
//!
//! Each ends in the same way: local code, the utility, the machine's manual and licensed or certified people come
//! first. The words of every caution carry that sentence; [`LAST`] is the row behind it.

pub mod drop_zone;
pub mod eyes;
pub mod fruit;
pub mod ladder;
pub mod lift;
pub mod skirt;
pub mod spines;
pub mod wires;

/// Row of the sentence that ends every caution.
pub const LAST: &str = "defer_all";
