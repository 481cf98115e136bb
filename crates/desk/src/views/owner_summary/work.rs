//! What was done for the palms in the period, one line of work for each palm, day and kind.

use super::Scene;
use crate::blades::dids;
use crate::clock::local_day;
use care::clean::{Did, Ready, ready};
use model::state::{Outcome, PalmCut};
use model::{BladeId, Day, Knowledge, Moment, PalmId, PalmRecord, Tending};
use std::collections::{BTreeMap, BTreeSet};

/// What kind of work.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) enum Kind {
    /// Something was cut off.
    Cut,
    /// Dug and planted elsewhere.
    Moved,
    /// Fed.
    Fed,
    /// Watered.
    Watered,
    /// Looked at.
    Looked,
}

/// Whether the blade was clean for this palm, as the records have it; the worst last.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) enum Blade {
    /// Cleaned well enough since it cut another palm.
    Clean,
    /// Nothing tells.
    Unknown,
    /// It had cut another palm, and no cleaning is noted since.
    NotNoted,
    /// The record says that it was not clean.
    Dirty,
}

/// Fronds and stalks that came off.
#[derive(Clone, Copy, PartialEq, Eq, Default, Debug)]
pub(super) struct Off {
    /// Green, yellowing, brown fronds and stalks.
    pub parts: [u32; 4],
    /// Palms of which not all that came off was counted.
    pub uncounted: usize,
}

impl Off {
    /// Fronds of all colours.
    pub fn fronds(&self) -> u32 {
        self.parts[..3].iter().sum()
    }

    /// All that came off in some works.
    pub fn of<'w>(works: impl IntoIterator<Item = &'w Work>) -> Off {
        let mut sum = Off::default();
        works.into_iter().for_each(|work| sum.add(&work.off));
        sum
    }

    fn add(&mut self, other: &Off) {
        for (sum, part) in self.parts.iter_mut().zip(other.parts) {
            *sum += part;
        }
        self.uncounted += other.uncounted;
    }
}

/// One palm, one day, one kind of work.
#[derive(Clone, Debug)]
pub(super) struct Work {
    pub kind: Kind,
    pub day: Day,
    pub palm: PalmId,
    pub site: String,
    /// Whether the palm still stands in the register.
    pub stands: bool,
    pub off: Off,
    /// Who did it, as far as noted.
    pub crews: BTreeSet<String>,
    /// The worst of its blades; `None` where no blade is noted.
    pub blade: Option<Blade>,
    /// What it was fed.
    pub products: BTreeSet<String>,
}

/// All work of the period.
pub(super) fn all(scene: &Scene) -> Vec<Work> {
    let rounds = rounds(scene);
    let mut blades = Blades::default();
    let mut all = Vec::new();
    for record in scene.all() {
        let mut own = of_palm(scene, record, &mut blades);
        for round in rounds.get(&record.id).into_iter().flatten() {
            on_round(record, round, &mut own);
        }
        all.extend(own.into_values());
    }
    all
}

type Own = BTreeMap<(Day, Kind), Work>;

fn of_palm<'s>(scene: &'s Scene, record: &'s PalmRecord, blades: &mut Blades<'s>) -> Own {
    let mut own = Own::new();
    cuts(scene, record, blades, &mut own);
    tended(scene, record, &mut own);
    for look in &record.inspections {
        if scene.period.holds(look.date) {
            at(&mut own, record, look.date, Kind::Looked);
        }
    }
    own
}

fn at<'o>(own: &'o mut Own, record: &PalmRecord, day: Day, kind: Kind) -> &'o mut Work {
    own.entry((day, kind)).or_insert_with(|| Work {
        kind,
        day,
        palm: record.id,
        site: record.palm.site.clone(),
        stands: record.stands(),
        off: Off::default(),
        crews: BTreeSet::new(),
        blade: None,
        products: BTreeSet::new(),
    })
}

/// The cutting log; where it is silent on a day, what a look of that day says was taken off.
fn cuts<'s>(scene: &'s Scene, record: &'s PalmRecord, blades: &mut Blades<'s>, own: &mut Own) {
    let mut logged: BTreeSet<Day> = BTreeSet::new();
    for cut in &record.cuts {
        let day = local_day(cut.at);
        logged.insert(day);
        if !scene.period.holds(day) {
            continue;
        }
        let off = &cut.cut.off;
        let parts = [off.green, off.yellowing, off.brown, off.stalks];
        let blade = blades.clean_for(scene, cut);
        let work = at(own, record, day, Kind::Cut);
        work.blade = work.blade.max(Some(blade));
        note(work, parts);
        let crew = cut.cut.crew.trim();
        if !crew.is_empty() {
            work.crews.insert(crew.to_owned());
        }
    }
    for look in &record.inspections {
        let off = &look.removed;
        let parts = [off.green, off.yellowing, off.brown, None];
        let some = parts.iter().flatten().sum::<u32>() > 0;
        if some && scene.period.holds(look.date) && !logged.contains(&look.date) {
            note(at(own, record, look.date, Kind::Cut), parts);
        }
    }
    for work in own.values_mut() {
        work.off.uncounted = work.off.uncounted.min(1);
    }
}

fn note(work: &mut Work, parts: [Option<u32>; 4]) {
    work.off.uncounted += usize::from(parts.iter().all(Option::is_none));
    for (sum, part) in work.off.parts.iter_mut().zip(parts) {
        *sum += part.unwrap_or(0);
    }
}

fn tended(scene: &Scene, record: &PalmRecord, own: &mut Own) {
    for tended in &record.tended {
        let day = match &tended.what {
            Tending::Moved(moved) => moved.dug_on,
            _ => local_day(tended.at),
        };
        if !scene.period.holds(day) {
            continue;
        }
        match &tended.what {
            Tending::Moved(moved) => {
                // fronds that the cutting log has of that day are not counted twice
                let logged = own.contains_key(&(day, Kind::Cut));
                let work = at(own, record, day, Kind::Moved);
                if !logged {
                    work.off.parts[0] += moved.fronds_taken.unwrap_or(0);
                }
            }
            Tending::Watered(_) => drop(at(own, record, day, Kind::Watered)),
            Tending::Fed(fed) => {
                let work = at(own, record, day, Kind::Fed);
                work.products.insert(fed.product.clone());
            }
        }
    }
    // a move of which only the day is known stands in the palm's description
    if let Some(day) = record.palm.moved_on.filter(|day| scene.period.holds(*day)) {
        let known = own.values().any(|work| work.kind == Kind::Moved);
        if !known {
            at(own, record, day, Kind::Moved);
        }
    }
}

/// A palm that a round notes as done.
struct OnRound {
    day: Day,
    crew: String,
    cut: bool,
}

fn rounds(scene: &Scene) -> BTreeMap<PalmId, Vec<OnRound>> {
    let mut all: BTreeMap<PalmId, Vec<OnRound>> = BTreeMap::new();
    for round in scene.state.work.rounds.values() {
        for stop in &round.plan.stops {
            let Some(Outcome::Done { at, .. }) = round.outcomes.get(&stop.palm) else {
                continue;
            };
            let day = local_day(*at);
            if scene.period.holds(day) {
                let done = OnRound {
                    day,
                    crew: round.plan.crew.trim().to_owned(),
                    cut: stop.has("cut"),
                };
                all.entry(stop.palm).or_default().push(done);
            }
        }
    }
    all
}

/// A round names the crew where the log does not, and a cut that nobody logged.
fn on_round(record: &PalmRecord, round: &OnRound, own: &mut Own) {
    let day = round.day;
    let logged = own.contains_key(&(day, Kind::Cut));
    if !logged && !round.cut {
        return;
    }
    let work = at(own, record, day, Kind::Cut);
    if !logged {
        work.off.uncounted = 1;
    }
    if work.crews.is_empty() && !round.crew.is_empty() {
        work.crews.insert(round.crew.clone());
    }
}

/// What blades did, told to the rules of cleaning once for each blade.
#[derive(Default)]
struct Blades<'s> {
    dids: BTreeMap<BladeId, Vec<Did<'s>>>,
}

impl<'s> Blades<'s> {
    /// Whether the blade was clean for the palm when the cut began.
    fn clean_for(&mut self, scene: &'s Scene, cut: &PalmCut) -> Blade {
        if !cut.cut.despite.trim().is_empty() {
            return Blade::Dirty;
        }
        let Some(blade) = scene.state.blade(cut.cut.blade) else {
            return Blade::Unknown;
        };
        let dids = self
            .dids
            .entry(blade.id)
            .or_insert_with(|| dids(scene.state, blade));
        let began = cut.cut.started.unwrap_or(cut.at);
        let before = Moment(began.0 - 1);
        let (kind, known) = (blade.blade.kind, Knowledge::embedded());
        match ready(kind, dids, cut.cut.palm, &[], before, known) {
            Ready::Clean { .. } | Ready::SamePalm => Blade::Clean,
            Ready::NothingKnown | Ready::UnknownCleaning => Blade::Unknown,
            Ready::NotCleaned { .. } => Blade::NotNoted,
            Ready::Short { .. } | Ready::Blocked { .. } | Ready::BathSpent { .. } => Blade::Dirty,
        }
    }
}
