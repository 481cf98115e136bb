//! A log of touches with the names of blades and palms: 16 bytes a row, names once.

use super::{LogSpan, Stand};
use model::{Arg, BladeId, BladeKind, Finding, Moment, Severity};
use std::collections::HashMap;

/// What is known of a cleaning.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Cleaned {
    /// The agent as written; empty if not noted.
    pub agent: String,
    /// Percent by volume in the bath.
    pub strength_pct: Option<f64>,
    /// Minutes of contact.
    pub contact_min: Option<f64>,
    /// Whether it was brushed first.
    pub brushed: Option<bool>,
    /// Minutes since the bath was mixed.
    pub bath_age_min: Option<f64>,
    /// Blades the bath had served before.
    pub bath_uses: Option<u32>,
    /// What carries the blade.
    pub tool: BladeKind,
}

/// A blade as people name it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct BladeName {
    /// Identity in the register; `None` from a file.
    pub id: Option<BladeId>,
    /// Tag.
    pub tag: String,
}

/// What a row says, by numbers of the book's lists.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Mark {
    /// A cut of this palm.
    Palm(u32),
    /// A cleaning of this kind.
    Kind(u32),
}

/// One row: seconds, blade, and a palm or, with the highest bit set, a kind of cleaning.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Row {
    pub at: i64,
    pub blade: u32,
    mark: u32,
}

const CLEANING: u32 = 1 << 31;

impl Row {
    pub fn mark(self) -> Mark {
        match self.mark & CLEANING {
            0 => Mark::Palm(self.mark),
            _ => Mark::Kind(self.mark & !CLEANING),
        }
    }
}

/// A log of touches with names.
#[derive(Clone, Debug, Default)]
pub struct Book {
    pub(super) rows: Vec<Row>,
    pub(super) blades: Vec<BladeName>,
    pub(super) palms: Vec<Stand>,
    pub(super) kinds: Vec<Cleaned>,
    /// What is wrong with the log.
    pub findings: Vec<Finding>,
    palm_at: HashMap<String, u32>,
}

impl Book {
    /// The palm with a tag, by its number.
    pub fn palm(&self, tag: &str) -> Option<u32> {
        self.palm_at.get(tag).copied()
    }

    /// How many rows.
    pub fn len(&self) -> usize {
        self.rows.len()
    }

    /// Whether it has no row.
    pub fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// What it holds up to a second.
    pub(super) fn span(&self, rows: &[Row]) -> LogSpan {
        let cleanings = rows
            .iter()
            .filter(|row| matches!(row.mark(), Mark::Kind(_)))
            .count();
        LogSpan {
            cuts: rows.len() - cleanings,
            cleanings,
            blades: self.blades.len(),
            palms: self.palms.len(),
            first: rows.first().map(|row| moment(row.at)),
            last: rows.last().map(|row| moment(row.at)),
        }
    }
}

/// A second as a moment.
pub(super) fn moment(seconds: i64) -> Moment {
    Moment(seconds.saturating_mul(1000))
}

/// The second a moment lies in.
pub(super) fn second(moment: Moment) -> i64 {
    moment.0.div_euclid(1000)
}

/// Makes a [`Book`]; rows may come in any order.
#[derive(Debug, Default)]
pub struct BookMaker {
    book: Book,
    blade_at: HashMap<String, u32>,
    kind_at: HashMap<(String, BladeKind, [Option<u64>; 5]), u32>,
    known: Option<u32>,
    strange: u64,
    no_agent: u64,
}

impl BookMaker {
    /// A book whose palms are not described.
    pub fn new() -> BookMaker {
        BookMaker::default()
    }

    /// Describes a palm; to be done before the rows. From then on a tag in a row that was not described is a finding.
    pub fn palm(&mut self, stand: Stand) -> u32 {
        let number = self.add(stand);
        self.known = Some(self.book.palms.len() as u32);
        number
    }

    fn add(&mut self, stand: Stand) -> u32 {
        let number = self.book.palms.len() as u32;
        self.book.palm_at.insert(stand.tag.clone(), number);
        self.book.palms.push(stand);
        number
    }

    /// Names a blade of the register; two blades with one tag stay two.
    pub fn blade(&mut self, id: BladeId, tag: &str) -> u32 {
        self.book.blades.push(BladeName {
            id: Some(id),
            tag: tag.to_owned(),
        });
        self.book.blades.len() as u32 - 1
    }

    /// The blade with this tag, made if it is new.
    pub fn blade_named(&mut self, tag: &str) -> u32 {
        if let Some(at) = self.blade_at.get(tag) {
            return *at;
        }
        let number = self.book.blades.len() as u32;
        self.book.blades.push(BladeName {
            id: None,
            tag: tag.to_owned(),
        });
        self.blade_at.insert(tag.to_owned(), number);
        number
    }

    /// The palm with this tag, made if it is new.
    pub fn palm_named(&mut self, tag: &str) -> u32 {
        if let Some(at) = self.book.palm_at.get(tag) {
            return *at;
        }
        self.strange += u64::from(self.known.is_some());
        self.add(Stand {
            tag: tag.to_owned(),
            ..Stand::default()
        })
    }

    /// A cut of a palm by its number, ended then.
    pub fn cut(&mut self, at: Moment, blade: u32, palm: u32) {
        self.row(at, blade, palm);
    }

    /// A cleaning, ended then.
    pub fn clean(&mut self, at: Moment, blade: u32, cleaned: &Cleaned) {
        self.no_agent += u64::from(cleaned.agent.is_empty());
        let bits = |x: Option<f64>| x.map(f64::to_bits);
        let key = (
            cleaned.agent.clone(),
            cleaned.tool,
            [
                bits(cleaned.strength_pct),
                bits(cleaned.contact_min),
                cleaned.brushed.map(u64::from),
                bits(cleaned.bath_age_min),
                cleaned.bath_uses.map(u64::from),
            ],
        );
        let next = self.book.kinds.len() as u32;
        let kind = *self.kind_at.entry(key).or_insert(next);
        if kind == next {
            self.book.kinds.push(cleaned.clone());
        }
        self.row(at, blade, kind | CLEANING);
    }

    fn row(&mut self, at: Moment, blade: u32, mark: u32) {
        let at = second(at);
        self.book.rows.push(Row { at, blade, mark });
    }

    /// A finding of the caller's.
    pub fn finding(&mut self, finding: Finding) {
        self.book.findings.push(finding);
    }

    /// Puts the rows into the order of time. A row that is there twice counts once.
    pub fn done(mut self) -> Book {
        let rows = &mut self.book.rows;
        rows.sort_unstable();
        let before = rows.len();
        rows.dedup();
        let doubled = (before - rows.len()) as u64;
        let counted = [
            ("tracing-doubled-rows", Severity::Info, doubled),
            ("tracing-no-agent", Severity::Caution, self.no_agent),
            ("tracing-strange-palms", Severity::Caution, self.strange),
            ("tracing-ties", Severity::Caution, ties(&self.book.rows)),
        ];
        for (code, severity, count) in counted.into_iter().filter(|(_, _, n)| *n > 0) {
            let finding = Finding::new(code, severity).with("count", Arg::Count(count as i64));
            self.book.findings.push(finding);
        }
        self.book
    }
}

/// Touches that follow another one of the same blade within the same second, of which one is a cut.
fn ties(rows: &[Row]) -> u64 {
    let tied = |pair: &&[Row]| {
        let cut = pair.iter().any(|row| matches!(row.mark(), Mark::Palm(_)));
        pair[0].at == pair[1].at && pair[0].blade == pair[1].blade && cut
    };
    rows.windows(2).filter(tied).count() as u64
}
