//! Palms with their inspections, compact and sorted.

use super::look::Look;
use crate::office::climate_nearby;
use crown::{Prior, StemCase};
use model::knowledge::Named;
use model::{Arg, Climate, Day, Finding, Inspection, Knowledge, Palm, Severity, Species};
use std::collections::{BTreeMap, HashMap};

/// A species as one or more palms name it.
#[derive(Clone, Debug)]
pub struct Kind<'k> {
    /// Its row, if the name resolves.
    pub species: Option<&'k Species>,
    /// The other species of the genus.
    pub relatives: Vec<&'k Species>,
    /// What is to say of the name: another name is used, it is not known, it is missing.
    pub finding: Option<Finding>,
}

impl<'k> Kind<'k> {
    /// Resolves a name as written.
    pub fn named(knowledge: &'k Knowledge, written: &str) -> Kind<'k> {
        let code = |code, severity| {
            Finding::new(code, severity).with("found", Arg::Text(written.to_owned()))
        };
        if written.is_empty() {
            let finding = Some(Finding::new("species-missing", Severity::Caution));
            return Kind {
                species: None,
                relatives: Vec::new(),
                finding,
            };
        }
        let (species, finding) = match knowledge.species_named(written) {
            Named::Exact(s) => (Some(s), None),
            Named::Synonym(s) => {
                let finding = code("species-other-name", Severity::Info)
                    .with("name", Arg::Text(s.name.clone()));
                (Some(s), Some(finding))
            }
            Named::Near(names) => {
                let offer = Arg::Text(names.join(" / "));
                (
                    None,
                    Some(code("species-unknown-near", Severity::Act).with("offer", offer)),
                )
            }
            Named::Unknown => (None, Some(code("species-unknown", Severity::Act))),
        };
        let genus = species.map_or_else(
            || written.split_whitespace().next().unwrap_or(""),
            |s| s.genus(),
        );
        let own = species.map(|s| s.name.as_str());
        let relatives = knowledge
            .relatives(genus)
            .into_iter()
            .filter(|s| Some(s.name.as_str()) != own)
            .collect();
        Kind {
            species,
            relatives,
            finding,
        }
    }
}

/// Takes palms, inspections and climates in as they are read.
pub struct Gather<'k> {
    yard: Yard<'k>,
    kind_at: HashMap<String, u32>,
}

/// Signs of one look.
#[derive(Clone, Default)]
struct Signs {
    seen: Vec<String>,
    absent: Vec<String>,
}

/// Palms in the order they came, each with its inspections by stem and date.
pub struct Yard<'k> {
    knowledge: &'k Knowledge,
    palms: Vec<Palm>,
    kind_of: Vec<u32>,
    kinds: Vec<Kind<'k>>,
    looks: Vec<Look>,
    signs: HashMap<(u32, u16, Day), Signs>,
    starts: Vec<u32>,
    climates: BTreeMap<String, Climate>,
}

impl<'k> Gather<'k> {
    /// Nothing yet.
    pub fn new(knowledge: &'k Knowledge) -> Gather<'k> {
        let yard = Yard {
            knowledge,
            palms: Vec::new(),
            kind_of: Vec::new(),
            kinds: Vec::new(),
            looks: Vec::new(),
            signs: HashMap::new(),
            starts: Vec::new(),
            climates: BTreeMap::new(),
        };
        Gather {
            yard,
            kind_at: HashMap::new(),
        }
    }

    /// One more palm; its notes and unknown columns are not kept, no reading needs them.
    pub fn palm(&mut self, mut palm: Palm) {
        let next = self.yard.kinds.len() as u32;
        let kind = *self.kind_at.entry(palm.species.clone()).or_insert(next);
        if kind == next {
            self.yard
                .kinds
                .push(Kind::named(self.yard.knowledge, &palm.species));
        }
        palm.notes = String::new();
        palm.extra.clear();
        self.yard.kind_of.push(kind);
        self.yard.palms.push(palm);
    }

    /// One more inspection of the palm with this index.
    pub fn inspection(&mut self, palm: u32, inspection: Inspection) {
        self.yard.looks.push(Look::pack(palm, &inspection));
        let (seen, absent) = (inspection.signs, inspection.absent);
        if !seen.is_empty() || !absent.is_empty() {
            let of = (palm, inspection.stem, inspection.date);
            self.yard.signs.insert(of, Signs { seen, absent });
        }
    }

    /// Climates by site.
    pub fn climates(&mut self, climates: BTreeMap<String, Climate>) {
        self.yard.climates = climates;
    }

    /// Sorts what was taken in.
    pub fn done(self) -> Yard<'k> {
        let mut yard = self.yard;
        yard.looks.sort_unstable();
        let palms = yard.palms.len() as u32;
        yard.starts = (0..=palms)
            .map(|p| yard.looks.partition_point(|l| l.palm < p) as u32)
            .collect();
        yard
    }
}

impl<'k> Yard<'k> {
    /// Number of palms.
    pub fn len(&self) -> usize {
        self.palms.len()
    }

    /// Whether there is no palm.
    pub fn is_empty(&self) -> bool {
        self.palms.is_empty()
    }

    /// The tables the names were resolved with.
    pub fn knowledge(&self) -> &'k Knowledge {
        self.knowledge
    }

    /// A palm by index.
    pub fn palm(&self, index: usize) -> &Palm {
        &self.palms[index]
    }

    /// Index of the palm with this tag.
    pub fn tagged(&self, tag: &str) -> Option<usize> {
        self.palms.iter().position(|p| p.tag == tag)
    }

    /// What its species name resolved to.
    pub fn kind(&self, index: usize) -> &Kind<'k> {
        &self.kinds[self.kind_of[index] as usize]
    }

    /// The climate of its site as given, else that of the nearest known place.
    pub fn climate(&self, index: usize) -> Option<&Climate> {
        let palm = &self.palms[index];
        self.climates
            .get(&palm.site)
            .or_else(|| climate_nearby(palm))
    }

    /// Its inspections by stem and date, without notes.
    pub fn inspections(&self, index: usize) -> Vec<Inspection> {
        let looks = &self.looks[self.starts[index] as usize..self.starts[index + 1] as usize];
        let signs = |l: &Look| {
            self.signs
                .get(&(l.palm, l.stem, l.date))
                .cloned()
                .unwrap_or_default()
        };
        looks
            .iter()
            .map(|l| {
                let Signs { seen, absent } = signs(l);
                Inspection {
                    signs: seen,
                    absent,
                    ..l.unpack()
                }
            })
            .collect()
    }
}

/// The cases of all stems of a palm, looked at or not.
pub fn stem_cases(
    palm: &Palm,
    kind: &Kind,
    inspections: &[Inspection],
    climate: Option<&Climate>,
) -> Vec<(u16, StemCase)> {
    let prior = Prior::of(palm, kind.species, &kind.relatives);
    let case = |stem| StemCase::of(palm, stem, inspections, prior.clone(), climate);
    (1..=palm.stems.max(1))
        .map(|stem| (stem, case(stem)))
        .collect()
}
