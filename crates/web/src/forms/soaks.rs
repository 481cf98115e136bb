//! Blades in contact, with the time running. Kept in memory, so that every phone sees which blade is ready; the page
//! carries all that is needed to save the cleaning, so that a restart loses a list and no cleaning.

use desk::forms::Typed;
use model::{BladeId, Moment};
use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

/// Forgotten after this, ms: nobody soaks a blade for two days.
const FORGOTTEN: i64 = 2 * 86_400_000;

/// One blade in contact.
#[derive(Clone, Debug)]
pub struct Soak {
    /// The blade.
    pub blade: BladeId,
    /// Since when.
    pub from: Moment,
    /// When it has been long enough.
    pub ready: Moment,
    /// The form that started it: with what, brushed or not, by whom, and the id of the entry it will become.
    pub typed: Typed,
}

/// All of them; a blade is in one bath at a time.
#[derive(Default)]
pub struct Soaks(Mutex<BTreeMap<BladeId, Soak>>);

impl Soaks {
    /// A blade goes in; one that is in starts anew.
    pub fn start(&self, soak: Soak) {
        self.all().insert(soak.blade, soak);
    }

    /// A blade is out.
    pub fn end(&self, blade: BladeId) {
        self.all().remove(&blade);
    }

    /// Those in contact, the next to be ready first.
    pub fn list(&self, now: Moment) -> Vec<Soak> {
        let mut all = self.all();
        all.retain(|_, soak| now.0 - soak.from.0 < FORGOTTEN);
        let mut list: Vec<Soak> = all.values().cloned().collect();
        list.sort_by_key(|soak| (soak.ready, soak.blade));
        list
    }

    fn all(&self) -> std::sync::MutexGuard<'_, BTreeMap<BladeId, Soak>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
