//! `judge`: the golden yard of `cases/signs/yard`, and bad input.
#![allow(missing_docs)]

mod common;

use common::{repository, run, spearleaf, write};
use serde_json::Value;
use std::collections::BTreeMap;
use tempfile::tempdir;

type Row = BTreeMap<String, String>;

fn rows(text: &str) -> Vec<Row> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader.deserialize().map(Result::unwrap).collect()
}

fn judge(text: &str, extra: &[&str]) -> (i32, String, String) {
    let folder = tempdir().unwrap();
    let file = write(folder.path(), "signs.csv", text);
    let mut command = spearleaf();
    command
        .args(["judge", "--as-of", "2026-05-01", "--signs"])
        .arg(file);
    let out = run(command.args(extra));
    let refused = folder.path().join("signs.refused.csv");
    if let Ok(rows) = std::fs::read_to_string(refused) {
        return (out.0, out.1, out.2 + &rows);
    }
    out
}

fn yard() -> String {
    std::fs::read_to_string(repository("cases/signs/yard/signs.csv")).unwrap()
}

/// The expected disorders and holds are those of the bulletins named beside them.
#[test]
fn the_yard_is_judged_as_the_bulletins_say() {
    let (status, out, err) = judge(&yard(), &["--most", "3"]);
    assert_eq!(status, 1, "three palms are on hold: {err}");
    let found = rows(&out);
    assert_eq!(found.len(), 8 * 3);
    let expected = std::fs::read_to_string(repository("cases/signs/yard/expected.csv")).unwrap();
    for (is, of) in found.chunks(3).zip(rows(&expected)) {
        assert_eq!((&is[0]["tag"], &is[0]["date"]), (&of["tag"], &of["date"]));
        assert_eq!(is[0]["disorder"], of["disorder"], "{is:?}");
        assert_eq!(is[0]["holds"], of["hold"], "{is:?}");
        let p: Vec<f64> = is
            .iter()
            .map(|r| r["probability"].parse().unwrap())
            .collect();
        assert!(p[0] >= p[1] && p[1] >= p[2], "{is:?}");
        assert!(
            is.iter().all(|r| r["next_look"] == is[0]["next_look"]),
            "{is:?}"
        );
        assert!(
            !is[0]["next_look"].is_empty() && !is[0]["name"].is_empty(),
            "{is:?}"
        );
    }
    assert!(
        err.contains("R-01: nobody cuts until it is settled: Fusarium wilt"),
        "{err}"
    );
    assert!(err.contains("8 rows judged"), "{err}");
}

#[test]
fn the_whole_judgement_is_there_for_machines_and_one_core_says_the_same() {
    let objects = |out: &str| -> Vec<Value> {
        out.lines()
            .map(|l| serde_json::from_str(l).unwrap())
            .collect()
    };
    let (status, out, err) = judge(&yard(), &["--json"]);
    assert_eq!(status, 1, "{err}");
    let all = objects(&out);
    let judgements: Vec<&Value> = all.iter().filter(|o| o["kind"] == "judgement").collect();
    assert_eq!(judgements.len(), 8);
    let ranked = judgements[0]["ranked"].as_array().unwrap();
    assert_eq!(ranked.len(), 36, "every disorder");
    assert_eq!(judgements[0]["holds"][0]["reason"], "wilt-suspect");
    assert!(!judgements[0]["next"].as_array().unwrap().is_empty());
    assert_eq!(all.last().unwrap()["on_hold"], 3);
    let (csv, es) = (judge(&yard(), &[]).1, judge(&yard(), &["--lang", "es"]).1);
    assert_ne!(csv, es, "names are in the language of the messages");
    assert_eq!(rows(&csv).len(), rows(&es).len());
}

#[test]
fn no_hold_is_nothing_for_a_person() {
    let (status, out, err) = judge(
        "tag,species,signs\nA,Sabal palmetto,starts-oldest;translucent-flecks;leaflet-tips-dead\n",
        &[],
    );
    assert_eq!(status, 0, "{err}");
    let row = &rows(&out)[0];
    assert_eq!(
        (row["disorder"].as_str(), row["date"].as_str()),
        ("k-deficiency", "2026-05-01")
    );
}

#[test]
fn what_is_not_known_is_said_and_needs_a_person() {
    for (row, words) in [
        (
            "A,Sabal palmeto,starts-oldest,",
            "A: needs a person: “Sabal palmeto”",
        ),
        ("A,Sabal palmetto,starts-oldst,", "no “starts-oldst”"),
        (
            "A,Sabal palmetto,conk-lower-trunk,conk-lower-trunk",
            "both as seen and as not there",
        ),
    ] {
        let (status, _, err) = judge(&format!("tag,species,signs,absent\n{row}\n"), &[]);
        assert_eq!(status, 1, "{err}");
        assert!(err.contains(words), "{words} is not in {err}");
    }
}

#[test]
fn bad_rows_are_refused_with_line_and_column() {
    let text = "tag,species,signs,date,lat\nA,Sabal palmetto,starts-oldest,2026-04-20,27\n\
                B,Sabal palmetto,starts-oldest,2027-01-01,27\n,Sabal palmetto,starts-oldest,,\n";
    let (status, out, err) = judge(text, &[]);
    assert_eq!((status, out.as_str()), (2, ""), "{err}");
    assert!(
        err.contains("line 3, column date: 2027-01-01 is after today"),
        "{err}"
    );
    assert!(
        err.contains("line 4, column tag: The tag is missing"),
        "{err}"
    );
    let (status, out, err) = judge(text, &["--skip-bad"]);
    assert_eq!(status, 1, "rows were refused: {err}");
    assert!(rows(&out).iter().all(|r| r["tag"] == "A") && !out.is_empty());
    assert!(
        err.contains("refused_line,refused_column,refused_because"),
        "{err}"
    );
    let (status, out, err) = judge("tag,species\nA,x\n", &[]);
    assert_eq!((status, out.as_str()), (2, ""), "{err}");
    assert!(err.contains("Columns are missing: signs"), "{err}");
    assert_eq!(judge("", &[]).0, 2);
}
