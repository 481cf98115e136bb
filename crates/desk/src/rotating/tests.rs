//! Rows and words of a rotation, against the example of `docs/blades.md`.

use super::*;
use crate::measure::{Measure, Units};
use crate::words::{Lang, Words};

fn english() -> Measure {
    Measure::new(Units::Metric, Words::new(Lang::En))
}

fn kit(sets: usize) -> Kit {
    crate::blades::bath_rules(sets, 10.0)
}

fn example() -> Vec<RoundCut> {
    let rows = [
        ("P-1", 8.0),
        ("P-2", 4.0),
        ("P-2", 4.0),
        ("P-3", 6.0),
        ("P-4", 5.0),
    ];
    let mut cuts: Vec<RoundCut> = Vec::new();
    for (tag, minutes) in rows {
        let row = RoundRow {
            tag: tag.to_owned(),
            minutes,
            needs_clean: None,
        };
        cuts.push(next_cut(cuts.last(), row));
    }
    cuts
}

#[test]
fn the_example_of_the_manual_as_rows() {
    let made = made(example(), kit(2)).unwrap();
    let rows = rotation_rows(&made);
    let row = |n: usize| rows[n].join(",");
    assert_eq!(row(0), "1,P-1,A,0,0,8,8,9,19,20,1");
    assert_eq!(row(1), "2,P-2,B,0,8,12,,,,,");
    assert_eq!(row(2), "3,P-2,B,0,12,16,16,17,27,28,1");
    assert_eq!(row(3), "4,P-3,A,4,20,26,26,27,37,38,1");
    assert_eq!(row(4), "5,P-4,B,2,28,33,33,34,44,45,1");
    assert_eq!(
        sentence(&english(), &made),
        "2 sets: you wait 6 min in all and are done in 33 min; with 3 sets nobody waits, done in 27 min."
    );
}

/// Every cleaning of the plan belongs to exactly one cut, that of its set which ended when it was laid down.
#[test]
fn each_soak_follows_its_cut() {
    for sets in 1..6 {
        let made = made(example(), kit(sets)).unwrap();
        let soaks = made.soaks();
        assert_eq!(soaks.iter().flatten().count(), made.plan.soaks.len());
        for (turn, soak) in made.plan.turns.iter().zip(soaks) {
            let Some(soak) = soak else { continue };
            assert_eq!((soak.set, soak.from), (turn.set, turn.end));
        }
    }
}

#[test]
fn sentences_for_enough_and_more_than_enough() {
    let says = |sets| sentence(&english(), &made(alike(12, 6.0), kit(sets)).unwrap());
    // a set comes back after 12 minutes of cleaning: three turn without waiting where a palm takes half as long
    assert_eq!(
        says(3),
        "3 sets: no waiting, done in 1 h 12 min; with 2 sets you would wait 30 min."
    );
    assert_eq!(
        says(5),
        "5 sets: no waiting, done in 1 h 12 min; 3 sets would do."
    );
    let one = made(alike(1, 120.0), kit(1)).unwrap();
    assert_eq!(
        sentence(&english(), &one),
        "1 set: no waiting, done in 2 h."
    );
}

#[test]
fn sets_have_letters() {
    let names: Vec<String> = [0, 25, 26, 701, 702].map(letter).into();
    assert_eq!(names, ["A", "Z", "AA", "ZZ", "AAA"]);
}

/// Ten minutes: [pp215_mem], recalled, is the strictest for the wilt of date palms; five: [laker_col_2020] for the other.
#[test]
fn the_soak_comes_from_the_table() {
    let minutes = |disorder| needed("bleach", None, disorder).unwrap().minutes;
    assert_eq!(minutes(Some("fusarium-wilt-canariensis")), 10.0);
    assert_eq!(minutes(Some("fusarium-wilt-palmarum")), 5.0);
    let all = needed("Household bleach", None, None).unwrap();
    assert_eq!((all.minutes, all.strength_pct), (10.0, Some(25.0)));
    assert_eq!(too_short(&all, 10.0, None), []);
    let short = too_short(&all, 7.0, None);
    assert_eq!((short.len(), short[0].code), (1, "clean-too-short"));
    let why = |agent, strength| needed(agent, strength, None).unwrap_err()[0].code;
    // trials on bananas and cotton only: nobody can say (docs/blades.md)
    assert_eq!(why("quat", None), "clean-no-source");
    assert_eq!(why("bleach", Some(5.0)), "clean-too-weak");
    assert_eq!(why("holy water", None), "clean-agent-not-known");
}
