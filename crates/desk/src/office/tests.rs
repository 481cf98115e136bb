mod work;

use super::*;
use crate::measure::Measure;
use crate::words::{Lang, Words};
use ledger::Memory;
use model::{Inspection, Metres};
use testkit::{Book as Pages, InspectionWith, PalmWith, clock, day, ids, inspection, noon, palm};

const TODAY: &str = "2026-06-15";

fn world() -> World {
    World {
        now: clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: ids(7),
        device: "office".into(),
    }
}

fn office() -> Office {
    Office::open(Arc::new(Memory::new()), world()).unwrap()
}

fn note(body: Body) -> Note {
    Note {
        id: None,
        at: noon("2026-06-01"),
        by: "Keeper".into(),
        body,
        replaces: None,
    }
}

fn register(office: &Office, palm: Palm) -> PalmId {
    PalmId(
        office
            .record(vec![note(Body::PalmRegistered(palm))])
            .unwrap()[0]
            .id
            .0,
    )
}

fn look(palm: PalmId, inspection: Inspection) -> Note {
    note(Body::Inspected { palm, inspection })
}

/// Codes of what is wrong with a note, and words for each in both languages.
fn refused(office: &Office, notes: Vec<Note>) -> Vec<&'static str> {
    let before = (office.ledger.head().unwrap(), office.state());
    let Err(Refused::Findings(findings)) = office.record(notes) else {
        panic!("must be refused with findings")
    };
    assert_eq!(
        (office.ledger.head().unwrap(), office.state()),
        before,
        "nothing was recorded"
    );
    for lang in Lang::ALL {
        let words = Words::new(lang);
        for finding in &findings {
            let text = words.finding(finding, &Measure::new(crate::measure::Units::Metric, words));
            assert!(
                text != finding.code && !text.contains("{$"),
                "{}: {text}",
                lang.tag()
            );
        }
    }
    findings.into_iter().map(|finding| finding.code).collect()
}

#[test]
fn what_is_recorded_is_in_the_state_the_ledger_and_the_history() {
    let office = office();
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    let before = office.state();
    let entries = office
        .record(vec![look(a, inspection("2026-06-01").counts(30, 2, 1))])
        .unwrap();
    assert_eq!(
        (
            entries.len(),
            entries[0].by.as_str(),
            entries[0].device.as_str()
        ),
        (1, "Keeper", "office")
    );
    assert_eq!(office.state().palm(a).unwrap().inspections.len(), 1);
    assert!(
        before.palm(a).unwrap().inspections.is_empty(),
        "a snapshot stays as it was"
    );
    assert_eq!(office.history(a).unwrap().len(), 2);
    assert_eq!(office.history(a).unwrap()[1], entries[0]);
    let again = Office::open(office.ledger.clone(), world()).unwrap();
    assert_eq!(again.state(), office.state());
}

#[test]
fn a_palm_and_its_look_can_come_in_one_batch() {
    let office = office();
    let id = office.new_id();
    let first = Note {
        id: Some(id),
        ..note(Body::PalmRegistered(
            palm("Sabal palmetto").tag("A1").stems(2),
        ))
    };
    let second = look(PalmId(id.0), inspection("2026-06-01").stem(2));
    office.record(vec![first, second]).unwrap();
    assert_eq!(office.state().by_tag("A1").unwrap().inspections.len(), 1);
}

#[test]
fn sending_twice_records_once() {
    let office = office();
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    let sent = Note {
        id: Some(office.new_id()),
        ..look(a, inspection("2026-06-01").counts(30, 2, 1))
    };
    let first = office.record(vec![sent.clone()]).unwrap();
    let head = office.ledger.head().unwrap();
    let later = Note {
        at: noon("2026-06-02"),
        by: "Crew".into(),
        ..sent.clone()
    };
    assert_eq!(
        office.record(vec![later, sent.clone()]).unwrap(),
        [first[0].clone(), first[0].clone()]
    );
    assert_eq!(office.ledger.head().unwrap(), head);
    let other = Note {
        body: Body::Noted {
            palm: a,
            text: "x".into(),
        },
        ..sent
    };
    assert_eq!(refused(&office, vec![other]), ["recorded-otherwise"]);
}

#[test]
fn the_correction_written_last_counts_even_when_the_clock_stands_still() {
    let office = office();
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    let first = office
        .record(vec![look(a, inspection("2026-06-01").counts(30, 0, 0))])
        .unwrap()[0]
        .id;
    // Ids that run backwards: only the moment of writing can tell which came last.
    for (green, id) in [
        (31, testkit::id(1, 9)),
        (32, testkit::id(1, 5)),
        (33, testkit::id(1, 1)),
    ] {
        let id = Some(EntryId(id));
        let to = look(a, inspection("2026-06-01").counts(green, 0, 0));
        office
            .record(vec![Note {
                id,
                replaces: Some(first),
                ..to
            }])
            .unwrap();
        assert_eq!(
            office.state().palm(a).unwrap().inspections[0].green,
            Some(green)
        );
    }
}

#[test]
fn a_wrong_clock_elsewhere_does_not_pull_ours_along() {
    let office = office();
    let mut pages = Pages::new(3);
    pages
        .on("2099-01-01")
        .register(palm("Sabal palmetto").tag("Z9"));
    assert_eq!(office.take_in(pages.entries()).unwrap(), 1);
    assert_eq!(office.take_in(pages.entries()).unwrap(), 0);
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    let written = office.history(a).unwrap()[0].written_at;
    assert_eq!(written.day(), day(TODAY));
}

#[test]
fn what_others_write_is_seen() {
    let ledger: Arc<dyn Ledger> = Arc::new(Memory::new());
    let one = Office::open(ledger.clone(), world()).unwrap();
    let other = Office::open(
        ledger,
        World {
            new_id: ids(8),
            ..world()
        },
    )
    .unwrap();
    register(&one, palm("Sabal palmetto").tag("A1"));
    assert!(other.state().palms.is_empty());
    other.refresh().unwrap();
    assert_eq!(other.state(), one.state());
    assert_eq!(
        refused(
            &other,
            vec![note(Body::PalmRegistered(palm("x").tag("A1")))]
        ),
        ["tag-taken"]
    );
}

#[test]
fn tags_are_unique_within_a_batch_and_free_again_after_removal() {
    let office = office();
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    let b = register(&office, palm("Sabal palmetto").tag("B1"));
    let new = |tag: &str| note(Body::PalmRegistered(palm("Sabal palmetto").tag(tag)));
    let rename = |palm_id, tag: &str| {
        note(Body::PalmChanged {
            palm: palm_id,
            to: palm("Sabal palmetto").tag(tag),
        })
    };
    assert_eq!(refused(&office, vec![new("C1"), new("C1")]), ["tag-taken"]);
    assert_eq!(refused(&office, vec![rename(a, "B1")]), ["tag-taken"]);
    // In one batch two palms change tags by way of a third.
    office
        .record(vec![rename(a, "T"), rename(b, "A1"), rename(a, "B1")])
        .unwrap();
    assert_eq!(office.state().by_tag("A1").unwrap().id, b);
    let removal = note(Body::PalmRemoved {
        palm: b,
        why: "felled".into(),
    });
    office.record(vec![removal, new("A1")]).unwrap();
    assert_ne!(office.state().by_tag("A1").unwrap().id, b);
    office.record(vec![rename(a, "B1")]).unwrap();
}

#[test]
fn nonsense_is_refused_with_its_reason() {
    let office = office();
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    let nobody = PalmId(testkit::id(99, 1));
    let seen = || inspection("2026-06-01").counts(30, 2, 1);
    let described = |change: fn(&mut Palm)| {
        note(Body::PalmRegistered(
            palm("Sabal palmetto").tag("N").with(change),
        ))
    };
    let hold = |reason: &str| Body::HoldSet {
        palm: a,
        reason: reason.into(),
        until: None,
        note: String::new(),
    };
    let replacing = |id, note: Note| Note {
        replaces: Some(id),
        ..note
    };
    let first = office.record(vec![look(a, seen())]).unwrap()[0].id;
    for (code, wrong) in [
        ("palm-unknown", look(nobody, seen())),
        (
            "palm-unknown",
            note(Body::Noted {
                palm: nobody,
                text: "x".into(),
            }),
        ),
        (
            "palm-unknown",
            note(Body::PalmRemoved {
                palm: nobody,
                why: "x".into(),
            }),
        ),
        ("stem-out-of-range", look(a, seen().stem(2))),
        ("stem-out-of-range", look(a, seen().stem(0))),
        ("count-absurd", look(a, seen().counts(1001, 0, 0))),
        ("count-absurd", look(a, seen().new_leaves(5000))),
        ("more-off-than-on", look(a, seen().removed(0, 0, 2))),
        ("clock-impossible", look(a, seen().clock(8.0, 13.0))),
        ("date-in-future", look(a, inspection("2027-01-01"))),
        ("date-too-early", look(a, inspection("0202-06-01"))),
        (
            "date-in-future",
            described(|p| p.moved_on = Some(day("2099-01-01"))),
        ),
        ("tag-malformed", described(|p| p.tag = " N".into())),
        ("tag-malformed", described(|p| p.tag = String::new())),
        ("stems-absurd", described(|p| p.stems = 0)),
        (
            "figure-out-of-range",
            described(|p| p.trunk_height = Some(Metres(-1.0))),
        ),
        (
            "figure-out-of-range",
            described(|p| p.wires = Some(Metres(f64::NAN))),
        ),
        (
            "figure-out-of-range",
            described(|p| p.full_crown = Some(0.0)),
        ),
        (
            "figure-out-of-range",
            note(Body::PalmRegistered(palm("x").tag("N").at(91.0, 0.0))),
        ),
        ("hold-without-reason", note(hold(" "))),
        (
            "hold-unknown",
            note(Body::HoldLifted {
                hold: first,
                note: String::new(),
            }),
        ),
        (
            "withdrawal-of-nothing",
            note(Body::Withdrawn { why: "x".into() }),
        ),
        (
            "entry-unknown",
            replacing(EntryId(nobody.0), look(a, seen())),
        ),
        (
            "correction-of-another-kind",
            replacing(EntryId(a.0), look(a, seen())),
        ),
        (
            "correction-of-another-kind",
            replacing(first, described(|_| ())),
        ),
    ] {
        assert_eq!(refused(&office, vec![wrong.clone()]), [code], "{wrong:?}");
    }
    // Exactly at the edges all is well.
    office
        .record(vec![look(
            a,
            inspection(TODAY)
                .counts(1000, 0, 3)
                .removed(0, 0, 3)
                .clock(8.5, 3.25),
        )])
        .unwrap();
}

#[test]
fn looking_back_does_not_forbid_to_record_what_has_happened() {
    // Noon of 15 June, read as of March.
    let world = World {
        as_of: Some(day("2026-03-01")),
        ..world()
    };
    let office = Office::open(Arc::new(Memory::new()), world).unwrap();
    assert_eq!(office.today(), day("2026-03-01"));
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    office
        .record(vec![look(a, inspection("2026-06-01"))])
        .unwrap();
}

#[test]
fn readings_are_kept_until_the_record_changes() {
    let office = office();
    let a = register(
        &office,
        palm("Sabal palmetto").tag("A1").stems(2).at(27.9, -82.5),
    );
    let b = register(&office, palm("no such palm").tag("B1"));
    office
        .record(vec![look(a, inspection("2026-06-01").counts(30, 2, 1))])
        .unwrap();
    let first = office.reading(a).unwrap();
    assert_eq!(
        first
            .stems
            .iter()
            .map(|(stem, _)| *stem)
            .collect::<Vec<_>>(),
        [1, 2]
    );
    assert!((first.probabilities.iter().sum::<f64>() - 1.0).abs() < 1e-9);
    office
        .record(vec![look(b, inspection("2026-06-01").counts(3, 2, 1))])
        .unwrap();
    assert!(
        Arc::ptr_eq(&first, &office.reading(a).unwrap()),
        "another palm's look changes nothing here"
    );
    office
        .record(vec![look(a, inspection("2026-06-10").counts(20, 9, 4))])
        .unwrap();
    let second = office.reading(a).unwrap();
    assert!(!Arc::ptr_eq(&first, &second));
    assert_ne!(first.probabilities, second.probabilities);
    assert!(office.reading(PalmId(testkit::id(99, 1))).is_none());
    let seen = Mutex::new(BTreeMap::new());
    office.readings(|palm, reading| {
        seen.lock().unwrap().insert(palm, reading.probabilities);
    });
    let seen = seen.into_inner().unwrap();
    assert_eq!(seen.len(), 2);
    assert_eq!(
        seen[&a], second.probabilities,
        "the same reading, bit for bit, whichever thread makes it"
    );
}

#[test]
fn species_and_climate_are_looked_up() {
    let office = office();
    assert_eq!(
        office.species(&palm("sabal palmetto")).unwrap().name,
        "Sabal palmetto"
    );
    assert!(office.species(&palm("Nonesuch nowhere")).is_none());
    // Tampa is in the tables; the middle of the Pacific is not.
    assert!(office.climate(&palm("x").at(27.95, -82.46)).is_some());
    assert!(office.climate(&palm("x").at(0.0, -150.0)).is_none());
    assert!(office.climate(&palm("x")).is_none());
}

#[test]
fn the_demo_is_marked() {
    let plain = office();
    assert!(!plain.is_demo());
    plain.ledger.set_meta(DEMO, "yes").unwrap();
    assert!(
        Office::open(plain.ledger.clone(), world())
            .unwrap()
            .is_demo()
    );
    let office = office();
    office.record(demo::notes(day(TODAY))).unwrap();
    assert!(office.is_demo());
    assert!(
        office.state().noticed().is_empty(),
        "{:?}",
        office.state().noticed()
    );
}

#[test]
fn many_threads_record_and_read_at_once() {
    let office = office();
    let a = register(&office, palm("Sabal palmetto").tag("A1"));
    std::thread::scope(|scope| {
        for thread in 0..4 {
            let office = &office;
            scope.spawn(move || {
                for n in 0..20 {
                    let text = format!("{thread}-{n}");
                    office
                        .record(vec![note(Body::Noted {
                            palm: a,
                            text: text.clone(),
                        })])
                        .unwrap();
                    assert!(
                        office
                            .state()
                            .palm(a)
                            .unwrap()
                            .notes
                            .iter()
                            .any(|(_, t)| *t == text)
                    );
                }
            });
        }
    });
    assert_eq!(office.state().palm(a).unwrap().notes.len(), 80);
    assert_eq!(office.history(a).unwrap().len(), 81);
}
