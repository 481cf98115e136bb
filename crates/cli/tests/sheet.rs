//! `spearleaf sheet`: files made, and what is refused.
#![allow(missing_docs)]

mod common;

use common::{run, spearleaf, write};
use std::path::{Path, PathBuf};
use tempfile::tempdir;

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
    let asked: [&[&str]; 4] = [
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
    let refused: [(&[&str], &str); 5] = [
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
