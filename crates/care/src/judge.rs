//! What could it be: disorders weighed against signs seen, signs looked for and not there, and the counts.
//!
//! `docs/signs.md` has the model. In short: sets of at most two disorders, each sign a noisy-or of the disorders in the
//! set and a small chance of its own; the counts weigh in through the likelihoods of the crown's explanations.

mod answer;

pub use answer::{Evidence, HoldAdvice, Judgement, NextLook, Ranked, Speaks, TellApart, WeightOf};
