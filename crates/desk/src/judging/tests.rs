use super::*;
use crate::office::{Note, Office};
use crate::world::World;
use ledger::Memory;
use model::{Body, Inspection, Palm, PalmId, Spear};
use std::sync::Arc;
use testkit::{InspectionWith, PalmWith, clock, day, ids, inspection, noon, palm};

const TODAY: &str = "2026-06-15";

fn office() -> Office {
    let world = World {
        now: clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: ids(7),
        device: "office".into(),
    };
    Office::open(Arc::new(Memory::new()), world).unwrap()
}

/// A palm with its looks in a register, and what the judge is told of it.
fn told(palm: Palm, looks: Vec<Inspection>) -> Told {
    let office = office();
    let note = |body| Note {
        id: None,
        at: noon("2026-06-01"),
        by: "Keeper".into(),
        body,
        replaces: None,
    };
    let palm = PalmId(
        office
            .record(vec![note(Body::PalmRegistered(palm))])
            .unwrap()[0]
            .id
            .0,
    );
    for inspection in looks {
        office
            .record(vec![note(Body::Inspected { palm, inspection })])
            .unwrap();
    }
    let record = office.state().palm(palm).unwrap().clone();
    Told::of_record(&office, &record, &office.reading(palm).unwrap())
}

#[test]
fn a_registered_palm_tells_what_is_known_of_it() {
    let moved = palm("Queen palm")
        .at(-27.4, 153.0)
        .moved("2026-03-02")
        .planted("2026-03-04");
    let look = inspection("2026-05-20")
        .counts(18, 2, 1)
        .sign("a")
        .absent("b");
    let told = told(moved, vec![look]);
    assert_eq!(
        told.species.map(|s| s.name.as_str()),
        Some("Syagrus romanzoffiana")
    );
    assert_eq!(told.species_name, "Queen palm");
    assert_eq!(
        (told.on, told.latitude),
        (Some(day("2026-05-20")), Some(-27.4))
    );
    assert_eq!(
        (told.moved_on, told.planted_on),
        (Some(day("2026-03-02")), Some(day("2026-03-04")))
    );
    assert_eq!(
        (&told.seen[..], &told.absent[..]),
        (&["a".to_owned()][..], &["b".to_owned()][..])
    );
}

#[test]
fn the_counts_are_told_as_likelihoods_and_not_where_nobody_counted() {
    let looks = || {
        vec![
            inspection("2026-03-01").counts(30, 1, 0),
            inspection("2026-06-01").counts(8, 6, 9).removed(0, 0, 9),
        ]
    };
    let losing = told(palm("Sabal palmetto"), looks()).counts.unwrap();
    assert_eq!(losing[1], 0.0, "never moved: {losing:?}");
    assert!(
        losing[3] > losing[0],
        "two thirds lost in a season: {losing:?}"
    );
    assert_eq!(told(palm("Sabal palmetto"), vec![]).counts, None);
}

#[test]
fn of_two_looks_the_later_counts_of_two_stems_the_one_that_has_the_sign_and_old_looks_do_not() {
    let at = |date: &str, stem: u16| inspection(date).stem(stem);
    let told = told(
        palm("Phoenix reclinata").stems(3),
        vec![
            at("2026-04-20", 1).sign("long-ago"),
            at("2026-05-11", 1)
                .sign("gone")
                .sign("still")
                .absent("come"),
            at("2026-06-10", 1)
                .absent("gone")
                .sign("come")
                .absent("on-one-stem"),
            at("2026-06-10", 2).sign("on-one-stem").absent("nowhere"),
            at("2026-06-10", 3)
                .absent("on-one-stem")
                .sign("both")
                .absent("both"),
        ],
    );
    assert_eq!(told.seen, ["both", "come", "on-one-stem", "still"]);
    assert_eq!(told.absent, ["both", "gone", "nowhere"]);
    assert_eq!(told.on, Some(day("2026-06-10")));
}

#[test]
fn a_palm_nobody_looked_at_is_judged_today() {
    let told = told(palm("Zzyzx quux"), vec![]);
    assert_eq!(told.on, Some(day(TODAY)));
    assert_eq!(
        (told.species, told.species_name.as_str()),
        (None, "Zzyzx quux")
    );
    assert!(told.seen.is_empty() && told.absent.is_empty());
}

#[test]
fn the_spear_is_a_sign() {
    for (spear, sign) in [
        (Spear::Firm, "spear-firm"),
        (Spear::Leaning, "spear-leaning"),
        (Spear::Down, "spear-leaning"),
        (Spear::Pulled, "spear-pulls-out"),
    ] {
        let look = inspection("2026-06-01").spear(spear);
        assert_eq!(told(palm("Cocos nucifera"), vec![look]).seen, [sign]);
    }
}
