//! Season plan, day rounds, the order within a site, and what a visit takes.
//!
//! Pure: told places, people, hours and needs, answers with plans. Searches are deterministic for a seed and a number of
//! iterations; the caller may look at progress and stop a search between iterations. `docs/rounds.md` has the exact meaning.

pub mod estimate;
pub mod route;
pub mod season;
pub mod travel;
pub mod walk;
