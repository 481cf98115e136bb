//! A small made-up set of rows: invented disorders with every kind of link, for tests of how the judge reckons.
#![allow(dead_code)] // every test takes its own part of it

use care::judge::Rows;
use model::Basis;
use model::knowledge::{
    Course, DayRange, DisorderRow, Family, HoldKind, Host, HostKind, Part, SignLink, SignRow,
    Strength, Texts, WeightRow,
};
use std::sync::OnceLock;

/// Number of signs, `s0`, `s1`, ...
pub const SIGNS: usize = 14;

/// The rows.
pub fn rows() -> Rows<'static> {
    static SIGN: OnceLock<Vec<SignRow>> = OnceLock::new();
    static DISORDER: OnceLock<Vec<DisorderRow>> = OnceLock::new();
    static LINK: OnceLock<Vec<SignLink>> = OnceLock::new();
    static WEIGHT: OnceLock<Vec<WeightRow>> = OnceLock::new();
    Rows {
        signs: SIGN.get_or_init(|| (0..SIGNS).map(sign).collect()),
        disorders: DISORDER.get_or_init(disorders),
        links: LINK.get_or_init(links),
        weights: WEIGHT.get_or_init(weights),
    }
}

/// Key of a sign: two of them tell of what happened.
pub fn key(k: usize) -> String {
    match k {
        9 => "recently-moved".to_owned(),
        10 => "recent-freeze".to_owned(),
        _ => format!("s{k}"),
    }
}

fn sign(k: usize) -> SignRow {
    SignRow {
        key: key(k),
        part: Part::ALL[k % 8].0,
        name: Texts::default(),
        how: Texts::default(),
        minutes: 0.5 + k as f64,
        basis: Basis::Assumed,
        sources: Vec::new(),
    }
}

fn disorder(key: &str, family: Family, course: Course, hosts: &[(&str, HostKind)]) -> DisorderRow {
    let host = |(name, kind): &(&str, HostKind)| Host {
        name: (*name).to_owned(),
        kind: *kind,
    };
    DisorderRow {
        key: key.to_owned(),
        name: Texts::default(),
        family,
        about: Texts::default(),
        organism: String::new(),
        hosts: hosts.iter().map(host).collect(),
        spread: Vec::new(),
        latency: DayRange::default(),
        decline: DayRange::default(),
        common: 1.0,
        course,
        hold: None,
        confirm: Texts::default(),
        sample: Texts::default(),
        first: Texts::default(),
        never: Texts::default(),
        basis: Basis::Assumed,
        sources: Vec::new(),
    }
}

fn disorders() -> Vec<DisorderRow> {
    use {Course::*, Family::*, HostKind::*};
    let all = &[("*", Known)][..];
    let mut rows = vec![
        disorder(
            "hungry-old",
            Nutrient,
            Hunger,
            &[("*", Known), ("Phoenix", Prone)],
        ),
        disorder("hungry-new", Nutrient, Hunger, all),
        disorder(
            "wilt",
            Disease,
            Decline,
            &[("Phoenix canariensis", Known), ("Syagrus", Reported)],
        ),
        disorder("natural-senescence", Normal, Ageing, all),
        disorder("transplant-shock", Surroundings, Move, all),
        disorder("frostbite", Surroundings, Ageing, all),
        disorder(
            "rot",
            Disease,
            Decline,
            &[("Cocos nucifera", Prone), ("Phoenix", Reported)],
        ),
        disorder("borer", Pest, Decline, all),
    ];
    rows[1].common = 0.4;
    rows[1].latency = DayRange {
        min: Some(60),
        max: Some(200),
    };
    rows[2].common = 0.3;
    rows[2].hold = Some(HoldKind::Wilt);
    rows[6].hold = Some(HoldKind::BudRot);
    rows[7].hold = Some(HoldKind::Weevil);
    rows
}

fn links() -> Vec<SignLink> {
    use Strength::*;
    let by_disorder: [(&str, &[(usize, Strength)]); 8] = [
        (
            "hungry-old",
            &[(0, Always), (1, Usual), (2, Sometimes), (3, Excludes)],
        ),
        (
            "hungry-new",
            &[(3, Always), (4, Usual), (0, Excludes), (5, Rare)],
        ),
        (
            "wilt",
            &[(0, Usual), (6, Always), (3, Excludes), (7, Sometimes)],
        ),
        (
            "natural-senescence",
            &[(0, Usual), (8, Always), (1, Excludes)],
        ),
        (
            "transplant-shock",
            &[(0, Usual), (9, Always), (6, Excludes)],
        ),
        ("frostbite", &[(3, Sometimes), (10, Always), (7, Rare)]),
        (
            "rot",
            &[(3, Usual), (7, Usual), (11, Always), (8, Excludes)],
        ),
        ("borer", &[(11, Usual), (12, Always), (7, Sometimes)]),
    ];
    let link = |disorder: &str, (sign, strength): &(usize, Strength)| SignLink {
        disorder: disorder.to_owned(),
        sign: key(*sign),
        strength: *strength,
        basis: Basis::Assumed,
        sources: Vec::new(),
    };
    let all = by_disorder.iter();
    all.flat_map(|(d, signs)| signs.iter().map(move |s| link(d, s)))
        .collect()
}

/// A row of weights.
pub fn weight(key: &str, value: f64) -> WeightRow {
    WeightRow {
        key: key.to_owned(),
        value,
        text: Texts::default(),
        basis: Basis::Assumed,
        sources: Vec::new(),
    }
}

fn weights() -> Vec<WeightRow> {
    [
        ("strength-usual", 0.7),
        ("after-move-transplant-shock", 20.0),
        ("after-move-borer", 3.0),
        ("after-frost-frostbite", 8.0),
        ("after-frost-rot", 4.0),
        ("after-storm-rot", 2.0),
        ("winter-frostbite", 3.0),
        ("summer-frostbite", 0.2),
        ("summer-rot", 1.5),
        ("base-s8", 0.6),
        ("base-recent-freeze", 0.2),
    ]
    .iter()
    .map(|(key, value)| weight(key, *value))
    .collect()
}
