//! Entries: what is recorded, for good.

use crate::blade::{Bath, Blade, BladeId, Cleaning, CutMade};
use crate::day::{Day, Moment};
use crate::palm::{Inspection, Palm, PalmId};
use crate::tending::{OwnerLink, Tending};
use crate::work::{CrewWords, Prices, RoundNote, RoundPlan, Site, WeatherDay};
use uuid::Uuid;

/// Identity of an entry: a UUID v7 made where the entry was written, so that sending it twice does nothing.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct EntryId(pub Uuid);

/// One line of the ledger.
#[derive(Clone, PartialEq, Debug)]
pub struct Entry {
    /// Identity.
    pub id: EntryId,
    /// When it happened.
    pub at: Moment,
    /// When it was written down.
    pub written_at: Moment,
    /// Who wrote it.
    pub by: String,
    /// On which device.
    pub device: String,
    /// What happened.
    pub body: Body,
    /// The entry this one stands in for, when it is a correction.
    pub replaces: Option<EntryId>,
}

/// What an entry says.
#[derive(Clone, PartialEq, Debug)]
pub enum Body {
    /// A palm enters the register; its id is this entry's id (of a corrected registration: the id of the first).
    PalmRegistered(Palm),
    /// A palm's description changes to this.
    PalmChanged {
        /// Which palm.
        palm: PalmId,
        /// The whole new description.
        to: Palm,
    },
    /// A palm leaves the register (felled, sold, entered by mistake); its history stays.
    PalmRemoved {
        /// Which palm.
        palm: PalmId,
        /// Why.
        why: String,
    },
    /// One look at one stem.
    Inspected {
        /// Which palm.
        palm: PalmId,
        /// What was seen.
        inspection: Inspection,
    },
    /// Nobody cuts this palm until the hold is lifted.
    HoldSet {
        /// Which palm.
        palm: PalmId,
        /// Stable reason code, e.g. `nest`, `wilt-suspect`, `spear`, `keeper`.
        reason: String,
        /// Ends by itself after this day, if given.
        until: Option<Day>,
        /// Free words.
        note: String,
    },
    /// A hold ends.
    HoldLifted {
        /// The entry that set it.
        hold: EntryId,
        /// Why.
        note: String,
    },
    /// Free words about a palm.
    Noted {
        /// Which palm.
        palm: PalmId,
        /// The words.
        text: String,
    },
    /// A blade enters the register; its id is this entry's id (of a corrected registration: the id of the first).
    BladeRegistered(Blade),
    /// A blade's description changes to this.
    BladeChanged {
        /// Which blade.
        blade: BladeId,
        /// The whole new description.
        to: Blade,
    },
    /// A blade goes out of service (worn, lost, sold); what it touched stays.
    BladeRetired {
        /// Which blade.
        blade: BladeId,
        /// Why.
        why: String,
    },
    /// A blade goes into other hands; what it touches there nobody writes down.
    BladeLent {
        /// Which blade.
        blade: BladeId,
        /// To whom.
        to: String,
    },
    /// A lent blade is back.
    BladeReturned {
        /// Which blade.
        blade: BladeId,
    },
    /// One blade cut one stem; the entry's `at` is the end of the cut.
    CutMade(CutMade),
    /// A bath was mixed to soak blades in; its id is this entry's id.
    BathMixed(Bath),
    /// One blade was cleaned; the entry's `at` is the end of the cleaning.
    Cleaned(Cleaning),
    /// Something was done for a palm: moved, watered, fed.
    Tended {
        /// Which palm.
        palm: PalmId,
        /// What was done.
        what: Tending,
    },
    /// A private link to a palm's sheet was given to its owner; [`Body::Withdrawn`] revokes it.
    LinkGiven {
        /// Which palm.
        palm: PalmId,
        /// The link.
        link: OwnerLink,
    },
    /// A site is like this from then on.
    SiteDescribed(Site),
    /// A crew is like this from then on.
    CrewDescribed(CrewWords),
    /// The price list and the keeper's own figures are these from then on.
    PricesSet(Prices),
    /// The weather of a day at a site.
    WeatherNoted(WeatherDay),
    /// A round was planned; its id is this entry's id. [`Body::Withdrawn`] calls it off.
    RoundPlanned(RoundPlan),
    /// Something happened on a round.
    RoundNoted(RoundNote),
    /// The entry named in `replaces` is taken back; nothing stands in for it, nor for what it had corrected.
    Withdrawn {
        /// Why.
        why: String,
    },
    /// A kind this version does not know: kept and passed on as it came, without effect.
    Unknown {
        /// Its kind.
        kind: String,
        /// Version of its body; a known kind with a newer version lands here too.
        version: u32,
        /// Its body as it came (JSON text).
        json: String,
    },
}

impl Entry {
    /// Order in which entries take effect: when it happened, when it was written, identity. Never the order of arrival.
    pub fn order(&self) -> (Moment, Moment, EntryId) {
        (self.at, self.written_at, self.id)
    }
}

impl Body {
    /// The palm the body names, if it names one. A registration names none: its palm is its own entry's id.
    pub fn palm(&self) -> Option<PalmId> {
        match self {
            Body::PalmChanged { palm, .. }
            | Body::PalmRemoved { palm, .. }
            | Body::Inspected { palm, .. }
            | Body::HoldSet { palm, .. }
            | Body::Noted { palm, .. }
            | Body::Tended { palm, .. }
            | Body::LinkGiven { palm, .. }
            | Body::CutMade(CutMade { palm, .. }) => Some(*palm),
            Body::RoundNoted(note) => note.palm(),
            Body::PalmRegistered(_)
            | Body::BladeRegistered(_)
            | Body::BladeChanged { .. }
            | Body::BladeRetired { .. }
            | Body::BladeLent { .. }
            | Body::BladeReturned { .. }
            | Body::BathMixed(_)
            | Body::Cleaned(_)
            | Body::HoldLifted { .. }
            | Body::SiteDescribed(_)
            | Body::CrewDescribed(_)
            | Body::PricesSet(_)
            | Body::WeatherNoted(_)
            | Body::RoundPlanned(_)
            | Body::Withdrawn { .. }
            | Body::Unknown { .. } => None,
        }
    }
}
