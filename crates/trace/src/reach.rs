//! What a sweep found, and the chains in it.

use crate::log::{Cleaning, Log, Seconds, What};

/// Which bound is asked for.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Set {
    /// Contacts that nothing doubtful speaks against.
    Certain,
    /// Contacts that cannot be ruled out.
    Possible,
}

/// A palm the sweep starts from.
///
/// Forward: from when until when it passes the disorder on. Backward: the time in which it must have been exposed.
/// Both ends belong to it; `None` has no end.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Case {
    /// The palm.
    pub palm: u32,
    /// First second.
    pub from: Option<Seconds>,
    /// Last second.
    pub until: Option<Seconds>,
}

/// What holds for a sweep.
#[derive(Clone, Copy, Debug)]
pub struct Rules<'a> {
    /// Seconds from exposure until a palm passes it on, not negative.
    pub latency: Seconds,
    /// By palm: whether it passes it on at all once exposed. One entry for each palm of the log.
    pub carries: &'a [bool],
    /// Which bound.
    pub set: Set,
}

/// One palm that the sweep reached, by its first contact in the order of the sweep.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Contact {
    /// The palm.
    pub palm: u32,
    /// Number of its own touch. Forward: the cut that exposed it; the earliest. Backward: the cut by which it would have
    /// passed it on; the latest.
    pub own: usize,
    /// Number of the touch at the other end, by the same blade. Forward: the cut of the palm that fouled the blade.
    /// Backward: the cut of the next palm on the way to the case.
    pub other: usize,
    /// Steps to a case: 1 for a palm that shared a blade with it.
    pub generation: u32,
    /// Number of its last such touch in the order of the sweep.
    pub last: usize,
    /// How many such touches there were.
    pub times: u32,
}

/// All palms that a sweep reached.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Reach {
    /// In the order in which they were reached.
    pub contacts: Vec<Contact>,
    /// By palm: one more than its place in `contacts`; 0 for a palm not reached.
    pub(crate) place: Vec<u32>,
}

impl Reach {
    /// The contact of a palm, if it was reached.
    pub fn of(&self, palm: u32) -> Option<&Contact> {
        let place = *self.place.get(palm as usize)? as usize;
        self.contacts.get(place.checked_sub(1)?)
    }

    /// The contacts from a palm to its case, the palm's own first.
    pub fn chain(&self, log: &Log, palm: u32) -> Vec<Contact> {
        let mut chain = Vec::new();
        let mut at = self.of(palm);
        while let Some(contact) = at {
            chain.push(*contact);
            at = match log.touch(contact.other).what {
                What::Cut { palm } => self.of(palm),
                What::Clean(_) => None,
            };
        }
        chain
    }
}

/// What a blade did between two of its touches.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Between {
    /// Palms it cut, in the order of the cuts, each cut counted.
    pub palms: Vec<u32>,
    /// Its cleanings: number of the touch and how it was.
    pub cleanings: Vec<(usize, Cleaning)>,
}

/// What lies between the two touches of a contact.
pub fn between(log: &Log, contact: &Contact) -> Between {
    let (first, last) = (
        contact.own.min(contact.other),
        contact.own.max(contact.other),
    );
    let blade = log.touch(first).blade;
    let mut out = Between::default();
    for number in first + 1..last {
        let touch = log.touch(number);
        match touch.what {
            _ if touch.blade != blade => {}
            What::Cut { palm } => out.palms.push(palm),
            What::Clean(how) => out.cleanings.push((number, how)),
        }
    }
    out
}
