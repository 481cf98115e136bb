//! How long a set must soak, by the table of cleaners.

use crate::forms::mixes;
use care::clean::{Adequacy, Cleaned, adequacy, needed_min};
use model::{Finding, Knowledge, Severity};

/// The soak that the strictest source which fits asks for.
#[derive(Clone, PartialEq, Debug)]
pub struct Needed {
    /// The agent, by its key.
    pub agent: String,
    /// Percent by volume of the product in the bath; `None` for what has none.
    pub strength_pct: Option<f64>,
    /// Minutes of contact, brushed first and in a fresh bath.
    pub minutes: f64,
    /// Why, with sources.
    pub findings: Vec<Finding>,
}

/// Minutes of soak for an agent as written, against one disorder (its key) or all that its sources name. Without a strength
/// that of the first mix in the table that can be enough. No minutes would do, or nobody can say: the findings that say so.
pub fn needed(
    agent: &str,
    strength_pct: Option<f64>,
    disorder: Option<&str>,
) -> Result<Needed, Vec<Finding>> {
    let known = Knowledge::embedded();
    let key = known.cleaner_named(agent).unwrap_or(agent);
    let of_table = || {
        mixes()
            .into_iter()
            .find(|mix| mix.agent == key && mix.sound)
    };
    let strength_pct = strength_pct.or_else(|| of_table()?.strength_pct);
    let cleaned = brushed(key, strength_pct, None);
    let minutes = needed_min(&cleaned, disorder, known);
    let long = brushed(key, strength_pct, minutes.or(Some(0.0)));
    let findings = adequacy(&long, disorder, known).findings;
    match minutes {
        Some(minutes) => Ok(Needed {
            agent: key.to_owned(),
            strength_pct,
            minutes,
            findings,
        }),
        None => Err(findings),
    }
}

/// Why a soak of so many minutes would not be enough; empty if it would.
pub fn too_short(needed: &Needed, minutes: f64, disorder: Option<&str>) -> Vec<Finding> {
    let soaked = brushed(&needed.agent, needed.strength_pct, Some(minutes));
    let verdict = adequacy(&soaked, disorder, Knowledge::embedded());
    match verdict.adequacy {
        Adequacy::Adequate => Vec::new(),
        // what was enough for another disorder is no reason
        Adequacy::Short { .. } | Adequacy::Unknown => {
            let reasons = verdict.findings.into_iter();
            reasons
                .filter(|f| f.severity >= Severity::Caution)
                .collect()
        }
    }
}

/// As the rotation does it: brushed first, in a bath that is changed in time.
fn brushed(agent: &str, strength_pct: Option<f64>, contact_min: Option<f64>) -> Cleaned<'_> {
    Cleaned {
        agent,
        strength_pct,
        contact_min,
        brushed: Some(true),
        ..Cleaned::default()
    }
}
