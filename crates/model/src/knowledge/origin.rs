//! From a cell of source keys to how a value is known.

use super::reader::Reader;
use super::rows::{HowSeen, Source};
use crate::sourced::{Basis, SourceKey, Sourced};
use std::collections::BTreeMap;

/// How a value is known and where from: the cell of source keys, resolved.
#[derive(Clone, PartialEq, Debug)]
pub(super) struct Origin {
    pub basis: Basis,
    pub sources: Vec<SourceKey>,
}

impl Origin {
    /// A value with this origin.
    pub fn of<T>(&self, value: T) -> Sourced<T> {
        Sourced {
            value,
            basis: self.basis,
            sources: self.sources.clone(),
        }
    }
}

/// Keys of sources to their index and whether they are memory or practice.
pub(super) struct SourceIndex<'a> {
    pub sources: &'a [Source],
    pub at: &'a BTreeMap<String, usize>,
}

impl SourceIndex<'_> {
    /// Reads a cell of source keys. `assumed` stands alone and names no source. A value is only as well known as the
    /// weakest of its sources: recalled before practice before published.
    pub fn origin(&self, reader: &mut Reader<'_>, cell: &str) -> Option<Origin> {
        if cell == "assumed" {
            return Some(Origin {
                basis: Basis::Assumed,
                sources: Vec::new(),
            });
        }
        if cell.is_empty() {
            reader.flaw("no-source", "");
            return None;
        }
        let mut origin = Origin {
            basis: Basis::Published,
            sources: Vec::new(),
        };
        for key in cell.split(';') {
            let Some(&at) = self.at.get(key) else {
                reader.flaw("unknown-source", key);
                return None;
            };
            let source = &self.sources[at];
            origin.basis = weaker(origin.basis, basis_of(source));
            origin.sources.push(SourceKey::new(&source.key));
        }
        Some(origin)
    }
}

fn basis_of(source: &Source) -> Basis {
    match (source.key.as_str(), source.how_seen) {
        ("common-practice", _) => Basis::Practice,
        (_, HowSeen::Memory) => Basis::Memory,
        (_, HowSeen::Read) => Basis::Published,
    }
}

fn weaker(a: Basis, b: Basis) -> Basis {
    let rank = |basis| match basis {
        Basis::Memory => 2,
        Basis::Practice => 1,
        _ => 0,
    };
    if rank(b) > rank(a) { b } else { a }
}
