use super::*;
use crate::measure::{Measure, Units};
use crate::moved;
use crate::office::Office;
use crate::views::Speaker;
use crate::views::testing::office_on;
use crate::words::{Lang, Words};
use model::{Body, Inspection, Metres, Move, Spear, Tending};
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

const TODAY: &str = "2026-06-15";

fn speaker(lang: Lang) -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(lang)))
}

fn office(book: &Book) -> Office {
    office_on(book, TODAY)
}

fn look(date: &str, counts: (u32, u32, u32), spear: Spear) -> Inspection {
    Inspection {
        spear: Some(spear),
        ..inspection(date).counts(counts.0, counts.1, counts.2)
    }
}

/// One that holds, one whose spear leans, one that nobody has looked at, one never moved.
fn yard() -> Book {
    let mut book = Book::new(1);
    let moved = |tag: &str| {
        palm("Syagrus romanzoffiana")
            .tag(tag)
            .site("Yard")
            .moved("2026-05-01")
            .cleaned("2026-05-01")
    };
    let holds = book.register(moved("A1"));
    book.on("2026-05-02")
        .inspect(holds, look("2026-05-02", (16, 0, 0), Spear::Firm));
    book.on("2026-06-10")
        .inspect(holds, look("2026-06-10", (14, 1, 2), Spear::Firm));
    let leans = book.register(moved("B1"));
    book.on("2026-06-10")
        .inspect(leans, look("2026-06-10", (14, 1, 2), Spear::Leaning));
    book.register(moved("C1"));
    book.register(palm("Syagrus romanzoffiana").tag("D1").site("Yard"));
    book
}

#[test]
fn the_list_puts_who_needs_a_person_first() {
    let office = office(&yard());
    let (all, more) = moved::all(&office);
    let states: Vec<(&str, &str)> = all
        .iter()
        .map(|m| (m.record.palm.tag.as_str(), m.state().key()))
        .collect();
    assert_eq!(
        states,
        [("B1", "tripped"), ("C1", "not-seen"), ("A1", "holds")]
    );
    assert_eq!(more, 0);
    // 2026-05-01 plus 60 days; the look of day 40 counts for day 42
    assert_eq!(all[2].calendar.next, Some(day("2026-06-30")));
}

#[test]
fn everything_shown_has_words_in_both_languages() {
    let office = office(&yard());
    for lang in Lang::ALL {
        let speaker = speaker(lang);
        let list = view(&speaker, &office);
        let mut texts: Vec<String> = vec![list.summary, list.what];
        for row in list.rows {
            texts.extend([row.state_words, row.since, row.next, row.promise]);
            texts.extend(row.trips.into_iter().map(|t| t.text));
        }
        let asked = Asked {
            diameter: "40 cm".into(),
            fronds: "16".into(),
            ..Asked::default()
        };
        for tag in ["A1", "B1", "C1", "D1"] {
            let page = page(&speaker, &office, tag, &asked).unwrap();
            texts.extend(
                page.promise
                    .into_iter()
                    .flat_map(|p| [p.full, p.call, p.rests_on]),
            );
            texts.extend(page.established);
            texts.extend(page.looks.into_iter().flat_map(|l| [l.what, l.state_words]));
            let before = page.before;
            texts.extend(before.missing.into_iter().chain(before.remarks));
            texts.extend(before.groups.iter().map(|g| g.title.clone()));
            texts.push(before.leaves);
        }
        for text in texts {
            let code = !text.contains(' ') && text.contains('-');
            assert!(!code && !text.contains("{$") && !text.is_empty(), "{text}");
        }
        let findings = care::moving::mass::MISSING.iter();
        assert!(findings.clone().all(|code| speaker.words().has(code)));
    }
}

#[test]
fn the_promise_names_its_dates_and_the_call() {
    let office = office(&yard());
    let page = page(&speaker(Lang::En), &office, "A1", &Asked::default()).unwrap();
    let promise = page.promise.unwrap();
    assert!(
        promise.full.contains("10 Jun 2026") && promise.full.contains("10 Aug 2026"),
        "{}",
        promise.full
    );
    assert!(promise.call.contains("More than"), "{}", promise.call);
    assert_eq!(page.looks.len(), 12);
    let never = super::page(&speaker(Lang::En), &office, "D1", &Asked::default()).unwrap();
    assert_eq!(
        (never.since, never.promise, never.looks.len()),
        (None, None, 0)
    );
}

#[test]
fn what_is_asked_before_a_move_is_read_and_nonsense_is_said() {
    let office = office(&yard());
    let asked = Asked {
        diameter: "wide".into(),
        kv: "-3".into(),
        ..Asked::default()
    };
    let before = page(&speaker(Lang::En), &office, "D1", &asked)
        .unwrap()
        .before;
    let fields: Vec<&str> = before.troubles.iter().map(|(field, _)| *field).collect();
    assert_eq!(fields, ["diameter", "kv"]);
    assert_eq!(before.leaves_key, "leave");
    assert_eq!(before.volume, None);
}

#[test]
fn noted_moves_are_told_without_what_was_not_noted() {
    let mut book = yard();
    let tagged = book.register(palm("Cocos nucifera").tag("E1"));
    let noted = Move {
        ball_radius: Some(Metres(0.3)),
        deeper: Some(Metres(-0.1)),
        ..Move::on(day("2026-05-20"))
    };
    let what = Tending::Moved(noted);
    book.on("2026-05-20")
        .write(Body::Tended { palm: tagged, what }, None);
    let office = office(&book);
    let page = page(&speaker(Lang::En), &office, "E1", &Asked::default()).unwrap();
    assert_eq!(page.noted.len(), 1);
    let told: Vec<&str> = page.noted[0]
        .facts
        .iter()
        .map(|(_, v)| v.as_str())
        .collect();
    assert_eq!(told.len(), 3, "{told:?}");
    assert!(told[2].contains("higher"), "{told:?}");
}

#[test]
fn specimens_are_compared_and_bad_counts_are_said() {
    let office = office(&yard());
    let speaker = speaker(Lang::En);
    let typed = |green: &str, brown: &str, dug: &str| selection::Typed {
        species: "Phoenix canariensis".into(),
        green: green.into(),
        yellowing: "0".into(),
        brown: brown.into(),
        dug: dug.into(),
        spear: "firm".into(),
        cleaned: "digging".into(),
        ..selection::Typed::default()
    };
    let both = [typed("48", "10", "70"), typed("60", "0", "5")];
    let view = selection::view(&speaker, &office, &both);
    assert!(view.troubles.is_empty());
    let codes: Vec<&str> = view.said.iter().map(|s| s.code).collect();
    assert_eq!(codes, ["select-brown-behind-it", "select-fullest"]);
    assert_eq!(view.json.as_array().unwrap().len(), 2);
    let wrong = selection::view(
        &speaker,
        &office,
        &[typed("many", "0", "5"), typed("60", "0", "900")],
    );
    let fields: Vec<(usize, &str)> = wrong
        .troubles
        .iter()
        .map(|t| (t.specimen, t.field))
        .collect();
    assert_eq!(fields, [(0, "green"), (1, "dug")]);
    assert!(wrong.columns.is_empty());
    assert!(
        selection::view(&speaker, &office, &[selection::Typed::default()])
            .columns
            .is_empty()
    );
}
