use super::*;
use crate::office::Note;
use crate::world::World;
use model::{Bath, Blade, BladeId, Body, CutMade, EntryId, Inspection, Spear, TakenOff};
use std::sync::Arc;
use testkit::{PalmWith, day, noon, palm};

/// A yard on 2026-06-01 at noon with three palms and a saw; times are minutes before noon.
struct Yard {
    office: Office,
    palms: Vec<PalmId>,
    saw: BladeId,
}

fn at(minutes_ago: i64) -> Moment {
    Moment(noon("2026-06-01").0 - minutes_ago * 60_000)
}

impl Yard {
    fn new() -> Yard {
        let ledger = Arc::new(ledger::Memory::new());
        let world = World {
            now: testkit::clock("2026-06-01"),
            as_of: Some(day("2026-06-01")),
            new_id: testkit::ids(3),
            device: "test".to_owned(),
        };
        let office = Office::open(ledger, world).unwrap();
        let mut yard = Yard {
            office,
            palms: Vec::new(),
            saw: BladeId(Uuid::nil()),
        };
        for tag in ["A", "B", "C"] {
            let body = Body::PalmRegistered(palm("Phoenix canariensis").tag(tag));
            let id = yard.write(9000, body);
            yard.palms.push(PalmId(id.0));
        }
        let saw = Blade {
            tag: "S1".into(),
            kind: BladeKind::HandSaw,
            ..Blade::default()
        };
        yard.saw = BladeId(yard.write(9000, Body::BladeRegistered(saw)).0);
        yard
    }

    fn write(&self, ago: i64, body: Body) -> EntryId {
        let note = Note {
            id: None,
            at: at(ago),
            by: "Tester".into(),
            body,
            replaces: None,
        };
        self.office.record(vec![note]).unwrap()[0].id
    }

    fn cut(&self, ago: i64, palm: usize) {
        let cut = CutMade {
            palm: self.palms[palm],
            stem: 1,
            blade: self.saw,
            started: None,
            off: TakenOff::default(),
            crew: String::new(),
            despite: String::new(),
            notes: String::new(),
            extra: Default::default(),
        };
        self.write(ago, Body::CutMade(cut));
    }

    fn soak(&self, ago: i64, bath: Option<EntryId>, minutes: f64) {
        let (agent, strength_pct) = match bath {
            Some(_) => (String::new(), None),
            None => ("bleach".to_owned(), Some(25.0)),
        };
        let cleaning = Cleaning {
            blade: self.saw,
            agent,
            strength_pct,
            contact_min: Some(minutes),
            brushed: Some(true),
            bath,
            by: String::new(),
            extra: Default::default(),
        };
        self.write(ago, Body::Cleaned(cleaning));
    }

    fn ready(&self, palm: usize) -> Ready {
        let state = self.office.state();
        let blade = state.blade(self.saw).unwrap();
        ready(&self.office, blade, Some(self.palms[palm]), at(0))
    }
}

#[test]
fn a_blade_goes_from_palm_to_palm() {
    let yard = Yard::new();
    assert_eq!(yard.ready(0), Ready::NothingKnown);
    yard.soak(60, None, 10.0);
    assert_eq!(yard.ready(0), Ready::Clean { since: at(60) });
    yard.cut(50, 0);
    assert_eq!(yard.ready(0), Ready::SamePalm);
    let last = Some(yard.palms[0]);
    assert_eq!(yard.ready(1), Ready::NotCleaned { last });
}

#[test]
fn a_hold_set_after_the_cut_blocks_and_a_nest_does_not() {
    let yard = Yard::new();
    yard.soak(60, None, 10.0);
    yard.cut(50, 0);
    let hold = |reason: &str| Body::HoldSet {
        palm: yard.palms[0],
        reason: reason.into(),
        until: None,
        note: String::new(),
    };
    yard.write(40, hold("nest"));
    assert!(matches!(yard.ready(1), Ready::NotCleaned { .. }));
    yard.write(30, hold("wilt-suspect"));
    let blocked = Ready::Blocked {
        palm: yard.palms[0],
        at: at(50),
        reason: "wilt-suspect".into(),
    };
    assert_eq!(yard.ready(1), blocked);
    assert_eq!(yard.ready(0), Ready::SamePalm, "the palm itself may go on");
    yard.soak(20, None, 7.0);
    assert_eq!(yard.ready(1), blocked, "seven of ten minutes");
    yard.soak(10, None, 10.0);
    assert_eq!(yard.ready(1), Ready::Clean { since: at(10) });
}

/// A spear that is down calls for a hold, whether somebody has set it or not.
#[test]
fn a_hold_that_is_only_advised_blocks_too() {
    let yard = Yard::new();
    yard.soak(60, None, 10.0);
    yard.cut(50, 0);
    let inspection = Inspection {
        green: Some(60),
        yellowing: Some(3),
        brown: Some(2),
        spear: Some(Spear::Down),
        ..Inspection::blank(1, day("2026-05-31"))
    };
    let palm = yard.palms[0];
    yard.write(40, Body::Inspected { palm, inspection });
    let Ready::Blocked { reason, .. } = yard.ready(1) else {
        panic!("{:?}", yard.ready(1))
    };
    assert_eq!(reason, "spear");
}

#[test]
fn a_bath_tells_agent_strength_age_and_uses() {
    let yard = Yard::new();
    let bath = Body::BathMixed(Bath {
        agent: "bleach".into(),
        strength_pct: Some(25.0),
        kit: String::new(),
    });
    let bath = yard.write(200, bath);
    yard.cut(195, 1);
    yard.soak(150, Some(bath), 10.0);
    assert_eq!(yard.ready(0), Ready::Clean { since: at(150) });
    yard.cut(100, 1);
    yard.soak(60, Some(bath), 10.0);
    let mixed = at(200);
    let day = mixed.day();
    assert_eq!(
        yard.ready(0),
        Ready::BathSpent { mixed, day },
        "140 minutes"
    );
    let state = yard.office.state();
    let record = &state.baths[&bath];
    assert_eq!((age_min(record, at(60)), uses(record, at(60))), (140.0, 1));
    assert!(spent(record, at(100)).is_none());
    assert_eq!(spent(record, at(60)).unwrap().code, "clean-bath-old");
}

/// *Phoenix canariensis* takes the wilt [pp215]; a coconut is not known as a host, and nothing says it is none.
#[test]
fn every_palm_that_may_take_a_wilt_asks_for_a_clean_blade() {
    let yard = Yard::new();
    let leg = |palm: usize| Leg {
        palm: yard.palms[palm],
        minutes: 5.0,
    };
    let jobs = jobs(&yard.office, &[leg(0), leg(0), leg(1), leg(2)]);
    let needs: Vec<bool> = jobs.iter().map(|job| job.needs_clean).collect();
    assert_eq!(needs, [true, false, true, true]);
    let plan = care::rotation::rotation(&jobs, &bath_rules(2, 10.0)).unwrap();
    assert_eq!(plan.turns.len(), 4);
}
