//! A site with palms of every class: order, distances, what is cut, where is cleaned.

use super::*;
use crate::office::Note;
use crate::world::World;
use model::{Body, Inspection, Moment, PalmId, Site};
use testkit::{InspectionWith, PalmWith, day, inspection, noon, palm};

/// A palm: tag, metres north of the gate, last look, hold, dead fronds.
type Stands = (
    &'static str,
    Option<f64>,
    Option<&'static str>,
    Option<&'static str>,
    u32,
);

/// Grounds with these palms.
fn grounds(palms: &[Stands]) -> Office {
    let world = World {
        now: testkit::clock("2026-06-01"),
        as_of: Some(day("2026-06-01")),
        new_id: testkit::ids(5),
        device: "test".to_owned(),
    };
    let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
    let write = |body: Body| {
        let note = Note {
            id: None,
            at: Moment(noon("2026-06-01").0 - 3_600_000),
            by: "Tester".into(),
            body,
            replaces: None,
        };
        PalmId(office.record(vec![note]).unwrap()[0].id.0)
    };
    write(Body::SiteDescribed(Site {
        name: "Grounds".into(),
        gate: Some(north(0.0)),
        ..Site::default()
    }));
    for &(tag, metres, look, hold, brown) in palms {
        let mut words = palm("Sabal palmetto").tag(tag).site("Grounds").wires(60.0);
        words.position = metres.map(north);
        let palm = write(Body::PalmRegistered(words));
        if let Some(date) = look {
            let inspection: Inspection = inspection(date).counts(30, 0, brown);
            write(Body::Inspected { palm, inspection });
        }
        if let Some(reason) = hold {
            write(Body::HoldSet {
                palm,
                reason: reason.into(),
                until: None,
                note: "as told".into(),
            });
        }
    }
    office
}

/// So many metres north of a corner in the open sea.
fn north(metres: f64) -> Position {
    let degrees = (metres / travel::EARTH_RADIUS_M).to_degrees();
    Position {
        lat: 27.0 + degrees,
        lon: -82.0,
    }
}

fn asked(which: Which) -> Ask {
    Ask {
        site: "Grounds".into(),
        which,
        cut_min: CUT_MIN,
        sets: 2,
        soak_min: Some(10.0),
    }
}

const LOOKED: Option<&str> = Some("2026-05-30");

#[test]
fn the_ill_come_last_however_near_they_stand() {
    let office = grounds(&[
        ("ILL", Some(5.0), LOOKED, Some("lab-confirmed"), 3),
        ("ODD", Some(10.0), LOOKED, Some("wilt-suspect"), 3),
        ("NEW", Some(95.0), None, None, 0),
        ("LOST", None, LOOKED, None, 3),
        ("FAR", Some(90.0), LOOKED, None, 3),
        ("FIT", Some(40.0), LOOKED, None, 3),
    ]);
    let walk = walk(&office, &Standings::default(), &asked(Which::All)).unwrap();
    let tags: Vec<&str> = walk
        .stops
        .iter()
        .map(|s| s.record.palm.tag.as_str())
        .collect();
    assert_eq!(tags, ["FIT", "FAR", "LOST", "NEW", "ODD", "ILL"]);
    // from the gate to 40, 90, 95, back to 10, 5: nothing is counted to and from where nobody knows
    assert!(
        (walk.way.metres - 185.0).abs() < 1e-6,
        "{}",
        walk.way.metres
    );
    let metres: Vec<Option<f64>> = walk
        .stops
        .iter()
        .map(|s| s.metres.map(f64::round))
        .collect();
    assert_eq!(
        metres,
        [Some(40.0), Some(50.0), None, None, Some(85.0), Some(5.0)]
    );
    assert!(walk.way.exact && walk.way.unplaced == 1);
    assert_eq!(Health::ALL.map(|health| walk.count(health)), [3, 1, 1, 1]);
    // hands and boots are cleaned when leaving an ill palm, also for the next ill one
    let hands: Vec<bool> = walk.stops.iter().map(|s| s.hands).collect();
    assert_eq!(hands, [false, false, false, false, false, true]);
}

#[test]
fn only_what_may_be_cut_takes_a_blade() {
    let office = grounds(&[
        ("A", Some(10.0), LOOKED, None, 4),
        ("B", Some(20.0), LOOKED, None, 4),
        ("C", Some(30.0), LOOKED, None, 0),
        ("D", Some(40.0), LOOKED, Some("nest"), 4),
        ("E", Some(50.0), LOOKED, Some("wilt-suspect"), 4),
    ]);
    let walk = walk(&office, &Standings::default(), &asked(Which::All)).unwrap();
    let cut: Vec<(&str, Option<usize>)> = walk
        .stops
        .iter()
        .map(|s| (s.record.palm.tag.as_str(), s.cut))
        .collect();
    assert_eq!(
        cut,
        [
            ("A", Some(0)),
            ("B", Some(1)),
            ("C", None),
            ("D", None),
            ("E", None)
        ]
    );
    let made = walk.blades.as_ref().unwrap();
    assert_eq!(made.cuts.len(), 2);
    assert_eq!(made.cuts[0].job.minutes, CUT_MIN);
    let blade = |at: usize| walk.blade(&walk.stops[at]);
    assert_eq!(blade(0), Some(("A".to_owned(), true)));
    assert!(blade(1).is_some() && blade(2).is_none());
}

#[test]
fn palms_are_chosen_by_tag_and_by_what_is_due() {
    let office = grounds(&[
        ("A", Some(10.0), LOOKED, None, 0),
        ("B", Some(20.0), LOOKED, None, 9),
        ("C", Some(30.0), Some("2025-01-01"), None, 0),
    ]);
    let tags = |walk: SiteWalk| -> Vec<String> {
        walk.stops
            .iter()
            .map(|s| s.record.palm.tag.clone())
            .collect()
    };
    let walk = |which: Which| walk(&office, &Standings::default(), &asked(which));
    let due = walk(Which::Due).map(tags).unwrap();
    assert!(
        due.contains(&"B".to_owned()) && due.contains(&"C".to_owned()),
        "{due:?}"
    );
    assert!(!due.contains(&"A".to_owned()), "{due:?}");
    let some = |list: &[&str]| Which::Tags(list.iter().map(|t| (*t).to_owned()).collect());
    assert_eq!(walk(some(&["A", "C"])).map(tags).unwrap(), ["A", "C"]);
    assert_eq!(
        walk(some(&["A", "Z"])),
        Err(Cannot::NoSuch(vec!["Z".to_owned()]))
    );
    let elsewhere = Ask {
        site: "Nowhere".into(),
        ..asked(Which::All)
    };
    let nobody = super::walk(&office, &Standings::default(), &elsewhere);
    assert_eq!(nobody, Err(Cannot::Nobody));
}
