//! Entries joined to threads of corrections, and threads to the palms and holds they speak of.

use crate::day::Moment;
use crate::entry::{Body, Entry, EntryId};
use crate::palm::{Inspection, Palm, PalmId};
use std::collections::{BTreeMap, BTreeSet};

/// An entry without what the state does not need (who, on which device), its large parts on the heap.
pub(super) struct Fact {
    pub at: Moment,
    pub written_at: Moment,
    pub replaces: Option<EntryId>,
    pub what: What,
}

/// What a fact says; the same as [`Body`]. Kept small: there are as many facts as entries.
pub(super) enum What {
    Registered(Box<Palm>),
    Changed(PalmId, Box<Palm>),
    Removed(PalmId, Box<str>),
    /// Without the look while that stands in the palm's record: most looks do, and each is kept once.
    Inspected(PalmId, Option<Box<Inspection>>),
    HoldSet(PalmId, Box<HoldWords>),
    HoldLifted(EntryId),
    Noted(PalmId, Box<str>),
    Withdrawn,
    NotUnderstood {
        kind: Box<str>,
    },
}

/// What a hold says.
pub(super) struct HoldWords {
    pub reason: String,
    pub until: Option<crate::day::Day>,
    pub note: String,
}

impl Fact {
    fn of(entry: Entry) -> Fact {
        let what = match entry.body {
            Body::PalmRegistered(palm) => What::Registered(Box::new(palm)),
            Body::PalmChanged { palm, to } => What::Changed(palm, Box::new(to)),
            Body::PalmRemoved { palm, why } => What::Removed(palm, why.into()),
            Body::Inspected { palm, inspection } => {
                What::Inspected(palm, Some(Box::new(inspection)))
            }
            Body::HoldSet {
                palm,
                reason,
                until,
                note,
            } => What::HoldSet(
                palm,
                Box::new(HoldWords {
                    reason,
                    until,
                    note,
                }),
            ),
            Body::HoldLifted { hold, .. } => What::HoldLifted(hold),
            Body::Noted { palm, text } => What::Noted(palm, text.into()),
            Body::Withdrawn { .. } => What::Withdrawn,
            Body::Unknown { kind, .. } => What::NotUnderstood { kind: kind.into() },
        };
        Fact {
            at: entry.at,
            written_at: entry.written_at,
            replaces: entry.replaces,
            what,
        }
    }
}

/// The order in which entries take effect, as [`Entry::order`].
pub(super) type Order = (Moment, Moment, EntryId);

/// Where a thread takes effect.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Place {
    /// With a palm.
    Palm(PalmId),
    /// With a hold, named by its thread.
    Hold(EntryId),
}

/// All facts, and how they hang together. Holds only what follows from the set of entries, never from their arrival.
#[derive(Default)]
pub(super) struct Threads {
    facts: BTreeMap<EntryId, Fact>,
    replaced_by: BTreeMap<EntryId, BTreeSet<EntryId>>,
    about: BTreeMap<PalmId, BTreeSet<EntryId>>,
    lifts: BTreeMap<EntryId, BTreeSet<EntryId>>,
}

/// What an entry touched: to be folded anew.
#[derive(Default)]
pub(super) struct Touched {
    pub palms: BTreeSet<PalmId>,
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
    pub fn place_of(&self, root: EntryId) -> Option<Place> {
        self.path(root)
            .iter()
            .rev()
            .filter_map(|id| self.facts.get(id))
            .find_map(|fact| match &fact.what {
                What::Registered(_) => Some(Place::Palm(PalmId(root.0))),
                What::Changed(palm, _) | What::Removed(palm, _) | What::Inspected(palm, _) => {
                    Some(self.palm_place(*palm))
                }
                What::HoldSet(palm, _) | What::Noted(palm, _) => Some(self.palm_place(*palm)),
                What::HoldLifted(hold) => Some(Place::Hold(self.root(*hold))),
                What::Withdrawn | What::NotUnderstood { .. } => None,
            })
    }

    fn palm_place(&self, palm: PalmId) -> Place {
        Place::Palm(PalmId(self.root(EntryId(palm.0)).0))
    }

    fn place(&mut self, root: EntryId, touched: &mut Touched) {
        match self.place_of(root) {
            Some(Place::Palm(palm)) => self.about.entry(palm).or_default().insert(root),
            Some(Place::Hold(hold)) => self.lifts.entry(hold).or_default().insert(root),
            None => false,
        };
        self.touch(root, touched);
    }

    fn unplace(&mut self, root: EntryId, touched: &mut Touched) {
        self.touch(root, touched);
        match self.place_of(root) {
            Some(Place::Palm(palm)) => remove(&mut self.about, palm, root),
            Some(Place::Hold(hold)) => remove(&mut self.lifts, hold, root),
            None => {}
        }
    }

    /// Marks a thread, its palm, and, for a lifting, the hold and its palm.
    fn touch(&self, root: EntryId, touched: &mut Touched) {
        touched.threads.insert(root);
        match self.place_of(root) {
            Some(Place::Palm(palm)) => drop(touched.palms.insert(palm)),
            Some(Place::Hold(hold)) if hold != root => {
                touched.threads.insert(hold);
                if let Some(Place::Palm(palm)) = self.place_of(hold) {
                    touched.palms.insert(palm);
                }
            }
            Some(Place::Hold(_)) | None => {}
        }
    }

    /// An id turned out to belong to another thread: what spoke of it speaks of that thread.
    fn move_references(&mut self, from: EntryId, to: EntryId, touched: &mut Touched) {
        if let Some(about) = self.about.remove(&PalmId(from.0)) {
            touched.palms.extend([PalmId(from.0), PalmId(to.0)]);
            self.about.entry(PalmId(to.0)).or_default().extend(about);
        }
        if let Some(lifts) = self.lifts.remove(&from) {
            touched.threads.extend([from, to]);
            touched.threads.extend(&lifts);
            self.lifts.entry(to).or_default().extend(lifts);
        }
    }

    /// Threads that speak of a palm, named by its thread.
    pub fn about(&self, palm: PalmId) -> impl Iterator<Item = EntryId> {
        self.about.get(&palm).into_iter().flatten().copied()
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
