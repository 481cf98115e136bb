//! Entries joined to threads of corrections, and threads to the palms, holds, blades and baths they speak of.

use super::fact::{Fact, Line, Order, What};
use super::work_fold::Topic;
use crate::blade::BladeId;
use crate::entry::{Entry, EntryId};
use crate::palm::{Inspection, PalmId};
use std::collections::{BTreeMap, BTreeSet};

/// Where a thread takes effect: with a palm, a blade, both (a cut), a hold named by its thread, a bath likewise.
#[derive(Clone, PartialEq, Eq, Default)]
pub(super) struct Places {
    pub palm: Option<PalmId>,
    pub hold: Option<EntryId>,
    pub blade: Option<BladeId>,
    pub bath: Option<EntryId>,
    pub topic: Option<Topic>,
    /// Palms that the plan of a round names.
    pub stops: BTreeSet<PalmId>,
}

/// All facts, and how they hang together. Holds only what follows from the set of entries, never from their arrival.
#[derive(Default)]
pub(super) struct Threads {
    facts: BTreeMap<EntryId, Fact>,
    replaced_by: BTreeMap<EntryId, BTreeSet<EntryId>>,
    about: BTreeMap<PalmId, BTreeSet<EntryId>>,
    lifts: BTreeMap<EntryId, BTreeSet<EntryId>>,
    with_blade: BTreeMap<BladeId, BTreeSet<EntryId>>,
    in_bath: BTreeMap<EntryId, BTreeSet<EntryId>>,
    on_topic: BTreeMap<Topic, BTreeSet<EntryId>>,
    planned_at: BTreeMap<PalmId, BTreeSet<EntryId>>,
}

/// What an entry touched: to be folded anew.
#[derive(Default)]
pub(super) struct Touched {
    pub palms: BTreeSet<PalmId>,
    pub blades: BTreeSet<BladeId>,
    pub baths: BTreeSet<EntryId>,
    pub topics: BTreeSet<Topic>,
    pub threads: BTreeSet<EntryId>,
}

impl Threads {
    /// Takes an entry in and marks what it touches. An id already there is left as it is.
    pub fn insert(&mut self, entry: Entry, touched: &mut Touched) {
        let id = entry.id;
        if self.facts.contains_key(&id) {
            return;
        }
        // Before: the entries that replace this one (they came first) hang on its id, and its target has a thread.
        let before: BTreeSet<EntryId> = [Some(id), entry.replaces.map(|t| self.root(t))]
            .into_iter()
            .flatten()
            .collect();
        for thread in before {
            self.unplace(thread, touched);
        }
        if let Some(target) = entry.replaces {
            self.replaced_by.entry(target).or_default().insert(id);
        }
        self.facts.insert(id, Fact::of(entry));
        let root = self.root(id);
        if root != id {
            self.move_references(id, root, touched);
        }
        self.place(root, touched);
    }

    /// The name of the thread an id belongs to: its first entry, or the id itself if nothing is known of it.
    /// Entries that replace each other in a circle (no honest writer makes them) are named by the smallest of them.
    pub fn root(&self, id: EntryId) -> EntryId {
        let up = |id: EntryId| self.facts.get(&id).and_then(|fact| fact.replaces);
        let mut at = id;
        let mut seen = BTreeSet::new();
        while let Some(target) = up(at) {
            if !seen.insert(at) {
                return self.smallest_in_circle(at);
            }
            at = target;
        }
        at
    }

    fn smallest_in_circle(&self, start: EntryId) -> EntryId {
        let mut smallest = start;
        let mut at = start;
        while let Some(next) = self.facts.get(&at).and_then(|fact| fact.replaces) {
            smallest = smallest.min(next);
            at = next;
            if at == start {
                break;
            }
        }
        smallest
    }

    /// Puts the look of an entry back, or (`None`) leaves it to the palm's record from here on.
    pub fn set_look(&mut self, id: EntryId, to: Option<&Inspection>) {
        if let Some(Fact {
            what: What::Inspected(_, look),
            ..
        }) = self.facts.get_mut(&id)
        {
            *look = to.map(|look| Box::new(look.clone()));
        }
    }

    /// Whether an entry is in.
    pub fn knows(&self, id: EntryId) -> bool {
        self.facts.contains_key(&id)
    }

    /// Whether the first entry of an id's thread is of some kind.
    pub fn began_as(&self, id: EntryId, kind: impl Fn(&What) -> bool) -> bool {
        self.facts
            .get(&self.root(id))
            .is_some_and(|fact| kind(&fact.what))
    }

    /// Whether a thread has no first entry because its entries replace each other in a circle.
    pub fn is_circle(&self, root: EntryId) -> bool {
        self.facts
            .get(&root)
            .is_some_and(|fact| fact.replaces.is_some())
    }

    /// What stands at the end of a thread; `None` for a circle and for an id nobody has written.
    pub fn standing(&self, root: EntryId) -> Option<(EntryId, &Fact)> {
        let id = *self.path(root).last()?;
        self.facts.get(&id).map(|fact| (id, fact))
    }

    /// From a thread's first entry to the one that stands: of several replacements the one written last.
    fn path(&self, root: EntryId) -> Vec<EntryId> {
        if self.is_circle(root) {
            return Vec::new();
        }
        let written = |id: &EntryId| (self.facts.get(id).map(|fact| fact.written_at), *id);
        let mut path = vec![root];
        let mut at = root;
        while let Some(last) = self
            .replaced_by
            .get(&at)
            .and_then(|by| by.iter().max_by_key(|id| written(id)))
        {
            path.push(*last);
            at = *last;
        }
        path
    }

    /// Where a thread takes effect. One that was withdrawn stays where it was, for the history.
    pub fn places_of(&self, root: EntryId) -> Places {
        self.path(root)
            .iter()
            .rev()
            .filter_map(|id| self.facts.get(id))
            .find_map(|fact| self.places(root, &fact.what))
            .unwrap_or_default()
    }

    /// The places that a fact of a thread names; `None` if it says nothing of its own.
    fn places(&self, root: EntryId, what: &What) -> Option<Places> {
        let mut places = Places::default();
        match what {
            What::Registered(_) => places.palm = Some(PalmId(root.0)),
            What::Changed(palm, _) | What::Removed(palm, _) | What::Inspected(palm, _) => {
                places.palm = Some(self.palm_named(*palm));
            }
            What::HoldSet(palm, _) | What::Noted(palm, _) => {
                places.palm = Some(self.palm_named(*palm));
            }
            What::HoldLifted(hold) => places.hold = Some(self.root(*hold)),
            What::BladeRegistered(_) => places.blade = Some(BladeId(root.0)),
            What::BladeChanged(blade, _)
            | What::BladeRetired(blade, _)
            | What::BladeLent(blade, _)
            | What::BladeReturned(blade) => places.blade = Some(self.blade_named(*blade)),
            What::Cut(cut) => {
                places.palm = Some(self.palm_named(cut.palm));
                places.blade = Some(self.blade_named(cut.blade));
            }
            What::BathMixed(_) => places.bath = Some(root),
            What::Cleaned(cleaning) => {
                places.blade = Some(self.blade_named(cleaning.blade));
                places.bath = cleaning.bath.map(|bath| self.root(bath));
            }
            What::Tended(palm, _) | What::LinkGiven(palm, _) => {
                places.palm = Some(self.palm_named(*palm));
            }
            What::Site(site) => places.topic = Some(Topic::Site(site.name.as_str().into())),
            What::Crew(crew) => places.topic = Some(Topic::Crew(crew.name.as_str().into())),
            What::Prices(_) => places.topic = Some(Topic::Prices),
            What::Weather(day) => places.topic = Some(Topic::Weather(day.site.as_str().into())),
            What::RoundPlanned(plan) => {
                places.topic = Some(Topic::Round(root));
                let stops = plan.stops.iter().map(|stop| self.palm_named(stop.palm));
                places.stops = stops.collect();
            }
            What::RoundNoted(note) => {
                places.palm = note.palm().map(|palm| self.palm_named(palm));
                places.topic = Some(Topic::Round(self.root(note.round)));
            }
            What::Withdrawn | What::NotUnderstood { .. } => return None,
        }
        Some(places)
    }

    /// A palm by the id of any entry of its registration: the one name it goes by.
    pub fn palm_named(&self, palm: PalmId) -> PalmId {
        PalmId(self.root(EntryId(palm.0)).0)
    }

    /// A blade by the id of any entry of its registration: the one name it goes by.
    pub fn blade_named(&self, blade: BladeId) -> BladeId {
        BladeId(self.root(EntryId(blade.0)).0)
    }

    fn place(&mut self, root: EntryId, touched: &mut Touched) {
        let places = self.places_of(root);
        if let Some(palm) = places.palm {
            self.about.entry(palm).or_default().insert(root);
        }
        if let Some(hold) = places.hold {
            self.lifts.entry(hold).or_default().insert(root);
        }
        if let Some(blade) = places.blade {
            self.with_blade.entry(blade).or_default().insert(root);
        }
        if let Some(bath) = places.bath {
            self.in_bath.entry(bath).or_default().insert(root);
        }
        if let Some(topic) = places.topic {
            self.on_topic.entry(topic).or_default().insert(root);
        }
        for palm in places.stops {
            self.planned_at.entry(palm).or_default().insert(root);
        }
        self.touch(root, touched);
    }

    fn unplace(&mut self, root: EntryId, touched: &mut Touched) {
        self.touch(root, touched);
        let places = self.places_of(root);
        if let Some(palm) = places.palm {
            remove(&mut self.about, palm, root);
        }
        if let Some(hold) = places.hold {
            remove(&mut self.lifts, hold, root);
        }
        if let Some(blade) = places.blade {
            remove(&mut self.with_blade, blade, root);
        }
        if let Some(bath) = places.bath {
            remove(&mut self.in_bath, bath, root);
        }
        if let Some(topic) = places.topic {
            remove(&mut self.on_topic, topic, root);
        }
        for palm in places.stops {
            remove(&mut self.planned_at, palm, root);
        }
    }

    /// Marks a thread and its places; for a lifting the palm of the hold, for a bath the blades cleaned in it.
    fn touch(&self, root: EntryId, touched: &mut Touched) {
        touched.threads.insert(root);
        let places = self.places_of(root);
        touched.palms.extend(places.palm);
        touched.blades.extend(places.blade);
        touched.baths.extend(places.bath);
        touched.topics.extend(places.topic);
        if let Some(hold) = places.hold.filter(|hold| *hold != root) {
            touched.threads.insert(hold);
            touched.palms.extend(self.places_of(hold).palm);
        }
        // Whether it is a bath may change with this very thread: what was cleaned in it looks again.
        let cleaned = self.in_bath.get(&root).into_iter().flatten();
        touched
            .blades
            .extend(cleaned.filter_map(|cleaning| self.places_of(*cleaning).blade));
    }

    /// An id turned out to belong to another thread: what spoke of it speaks of that thread.
    fn move_references(&mut self, from: EntryId, to: EntryId, touched: &mut Touched) {
        let mut moved = BTreeSet::new();
        if let Some(about) = self.about.remove(&PalmId(from.0)) {
            touched.palms.extend([PalmId(from.0), PalmId(to.0)]);
            moved.extend(&about);
            self.about.entry(PalmId(to.0)).or_default().extend(about);
        }
        if let Some(lifts) = self.lifts.remove(&from) {
            touched.threads.extend([from, to]);
            touched.threads.extend(&lifts);
            self.lifts.entry(to).or_default().extend(lifts);
        }
        if let Some(with) = self.with_blade.remove(&BladeId(from.0)) {
            touched.blades.extend([BladeId(from.0), BladeId(to.0)]);
            moved.extend(&with);
            self.with_blade
                .entry(BladeId(to.0))
                .or_default()
                .extend(with);
        }
        if let Some(inside) = self.in_bath.remove(&from) {
            touched.baths.extend([from, to]);
            moved.extend(&inside);
            self.in_bath.entry(to).or_default().extend(inside);
        }
        let stale = Topic::Round(from);
        if let Some(noted) = self.on_topic.remove(&stale) {
            touched.topics.extend([stale, Topic::Round(to)]);
            moved.extend(&noted);
            self.on_topic
                .entry(Topic::Round(to))
                .or_default()
                .extend(noted);
        }
        if let Some(planned) = self.planned_at.remove(&PalmId(from.0)) {
            moved.extend(&planned);
            self.planned_at
                .entry(PalmId(to.0))
                .or_default()
                .extend(planned);
        }
        // A cut stands with its palm, too, and tells its name; so does a cleaning with its bath.
        for thread in moved {
            self.touch(thread, touched);
        }
    }

    /// Threads that speak of a palm, named by its thread.
    pub fn about(&self, palm: PalmId) -> impl Iterator<Item = EntryId> {
        self.about.get(&palm).into_iter().flatten().copied()
    }

    /// Threads that speak of a blade, named by its thread.
    pub fn with_blade(&self, blade: BladeId) -> impl Iterator<Item = EntryId> {
        self.with_blade.get(&blade).into_iter().flatten().copied()
    }

    /// Threads that speak of a bath, named by its thread: its own, and what was cleaned in it.
    pub fn in_bath(&self, bath: EntryId) -> impl Iterator<Item = EntryId> {
        self.in_bath.get(&bath).into_iter().flatten().copied()
    }

    /// Threads that speak of a topic.
    pub fn on_topic(&self, topic: &Topic) -> impl Iterator<Item = EntryId> {
        self.on_topic.get(topic).into_iter().flatten().copied()
    }

    /// What stands of threads, in the order in which it takes effect.
    pub fn lines(&self, roots: impl Iterator<Item = EntryId>) -> Vec<Line<'_>> {
        let line = |root| {
            let (id, fact) = self.standing(root)?;
            Some(Line { root, id, fact })
        };
        let mut lines: Vec<Line> = roots.filter_map(line).collect();
        lines.sort_unstable_by_key(Line::order);
        lines
    }

    /// Threads that lift a hold, named by its thread.
    pub fn lifts(&self, hold: EntryId) -> impl Iterator<Item = EntryId> {
        self.lifts.get(&hold).into_iter().flatten().copied()
    }

    /// Whether a hold was lifted by a thread that stands.
    pub fn is_lifted(&self, hold: EntryId) -> bool {
        self.lifts(hold).any(|lift| {
            matches!(
                self.standing(lift),
                Some((
                    _,
                    Fact {
                        what: What::HoldLifted(_),
                        ..
                    }
                ))
            )
        })
    }

    /// Every entry of a thread, with the order in which it takes effect.
    pub fn members(&self, root: EntryId) -> Vec<Order> {
        let mut ids = vec![root];
        let mut done = 0;
        while let Some(id) = ids.get(done) {
            if let Some(by) = self.replaced_by.get(id) {
                ids.extend(by.iter().filter(|id| **id != root));
            }
            done += 1;
        }
        ids.iter()
            .filter_map(|id| {
                self.facts
                    .get(id)
                    .map(|fact| (fact.at, fact.written_at, *id))
            })
            .collect()
    }
}

fn remove<K: Ord>(sets: &mut BTreeMap<K, BTreeSet<EntryId>>, key: K, root: EntryId) {
    if let Some(set) = sets.get_mut(&key) {
        set.remove(&root);
        if set.is_empty() {
            sets.remove(&key);
        }
    }
}
