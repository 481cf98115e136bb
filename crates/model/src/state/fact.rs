//! Entries as the fold keeps them: without what the state does not need.

use crate::blade::{Bath, Blade, BladeId, Cleaning, CutMade};
use crate::day::{Day, Moment};
use crate::entry::{Body, Entry, EntryId};
use crate::palm::{Inspection, Palm, PalmId};
use crate::tending::{OwnerLink, Tending};
use crate::work::{CrewWords, Prices, RoundNote, RoundPlan, Site, WeatherDay};
use std::sync::Arc;

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
    BladeRegistered(Box<Blade>),
    BladeChanged(BladeId, Box<Blade>),
    BladeRetired(BladeId, Box<str>),
    BladeLent(BladeId, Box<str>),
    BladeReturned(BladeId),
    /// Shared with the records of the blade and the palm: there may be a million.
    Cut(Arc<CutMade>),
    BathMixed(Box<Bath>),
    /// Shared with the record of the blade.
    Cleaned(Arc<Cleaning>),
    Tended(PalmId, Box<Tending>),
    LinkGiven(PalmId, Box<OwnerLink>),
    Site(Box<Site>),
    Crew(Box<CrewWords>),
    Prices(Box<Prices>),
    Weather(Box<WeatherDay>),
    RoundPlanned(Box<RoundPlan>),
    RoundNoted(Box<RoundNote>),
    Withdrawn,
    NotUnderstood {
        kind: Box<str>,
    },
}

/// What a hold says.
pub(super) struct HoldWords {
    pub reason: String,
    pub until: Option<Day>,
    pub note: String,
}

impl Fact {
    pub fn of(entry: Entry) -> Fact {
        Fact {
            at: entry.at,
            written_at: entry.written_at,
            replaces: entry.replaces,
            what: What::of(entry.body),
        }
    }
}

impl What {
    fn of(body: Body) -> What {
        match body {
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
            Body::BladeRegistered(blade) => What::BladeRegistered(Box::new(blade)),
            Body::BladeChanged { blade, to } => What::BladeChanged(blade, Box::new(to)),
            Body::BladeRetired { blade, why } => What::BladeRetired(blade, why.into()),
            Body::BladeLent { blade, to } => What::BladeLent(blade, to.into()),
            Body::BladeReturned { blade } => What::BladeReturned(blade),
            Body::CutMade(cut) => What::Cut(Arc::new(cut)),
            Body::BathMixed(bath) => What::BathMixed(Box::new(bath)),
            Body::Cleaned(cleaning) => What::Cleaned(Arc::new(cleaning)),
            Body::Tended { palm, what } => What::Tended(palm, Box::new(what)),
            Body::LinkGiven { palm, link } => What::LinkGiven(palm, Box::new(link)),
            Body::SiteDescribed(site) => What::Site(Box::new(site)),
            Body::CrewDescribed(crew) => What::Crew(Box::new(crew)),
            Body::PricesSet(prices) => What::Prices(Box::new(prices)),
            Body::WeatherNoted(day) => What::Weather(Box::new(day)),
            Body::RoundPlanned(plan) => What::RoundPlanned(Box::new(plan)),
            Body::RoundNoted(note) => What::RoundNoted(Box::new(note)),
            Body::Withdrawn { .. } => What::Withdrawn,
            Body::Unknown { kind, .. } => What::NotUnderstood { kind: kind.into() },
        }
    }
}

/// The order in which entries take effect, as [`Entry::order`].
pub(super) type Order = (Moment, Moment, EntryId);

/// A thread that stands: its name, the entry at its end, and what that says.
pub(super) struct Line<'a> {
    pub root: EntryId,
    pub id: EntryId,
    pub fact: &'a Fact,
}

impl Line<'_> {
    pub fn order(&self) -> Order {
        (self.fact.at, self.fact.written_at, self.id)
    }
}
