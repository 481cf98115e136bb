//! From the state of a palm to findings and plans: cut plan, asked-for cut, holds.
//!
//! Pure: told everything, asks nothing. One rule per file under `rules/`, one caution per file under `cautions/`;
//! each file opens with its manual. `docs/cut-plan.md` says how they come together.

pub mod case;
pub mod plan;

pub use case::{CrownFacts, CutCase, Grounds, Settled};
pub use plan::{
    AskedAnswer, CutPlan, Method, MustStay, Stand, StubLength, Tool, Verdict, asked, cut_plan,
    oldest_first,
};
