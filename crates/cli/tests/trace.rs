//! `spearleaf trace` from files alone.
#![allow(missing_docs)]

mod common;

use common::{repository, run, spearleaf, write};

const ASK: [&str; 8] = [
    "--case",
    "C-1",
    "--seen-sick",
    "2026-03-02",
    "--disorder",
    "fusarium-wilt-canariensis",
    "--as-of",
    "2026-10-01",
];

#[test]
fn the_case_worked_out_by_hand_from_files() {
    let case = repository("cases/trace");
    let mut command = spearleaf();
    command.arg("trace").args(ASK);
    command.arg("--touches").arg(case.join("touches.csv"));
    command.arg("--palms").arg(case.join("palms.csv"));
    let (status, out, err) = run(&mut command);
    assert_eq!(status, 1, "{err}");
    let chains: Vec<&str> = out.lines().filter(|l| l.contains("A-6")).collect();
    assert_eq!(chains.len(), 1, "{out}");
    assert!(
        chains[0].contains("C-1 >saw-1> A-1 >saw-3> A-6"),
        "{chains:?}"
    );
    assert!(
        err.contains("8 palms are exposed (3 for certain, 5 perhaps)"),
        "{err}"
    );
    let (_, json, _) = run(command.arg("--json"));
    let last = json.lines().last().unwrap();
    assert!(last.contains(r#""exposed":8"#) && last.contains(r#""sources":3"#));
}

#[test]
fn bad_rows_are_refused_and_nobody_exposed_is_nothing_to_do() {
    let folder = tempfile::tempdir().unwrap();
    let bad = "time,blade,what,tag,agent\n2026-01-01T00:00:00,s,cut,A,\n2026-01-01T00:00:00Z,s,hack,A,\n\
        2026-01-01T00:00:01Z,,cut,A,\n2026-01-01T00:00:02Z,s,cut,A,bleach\n2999-01-01T00:00:00Z,s,cut,A,\n\
        2026-01-01T00:00:03Z,s,cut,A,\n";
    let file = write(folder.path(), "touches.csv", bad);
    let trace = |skip: &[&str]| {
        let mut command = spearleaf();
        command
            .args(["trace", "--case", "A", "--touches"])
            .arg(&file);
        run(command.args(skip))
    };
    let (status, out, err) = trace(&[]);
    assert_eq!((status, out.as_str()), (2, ""));
    for words in [
        "line 2, column time",
        "neither cut nor clean",
        "blade is missing",
    ] {
        assert!(err.contains(words), "{words}: {err}");
    }
    assert!(err.contains("5 rows were refused"), "{err}");
    assert_eq!(trace(&["--skip-bad"]).0, 1);
    let refused = std::fs::read_to_string(folder.path().join("touches.refused.csv")).unwrap();
    assert_eq!(refused.lines().count(), 6);
    let good = "time,blade,what,tag\n2026-01-01T00:00:03Z,s,cut,A\n";
    std::fs::write(&file, good).unwrap();
    let (status, out, _) = trace(&[]);
    assert_eq!((status, out.lines().count()), (0, 1));
}
