//! The map and the words of a walk.

use super::draw::{Map, WIDTH, map};
use super::*;
use crate::measure::{Measure, Units};
use crate::words::{Lang, Words};
use model::PalmId;
use rounds::walk::Walk;
use testkit::{Book, PalmWith, palm};

fn speaker(lang: Lang, units: Units) -> Speaker {
    Speaker::new(Measure::new(units, Words::new(lang)))
}

/// Stops at so many metres east and north of a corner in the open sea, healthy ones.
fn walked(places: &[(f64, f64)]) -> SiteWalk {
    let mut book = Book::new(3);
    let radius = rounds::travel::EARTH_RADIUS_M;
    let narrow = model::math::cos(27f64.to_radians());
    let ids: Vec<PalmId> = places
        .iter()
        .enumerate()
        .map(|(n, (east, north))| {
            let lat = 27.0 + (north / radius).to_degrees();
            let lon = -82.0 + (east / radius / narrow).to_degrees();
            book.register(palm("Sabal palmetto").tag(&format!("P{n}")).at(lat, lon))
        })
        .collect();
    let state = book.state();
    let stop = |id: &PalmId| Stop {
        record: state.palm(*id).unwrap().clone(),
        because: Because::Seen(3),
        metres: Some(1.0),
        cut: None,
        hands: false,
    };
    SiteWalk {
        gate: None,
        stops: ids.iter().map(stop).collect(),
        way: Walk::default(),
        blades: None,
        needed: None,
    }
}

fn drawn(places: &[(f64, f64)]) -> Option<Map> {
    map(&speaker(Lang::En, Units::Metric), &walked(places))
}

#[test]
fn the_map_has_north_up_and_one_scale() {
    let map = drawn(&[(0.0, 0.0), (100.0, 0.0), (100.0, 50.0)]).unwrap();
    let at: Vec<(i32, i32)> = map.marks.iter().map(|m| (m.x, m.y)).collect();
    let east = at[1].0 - at[0].0;
    assert_eq!(at[1].1, at[0].1);
    assert_eq!(at[2].0, at[1].0);
    assert!((at[1].1 - at[2].1 - east / 2).abs() <= 1, "{at:?}");
    // 100 m fill the paper between its margins; the bar is a round length on the same scale
    assert_eq!(east, WIDTH as i32 - 88);
    assert_eq!(map.bar.1.replace('\u{a0}', " "), "20 m");
    assert!((map.bar.0 - east / 5).abs() <= 1);
    assert_eq!(
        map.line,
        format!(
            "M{} {}L{} {}L{} {}",
            at[0].0, at[0].1, at[1].0, at[1].1, at[2].0, at[2].1
        )
    );
    for mark in &map.marks {
        assert!((0..=map.size.0).contains(&mark.x) && (0..=map.size.1).contains(&mark.y));
    }
}

#[test]
fn one_place_is_no_map_and_palms_in_one_spot_are() {
    assert_eq!(drawn(&[(0.0, 0.0)]), None);
    let map = drawn(&[(0.0, 0.0), (0.0, 0.0)]).unwrap();
    assert_eq!(map.marks[0].x, map.marks[1].x);
}

#[test]
fn of_many_stops_some_carry_numbers() {
    let many: Vec<(f64, f64)> = (0..100).map(|n| (f64::from(n), 0.0)).collect();
    let map = drawn(&many).unwrap();
    let numbers: Vec<usize> = map.marks.iter().filter_map(|m| m.number).collect();
    assert!(numbers.len() <= 41 && numbers[0] == 1 && numbers.contains(&100));
}

/// Every reason a palm can be in its class has words in both languages, with every argument filled in.
#[test]
fn every_reason_has_words() {
    let all = [
        Because::Laboratory,
        Because::Held("wilt-suspect"),
        Because::Advised("spear"),
        Because::Sign("conk-lower-trunk"),
        Because::Spear,
        Because::NeverSeen,
        Because::LongAgo(400),
        Because::Seen(3),
    ];
    for lang in Lang::ALL {
        for because in all {
            let said = why(&speaker(lang, Units::Metric), because);
            assert!(said.len() > 8 && !said.contains(['{', '$']), "{said}");
            assert!(!said.starts_with("walk-"), "{said}");
        }
    }
}

#[test]
fn what_is_wrong_is_said_at_its_field() {
    let speaker = speaker(Lang::En, Units::Metric);
    let ask = |sets: &str, soak: &str| {
        let question = Question {
            site: "site:Grounds".into(),
            sets: sets.into(),
            soak: soak.into(),
            tags: " A-1, B-2;\nC-3 ".into(),
            ..Question::default()
        };
        asked(&speaker, &question).unwrap()
    };
    let ask_ok = ask("", "").unwrap();
    let tags: Vec<String> = ["A-1", "B-2", "C-3"].map(str::to_owned).into();
    assert_eq!(ask_ok.which, Which::Tags(tags.into_iter().collect()));
    assert_eq!(
        (ask_ok.sets, ask_ok.soak_min, ask_ok.cut_min),
        (2, None, CUT_MIN)
    );
    assert_eq!(ask("3", "0").unwrap().soak_min, Some(0.0));
    let fields: Vec<&str> = ask("2.5", "long")
        .unwrap_err()
        .iter()
        .map(|t| t.field)
        .collect();
    assert_eq!(fields, ["sets", "soak"]);
    assert!(asked(&speaker, &Question::default()).is_none());
}

#[test]
fn the_answer_counts_and_names_the_classes() {
    let mut walk = walked(&[(0.0, 0.0), (10.0, 0.0), (20.0, 0.0)]);
    walk.stops[2].because = Because::Spear;
    walk.way.metres = 20.0;
    let answer = answer(&speaker(Lang::En, Units::Metric), &walk);
    let classes: Vec<(&str, usize)> = answer
        .classes
        .iter()
        .map(|c| (c.key, c.rows.len()))
        .collect();
    assert_eq!(classes, [("healthy", 2), ("suspect", 1)]);
    assert!(
        answer
            .sentence
            .replace('\u{a0}', " ")
            .contains("3 palms, 20 m"),
        "{}",
        answer.sentence
    );
    assert_eq!(answer.classes[1].rows[0].n, 3);
}
