//! What entries do to the state, case by case.

use spearleaf_model as model;

use model::state::Fold;
use model::{Body, Entry, Moment, Palm, PalmId, Severity, Spear, State};
use testkit::{Book, InspectionWith, PalmWith, day, id, inspection, noon, palm};

fn codes(state: &State) -> Vec<&'static str> {
    state
        .noticed()
        .iter()
        .map(|noticed| noticed.finding.code)
        .collect()
}

fn greens(state: &State, palm: PalmId) -> Vec<Option<u32>> {
    state
        .palm(palm)
        .expect("palm")
        .inspections
        .iter()
        .map(|look| look.green)
        .collect()
}

#[test]
fn a_palm_with_its_looks_in_order() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1").stems(2));
    let late = book.inspect(a, inspection("2026-03-09").counts(31, 1, 0));
    let second = book.inspect(a, inspection("2026-03-02").stem(2).spear(Spear::Firm));
    let early = book.inspect(a, inspection("2026-03-02").counts(30, 2, 1));
    let state = book.state();
    let record = state.by_tag("A1").unwrap();
    assert_eq!((record.id, record.registered), (a, book.entries()[0].at));
    assert_eq!(greens(&state, a), [Some(30), Some(31), None]);
    assert_eq!(record.inspection_entries, [early, late, second]);
    assert_eq!(record.looks(1).count(), 2);
    assert_eq!(record.last_look().unwrap().date, day("2026-03-09"));
    assert!(state.noticed().is_empty() && record.stands());
}

#[test]
fn a_change_that_happened_earlier_but_arrives_late_does_not_win() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    book.on("2026-05-01")
        .change(a, palm("Sabal palmetto").tag("A3"));
    book.on("2026-04-01")
        .change(a, palm("Sabal palmetto").tag("A2"));
    let state = book.state();
    assert_eq!(state.palm(a).unwrap().palm.tag, "A3");
    assert_eq!(state.tags().keys().collect::<Vec<_>>(), ["A3"]);
}

#[test]
fn a_change_dated_before_the_registration_still_counts() {
    let mut book = Book::new(1);
    let a = book
        .on("2026-05-01")
        .register(palm("Sabal palmetto").tag("A1"));
    book.on("2026-04-01")
        .change(a, palm("Sabal palmetto").tag("A2"));
    assert_eq!(book.state().palm(a).unwrap().palm.tag, "A2");
}

#[test]
fn of_two_looks_on_a_day_the_one_written_last_counts() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto"));
    let mut looks = [10, 20].map(|green| {
        book.inspect(a, inspection("2026-03-02").counts(green, 0, 0));
        book.entries().last().unwrap().clone()
    });
    // The first happened later in the day; what decides is when it was written.
    looks[0].at = Moment(looks[1].at.0 + 60_000);
    let state = State::fold([
        book.entries()[0].clone(),
        looks[0].clone(),
        looks[1].clone(),
    ]);
    assert_eq!(greens(&state, a), [Some(20)]);
    assert_eq!(codes(&state), ["inspection-twice"]);
    assert_eq!(
        (state.noticed()[0].entry, state.noticed()[0].palm),
        (looks[0].id, Some(a))
    );
}

#[test]
fn corrections_stand_in_and_can_be_corrected() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let b = book.register(palm("Sabal palmetto").tag("B1"));
    let look = |green| inspection("2026-03-02").counts(green, 0, 0);
    let first = book.inspect(a, look(10));
    let second = book.correct(
        first,
        Body::Inspected {
            palm: a,
            inspection: look(11),
        },
    );
    assert_eq!(greens(&book.state(), a), [Some(11)]);
    book.correct(
        second,
        Body::Inspected {
            palm: a,
            inspection: look(12),
        },
    );
    assert_eq!(greens(&book.state(), a), [Some(12)]);
    // It was on the other palm all along; the correction names the first entry, and is the last written.
    let moved = book.correct(
        first,
        Body::Inspected {
            palm: b,
            inspection: look(13),
        },
    );
    let state = book.state();
    assert_eq!(
        (greens(&state, a), greens(&state, b)),
        (vec![], vec![Some(13)])
    );
    assert_eq!(state.palm(b).unwrap().inspection_entries, [moved]);
    assert!(state.noticed().is_empty());
}

#[test]
fn what_was_taken_back_does_not_come_back() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto"));
    let look = |green| inspection("2026-03-02").counts(green, 0, 0);
    let first = book.inspect(a, look(10));
    let second = book.correct(
        first,
        Body::Inspected {
            palm: a,
            inspection: look(11),
        },
    );
    let back = book.withdraw(second);
    let state = book.state();
    assert_eq!(greens(&state, a), []);
    assert_eq!(
        state.palm(a).unwrap().entries.len(),
        4,
        "history keeps what was taken back"
    );
    book.withdraw(back);
    assert_eq!(
        greens(&book.state(), a),
        [],
        "taking back a withdrawal restores nothing"
    );
    book.correct(
        back,
        Body::Inspected {
            palm: a,
            inspection: look(12),
        },
    );
    assert_eq!(
        greens(&book.state(), a),
        [Some(12)],
        "but a later correction of it stands"
    );
}

#[test]
fn a_corrected_registration_keeps_its_identity() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmeto").tag("A1"));
    book.inspect(a, inspection("2026-03-02"));
    let corrected = book.correct(
        model::EntryId(a.0),
        Body::PalmRegistered(palm("Sabal palmetto").tag("A1")),
    );
    book.inspect(PalmId(corrected.0), inspection("2026-03-09"));
    let state = book.state();
    assert_eq!(state.palms.len(), 1);
    let record = state.palm(a).unwrap();
    assert_eq!(
        (record.palm.species.as_str(), record.inspections.len()),
        ("Sabal palmetto", 2)
    );
    book.withdraw(model::EntryId(a.0));
    let state = book.state();
    assert!(state.palms.is_empty() && state.by_tag("A1").is_none());
    assert_eq!(codes(&state), ["palm-unknown", "palm-unknown"]);
}

#[test]
fn a_look_at_an_unknown_palm_waits_for_it() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto"));
    let look = book.inspect(a, inspection("2026-03-02"));
    let mut fold = Fold::default();
    fold.apply([book.entries()[1].clone()]);
    let before = fold.state();
    assert_eq!(
        (codes(&before), before.palms.len()),
        (vec!["palm-unknown"], 0)
    );
    assert_eq!(
        (before.noticed()[0].entry, before.noticed()[0].palm),
        (look, Some(a))
    );
    assert_eq!(before.noticed()[0].finding.severity, Severity::Act);
    fold.apply([book.entries()[0].clone()]);
    assert_eq!(*fold.state(), book.state());
    assert!(fold.state().noticed().is_empty());
    assert_eq!(
        codes(&before),
        ["palm-unknown"],
        "a snapshot stays as it was"
    );
}

#[test]
fn a_tag_belongs_to_the_palm_registered_first() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let b = book.register(palm("Sabal palmetto").tag("A1"));
    let state = book.state();
    assert_eq!(state.by_tag("A1").unwrap().id, a);
    assert_eq!(
        (codes(&state), state.noticed()[0].palm),
        (vec!["tag-doubled"], Some(b))
    );
    book.remove(a, "felled");
    let state = book.state();
    assert_eq!(
        (state.by_tag("A1").unwrap().id, state.standing().count()),
        (b, 1)
    );
    assert_eq!(state.palm(a).unwrap().removed.as_deref(), Some("felled"));
    assert!(state.noticed().is_empty());
}

#[test]
fn holds_end_by_lifting_or_by_their_day() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto"));
    let nest = book.hold(a, "nest", Some(day("2026-07-31")));
    let wilt = book.hold(a, "wilt-suspect", None);
    let state = book.state();
    let on = |state: &State, date: &str| -> Vec<String> {
        state
            .palm(a)
            .unwrap()
            .holds_on(day(date))
            .map(|hold| hold.reason.clone())
            .collect()
    };
    assert_eq!(on(&state, "2026-07-31"), ["nest", "wilt-suspect"]);
    assert_eq!(on(&state, "2026-08-01"), ["wilt-suspect"]);
    let lift = book.lift(wilt);
    assert_eq!(on(&book.state(), "2026-07-31"), ["nest"]);
    assert!(book.state().palm(a).unwrap().entries.contains(&lift));
    let moved = Body::HoldSet {
        palm: a,
        reason: "nest".into(),
        until: Some(day("2026-06-01")),
        note: String::new(),
    };
    let corrected = book.correct(nest, moved);
    assert_eq!(on(&book.state(), "2026-06-02"), Vec::<String>::new());
    book.lift(corrected);
    assert!(
        book.state().palm(a).unwrap().holds.is_empty(),
        "any entry of the thread names the hold"
    );
    book.withdraw(lift);
    assert_eq!(on(&book.state(), "2026-07-31"), ["wilt-suspect"]);
}

#[test]
fn strange_entries_are_noticed_and_harm_nothing() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto"));
    book.lift(model::EntryId(id(9, 9)));
    book.inspect(a, inspection("2026-03-02").stem(2));
    book.write(
        Body::Unknown {
            kind: "later".into(),
            version: 1,
            json: "{}".into(),
        },
        None,
    );
    let circle: Vec<Entry> = [(1, 2), (2, 1), (3, 3)]
        .map(|(own, target)| Entry {
            id: model::EntryId(id(9, own)),
            replaces: Some(model::EntryId(id(9, target))),
            at: noon("2026-03-01"),
            written_at: noon("2026-03-01"),
            by: String::new(),
            device: String::new(),
            body: Body::PalmRegistered(Palm::default()),
        })
        .into();
    let state = State::fold(book.entries().iter().cloned().chain(circle));
    let mut codes = codes(&state);
    codes.sort_unstable();
    let expected = [
        "corrections-in-circle",
        "corrections-in-circle",
        "entry-not-understood",
        "hold-unknown",
        "stem-out-of-range",
    ];
    assert_eq!(codes, expected);
    assert_eq!(
        (state.palms.len(), state.palm(a).unwrap().inspections.len()),
        (1, 1)
    );
}

#[test]
fn records_that_did_not_change_stay_the_same() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let b = book.register(palm("Sabal palmetto").tag("B1"));
    let mut fold = Fold::default();
    fold.apply(book.entries().iter().cloned());
    let before = fold.state();
    book.inspect(b, inspection("2026-03-02"));
    fold.apply(book.entries().iter().cloned());
    let after = fold.state();
    assert!(std::sync::Arc::ptr_eq(
        before.palm(a).unwrap(),
        after.palm(a).unwrap()
    ));
    assert!(!std::sync::Arc::ptr_eq(
        before.palm(b).unwrap(),
        after.palm(b).unwrap()
    ));
}
