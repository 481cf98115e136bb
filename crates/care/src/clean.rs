//! Cleaning that counts: whether a cleaning was enough, and whether a blade is clean for the next palm.
//!
//! `docs/blades.md` has the rules with their sources.

mod adequacy;
mod cautions;
mod ready;
#[cfg(test)]
mod tests;

pub use adequacy::{adequacy, adequacy_on, needed_min};
pub use cautions::cautions;
pub use ready::{Danger, Did, DidWhat, ready};

use model::knowledge::CleanerRow;
use model::{Day, Finding, Moment, PalmId};

/// What is known of one cleaning.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Cleaned<'a> {
    /// The agent as written; empty: not noted.
    pub agent: &'a str,
    /// Percent by volume of product in the bath.
    pub strength_pct: Option<f64>,
    /// Minutes of contact.
    pub contact_min: Option<f64>,
    /// Whether the blade was brushed first.
    pub brushed: Option<bool>,
    /// Minutes since the bath was mixed, at the end of the cleaning.
    pub bath_age_min: Option<f64>,
    /// Blades or palms the bath had served before.
    pub bath_uses: Option<u32>,
}

/// Whether a cleaning was enough. Ordered: the worst is the greatest.
#[derive(Clone, Copy, PartialEq, PartialOrd, Debug)]
pub enum Adequacy {
    /// Enough by the strictest source that fits.
    Adequate,
    /// Not enough: this many minutes of contact are missing (`None`: no time would do, e.g. too weak, bath spent).
    Short {
        /// Minutes missing.
        missing_min: Option<f64>,
    },
    /// Nobody can say: agent, strength or time not known, or no source speaks of it.
    Unknown,
}

/// The answer for one cleaning.
#[derive(Clone, PartialEq, Debug)]
pub struct CleaningVerdict<'k> {
    /// Was it enough.
    pub adequacy: Adequacy,
    /// The rows it was measured by, the deciding one first.
    pub rows: Vec<&'k CleanerRow>,
    /// Rows that say otherwise.
    pub otherwise: Vec<&'k CleanerRow>,
    /// Why, as findings with sources.
    pub findings: Vec<Finding>,
    /// [`Adequacy::Short`], and no source at hand would call it enough. A trace may take contact as passed on for
    /// certain only then; a cleaning that some source holds to be enough passes it on perhaps.
    pub agreed: bool,
}

/// Whether a blade may go to a palm now.
#[derive(Clone, PartialEq, Debug)]
pub enum Ready {
    /// Clean for any palm.
    Clean {
        /// The cleaning it rests on ended then.
        since: Moment,
    },
    /// Has cut nothing but this palm since it was clean.
    SamePalm,
    /// Cleaned, but this many minutes of contact are missing.
    Short {
        /// Minutes missing; `None`: time alone would not do.
        missing_min: Option<f64>,
    },
    /// Cleaned with something nobody can judge.
    UnknownCleaning,
    /// Has cut another palm since it was last clean, or was lent.
    NotCleaned {
        /// The palm it cut last, if it was a cut.
        last: Option<PalmId>,
    },
    /// Has cut an infected or held palm and was not adequately cleaned since: blocked unless a person gives a reason.
    Blocked {
        /// That palm.
        palm: PalmId,
        /// When.
        at: Moment,
        /// Reason code of the hold or key of the disorder.
        reason: String,
    },
    /// Nothing is known of the blade before now: treated as not cleaned.
    NothingKnown,
    /// A bath that must be changed first.
    BathSpent {
        /// Mixed then.
        mixed: Moment,
        /// Day, for the record.
        day: Day,
    },
}
