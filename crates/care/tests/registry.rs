//! The registry against itself and against the knowledge tables.

extern crate spearleaf_care as care;
mod scene;
mod sweep;

use care::rule::{Part, Rule, Say};
use care::rules;
use model::{Arg, Finding, Knowledge};
use std::collections::{BTreeMap, BTreeSet};

fn says() -> impl Iterator<Item = (&'static Rule, &'static Say)> {
    rules::ALL
        .iter()
        .flat_map(|rule| rule.says.iter().map(move |say| (rule, say)))
}

#[test]
fn keys_and_codes_are_unique_and_kebab() {
    let keys: BTreeSet<&str> = rules::ALL.iter().map(|r| r.key).collect();
    assert_eq!(keys.len(), rules::ALL.len());
    let codes: Vec<&str> = says().map(|(_, s)| s.code).collect();
    let set: BTreeSet<&str> = codes.iter().copied().collect();
    assert_eq!(set.len(), codes.len(), "a code belongs to one rule");
    for code in set {
        assert!(
            code.bytes().all(|b| b.is_ascii_lowercase() || b == b'-'),
            "{code}"
        );
    }
}

#[test]
fn every_row_named_exists() {
    let knowledge = Knowledge::embedded();
    for (rule, say) in says() {
        for key in say.cites.iter().chain(say.conflicts) {
            let there = knowledge.rule(key).is_some() || knowledge.safety(key).is_some();
            assert!(there, "{}: no row {key}", rule.key);
        }
        for key in say.direct {
            assert!(
                knowledge.source(key).is_some(),
                "{}: no source {key}",
                rule.key
            );
        }
    }
}

#[test]
fn every_source_of_every_finding_resolves() {
    let knowledge = Knowledge::embedded();
    let all = sweep::findings();
    assert!(all.len() > 1000, "the sweep sweeps: {}", all.len());
    for finding in &all {
        for source in &finding.sources {
            assert!(
                knowledge.source(&source.0).is_some(),
                "{}: {source}",
                finding.code
            );
        }
    }
}

/// What stands on nothing at all is an assumption of ours; this is the whole list of them.
#[test]
fn only_these_findings_are_assumed() {
    let bare = |f: &&Finding| f.sources.is_empty() && !f.practice;
    let all = sweep::findings();
    let assumed: BTreeSet<&str> = all.iter().filter(bare).map(|f| f.code).collect();
    let expected = [
        "asked-more-than-there-is",
        "live-count-old",
        "live-decline-open",
        "live-never-counted",
    ];
    assert_eq!(assumed, BTreeSet::from(expected));
}

/// A rule is heard in the sweep with every code it declares, says nothing else, and always with the same arguments.
#[test]
fn every_code_is_heard_and_declared() {
    let mut heard: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for finding in sweep::findings() {
        let args: Vec<&str> = finding.args.iter().map(|(name, _)| *name).collect();
        let before = heard.entry(finding.code).or_insert_with(|| args.clone());
        assert_eq!(*before, args, "{}", finding.code);
    }
    let declared: BTreeSet<&str> = says().map(|(_, s)| s.code).collect();
    let heard: BTreeSet<&str> = heard.into_keys().collect();
    assert_eq!(heard, declared);
}

#[test]
fn severities_are_as_declared_and_cautions_yield_to_the_defer_row() {
    let severity: BTreeMap<&str, _> = says().map(|(_, s)| (s.code, s.severity)).collect();
    for finding in sweep::findings() {
        assert_eq!(finding.severity, severity[finding.code], "{}", finding.code);
        let numbers = finding.args.iter().filter_map(|(_, arg)| match arg {
            Arg::Number(x) | Arg::Share(x) | Arg::Days(x) => Some(*x),
            _ => None,
        });
        assert!(numbers.into_iter().all(f64::is_finite), "{}", finding.code);
    }
    for (rule, say) in says().filter(|(rule, _)| rule.part == Part::Caution) {
        assert!(
            say.cites.contains(&care::cautions::LAST),
            "{}: {}",
            rule.key,
            say.code
        );
    }
}

/// Figures written in code are the figures of the rows they come from.
#[test]
fn figures_are_those_of_the_rows() {
    let knowledge = Knowledge::embedded();
    let rule = |key: &str| {
        knowledge
            .rule(key)
            .and_then(|row| row.number())
            .unwrap_or_else(|| panic!("{key}"))
    };
    let safety = |key: &str| {
        knowledge
            .safety(key)
            .and_then(|row| row.number())
            .unwrap_or_else(|| panic!("{key}"))
    };
    assert_eq!(rule("weevil_cut_distance_b"), 1.5);
    assert_eq!(rule("weevil_cut_distance_a"), 1.2);
    assert_eq!(rule("sabal_crop_at_transplant"), 95.0);
    assert_eq!(rule("horizontal_line_extension"), 0.0);
    assert_eq!(safety("line_min_50kv"), care::rules::wires_within::LEAST_FT);
    assert_eq!(safety("lift_wind_rating_si"), 12.5);
    assert_eq!(safety("lift_wind_rating"), 28.0);
    assert_eq!(safety("ladder_top_rungs"), 3.0);
    for kv in [72.5, 121.0, 145.0, 242.0, 362.0, 550.0, 800.0] {
        let key = format!("line_vector_{}", kv.to_string().replace('.', "_"));
        let feet = care::rules::wires_within::distance(Some(kv)).feet();
        assert!((feet - safety(&key)).abs() < 0.005, "{key}: {feet}");
    }
    let months = knowledge.rule("weevil_cut_months").unwrap();
    assert!(
        months.value.contains("12") && months.value.contains('1'),
        "{}",
        months.value
    );
}

/// Stub length, cut line and spikes: sources conflict, the strict reading is said and the others are named.
#[test]
fn where_sources_conflict_the_others_are_named() {
    let all = sweep::findings();
    for (code, others) in [
        (
            "stub-small-armed",
            &["stub_close", "stub_length_number"][..],
        ),
        ("stub-large", &["stub_close", "stub_length_number"]),
        (
            "stub-weevil",
            &["weevil_cut_distance_a", "stub_close", "stub_length_number"],
        ),
        (
            "level-line",
            &["angle_45_old_wording", "angle_90_contract_wording"],
        ),
        ("no-spikes", &["spikes_over_65ft", "spikes_allowed_palms"]),
        ("live-allowance", &["well_fed_allowance"]),
    ] {
        let finding = all
            .iter()
            .find(|f| f.code == code)
            .unwrap_or_else(|| panic!("{code} is never said"));
        assert_eq!(finding.conflicts, others, "{code}");
    }
}
