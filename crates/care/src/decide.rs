//! What passes all rules, and why the rest does not. Knows nothing of the model behind the crown's numbers.

use crate::plan::Verdict;
use crate::rule::{Limit, Part, Rule, Spoken};
use crate::rules::{self, asked_growth, over_trimming};
use crate::sight::Sight;
use crown::Cut;
use model::Finding;

/// The answer to an asked-for cut, without the crown's own answers.
#[derive(Clone, PartialEq, Debug)]
pub struct Decision {
    /// In a word.
    pub verdict: Verdict,
    /// The nearest cut that is allowed.
    pub allowed: Cut,
    /// The reason first, then the rules that stand against it.
    pub findings: Vec<Finding>,
    /// Live fronds asked for, in years of growth.
    pub years_growth: Option<f64>,
}

/// Every rule with what it says of a stem, in registry order.
pub fn spoken(sight: &Sight) -> Vec<(&'static Rule, Spoken)> {
    rules::ALL
        .iter()
        .map(|rule| (rule, (rule.check)(sight)))
        .collect()
}

/// All limits at once.
pub fn limit(spoken: &[(&'static Rule, Spoken)]) -> Limit {
    spoken
        .iter()
        .fold(Limit::FREE, |all, (_, s)| all.and(s.limit))
}

/// Findings of one part, in registry order.
pub fn part(spoken: &[(&'static Rule, Spoken)], part: Part) -> Vec<Finding> {
    spoken
        .iter()
        .filter(|(rule, _)| rule.part == part)
        .flat_map(|(_, s)| s.findings.clone())
        .collect()
}

/// Decides on an asked-for cut.
pub fn decide(sight: &Sight, cut: Cut) -> Decision {
    let spoken = spoken(sight);
    let allowed = limit(&spoken).nearest(cut);
    let over = over_trimming::finding(sight, cut);
    let held = spoken
        .iter()
        .any(|(rule, s)| rule.part == Part::Hold && !s.findings.is_empty());
    let verdict = if allowed == cut {
        Verdict::Allowed
    } else if held || over.is_some() || allowed == Cut::NONE {
        Verdict::Refused
    } else {
        Verdict::Partly
    };
    let against = spoken
        .iter()
        .filter(|(_, s)| s.limit.nearest(cut) != cut)
        .flat_map(|(_, s)| s.findings.clone());
    let mut findings: Vec<Finding> = over.into_iter().chain(against).collect();
    findings.extend(asked_growth::findings(sight, cut));
    Decision {
        verdict,
        allowed,
        findings,
        years_growth: asked_growth::years(sight, cut),
    }
}
