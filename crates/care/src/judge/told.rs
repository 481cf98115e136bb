//! What a judgement is told, sorted out: signs by index, and what is to be said about the telling.

use super::answer::Evidence;
use super::tables::{FROST, MOVED, STORM, Tables};
use model::{Arg, Finding, Severity};

/// Signs by index, in the order of the table.
pub(super) struct Told {
    pub seen: Vec<usize>,
    pub absent: Vec<usize>,
    /// Signs told of in any way, also those told both ways.
    pub answered: Vec<bool>,
    pub findings: Vec<Finding>,
}

impl Told {
    pub fn of(tables: &Tables, evidence: &Evidence) -> Told {
        let mut findings = Vec::new();
        let seen = marks(tables, evidence.seen, &mut findings);
        let absent = marks(tables, evidence.absent, &mut findings);
        let both = |k: usize| seen[k] && absent[k];
        for (_, row) in tables.signs.iter().enumerate().filter(|(k, _)| both(*k)) {
            let finding = Finding::new("judge-sign-both-ways", Severity::Act);
            findings.push(finding.with("sign", Arg::Text(row.key.clone())));
        }
        findings.extend(species(evidence));
        let happened = happened(tables, evidence);
        let weighs = |k: usize| !both(k) && !happened[k];
        let only = |marks: &[bool]| {
            (0..marks.len())
                .filter(|k| marks[*k] && weighs(*k))
                .collect()
        };
        let answered = |k: usize| seen[k] || absent[k] || happened[k];
        let told = Told {
            seen: only(&seen),
            absent: only(&absent),
            answered: (0..seen.len()).map(answered).collect(),
            findings,
        };
        told.with_nothing_told(evidence)
    }

    fn with_nothing_told(mut self, evidence: &Evidence) -> Told {
        if self.seen.is_empty() && self.absent.is_empty() && evidence.counts.is_none() {
            self.findings
                .push(Finding::new("judge-nothing-told", Severity::Info));
        }
        self
    }
}

/// Signs that tell of a move, a frost or a storm whose date is told: they weigh through the date. The sign of a move
/// always does, as a move without a date.
fn happened(tables: &Tables, evidence: &Evidence) -> Vec<bool> {
    let by_date = |key: &str| match key {
        MOVED => true,
        FROST => evidence.frost_on.is_some(),
        STORM => evidence.storm_on.is_some(),
        _ => false,
    };
    tables.signs.iter().map(|row| by_date(&row.key)).collect()
}

/// Which signs of the table are among the keys. Signs that only the cut plan listens to are known, and weigh nothing.
fn marks(tables: &Tables, keys: &[String], findings: &mut Vec<Finding>) -> Vec<bool> {
    let mut marks = vec![false; tables.signs.len()];
    let mut unknown: Vec<&str> = Vec::new();
    for key in keys {
        match tables.sign(key) {
            Some(k) => marks[k] = true,
            None if crate::SIGNS.contains(&key.as_str()) => {}
            None => unknown.push(key),
        }
    }
    unknown.sort_unstable();
    unknown.dedup();
    findings.extend(unknown.into_iter().map(|key| {
        Finding::new("judge-sign-unknown", Severity::Act).with("sign", Arg::Text(key.to_owned()))
    }));
    marks
}

fn species(evidence: &Evidence) -> Option<Finding> {
    if evidence.species.is_some() {
        return None;
    }
    let name = evidence.species_name.trim();
    Some(if name.is_empty() {
        Finding::new("judge-species-not-told", Severity::Act)
    } else {
        Finding::new("judge-species-unknown", Severity::Act)
            .with("species", Arg::Text(name.to_owned()))
    })
}
