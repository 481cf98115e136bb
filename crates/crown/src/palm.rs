//! A whole palm: one crown per stem, one answer for the palm.

use crate::case::StemCase;
use crate::draws::Sampler;
use crate::reading::{Reading, posterior, read};
use model::Day;

/// The reading of a whole palm: one per stem and the palm's own.
pub struct PalmReading {
    /// Stem numbers with their readings.
    pub stems: Vec<(u16, Reading)>,
    /// Probability that each explanation holds for the palm: stems share roots, so a stem's evidence counts for all.
    pub probabilities: [f64; 4],
}

/// Reads a palm from the cases of its stems (at least one).
pub fn read_palm(stems: &[(u16, StemCase)], as_of: Day, sampler: &mut Sampler) -> PalmReading {
    let stems: Vec<(u16, Reading)> = stems
        .iter()
        .map(|(n, case)| (*n, read(case, as_of, sampler)))
        .collect();
    let mut log_evidence = [0.0; 4];
    for (_, reading) in &stems {
        for (sum, log) in log_evidence.iter_mut().zip(reading.log_evidence) {
            *sum += log;
        }
    }
    let prior = stems.first().map_or([0.25; 4], |(_, r)| r.prior_weights);
    PalmReading {
        probabilities: posterior(prior, log_evidence),
        stems,
    }
}
