//! A trace as its page shows it.

pub mod lanes;
pub mod plot;
