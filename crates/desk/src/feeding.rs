//! Feeding: what a palm is to be fed, what bars it, and whether the crown answered.
//!
//! `care::feeding` decides; here is what it is told: the ground under the crown, the moves, the feedings and the local
//! rules of the site as they were recorded, the shortages that the judgement thinks possible.

use crate::judging;
use crate::moved::last_move;
use crate::office::Office;
use crate::watering;
use care::Settled;
use care::feeding::{
    Answer, Crown, FeedCase, Line, MAINTENANCE, Plan, against_product, marks_stay, plan, verdict,
};
use crown::{Cut, Explanation, PalmReading, Quantiles, Reading};
use model::{
    Day, Feeding, Finding, Inspection, Knowledge, NoFeeding, Palm, PalmRecord, Span, Tending,
};
use std::sync::{Arc, Mutex, PoisonError};

/// Shortages at least so probable are planned for without being asked (the level "open" of a judgement).
pub const POSSIBLE: f64 = 0.3;
/// Feedings of so many days are held against the crown (assumed: three years, the longest that sources give).
pub const CHECKED_DAYS: i32 = 1096;

/// A feeding as it was noted.
#[derive(Clone, PartialEq, Debug)]
pub struct Noted {
    /// The entry that says so now.
    pub entry: String,
    /// The day.
    pub day: Day,
    /// What.
    pub what: Feeding,
    /// Whether the crown answered; `None` for maintenance and for what is long past.
    pub answer: Option<Answer>,
}

/// A shortage that a palm may have.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Shortage {
    /// Key of the disorders.
    pub key: &'static str,
    /// Its probability; `None`: it was fed against, or asked for.
    pub probability: Option<f64>,
}

/// A palm and all that its feeding is decided by.
#[derive(Clone, Debug)]
pub struct Fed {
    /// The palm.
    pub record: Arc<PalmRecord>,
    /// Whether it has its roots back.
    pub settled: Settled,
    /// Ground under its crown, m².
    pub crown_m2: Option<Span>,
    /// Shortages, most probable first.
    pub shortages: Vec<Shortage>,
    /// Feedings, newest first.
    pub noted: Vec<Noted>,
    /// Whether its site was described, so that rules could have been entered.
    pub site_described: bool,
    /// Today.
    pub today: Day,
    palm: Palm,
    planted_on: Option<Day>,
    rules: Vec<NoFeeding>,
    full_crown: Quantiles,
    fronds_per_year: Quantiles,
}

impl Fed {
    /// The plan.
    pub fn plan(&self) -> Plan<'static> {
        self.plan_on(self.today)
    }

    /// The plan of a day to come, as far as is known today.
    pub fn plan_on(&self, day: Day) -> Plan<'static> {
        let fed = self.fed_until(day);
        self.with_case(day, &fed, plan)
    }

    /// Whether something may be given on a day: see [`wants`].
    pub fn wants_on(&self, day: Day) -> bool {
        self.plan_on(day).lines.iter().any(wants)
    }

    /// What stands against noting a feeding of a day: a rule, a move, a feeding shortly before, a starving bag.
    /// `but` is the entry that is being corrected.
    pub fn against(&self, day: Day, product: &str, against: &str, but: &str) -> Vec<Finding> {
        let mut fed = self.noted.iter().filter(|own| own.entry != but);
        let fed: Vec<(Day, Feeding)> = fed
            .by_ref()
            .filter(|own| own.day <= day)
            .map(|own| (own.day, own.what.clone()))
            .rev()
            .collect();
        self.with_case(day, &fed, |case| against_product(case, product, against))
    }

    fn fed_until(&self, day: Day) -> Vec<(Day, Feeding)> {
        let own = self.noted.iter().rev().filter(|own| own.day <= day);
        own.map(|own| (own.day, own.what.clone())).collect()
    }

    fn with_case<T>(
        &self,
        today: Day,
        fed: &[(Day, Feeding)],
        ask: impl FnOnce(&FeedCase<'_, 'static>) -> T,
    ) -> T {
        let keys: Vec<&str> = self.shortages.iter().map(|own| own.key).collect();
        ask(&FeedCase {
            palm: &self.palm,
            crown_m2: self.crown_m2,
            settled: self.settled,
            planted_on: self.planted_on,
            fed,
            rules: &self.rules,
            shortages: &keys,
            full_crown: self.full_crown,
            fronds_per_year: self.fronds_per_year,
            today,
            knowledge: Knowledge::embedded(),
        })
    }
}

/// Whether a line of a plan is to be given on the day of the plan: nothing bars it, and it is against a shortage that was
/// not fed against yet, or due again. Maintenance that nobody began is not wanted.
pub fn wants(line: &Line) -> bool {
    let first = line.last.is_none() && line.against != MAINTENANCE;
    line.refused.is_empty() && !line.doses.is_empty() && (first || line.next.is_some())
}

/// One palm; `asked` are shortages to plan for besides. `None` if it is not in the register.
pub fn of(office: &Office, record: &Arc<PalmRecord>, asked: &[&'static str]) -> Option<Fed> {
    let reading = office.reading(record.id)?;
    from(office, record, &reading, asked)
}

/// All standing palms that may have a shortage or were fed, by site and tag. Every palm is read: this takes a while for
/// thousands.
pub fn all(office: &Office) -> Vec<Fed> {
    let register = office.state();
    let found = Mutex::new(Vec::new());
    office.readings(|id, reading| {
        let fed = register
            .palm(id)
            .and_then(|record| from(office, record, reading, &[]));
        if let Some(fed) = fed.filter(|fed| !fed.shortages.is_empty() || !fed.noted.is_empty()) {
            found
                .lock()
                .unwrap_or_else(PoisonError::into_inner)
                .push(fed);
        }
    });
    let mut found = found.into_inner().unwrap_or_else(PoisonError::into_inner);
    found.sort_by_key(|fed| (fed.palm.site.clone(), fed.palm.tag.clone()));
    found
}

fn from(
    office: &Office,
    record: &Arc<PalmRecord>,
    reading: &PalmReading,
    asked: &[&'static str],
) -> Option<Fed> {
    let (register, today) = (office.state(), office.today());
    let watered = watering::from(office, record, reading);
    let first = &reading.stems.first()?.1;
    let site = register.work.sites.get(&record.palm.site);
    let noted = noted(office, record, reading, today);
    Some(Fed {
        settled: watered.settled,
        crown_m2: watered.plan.crown_m2,
        shortages: shortages(office, record, reading, &noted, asked),
        site_described: site.is_some(),
        palm: record.palm.clone(),
        planted_on: last_move(record).and_then(|own| own.planted_on),
        rules: site.map(|own| own.no_feeding.clone()).unwrap_or_default(),
        full_crown: first.full_crown,
        fronds_per_year: first.fronds_per_year,
        record: record.clone(),
        noted,
        today,
    })
}

/// Shortages that the tables have something against.
pub fn known_shortages() -> impl Iterator<Item = &'static str> {
    let mut keys: Vec<&'static str> = Vec::new();
    for row in &Knowledge::embedded().feeding {
        let own = row.against.as_str();
        if own != MAINTENANCE && own != "*" && !keys.contains(&own) {
            keys.push(own);
        }
    }
    keys.into_iter()
}

/// Those the judgement thinks possible, then those fed against lately, then those asked for.
fn shortages(
    office: &Office,
    record: &PalmRecord,
    reading: &PalmReading,
    noted: &[Noted],
    asked: &[&'static str],
) -> Vec<Shortage> {
    let judgement = judging::in_brief(office, record, reading);
    let known: Vec<&'static str> = known_shortages().collect();
    let mut out: Vec<Shortage> = judgement
        .ranked
        .iter()
        .filter(|own| own.probability >= POSSIBLE && known.contains(&own.disorder))
        .map(|own| Shortage {
            key: own.disorder,
            probability: Some(own.probability),
        })
        .collect();
    let fed = noted.iter().filter(|own| own.answer.is_some());
    let fed = fed.filter_map(|own| known.iter().find(|key| **key == own.what.against));
    for key in fed.chain(asked.iter().filter(|key| known.contains(key))) {
        if out.iter().all(|own| own.key != *key) {
            let found = judgement.ranked.iter().find(|own| own.disorder == *key);
            out.push(Shortage {
                key,
                probability: found.map(|own| own.probability),
            });
        }
    }
    out
}

/// Feedings until today, newest first, those against a shortage with the crown's answer.
fn noted(
    office: &Office,
    record: &Arc<PalmRecord>,
    reading: &PalmReading,
    today: Day,
) -> Vec<Noted> {
    let all = record.tended.iter().rev();
    all.filter_map(|tended| match &tended.what {
        Tending::Fed(what) => Some((tended.entry, tended.at.day(), what.clone())),
        _ => None,
    })
    .filter(|(_, day, _)| *day <= today)
    .map(|(entry, day, what)| {
        let lately = today.since(day) <= CHECKED_DAYS;
        let checked = lately && !what.against.is_empty() && what.against != MAINTENANCE;
        Noted {
            entry: entry.0.to_string(),
            answer: checked.then(|| answered(office, record, reading, day, &what.against, today)),
            day,
            what,
        }
    })
    .collect()
}

/// Whether the crown of the stem looked at most has answered a feeding.
fn answered(
    office: &Office,
    record: &Arc<PalmRecord>,
    reading: &PalmReading,
    fed_on: Day,
    against: &str,
    today: Day,
) -> Answer {
    let stems = reading.stems.iter().map(|(stem, _)| *stem);
    // the lower number among equals
    let stem = stems
        .max_by_key(|stem| (record.looks(*stem).count(), core::cmp::Reverse(*stem)))
        .unwrap_or(1);
    let looks: Vec<Inspection> = record
        .looks(stem)
        .filter(|look| look.date <= today)
        .cloned()
        .collect();
    let crowns = marks_stay(against)
        .then(|| {
            let before = office.reading_on(record, fed_on);
            Some((
                crown_of(&before, stem, fed_on)?,
                crown_of(reading, stem, today)?,
            ))
        })
        .flatten();
    verdict(Knowledge::embedded(), against, fed_on, &looks, crowns)
}

fn crown_of(reading: &PalmReading, stem: u16, day: Day) -> Option<Crown> {
    let own: &Reading = &reading.stems.iter().find(|(n, _)| *n == stem)?.1;
    Some(Crown {
        live: own.forecast(Cut::NONE, day).live,
        shortfall: own.shortfall,
        hunger: own.probabilities[Explanation::Hunger.index()],
    })
}
