//! State is a pure fold over entries.
//!
//! What the fold promises, whatever the order in which entries arrive:
//!
//! - **Order.** Entries take effect by when they happened, then when they were written, then identity
//!   ([`crate::Entry::order`]). A late entry changes the past.
//! - **Corrections.** An entry and all that replaces it, directly or through others, is one thread, named by its first
//!   entry. Of several replacements of one entry the one written last counts. What stands is the end of that path;
//!   if it is [`crate::Body::Withdrawn`], nothing stands. A reference to any entry of a thread means the thread.
//! - **Looks.** One inspection per stem and day; the one written last counts, the others are findings.
//! - **Blades.** A blade's touches (cuts, cleanings, lendings, returns) stand in the order of time; a row written twice
//!   counts once. A cut stands with its palm, too.
//! - **Work.** Of the words on a site, a crew or the prices the latest hold, whole; of the weather of a day the latest,
//!   too. A move brings the palm's day of moving up to date. A round keeps its name when it is planned anew.
//! - **Bad data** (a palm nobody registered, a tag used twice, a hold nobody set) is a [`Noticed`] finding, and heals by
//!   itself when the missing entry arrives.

mod blade_fold;
mod blade_record;
mod fact;
mod fold;
mod palm_fold;
mod tags;
mod threads;
mod work_fold;
mod work_record;

pub use blade_record::{BathRecord, BladeRecord, BladeTouch, Lent, PalmCut, Touch};
pub use fold::Fold;
pub use work_record::{LinkRecord, Outcome, RoundRecord, Tended, Work};

use crate::blade::BladeId;
use crate::day::{Day, Moment};
use crate::entry::{Entry, EntryId};
use crate::finding::Finding;
use crate::palm::{Inspection, Palm, PalmId};
use std::collections::BTreeMap;
use std::sync::Arc;

/// A hold that was set and not lifted; whether it is still in force depends on the day.
#[derive(Clone, PartialEq, Debug)]
pub struct Hold {
    /// The entry that set it (the first one, if it was corrected since).
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

impl Hold {
    /// Whether it forbids cutting on a day.
    pub fn in_force(&self, day: Day) -> bool {
        self.until.is_none_or(|until| day <= until)
    }
}

/// Everything known of one palm now.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmRecord {
    /// Identity.
    pub id: PalmId,
    /// Its description.
    pub palm: Palm,
    /// Inspections by stem, then date, oldest first; one per stem and day (the entry written last wins).
    pub inspections: Vec<Inspection>,
    /// The entries behind `inspections`, same length and order: what a correction names in `replaces`.
    pub inspection_entries: Vec<EntryId>,
    /// Holds not lifted, oldest first.
    pub holds: Vec<Hold>,
    /// Cuts in the order of time, each with its blade; a row written twice counts once.
    pub cuts: Vec<PalmCut>,
    /// Moves, waterings and feedings in the order of time; a row written twice counts once.
    pub tended: Vec<Tended>,
    /// Links given to the owner and not revoked, oldest first; whether one still works depends on the day.
    pub links: Vec<LinkRecord>,
    /// Notes, oldest first.
    pub notes: Vec<(Moment, String)>,
    /// Why it left the register, if it did.
    pub removed: Option<String>,
    /// When it entered the register.
    pub registered: Moment,
    /// Every entry about it, in the order of [`Entry::order`]: superseded and withdrawn ones, and lifted holds, too.
    pub entries: Vec<EntryId>,
}

impl PalmRecord {
    /// Whether it still stands in the register.
    pub fn stands(&self) -> bool {
        self.removed.is_none()
    }

    /// Holds in force on a day, oldest first.
    pub fn holds_on(&self, day: Day) -> impl Iterator<Item = &Hold> {
        self.holds.iter().filter(move |hold| hold.in_force(day))
    }

    /// Looks at one stem, oldest first.
    pub fn looks(&self, stem: u16) -> impl DoubleEndedIterator<Item = &Inspection> {
        self.inspections
            .iter()
            .filter(move |look| look.stem == stem)
    }

    /// The latest look at any stem; of several on that day the one with the lowest stem number.
    pub fn last_look(&self) -> Option<&Inspection> {
        let last = self.inspections.iter().map(|look| look.date).max()?;
        self.inspections.iter().find(|look| look.date == last)
    }
}

/// Something wrong with the entries, found while folding.
#[derive(Clone, PartialEq, Debug)]
pub struct Noticed {
    /// The entry it is about.
    pub entry: EntryId,
    /// The palm it is about, if there is one (it may be unknown to the register).
    pub palm: Option<PalmId>,
    /// What is wrong.
    pub finding: Finding,
}

/// The register as the entries make it. A snapshot: cloning costs a pointer for each palm.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct State {
    /// Palms by identity, removed ones included.
    pub palms: BTreeMap<PalmId, Arc<PalmRecord>>,
    /// Blades by identity, retired ones included, each with all it touched.
    pub blades: BTreeMap<BladeId, Arc<BladeRecord>>,
    /// Baths by the entry that mixed them (the first one, if it was corrected since).
    pub baths: BTreeMap<EntryId, Arc<BathRecord>>,
    /// Sites, crews, prices, weather and rounds.
    pub work: Arc<Work>,
    tags: Arc<BTreeMap<String, PalmId>>,
    blade_tags: Arc<BTreeMap<String, BladeId>>,
    noticed: Arc<Vec<Noticed>>,
}

impl State {
    /// The state that these entries make, in whatever order they come.
    pub fn fold(entries: impl IntoIterator<Item = Entry>) -> State {
        let mut fold = Fold::default();
        fold.apply(entries);
        Arc::unwrap_or_clone(fold.into_state())
    }

    /// One palm, removed or not.
    pub fn palm(&self, id: PalmId) -> Option<&Arc<PalmRecord>> {
        self.palms.get(&id)
    }

    /// The standing palm with this tag; where two carry it, the one registered first.
    pub fn by_tag(&self, tag: &str) -> Option<&Arc<PalmRecord>> {
        self.palms.get(self.tags.get(tag)?)
    }

    /// Palms not removed, in the order of their ids.
    pub fn standing(&self) -> impl Iterator<Item = &Arc<PalmRecord>> {
        self.palms.values().filter(|record| record.stands())
    }

    /// Tags of standing palms with their palms, in the order of the text.
    pub fn tags(&self) -> &BTreeMap<String, PalmId> {
        &self.tags
    }

    /// One blade, retired or not.
    pub fn blade(&self, id: BladeId) -> Option<&Arc<BladeRecord>> {
        self.blades.get(&id)
    }

    /// The blade in service with this tag; where two carry it, the one registered first.
    pub fn blade_by_tag(&self, tag: &str) -> Option<&Arc<BladeRecord>> {
        self.blades.get(self.blade_tags.get(tag)?)
    }

    /// Tags of blades in service with their blades, in the order of the text.
    pub fn blade_tags(&self) -> &BTreeMap<String, BladeId> {
        &self.blade_tags
    }

    /// Blades not retired, in the order of their ids.
    pub fn serving(&self) -> impl Iterator<Item = &Arc<BladeRecord>> {
        self.blades.values().filter(|record| record.serves())
    }

    /// What is wrong with the entries, in a stable order.
    pub fn noticed(&self) -> &[Noticed] {
        &self.noticed
    }
}
