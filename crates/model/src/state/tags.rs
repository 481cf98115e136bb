//! Who carries which tag: the one registered first keeps it, the others are findings.

use super::fact::Order;
use std::collections::{BTreeMap, BTreeSet};

/// Carriers of tags, by tag in the order of their registration.
pub(super) struct Carriers<K> {
    carriers: BTreeMap<String, BTreeSet<(Order, K)>>,
    /// Where each carrier is among them.
    carries: BTreeMap<K, (String, Order)>,
}

impl<K> Default for Carriers<K> {
    fn default() -> Carriers<K> {
        Carriers {
            carriers: BTreeMap::new(),
            carries: BTreeMap::new(),
        }
    }
}

impl<K: Ord + Copy> Carriers<K> {
    /// Says what somebody carries now; marks the tags whose carriers change.
    pub fn carry(&mut self, who: K, what: Option<(String, Order)>, changed: &mut BTreeSet<String>) {
        if self.carries.get(&who) == what.as_ref() {
            return;
        }
        if let Some((tag, order)) = self.carries.remove(&who) {
            if let Some(set) = self.carriers.get_mut(&tag) {
                set.remove(&(order, who));
            }
            changed.insert(tag);
        }
        if let Some((tag, order)) = what {
            self.carriers
                .entry(tag.clone())
                .or_default()
                .insert((order, who));
            changed.insert(tag.clone());
            self.carries.insert(who, (tag, order));
        }
    }

    /// Who keeps a tag (nobody any more: `None`), and the others who carry it.
    pub fn settle(&mut self, tag: &str) -> (Option<K>, Vec<K>) {
        let carriers = self.carriers.get(tag).into_iter().flatten();
        let mut all = carriers.map(|(_, who)| *who);
        let (first, others) = (all.next(), all.collect());
        if first.is_none() {
            self.carriers.remove(tag);
        }
        (first, others)
    }
}
