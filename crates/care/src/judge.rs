//! What could it be: disorders weighed against signs seen, signs looked for and not there, and the counts.
//!
//! `docs/signs.md` has the model. In short: sets of at most two disorders, each sign a noisy-or of the disorders in the
//! set and a small chance of its own; the counts weigh in through the likelihoods of the crown's explanations.

mod answer;
mod apart;
mod circumstance;
mod holds;
mod move_or_hunger;
mod next;
mod sets;
mod speak;
mod tables;
mod told;
mod weigh;
mod weights;

pub use answer::{
    Call, Evidence, HoldAdvice, Judgement, MoveOrHunger, NextLook, Ranked, Side, Speaks, Swing,
    TellApart, WeightOf,
};
pub use holds::{ALONE, hold_by_sign, hold_reason, hold_reasons};
pub use move_or_hunger::move_or_hunger;
pub use tables::{AGEING, FROST, MOVED, Rows, STORM, THE_MOVE};
pub use weights::{ABOUT_ONE, BASE, Weights};

use model::Knowledge;
use std::sync::OnceLock;
use tables::Tables;
use told::Told;
use weigh::Weighed;

/// Probabilities in words, by the least probability of each; the words are `level-<key>`.
pub const LEVELS: [(&str, f64); 5] = [
    ("nearly-sure", 0.95),
    ("likely", 0.7),
    ("open", 0.3),
    ("unlikely", 0.05),
    ("hardly", 0.0),
];

/// For so many of the first in the ranking it is said what speaks for and against them.
const EXPLAINED: usize = 6;
/// So many sets are shown in [`Judgement::together`].
const TOGETHER: usize = 2;

/// The level of a probability.
pub fn level(probability: f64) -> &'static str {
    let level = LEVELS.iter().find(|(_, least)| probability >= *least);
    level.map_or("hardly", |(key, _)| key)
}

/// Weighs evidence. Made once from the tables; the same evidence gets the same answer, bit for bit.
pub struct Judge {
    tables: Tables,
}

impl Judge {
    /// From the knowledge tables.
    pub fn new(knowledge: &'static Knowledge) -> Judge {
        Judge::of_rows(Rows::of(knowledge))
    }

    /// From rows.
    pub fn of_rows(rows: Rows) -> Judge {
        Judge {
            tables: Tables::of(rows),
        }
    }

    /// The judge over the tables compiled into this program.
    pub fn embedded() -> &'static Judge {
        static EMBEDDED: OnceLock<Judge> = OnceLock::new();
        EMBEDDED.get_or_init(|| Judge::new(Knowledge::embedded()))
    }

    /// The numbers it goes by.
    pub fn weights(&self) -> &Weights {
        &self.tables.weights
    }

    /// What could it be, and what to look at next.
    pub fn judge(&self, evidence: &Evidence) -> Judgement {
        self.answer(evidence, true)
    }

    /// The same without the next looks, which take about half of the time.
    pub fn judge_only(&self, evidence: &Evidence) -> Judgement {
        self.answer(evidence, false)
    }

    fn answer(&self, evidence: &Evidence, looks: bool) -> Judgement {
        let tables = &self.tables;
        let told = Told::of(tables, evidence);
        let weighed = Weighed::of(tables, evidence, &told);
        let ranked = self.ranked(&told, &weighed);
        Judgement {
            nothing: weighed.share(&[0]),
            next: if looks {
                next::next(tables, &told, &weighed)
            } else {
                Vec::new()
            },
            holds: holds::holds(tables, &told, &weighed),
            apart: apart::apart(tables, &told, &ranked),
            together: self.together(&weighed),
            doubt_bits: weighed.doubt(),
            findings: told.findings,
            ranked,
        }
    }

    fn ranked(&self, told: &Told, weighed: &Weighed) -> Vec<Ranked> {
        let tables = &self.tables;
        let mut rated: Vec<(usize, f64)> = (0..tables.disorders.len())
            .map(|row| (row, weighed.share(self.sets(row))))
            .collect();
        rated.sort_by(|a, b| b.1.total_cmp(&a.1));
        let events: Vec<&[usize]> = rated
            .iter()
            .take(EXPLAINED)
            .map(|(row, _)| self.sets(*row))
            .collect();
        let mut spoken = speak::speaks(tables, told, weighed, &events).into_iter();
        let one = |(row, probability): (usize, f64)| {
            let (for_it, against) = spoken.next().unwrap_or_default();
            Ranked {
                disorder: tables.disorders[row].key.as_str(),
                probability,
                level: level(probability),
                for_it,
                against,
            }
        };
        rated.into_iter().map(one).collect()
    }

    /// The sets in which a row of the disorders is at work; nothing but ageing is the empty set.
    fn sets(&self, row: usize) -> &[usize] {
        self.tables.trouble_of[row].map_or(&[0], |k| &self.tables.sets.with[k])
    }

    fn together(&self, weighed: &Weighed) -> Vec<(Vec<&'static str>, f64)> {
        let tables = &self.tables;
        let mut best: Vec<usize> = Vec::with_capacity(TOGETHER + 1);
        for set in 0..tables.sets.len() {
            let weight = |set: usize| weighed.weight[set];
            let at = best.iter().position(|b| weight(set) > weight(*b));
            best.insert(at.unwrap_or(best.len()), set);
            best.truncate(TOGETHER);
        }
        let key = |k: usize| tables.troubles[k].key.as_str();
        let named = |set: usize| tables.sets.of(set).map(key).collect();
        best.into_iter()
            .map(|set| (named(set), weighed.weight[set] / weighed.total))
            .collect()
    }
}
