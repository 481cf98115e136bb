use super::*;
use crate::forms::{codes, confirm_name};
use std::sync::Arc;
use testkit::{Book, day};

fn nearest(name: &str) -> Option<Vec<String>> {
    match name {
        "Sabal palmetto" | "Phoenix roebelenii" => None,
        "Sabal palmeto" => Some(vec!["Sabal palmetto".into()]),
        _ => Some(vec![]),
    }
}

fn recorded(palm: Palm) -> (State, Arc<PalmRecord>) {
    let mut book = Book::new(1);
    let id = book.register(palm);
    let state = book.state();
    let record = state.palm(id).unwrap().clone();
    (state, record)
}

fn check_in(
    state: &State,
    changing: Option<&PalmRecord>,
    units: Units,
    pairs: &[(&str, &str)],
) -> Result<Palm, Vec<Trouble>> {
    let today = day("2026-05-01");
    palm(
        &Typed::of(pairs.to_vec()),
        &Register {
            state,
            changing,
            today,
            units,
            nearest: &nearest,
        },
    )
}

fn check(pairs: &[(&str, &str)]) -> Result<Palm, Vec<Trouble>> {
    check_in(&State::default(), None, Units::Metric, pairs)
}

const FULL: [(&str, &str); 16] = [
    ("tag", "B-17"),
    ("species", "Phoenix roebelenii"),
    ("site", "North yard"),
    ("stems", "3"),
    ("planted_on", "2020-02-03"),
    ("moved_on", "2026-03-01"),
    ("last_cleaned_on", "2026-04-01"),
    ("trunk_height", "2.5"),
    ("crown_across", "3.6"),
    ("lat", "27.95"),
    ("lon", "-82.46"),
    ("over", "path"),
    ("wires", "6.1"),
    ("full_crown", "50"),
    ("fronds_per_year", "18.5"),
    ("notes", "leans to the south"),
];

#[test]
fn a_full_form_becomes_a_palm_and_comes_back_as_it_was_typed() {
    let palm = check(&FULL).unwrap();
    assert_eq!(
        (palm.stems, palm.trunk_height, palm.wires),
        (3, Some(Metres(2.5)), Some(Metres(6.1)))
    );
    assert_eq!(
        palm.position,
        Some(Position {
            lat: 27.95,
            lon: -82.46
        })
    );
    assert_eq!(
        (palm.full_crown, palm.fronds_per_year),
        (Some(50.0), Some(18.5))
    );
    assert_eq!(palm.moved_on, Some(day("2026-03-01")));
    assert_eq!(palm.extra["crown_across_m"], "3.6");
    assert_eq!(typed_palm(&palm, Units::Metric), Typed::of(FULL));
}

#[test]
fn what_is_not_typed_stays_unknown() {
    let palm = check(&[("tag", "B1"), ("species", "Sabal palmetto")]).unwrap();
    let bare = Palm {
        tag: "B1".into(),
        species: "Sabal palmetto".into(),
        stems: 1,
        ..Palm::default()
    };
    assert_eq!(palm, bare);
}

#[test]
fn each_slip_is_told_at_its_field() {
    let cases = [
        ("tag", "", "tag", "form-tag-missing"),
        ("tag", "..", "tag", "form-tag-unfit"),
        ("species", "", "species", "form-species-missing"),
        (
            "species",
            "Sabal palmeto",
            "species",
            "form-species-nearest",
        ),
        (
            "species",
            "Palmus ignota",
            "species",
            "form-species-unknown",
        ),
        ("stems", "0", "stems", "form-stems-none"),
        ("stems", "two", "stems", "form-count-not-whole"),
        (
            "planted_on",
            "2026-05-02",
            "planted_on",
            "form-date-in-future",
        ),
        ("moved_on", "03/01/2026", "moved_on", "form-date-not-read"),
        (
            "trunk_height",
            "tall",
            "trunk_height",
            "form-length-not-read",
        ),
        (
            "trunk_height",
            "300",
            "trunk_height",
            "form-length-out-of-range",
        ),
        ("wires", "-1", "wires", "form-length-out-of-range"),
        ("lat", "95", "lat", "form-number-out-of-range"),
        ("lon", "", "lon", "form-position-half"),
        ("lat", "", "lat", "form-position-half"),
        ("full_crown", "0", "full_crown", "form-number-out-of-range"),
        (
            "fronds_per_year",
            "many",
            "fronds_per_year",
            "form-number-not-read",
        ),
    ];
    for (name, value, field, code) in cases {
        let mut typed = FULL;
        typed.iter_mut().find(|(n, _)| *n == name).unwrap().1 = value;
        assert_eq!(codes(check(&typed)), [(field, code)], "{name}={value}");
    }
}

#[test]
fn an_unknown_species_is_taken_once_confirmed() {
    let confirm = confirm_name("form-species-nearest");
    let palm = check(&[
        ("tag", "B1"),
        ("species", "Sabal palmeto"),
        (&confirm, "yes"),
    ])
    .unwrap();
    assert_eq!(palm.species, "Sabal palmeto");
}

#[test]
fn a_tag_is_unique_among_palms_that_still_stand() {
    let mut book = Book::new(1);
    let id = book.register(Palm {
        tag: "B-17".into(),
        ..Palm::default()
    });
    let gone = book.register(Palm {
        tag: "B-18".into(),
        ..Palm::default()
    });
    book.remove(gone, "felled");
    let state = book.state();
    let standing = state.palm(id).unwrap().clone();
    assert_eq!(
        codes(check_in(&state, None, Units::Metric, &FULL)),
        [("tag", "form-tag-taken")]
    );
    assert!(
        check_in(&state, Some(&standing), Units::Metric, &FULL).is_ok(),
        "its own tag"
    );
    let mut other = FULL;
    other[0].1 = "B-18";
    assert!(
        check_in(&state, None, Units::Metric, &other).is_ok(),
        "a removed palm's tag is free again"
    );
}

#[test]
fn feet_do_not_drift_when_a_form_is_saved_unchanged() {
    let palm = Palm {
        tag: "B1".into(),
        species: "Sabal palmetto".into(),
        stems: 1,
        trunk_height: Some(Metres(4.0)),
        ..Palm::default()
    };
    let (state, record) = recorded(palm.clone());
    let typed = typed_palm(&palm, Units::UsCustomary);
    assert_eq!(typed.get("trunk_height"), "13.12");
    let register = |typed: &Typed| {
        let (changing, today) = (Some(&*record), day("2026-05-01"));
        let register = Register {
            state: &state,
            changing,
            today,
            units: Units::UsCustomary,
            nearest: &nearest,
        };
        super::palm(typed, &register)
    };
    assert_eq!(register(&typed), Ok(palm));
    let mut changed = typed.clone();
    changed.set("trunk_height", "14 ft");
    assert_eq!(
        register(&changed).unwrap().trunk_height,
        Some(Metres::from_feet(14.0))
    );
}

#[test]
fn a_pair_from_a_map_fills_both_coordinates() {
    let palm = check(&[
        ("tag", "B1"),
        ("species", "Sabal palmetto"),
        ("lat", "27.9506, -82.4572"),
    ])
    .unwrap();
    assert_eq!(
        palm.position,
        Some(Position {
            lat: 27.9506,
            lon: -82.4572
        })
    );
}

#[test]
fn fewer_stems_than_were_looked_at_is_asked() {
    let mut book = Book::new(1);
    let id = book.register(Palm {
        tag: "B-17".into(),
        stems: 5,
        ..Palm::default()
    });
    book.inspect(id, model::Inspection::blank(5, Day(20_000)));
    let state = book.state();
    let record = state.palm(id);
    assert_eq!(
        codes(check_in(&state, record.map(|r| &**r), Units::Metric, &FULL)),
        [("stems", "form-stems-fewer")]
    );
}
