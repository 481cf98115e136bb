//! State is a pure fold over entries.
use crate::entry::EntryId;
use crate::palm::{Inspection, Palm, PalmId};
use crate::day::{Day, Moment};
use std::collections::BTreeMap;

/// A hold in force.
#[derive(Clone, PartialEq, Debug)]
pub struct Hold {
    /// The entry that set it.
    pub entry: EntryId,
    /// Stable reason code.
    pub reason: String,
    /// Since when.
    pub since: Moment,
    /// Ends by itself after this day.
    pub until: Option<Day>,
    /// Free words.
    pub note: String,
}

/// Everything known of one palm now.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmRecord {
    /// Identity.
    pub id: PalmId,
    /// Its description.
    pub palm: Palm,
    /// Inspections by stem and date, oldest first; one per stem and day (the entry written last wins).
    pub inspections: Vec<Inspection>,
    /// Holds not lifted, oldest first.
    pub holds: Vec<Hold>,
    /// Notes, oldest first.
    pub notes: Vec<(Moment, String)>,
    /// Why it left the register, if it did.
    pub removed: Option<String>,
}

/// The register as the entries make it.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct State {
    /// Palms by identity, removed ones included.
    pub palms: BTreeMap<PalmId, PalmRecord>,
}
