//! Chains in words of people: tags, times, and what lay between.

use super::book::{Book, Mark, Row, moment};
use super::lanes::Lanes;
use super::verdict::Verdict;
use super::{Between, Step, Way};
use std::collections::BTreeSet;
use trace::{Contact, Log, Reach};

/// What is needed to tell a chain.
pub(super) struct Ways<'a> {
    pub book: &'a Book,
    pub rows: &'a [Row],
    pub lanes: &'a Lanes<'a>,
    pub verdicts: &'a [Verdict],
}

/// Cuts looked through for palms to name: a blade never cleaned in years has cut a great many.
const LOOKED_THROUGH: usize = 2_000;

impl Ways<'_> {
    /// The way between a reached palm and its case.
    pub fn way(&self, log: &Log, reach: &Reach, palm: u32, back: bool) -> Way {
        let mut chain: Vec<Step> = reach
            .chain(log, palm)
            .iter()
            .map(|contact| self.step(contact))
            .collect();
        if !back {
            chain.reverse();
        }
        let own = reach.of(palm).map_or(0, |contact| contact.own);
        Way {
            generation: chain.len() as u32,
            when: moment(log.at(own)),
            chain,
        }
    }

    fn step(&self, contact: &Contact) -> Step {
        // ties aside, numbers follow time; where both are of one second, the giver is named first
        let back = self.rows[contact.own].at < self.rows[contact.other].at;
        let (from, to) = if back {
            (contact.own, contact.other)
        } else {
            (contact.other, contact.own)
        };
        let (left, reached) = (self.rows[from], self.rows[to]);
        let blade = &self.book.blades[left.blade as usize];
        let (cut_between, cuts_between) = self.cuts(from, to);
        Step {
            blade: blade.tag.clone(),
            blade_id: blade.id,
            from: self.tag(left),
            left: moment(left.at),
            to: self.tag(reached),
            reached: moment(reached.at),
            between: self.cleanings(left, reached),
            cut_between,
            cuts_between,
        }
    }

    fn tag(&self, row: Row) -> String {
        match row.mark() {
            Mark::Palm(palm) => self.book.palms[palm as usize].tag.clone(),
            Mark::Kind(_) => String::new(),
        }
    }

    /// Palms cut between two rows, and how many cuts.
    fn cuts(&self, from: usize, to: usize) -> (Vec<String>, usize) {
        let (left, reached) = (self.rows[from], self.rows[to]);
        let rows = self.lanes.rows(left.blade, left.at, reached.at);
        let cleanings = self.lanes.cleanings(left.blade, left.at, reached.at).len();
        let (mut seen, mut tags) = (BTreeSet::new(), Vec::new());
        for row in rows.iter().take(LOOKED_THROUGH) {
            let number = *row as usize;
            let Mark::Palm(palm) = self.rows[number].mark() else {
                continue;
            };
            if number != from && number != to && seen.insert(palm) {
                tags.push(self.book.palms[palm as usize].tag.clone());
            }
            if tags.len() == Step::MOST_BETWEEN {
                break;
            }
        }
        (tags, rows.len() - cleanings - 2)
    }

    fn cleanings(&self, left: Row, reached: Row) -> Vec<Between> {
        let all = self.lanes.cleanings(left.blade, left.at, reached.at);
        let skip = all.len().saturating_sub(Step::MOST_BETWEEN);
        all[skip..]
            .iter()
            .filter_map(|number| {
                let row = self.rows[*number as usize];
                let Mark::Kind(kind) = row.mark() else {
                    return None;
                };
                let cleaned = &self.book.kinds[kind as usize];
                Some(Between {
                    at: moment(row.at),
                    agent: cleaned.agent.clone(),
                    strength_pct: cleaned.strength_pct,
                    contact_min: cleaned.contact_min,
                    passed: self.verdicts[kind as usize].passed(),
                })
            })
            .collect()
    }
}
