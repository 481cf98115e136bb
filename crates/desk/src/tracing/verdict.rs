//! What a cleaning is worth in a trace.

use super::Passed;
use super::book::Cleaned;
use care::clean::{self, Adequacy};
use model::Knowledge;
use trace::Cleaning;

/// What a cleaning is worth against a disorder.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Verdict {
    /// Whether contact passes it.
    pub worth: Cleaning,
    /// Minutes missing, if it was too short.
    pub missing_min: Option<f64>,
}

impl Verdict {
    /// By the rules of `care` (`docs/blades.md`). Where a source at hand would call a short cleaning enough, it counts as
    /// doubtful: nobody can be certain then that contact passed it.
    pub fn of(cleaned: &Cleaned, disorder: Option<&str>, known: &Knowledge) -> Verdict {
        let told = clean::Cleaned {
            agent: &cleaned.agent,
            strength_pct: cleaned.strength_pct,
            contact_min: cleaned.contact_min,
            brushed: cleaned.brushed,
            bath_age_min: cleaned.bath_age_min,
            bath_uses: cleaned.bath_uses,
        };
        let found = clean::adequacy_on(cleaned.tool, &told, disorder, known);
        let (worth, missing_min) = match found.adequacy {
            Adequacy::Adequate => (Cleaning::Adequate, None),
            Adequacy::Short { missing_min } if found.agreed => (Cleaning::Short, missing_min),
            Adequacy::Short { missing_min } => (Cleaning::Unknown, missing_min),
            Adequacy::Unknown => (Cleaning::Unknown, None),
        };
        Verdict { worth, missing_min }
    }

    /// Why it does not end a chain that passes it.
    pub fn passed(self) -> Passed {
        match self.worth {
            Cleaning::Adequate => Passed::OrderOpen,
            Cleaning::Short => Passed::Short(self.missing_min),
            Cleaning::Unknown => Passed::Unknown(self.missing_min),
        }
    }
}
