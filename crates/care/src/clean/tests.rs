//! Recipes as their sources print them; the rest says where it is assumed.

use super::*;
use model::{BladeKind, Knowledge, Moment, PalmId};
use proptest::prelude::*;

const FOC: Option<&str> = Some("fusarium-wilt-canariensis");
const FOP: Option<&str> = Some("fusarium-wilt-palmarum");

fn known() -> &'static Knowledge {
    Knowledge::embedded()
}

fn soak(agent: &str, strength: f64, minutes: f64) -> Cleaned<'_> {
    Cleaned {
        agent,
        strength_pct: Some(strength),
        contact_min: Some(minutes),
        brushed: Some(true),
        ..Cleaned::default()
    }
}

fn short(missing: f64) -> Adequacy {
    Adequacy::Short {
        missing_min: Some(missing),
    }
}

const NO_TIME: Adequacy = Adequacy::Short { missing_min: None };

/// One check for all recipes: verdict, deciding row, and a row that must be among those that say otherwise.
fn check(cleaned: Cleaned, disorder: Option<&str>, expected: Adequacy, by: &str, other: &str) {
    let verdict = adequacy(&cleaned, disorder, known());
    assert_eq!(verdict.adequacy, expected, "{cleaned:?} {disorder:?}");
    let first = verdict.rows.first().map_or("", |row| row.key.as_str());
    assert_eq!(first, by, "{cleaned:?} {disorder:?}");
    let keys: Vec<&str> = verdict
        .otherwise
        .iter()
        .map(|row| row.key.as_str())
        .collect();
    assert!(
        other.is_empty() || keys.contains(&other),
        "{cleaned:?}: {keys:?}"
    );
    assert!(!verdict.findings.is_empty());
}

/// The palm bath: 1 part bleach, pine oil or rubbing alcohol to 3, 3 and 1 of water, 5 to 10 minutes
/// [laker_col_2020; lamborn_disinfect; txagrilife_fop_2015]; for the wilt of date palms ten, recalled [pp215_mem].
#[test]
fn the_palm_bath() {
    let q = Adequacy::Adequate;
    check(
        soak("bleach", 25.0, 10.0),
        FOC,
        q,
        "bleach-soak-25-ten",
        "bleach-half-twenty",
    );
    check(
        soak("bleach", 25.0, 7.0),
        FOC,
        short(3.0),
        "bleach-soak-25-ten",
        "bleach-soak-25",
    );
    check(soak("bleach", 25.0, 5.0), FOP, q, "bleach-soak-25", "");
    check(
        soak("bleach", 25.0, 4.0),
        FOP,
        short(1.0),
        "bleach-soak-25",
        "bleach-dip-10",
    );
    check(
        soak("bleach", 25.0, 7.0),
        None,
        short(3.0),
        "bleach-soak-25-ten",
        "bleach-soak-25",
    );
    check(soak("pine-oil", 25.0, 5.0), None, q, "pine-oil-soak-25", "");
    check(
        soak("isopropyl", 50.0, 5.0),
        None,
        q,
        "isopropyl-soak-50",
        "",
    );
    check(soak("ethanol", 50.0, 6.0), FOC, q, "ethanol-soak-50", "");
    check(
        soak("ethanol", 50.0, 0.5),
        FOC,
        short(4.5),
        "ethanol-soak-50",
        "",
    );
    // a stronger bath needs no longer
    check(
        soak("bleach", 50.0, 10.0),
        FOC,
        q,
        "bleach-soak-25-ten",
        "bleach-half-twenty",
    );
}

/// 1 to 9 is for general germs, half an hour [fuller_col_2014]; the palm sheets ask 1 to 3.
#[test]
fn a_weak_bath_is_too_weak_for_the_wilts_of_palms() {
    let weak = soak("bleach", 10.0, 30.0);
    check(
        weak,
        FOC,
        NO_TIME,
        "bleach-soak-25",
        "bleach-soak-10-thirty",
    );
    assert!(
        !adequacy(&weak, FOC, known()).agreed,
        "a source would call it enough"
    );
    check(
        weak,
        Some("phytophthora-bud-rot"),
        Adequacy::Adequate,
        "bleach-soak-10-thirty",
        "",
    );
    let dip = soak("bleach", 10.0, 1.0);
    check(
        dip,
        Some("phytophthora-bud-rot"),
        short(29.0),
        "bleach-soak-10-thirty",
        "bleach-dip-10",
    );
    // weaker than every row, shorter than every row
    assert!(adequacy(&soak("bleach", 0.5, 1.0), FOC, known()).agreed);
}

/// A wipe with strong alcohol: one columnist says it does [morris_palm_ipa], the palm sheets say tools must soak.
#[test]
fn a_wipe_is_short_and_sources_differ() {
    let wipe = soak("isopropyl", 70.0, 0.0);
    check(
        wipe,
        FOC,
        short(5.0),
        "isopropyl-soak-50",
        "isopropyl-wash-wipe",
    );
    assert!(!adequacy(&wipe, FOC, known()).agreed);
    let codes: Vec<&str> = adequacy(&wipe, FOC, known())
        .findings
        .iter()
        .map(|f| f.code)
        .collect();
    assert_eq!(codes, ["clean-too-short", "clean-sources-differ"]);
}

/// Recalled [uc_torch_mem], hearsay [orchard_torch], trials on bananas [nguyen2017; arango2023]: never enough alone.
#[test]
fn what_is_recalled_or_tried_elsewhere_never_makes_it_enough() {
    for (agent, strength, minutes) in [
        ("flame", 0.0, 5.0),
        ("ddac", 5.0, 60.0),
        ("quat", 5.0, 60.0),
        ("unnamed", 50.0, 60.0),
        ("phenolic", 100.0, 60.0),
        ("calcium-hypochlorite", 100.0, 60.0),
        ("various", 100.0, 60.0),
    ] {
        for disorder in [None, FOC, FOP] {
            let verdict = adequacy(&soak(agent, strength, minutes), disorder, known());
            assert_eq!(verdict.adequacy, Adequacy::Unknown, "{agent} {disorder:?}");
            assert!(!verdict.agreed);
        }
    }
}

#[test]
fn what_is_not_known_stays_unknown() {
    for (cleaned, code) in [
        (Cleaned::default(), "clean-agent-missing"),
        (soak("vinegar", 50.0, 60.0), "clean-agent-not-known"),
        (
            Cleaned {
                strength_pct: None,
                ..soak("bleach", 0.0, 30.0)
            },
            "clean-strength-missing",
        ),
        (
            Cleaned {
                contact_min: None,
                ..soak("bleach", 25.0, 0.0)
            },
            "clean-time-missing",
        ),
    ] {
        for disorder in [None, FOC] {
            let verdict = adequacy(&cleaned, disorder, known());
            assert_eq!(verdict.adequacy, Adequacy::Unknown, "{cleaned:?}");
            assert_eq!(verdict.findings[0].code, code);
        }
    }
}

/// A new blade for each palm [pp215]; heat for half an hour [psu_disinfest]: no strength to know.
#[test]
fn a_new_blade_and_heat_need_no_strength() {
    let new = Cleaned {
        agent: "new-blade",
        ..Cleaned::default()
    };
    for disorder in [None, FOC, FOP] {
        check(new, disorder, Adequacy::Adequate, "new-blade-each", "");
    }
    let heat = |minutes| Cleaned {
        strength_pct: None,
        ..soak("heat", 0.0, minutes)
    };
    check(heat(30.0), FOC, Adequacy::Adequate, "heat-thirty", "");
    check(heat(20.0), FOC, short(10.0), "heat-thirty", "");
}

/// Soil stops bleach [psu_disinfest]; a bath is changed after two hours or ten palms [lamborn_disinfect].
#[test]
fn soil_and_a_spent_bath_make_it_short_whatever_the_minutes() {
    let good = soak("bleach", 25.0, 60.0);
    let cases = [
        (
            Cleaned {
                brushed: Some(false),
                ..good
            },
            "clean-soil-left",
            true,
        ),
        (
            Cleaned {
                bath_age_min: Some(121.0),
                ..good
            },
            "clean-bath-old",
            false,
        ),
        (
            Cleaned {
                bath_uses: Some(10),
                ..good
            },
            "clean-bath-used",
            false,
        ),
    ];
    for (cleaned, code, agreed) in cases {
        let verdict = adequacy(&cleaned, FOC, known());
        assert_eq!(
            (verdict.adequacy, verdict.agreed),
            (NO_TIME, agreed),
            "{code}"
        );
        assert_eq!(verdict.findings[0].code, code);
        assert!(!verdict.findings[0].sources.is_empty());
    }
    let fresh = Cleaned {
        bath_age_min: Some(120.0),
        bath_uses: Some(9),
        brushed: None,
        ..good
    };
    assert_eq!(adequacy(&fresh, FOC, known()).adequacy, Adequacy::Adequate);
    // no source says whether alcohol works through sap
    let sappy = Cleaned {
        brushed: Some(false),
        ..soak("pine-oil", 25.0, 10.0)
    };
    assert_eq!(adequacy(&sappy, FOC, known()).adequacy, Adequacy::Unknown);
}

/// Chain and bar are taken apart and soaked [lamborn_disinfect]; a log does not tell it.
#[test]
fn a_chain_saw_is_never_known_to_be_clean() {
    let good = soak("bleach", 25.0, 60.0);
    let on = |kind| adequacy_on(kind, &good, FOC, known());
    assert_eq!(on(BladeKind::HandSaw).adequacy, Adequacy::Adequate);
    let saw = on(BladeKind::ChainSaw);
    assert_eq!((saw.adequacy, saw.agreed), (Adequacy::Unknown, false));
    assert_eq!(saw.findings[0].code, "clean-chain-saw-not-told");
    let codes: Vec<&str> = cautions(BladeKind::ChainSaw, "bleach", known())
        .iter()
        .map(|f| f.code)
        .collect();
    assert!(codes.contains(&"clean-chain-saw-apart") && codes.contains(&"clean-bleach-never-mix"));
}

#[test]
fn the_minutes_a_timer_counts() {
    let at = |agent, strength| needed_min(&soak(agent, strength, 0.0), FOC, known());
    assert_eq!(at("bleach", 25.0), Some(10.0));
    assert_eq!(at("isopropyl", 50.0), Some(5.0));
    assert_eq!(at("bleach", 10.0), None);
    assert_eq!(at("flame", 0.0), None);
}

fn agents() -> impl Strategy<Value = String> {
    let mut agents: Vec<String> = known()
        .cleaner_agents()
        .iter()
        .map(|r| r.agent.clone())
        .collect();
    agents.extend(["".into(), "vinegar".into()]);
    proptest::sample::select(agents)
}

proptest! {
    /// More of everything never makes a cleaning worse, and the missing minutes, added, make it enough.
    #[test]
    fn longer_and_stronger_is_never_worse(
        agent in agents(), strength in 0.0f64..100.0, minutes in 0.0f64..60.0,
        more in 0.0f64..40.0, longer in 0.0f64..60.0, which in 0usize..3,
    ) {
        let disorder = [None, FOC, FOP][which];
        let of = |s: f64, m: f64| adequacy(&soak(&agent, s.min(100.0), m), disorder, known()).adequacy;
        let before = of(strength, minutes);
        if before == Adequacy::Adequate {
            prop_assert_eq!(of(strength + more, minutes + longer), Adequacy::Adequate);
        }
        if let Adequacy::Short { missing_min: Some(missing) } = before {
            prop_assert!(missing > 0.0);
            prop_assert_eq!(of(strength, minutes + missing), Adequacy::Adequate);
        }
    }
}

// --- ready ---

fn palm(n: u64) -> PalmId {
    PalmId(testkit::id(7, n))
}

/// A story in words: `x1` cuts palm 1, `c` cleans well, `s` cleans 7 of 10 minutes, `u` cleans with vinegar,
/// `o` cleans in an old bath, `l` lent, `r` returned. One thing a minute, from minute 1.
fn story(words: &str) -> Vec<Did<'static>> {
    let old = Cleaned {
        bath_age_min: Some(180.0),
        ..soak("bleach", 25.0, 10.0)
    };
    let what = |word: &str| match word {
        "c" => cleaned(soak("bleach", 25.0, 10.0), None),
        "s" => cleaned(soak("bleach", 25.0, 7.0), None),
        "u" => cleaned(soak("vinegar", 25.0, 7.0), None),
        "o" => cleaned(old, Some(Moment(1))),
        "l" => DidWhat::Lent,
        "r" => DidWhat::Returned,
        cut => DidWhat::Cut(palm(cut[1..].parse().unwrap())),
    };
    (1..)
        .zip(words.split_whitespace())
        .map(|(minute, word)| Did {
            at: Moment(minute * 60_000),
            what: what(word),
        })
        .collect()
}

fn cleaned(how: Cleaned<'static>, mixed: Option<Moment>) -> DidWhat<'static> {
    DidWhat::Cleaned { how, mixed }
}

fn asked(words: &str, kind: BladeKind) -> Ready {
    let dangers = [Danger {
        palm: palm(9),
        reason: "wilt-suspect",
        disorder: FOC,
    }];
    let now = Moment(60 * 60_000);
    ready(kind, &story(words), palm(1), &dangers, now, known())
}

#[test]
fn a_blade_for_palm_one() {
    let at = |minute: i64| Moment(minute * 60_000);
    let last = |n| Ready::NotCleaned {
        last: Some(palm(n)),
    };
    let lent = Ready::NotCleaned { last: None };
    let short = Ready::Short {
        missing_min: Some(3.0),
    };
    let blocked = |minute| Ready::Blocked {
        palm: palm(9),
        at: at(minute),
        reason: "wilt-suspect".into(),
    };
    let spent = Ready::BathSpent {
        mixed: Moment(1),
        day: model::Day(0),
    };
    for (words, expected) in [
        ("", Ready::NothingKnown),
        ("c", Ready::Clean { since: at(1) }),
        ("x2 c", Ready::Clean { since: at(2) }),
        ("x2 c s", Ready::Clean { since: at(2) }),
        ("c x1", Ready::SamePalm),
        ("c x1 x1 s", Ready::SamePalm),
        ("x1", last(1)),
        ("c x2", last(2)),
        ("c x2 x1", last(1)),
        ("c x2 s", short.clone()),
        ("s", short.clone()),
        ("x1 s", short.clone()),
        ("c x2 s x3", last(3)),
        ("c x2 u", Ready::UnknownCleaning),
        ("c x2 s u", Ready::UnknownCleaning),
        ("c x2 o", spent),
        ("c l", lent.clone()),
        ("c l r", lent.clone()),
        ("c x1 l r", lent.clone()),
        ("c l r c", Ready::Clean { since: at(4) }),
        ("c l r s", short),
        ("c x9", blocked(2)),
        ("c x9 s", blocked(2)),
        ("c x9 x1 x2", blocked(2)),
        ("c x9 l r", blocked(2)),
        ("c x9 c", Ready::Clean { since: at(3) }),
        ("c x9 c x9", blocked(4)),
    ] {
        assert_eq!(asked(words, BladeKind::HandSaw), expected, "{words:?}");
    }
    assert_eq!(asked("x2 c", BladeKind::ChainSaw), Ready::UnknownCleaning);
    assert_eq!(asked("x9 c", BladeKind::ChainSaw), blocked(1));
}

#[test]
fn the_held_palm_itself_may_be_cut_on_and_the_future_does_not_count() {
    let dids = story("c x9 x9 c");
    let dangers = [Danger {
        palm: palm(9),
        reason: "wilt-suspect",
        disorder: None,
    }];
    let at = |minute: i64| {
        ready(
            BladeKind::HandSaw,
            &dids,
            palm(9),
            &dangers,
            Moment(minute * 60_000),
            known(),
        )
    };
    assert_eq!(at(3), Ready::SamePalm);
    assert_eq!(
        at(4),
        Ready::Clean {
            since: Moment(240_000)
        }
    );
    assert_eq!(at(0), Ready::NothingKnown);
}
