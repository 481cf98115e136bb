use super::*;
use crate::measure::{Measure, Units};
use crate::words::{Lang, Words};
use model::Knowledge;
use model::knowledge::{Family, HoldKind, SignLink, Strength};

fn speaker() -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(Lang::En)))
}

/// A palm told of by hand.
fn told(species: &'static str, seen: &[&str], absent: &[&str]) -> Told {
    let list = |keys: &[&str]| keys.iter().map(|key| (*key).to_owned()).collect();
    Told {
        species: Knowledge::embedded().species_named(species).species(),
        species_name: species.to_owned(),
        seen: list(seen),
        absent: list(absent),
        on: model::Day::parse("2026-05-04"),
        ..Told::default()
    }
}

/// Signs by which a disorder is known, strongest first.
fn signs_of(disorder: &str) -> Vec<&'static str> {
    let mut own: Vec<&SignLink> = Knowledge::embedded()
        .sign_links
        .iter()
        .filter(|link| link.disorder == disorder && link.strength <= Strength::Usual)
        .collect();
    own.sort_by_key(|link| link.strength);
    own.into_iter().map(|link| link.sign.as_str()).collect()
}

#[test]
fn nothing_told_still_says_what_to_look_at_first() {
    let page = view(
        &speaker(),
        &Judged::of(told("Syagrus romanzoffiana", &[], &[])),
        &[],
    );
    assert!(!page.told && page.sides.is_none());
    assert_eq!(page.next.len(), LOOKS);
    for look in &page.next {
        assert!(
            !look.how.is_empty() && look.worth.contains("bits a minute"),
            "{look:?}"
        );
    }
    assert!(
        page.holds.is_empty(),
        "nobody is sent away by a blank: {:?}",
        page.holds
    );
}

#[test]
fn the_ranking_says_for_and_against_in_words() {
    let row = Knowledge::embedded()
        .disorders
        .iter()
        .find(|d| d.family == Family::Nutrient)
        .unwrap();
    let seen: Vec<&str> = signs_of(&row.key).into_iter().take(4).collect();
    assert!(seen.len() >= 2, "{} has hardly a sign", row.key);
    let page = view(
        &speaker(),
        &Judged::of(told("Syagrus romanzoffiana", &seen, &[])),
        &[],
    );
    let first = &page.open[0];
    assert_eq!(first.key, row.key, "{:?}", page.open);
    assert!(
        first
            .for_it
            .iter()
            .any(|chip| chip.text.starts_with("seen: ")),
        "{first:?}"
    );
    assert!(
        first.for_it.iter().all(|chip| chip.factor.starts_with('×')),
        "{first:?}"
    );
    assert!(
        first
            .against
            .iter()
            .all(|chip| chip.factor.starts_with('÷')),
        "{first:?}"
    );
    assert!(
        page.open.len() == OPEN && page.sides.is_some(),
        "hunger is in question"
    );
    let shown: Vec<&str> = page
        .open
        .iter()
        .chain(&page.folded)
        .map(|rank| rank.key)
        .collect();
    assert!(
        !shown.contains(&care::judge::AGEING),
        "ageing has a line of its own"
    );
}

#[test]
fn a_palm_moved_lately_is_shown_both_explanations() {
    let mut of = told("Phoenix dactylifera", &[], &[]);
    of.moved_on = model::Day::parse("2026-03-01");
    let sides = view(&speaker(), &Judged::of(of.clone()), &[])
        .sides
        .expect("moved nine weeks ago");
    assert!(!sides.changes.is_empty() && sides.changes.len() <= 4);
    assert_ne!(
        sides.call, "hunger",
        "a palm moved weeks ago is not called hungry without signs of hunger"
    );
    of.moved_on = model::Day::parse("2019-03-01");
    assert!(
        view(&speaker(), &Judged::of(of), &[]).sides.is_none(),
        "settled for seven years"
    );
}

#[test]
fn an_advised_hold_says_what_to_do_and_whether_it_is_set() {
    let wilts = Knowledge::embedded()
        .disorders
        .iter()
        .filter(|d| d.hold == Some(HoldKind::Wilt));
    let wilt = wilts.max_by_key(|d| signs_of(&d.key).len()).unwrap();
    let seen = signs_of(&wilt.key);
    let judged = Judged::of(told("Phoenix canariensis", &seen, &[]));
    let page = view(&speaker(), &judged, &[]);
    let hold = page
        .holds
        .iter()
        .find(|h| h.reason == "wilt-suspect")
        .expect("a hold is advised");
    assert!(
        !hold.set && hold.because.iter().any(|(key, _)| *key == wilt.key),
        "{hold:?}"
    );
    assert!(
        hold.what
            .iter()
            .all(|line| !line.value.starts_with("hold-")),
        "{:?}",
        hold.what
    );
    let page = view(&speaker(), &judged, &["wilt-suspect"]);
    assert!(page.holds.iter().any(|h| h.set));
}
