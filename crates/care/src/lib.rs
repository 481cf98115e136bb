//! From the state of a palm to findings and plans: cut plan, asked-for cut, holds.
//!
//! Pure: told everything, asks nothing. One rule per file under `rules/`, one caution per file under `cautions/`;
//! each file opens with its manual. `docs/cut-plan.md` says how they come together.

pub mod case;
pub mod cautions;
pub mod clean;
pub mod decide;
pub mod facts;
pub mod feeding;
pub mod judge;
pub mod method;
pub mod moving;
pub mod plan;
pub mod reach;
pub mod rotation;
pub mod rule;
pub mod rules;
pub mod sight;
pub mod signs;
pub mod water;
pub mod watering;

pub use case::{CrownFacts, CutCase, Grounds, Settled};
pub use decide::{Decision, decide};
pub use facts::{Progress, progress};
pub use plan::{
    AskedAnswer, CutPlan, Method, MustStay, Stand, StubLength, Tool, Verdict, asked, cut_plan,
    oldest_first, plan_from,
};
pub use sight::Sight;
pub use signs::SIGNS;

// the test scenes are shared with the tests beside `src/`, which know this crate by its name
#[cfg(test)]
extern crate self as care;
#[cfg(test)]
#[path = "../tests/scene/mod.rs"]
mod scene;
