//! Who may know whom. The table is the rule (`ARCHITECTURE.md` says why); an edge outside it fails here.

use cargo_metadata::{DependencyKind, MetadataCommand, Package};
use std::collections::{BTreeMap, BTreeSet};

/// Crate, and the workspace crates it may use in what it ships.
const MAY_USE: [(&str, &[&str]); 12] = [
    ("model", &[]),
    ("crown", &["model"]),
    ("care", &["model", "crown"]),
    ("trace", &["model"]),
    ("rounds", &["model", "crown", "care"]),
    ("ledger", &["model"]),
    ("ledger-sqlite", &["model", "ledger"]),
    (
        "desk",
        &["model", "crown", "care", "trace", "rounds", "ledger"],
    ),
    (
        "paper",
        &["model", "crown", "care", "trace", "rounds", "desk"],
    ),
    (
        "web",
        &[
            "model", "crown", "care", "trace", "rounds", "ledger", "desk", "paper",
        ],
    ),
    (
        "cli",
        &[
            "model",
            "crown",
            "care",
            "trace",
            "rounds",
            "ledger",
            "ledger-sqlite",
            "desk",
            "paper",
            "web",
        ],
    ),
    ("testkit", &["model"]),
];

/// Crates from outside that a pure crate may use: none of them does IO, tells time or draws lots by itself.
const PURE: [&str; 5] = ["model", "crown", "care", "trace", "rounds"];
const PURE_MAY_USE: [&str; 6] = ["csv", "jiff", "libm", "sobol_burley", "strsim", "uuid"];

fn packages() -> BTreeMap<String, Package> {
    let metadata = MetadataCommand::new()
        .no_deps()
        .exec()
        .expect("cargo metadata runs");
    metadata
        .packages
        .into_iter()
        .map(|p| {
            (
                short(&p.name)
                    .expect("every member is named spearleaf-something")
                    .to_owned(),
                p,
            )
        })
        .collect()
}

fn short(name: &str) -> Option<&str> {
    name.strip_prefix("spearleaf-")
}

fn shipped(package: &Package) -> impl Iterator<Item = &str> {
    package
        .dependencies
        .iter()
        .filter(|d| d.kind != DependencyKind::Development)
        .map(|d| d.name.as_str())
}

#[test]
fn every_crate_uses_only_what_it_may() {
    let packages = packages();
    let known: BTreeSet<&str> = MAY_USE.iter().map(|(name, _)| *name).collect();
    let found: BTreeSet<&str> = packages.keys().map(String::as_str).collect();
    assert_eq!(
        found, known,
        "a new crate needs a row in the table and a line in ARCHITECTURE.md"
    );
    for (name, allowed) in MAY_USE {
        for used in shipped(&packages[name]).filter_map(short) {
            assert!(allowed.contains(&used), "{name} may not use {used}");
        }
    }
}

#[test]
fn pure_crates_use_nothing_that_touches_the_world() {
    let packages = packages();
    for name in PURE {
        for used in shipped(&packages[name]).filter(|used| short(used).is_none()) {
            assert!(PURE_MAY_USE.contains(&used), "{name} may not use {used}");
        }
    }
}

#[test]
fn the_testkit_is_for_tests_only() {
    for (name, package) in packages() {
        assert!(
            !shipped(&package).any(|used| used == "spearleaf-testkit"),
            "{name} ships the testkit"
        );
    }
}
