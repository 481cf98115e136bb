//! The reading: explanations weighed against counts, and everything that follows from the weighted draws.

use crate::answer::{Cut, DueWindow, Explanation, Forecast, LossReading, Picture, Quantiles, Recovery, Tripwire};
use crate::case::StemCase;
use model::Day;

/// Low-discrepancy points, tables and scratch space; make one per thread and reuse it. Holds no palm's data.
pub struct Sampler {
    draws: usize,
}

impl Sampler {
    /// A sampler with this many draws per explanation (1,024 is the default used everywhere).
    pub fn new(draws: usize) -> Sampler {
        Sampler { draws }
    }
}

/// The reading of one stem.
pub struct Reading {
    /// The day it speaks for.
    pub as_of: Day,
    /// Probability of each explanation, ordered as [`Explanation::ALL`]; 0 where it does not apply.
    pub probabilities: [f64; 4],
    /// Effective number of draws behind it.
    pub effective_draws: f64,
    /// Vigour: this palm's frond making as a multiple of the prior median.
    pub vigour: Quantiles,
    /// Shortfall K: the share of a frond's life that hunger takes (0 under the other explanations).
    pub shortfall: Quantiles,
    /// Live fronds of this palm's full, fed crown.
    pub full_crown: Quantiles,
    /// The last inspection, if there is any.
    pub last_inspection: Option<Day>,
}

/// Reads one stem. Same input, same answer, bit for bit. Inspections after `as_of` are not looked at.
pub fn read(case: &StemCase, as_of: Day, sampler: &mut Sampler) -> Reading {
    let _ = (case, as_of, sampler.draws);
    todo!("crown is being written")
}

impl Reading {
    /// The explanation with the greatest probability.
    pub fn most_probable(&self) -> Explanation {
        todo!("crown is being written")
    }

    /// The loss between the last two looks; `None` with fewer than two looks and no known cleaning.
    pub fn loss(&self) -> Option<LossReading> {
        todo!("crown is being written")
    }

    /// The smallest count of further losses from the last inspection to `by` that should make somebody call.
    pub fn tripwire(&self, by: Day) -> Tripwire {
        let _ = by;
        todo!("crown is being written")
    }

    /// What would be counted on `day` (not before `as_of`) if `cut` is taken off on `as_of`.
    pub fn forecast(&self, cut: Cut, day: Day) -> Forecast {
        let _ = (cut, day);
        todo!("crown is being written")
    }

    /// How long the crown needs after `cut` on `as_of`.
    pub fn recovery(&self, cut: Cut) -> Recovery {
        let _ = cut;
        todo!("crown is being written")
    }

    /// When a visit is worth it: at least `tidy` dead fronds hang, not yet more than `limit`.
    pub fn due(&self, tidy: u32, limit: u32) -> DueWindow {
        let _ = (tidy, limit);
        todo!("crown is being written")
    }

    /// Median fronds made between `as_of` and `day`: what will have grown back by then.
    pub fn regrowth(&self, day: Day) -> Quantiles {
        let _ = day;
        todo!("crown is being written")
    }

    /// Median number of live fronds hanging below the level line (clock 9 and 3) on `as_of`.
    pub fn below_level(&self) -> f64 {
        todo!("crown is being written")
    }

    /// The median crown of `day` to draw, after `cut` on `as_of`. On `as_of` itself cut fronds are drawn and marked.
    pub fn picture(&self, cut: Cut, day: Day) -> Picture {
        let _ = (cut, day);
        todo!("crown is being written")
    }
}

/// The reading of a whole palm: one per stem and the palm's own.
pub struct PalmReading {
    /// Stem numbers with their readings.
    pub stems: Vec<(u16, Reading)>,
    /// Probability that each explanation holds for the palm: stems share roots, so a stem's evidence counts for all.
    pub probabilities: [f64; 4],
}

/// Reads a palm from the cases of its stems.
pub fn read_palm(stems: &[(u16, StemCase)], as_of: Day, sampler: &mut Sampler) -> PalmReading {
    let _ = (stems, as_of, sampler);
    todo!("crown is being written")
}
