//! The report put together: notices, facts, what the words mean, tables and chains, what to do.

use super::{Heap, Point, Sheet, facts, palms};
use crate::leaf::Leaf;
use crate::refs::Refs;
use crate::rows;
use desk::tracing::{TraceAnswer, Travel};
use desk::views::{Said, Speaker};
use desk::words::Lang;
use model::knowledge::{DisorderRow, Texts};
use model::{Basis, SourceKey};

/// Who writes, and what has been cited so far.
pub(super) struct Writer<'a> {
    pub leaf: &'a Leaf,
    pub answer: &'a TraceAnswer,
    pub speaker: Speaker,
    pub disorder: Option<&'a DisorderRow>,
    refs: Refs,
}

/// Findings that the notices have said already.
const NOTICED: [&str; 3] = [
    "tracing-not-on-blades",
    "tracing-spread-unknown",
    "tracing-not-named",
];

/// The report in words.
pub(super) fn sheet(leaf: &Leaf, answer: &TraceAnswer, disorder: Option<&DisorderRow>) -> Sheet {
    let mut writer = Writer {
        leaf,
        answer,
        speaker: Speaker::new(leaf.measure),
        disorder,
        refs: Refs::default(),
    };
    let tags: Vec<&str> = answer.cases.iter().map(|c| c.palm.tag.as_str()).collect();
    let title = [("tag", tags.join(", ").into())];
    let blades = answer.travel != Travel::NotOnBlades;
    let latency = facts::latency(&mut writer);
    let lists = writer.lists();
    Sheet {
        frame: leaf.frame(&leaf.text("trace-sheet-title", &title)),
        notices: facts::notices(&writer),
        facts: facts::facts(&writer, latency),
        meaning: writer.meaning(blades),
        summary: blades.then(|| palms::summary(&writer)),
        sections: if blades {
            palms::sections(&writer)
        } else {
            Vec::new()
        },
        near: palms::nearby(&writer),
        lists,
        sources: leaf.say("sheet-sources"),
        works: writer.refs.works(&writer.speaker),
        closing: format!(
            "{} {}",
            leaf.say("trace-sheet-authority"),
            leaf.say("common-closing")
        ),
        signatures: ["trace-sheet-made-by", "trace-sheet-received-by"]
            .iter()
            .map(|code| leaf.say(code))
            .collect(),
    }
}

impl Writer<'_> {
    /// The text of a table in the reader's language.
    pub fn pick<'t>(&self, texts: &'t Texts) -> &'t str {
        match self.leaf.measure.words.lang() {
            Lang::En => &texts.en,
            Lang::Es => &texts.es,
        }
    }

    fn heap(&self, title: &str, codes: &[&str]) -> Heap {
        let point = |code: &&str| Point {
            text: self.leaf.say(code),
            numbers: Vec::new(),
            mark: None,
        };
        Heap {
            title: self.leaf.say(title),
            items: codes.iter().map(point).collect(),
        }
    }

    fn meaning(&self, blades: bool) -> Heap {
        let codes: &[&str] = if blades {
            &[
                "trace-sheet-means-certain",
                "trace-sheet-means-possible",
                "trace-sheet-means-generation",
                "trace-sheet-means-host",
                "trace-sheet-means-watch",
                "trace-sheet-means-gaps",
                "trace-sheet-means-no-diagnosis",
            ]
        } else {
            &["trace-sheet-means-near", "trace-sheet-means-no-diagnosis"]
        };
        self.heap("trace-sheet-meaning", codes)
    }

    /// What to do, what never to do, what is wrong with the log, cautions.
    fn lists(&mut self) -> Vec<Heap> {
        let mut lists = Vec::new();
        if let Some(row) = self.disorder {
            lists.push(self.about(row));
        }
        let findings = self.answer.findings.iter();
        let findings: Vec<Said> = findings
            .filter(|finding| !NOTICED.contains(&finding.code))
            .map(|finding| self.speaker.finding(finding))
            .collect();
        if !findings.is_empty() {
            let items = findings.iter().map(|said| self.said(said)).collect();
            lists.push(Heap {
                title: self.leaf.say("trace-sheet-findings"),
                items,
            });
        }
        lists.push(self.cautions());
        lists
    }

    fn about(&mut self, row: &DisorderRow) -> Heap {
        let texts = [&row.first, &row.never, &row.confirm, &row.sample];
        let items = texts
            .into_iter()
            .filter(|texts| !texts.en.is_empty())
            .map(|texts| self.point(self.pick(texts).to_owned(), row.basis, &row.sources))
            .collect();
        Heap {
            title: self.leaf.say("trace-sheet-do"),
            items,
        }
    }

    fn cautions(&mut self) -> Heap {
        let keys = [
            "bleach_ammonia",
            "bleach_acid",
            "bleach_alcohol",
            "alcohol_flash",
        ];
        let mut heap = self.heap(
            "trace-sheet-cautions",
            &["trace-sheet-hold", "trace-sheet-debris"],
        );
        let speaker = self.speaker;
        for row in keys.iter().filter_map(|key| rows::row(&speaker, key)) {
            let text = match &row.figure {
                Some(figure) => format!("{} ({figure})", row.text),
                None => row.text.clone(),
            };
            let point = self.point(text, row.basis, row.sources);
            heap.items.push(point);
        }
        heap
    }

    /// The numbers of these sources.
    pub fn numbers(&mut self, sources: &[SourceKey]) -> Vec<usize> {
        self.refs.numbers(sources)
    }

    fn point(&mut self, text: String, basis: Basis, sources: &[SourceKey]) -> Point {
        Point {
            text,
            numbers: self.refs.numbers(sources),
            mark: self.speaker.basis(basis),
        }
    }

    fn said(&mut self, said: &Said) -> Point {
        let keys: Vec<SourceKey> = said
            .sources
            .iter()
            .map(|s| SourceKey::new(&s.key))
            .collect();
        Point {
            text: said.text.clone(),
            numbers: self.refs.numbers(&keys),
            mark: None,
        }
    }
}
