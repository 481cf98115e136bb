//! Tests that need the inside of the crate.

mod calibration;
mod individuals;
