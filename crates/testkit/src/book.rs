//! A writer of entries for tests.

use crate::{id, noon};
use model::{
    Bath, Blade, BladeId, BladeKind, Body, Cleaning, CutMade, Day, Entry, EntryId, Inspection,
    Moment, Palm, PalmId, State, TakenOff,
};

/// Writes entries one after the other, each a second later than the one before.
pub struct Book {
    seed: u64,
    count: u64,
    now: Moment,
    entries: Vec<Entry>,
}

impl Book {
    /// An empty book, at noon of 2026-01-01; ids come from the seed.
    pub fn new(seed: u64) -> Book {
        Book {
            seed,
            count: 0,
            now: noon("2026-01-01"),
            entries: Vec::new(),
        }
    }

    /// The following entries happen and are written from noon of this day (ISO text) on.
    pub fn on(&mut self, text: &str) -> &mut Book {
        self.now = noon(text);
        self
    }

    /// Writes any body.
    pub fn write(&mut self, body: Body, replaces: Option<EntryId>) -> EntryId {
        let id = EntryId(id(self.seed, self.count));
        self.count += 1;
        self.now = Moment(self.now.0 + 1000);
        let (at, written_at) = (self.now, self.now);
        let (by, device) = ("Tester".to_owned(), "test".to_owned());
        self.entries.push(Entry {
            id,
            at,
            written_at,
            by,
            device,
            body,
            replaces,
        });
        id
    }

    /// Registers a palm.
    pub fn register(&mut self, palm: Palm) -> PalmId {
        PalmId(self.write(Body::PalmRegistered(palm), None).0)
    }

    /// Changes a palm's description.
    pub fn change(&mut self, palm: PalmId, to: Palm) -> EntryId {
        self.write(Body::PalmChanged { palm, to }, None)
    }

    /// Takes a palm out of the register.
    pub fn remove(&mut self, palm: PalmId, why: &str) -> EntryId {
        self.write(
            Body::PalmRemoved {
                palm,
                why: why.into(),
            },
            None,
        )
    }

    /// Records a look.
    pub fn inspect(&mut self, palm: PalmId, inspection: Inspection) -> EntryId {
        self.write(Body::Inspected { palm, inspection }, None)
    }

    /// Sets a hold.
    pub fn hold(&mut self, palm: PalmId, reason: &str, until: Option<Day>) -> EntryId {
        self.write(
            Body::HoldSet {
                palm,
                reason: reason.into(),
                until,
                note: String::new(),
            },
            None,
        )
    }

    /// Lifts a hold.
    pub fn lift(&mut self, hold: EntryId) -> EntryId {
        self.write(
            Body::HoldLifted {
                hold,
                note: String::new(),
            },
            None,
        )
    }

    /// Notes something about a palm.
    pub fn note(&mut self, palm: PalmId, text: &str) -> EntryId {
        self.write(
            Body::Noted {
                palm,
                text: text.into(),
            },
            None,
        )
    }

    /// The following entries happen and are written from this moment (RFC 3339) on.
    pub fn at(&mut self, text: &str) -> &mut Book {
        self.now = Moment::parse(text).unwrap_or_else(|| panic!("not a moment: {text}"));
        self
    }

    /// Registers a blade by tag and kind.
    pub fn blade(&mut self, tag: &str, kind: BladeKind) -> BladeId {
        let tag = tag.to_owned();
        let blade = Blade {
            tag,
            kind,
            ..Blade::default()
        };
        BladeId(self.write(Body::BladeRegistered(blade), None).0)
    }

    /// A blade cuts stem 1 of a palm; when it began is not noted.
    pub fn cut(&mut self, blade: BladeId, palm: PalmId) -> EntryId {
        let cut = CutMade {
            palm,
            stem: 1,
            blade,
            started: None,
            off: TakenOff::default(),
            crew: String::new(),
            despite: String::new(),
            notes: String::new(),
            extra: Default::default(),
        };
        self.write(Body::CutMade(cut), None)
    }

    /// A blade is cleaned, brushed first; strength in percent, contact in minutes.
    pub fn clean(
        &mut self,
        blade: BladeId,
        agent: &str,
        strength_pct: Option<f64>,
        contact_min: Option<f64>,
    ) -> EntryId {
        let cleaning = Cleaning {
            blade,
            agent: agent.to_owned(),
            strength_pct,
            contact_min,
            brushed: Some(true),
            bath: None,
            by: String::new(),
            extra: Default::default(),
        };
        self.write(Body::Cleaned(cleaning), None)
    }

    /// A bath is mixed; strength in percent.
    pub fn bath(&mut self, agent: &str, strength_pct: Option<f64>) -> EntryId {
        let bath = Bath {
            agent: agent.to_owned(),
            strength_pct,
            kit: String::new(),
        };
        self.write(Body::BathMixed(bath), None)
    }

    /// Corrects an entry.
    pub fn correct(&mut self, entry: EntryId, body: Body) -> EntryId {
        self.write(body, Some(entry))
    }

    /// Takes an entry back.
    pub fn withdraw(&mut self, entry: EntryId) -> EntryId {
        self.write(
            Body::Withdrawn {
                why: "mistake".into(),
            },
            Some(entry),
        )
    }

    /// Everything written so far.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The state it makes.
    pub fn state(&self) -> State {
        State::fold(self.entries.iter().cloned())
    }
}
