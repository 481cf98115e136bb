//! Scenes for tests: one stem with plain facts, everything adjustable.
#![allow(dead_code)] // every test takes its own part of it

use care::judge::{HoldAdvice, Judgement};
use care::rule::{Limit, Rule};
use care::{CrownFacts, Grounds, Settled, Sight};
use model::knowledge::HoldKind;
use model::state::Hold;
use model::{Day, EntryId, Inspection, Knowledge, Metres, Moment, Palm, Species};

/// A stem and all that rules are told of it.
#[derive(Debug)]
pub struct Scene {
    pub palm: Palm,
    pub species: Option<&'static Species>,
    pub inspections: Vec<Inspection>,
    pub crown: CrownFacts,
    pub holds: Vec<Hold>,
    pub today: Day,
    pub next_visit: Option<Day>,
    pub judgement: Option<Judgement>,
    pub grounds: Grounds,
}

impl Scene {
    /// A full, fed, settled crown of 40 (38 green, 2 yellowing) with 3 dead fronds, looked at today; 12 fronds a year;
    /// wires noted far away, trunk 3 m; the next visit a year from now.
    pub fn full(species: &str) -> Scene {
        let today = Day::from_ymd(2026, 6, 15).unwrap();
        Scene {
            palm: Palm {
                tag: "T1".into(),
                species: species.into(),
                stems: 1,
                trunk_height: Some(Metres(3.0)),
                wires: Some(Metres(60.0)),
                ..Palm::default()
            },
            species: Knowledge::embedded().species_named(species).species(),
            inspections: vec![Inspection {
                green: Some(38),
                yellowing: Some(2),
                brown: Some(3),
                ..Inspection::blank(1, today)
            }],
            crown: CrownFacts {
                green: 38,
                yellowing: 2,
                brown: 3,
                counted_days_ago: Some(0),
                below_level: 16,
                probabilities: [0.9, 0.0, 0.08, 0.02],
                regrowth: Some(12),
                fronds_per_year: 12.0,
                full_crown: 40.0,
                settled: Settled::NeverMoved,
            },
            holds: Vec::new(),
            today,
            next_visit: Some(today.plus(365)),
            judgement: None,
            grounds: Grounds::default(),
        }
    }

    /// As a rule sees it.
    pub fn sight(&self) -> Sight<'_> {
        Sight {
            palm: &self.palm,
            species: self.species,
            inspections: &self.inspections,
            crown: self.crown,
            holds: &self.holds,
            today: self.today,
            next_visit: self.next_visit,
            judgement: self.judgement.as_ref(),
            grounds: self.grounds,
            knowledge: Knowledge::embedded(),
        }
    }

    /// The latest look, to change it.
    pub fn look(&mut self) -> &mut Inspection {
        self.inspections.last_mut().unwrap()
    }

    /// Sets a hold since yesterday.
    pub fn hold(&mut self, reason: &str) {
        self.holds.push(Hold {
            entry: EntryId(testkit::id(1, 1)),
            reason: reason.into(),
            since: Moment::at_midnight(self.today.plus(-1)),
            until: None,
            note: String::new(),
        });
    }

    /// Judged, with this hold called for.
    pub fn suspected(&mut self, kind: HoldKind, disorder: &'static str, probability: f64) {
        let judgement = self.judgement.get_or_insert_default();
        judgement.holds.push(HoldAdvice {
            kind,
            probability,
            because: vec![disorder],
            likely: true,
            sign: None,
        });
    }

    /// Moved so many days ago and not established.
    pub fn moved_days_ago(&mut self, days: i32) {
        let moved_on = self.today.plus(-days);
        self.palm.moved_on = Some(moved_on);
        self.crown.settled = Settled::NotYet {
            moved_on,
            assumed_by: moved_on.plus(540),
        };
    }
}

/// Codes a rule says of a scene.
pub fn codes(rule: &Rule, scene: &Scene) -> Vec<&'static str> {
    (rule.check)(&scene.sight())
        .findings
        .iter()
        .map(|f| f.code)
        .collect()
}

/// The limit a rule sets in a scene.
pub fn limit(rule: &Rule, scene: &Scene) -> Limit {
    (rule.check)(&scene.sight()).limit
}
