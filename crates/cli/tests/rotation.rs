//! `rotation`: the worked example of `docs/blades.md`, the soak from the table of cleaners, and bad input.
#![allow(missing_docs)]

mod common;

use common::{run, spearleaf, write};
use serde_json::Value;
use tempfile::tempdir;

/// The round of the manual's example: the third cut is at the palm of the second.
const ROUND: &str = "tag,minutes\nP-1,8\nP-2,4\nP-2,4\nP-3,6\nP-4,5\n";

fn of_file(text: &str, extra: &[&str]) -> (i32, String, String) {
    let folder = tempdir().unwrap();
    let file = write(folder.path(), "round.csv", text);
    let mut command = spearleaf();
    command
        .args(["rotation", "--soak", "10", "--cuts"])
        .arg(file);
    run(command.args(extra))
}

fn alike(extra: &[&str]) -> (i32, String, String) {
    let mut command = spearleaf();
    command.args(["rotation", "--palms", "12", "--minutes-each", "6"]);
    run(command.args(extra))
}

#[test]
fn the_example_of_the_manual() {
    let (status, out, err) = of_file(ROUND, &["--sets", "2"]);
    assert_eq!(status, 0, "{err}");
    let lines: Vec<&str> = out.lines().collect();
    assert_eq!(
        lines,
        [
            "cut,tag,set,waited_min,start_min,end_min,laid_down_min,into_bath_min,out_of_bath_min,ready_min,bath",
            "1,P-1,A,0,0,8,8,9,19,20,1",
            "2,P-2,B,0,8,12,,,,,",
            "3,P-2,B,0,12,16,16,17,27,28,1",
            "4,P-3,A,4,20,26,26,27,37,38,1",
            "5,P-4,B,2,28,33,33,34,44,45,1",
        ]
    );
    assert!(
        err.contains("you wait 6 min in all and are done in 33 min"),
        "{err}"
    );
    assert!(
        err.contains("with 3 sets nobody waits, done in 27 min"),
        "{err}"
    );
    let (_, spanish, words) = of_file(ROUND, &["--lang", "es"]);
    assert_eq!(out, spanish, "files are the same in every language");
    assert!(words.contains("con 3 juegos nadie espera"), "{words}");
}

#[test]
fn machines_get_every_cut_and_a_summary() {
    let (status, out, err) = of_file(ROUND, &["--json"]);
    assert_eq!(status, 0, "{err}");
    let all: Vec<Value> = out
        .lines()
        .map(|l| serde_json::from_str(l).unwrap())
        .collect();
    assert_eq!(all.len(), 6);
    assert_eq!(
        (&all[3]["set"], &all[3]["waited_min"]),
        (&"A".into(), &4.0.into())
    );
    assert!(all[1]["soak"].is_null() && all[0]["soak"]["into_bath_min"] == 9.0);
    let end = &all[5];
    assert_eq!(end["kind"], "summary");
    assert_eq!(
        (&end["waiting_min"], &end["makespan_min"]),
        (&6.0.into(), &33.0.into())
    );
    assert_eq!(end["fewest_sets"], 3);
}

/// Ten minutes against the wilt of date palms [pp215_mem, recalled], five against the other wilt [laker_col_2020]; with
/// two sets and cuts of 6 minutes a pair turns in 6 + 1 + 10 + 1 + 6 minutes instead of 12.
#[test]
fn the_soak_comes_from_the_table_of_cleaners() {
    let summary = |extra: &[&str]| -> Value {
        let (status, out, err) = alike(&[extra, &["--json"]].concat());
        assert_eq!(status, 0, "{err}");
        serde_json::from_str(out.lines().last().unwrap()).unwrap()
    };
    let all = summary(&["--agent", "bleach"]);
    assert_eq!(
        (&all["soak_min"], &all["strength_pct"]),
        (&10.0.into(), &25.0.into())
    );
    assert_eq!(
        (&all["waiting_min"], &all["fewest_sets"]),
        (&30.0.into(), &3.into())
    );
    let other = ["--agent", "bleach", "--disorder", "fusarium-wilt-palmarum"];
    assert_eq!(summary(&other)["soak_min"], 5.0);
    let one_place = ["--agent", "bleach", "--sets", "3", "--bath-holds", "1"];
    assert!(summary(&one_place)["waiting_min"].as_f64() > Some(0.0));
    let (status, _, err) = alike(&["--agent", "bleach", "--soak", "7"]);
    assert_eq!(status, 1, "short by three minutes: {err}");
    assert!(
        err.contains("7 min of contact, where 10 min are needed"),
        "{err}"
    );
}

#[test]
fn bad_input_is_refused_and_said() {
    for (row, says) in [
        (
            "P-2,,",
            "column minutes: The minutes of this cut are missing",
        ),
        ("P-2,-4,", "line 3, column minutes"),
        ("P-2,\"4,5\",", "column minutes"),
        ("P-2,4,maybe", "“maybe” is neither yes nor no"),
        (",4,", "The tag is missing"),
    ] {
        let text = format!("tag,minutes,needs_clean\nP-1,8,yes\n{row}\n");
        let (status, out, err) = of_file(&text, &[]);
        assert_eq!((status, out.as_str()), (2, ""), "{row}: {err}");
        assert!(err.contains(says), "{row}: {err}");
        let (status, out, _) = of_file(&text, &["--skip-bad"]);
        assert_eq!((status, out.lines().count()), (1, 2), "{row}");
    }
    let (status, _, err) = of_file("tag,minutes\n", &[]);
    assert_eq!(status, 2);
    assert!(err.contains("There is no cut"), "{err}");
    let (status, _, err) = of_file("tag,minuets\nP-1,4\n", &[]);
    assert_eq!(status, 2);
    assert!(err.contains("minuets"), "{err}");
}

#[test]
fn what_makes_no_schedule_is_refused() {
    for bad in [
        &["--soak", "-1"][..],
        &["--soak", "NaN"],
        &["--soak", "5", "--sets", "0"],
        &["--soak", "5", "--bath-holds", "0"],
        &["--soak", "5", "--cuts", "round.csv"],
        &[],
        &["--agent", "holy water"],
        &["--agent", "quat"],
        &["--agent", "bleach", "--strength", "5"],
        &["--agent", "bleach", "--disorder", "no-such-thing"],
    ] {
        let (status, out, err) = alike(bad);
        assert_eq!((status, out.as_str()), (2, ""), "{bad:?}");
        assert!(!err.is_empty(), "{bad:?}");
    }
}
