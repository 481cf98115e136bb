//! Traces: which palms a blade may have carried a disorder to, and from which it may have come.
//!
//! `docs/trace.md` has the meaning. A [`Book`] is a log of touches with names, from a file or from the register; an
//! [`Ask`] names the case palms and what is known of the disorder; a [`TraceAnswer`] holds all that the page, the report
//! and the files show. Times are UTC; days are UTC days.

mod answer;
mod ask;

pub use answer::{
    Between, CaseTold, Exposure, HostWord, LatencyTold, LogSpan, Nearby, Passed, Stand, Step,
    TraceAnswer, Travel, Way,
};
pub use ask::{Ask, CaseAsk, Direction};
