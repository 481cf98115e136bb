//! What is believed of a palm before its counts are seen.

use model::{Basis, Palm, SourceKey, Species};

/// A log-normal belief about a positive quantity.
#[derive(Clone, PartialEq, Debug)]
pub struct LogSpread {
    /// Median.
    pub median: f64,
    /// Standard deviation of the logarithm.
    pub sd_ln: f64,
    /// How the median is known.
    pub basis: Basis,
    /// Sources of the median.
    pub sources: Vec<SourceKey>,
    /// Set where a description's maximum, a genus or the whole family stands in for the species' own figure:
    /// a stable code such as `n-from-maximum`, `n-from-genus`, `n-from-family`, `r-about-one-a-month`.
    pub note: Option<&'static str>,
}

/// How long dead fronds stay on.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Hang {
    /// Until somebody cuts them.
    UntilCut,
    /// They fall by themselves after about this many days.
    Falls {
        /// Mean days on the palm.
        days: f64,
    },
    /// Some fall, some hang, or nobody knows: mean days on the palm between these (log-uniform).
    Between {
        /// Shortest mean stay, days.
        low: f64,
        /// Longest mean stay, days.
        high: f64,
    },
}

/// The prior of one palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Prior {
    /// Live fronds of a full, fed crown.
    pub full_crown: LogSpread,
    /// Fronds made a year at the reference place, vigour included in the spread.
    pub fronds_per_year: LogSpread,
    /// How long dead fronds stay on.
    pub hang: Hang,
    /// Weights of the explanations for a settled palm: ageing, move, hunger, decline.
    pub settled: [f64; 4],
    /// The same for a palm moved within the last 540 days.
    pub moved: [f64; 4],
}

impl Prior {
    /// The prior of a palm: keeper's own figures first, then the species row, then its genus, then all palms.
    ///
    /// `relatives` are the other species of the genus (used only where the species' own row is silent).
    pub fn of(palm: &Palm, species: Option<&Species>, relatives: &[&Species]) -> Prior {
        let _ = (palm, species, relatives);
        todo!("crown is being written")
    }
}
