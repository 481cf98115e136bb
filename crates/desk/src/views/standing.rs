//! Where each palm stands: the few figures that lists and searches need, kept so that no list has to read palms anew.
//!
//! A reading is large and is made for one palm at a time; a standing is small and is kept for all. It is good as long
//! as the palm's record is the very same, its site is described as before and the day has not changed.

use super::case::StemToday;
use super::loss;
use crate::grounds::OnSite;
use crate::judging;
use crate::office::Office;
use care::Stand;
use care::judge::Judgement;
use crown::{Cut, DueWindow, Explanation, PalmReading, Reading, Rhythm};
use model::{Day, Finding, PalmId, PalmRecord, State};
use rayon::prelude::*;
use std::collections::HashMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::sync::{Arc, PoisonError, RwLock};

/// Dead fronds on a stem from which a visit is worth it: at least so many, or this share of a full crown (assumed).
pub const TIDY: (u32, f64) = (3, 0.05);
/// Dead fronds on a stem above which a visit is late: at least so many, or this share of a full crown (assumed).
pub const LIMIT: (u32, f64) = (8, 0.15);

/// From how many dead fronds on a visit is worth it, and above how many it is late, for the crown of this reading on this
/// site.
pub fn tidy_and_limit(reading: &Reading, on_site: OnSite) -> (u32, u32) {
    let of =
        |(least, share): (u32, f64)| least.max((share * reading.full_crown.q50).round() as u32);
    on_site.tidy_and_limit((of(TIDY), of(LIMIT)))
}

/// Where one palm stands on a day.
#[derive(Clone, PartialEq, Debug)]
pub struct Standing {
    /// Probability of each explanation for the whole palm.
    pub probabilities: [f64; 4],
    /// The most probable explanation; `None` while nobody has looked.
    pub explanation: Option<Explanation>,
    /// Smallest probability among the stems that what was lost is ordinary; `None` if no count can tell.
    pub tail_probability: Option<f64>,
    /// Fronds lost at the stem which that is about.
    pub lost: Option<f64>,
    /// When a visit is worth it: the earliest of the stems.
    pub due: DueWindow,
    /// Why nobody cuts; each code once.
    pub holds: Vec<Finding>,
    /// What the cut plans of all stems take.
    pub take: Cut,
    /// Whether any of that takes a lift.
    pub lift: bool,
    /// Whether a crown is reached by a lift only, whatever there is to take.
    pub high: bool,
    /// The windows to come: as it stands and after a visit on any day of the coming year.
    pub rhythm: Option<Box<Rhythm>>,
}

impl Standing {
    /// From a reading and a judgement, which may be thrown away afterwards.
    pub fn of(
        office: &Office,
        record: &PalmRecord,
        reading: &PalmReading,
        judgement: &Judgement,
    ) -> Standing {
        let today = office.today();
        let best = Explanation::ALL.into_iter().max_by(|a, b| {
            reading.probabilities[a.index()].total_cmp(&reading.probabilities[b.index()])
        });
        let mut standing = Standing {
            probabilities: reading.probabilities,
            explanation: best.filter(|_| record.inspections.iter().any(|i| i.date <= today)),
            tail_probability: None,
            lost: None,
            due: DueWindow {
                earliest: None,
                latest: None,
            },
            holds: Vec::new(),
            take: Cut::NONE,
            lift: false,
            high: false,
            rhythm: None,
        };
        for stem in StemToday::each(office, record, reading, judgement) {
            standing.add(&stem);
        }
        standing
    }

    fn add(&mut self, stem: &StemToday) {
        let (tidy, limit) = tidy_and_limit(stem.reading(), stem.on_site());
        let rhythm = stem.reading().rhythm(tidy, limit);
        let due = rhythm.now();
        self.due.earliest = first(self.due.earliest, due.earliest);
        self.due.latest = first(self.due.latest, due.latest);
        self.rhythm = Some(Box::new(match self.rhythm.take() {
            Some(other) => other.with(&rhythm),
            None => rhythm,
        }));
        if let Some(loss) = stem.reading().loss() {
            let stranger = loss
                .tail_probability
                .is_some_and(|p| self.tail_probability.is_none_or(|q| p < q));
            if stranger {
                (self.tail_probability, self.lost) = (loss.tail_probability, loss.lost);
            }
        }
        let plan = care::cut_plan(&stem.case());
        for hold in plan.holds {
            if self.holds.iter().all(|h| h.code != hold.code) {
                self.holds.push(hold);
            }
        }
        self.take.green += plan.may_take.green;
        self.take.yellowing += plan.may_take.yellowing;
        self.take.brown += plan.may_take.brown;
        let lift = matches!(plan.method.stand, Stand::Lift | Stand::LiftFromAbove);
        self.high |= lift;
        self.lift |= lift && plan.may_take != Cut::NONE;
    }

    /// Whether more was lost than ageing and move make in 19 of 20 cases.
    pub fn unusual(&self) -> bool {
        self.tail_probability.is_some_and(|p| p < loss::UNUSUAL)
    }

    /// Probability of an explanation.
    pub fn probability(&self, explanation: Explanation) -> f64 {
        self.probabilities[explanation.index()]
    }
}

fn first(a: Option<Day>, b: Option<Day>) -> Option<Day> {
    a.into_iter().chain(b).min()
}

struct Kept {
    record: Arc<PalmRecord>,
    on_site: OnSite,
    today: Day,
    standing: Arc<Standing>,
}

impl Kept {
    fn holds(&self, state: &State, record: &Arc<PalmRecord>, today: Day) -> bool {
        self.today == today
            && Arc::ptr_eq(&self.record, record)
            && self.on_site == OnSite::of(state, &record.palm)
    }
}

/// The standings of an office's palms. Share it; all methods take `&self`.
#[derive(Default)]
pub struct Standings {
    kept: RwLock<HashMap<PalmId, Kept>>,
    made: AtomicU64,
    filling: AtomicBool,
}

impl Standings {
    /// What is known already; never computes.
    pub fn peek(
        &self,
        state: &State,
        record: &Arc<PalmRecord>,
        today: Day,
    ) -> Option<Arc<Standing>> {
        let kept = self.kept.read().unwrap_or_else(PoisonError::into_inner);
        let found = kept.get(&record.id)?;
        found
            .holds(state, record, today)
            .then(|| found.standing.clone())
    }

    /// The standing of a palm, computed if it is not known.
    pub fn get(&self, office: &Office, record: &Arc<PalmRecord>) -> Option<Arc<Standing>> {
        if let Some(known) = self.peek(&office.state(), record, office.today()) {
            return Some(known);
        }
        let reading = office.reading(record.id)?;
        Some(self.keep(office, record, &reading))
    }

    fn keep(
        &self,
        office: &Office,
        record: &Arc<PalmRecord>,
        reading: &PalmReading,
    ) -> Arc<Standing> {
        let judgement = judging::in_brief(office, record, reading);
        let standing = Arc::new(Standing::of(office, record, reading, &judgement));
        self.made.fetch_add(1, Ordering::Relaxed);
        let kept = Kept {
            record: record.clone(),
            on_site: OnSite::of(&office.state(), &record.palm),
            today: office.today(),
            standing: standing.clone(),
        };
        self.kept
            .write()
            .unwrap_or_else(PoisonError::into_inner)
            .insert(record.id, kept);
        standing
    }

    /// How many standings were computed since the start.
    pub fn made(&self) -> u64 {
        self.made.load(Ordering::Relaxed)
    }

    /// Computes what is missing for the palms standing now, on all cores; one such run at a time, a second returns at
    /// once.
    pub fn fill(&self, office: &Office) {
        if self.filling.swap(true, Ordering::AcqRel) {
            return;
        }
        let (today, state) = (office.today(), office.state());
        let missing: Vec<_> = state
            .standing()
            .filter(|r| self.peek(&state, r, today).is_none())
            .collect();
        missing.par_iter().for_each(|record| {
            // one palm that cannot be read must not keep the others from their lists; its own page says so
            let _ = catch_unwind(AssertUnwindSafe(|| self.get(office, record)));
        });
        self.filling.store(false, Ordering::Release);
    }

    /// Palms standing now whose standing is not known.
    pub fn missing(&self, office: &Office) -> usize {
        let (today, state) = (office.today(), office.state());
        let kept = self.kept.read().unwrap_or_else(PoisonError::into_inner);
        let known = |r: &Arc<PalmRecord>| {
            kept.get(&r.id)
                .is_some_and(|kept| kept.holds(&state, r, today))
        };
        state.standing().filter(|r| !known(r)).count()
    }
}
