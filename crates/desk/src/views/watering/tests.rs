use super::*;
use crate::measure::{Measure, Units};
use crate::office::Office;
use crate::views::Speaker;
use crate::views::testing::office_on;
use crate::watering::{self, State};
use crate::words::{Lang, Words};
use model::{Body, Day, Metres, Move, Tending, Watering, WeatherDay};
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

const TODAY: &str = "2026-07-15";

fn speaker(lang: Lang, units: Units) -> Speaker {
    Speaker::new(Measure::new(units, Words::new(lang)))
}

fn office(book: &Book) -> Office {
    office_on(book, TODAY)
}

/// A palm moved on 1 June with its ball noted, twelve fronds counted on 10 July.
fn moved(book: &mut Book, tag: &str) -> model::PalmId {
    let id = book.register(
        palm("Syagrus romanzoffiana")
            .tag(tag)
            .site("Yard")
            .moved("2026-06-01"),
    );
    let what = Tending::Moved(Move {
        ball_radius: Some(Metres(0.6)),
        ball_depth: Some(Metres(0.6)),
        soil: "sandy-loam".to_owned(),
        ..Move::on(day("2026-06-01"))
    });
    book.on("2026-06-01")
        .write(Body::Tended { palm: id, what }, None);
    book.on("2026-07-10")
        .inspect(id, inspection("2026-07-10").counts(12, 1, 2));
    id
}

fn water(book: &mut Book, id: model::PalmId, on: &str, litres: Option<f64>) {
    let what = Tending::Watered(Watering {
        litres,
        notes: String::new(),
    });
    book.on(on).write(Body::Tended { palm: id, what }, None);
}

/// Weather of the last thirty days, hot and dry.
fn weather(book: &mut Book) {
    for ago in 0..30 {
        let on: Day = day(TODAY).plus(-ago);
        let weather = WeatherDay {
            t_min: Some(24.0),
            t_max: Some(33.0),
            rain: Some(0.0),
            ..WeatherDay::blank("", on)
        };
        book.on(&on.to_string())
            .write(Body::WeatherNoted(weather), None);
    }
}

/// Watered yesterday enough; watered last a fortnight ago; nothing noted; never moved but watered; not followed.
fn yard() -> Book {
    let mut book = Book::new(1);
    weather(&mut book);
    let fresh = moved(&mut book, "A1");
    water(&mut book, fresh, "2026-07-15", Some(400.0));
    let dry = moved(&mut book, "B1");
    water(&mut book, dry, "2026-07-01", Some(200.0));
    moved(&mut book, "C1");
    let old = book.register(palm("Syagrus romanzoffiana").tag("D1").site("Yard"));
    water(&mut book, old, "2026-07-14", None);
    book.register(palm("Syagrus romanzoffiana").tag("E1").site("Yard"));
    let nameless = book.register(palm("No such palm").tag("F1").site("Gate"));
    water(&mut book, nameless, "2026-07-10", Some(20.0));
    book
}

#[test]
fn who_wants_water_stands_first_and_who_is_not_followed_does_not_stand_there() {
    let office = office(&yard());
    let (all, more) = watering::all(&office);
    let states: Vec<(&str, &str)> = all
        .iter()
        .map(|w| (w.record.palm.tag.as_str(), w.state().key()))
        .collect();
    assert_eq!(more, 0);
    let of = |tag: &str| states.iter().find(|(own, _)| *own == tag).map(|(_, s)| *s);
    assert_eq!(of("B1"), Some("due"), "{states:?}");
    assert_eq!(of("C1"), Some("nothing-noted"));
    assert_eq!(of("A1"), Some("soon"));
    assert_eq!(of("F1"), Some("unknown"));
    assert_eq!(of("E1"), None, "nobody said that it is watered");
    assert!(of("D1").is_some(), "a watering was noted");
    let ranks: Vec<State> = all.iter().map(watering::Watered::state).collect();
    assert!(ranks.is_sorted());
}

#[test]
fn the_total_of_the_list_is_the_sum_of_its_palms_and_of_the_file_for_programs() {
    let office = office(&yard());
    let (all, _) = watering::all(&office);
    let sum: f64 = all
        .iter()
        .map(|w| json(w)["today_litres"].as_f64().unwrap_or(0.0))
        .sum();
    let speaker = speaker(Lang::En, Units::Metric);
    let view = view(&speaker, &office, "");
    assert!(sum > 0.0);
    let said = view.total.unwrap();
    assert!(said.contains(&speaker.measure.water(sum)), "{said}");
    let narrowed = super::view(&speaker, &office, "Gate");
    let tags: Vec<&str> = narrowed
        .groups
        .iter()
        .flat_map(|g| &g.rows)
        .map(|r| r.tag.as_str())
        .collect();
    assert_eq!(tags, ["F1"]);
    assert_eq!(narrowed.sites.len(), 2);
}

#[test]
fn one_tap_notes_what_the_list_says_to_give() {
    let office = office(&yard());
    let (all, _) = watering::all(&office);
    let dry = all.iter().find(|w| w.record.palm.tag == "B1").unwrap();
    let (_, litres) = dry.today_give().unwrap();
    let page = page(&speaker(Lang::En, Units::UsCustomary), &office, "B1").unwrap();
    let typed = crate::forms::Typed::of([("litres", page.tap.0.unwrap())]);
    let read = crate::forms::watering(&typed, day(TODAY), Units::UsCustomary)
        .unwrap()
        .1;
    assert!(
        (read.litres.unwrap() - litres).abs() < 0.06,
        "{litres}: {read:?}"
    );
}

#[test]
fn the_steps_of_the_page_multiply_to_the_need_it_states() {
    let office = office(&yard());
    let (all, _) = watering::all(&office);
    let plan = &all.iter().find(|w| w.record.palm.tag == "A1").unwrap().plan;
    let need = plan.reference.mm.high
        * plan.factor.high
        * plan.crown_draws.high
        * plan.crown_m2.unwrap().high;
    assert!((need - plan.need_l.unwrap().high).abs() < 1e-9);
    let page = page(&speaker(Lang::En, Units::Metric), &office, "A1").unwrap();
    let step = |key: &str| page.steps.iter().find(|s| s.key == key).unwrap();
    let m = speaker(Lang::En, Units::Metric).measure;
    let span = plan.need_l.unwrap();
    assert_eq!(step("need").value, m.water_range(span.low, span.high));
    // a queen palm has no row of its own: crop and landscape factors stand against each other
    assert!(page.conflict.is_some() && page.factors.iter().any(|f| f.used == "container"));
    assert!(page.taper.len() > 1, "roots of a moved palm grow");
}

#[test]
fn everything_shown_has_words_in_both_languages_and_units() {
    let office = office(&yard());
    for (lang, units) in [
        (Lang::En, Units::Metric),
        (Lang::En, Units::UsCustomary),
        (Lang::Es, Units::Metric),
    ] {
        let speaker = speaker(lang, units);
        let list = view(&speaker, &office, "");
        let mut texts = vec![list.summary, list.what];
        texts.extend(list.weather.into_iter().chain(list.total));
        for row in list.groups.into_iter().flat_map(|g| g.rows) {
            texts.extend([
                row.state_words,
                row.next,
                row.rhythm,
                row.last,
                row.tap_words,
            ]);
        }
        for tag in ["A1", "B1", "C1", "D1", "E1", "F1"] {
            let page = page(&speaker, &office, tag).unwrap();
            texts.extend([page.next, page.rhythm, page.last, page.state.1]);
            texts.extend(
                page.lasts
                    .into_iter()
                    .chain(page.conflict)
                    .chain(page.short),
            );
            texts.extend(page.gaps.into_iter().map(|g| g.text));
            texts.extend(page.minds);
            texts.extend(page.taper.into_iter().flat_map(|t| [t.roots, t.rhythm]));
            texts.extend(
                page.steps
                    .into_iter()
                    .flat_map(|s| s.notes.into_iter().chain([s.name])),
            );
            texts.extend(page.factors.into_iter().map(|f| f.used_words));
        }
        for text in texts {
            let code = !text.contains(' ') && text.contains('-');
            assert!(
                !code && !text.contains("{$") && !text.contains("{ $"),
                "{text}"
            );
        }
    }
}
