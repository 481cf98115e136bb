//! Rows of a file, judged one by one on all cores.

use super::{Judged, Told};
use crate::assess::Kind;
use crate::intake::SignsRow;
use model::{Day, Finding, Knowledge};
use std::collections::HashMap;

/// Rows of a file of signs with their names resolved, each name once.
pub struct Cases {
    as_of: Day,
    rows: Vec<(SignsRow, u32)>,
    kinds: Vec<Kind<'static>>,
    kind_at: HashMap<String, u32>,
}

impl Cases {
    /// None yet; a row without a date is judged as of this day.
    pub fn new(as_of: Day) -> Cases {
        Cases {
            as_of,
            rows: Vec::new(),
            kinds: Vec::new(),
            kind_at: HashMap::new(),
        }
    }

    /// One more row.
    pub fn add(&mut self, row: SignsRow) {
        let next = self.kinds.len() as u32;
        let kind = *self.kind_at.entry(row.species.clone()).or_insert(next);
        if kind == next {
            let knowledge = Knowledge::embedded();
            self.kinds.push(Kind::named(knowledge, &row.species));
        }
        self.rows.push((row, kind));
    }

    /// Number of rows.
    pub fn len(&self) -> usize {
        self.rows.len()
    }

    /// Whether there is no row.
    pub fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// The tag of a row.
    pub fn tag(&self, index: usize) -> &str {
        &self.rows[index].0.tag
    }

    /// What is to say of a row: of its species name, and what the judge says of the signs. What the judge says of the name
    /// is left out, since the register's way of reading names offers the nearest.
    pub fn findings<'a>(&'a self, index: usize, judged: &'a Judged) -> Vec<&'a Finding> {
        let of_signs = |f: &&Finding| !f.code.starts_with("judge-species-");
        let name = self.kind(index).finding.iter();
        name.chain(judged.judgement.findings.iter().filter(of_signs))
            .collect()
    }

    fn kind(&self, index: usize) -> &Kind<'static> {
        &self.kinds[self.rows[index].1 as usize]
    }

    /// What the judge is told of a row.
    pub fn told(&self, index: usize) -> Told {
        let row = &self.rows[index].0;
        Told {
            species: self.kind(index).species,
            species_name: row.species.clone(),
            seen: row.signs.clone(),
            absent: row.absent.clone(),
            on: Some(row.date.unwrap_or(self.as_of)),
            latitude: row.lat,
            moved_on: row.moved_on,
            planted_on: row.planted_on,
            frost_on: row.frost_on,
            storm_on: row.storm_on,
            counts: None,
        }
    }

    /// The judgement of a row.
    pub fn judge(&self, index: usize) -> Judged {
        Judged::of(self.told(index))
    }
}
