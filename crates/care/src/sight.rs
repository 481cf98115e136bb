//! What a rule looks at.

use crate::case::{CrownFacts, Grounds};
use crate::cautions::LAST;
use crate::judge::Judgement;
use crate::rule::{Say, cite};
use model::state::Hold;
use model::{Day, Finding, Inspection, Knowledge, Palm, SourceKey, Spear, Species};

/// One stem as a rule sees it: a [`crate::CutCase`] whose reading has become plain [`CrownFacts`].
#[derive(Clone, Copy)]
pub struct Sight<'a> {
    /// The palm.
    pub palm: &'a Palm,
    /// Its species row, if known.
    pub species: Option<&'a Species>,
    /// This stem's inspections, oldest first, none after `today`.
    pub inspections: &'a [Inspection],
    /// The crown in plain numbers.
    pub crown: CrownFacts,
    /// Holds set by people.
    pub holds: &'a [Hold],
    /// Today.
    pub today: Day,
    /// Next visit after this one.
    pub next_visit: Option<Day>,
    /// What ails the palm by the signs of the last look, if it was judged.
    pub judgement: Option<&'a Judgement>,
    /// What is going on around the palm.
    pub grounds: Grounds,
    /// Rules, cautions and their sources.
    pub knowledge: &'a Knowledge,
}

impl<'a> Sight<'a> {
    /// A finding with the sources of the rows it stands on.
    pub fn say(&self, say: &Say) -> Finding {
        let mut finding = Finding::new(say.code, say.severity);
        finding.practice = say.practice;
        for key in say.cites {
            let (sources, practice) = cite(self.knowledge, key);
            // the sentence that ends every caution is no ground of what the caution says
            finding.practice |= practice && *key != LAST;
            add_new(&mut finding.sources, sources.cloned());
        }
        add_new(
            &mut finding.sources,
            say.direct.iter().map(|k| SourceKey::new(k)),
        );
        finding.conflicts = say.conflicts.to_vec();
        finding
    }

    /// First word of the botanical name, also where the row is missing but the keeper wrote a name.
    pub fn genus(&self) -> &'a str {
        let name = self
            .species
            .map_or(self.palm.species.as_str(), |s| s.name.as_str());
        name.split_whitespace().next().unwrap_or("")
    }

    /// The botanical name of the row, or as the keeper wrote it.
    pub fn name(&self) -> &'a str {
        self.species
            .map_or(self.palm.species.trim(), |s| s.name.as_str())
    }

    /// A smooth shaft of sheaths below the crown, as far as is known.
    pub fn crownshaft(&self) -> bool {
        self.species.and_then(|s| Species::known(&s.crownshaft)) == Some(true)
    }

    /// Whether the latest inspection notes this sign.
    pub fn sign(&self, key: &str) -> bool {
        self.inspections
            .last()
            .is_some_and(|i| i.signs.iter().any(|s| s == key))
    }

    /// The spear as last seen.
    pub fn spear(&self) -> Option<Spear> {
        self.inspections.iter().rev().find_map(|i| i.spear)
    }

    /// Holds in force today.
    pub fn holds_in_force(&self) -> impl Iterator<Item = &'a Hold> + use<'a> {
        let today = self.today;
        self.holds
            .iter()
            .filter(move |h| h.until.is_none_or(|until| until >= today) && h.since.day() <= today)
    }

    /// The hold in force with this reason.
    pub fn hold(&self, reason: &str) -> Option<&'a Hold> {
        self.holds_in_force().find(|h| h.reason == reason)
    }

    /// Month of today as the northern half of the world counts it: the south is shifted by half a year.
    pub fn northern_month(&self) -> i8 {
        let month = self.today.ymd().1;
        match self.palm.position {
            Some(p) if p.lat < 0.0 => (month + 5) % 12 + 1,
            _ => month,
        }
    }
}

fn add_new(list: &mut Vec<SourceKey>, more: impl Iterator<Item = SourceKey>) {
    for source in more {
        if !list.contains(&source) {
            list.push(source);
        }
    }
}
