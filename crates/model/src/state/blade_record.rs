//! What is known of blades and baths now.

use crate::blade::{Bath, Blade, BladeId, Cleaning, CutMade};
use crate::day::Moment;
use crate::entry::EntryId;
use std::sync::Arc;

/// Everything known of one blade now.
#[derive(Clone, PartialEq, Debug)]
pub struct BladeRecord {
    /// Identity.
    pub id: BladeId,
    /// Its description.
    pub blade: Blade,
    /// What it did and what was done to it, in the order of time; a row written twice stands once.
    pub touches: Vec<BladeTouch>,
    /// In whose hands it is, if it is lent and not back.
    pub lent: Option<Lent>,
    /// Why it went out of service, if it did.
    pub retired: Option<String>,
    /// When it entered the register.
    pub registered: Moment,
    /// Every entry about it, in the order of [`crate::Entry::order`]: superseded and withdrawn ones, too.
    pub entries: Vec<EntryId>,
}

impl BladeRecord {
    /// Whether it is still in service.
    pub fn serves(&self) -> bool {
        self.retired.is_none()
    }
}

/// One thing that a blade did, or that was done to it.
#[derive(Clone, PartialEq, Debug)]
pub struct BladeTouch {
    /// When it ended.
    pub at: Moment,
    /// The entry that stands behind it: what a correction names in `replaces`.
    pub entry: EntryId,
    /// What.
    pub what: Touch,
}

/// What a blade did, or what was done to it. Palms and baths go by the one name they have in the state.
#[derive(Clone, PartialEq, Debug)]
pub enum Touch {
    /// It cut.
    Cut(Arc<CutMade>),
    /// It was cleaned.
    Cleaned(Arc<Cleaning>),
    /// It was lent, to whom.
    Lent(String),
    /// It came back.
    Returned,
}

/// In whose hands a blade is.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Lent {
    /// To whom it was lent.
    pub to: String,
    /// Since when.
    pub since: Moment,
}

/// One cut in a palm's record.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmCut {
    /// When it ended.
    pub at: Moment,
    /// The entry that stands behind it.
    pub entry: EntryId,
    /// The cut, with blade and crew.
    pub cut: Arc<CutMade>,
}

/// Everything known of one bath.
#[derive(Clone, PartialEq, Debug)]
pub struct BathRecord {
    /// The entry that mixed it (the first one, if it was corrected since): its name.
    pub id: EntryId,
    /// The entry that stands behind it.
    pub entry: EntryId,
    /// When it was mixed.
    pub mixed: Moment,
    /// What is in it.
    pub bath: Bath,
    /// Blades cleaned in it, with the end of each cleaning, in the order of time.
    pub served: Vec<(Moment, BladeId)>,
}
