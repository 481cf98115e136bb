mod yard;

use super::*;
use crate::measure::{Measure, Units};
use crate::views::testing::office_on;
use crate::words::{Lang, Words};
use model::{BladeKind, Body, RoundNote, RoundPlan, RoundStep, RoundStop, Site, Spear};
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};
use yard::{brown, cut, yard};

const TODAY: &str = "2026-06-15";

fn speaker(lang: Lang) -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(lang)))
}

fn office(book: &Book) -> Office {
    office_on(book, TODAY)
}

fn summary_in(book: &Book, lang: Lang, who: &Who, period: Period) -> Option<SummaryView> {
    let (standings, seasons) = (Standings::default(), Seasons::default());
    let speaker = speaker(lang);
    view(&speaker, &office(book), &standings, &seasons, who, period)
}

fn summary(book: &Book, who: &Who) -> SummaryView {
    summary_in(book, Lang::En, who, Period::usual(day(TODAY))).unwrap()
}

fn of_ada(book: &Book) -> SummaryView {
    summary(book, &Who::Owner("Ada".into()))
}

fn count(view: &SummaryView, key: &str) -> usize {
    view.counts.iter().find(|c| c.key == key).unwrap().n
}

/// All sentences of a summary.
fn texts(view: &SummaryView) -> Vec<String> {
    let mut all = vec![
        view.title.clone(),
        view.sites.clone(),
        view.as_of.clone(),
        view.period.clone(),
        view.call_at_once.clone(),
        view.level.clone(),
    ];
    all.extend(
        view.counts
            .iter()
            .map(|c| format!("{} {}", c.figure, c.what)),
    );
    for list in [
        &view.count_notes,
        &view.others,
        &view.done_notes,
        &view.next_notes,
    ] {
        all.extend(list.clone());
    }
    for card in &view.cards {
        all.extend([card.tag.clone(), card.says.clone(), card.stand.clone()]);
        all.extend(card.points.iter().map(|p| p.text.clone()));
    }
    for line in &view.lines {
        all.extend([line.tag.clone(), line.text.clone()]);
    }
    all.extend(view.more_palms.clone());
    for row in &view.done {
        all.extend([&row.date, &row.site, &row.palms, &row.what, &row.crew].map(Clone::clone));
        all.push(row.blades.clone());
    }
    for row in &view.next {
        all.extend([row.date.clone(), row.site.clone(), row.what.clone()]);
    }
    all.extend(view.mind.iter().map(|p| p.text.clone()));
    all
}

#[test]
fn what_was_recorded_is_what_is_counted() {
    let yard = yard();
    let view = of_ada(&yard.book);
    assert_eq!(view.sites, "North, South");
    let counts: Vec<(&str, usize)> = view.counts.iter().map(|c| (c.key, c.n)).collect();
    assert_eq!(
        counts,
        [
            ("palms", 3),
            ("looked", 3),
            ("cut", 3),
            // 5 + 3 + 2 by the log, 2 at the move
            ("fronds", 12),
            ("moved", 1),
            ("held", 0),
            ("call", 0),
        ]
    );
    let rows: Vec<[&str; 5]> = view
        .done
        .iter()
        .map(|r| [r.kind, &r.site, &r.palms, &r.what, &r.crew].map(|x: &str| x))
        .collect();
    assert_eq!(
        rows,
        [
            ["cut", "South", "1 palm", "Taken off: 2 brown", "not noted"],
            ["cut", "North", "2 palms", "Taken off: 8 brown", "Fenlock"],
            [
                "moved",
                "South",
                "1 palm",
                "Dug and moved; taken off: 2 green",
                "not noted"
            ],
        ]
    );
    assert_eq!(view.done[0].blades, "clean");
    assert_eq!(
        view.done[1].blades,
        "no cleaning noted: 1 palm; not known: 1 palm"
    );
    assert_eq!(view.done[2].blades, "");
    let notes = view.done_notes.join(" ");
    assert!(
        notes.contains("Looked at: 3 palms on 1 day, last 10 Jun 2026."),
        "{notes}"
    );
    assert!(
        notes.contains("Watered: 1 palm on 1 day, last 12 Jun 2026."),
        "{notes}"
    );
    assert!(notes.contains("What it cost is not in these records."));
}

#[test]
fn another_owners_palms_and_the_keepers_words_never_appear() {
    let mut yard = yard();
    let told = texts(&of_ada(&yard.book)).join("\n");
    for foreign in ["O1", "X1", "Z1", "Bea", "Boathouse", "Other", "Old gang"] {
        assert!(!told.contains(foreign), "{foreign} in:\n{told}");
    }
    for own in ["dog", "haggled", "gate code"] {
        assert!(!told.contains(own), "{own} in:\n{told}");
    }
    let bea = summary(&yard.book, &Who::Owner("Bea".into()));
    assert_eq!(
        ["palms", "cut", "fronds"].map(|key| count(&bea, key)),
        [1, 1, 7]
    );
    let bare = summary(&yard.book, &Who::Site("Bare".into()));
    assert_eq!(
        ["palms", "looked", "cut"].map(|key| count(&bare, key)),
        [1, 0, 0]
    );
    assert!(
        bare.others
            .iter()
            .any(|line| line.starts_with("1 palm that nobody has looked at yet"))
    );
    let unplanned = "1 palm is not planned for: nobody has looked at it yet.";
    assert!(bare.next_notes.iter().any(|note| note == unplanned));
    let lot = Site {
        name: "Lot".into(),
        ..Site::default()
    };
    yard.book.write(Body::SiteDescribed(lot), None);
    let empty = summary(&yard.book, &Who::Site("Lot".into()));
    assert_eq!(empty.others, ["No palm stands here yet."]);
    assert_eq!(
        count(&summary(&yard.book, &Who::Site(String::new())), "palms"),
        1
    );
    let usual = Period::usual(day(TODAY));
    for nobody in [
        Who::Owner("Cy".into()),
        Who::Owner(" ".into()),
        Who::Site("Nowhere".into()),
    ] {
        assert_eq!(
            summary_in(&yard.book, Lang::En, &nobody, usual),
            None,
            "{nobody:?}"
        );
    }
}

#[test]
fn corrections_and_withdrawals_change_the_counts() {
    let mut yard = yard();
    let corrected = yard.book.on("2026-06-05").correct(
        yard.cut_s1,
        Body::CutMade(cut(yard.s1, yard.saw, "Sorrel", brown(4))),
    );
    // a correction happens when its entry says: the day moves with it
    let view = of_ada(&yard.book);
    assert_eq!(count(&view, "fronds"), 14);
    assert_eq!(
        (view.done[0].date.as_str(), view.done[0].crew.as_str()),
        ("5 Jun 2026", "Sorrel")
    );
    yard.book.withdraw(corrected);
    let view = of_ada(&yard.book);
    assert_eq!((count(&view, "fronds"), count(&view, "cut")), (10, 2));
    let site = Site {
        name: "South".into(),
        owner: "Bea".into(),
        ..Site::default()
    };
    yard.book
        .on("2026-06-06")
        .write(Body::SiteDescribed(site), None);
    assert_eq!(count(&of_ada(&yard.book), "palms"), 2);
}

#[test]
fn the_period_bounds_what_is_told_and_must_make_sense() {
    let yard = yard();
    let ada = Who::Owner("Ada".into());
    let told = |from, until| {
        let period = Period::read(from, until, day(TODAY)).unwrap();
        let view = summary_in(&yard.book, Lang::En, &ada, period).unwrap();
        ["looked", "cut", "fronds", "moved"].map(|key| count(&view, key))
    };
    assert_eq!(told("2026-06-01", "2026-06-02"), [0, 2, 8, 0]);
    assert_eq!(told("2025-01-01", ""), [3, 3, 111, 1]);
    let wrong = |from, until| {
        let wrong = Period::read(from, until, day(TODAY)).unwrap_err();
        Vec::from_iter(wrong.iter().map(|(field, f)| (*field, f.code)))
    };
    assert_eq!(wrong("", "2026-06-16"), [("until", "summary-future")]);
    assert_eq!(
        wrong("2026-06-02", "2026-06-01"),
        [("from", "summary-backwards")]
    );
    assert_eq!(
        wrong("1 June", "2026-02-30"),
        [("until", "summary-no-day"), ("from", "summary-no-day")]
    );
    let usual = Period::read(" ", "", day(TODAY)).unwrap();
    assert_eq!(usual, Period::usual(day(TODAY)));
    assert_eq!(usual.until.since(usual.from), 26 * 7);
}

#[test]
fn palms_that_need_the_owner_are_drawn_and_the_others_counted() {
    let mut yard = yard();
    yard.book.on("2026-06-14").hold(yard.n2, "nest", None);
    let leans = inspection("2026-06-14")
        .counts(14, 1, 1)
        .spear(Spear::Leaning);
    yard.book.inspect(yard.s1, leans);
    let view = of_ada(&yard.book);
    assert_eq!((count(&view, "held"), count(&view, "call")), (2, 1));
    let cards: Vec<(&str, &str)> = view.cards.iter().map(|c| (c.tag.as_str(), c.key)).collect();
    // a leaning spear holds, too
    assert_eq!(cards, [("S1", "call"), ("N2", "held")]);
    assert!(view.cards.iter().all(|card| card.svg.starts_with("<svg")));
    let said = |at: usize| Vec::from_iter(view.cards[at].points.iter().map(|p| p.text.as_str()));
    let (s1, n2) = (said(0).join("\n"), said(1).join("\n"));
    assert!(
        s1.contains("spear leans") && s1.contains("ater") && !s1.contains("Next look"),
        "{s1}"
    );
    assert!(
        !s1.contains("More than"),
        "no waiting where one has to call: {s1}"
    );
    assert!(
        n2.contains("Nobody cuts this palm for now: Nest or bats in the crown."),
        "{n2}"
    );
    assert!(n2.contains("More than") && n2.contains("call"), "{n2}");
    assert_eq!(view.others, ["1 palm as it should be."]);
}

#[test]
fn what_comes_next_holds_rounds_visits_and_looks_of_these_palms() {
    let mut yard = yard();
    let stop = |palm| RoundStop {
        palm,
        start: None,
        minutes: None,
        tasks: vec!["cut".into()],
    };
    let plan = RoundPlan {
        crew: "Fenlock".into(),
        stops: vec![stop(yard.n1), stop(yard.o1)],
        ..RoundPlan::on(day("2026-06-18"))
    };
    let round = yard
        .book
        .on("2026-06-14")
        .write(Body::RoundPlanned(plan), None);
    let view = of_ada(&yard.book);
    let planned: Vec<_> = view.next.iter().filter(|row| row.kind == "round").collect();
    assert_eq!(planned.len(), 1);
    assert_eq!(planned[0].what, "1 palm, crew: Fenlock");
    assert_eq!(planned[0].date, "18 Jun 2026");
    assert!(
        view.next
            .iter()
            .any(|row| row.kind == "look" && row.what.starts_with("S1"))
    );
    assert!(view.next.windows(2).all(|pair| pair[0].day <= pair[1].day));
    // every site has a visit or is said to have none
    for site in ["North", "South"] {
        let visit = view
            .next
            .iter()
            .any(|row| row.kind == "visit" && row.site == site);
        let none = view.next_notes.iter().any(|note| note.starts_with(site));
        assert!(visit != none, "{site}: {:?}", view.next_notes);
    }
    // called off: gone
    yard.book.withdraw(round);
    assert!(
        of_ada(&yard.book)
            .next
            .iter()
            .all(|row| row.kind != "round")
    );
}

#[test]
fn a_round_tells_of_a_cut_that_nobody_logged() {
    let mut yard = yard();
    let stop = RoundStop {
        palm: yard.n1,
        start: None,
        minutes: None,
        tasks: vec!["cut".into()],
    };
    let plan = RoundPlan {
        crew: "Sorrel".into(),
        stops: vec![stop],
        ..RoundPlan::on(day("2026-06-11"))
    };
    let round = yard
        .book
        .on("2026-06-11")
        .write(Body::RoundPlanned(plan), None);
    let step = RoundStep::Done {
        palm: yard.n1,
        minutes: None,
        note: "key under the mat".into(),
    };
    yard.book
        .write(Body::RoundNoted(RoundNote { round, step }), None);
    let view = of_ada(&yard.book);
    assert_eq!((count(&view, "cut"), count(&view, "fronds")), (3, 12));
    assert_eq!(view.done[0].what, "Cut; what came off was not counted");
    assert_eq!(
        (view.done[0].crew.as_str(), view.done[0].blades.as_str()),
        ("Sorrel", "not known")
    );
    assert!(
        view.count_notes
            .iter()
            .any(|note| note.contains("At 1 cut not all"))
    );
    assert!(!texts(&view).join(" ").contains("mat"));
}

#[test]
fn a_blade_that_is_known_not_to_have_been_clean_is_said() {
    let mut yard = yard();
    let mut dirty = cut(yard.n1, yard.saw, "Fenlock", brown(1));
    dirty.despite = "in a hurry".into();
    yard.book.on("2026-06-13").write(Body::CutMade(dirty), None);
    let view = of_ada(&yard.book);
    assert_eq!(
        (view.done[0].blades.as_str(), view.done[0].dirty),
        ("not clean", true)
    );
    assert!(!texts(&view).join(" ").contains("hurry"));
}

#[test]
fn long_lists_are_cut_short_and_say_so() {
    let mut book = Book::new(3);
    let site = Site {
        name: "Grove".into(),
        owner: "Ada".into(),
        ..Site::default()
    };
    book.write(Body::SiteDescribed(site), None);
    let saw = book.blade("B-1", BladeKind::HandSaw);
    let mut last = None;
    for n in 0..20 {
        let tag = format!("G{n:02}");
        let id = book.register(palm("Sabal palmetto").tag(&tag).site("Grove").trunk(4.0));
        book.hold(id, "nest", None);
        last = Some(id);
    }
    for n in 1..=15 {
        let made = cut(last.unwrap(), saw, "Fenlock", brown(1));
        book.on(&format!("2026-05-{n:02}"))
            .write(Body::CutMade(made), None);
    }
    let view = of_ada(&book);
    assert_eq!(
        (view.cards.len(), view.lines.len()),
        (MOST_DRAWN, MOST_NAMED)
    );
    assert_eq!(
        view.more_palms.as_deref(),
        Some("6 more palms need attention; their own sheets tell.")
    );
    assert_eq!(view.done.len(), MOST_DONE);
    assert_eq!(view.done[0].date, "15 May 2026");
    assert_eq!(
        view.done_notes[0],
        "7 earlier lines are not shown; they took off 7 fronds."
    );
}

/// 69 kV to ground: 10 ft and 4 in for each 10 kV above 50 kV, 29 CFR 1910.269 and 1910.333(c)(3): 10.634 ft, said
/// rounded up.
#[test]
fn the_owner_is_told_of_wires_level_spikes_and_blades() {
    let yard = yard();
    let view = of_ada(&yard.book);
    let mind: Vec<&str> = view.mind.iter().map(|p| p.text.as_str()).collect();
    let mind = mind.join("\n");
    for wanted in [
        "without asking the keeper",
        "level line",
        "spikes",
        "No blade that was not cleaned",
        "10 ft (3.05 m)",
        "North: the utility names 69 kV to ground; keep 10.64 ft",
        "Wires are noted at 1 palm: N1.",
        "At 2 palms nobody has noted",
    ] {
        assert!(mind.contains(wanted), "{wanted} is not in:\n{mind}");
    }
}

#[test]
fn both_languages_say_everything() {
    let yard = yard();
    for lang in Lang::ALL {
        let who = Who::Owner("Ada".into());
        let view = summary_in(&yard.book, lang, &who, Period::usual(day(TODAY))).unwrap();
        for text in texts(&view) {
            assert!(
                !text.contains("{$") && !text.contains("summary-"),
                "{lang:?}: {text}"
            );
        }
    }
    let list = list(&speaker(Lang::Es), &office(&yard.book));
    let names = |rows: &[OwnerRow]| Vec::from_iter(rows.iter().map(|r| r.name.clone()));
    assert_eq!(names(&list.owners), ["Ada", "Bea"]);
    assert_eq!(list.owners[0].palms, "3 palmas");
    assert_eq!(names(&list.sites), ["Bare", "Sin sitio"]);
}
