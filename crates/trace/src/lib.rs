//! Which blade touched what, forwards and backwards in time.
//!
//! Pure: told a log of touches in compact columns, answers with the palms that blades reach from a case, and with the
//! chains that lead there. `docs/trace.md` has the exact meaning.

mod blade;
mod log;
mod reach;
mod sweep;

pub use log::{Cleaning, Log, Refused, Seconds, Touch, What};
pub use reach::{Between, Case, Contact, Reach, Rules, Set, between};
pub use sweep::{backward, forward};
