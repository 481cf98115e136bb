//! What entries about blades do to the state, case by case.

use spearleaf_model as model;

use model::state::Touch;
use model::{
    BladeId, BladeKind, Body, Cleaning, CutMade, EntryId, Moment, PalmId, State, TakenOff,
};
use testkit::{Book, PalmWith, id, palm};

fn codes(state: &State) -> Vec<&'static str> {
    let mut codes: Vec<_> = state.noticed().iter().map(|n| n.finding.code).collect();
    codes.sort_unstable();
    codes
}

/// Touches as letters: `x` cut, `c` cleaning, `l` lent, `r` returned.
fn touched(state: &State, blade: BladeId) -> String {
    let letter = |touch: &model::state::BladeTouch| match touch.what {
        Touch::Cut(_) => 'x',
        Touch::Cleaned(_) => 'c',
        Touch::Lent(_) => 'l',
        Touch::Returned => 'r',
    };
    state
        .blade(blade)
        .expect("blade")
        .touches
        .iter()
        .map(letter)
        .collect()
}

fn cut(blade: BladeId, palm: PalmId, started: Option<&str>) -> Body {
    Body::CutMade(CutMade {
        palm,
        stem: 1,
        blade,
        started: started.map(|text| Moment::parse(text).unwrap()),
        off: TakenOff::default(),
        crew: String::new(),
        despite: String::new(),
        notes: String::new(),
        extra: Default::default(),
    })
}

/// A book with two palms and one saw.
fn yard() -> (Book, PalmId, PalmId, BladeId) {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let b = book.register(palm("Sabal palmetto").tag("B1"));
    let saw = book.blade("S1", BladeKind::HandSaw);
    (book, a, b, saw)
}

#[test]
fn a_blade_with_all_it_touched_in_the_order_of_time() {
    let (mut book, a, b, saw) = yard();
    book.at("2026-03-02T11:00:00Z").cut(saw, b);
    let first = book.at("2026-03-02T09:00:00Z").cut(saw, a);
    book.at("2026-03-02T10:00:00Z")
        .clean(saw, "bleach", Some(10.0), Some(10.0));
    book.at("2026-03-03T09:00:00Z").write(
        Body::BladeLent {
            blade: saw,
            to: "A neighbour".into(),
        },
        None,
    );
    let state = book.state();
    assert_eq!(touched(&state, saw), "xcxl");
    let record = state.blade_by_tag("S1").unwrap();
    assert_eq!((record.id, record.touches[0].entry), (saw, first));
    assert_eq!(record.lent.as_ref().unwrap().to, "A neighbour");
    assert_eq!(record.entries.len(), 5);
    let cuts = &state.palm(a).unwrap().cuts;
    assert_eq!(
        (cuts.len(), cuts[0].entry, cuts[0].cut.blade),
        (1, first, saw)
    );
    assert!(state.palm(a).unwrap().entries.contains(&first));
    assert!(state.noticed().is_empty());
    book.write(Body::BladeReturned { blade: saw }, None);
    assert_eq!(book.state().blade(saw).unwrap().lent, None);
}

#[test]
fn a_cut_can_be_corrected_to_another_palm_and_blade_and_taken_back() {
    let (mut book, a, b, saw) = yard();
    let pole = book.blade("S2", BladeKind::PoleSaw);
    let entry = book.at("2026-03-02T09:00:00Z").cut(saw, a);
    book.correct(entry, cut(pole, b, None));
    let state = book.state();
    assert_eq!(
        (touched(&state, saw), touched(&state, pole)),
        ("".into(), "x".into())
    );
    assert_eq!(state.palm(a).unwrap().cuts.len(), 0);
    assert_eq!(state.palm(b).unwrap().cuts.len(), 1);
    book.withdraw(entry);
    let state = book.state();
    assert_eq!(
        (touched(&state, pole), state.palm(b).unwrap().cuts.len()),
        ("".into(), 0)
    );
}

#[test]
fn what_nobody_registered_is_noticed_and_heals() {
    let (book, a, b, saw) = yard();
    let mut late = Book::new(2);
    late.cut(saw, a);
    late.cut(saw, PalmId(id(9, 9)));
    let mut entries = late.entries().to_vec();
    let state = State::fold(entries.clone());
    assert_eq!(
        codes(&state),
        [
            "blade-unknown",
            "blade-unknown",
            "palm-unknown",
            "palm-unknown"
        ]
    );
    entries.extend(book.entries().iter().cloned());
    let state = State::fold(entries);
    assert_eq!(codes(&state), ["palm-unknown"]);
    assert_eq!(touched(&state, saw), "xx", "nothing is lost");
    assert_eq!(
        (
            state.palm(a).unwrap().cuts.len(),
            state.palm(b).unwrap().cuts.len()
        ),
        (1, 0)
    );
}

#[test]
fn a_blades_tag_belongs_to_the_one_registered_first_until_it_is_retired() {
    let mut book = Book::new(1);
    let first = book.blade("S1", BladeKind::HandSaw);
    let second = book.blade("S1", BladeKind::PoleSaw);
    assert_eq!(codes(&book.state()), ["blade-tag-doubled"]);
    assert_eq!(book.state().blade_by_tag("S1").unwrap().id, first);
    book.write(
        Body::BladeRetired {
            blade: first,
            why: "worn".into(),
        },
        None,
    );
    let state = book.state();
    assert_eq!(state.blade_by_tag("S1").unwrap().id, second);
    assert_eq!((codes(&state).len(), state.serving().count()), (0, 1));
}

#[test]
fn one_blade_cannot_cut_two_palms_at_a_time() {
    for (first, second, overlap) in [
        // start and end of both; "" is not noted
        (("09:00", "09:20"), ("09:10", "09:30"), true),
        (("09:00", "09:20"), ("09:20", "09:30"), false),
        (("09:00", "09:20"), ("", "09:10"), true),
        (("09:00", "09:20"), ("", "09:20"), true),
        (("09:00", "09:20"), ("", "09:00"), false),
        (("", "09:00"), ("", "09:00"), true),
        (("", "09:00"), ("", "09:01"), false),
    ] {
        for other_palm in [true, false] {
            let (mut book, a, b, saw) = yard();
            let on = if other_palm { b } else { a };
            for ((start, end), palm) in [(first, a), (second, on)] {
                let time = |clock: &str| format!("2026-03-02T{clock}:00Z");
                let start = Some(time(start)).filter(|_| !start.is_empty());
                book.at(&time(end));
                let body = cut(saw, palm, start.as_deref());
                book.write(body, None);
                // The book writes a second later; the row says the minute.
            }
            let mut entries = book.entries().to_vec();
            for entry in entries
                .iter_mut()
                .filter(|e| matches!(e.body, Body::CutMade(_)))
            {
                entry.at = Moment(entry.at.0 - 1000);
            }
            let state = State::fold(entries);
            let found = codes(&state).contains(&"cuts-overlap");
            assert_eq!(
                found,
                overlap && other_palm,
                "{first:?} {second:?} {other_palm}"
            );
        }
    }
}

#[test]
fn clocks_that_jump_are_noticed_and_nothing_is_lost() {
    let (mut book, a, _, saw) = yard();
    book.at("2026-03-02T09:00:00Z");
    book.write(cut(saw, a, Some("2026-03-02T09:30:00Z")), None);
    book.at("2026-03-03T09:00:00Z");
    book.write(cut(saw, a, Some("2026-03-02T09:30:00Z")), None);
    book.at("2026-03-04T09:00:00Z").cut(saw, a);
    let mut entries = book.entries().to_vec();
    let last = entries.last_mut().unwrap();
    last.written_at = Moment(last.at.0 - 2 * 3_600_000);
    let state = State::fold(entries);
    assert_eq!(
        codes(&state),
        [
            "cut-ends-before-it-starts",
            "cut-too-long",
            "written-before-it-happened"
        ]
    );
    assert_eq!(touched(&state, saw), "xxx");
}

#[test]
fn a_row_written_twice_counts_once() {
    let (mut book, a, _, saw) = yard();
    book.at("2026-03-02T09:00:00Z").cut(saw, a);
    book.at("2026-03-02T09:00:00Z").cut(saw, a);
    let bath = book.bath("bleach", Some(10.0));
    for _ in 0..2 {
        book.at("2026-03-02T10:00:00Z");
        book.write(cleaned_in(saw, Some(bath), "bleach"), None);
    }
    let state = book.state();
    assert_eq!(codes(&state), ["touch-twice", "touch-twice"]);
    assert_eq!(touched(&state, saw), "xc");
    assert_eq!(state.palm(a).unwrap().cuts.len(), 1);
    assert_eq!(state.baths[&bath].served.len(), 1);
}

fn cleaned_in(blade: BladeId, bath: Option<EntryId>, agent: &str) -> Body {
    Body::Cleaned(Cleaning {
        blade,
        agent: agent.into(),
        strength_pct: None,
        contact_min: Some(5.0),
        brushed: None,
        bath,
        by: String::new(),
        extra: Default::default(),
    })
}

#[test]
fn a_bath_knows_what_it_served_and_a_cleaning_its_bath() {
    let (mut book, _, _, saw) = yard();
    let bath = book.at("2026-03-02T08:00:00Z").bath("bleach", Some(10.0));
    book.at("2026-03-02T09:00:00Z");
    book.write(cleaned_in(saw, Some(bath), ""), None);
    let moved = Body::BathMixed(model::Bath {
        agent: "bleach".into(),
        strength_pct: Some(25.0),
        kit: "A".into(),
    });
    let corrected = book.correct(bath, moved);
    let other = cleaned_in(saw, Some(corrected), "");
    book.write(other, None);
    let state = book.state();
    let record = &state.baths[&bath];
    assert_eq!(
        (record.served.len(), record.bath.strength_pct),
        (2, Some(25.0))
    );
    assert_eq!((record.entry, state.baths.len()), (corrected, 1));
    for touch in &state.blade(saw).unwrap().touches {
        let Touch::Cleaned(cleaning) = &touch.what else {
            panic!("{touch:?}")
        };
        assert_eq!(cleaning.bath, Some(bath), "by its one name");
    }
    assert!(
        state.noticed().is_empty(),
        "a bath says the agent: {:?}",
        codes(&state)
    );
    book.withdraw(corrected);
    assert_eq!(codes(&book.state()), ["bath-unknown", "bath-unknown"]);
}

#[test]
fn a_cleaning_without_agent_is_kept_and_noticed() {
    let (mut book, _, _, saw) = yard();
    book.write(cleaned_in(saw, None, " "), None);
    let state = book.state();
    assert_eq!(
        (codes(&state), touched(&state, saw)),
        (vec!["cleaning-without-agent"], "c".into())
    );
}
