//! `spearleaf sheet`: files made, and what is refused.
#![allow(missing_docs)]

mod common;

use common::{run, spearleaf, write};
use std::path::{Path, PathBuf};
use tempfile::tempdir;

const SITES: &str = "site,owner\nNorth,The parish\n";
const CREWS: &str = "crew,people,from_lat,from_lon,hours\nFenlock,2,27.18,-80.24,07:00-15:00\nSorrel,1,27.18,-80.24,07:00-15:00\n";
const STANDING: &str = "tag,species,site,lat,lon,trunk_height_m\nA-1,Sabal palmetto,North,27.1801,-80.2401,2\nA-2,Sabal palmetto,North,27.1802,-80.2402,2\n";
const LOOKS: &str = "tag,stem,date,green,yellowing,brown,spear\nA-1,1,2026-05-01,30,0,12,firm\nA-2,1,2026-05-01,30,0,12,firm\n";
const PALMS: &str = "tag,species,site\nA-1,Sabal palmetto,North\nA-2,Sabal palmetto,North\n";

/// A data folder with two palms.
fn register(folder: &Path) -> PathBuf {
    let palms = write(folder, "palms.csv", PALMS);
    let data = folder.join("data");
    let mut import = spearleaf();
    import
        .args(["import", "palms"])
        .arg(palms)
        .arg("--data")
        .arg(&data);
    assert_eq!(run(&mut import).0, 0);
    data
}

fn starts_as_pdf(file: &Path) -> bool {
    std::fs::read(file).unwrap().starts_with(b"%PDF-")
}

#[test]
fn every_sheet_is_a_file() {
    let folder = tempdir().unwrap();
    let data = register(folder.path());
    let file = folder.path().join("sheet.pdf");
    let asked: [&[&str]; 5] = [
        &[
            "labels",
            "palms",
            "DATA",
            "--base",
            "http://yard.example:7474",
        ],
        &["clauses", "--lang", "es", "--paper", "letter"],
        &["trace", "DATA", "--case", "A-1", "--as-of", "2026-05-01"],
        &["owner", "DATA", "--tag", "A-1", "--lang", "es"],
        &["summary", "DATA", "--site", "North", "--lang", "es"],
    ];
    for words in asked {
        let mut command = spearleaf();
        command.arg("sheet");
        for word in words {
            match *word {
                "DATA" => command.arg(&data),
                word => command.arg(word),
            };
        }
        let (status, _, err) = run(command.arg("-o").arg(&file));
        assert_eq!(status, 0, "{words:?}: {err}");
        assert!(starts_as_pdf(&file), "{words:?}");
        std::fs::remove_file(&file).unwrap();
    }
}

#[test]
fn what_cannot_be_made_leaves_no_file() {
    let folder = tempdir().unwrap();
    let data = register(folder.path());
    let file = folder.path().join("sheet.pdf");
    let refused: [(&[&str], &str); 11] = [
        (&["labels", "palms", "DATA", "--base", "yard"], "yard"),
        (
            &[
                "labels", "palms", "DATA", "--base", "http://y", "--tag", "Z",
            ],
            "“Z”",
        ),
        (
            &[
                "labels", "palms", "DATA", "--base", "http://y", "--kit", "2",
            ],
            "--site",
        ),
        (&["trace", "DATA", "--case", "Z"], "Z"),
        (&["owner", "DATA", "--tag", "Z"], "“Z”"),
        (&["summary", "DATA", "--owner", "Cy"], "“Cy”"),
        (&["summary", "DATA", "--site", "Moon"], "“Moon”"),
        (&["summary", "DATA"], "--owner"),
        (
            &[
                "summary",
                "DATA",
                "--site",
                "North",
                "--until",
                "2999-01-01",
            ],
            "--until",
        ),
        (
            &[
                "summary",
                "DATA",
                "--site",
                "North",
                "--from",
                "2026-05-02",
                "--until",
                "2026-05-01",
                "--as-of",
                "2026-06-01",
            ],
            "--from",
        ),
        (&["round", "DATA", "--day", "2026-05-05"], "5 May 2026"),
    ];
    for (words, said) in refused {
        let mut command = spearleaf();
        command.args(["sheet", "--lang", "en"]);
        for word in words {
            match *word {
                "DATA" => command.arg(&data),
                word => command.arg(word),
            };
        }
        let (status, _, err) = run(command.arg("-o").arg(&file));
        assert_eq!(status, 2, "{words:?}: {err}");
        assert!(err.contains(said), "{words:?}: {err}");
        assert!(!file.exists());
    }
}

/// A data folder with a site, its owner, two crews and two palms that are due.
fn grounds(folder: &Path) -> PathBuf {
    let data = folder.join("data");
    for (kind, text) in [
        ("palms", STANDING),
        ("inspections", LOOKS),
        ("sites", SITES),
        ("crews", CREWS),
    ] {
        let file = write(folder, &format!("{kind}.csv"), text);
        let mut import = spearleaf();
        import
            .args(["import", kind])
            .arg(file)
            .arg("--data")
            .arg(&data);
        let (status, _, err) = run(import.args(["--as-of", "2026-05-04"]));
        assert_eq!(status, 0, "{kind}: {err}");
    }
    data
}

#[test]
fn a_day_is_planned_kept_and_printed() {
    let folder = tempdir().unwrap();
    let data = grounds(folder.path());
    let plan = |more: &[&str]| {
        let mut command = spearleaf();
        command.arg("rounds").arg(&data);
        command.args([
            "--day",
            "2026-05-05",
            "--as-of",
            "2026-05-04",
            "--iterations",
            "200",
            "--json",
        ]);
        run(command.args(more))
    };
    let (status, out, err) = plan(&["--crew", "Fenlock"]);
    assert_eq!(status, 0, "{err}");
    let object: serde_json::Value = serde_json::from_str(out.lines().next().unwrap()).unwrap();
    assert_eq!(object["kind"], "rounds");
    assert_eq!(object["rounds"].as_array().unwrap().len(), 1);
    let mut tags: Vec<&str> = object["rounds"][0]["stops"]
        .as_array()
        .unwrap()
        .iter()
        .map(|stop| stop["tag"].as_str().unwrap())
        .collect();
    tags.sort_unstable();
    assert_eq!(tags, ["A-1", "A-2"]);

    let file = folder.path().join("round.pdf");
    let print = |more: &[&str]| {
        let mut command = spearleaf();
        command
            .args(["sheet", "round"])
            .arg(&data)
            .arg("-o")
            .arg(&file);
        run(command
            .args(["--day", "2026-05-05", "--as-of", "2026-05-04"])
            .args(more))
    };
    // a plan that was not kept is no round
    assert_eq!(print(&[]).0, 2);
    assert_eq!(plan(&["--crew", "Fenlock", "--keep"]).0, 0);
    assert_eq!(print(&["--paper", "letter"]).0, 0);
    assert!(starts_as_pdf(&file));
    let (status, _, err) = print(&["--crew", "Sorrel"]);
    assert!(status == 2 && err.contains("5 May 2026"), "{err}");
}

#[test]
fn a_summary_is_for_the_owner_that_the_sites_name() {
    let folder = tempdir().unwrap();
    let data = grounds(folder.path());
    let file = folder.path().join("parish.pdf");
    let mut command = spearleaf();
    command
        .args(["sheet", "summary"])
        .arg(&data)
        .arg("-o")
        .arg(&file);
    command.args(["--owner", "The parish", "--as-of", "2026-05-04"]);
    let (status, out, err) = run(command.args(["--from", "2026-05-01", "--json"]));
    assert_eq!(status, 0, "{err}");
    let object: serde_json::Value = serde_json::from_str(out.trim()).unwrap();
    assert!(
        object["kind"] == "sheet" && object["pages"].as_u64().unwrap() <= 3,
        "{out}"
    );
    assert!(starts_as_pdf(&file));
}
