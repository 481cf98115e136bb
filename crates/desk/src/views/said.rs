//! Findings and sources ready to show.

use crate::measure::Measure;
use crate::words::{Lang, Value, Words};
use model::knowledge::{HowSeen, RuleRow, SafetyRow, Texts};
use model::{Basis, Finding, Knowledge, Severity, SourceKey};

/// Who speaks to a reader: words, units, and the tables that sources and rules are looked up in.
#[derive(Clone, Copy, Debug)]
pub struct Speaker {
    /// The reader's units and words.
    pub measure: Measure,
    /// The tables.
    pub knowledge: &'static Knowledge,
}

/// A source as it is shown beside a figure.
#[derive(Clone, PartialEq, Debug)]
pub struct Cited {
    /// Key of its row; the anchor on the page of sources.
    pub key: String,
    /// Title.
    pub title: String,
    /// Author, publisher, year and number, those that are known.
    pub by: String,
    /// "Recalled, not looked up", or nothing if it was read.
    pub mark: Option<String>,
}

/// Another wording of the same rule that the strict one was preferred to.
#[derive(Clone, PartialEq, Debug)]
pub struct Otherwise {
    /// What it says.
    pub text: String,
    /// Who says so.
    pub sources: Vec<Cited>,
}

/// A finding in words, with where it comes from.
#[derive(Clone, PartialEq, Debug)]
pub struct Said {
    /// Stable code.
    pub code: &'static str,
    /// Weight: `info`, `caution`, `act`, `refuse`.
    pub weight: &'static str,
    /// The words.
    pub text: String,
    /// How it is known, in words, where no source is named: common practice, or assumed.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
    /// Who says otherwise.
    pub otherwise: Vec<Otherwise>,
}

impl Speaker {
    /// For a reader, over the embedded tables.
    pub fn new(measure: Measure) -> Speaker {
        Speaker {
            measure,
            knowledge: Knowledge::embedded(),
        }
    }

    /// The reader's words.
    pub fn words(&self) -> Words {
        self.measure.words
    }

    /// Words without arguments.
    pub fn say(&self, code: &str) -> String {
        self.words().say(code)
    }

    /// Words with arguments.
    pub fn text(&self, code: &str, args: &[(&'static str, Value)]) -> String {
        self.words().text(code, args)
    }

    /// A text of a table in the reader's language.
    pub fn texts<'t>(&self, texts: &'t Texts) -> &'t str {
        match self.words().lang() {
            Lang::En => &texts.en,
            Lang::Es => &texts.es,
        }
    }

    /// A finding ready to show.
    pub fn finding(&self, finding: &Finding) -> Said {
        Said {
            code: finding.code,
            weight: weight(finding.severity),
            text: self.measure.finding(finding),
            basis: self.unsourced(finding),
            sources: self.cite(&finding.sources),
            otherwise: finding
                .conflicts
                .iter()
                .filter_map(|key| self.otherwise(key))
                .collect(),
        }
    }

    /// Several findings.
    pub fn findings(&self, findings: &[Finding]) -> Vec<Said> {
        findings.iter().map(|f| self.finding(f)).collect()
    }

    fn unsourced(&self, finding: &Finding) -> Option<String> {
        if finding.practice {
            return Some(self.say("basis-practice"));
        }
        finding.sources.is_empty().then(|| self.say("basis-own"))
    }

    fn otherwise(&self, key: &str) -> Option<Otherwise> {
        let (en, es, sources) = match (self.knowledge.rule(key), self.knowledge.safety(key)) {
            (
                Some(RuleRow {
                    text,
                    text_es,
                    sources,
                    ..
                }),
                _,
            ) => (text, text_es, sources),
            (
                None,
                Some(SafetyRow {
                    text,
                    text_es,
                    sources,
                    ..
                }),
            ) => (text, text_es, sources),
            (None, None) => return None,
        };
        let text = if self.words().lang() == Lang::Es {
            es
        } else {
            en
        };
        Some(Otherwise {
            text: text.clone(),
            sources: self.cite(sources),
        })
    }

    /// Sources by their keys. A key that does not resolve is shown as it is, so that the gap is seen.
    pub fn cite(&self, keys: &[SourceKey]) -> Vec<Cited> {
        keys.iter().map(|key| self.cited(key)).collect()
    }

    fn cited(&self, key: &SourceKey) -> Cited {
        let Some(source) = self.knowledge.source(&key.0) else {
            return Cited {
                key: key.to_string(),
                title: key.to_string(),
                by: String::new(),
                mark: None,
            };
        };
        let known = [
            &source.author,
            &source.publisher,
            &source.year,
            &source.identifier,
        ];
        let known: Vec<&str> = known
            .into_iter()
            .map(String::as_str)
            .filter(|s| !s.is_empty())
            .collect();
        Cited {
            key: source.key.clone(),
            title: source.title.clone(),
            by: known.join(" · "),
            mark: (source.how_seen == HowSeen::Memory).then(|| self.say("basis-memory")),
        }
    }

    /// How a value is known, where that must be said beside it; nothing for a published one.
    pub fn basis(&self, basis: Basis) -> Option<String> {
        let code = match basis {
            Basis::Published => return None,
            Basis::Memory => "basis-memory",
            Basis::Assumed => "basis-assumed",
            Basis::Practice => "basis-practice",
            Basis::Keeper => "basis-keeper",
        };
        Some(self.say(code))
    }
}

/// The word of a weight in pages and files.
pub fn weight(severity: Severity) -> &'static str {
    match severity {
        Severity::Info => "info",
        Severity::Caution => "caution",
        Severity::Act => "act",
        Severity::Refuse => "refuse",
    }
}
