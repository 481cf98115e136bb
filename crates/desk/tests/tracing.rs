//! The case worked out by hand, and what a trace says of doubt.
#![allow(missing_docs)]

use model::knowledge::{DayRange, DisorderRow, Spread};
use model::{BladeKind, Body, Cleaning, CutMade, Day, Metres, Moment, PalmId, TakenOff};
use spearleaf_desk::intake::{PalmReader, TouchReader, TouchWhat};
use spearleaf_desk::tracing::{
    Ask, Book, BookMaker, Cleaned, EXPOSURE_COLUMNS, Exposure, Stand, TraceAnswer, Travel,
    disorder, exposure_rows, of_book, of_state,
};
use std::collections::BTreeMap;
use testkit::{PalmWith, palm};

/// Fusarium wilt of the Canary Island date palm: 180 to 540 days, on blades, as the tables have it from [pp215] and others.
fn wilt() -> DisorderRow {
    let row = disorder("fusarium-wilt-canariensis").unwrap().clone();
    let range = DayRange {
        min: Some(180),
        max: Some(540),
    };
    assert_eq!(row.latency, range);
    assert!(row.spread.contains(&Spread::Blade));
    row
}

fn book(palms: &str, touches: &str) -> Book {
    let mut maker = BookMaker::new();
    for palm in PalmReader::open(palms.as_bytes()).unwrap() {
        let palm = palm.unwrap().value;
        maker.palm(Stand {
            id: None,
            tag: palm.tag,
            species: palm.species,
            site: palm.site,
            position: palm.position,
        });
    }
    for row in TouchReader::open(touches.as_bytes()).unwrap() {
        let row = row.unwrap().value;
        let blade = maker.blade_named(&row.blade);
        match row.what {
            TouchWhat::Cut(tag) => {
                let palm = maker.palm_named(&tag);
                maker.cut(row.at, blade, palm);
            }
            TouchWhat::Clean {
                agent,
                strength_pct,
                contact_min,
            } => maker.clean(
                row.at,
                blade,
                &Cleaned {
                    agent,
                    strength_pct,
                    contact_min,
                    ..Cleaned::default()
                },
            ),
        }
    }
    maker.done()
}

const PALMS: &str = include_str!("../../../cases/trace/palms.csv");
const TOUCHES: &str = include_str!("../../../cases/trace/touches.csv");
const EXPECTED: &str = include_str!("../../../cases/trace/expected.csv");

fn ask(disorder: &DisorderRow) -> Ask<'_> {
    let as_of = Moment::parse("2026-10-01T23:59:59Z").unwrap();
    let mut ask = Ask::of("C-1", Some(disorder), as_of);
    ask.cases[0].seen_sick = Day::parse("2026-03-02");
    ask
}

fn codes(answer: &TraceAnswer) -> Vec<&'static str> {
    answer.findings.iter().map(|f| f.code).collect()
}

#[test]
fn the_case_worked_out_by_hand() {
    let row = wilt();
    let answer = of_book(&book(PALMS, TOUCHES), &ask(&row)).unwrap();
    let case = &answer.cases[0];
    assert_eq!(
        case.possibly_from.unwrap().to_string(),
        "2024-09-08T00:00:00Z"
    );
    assert_eq!(case.exposed_until.to_string(), "2025-09-03T23:59:59Z");
    let said = ["tracing-no-agent", "tracing-ties", "tracing-doubled-rows"];
    assert_eq!(codes(&answer), said);
    let column = |name: &str| EXPOSURE_COLUMNS.iter().position(|c| *c == name);
    let wanted: Vec<&str> = EXPECTED.lines().next().unwrap().split(',').collect();
    let rows = exposure_rows(&answer).map(|row| {
        let cell = |name: &&str| match *name {
            "first_look" => row[19].split(';').next().unwrap().to_owned(),
            name => row[column(name).unwrap()].clone(),
        };
        wanted.iter().map(cell).collect::<Vec<_>>().join(",")
    });
    let found: Vec<String> = rows.collect();
    let expected: Vec<&str> = EXPECTED.lines().skip(1).collect();
    assert_eq!(found, expected);
}

#[test]
fn a_disorder_that_does_not_travel_on_blades_gives_the_hosts_near_by() {
    let mut row = wilt();
    row.spread = vec![Spread::Vector];
    let mut ask = ask(&row);
    ask.radius = Metres(40.0);
    let answer = of_book(&book(PALMS, TOUCHES), &ask).unwrap();
    assert_eq!(answer.travel, Travel::NotOnBlades);
    assert_eq!(codes(&answer)[0], "tracing-not-on-blades");
    assert!(answer.exposed.is_empty() && answer.sources.is_empty());
    let near: Vec<(&str, Option<i64>)> = answer
        .nearby
        .iter()
        .map(|n| (n.palm.tag.as_str(), n.distance.map(|d| d.0.round() as i64)))
        .collect();
    // 0.0001 degrees of latitude are 11.12 m; S-1 is no host; of A-5 only the grounds are known
    let wanted = [
        ("U-1", Some(6)),
        ("A-1", Some(11)),
        ("A-2", Some(22)),
        ("A-3", Some(33)),
        ("A-5", None),
    ];
    assert_eq!(near, wanted);
}

#[test]
fn what_nobody_knows_is_said_and_widens_the_possible_set_only() {
    let book = book(PALMS, TOUCHES);
    let mut row = wilt();
    row.latency = DayRange::default();
    let answer = of_book(&book, &ask(&row)).unwrap();
    assert!(codes(&answer).contains(&"tracing-no-shortest"));
    assert!(codes(&answer).contains(&"tracing-no-longest"));
    assert_eq!(answer.cases[0].possibly_from, None);
    let tags = |certain: bool| -> Vec<&str> {
        let of = answer.exposed.iter().filter(|e| e.certain == certain);
        of.map(|e| e.palm.tag.as_str()).collect()
    };
    // the second generation is open: A-6 falls back, and A-5 comes in
    assert_eq!(tags(true), ["A-1", "U-1"]);
    assert!(tags(false).contains(&"A-6") && tags(false).contains(&"A-5"));
    assert!(answer.exposed.iter().all(|e| e.watch_until.is_none()));
    assert!(
        answer
            .exposed
            .iter()
            .all(|e| e.looks.len() == Exposure::MOST_LOOKS)
    );
    // the keeper's word comes first
    let mut own = ask(&row);
    own.latency = DayRange {
        min: Some(180),
        max: Some(540),
    };
    let kept = of_book(&book, &own).unwrap();
    assert!(kept.latency.by_keeper);
    assert!(
        kept.exposed
            .iter()
            .any(|e| e.palm.tag == "A-6" && e.certain)
    );
}

#[test]
fn later_rows_do_not_count_and_a_late_row_changes_the_past() {
    let row = wilt();
    let mut early = ask(&row);
    early.as_of = Moment::parse("2026-03-10T12:00:00Z").unwrap();
    let before = of_book(&book(PALMS, TOUCHES), &early).unwrap();
    assert!(codes(&before).contains(&"tracing-later-rows"));
    assert!(!before.exposed.iter().any(|e| e.palm.tag == "U-1"));
    // a cleaning that comes in late takes A-1, and with it A-6, off the list
    let late = format!("{TOUCHES}2026-03-10T09:29:00Z,saw-1,clean,,bleach,25,10,M\n");
    let after = of_book(&book(PALMS, &late), &ask(&row)).unwrap();
    assert!(
        !after
            .exposed
            .iter()
            .any(|e| ["A-1", "A-6"].contains(&e.palm.tag.as_str()))
    );
}

#[test]
fn a_case_nobody_knows_is_refused_and_one_never_cut_is_said() {
    let row = wilt();
    let mut unknown = ask(&row);
    unknown.cases[0].tag = "Z-9".to_owned();
    let refused = of_book(&book(PALMS, TOUCHES), &unknown).unwrap_err();
    assert_eq!(refused.code, "tracing-no-such-palm");
    let uncut = format!("{PALMS}Z-9,Phoenix canariensis,Gate,,\n");
    let answer = of_book(&book(&uncut, TOUCHES), &unknown).unwrap();
    assert!(codes(&answer).contains(&"tracing-case-not-cut"));
    assert!(answer.exposed.is_empty() && answer.sources.is_empty());
}

#[test]
fn the_register_is_traced_with_its_baths_overlaps_and_loans() {
    let row = wilt();
    let mut book = testkit::Book::new(4);
    let palms: Vec<PalmId> = ["C-1", "A-1", "A-2", "A-3", "A-4"]
        .map(|tag| book.register(palm("Phoenix canariensis").tag(tag)))
        .into();
    let saw = book.blade("saw-1", BladeKind::HandSaw);
    let other = book.blade("saw-2", BladeKind::HandSaw);
    let cut = |book: &mut testkit::Book, blade, palm, at: &str, started: Option<&str>| {
        let made = CutMade {
            palm,
            stem: 1,
            blade,
            started: started.and_then(Moment::parse),
            off: TakenOff::default(),
            crew: String::new(),
            despite: String::new(),
            notes: String::new(),
            extra: BTreeMap::new(),
        };
        book.at(at).write(Body::CutMade(made), None);
    };
    cut(&mut book, saw, palms[0], "2026-03-02T09:00:00Z", None);
    // began before the cut in front had ended: the order is open
    let began = Some("2026-03-02T08:55:00Z");
    cut(&mut book, saw, palms[1], "2026-03-02T09:10:00Z", began);
    let bath = book.at("2026-03-02T09:15:00Z").bath("bleach", Some(25.0));
    let soak = Cleaning {
        blade: saw,
        agent: String::new(),
        strength_pct: None,
        contact_min: Some(10.0),
        brushed: Some(true),
        bath: Some(bath),
        by: String::new(),
        extra: BTreeMap::new(),
    };
    book.at("2026-03-02T09:30:00Z")
        .write(Body::Cleaned(soak), None);
    cut(&mut book, saw, palms[2], "2026-03-02T09:40:00Z", None);
    cut(&mut book, other, palms[0], "2026-03-02T10:00:00Z", None);
    let lent = Body::BladeLent {
        blade: other,
        to: "a neighbour".to_owned(),
    };
    book.write(lent, None);
    cut(&mut book, other, palms[3], "2026-03-02T12:00:00Z", None);
    let answer = of_state(&book.state(), &ask(&row)).unwrap();
    let said: Vec<(&str, bool)> = answer
        .exposed
        .iter()
        .map(|e| (e.palm.tag.as_str(), e.certain))
        .collect();
    // the bath says agent and strength, so A-2 is safe; A-4 was never cut
    assert_eq!(said, [("A-1", false), ("A-3", true)]);
    assert!(answer.exposed.iter().all(|e| e.palm.id.is_some()));
    let codes = codes(&answer);
    for code in ["tracing-overlap", "tracing-lent", "tracing-ties"] {
        assert!(codes.contains(&code), "{code}: {codes:?}");
    }
}
