//! The shape of a rule: what it can say, what it limits, and how its sources get into a finding.

use crate::sight::Sight;
use crown::Cut;
use model::{Basis, Finding, Knowledge, Severity, SourceKey};

/// What a rule is about; decides where in the plan its findings stand.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Part {
    /// Nobody cuts while it speaks.
    Hold,
    /// What comes off and what stays.
    Take,
    /// How to cut.
    Method,
    /// What to mind.
    Caution,
}

/// One thing a rule can say: its code, its weight and the knowledge rows behind it.
#[derive(Clone, Copy, Debug)]
pub struct Say {
    /// Code of the finding, and key of its words.
    pub code: &'static str,
    /// Weight.
    pub severity: Severity,
    /// Keys of the knowledge rows it stands on, pruning rules or safety rows.
    pub cites: &'static [&'static str],
    /// Keys of the rows that say otherwise.
    pub conflicts: &'static [&'static str],
    /// Keys of sources that stand behind it without a row of their own.
    pub direct: &'static [&'static str],
    /// Common practice of the trade without a source.
    pub practice: bool,
}

impl Say {
    /// A saying without rows; with nothing added it is an assumption of ours.
    pub const fn new(code: &'static str, severity: Severity) -> Say {
        Say {
            code,
            severity,
            cites: &[],
            conflicts: &[],
            direct: &[],
            practice: false,
        }
    }

    /// Standing on these knowledge rows.
    pub const fn on(mut self, rows: &'static [&'static str]) -> Say {
        self.cites = rows;
        self
    }

    /// Against these rows, which say otherwise or say it more loosely.
    pub const fn against(mut self, rows: &'static [&'static str]) -> Say {
        self.conflicts = rows;
        self
    }

    /// Standing on these sources directly.
    pub const fn source(mut self, keys: &'static [&'static str]) -> Say {
        self.direct = keys;
        self
    }

    /// Common practice, no source.
    pub const fn practice(mut self) -> Say {
        self.practice = true;
        self
    }
}

/// What a rule lets through. Every limit is closed downwards: less than an allowed cut is allowed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Limit {
    /// At most so many live fronds, green and yellowing together; `None`: no limit.
    pub live: Option<u32>,
    /// Partly dead fronds stay.
    pub yellowing_stay: bool,
    /// Wholly dead fronds stay as well.
    pub dead_stay: bool,
}

impl Limit {
    /// No limit.
    pub const FREE: Limit = Limit {
        live: None,
        yellowing_stay: false,
        dead_stay: false,
    };
    /// Nothing comes off.
    pub const NOTHING: Limit = Limit {
        live: Some(0),
        yellowing_stay: true,
        dead_stay: true,
    };

    /// At most `n` live fronds.
    pub fn live_at_most(n: u32) -> Limit {
        Limit {
            live: Some(n),
            ..Limit::FREE
        }
    }

    /// Both limits at once.
    pub fn and(self, other: Limit) -> Limit {
        let live = match (self.live, other.live) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
        Limit {
            live,
            yellowing_stay: self.yellowing_stay || other.yellowing_stay,
            dead_stay: self.dead_stay || other.dead_stay,
        }
    }

    /// The part of a cut that passes. Yellowing fronds hang lowest and go first.
    pub fn nearest(self, cut: Cut) -> Cut {
        let room = self.live.unwrap_or(u32::MAX);
        let yellowing = if self.yellowing_stay {
            0
        } else {
            cut.yellowing.min(room)
        };
        Cut {
            green: cut.green.min(room - yellowing),
            yellowing,
            brown: if self.dead_stay { 0 } else { cut.brown },
        }
    }
}

/// What a rule says of one stem.
#[derive(Clone, PartialEq, Debug)]
pub struct Spoken {
    /// Its findings; none means that it has nothing to say here.
    pub findings: Vec<Finding>,
    /// What it lets through.
    pub limit: Limit,
}

impl Spoken {
    /// Nothing to say.
    pub fn silent() -> Spoken {
        Spoken {
            findings: Vec::new(),
            limit: Limit::FREE,
        }
    }

    /// One finding, no limit.
    pub fn note(finding: Finding) -> Spoken {
        Spoken {
            findings: vec![finding],
            limit: Limit::FREE,
        }
    }

    /// One finding with a limit.
    pub fn limit(finding: Finding, limit: Limit) -> Spoken {
        Spoken {
            findings: vec![finding],
            limit,
        }
    }

    /// One more finding.
    pub fn and(mut self, finding: Finding) -> Spoken {
        self.findings.push(finding);
        self
    }
}

/// A rule of the registry.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Its name: the name of its file.
    pub key: &'static str,
    /// What it is about.
    pub part: Part,
    /// All it can say.
    pub says: &'static [Say],
    /// Looks at a stem and speaks or keeps silent.
    pub check: fn(&Sight) -> Spoken,
}

/// Sources of a knowledge row, pruning rule or safety row, and whether the row is (also) common practice.
/// A key without a row gives nothing; a test over the registry refuses such keys.
pub fn cite<'a>(
    knowledge: &'a Knowledge,
    key: &str,
) -> (impl Iterator<Item = &'a SourceKey> + use<'a>, bool) {
    let rule = knowledge
        .rule(key)
        .map(|row| (row.sources.as_slice(), row.basis));
    let row = rule.or_else(|| {
        knowledge
            .safety(key)
            .map(|row| (row.sources.as_slice(), row.basis))
    });
    let (sources, basis) = row.unwrap_or((&[], Basis::Assumed));
    let practice = basis == Basis::Practice || sources.iter().any(is_practice);
    (sources.iter().filter(|s| !is_practice(s)), practice)
}

/// "Common practice, no source" has a row of its own in the source list.
fn is_practice(source: &SourceKey) -> bool {
    matches!(&*source.0, "common-practice" | "common_practice")
}
