//! The fold itself: entries in, what they touch folded anew, the rest left as it was.

use super::palm_fold::fold_palm;
use super::threads::{Fact, Order, Place, Threads, Touched, What};
use super::{Noticed, PalmRecord, State};
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
    /// Standing palms by tag, in the order of their registration.
    carriers: BTreeMap<String, BTreeSet<(Order, PalmId)>>,
    /// Where each standing palm is among the carriers.
    carries: BTreeMap<PalmId, (String, Order)>,
    of_palm: BTreeMap<PalmId, Vec<Noticed>>,
    of_tag: BTreeMap<String, Vec<Noticed>>,
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
        match self.threads.place_of(self.threads.root(id))? {
            Place::Palm(palm) => Some(palm),
            Place::Hold(hold) => match self.threads.place_of(hold)? {
                Place::Palm(palm) => Some(palm),
                Place::Hold(_) => None,
            },
        }
    }

    /// A palm by the id of any entry of its registration: the one name it goes by in the state.
    pub fn palm_named(&self, palm: PalmId) -> PalmId {
        PalmId(self.threads.root(EntryId(palm.0)).0)
    }

    /// Whether the thread of an entry began as the registration of a palm.
    pub fn registers(&self, id: EntryId) -> bool {
        self.threads
            .began_as(id, |what| matches!(what, What::Registered(_)))
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
        self.carry(palm, carried, tags);
        self.keep(palm, folded.map(|(record, _)| record));
        put(&mut self.of_palm, palm, noticed)
    }

    fn carry(
        &mut self,
        palm: PalmId,
        carried: Option<(String, Order)>,
        tags: &mut BTreeSet<String>,
    ) {
        if self.carries.get(&palm) == carried.as_ref() {
            return;
        }
        if let Some((tag, order)) = self.carries.remove(&palm) {
            if let Some(set) = self.carriers.get_mut(&tag) {
                set.remove(&(order, palm));
            }
            tags.insert(tag);
        }
        if let Some((tag, order)) = carried {
            self.carriers
                .entry(tag.clone())
                .or_default()
                .insert((order, palm));
            tags.insert(tag.clone());
            self.carries.insert(palm, (tag, order));
        }
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
            let carriers = self.carriers.get(&tag);
            let first = carriers.and_then(BTreeSet::first).map(|(_, palm)| *palm);
            let others: Vec<PalmId> = carriers
                .into_iter()
                .flatten()
                .skip(1)
                .map(|(_, palm)| *palm)
                .collect();
            let doubled = others
                .into_iter()
                .map(|palm| tag_doubled(&tag, palm))
                .collect();
            if self.state.tags.get(&tag) != first.as_ref() {
                let index = Arc::make_mut(&mut Arc::make_mut(&mut self.state).tags);
                match first {
                    Some(palm) => index.insert(tag.clone(), palm),
                    None => index.remove(&tag),
                };
            }
            if first.is_none() {
                self.carriers.remove(&tag);
            }
            news |= put(&mut self.of_tag, tag, doubled);
        }
        news
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
        match self.threads.place_of(lift) {
            Some(Place::Hold(hold)) => {
                // A hold that was taken back needs no lifting; only one that never was is worth a word.
                !matches!(self.threads.place_of(hold), None | Some(Place::Hold(_)))
                    && self
                        .threads
                        .standing(hold)
                        .is_some_and(|(_, Fact { what, .. })| {
                            matches!(what, What::HoldSet(..) | What::Withdrawn)
                        })
            }
            _ => false,
        }
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
