use super::*;
use crate::forms::{codes, confirm_name};
use model::Clock;
use std::sync::Arc;
use testkit::{Book, InspectionWith, PalmWith, day};

/// What is typed, and the field and code of what is wrong with it.
type Case = (
    &'static [(&'static str, &'static str)],
    (&'static str, &'static str),
);

fn record(inspections: Vec<Inspection>) -> Arc<PalmRecord> {
    let mut book = Book::new(1);
    let palm = book.register(
        testkit::palm("Sabal palmetto")
            .stems(2)
            .planted("2020-01-01"),
    );
    for look in inspections {
        book.inspect(palm, look);
    }
    book.state().palm(palm).unwrap().clone()
}

fn counted(date: &str, green: u32) -> Inspection {
    testkit::inspection(date).counts(green, 1, 0)
}

fn check(pairs: &[(&str, &str)], earlier: Vec<Inspection>) -> Result<Inspection, Vec<Trouble>> {
    let record = record(earlier);
    inspection(
        &Typed::of(pairs.to_vec()),
        About {
            record: &record,
            today: day("2026-05-01"),
            correcting: None,
        },
    )
}

#[test]
fn a_full_form_becomes_an_inspection_and_comes_back_as_it_was_typed() {
    let pairs = [
        ("stem", "2"),
        ("date", "2026-04-30"),
        ("green", "24"),
        ("yellowing", "0"),
        ("brown", "3"),
        ("new_leaves", "2"),
        ("removed_green", ""),
        ("removed_yellowing", ""),
        ("removed_brown", "3"),
        ("spear", "leaning"),
        ("clock_left", "8.25"),
        ("clock_right", "4"),
        ("notes", "by the gate"),
    ];
    let look = check(&pairs, vec![]).unwrap();
    assert_eq!((look.stem, look.date), (2, day("2026-04-30")));
    assert_eq!(
        (look.green, look.yellowing, look.brown, look.new_leaves),
        (Some(24), Some(0), Some(3), Some(2))
    );
    assert_eq!(
        look.removed,
        Removed {
            green: None,
            yellowing: None,
            brown: Some(3)
        }
    );
    assert_eq!(
        (look.spear, look.clock_left, look.clock_right),
        (Some(Spear::Leaning), Some(Clock(8.25)), Some(Clock(4.0)))
    );
    assert_eq!(typed_inspection(&look), Typed::of(pairs));
}

#[test]
fn missing_is_not_zero() {
    let look = check(
        &[("date", "2026-05-01"), ("green", "0"), ("yellowing", " ")],
        vec![],
    )
    .unwrap();
    assert_eq!(
        (look.green, look.yellowing, look.brown),
        (Some(0), None, None)
    );
}

#[test]
fn each_slip_is_told_at_its_field() {
    let cases: [Case; 15] = [
        (
            &[("date", ""), ("green", "1")],
            ("date", "form-date-missing"),
        ),
        (
            &[("date", "2026-05-02"), ("green", "1")],
            ("date", "form-date-in-future"),
        ),
        (
            &[("date", "1799-12-31"), ("spear", "firm")],
            ("date", "form-date-too-old"),
        ),
        (
            &[("date", "1 May"), ("green", "1")],
            ("date", "form-date-not-read"),
        ),
        (&[("date", "2026-05-01")], ("", "form-nothing-noted")),
        (
            &[("date", "2019-12-31"), ("green", "1")],
            ("date", "form-before-planting"),
        ),
        (
            &[("date", "2026-05-01"), ("green", "-1")],
            ("green", "form-count-not-whole"),
        ),
        (
            &[("date", "2026-05-01"), ("green", "12.5")],
            ("green", "form-count-not-whole"),
        ),
        (
            &[("date", "2026-05-01"), ("brown", "1001")],
            ("brown", "form-count-too-large"),
        ),
        (
            &[("date", "2026-05-01"), ("green", "1"), ("stem", "3")],
            ("stem", "form-stem-unknown"),
        ),
        (
            &[("date", "2026-05-01"), ("spear", "bent")],
            ("spear", "form-spear-unknown"),
        ),
        (
            &[("date", "2026-05-01"), ("clock_left", "4")],
            ("clock_left", "form-clock-left"),
        ),
        (
            &[("date", "2026-05-01"), ("clock_right", "8")],
            ("clock_right", "form-clock-right"),
        ),
        (
            &[("date", "2026-05-01"), ("clock_right", "4.1")],
            ("clock_right", "form-clock-right"),
        ),
        (
            &[
                ("date", "2026-05-01"),
                ("brown", "2"),
                ("removed_brown", "3"),
            ],
            ("removed_brown", "form-more-taken-than-counted"),
        ),
    ];
    for (pairs, expected) in cases {
        assert_eq!(codes(check(pairs, vec![])), [expected], "{pairs:?}");
    }
}

#[test]
fn what_may_be_meant_is_asked_once() {
    let cases: [Case; 3] = [
        (
            &[("date", "2026-03-01"), ("green", "20")],
            ("date", "form-same-day"),
        ),
        (
            &[("date", "2026-04-01"), ("green", "220"), ("yellowing", "0")],
            ("green", "form-count-jump"),
        ),
        (
            &[("date", "2026-04-01"), ("green", "300")],
            ("green", "form-green-unusual"),
        ),
    ];
    for (pairs, expected) in cases {
        let earlier = vec![counted("2026-03-01", 22)];
        assert_eq!(codes(check(pairs, earlier.clone())), [expected]);
        let confirm = confirm_name(expected.1);
        let mut confirmed = pairs.to_vec();
        confirmed.push((&confirm, "yes"));
        assert!(check(&confirmed, earlier).is_ok(), "{expected:?}");
    }
}

#[test]
fn correcting_a_look_is_no_second_look_and_keeps_what_the_form_does_not_show() {
    let mut before = counted("2026-03-01", 22);
    before.signs = vec!["tips-brown".into()];
    before.absent = vec!["conk".into()];
    before.extra.insert("inspector".into(), "north crew".into());
    let record = record(vec![before.clone()]);
    let about = About {
        record: &record,
        today: day("2026-05-01"),
        correcting: Some(&before),
    };
    let after = inspection(&Typed::of([("date", "2026-03-01"), ("green", "23")]), about).unwrap();
    assert_eq!(
        (after.green, &after.signs, &after.absent, &after.extra),
        (Some(23), &before.signs, &before.absent, &before.extra)
    );
}
