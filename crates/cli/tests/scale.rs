//! Many palms: bounded memory, any order of rows, the same output whatever the number of cores.
#![allow(missing_docs)]

mod common;

use common::{run, spearleaf};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use tempfile::tempdir;

const KINDS: [(&str, u32); 6] = [
    ("Sabal palmetto", 30),
    ("Syagrus romanzoffiana", 14),
    ("Washingtonia robusta", 34),
    ("Phoenix canariensis", 90),
    ("Roystonea regia", 14),
    ("Livistona chinensis", 32),
];

/// Writes `palms` invented palms with four inspections each, the inspections round by round as a keeper walks.
fn generate(folder: &Path, palms: usize) -> (PathBuf, PathBuf) {
    let mut register = "tag,species,site,moved_on,lat,lon\n".to_owned();
    let mut looks = "tag,date,green,yellowing,brown,removed_brown,spear\n".to_owned();
    for n in 0..palms {
        let moved = if n % 7 == 0 { "2026-02-20" } else { "" };
        let (lat, lon) = (26.0 + (n % 1000) as f64 * 0.001, -80.0);
        writeln!(
            register,
            "P-{n},{},Site {},{moved},{lat:.3},{lon}",
            KINDS[n % 6].0,
            n % 50
        )
        .unwrap();
    }
    for (round, date) in ["2025-06-02", "2025-10-06", "2026-02-23", "2026-04-27"]
        .into_iter()
        .enumerate()
    {
        for n in 0..palms {
            let wobble = (n * 7 + round * 13) % 5;
            let green = KINDS[n % 6].1 as usize - wobble;
            writeln!(
                looks,
                "P-{n},{date},{green},{},{},{},firm",
                wobble % 2,
                wobble + 1,
                wobble + 1
            )
            .unwrap();
        }
    }
    (
        common::write(folder, "palms.csv", register),
        common::write(folder, "inspections.csv", looks),
    )
}

/// Runs the program and watches its peak resident memory, in kB; 0 where the system does not say.
fn peak(command: &mut Command) -> u64 {
    let mut child = command
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    let mut peak_kb = 0;
    let status = loop {
        peak_kb = peak_kb.max(peak_of(child.id()));
        match child.try_wait().unwrap() {
            Some(status) => break status,
            None => std::thread::sleep(std::time::Duration::from_millis(5)),
        }
    };
    assert!(matches!(status.code(), Some(0 | 1)), "{status}");
    peak_kb
}

fn program() -> Command {
    Command::new(assert_cmd::cargo::cargo_bin!("spearleaf"))
}

/// What is kept of all palms: the register and every count. The aim for the whole of `assess` is 1 GiB.
#[test]
fn a_hundred_thousand_palms_are_kept_in_bounded_memory() {
    let folder = tempdir().unwrap();
    let (palms, looks) = generate(folder.path(), 100_000);
    let mut command = program();
    // all files are read and checked, then one palm is asked about
    command
        .args([
            "cuts",
            "--as-of",
            "2026-05-01",
            "--tag",
            "P-99999",
            "--take",
            "1",
            "--palms",
        ])
        .arg(palms);
    let peak_kb = peak(command.arg("--inspections").arg(looks));
    println!(
        "peak resident memory with 100,000 palms and 400,000 inspections: {} MiB",
        peak_kb / 1024
    );
    if cfg!(target_os = "linux") {
        assert!(peak_kb > 0 && peak_kb < 200 * 1024, "{peak_kb} kB");
    }
}

/// What is needed beside: results are written as they come, so twice the palms take hardly more.
#[test]
fn readings_are_not_gathered_before_they_are_written() {
    let folder = tempdir().unwrap();
    let measure = |count: usize| {
        let (palms, looks) = generate(folder.path(), count);
        let (readings, forecast) = (
            folder.path().join("readings.csv"),
            folder.path().join("forecast.csv"),
        );
        let mut command = program();
        command
            .args(["assess", "--as-of", "2026-05-01", "--palms"])
            .arg(palms)
            .arg("--inspections")
            .arg(looks);
        let peak_kb = peak(
            command
                .arg("--readings")
                .arg(&readings)
                .arg("--forecast")
                .arg(&forecast),
        );
        let lines = |path: &Path| std::fs::read_to_string(path).unwrap().lines().count();
        assert_eq!(
            (lines(&readings), lines(&forecast)),
            (1 + count, 1 + 20 * count)
        );
        peak_kb
    };
    let (less, more) = (measure(600), measure(2400));
    println!(
        "peak resident memory of assess: {} MiB for 600 palms, {} MiB for 2,400",
        less / 1024,
        more / 1024
    );
    if cfg!(target_os = "linux") {
        assert!(less > 0 && more < less + 8 * 1024, "{less} kB, {more} kB");
    }
}

/// Peak resident memory of a running process in kB; 0 where the system does not say.
fn peak_of(process: u32) -> u64 {
    let status = std::fs::read_to_string(format!("/proc/{process}/status")).unwrap_or_default();
    let line = status.lines().find_map(|l| l.strip_prefix("VmHWM:"));
    line.and_then(|l| l.trim().trim_end_matches(" kB").parse().ok())
        .unwrap_or(0)
}

#[test]
fn the_output_does_not_depend_on_cores_or_on_the_order_of_inspections() {
    let folder = tempdir().unwrap();
    let (palms, looks) = generate(folder.path(), 700);
    let text = std::fs::read_to_string(&looks).unwrap();
    let (header, rows) = text.split_once('\n').unwrap();
    let mut rows: Vec<&str> = rows.lines().collect();
    rows.sort();
    rows.reverse();
    let reversed = common::write(
        folder.path(),
        "reversed.csv",
        format!("{header}\n{}\n", rows.join("\n")),
    );
    let assess = |threads: &str, looks: &Path| {
        let forecast = folder.path().join("f.csv");
        let mut command = spearleaf();
        command.env("RAYON_NUM_THREADS", threads).args([
            "assess",
            "--as-of",
            "2026-05-01",
            "--readings",
            "-",
            "--palms",
        ]);
        command
            .arg(&palms)
            .arg("--inspections")
            .arg(looks)
            .arg("--forecast")
            .arg(&forecast);
        let (status, out, err) = run(&mut command);
        assert!(status < 2, "{err}");
        (out, std::fs::read_to_string(forecast).unwrap())
    };
    let one = assess("1", &looks);
    assert_eq!(one.0.lines().count(), 701);
    assert_eq!(one, assess("4", &looks));
    assert_eq!(one, assess("3", &reversed));
}
