//! Golden case `cases/field-notebook`: a keeper's notebook as typed in, and what the program says of it.
//!
//! No published source gives the expected numbers; they are kept so that a change shows. Tolerances stand beside them.
//! `SPEARLEAF_REGENERATE=1` writes them anew.
#![allow(missing_docs)]

mod common;

use common::{repository, run, spearleaf};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use tempfile::tempdir;

fn case(path: &str) -> PathBuf {
    repository("cases/field-notebook").join(path)
}

/// A command over the notebook as of the day it was closed.
fn over_notebook(command: &str, extra: &[&std::ffi::OsStr]) -> (i32, String, String) {
    let mut program = spearleaf();
    program
        .args([command, "--as-of", "2026-05-04", "--palms"])
        .arg(case("palms.csv"));
    program
        .arg("--inspections")
        .arg(case("inspections.csv"))
        .arg("--climate")
        .arg(case("climate.csv"));
    run(program.args(extra))
}

/// Absolute and relative tolerance by column; columns not named must be the same to the letter.
fn tolerances() -> BTreeMap<String, (f64, f64)> {
    let mut reader = csv::Reader::from_path(case("tolerance.csv")).unwrap();
    reader
        .deserialize::<(String, f64, f64)>()
        .map(Result::unwrap)
        .map(|(name, abs, rel)| (name, (abs, rel)))
        .collect()
}

fn check(name: &str, found: &str) {
    let path = case("expected").join(name);
    if std::env::var_os("SPEARLEAF_REGENERATE").is_some() {
        std::fs::write(&path, found).unwrap();
        return;
    }
    let expected = std::fs::read_to_string(&path).unwrap();
    let differences = differences(&expected, found);
    assert!(
        differences.is_empty(),
        "{name}:\n{}",
        differences.join("\n")
    );
}

fn differences(expected: &str, found: &str) -> Vec<String> {
    let rows = |text: &str| -> Vec<Vec<String>> {
        let mut reader = csv::ReaderBuilder::new()
            .has_headers(false)
            .from_reader(text.as_bytes());
        reader
            .records()
            .map(|r| r.unwrap().iter().map(str::to_owned).collect())
            .collect()
    };
    let (expected, found) = (rows(expected), rows(found));
    if expected.len() != found.len() || expected[0] != found[0] {
        return vec![format!(
            "{} rows {:?}, expected {} rows {:?}",
            found.len(),
            found[0],
            expected.len(),
            expected[0]
        )];
    }
    let tolerances = tolerances();
    let mut out = Vec::new();
    for (was, is) in expected.iter().zip(&found).skip(1) {
        for (at, column) in expected[0].iter().enumerate() {
            if !same(tolerances.get(column), &was[at], &is[at]) {
                out.push(format!(
                    "{} {column}: {:?}, expected {:?}",
                    is[..2].join(" "),
                    is[at],
                    was[at]
                ));
            }
        }
    }
    out
}

fn same(tolerance: Option<&(f64, f64)>, was: &str, is: &str) -> bool {
    let numbers = (was.parse::<f64>(), is.parse::<f64>());
    match (tolerance, numbers) {
        (Some((absolute, relative)), (Ok(was), Ok(is))) => {
            (was - is).abs() <= absolute + relative * was.abs()
        }
        _ => was == is,
    }
}

#[test]
fn the_notebook_is_read_as_before() {
    let folder = tempdir().unwrap();
    let (readings, forecast) = (
        folder.path().join("readings.csv"),
        folder.path().join("forecast.csv"),
    );
    let files = [
        "--readings".as_ref(),
        readings.as_os_str(),
        "--forecast".as_ref(),
        forecast.as_os_str(),
    ];
    let (status, out, err) = over_notebook("assess", &files);
    assert_eq!(status, 1, "some palms need a person: {out}{err}");
    check("readings.csv", &std::fs::read_to_string(readings).unwrap());
    check("forecast.csv", &std::fs::read_to_string(forecast).unwrap());
}

#[test]
fn the_notebook_tells_its_stories() {
    let (_, out, err) = over_notebook("assess", &[]);
    let explanation = |tag: &str, stem: &str| {
        let start = format!("{tag},{stem},2026-05-04,");
        let row = out
            .lines()
            .find(|l| l.starts_with(&start))
            .unwrap_or_else(|| panic!("no {tag}"));
        row[start.len()..].split(',').next().unwrap().to_owned()
    };
    // what the notebook was written to show
    assert_eq!(explanation("GY-01", "1"), "move", "moved nine weeks ago");
    assert_eq!(
        explanation("HC-06", "1"),
        "hunger",
        "half a crown, many yellow"
    );
    assert_eq!(
        explanation("HC-07", "1"),
        "decline",
        "14 to 3 fronds in half a year, none new"
    );
    assert_eq!(
        explanation("DW-08", "1"),
        "ageing",
        "one lost a month, one made a month"
    );
    assert!(
        err.contains("HC-07: needs a person: A decline is probable"),
        "{err}"
    );
    assert!(
        err.contains("DW-11: needs a person: The spear of stem 1 was down"),
        "{err}"
    );
    assert!(
        err.contains("GY-04: needs a person: “Syagrus romanzofiana” is not a known palm name"),
        "{err}"
    );
    assert!(
        err.contains("The column “Plaque” is not known here") && err.contains("The column “who”"),
        "{err}"
    );
    assert!(
        err.contains("4 inspections stand after a later one"),
        "{err}"
    );
}

#[test]
fn the_notebook_is_planned_as_before() {
    let (status, out, err) =
        over_notebook("cuts", &["--next-visit".as_ref(), "2026-11-02".as_ref()]);
    assert_eq!(status, 1, "some palms are on hold: {err}");
    check("cuts.csv", &out);
    // whatever else changes: nothing live comes off unasked, and nothing at all off a palm on hold
    let mut reader = csv::Reader::from_reader(out.as_bytes());
    for row in reader.deserialize::<BTreeMap<String, String>>() {
        let row = row.unwrap();
        assert_eq!(
            [&row["take_green"], &row["take_yellowing"]],
            ["0", "0"],
            "{row:?}"
        );
        assert!(
            row["holds"].is_empty() || row["take_brown"] == "0",
            "{row:?}"
        );
    }
}

#[test]
fn slips_of_the_first_typing_are_refused_one_by_one() {
    let mut program = spearleaf();
    program
        .args(["assess", "--json", "--as-of", "2026-05-04", "--palms"])
        .arg(case("palms.csv"));
    let (status, out, _) = run(program
        .arg("--inspections")
        .arg(case("first-typing/inspections.csv")));
    assert_eq!(status, 2);
    let mut found = "line,column,code,found\n".to_owned();
    for line in out.lines() {
        let object: serde_json::Value = serde_json::from_str(line).unwrap();
        if object["kind"] == "refused" {
            let text = |field: &str| object[field].as_str().unwrap().to_owned();
            found += &format!(
                "{},{},{},{}\n",
                object["line"],
                text("column"),
                text("code"),
                text("found")
            );
        }
    }
    check("first-typing.csv", &found);
    assert!(!Path::new("inspections.refused.csv").exists());
}
