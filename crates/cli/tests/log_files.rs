//! Blades, cuts and cleanings by the command line, in and out.
#![allow(missing_docs)]

mod common;

use common::{PALMS, run, spearleaf, write};
use tempfile::tempdir;

#[test]
fn cuts_go_in_with_findings_and_touches_come_out() {
    let folder = tempdir().unwrap();
    let data = folder.path().join("data");
    let palms = write(folder.path(), "palms.csv", PALMS);
    let cuts = write(
        folder.path(),
        "cuts.csv",
        "time,started,blade,tag,who\n\
         2026-05-04T09:20:00-04:00,2026-05-04T09:00:00-04:00,S-1,A-1,Ana\n\
         2026-05-04T09:30:00-04:00,2026-05-04T09:10:00-04:00,S-1,A-2,Ana\n",
    );
    let import = |what: &str, file: &std::path::Path| {
        run(spearleaf()
            .args(["import", what, "--as-of", "2026-06-01"])
            .arg(file)
            .arg("--data")
            .arg(&data))
    };
    let (status, out, err) = import("cuts", &cuts);
    assert_eq!(status, 2, "no folder yet: {out}{err}");
    assert_eq!(import("palms", &palms).0, 0);
    let (status, out, err) = import("cuts", &cuts);
    assert_eq!(status, 1, "{out}{err}");
    assert!(
        err.contains("The blade “S-1” was not in the register."),
        "{err}"
    );
    assert!(err.contains("cut two palms at the same time"), "{err}");
    let (status, _, err) = import("cuts", &cuts);
    assert_eq!(status, 0, "the same file again: {err}");
    let blades = write(folder.path(), "blades.csv", "tag,kind\nS-2,pole-saw\n");
    assert_eq!(import("blades", &blades).0, 0);
    let cleanings = write(
        folder.path(),
        "cleanings.csv",
        "time,blade,agent,strength_pct,contact_min\n2026-05-04T10:00:00-04:00,S-1,bleach,25,10\n",
    );
    assert_eq!(import("cleanings", &cleanings).0, 0);
    let (status, out, _) = run(spearleaf().args(["export", "touches"]).arg(&data));
    assert_eq!(status, 0);
    let expected = "\
time,blade,what,tag,agent,strength_pct,contact_min,who
2026-05-04T13:20:00Z,S-1,cut,A-1,,,,Ana
2026-05-04T13:30:00Z,S-1,cut,A-2,,,,Ana
2026-05-04T14:00:00Z,S-1,clean,,bleach,25,10,
";
    assert_eq!(out, expected);
    for (what, rows) in [("blades", 2), ("cuts", 2), ("cleanings", 1)] {
        let (status, out, _) = run(spearleaf().args(["export", what]).arg(&data));
        assert_eq!(
            (status, out.lines().count()),
            (0, rows + 1),
            "{what}: {out}"
        );
    }
}
