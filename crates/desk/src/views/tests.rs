use super::needs;
use super::palms::{self, Due, PER_PAGE, Search};
use super::said::Speaker;
use super::standing::{Standing, Standings};
use super::today;
use super::{COLUMNS, Mode};
use crate::measure::{Measure, Units};
use crate::office::Office;
use crate::words::{Lang, Words};
use crate::world::World;
use crown::{Cut, DueWindow, Explanation};
use model::{Finding, PalmId, Severity, Spear};
use std::sync::Arc;
use testkit::{Book, InspectionWith, PalmWith, clock, day, ids, inspection, palm};

fn office(book: &Book) -> Office {
    let world = World {
        now: clock("2026-06-15"),
        as_of: Some(day("2026-06-15")),
        new_id: ids(9),
        device: "test".into(),
    };
    let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
    office.take_in(book.entries()).unwrap();
    office
}

fn speaker() -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(Lang::En)))
}

fn row_of(count: u32) -> Book {
    let mut book = Book::new(5);
    for n in 0..count {
        let id = book.register(palm("Sabal palmetto").tag(&format!("R{n:04}")));
        book.inspect(id, inspection("2026-06-01").counts(30, 0, 2));
    }
    book
}

#[test]
fn a_list_reads_only_the_palms_it_shows() {
    let office = office(&row_of(160));
    let standings = Standings::default();
    let at = |page| Search {
        page,
        ..Search::default()
    };
    assert_eq!(
        palms::view(&speaker(), &office, &standings, &at(1))
            .rows
            .len(),
        PER_PAGE
    );
    assert_eq!(standings.made(), PER_PAGE as u64);
    palms::view(&speaker(), &office, &standings, &at(1));
    assert_eq!(
        standings.made(),
        PER_PAGE as u64,
        "the same page again reads nothing"
    );
    let filtered = Search {
        explanation: Some(Explanation::Ageing),
        ..at(1)
    };
    let view = palms::view(&speaker(), &office, &standings, &filtered);
    assert_eq!(
        standings.made(),
        PER_PAGE as u64,
        "a filter uses what is known"
    );
    assert!(view.pending.is_some(), "and says that not all is known");
    today::view(&speaker(), &office, &standings, 1);
    assert_eq!(
        standings.made(),
        PER_PAGE as u64,
        "today reads nothing by itself"
    );
}

#[test]
fn search_takes_any_part_in_any_case() {
    let mut book = Book::new(8);
    book.register(palm("Sabal palmetto").tag("A-1").site("Cañada"));
    book.register(palm("Phoenix canariensis").tag("b-2").site("North yard"));
    let office = office(&book);
    let found = |text: &str| {
        let search = Search {
            text: text.into(),
            ..Search::default()
        };
        let view = palms::view(&speaker(), &office, &Standings::default(), &search);
        view.rows.into_iter().map(|r| r.tag).collect::<Vec<_>>()
    };
    assert_eq!(found("  sabal "), ["A-1"]);
    assert_eq!(found("CAÑA"), ["A-1"]);
    assert_eq!(found("B-2"), ["b-2"]);
    assert_eq!(found("can"), ["b-2"], "ñ is not n");
    assert_eq!(found("-"), ["A-1", "b-2"]);
    assert_eq!(found(&"x".repeat(99)), [""; 0]);
}

#[test]
fn a_standing_is_good_until_the_palm_changes() {
    let mut book = row_of(3);
    let office = office(&book);
    let standings = Standings::default();
    standings.fill(&office);
    assert_eq!((standings.made(), standings.missing(&office)), (3, 0));
    let first = *office.state().tags().values().next().unwrap();
    let new = book.entries().len();
    book.on("2026-06-14")
        .inspect(first, inspection("2026-06-14").counts(30, 1, 2));
    office.take_in(&book.entries()[new..]).unwrap();
    assert_eq!(standings.missing(&office), 1);
    standings.fill(&office);
    assert_eq!((standings.made(), standings.missing(&office)), (4, 0));
}

fn calm() -> Standing {
    Standing {
        probabilities: [1.0, 0.0, 0.0, 0.0],
        explanation: Some(Explanation::Ageing),
        tail_probability: Some(0.4),
        lost: Some(3.0),
        due: DueWindow {
            earliest: Some(day("2026-08-01")),
            latest: Some(day("2026-10-01")),
        },
        holds: Vec::new(),
        take: Cut::NONE,
        lift: false,
        high: false,
        rhythm: None,
    }
}

/// Codes of the needs of a palm seen a fortnight ago, worst first.
fn needs_of(change: impl FnOnce(&mut Standing)) -> Vec<&'static str> {
    let office = office(&row_of(1));
    let mut standing = calm();
    change(&mut standing);
    let state = office.state();
    let record = state.standing().next().unwrap();
    needs::of(&office, record, Some(&standing))
        .iter()
        .map(|n| n.finding.code)
        .collect()
}

#[test]
fn needs_come_worst_first() {
    assert_eq!(needs_of(|_| {}), [""; 0]);
    let all = needs_of(|s| {
        s.probabilities = [0.1, 0.0, 0.6, 0.3];
        s.tail_probability = Some(0.01);
        s.due.latest = Some(day("2026-06-15"));
        s.holds = ["hold-nest", "hold-spear-down"]
            .map(|code| Finding::new(code, Severity::Refuse))
            .into();
    });
    assert_eq!(
        all,
        [
            "need-spear-down",
            "need-tripwire",
            "need-nest",
            "need-hunger",
            "need-overdue"
        ]
    );
    assert_eq!(
        needs_of(|s| s.probabilities = [0.2, 0.0, 0.0, 0.8]),
        ["need-decline"]
    );
    assert_eq!(needs_of(|s| s.tail_probability = Some(0.06)), [""; 0]);
}

#[test]
fn palms_nobody_looks_at_are_named() {
    let mut book = Book::new(6);
    let (long, short) = ("2025-11-01", "2026-04-01");
    let old = book.register(palm("Sabal palmetto").tag("old"));
    book.inspect(old, inspection(long).counts(30, 0, 0));
    let moved = book.register(palm("Sabal palmetto").tag("moved").moved("2026-03-01"));
    book.inspect(moved, inspection(short).counts(30, 0, 0));
    book.register(palm("Sabal palmetto").tag("new"));
    book.register(palm("Sabal palmeto").tag("typo"));
    let office = office(&book);
    let codes = |tag: &str| -> Vec<&str> {
        let state = office.state();
        let found = state.by_tag(tag).unwrap().clone();
        needs::of(&office, &found, None)
            .iter()
            .map(|n| n.finding.code)
            .collect()
    };
    assert_eq!(codes("old"), ["need-look"]);
    assert_eq!(codes("moved"), ["need-look-moved"]);
    assert_eq!(codes("new"), ["need-first-look"]);
    assert_eq!(codes("typo"), ["need-first-look", "need-species"]);
}

#[test]
fn due_is_told_from_the_window() {
    let today = day("2026-06-15");
    for (earliest, latest, due) in [
        (Some("2026-06-15"), Some("2026-06-15"), Due::Late),
        (Some("2026-06-15"), Some("2026-07-15"), Due::Now),
        (Some("2026-06-15"), None, Due::Now),
        (Some("2026-07-13"), None, Due::Soon),
        (Some("2026-07-14"), None, Due::Later),
        (None, None, Due::Later),
    ] {
        let window = DueWindow {
            earliest: earliest.map(day),
            latest: latest.map(day),
        };
        assert_eq!(
            Due::of(
                &Standing {
                    due: window,
                    ..calm()
                },
                today
            ),
            due,
            "{earliest:?} {latest:?}"
        );
    }
}

#[test]
fn codes_put_together_have_words() {
    let mut codes: Vec<String> = needs::CODES.map(str::to_owned).into();
    for e in Explanation::ALL.map(Explanation::key) {
        codes.extend(
            ["explanation-K", "explanation-K-means", "loss-makes-K"].map(|c| c.replace('K', e)),
        );
        codes.extend(["sure", "likely", "open"].map(|how| format!("reading-headline-{e}-{how}")));
    }
    for verdict in ["ordinary", "unusual"] {
        codes.extend(["", "-moved"].map(|moved| format!("loss-verdict-{verdict}{moved}")));
    }
    codes.extend(Due::ALL.map(|d| format!("palms-due-{}", d.key())));
    codes.extend(Mode::ALL.map(|m| format!("crown-mode-{}", m.key())));
    codes.extend(COLUMNS.map(|c| format!("outlook-{c}")));
    codes.extend(["info", "caution", "act", "refuse"].map(|w| format!("weight-{w}")));
    codes.extend(["caution", "act", "refuse"].map(|w| format!("cut-weight-{w}")));
    codes.extend(Spear::ALL.map(|(_, word)| format!("spear-state-{word}")));
    codes.extend((1..=12).map(|m| format!("measure-month-{m}")));
    codes.extend(Lang::ALL.map(|l| format!("common-language-{}", l.tag())));
    codes.extend(Units::ALL.map(|u| format!("common-units-{}", u.key())));
    for lang in Lang::ALL {
        let silent: Vec<_> = codes.iter().filter(|c| !Words::new(lang).has(c)).collect();
        assert!(silent.is_empty(), "no words in {}: {silent:?}", lang.tag());
    }
}

#[test]
fn holds_of_the_register_show_before_anything_is_read() {
    let mut book = row_of(1);
    let id = PalmId(book.entries()[0].id.0);
    book.hold(id, "keeper", None);
    let office = office(&book);
    let view = today::view(&speaker(), &office, &Standings::default(), 1);
    assert_eq!(view.rows[0].code, "need-hold");
    assert!(view.pending.is_some());
}
