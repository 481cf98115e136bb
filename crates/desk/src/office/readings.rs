//! Readings of palms, the ones asked for last kept.

use crate::assess::{Kind, stem_cases};
use crown::{PalmReading, Sampler, read_palm};
use model::knowledge::Place;
use model::{Climate, Day, Knowledge, Palm, PalmId, PalmRecord, Position};
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError, RwLock};

/// Draws per explanation, the default everywhere.
const DRAWS: usize = 1024;

/// Readings kept. One holds its weighted draws and is large; lists keep what they need of it instead.
const KEPT: usize = 128;

/// A place's climate serves palms within this distance (assumed), km.
const CLIMATE_REACHES_KM: f64 = 100.0;

thread_local! {
    static SAMPLER: RefCell<Sampler> = RefCell::new(Sampler::new(DRAWS));
}

/// The keeper of readings.
#[derive(Default)]
pub(super) struct Readings {
    kept: Mutex<BTreeMap<PalmId, Kept>>,
    asked: AtomicU64,
    kinds: RwLock<BTreeMap<String, Arc<Kind<'static>>>>,
}

struct Kept {
    record: Arc<PalmRecord>,
    today: Day,
    reading: Arc<PalmReading>,
    asked: u64,
}

impl Readings {
    /// The reading of a record on a day: kept, or made and kept. A record that did not change is the same `Arc`.
    pub fn get(&self, record: &Arc<PalmRecord>, today: Day) -> Arc<PalmReading> {
        let asked = self.asked.fetch_add(1, Ordering::Relaxed);
        if let Some(kept) = self.kept().get_mut(&record.id)
            && Arc::ptr_eq(&kept.record, record)
            && kept.today == today
        {
            kept.asked = asked;
            return kept.reading.clone();
        }
        // Made without the lock: two who ask at once may both make it, which gives the same reading.
        let reading = Arc::new(self.make(record, today));
        let mut kept = self.kept();
        kept.insert(
            record.id,
            Kept {
                record: record.clone(),
                today,
                reading: reading.clone(),
                asked,
            },
        );
        if kept.len() > KEPT
            && let Some(oldest) = kept
                .iter()
                .min_by_key(|(_, kept)| kept.asked)
                .map(|(id, _)| *id)
        {
            kept.remove(&oldest);
        }
        reading
    }

    /// Makes a reading: every stem of the palm, with what is known of its species and its place.
    pub fn make(&self, record: &PalmRecord, today: Day) -> PalmReading {
        let palm = &record.palm;
        let kind = self.kind(&palm.species);
        let stems = stem_cases(palm, &kind, &record.inspections, climate(palm));
        SAMPLER.with_borrow_mut(|sampler| read_palm(&stems, today, sampler))
    }

    /// A species by the name a keeper wrote. Remembered: a name nobody knows takes long to look for.
    pub fn kind(&self, name: &str) -> Arc<Kind<'static>> {
        if let Some(known) = self
            .kinds
            .read()
            .unwrap_or_else(PoisonError::into_inner)
            .get(name)
        {
            return known.clone();
        }
        let found = Arc::new(Kind::named(Knowledge::embedded(), name));
        self.kinds
            .write()
            .unwrap_or_else(PoisonError::into_inner)
            .insert(name.to_owned(), found.clone());
        found
    }

    fn kept(&self) -> MutexGuard<'_, BTreeMap<PalmId, Kept>> {
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// The nearest known place's climate, if it is near enough.
pub(crate) fn climate(palm: &Palm) -> Option<&'static Climate> {
    Some(&place(palm.position?)?.climate)
}

/// The nearest known place, if it is near enough.
pub(crate) fn place(position: Position) -> Option<&'static Place> {
    let (place, km) = Knowledge::embedded().climate_near(position.lat, position.lon)?;
    (km <= CLIMATE_REACHES_KM).then_some(place)
}
