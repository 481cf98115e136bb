//! Which blade touched what, forwards and backwards in time.
//!
//! Pure: told a log of touches in compact columns, answers with exposures. `docs/trace.md` has the exact meaning.

mod log;

pub use log::{Cleaning, Log, Seconds, Touch, What};
