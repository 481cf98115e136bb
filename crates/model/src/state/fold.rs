//! The fold itself: entries in, what they touch folded anew, the rest left as it was.

use super::blade_fold::{fold_bath, fold_blade};
use super::fact::{Fact, What};
use super::palm_fold::fold_palm;
use super::tags::Carriers;
use super::threads::{Threads, Touched};
use super::work_fold::fold_topic;
use super::{Noticed, PalmRecord, State};
use crate::blade::BladeId;
use crate::entry::{Entry, EntryId};
use crate::finding::{Arg, Finding, Severity};
use crate::palm::PalmId;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// A state that takes more entries, in any order, at a cost that grows with what they touch.
#[derive(Default)]
pub struct Fold {
    threads: Threads,
    state: Arc<State>,
    carriers: Carriers<PalmId>,
    blade_carriers: Carriers<BladeId>,
    of_palm: BTreeMap<PalmId, Vec<Noticed>>,
    of_tag: BTreeMap<String, Vec<Noticed>>,
    of_blade: BTreeMap<BladeId, Vec<Noticed>>,
    of_blade_tag: BTreeMap<String, Vec<Noticed>>,
    of_thread: BTreeMap<EntryId, Vec<Noticed>>,
}

impl Fold {
    /// Takes entries in. One that is already in is passed over.
    pub fn apply(&mut self, entries: impl IntoIterator<Item = Entry>) {
        let mut touched = Touched::default();
        for entry in entries {
            self.threads.insert(entry, &mut touched);
        }
        let mut tags = BTreeSet::new();
        let mut news = false;
        for palm in &touched.palms {
            self.fetch_looks(*palm);
        }
        for palm in &touched.palms {
            news |= self.fold_palm(*palm, &mut tags);
        }
        for palm in &touched.palms {
            self.leave_looks(*palm);
        }
        news |= self.settle_tags(tags);
        news |= self.fold_blades(&touched);
        self.fold_work(&touched);
        for thread in touched.threads {
            news |= self.fold_thread(thread);
            let lifts: Vec<EntryId> = self.threads.lifts(thread).collect();
            for lift in lifts {
                news |= self.fold_thread(lift);
            }
        }
        if news {
            let palms = self.of_palm.values().flatten();
            let all = palms
                .chain(self.of_tag.values().flatten())
                .chain(self.of_blade.values().flatten())
                .chain(self.of_blade_tag.values().flatten())
                .chain(self.of_thread.values().flatten());
            Arc::make_mut(&mut self.state).noticed = Arc::new(all.cloned().collect());
        }
    }

    /// The state now: a snapshot that stays as it is.
    pub fn state(&self) -> Arc<State> {
        self.state.clone()
    }

    /// The state, for good.
    pub fn into_state(self) -> Arc<State> {
        self.state
    }

    /// Whether an entry is in.
    pub fn knows(&self, id: EntryId) -> bool {
        self.threads.knows(id)
    }

    /// The palm an entry speaks of, whether it still stands or not; for a lifting, the palm of its hold.
    pub fn palm_of(&self, id: EntryId) -> Option<PalmId> {
        let places = self.threads.places_of(self.threads.root(id));
        places
            .palm
            .or_else(|| self.threads.places_of(places.hold?).palm)
    }

    /// A palm by the id of any entry of its registration: the one name it goes by in the state.
    pub fn palm_named(&self, palm: PalmId) -> PalmId {
        self.threads.palm_named(palm)
    }

    /// A blade by the id of any entry of its registration: the one name it goes by in the state.
    pub fn blade_named(&self, blade: BladeId) -> BladeId {
        self.threads.blade_named(blade)
    }

    /// Whether the thread of an entry began as the registration of a palm.
    pub fn registers(&self, id: EntryId) -> bool {
        self.threads
            .began_as(id, |what| matches!(what, What::Registered(_)))
    }

    /// Whether the thread of an entry began as the registration of a blade.
    pub fn registers_blade(&self, id: EntryId) -> bool {
        self.threads
            .began_as(id, |what| matches!(what, What::BladeRegistered(_)))
    }

    /// Whether the thread of an entry began as the mixing of a bath.
    pub fn mixes_bath(&self, id: EntryId) -> bool {
        self.threads
            .began_as(id, |what| matches!(what, What::BathMixed(_)))
    }

    /// Whether the thread of an entry began as the plan of a round.
    pub fn plans_round(&self, id: EntryId) -> bool {
        self.threads
            .began_as(id, |what| matches!(what, What::RoundPlanned(_)))
    }

    /// Whether the thread of an entry began as a hold.
    pub fn holds(&self, id: EntryId) -> bool {
        self.threads
            .began_as(id, |what| matches!(what, What::HoldSet(..)))
    }

    /// Brings the looks of a palm's record back to the facts: they may go to another palm now, or to none.
    fn fetch_looks(&mut self, palm: PalmId) {
        let Some(record) = self.state.palms.get(&palm) else {
            return;
        };
        for (id, look) in record.inspection_entries.iter().zip(&record.inspections) {
            self.threads.set_look(*id, Some(look));
        }
    }

    /// Leaves the looks that stand in a palm's record there, so that each is in memory once.
    fn leave_looks(&mut self, palm: PalmId) {
        let Some(record) = self.state.palms.get(&palm) else {
            return;
        };
        for id in &record.inspection_entries {
            self.threads.set_look(*id, None);
        }
    }

    /// Folds one palm anew, marks tags whose carriers change; whether findings changed.
    fn fold_palm(&mut self, palm: PalmId, tags: &mut BTreeSet<String>) -> bool {
        let (folded, noticed) = fold_palm(&self.threads, palm);
        let carried = folded
            .as_ref()
            .filter(|(record, _)| record.stands())
            .map(|(record, order)| (record.palm.tag.clone(), *order));
        self.carriers.carry(palm, carried, tags);
        self.keep(palm, folded.map(|(record, _)| record));
        put(&mut self.of_palm, palm, noticed)
    }

    /// Puts a record in its place. One that came out the same stays the same `Arc`, so that caches can go by identity.
    fn keep(&mut self, palm: PalmId, record: Option<PalmRecord>) {
        if self.state.palms.get(&palm).map(|old| &**old) == record.as_ref() {
            return;
        }
        let palms = &mut Arc::make_mut(&mut self.state).palms;
        match record {
            Some(record) => drop(palms.insert(palm, Arc::new(record))),
            None => drop(palms.remove(&palm)),
        }
    }

    /// Gives each tag to the palm registered first; whether findings changed.
    fn settle_tags(&mut self, tags: BTreeSet<String>) -> bool {
        let mut news = false;
        for tag in tags {
            let (first, others) = self.carriers.settle(&tag);
            if self.state.tags.get(&tag) != first.as_ref() {
                let index = &mut Arc::make_mut(&mut self.state).tags;
                set(Arc::make_mut(index), &tag, first);
            }
            let others = others.into_iter();
            let doubled = others.map(|palm| tag_doubled(&tag, palm)).collect();
            news |= put(&mut self.of_tag, tag, doubled);
        }
        news
    }

    /// Folds blades and baths anew; whether findings changed.
    fn fold_blades(&mut self, touched: &Touched) -> bool {
        let mut tags = BTreeSet::new();
        let mut news = false;
        for blade in &touched.blades {
            let (folded, noticed) = fold_blade(&self.threads, *blade);
            let carried = folded
                .as_ref()
                .filter(|(record, _)| record.serves())
                .map(|(record, order)| (record.blade.tag.clone(), *order));
            self.blade_carriers.carry(*blade, carried, &mut tags);
            let record = folded.map(|(record, _)| record);
            if self.state.blades.get(blade).map(|old| &**old) != record.as_ref() {
                let blades = &mut Arc::make_mut(&mut self.state).blades;
                set(blades, blade, record.map(Arc::new));
            }
            news |= put(&mut self.of_blade, *blade, noticed);
        }
        for tag in tags {
            let (first, others) = self.blade_carriers.settle(&tag);
            if self.state.blade_tags.get(&tag) != first.as_ref() {
                let index = &mut Arc::make_mut(&mut self.state).blade_tags;
                set(Arc::make_mut(index), &tag, first);
            }
            let others = others.into_iter();
            let doubled = others.map(|blade| blade_tag_doubled(&tag, blade)).collect();
            news |= put(&mut self.of_blade_tag, tag, doubled);
        }
        for bath in &touched.baths {
            let record = fold_bath(&self.threads, *bath);
            if self.state.baths.get(bath).map(|old| &**old) != record.as_ref() {
                let baths = &mut Arc::make_mut(&mut self.state).baths;
                set(baths, bath, record.map(Arc::new));
            }
        }
        news
    }

    /// Folds sites, crews, prices, weather and rounds anew.
    fn fold_work(&mut self, touched: &Touched) {
        if touched.topics.is_empty() {
            return;
        }
        let work = &mut Arc::make_mut(&mut self.state).work;
        let work = Arc::make_mut(work);
        for topic in &touched.topics {
            fold_topic(&self.threads, topic, work);
        }
    }

    /// Looks at a thread by itself; whether findings changed.
    fn fold_thread(&mut self, root: EntryId) -> bool {
        let noticed = self.notice(root).into_iter().collect();
        put(&mut self.of_thread, root, noticed)
    }

    fn notice(&self, root: EntryId) -> Option<Noticed> {
        if self.threads.root(root) != root {
            return None;
        }
        if self.threads.is_circle(root) {
            let finding = Finding::new("corrections-in-circle", Severity::Caution);
            return Some(Noticed {
                entry: root,
                palm: None,
                finding,
            });
        }
        let (entry, fact) = self.threads.standing(root)?;
        let finding = match &fact.what {
            What::NotUnderstood { kind } => Finding::new("entry-not-understood", Severity::Info)
                .with("kind", Arg::Text((**kind).to_owned())),
            What::HoldLifted(_) if !self.lifts_a_hold(root) => {
                Finding::new("hold-unknown", Severity::Info)
            }
            _ => return None,
        };
        Some(Noticed {
            entry,
            palm: None,
            finding,
        })
    }

    fn lifts_a_hold(&self, lift: EntryId) -> bool {
        let Some(hold) = self.threads.places_of(lift).hold else {
            return false;
        };
        // A hold that was taken back needs no lifting; only one that never was is worth a word.
        self.threads.places_of(hold).palm.is_some()
            && self
                .threads
                .standing(hold)
                .is_some_and(|(_, Fact { what, .. })| {
                    matches!(what, What::HoldSet(..) | What::Withdrawn)
                })
    }
}

fn tag_doubled(tag: &str, palm: PalmId) -> Noticed {
    let finding = Finding::new("tag-doubled", Severity::Act).with("tag", Arg::Text(tag.to_owned()));
    Noticed {
        entry: EntryId(palm.0),
        palm: Some(palm),
        finding,
    }
}

fn blade_tag_doubled(tag: &str, blade: BladeId) -> Noticed {
    let finding =
        Finding::new("blade-tag-doubled", Severity::Act).with("tag", Arg::Text(tag.to_owned()));
    Noticed {
        entry: EntryId(blade.0),
        palm: None,
        finding,
    }
}

/// Sets a value, or takes it out.
fn set<K, Q, V>(map: &mut BTreeMap<K, V>, key: &Q, value: Option<V>)
where
    K: Ord + std::borrow::Borrow<Q>,
    Q: Ord + ToOwned<Owned = K> + ?Sized,
{
    match value {
        Some(value) => drop(map.insert(key.to_owned(), value)),
        None => drop(map.remove(key)),
    }
}

/// Sets a list, an empty one by leaving it out; whether that changed anything.
fn put<K: Ord>(lists: &mut BTreeMap<K, Vec<Noticed>>, key: K, list: Vec<Noticed>) -> bool {
    if list.is_empty() {
        return lists.remove(&key).is_some();
    }
    match lists.get(&key) {
        Some(old) if *old == list => false,
        _ => {
            lists.insert(key, list);
            true
        }
    }
}
