//! Findings: a reason is data until the last moment.

use crate::day::Day;
use crate::sourced::SourceKey;
use crate::units::Metres;

/// How much a finding weighs. Ordered: the worst is the greatest.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Severity {
    /// Worth knowing.
    Info,
    /// A caution to show before work.
    Caution,
    /// Something must be done or looked at by a person.
    Act,
    /// Refused: must not be done.
    Refuse,
}

/// A typed argument of a finding. Words and units are chosen at the edge.
#[derive(Clone, PartialEq, Debug)]
pub enum Arg {
    /// A whole number of things.
    Count(i64),
    /// A plain number.
    Number(f64),
    /// A share, 0..=1.
    Share(f64),
    /// A length, shown in the reader's units.
    Length(Metres),
    /// A short length (stub, spine) shown in centimetres or inches.
    ShortLength(Metres),
    /// A number of days.
    Days(f64),
    /// A date.
    Date(Day),
    /// Literal text that is not translated: a name, a tag, the keeper's own words.
    Text(String),
    /// A stable code that has words of its own in every language.
    Code(&'static str),
}

/// One thing a rule or a check has to say.
#[derive(Clone, PartialEq, Debug)]
pub struct Finding {
    /// Stable code, kebab case, e.g. `cut-dead-any-time`; the key of its words in every language.
    pub code: &'static str,
    /// Weight.
    pub severity: Severity,
    /// Named, typed arguments of the words.
    pub args: Vec<(&'static str, Arg)>,
    /// Where it comes from; empty together with `practice` false means assumed.
    pub sources: Vec<SourceKey>,
    /// Common practice of the trade without a source.
    pub practice: bool,
    /// Keys of knowledge rows that say otherwise, shown beside the strict reading.
    pub conflicts: Vec<&'static str>,
}

impl Finding {
    /// A finding without arguments or sources.
    pub fn new(code: &'static str, severity: Severity) -> Finding {
        Finding {
            code,
            severity,
            args: Vec::new(),
            sources: Vec::new(),
            practice: false,
            conflicts: Vec::new(),
        }
    }

    /// The same with one more argument.
    pub fn with(mut self, name: &'static str, arg: Arg) -> Finding {
        self.args.push((name, arg));
        self
    }

    /// The same with its sources.
    pub fn from_sources(mut self, sources: &[SourceKey]) -> Finding {
        self.sources.extend_from_slice(sources);
        self
    }

    /// The same, marked as common practice without a source.
    pub fn by_practice(mut self) -> Finding {
        self.practice = true;
        self
    }
}
