//! One test a sort of bad input: a clear refusal, exit status 2, and nothing taken.
#![allow(missing_docs)]

mod common;

use common::{PALMS, run, spearleaf, write, yard};
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};
use std::thread;
use tempfile::tempdir;

/// `assess` on these files as of 2026-05-01.
fn assess(
    folder: &Path,
    palms: impl AsRef<[u8]>,
    looks: impl AsRef<[u8]>,
    extra: &[&str],
) -> (i32, String, String) {
    let palms = write(folder, "palms.csv", palms);
    let looks = write(folder, "looks.csv", looks);
    let mut command = spearleaf();
    command
        .args(["assess", "--as-of", "2026-05-01", "--palms"])
        .arg(palms)
        .arg("--inspections")
        .arg(looks);
    run(command.args(extra))
}

/// Refused with exit status 2, nothing on standard output, and these words (after file and line) on standard error.
fn refused(palms: impl AsRef<[u8]>, looks: impl AsRef<[u8]>, expected: &[&str]) {
    let folder = tempdir().unwrap();
    let (status, out, err) = assess(folder.path(), palms, looks, &[]);
    assert_eq!((status, out.as_str()), (2, ""), "{err}");
    for words in expected {
        assert!(err.contains(words), "{words:?} is not in: {err}");
    }
}

const SPECIES: &str = "tag,species\nA,Sabal palmetto\nB,Sabal palmetto\n";
const HEADER: &str = "tag,date,green,yellowing,brown";

fn looks(rows: &str) -> String {
    format!("{HEADER}\n{rows}\n")
}

#[test]
fn a_wrong_encoding() {
    let palms = b"tag,species,notes\nA,Sabal palmetto,by the caf\xE9\n";
    refused(
        palms,
        looks(""),
        &[
            "palms.csv, line 2: Byte E9",
            "“by the caf”",
            "--encoding windows-1252",
        ],
    );
    let folder = tempdir().unwrap();
    let (status, _, err) = assess(
        folder.path(),
        palms,
        looks(""),
        &["--encoding", "windows-1252"],
    );
    assert_eq!(status, 0, "{err}");
    let utf16: Vec<u8> = "\u{feff}tag,species\n"
        .encode_utf16()
        .flat_map(u16::to_le_bytes)
        .collect();
    refused(utf16, looks(""), &["palms.csv, line 1: This is UTF-16"]);
}

#[test]
fn missing_and_doubled_columns() {
    refused(
        "tag,specis\nA,x\n",
        looks(""),
        &[
            "palms.csv, line 1, column species: Columns are missing: species",
            "“specis” a slip",
        ],
    );
    refused(
        "tag,species,tag\nA,x,A\n",
        looks(""),
        &["palms.csv, line 1, column tag: The column “tag” is there twice"],
    );
    refused(
        SPECIES,
        "tag,date,green\nA,2026-03-02,3\n",
        &["looks.csv, line 1, column yellowing: Columns are missing: yellowing, brown"],
    );
}

#[test]
fn bad_dates() {
    refused(
        SPECIES,
        looks("A,2026-02-30,3,0,0"),
        &["looks.csv, line 2, column date: “2026-02-30” is no date"],
    );
    refused(
        SPECIES,
        looks("A,04/12/2025,3,0,0"),
        &["Was 2025-12-04 / 2025-04-12 meant?"],
    );
    refused(
        SPECIES,
        looks("A,2260-04-12,3,0,0"),
        &["line 2, column date: 2260-04-12 is after today"],
    );
}

#[test]
fn negative_and_absurd_counts() {
    refused(
        SPECIES,
        looks("A,2026-03-02,-3,0,0"),
        &["line 2, column green: “-3” is below zero"],
    );
    refused(
        SPECIES,
        looks("A,2026-03-02,3,0,20260302"),
        &["line 2, column brown: “20260302” is more than 1000"],
    );
    refused(
        SPECIES,
        looks("A,2026-03-02,about 30,0,0"),
        &["line 2, column green: “about 30” is no whole number"],
    );
}

#[test]
fn doubled_tags() {
    refused(
        "tag,species\nA,x\nB,x\nA,y\n",
        looks(""),
        &["palms.csv, line 4, column tag: The tag “A” is already on line 2"],
    );
}

#[test]
fn an_inspection_for_an_unknown_palm() {
    refused(
        PALMS,
        looks("A-11,2026-03-02,3,0,0"),
        &["looks.csv, line 2, column tag: There is no palm with the tag “A-11”. Was “A-1” meant?"],
    );
}

#[test]
fn inspections_twice_on_a_day() {
    let rows = looks("A,2026-03-02,3,0,0\nB,2026-03-02,3,0,0\nA,2026-03-02,4,0,0");
    refused(
        SPECIES,
        rows,
        &[
            "looks.csv, line 4, column date: This stem was already inspected on 2026-03-02 in line 2",
        ],
    );
}

#[test]
fn inspections_out_of_order_are_sorted_and_said() {
    let folder = tempdir().unwrap();
    let sorted = "A,2026-01-05,34,0,1\nA,2026-03-02,33,1,2\nA,2026-04-20,33,1,4";
    let mixed = "A,2026-04-20,33,1,4\nA,2026-01-05,34,0,1\nA,2026-03-02,33,1,2";
    let (status, expected, err) = assess(folder.path(), SPECIES, looks(sorted), &[]);
    assert_eq!(status, 0, "{err}");
    assert!(!err.contains("sorted by date"), "{err}");
    let (status, out, err) = assess(folder.path(), SPECIES, looks(mixed), &[]);
    assert_eq!(status, 0, "{err}");
    assert!(err.contains("looks.csv: 2 inspections stand after a later one of the same stem; they were sorted by date."), "{err}");
    assert_eq!(out, expected);
}

#[test]
fn a_species_name_with_a_slip_offers_the_nearest() {
    let folder = tempdir().unwrap();
    let (status, out, err) = assess(
        folder.path(),
        "tag,species\nA,Phoenix canariensi\n",
        looks(""),
        &[],
    );
    assert_eq!(
        (status, out.lines().count()),
        (1, 2),
        "the palm is read with the wide prior"
    );
    assert!(
        err.contains("“Phoenix canariensi” is not a known palm name. Was Phoenix canariensis"),
        "{err}"
    );
}

#[test]
fn a_file_of_no_bytes() {
    refused("", looks(""), &["palms.csv: The file is empty."]);
    refused(SPECIES, "", &["looks.csv: The file is empty."]);
}

#[test]
fn no_file_a_folder_and_two_standard_inputs() {
    let folder = tempdir().unwrap();
    let (palms, _) = yard(folder.path());
    let with = |palms: &Path, looks: &Path| {
        let mut command = spearleaf();
        run(command
            .arg("assess")
            .arg("--palms")
            .arg(palms)
            .arg("--inspections")
            .arg(looks)
            .write_stdin(""))
    };
    let (status, _, err) = with(&palms, &folder.path().join("none.csv"));
    assert_eq!(status, 2);
    assert!(err.contains("none.csv"), "{err}");
    let (status, _, err) = with(&palms, folder.path());
    assert_eq!(status, 2);
    assert!(err.contains("this is a folder"), "{err}");
    let (status, _, err) = with(Path::new("-"), Path::new("-"));
    assert_eq!(status, 2);
    assert!(
        err.contains("only one of the files can be standard input"),
        "{err}"
    );
}

#[test]
fn refused_rows_are_written_beside_and_the_good_ones_taken_when_asked() {
    let folder = tempdir().unwrap();
    let rows = looks("A,2026-03-02,30,0,0\nB,2026-03-02,-1,0,0\nC,2026-03-02,1,0,0");
    let beside = folder.path().join("looks.refused.csv");
    let (status, out, err) = assess(folder.path(), SPECIES, &rows, &[]);
    assert_eq!((status, out.as_str()), (2, ""), "{err}");
    assert!(
        err.contains("looks.csv: 2 rows were refused; nothing was taken.") && !beside.exists(),
        "{err}"
    );
    let (status, out, err) = assess(folder.path(), SPECIES, &rows, &["--skip-bad"]);
    assert_eq!((status, out.lines().count()), (1, 3), "{err}");
    let written = std::fs::read_to_string(&beside).unwrap();
    let lines: Vec<&str> = written.lines().collect();
    assert_eq!(
        lines[0],
        "tag,date,green,yellowing,brown,refused_line,refused_column,refused_because"
    );
    assert!(
        lines[1].starts_with("B,2026-03-02,-1,0,0,3,green,“-1” is below zero"),
        "{written}"
    );
    assert!(
        lines[2].starts_with("C,2026-03-02,1,0,0,4,tag,"),
        "{written}"
    );
    let mended = written
        .replace("-1,", "31,")
        .replace("\nC,", "\nA,")
        .replace("A,2026-03-02,1", "A,2026-03-09,1");
    let (status, _, err) = assess(folder.path(), SPECIES, mended, &[]);
    assert_eq!(status, 0, "{err}");
}

#[test]
fn a_thousand_bad_rows_do_not_flood() {
    let folder = tempdir().unwrap();
    let rows: String = (0..5000)
        .map(|n| format!("A,2026-03-02,-{n},0,0\n"))
        .collect();
    let (status, _, err) = assess(folder.path(), SPECIES, looks(&rows), &[]);
    assert_eq!(status, 2);
    assert!(
        err.contains("reading stopped after 1000 refused rows"),
        "{err}"
    );
    assert!(err.lines().count() < 30, "{}", err.lines().count());
}

#[test]
fn a_refused_import_writes_nothing() {
    let folder = tempdir().unwrap();
    let data = folder.path().join("data");
    let palms = write(folder.path(), "palms.csv", "tag,species\nA,x\nA,y\n");
    let mut command = spearleaf();
    assert_eq!(
        run(command
            .args(["import", "palms"])
            .arg(palms)
            .arg("--data")
            .arg(&data))
        .0,
        2
    );
    let (status, out, _) = run(spearleaf().args(["export", "palms"]).arg(&data));
    assert_eq!((status, out.lines().count()), (0, 1), "{out}");
}

/// Feeds junk to the program through a pipe, never through a file, until it has had enough or the junk ends.
fn feed(head: &str, block: Vec<u8>, bytes: usize, extra: &[&str]) -> (i32, String, usize) {
    let folder = tempdir().unwrap();
    let looks = write(folder.path(), "looks.csv", looks(""));
    let mut child = Command::new(assert_cmd::cargo::cargo_bin!("spearleaf"))
        .args(["assess", "--palms", "-", "--inspections"])
        .arg(looks)
        .args(extra)
        .current_dir(folder.path())
        .env("LC_ALL", "C")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut pipe = child.stdin.take().unwrap();
    let head = head.to_owned();
    let feeding = thread::spawn(move || {
        let mut fed = 0;
        let mut next: &[u8] = head.as_bytes();
        // the pipe breaks when the program has seen enough
        while fed < bytes && pipe.write_all(next).is_ok() {
            fed += next.len();
            next = &block;
        }
        fed
    });
    let out = child.wait_with_output().unwrap();
    let fed = feeding.join().unwrap();
    (
        out.status.code().unwrap(),
        String::from_utf8(out.stderr).unwrap(),
        fed,
    )
}

const JUNK: usize = 200_000_000;

#[test]
fn two_hundred_megabytes_of_junk_are_refused_at_the_first_piece() {
    let noise: Vec<u8> = (0..1_000_000_u32)
        .map(|n| (n.wrapping_mul(2_654_435_761) >> 24) as u8)
        .collect();
    for (what, head, block) in [
        ("zeros", "", vec![0; 1_000_000]),
        ("noise", "", noise.clone()),
        ("one endless line", "", vec![b'x'; 1_000_000]),
        ("noise under a header", "tag,species\n", noise),
        (
            "a quotation mark never closed",
            "tag,species\nA,\"",
            b"word word word\n".repeat(70_000),
        ),
    ] {
        let (status, err, fed) = feed(head, block, JUNK, &[]);
        assert_eq!(status, 2, "{what}: {err}");
        assert!(
            err.starts_with("-, line ") && err.lines().count() <= 2,
            "{what}: {err}"
        );
        assert!(fed < 5_000_000, "{what}: read {fed} bytes of it");
    }
}

#[test]
fn two_hundred_megabytes_of_bad_rows_are_given_up_early() {
    let block = b"this is no palm\n".repeat(60_000);
    let (status, err, fed) = feed("tag,species\n", block, JUNK, &[]);
    assert_eq!(status, 2, "{err}");
    assert!(
        err.contains("-: reading stopped after 1000 refused rows; nothing was taken."),
        "{err}"
    );
    assert!(fed < 5_000_000, "read {fed} bytes of it");
}
