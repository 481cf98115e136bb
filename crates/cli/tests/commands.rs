//! One test a command: what it does when all is well, and when it cannot.
#![allow(missing_docs)]

mod common;

use common::{LOOKS, PALMS, run, spearleaf, write, yard};
use serde_json::Value;
use std::path::Path;
use tempfile::tempdir;

fn lines(text: &str) -> Vec<Value> {
    text.lines()
        .map(|line| serde_json::from_str(line).unwrap_or_else(|e| panic!("{e}: {line}")))
        .collect()
}

#[test]
fn every_command_has_help_with_an_example() {
    let (status, out, _) = run(spearleaf().arg("--help"));
    assert_eq!(status, 0);
    let listed: Vec<&str> = out
        .lines()
        .skip_while(|l| *l != "Commands:")
        .skip(1)
        .map_while(|l| l.split_whitespace().next())
        .filter(|c| *c != "help")
        .collect();
    assert_eq!(
        listed,
        [
            "demo", "serve", "import", "assess", "cuts", "trace", "rotation", "rounds", "judge",
            "moved", "water", "feeding", "reach", "walk", "season", "estimate", "export", "sheet",
            "backup", "restore", "verify",
        ]
    );
    for command in listed {
        let (status, out, _) = run(spearleaf().args([command, "--help"]));
        assert_eq!(status, 0, "{command}");
        assert!(
            out.contains("Example") && out.contains(&format!("spearleaf {command}")),
            "{command}: {out}"
        );
    }
}

#[test]
fn a_word_that_is_no_command_is_refused() {
    assert_eq!(run(spearleaf().arg("prune")).0, 2);
    assert_eq!(
        run(spearleaf().args(["verify", "--as-of", "tomorrow"])).0,
        2
    );
}

#[test]
fn assess_writes_readings_to_standard_output_and_the_rest_elsewhere() {
    let folder = tempdir().unwrap();
    let (palms, looks) = yard(folder.path());
    let (status, out, err) = run(spearleaf()
        .args(["assess", "--as-of", "2026-05-01", "--palms"])
        .arg(&palms)
        .arg("--inspections")
        .arg(&looks));
    assert_eq!(status, 0, "{err}");
    let rows: Vec<&str> = out.lines().collect();
    assert!(rows[0].starts_with(
        "tag,stem,as_of,explanation,p_ageing,p_move,p_hunger,p_decline,lost_since_last,"
    ));
    let stems: Vec<String> = rows[1..]
        .iter()
        .map(|r| r.split(',').take(2).collect::<Vec<_>>().join(" "))
        .collect();
    assert_eq!(stems, ["A-1 1", "A-2 1", "B-1 1", "B-1 2", "B-1 "]);
    assert!(err.contains("3 palms read as of 1 May 2026"), "{err}");
    assert!(err.contains("“Plaque” is not known here"), "{err}");
}

#[test]
fn assess_writes_files_with_the_weeks_asked_for() {
    let folder = tempdir().unwrap();
    let (palms, looks) = yard(folder.path());
    let (readings, forecast) = (
        folder.path().join("readings.csv"),
        folder.path().join("forecast.csv"),
    );
    let mut command = spearleaf();
    command
        .args([
            "assess",
            "--as-of",
            "2026-05-01",
            "--weeks",
            "2,10",
            "--palms",
        ])
        .arg(&palms);
    command
        .arg("--inspections")
        .arg(&looks)
        .arg("--readings")
        .arg(&readings)
        .arg("--forecast")
        .arg(&forecast);
    let (status, out, err) = run(&mut command);
    assert_eq!(status, 0, "{err}");
    assert!(
        out.contains("Written: ") && out.contains("3 palms read"),
        "{out}"
    );
    assert_eq!(
        std::fs::read_to_string(readings).unwrap().lines().count(),
        1 + 5
    );
    let forecast = std::fs::read_to_string(forecast).unwrap();
    assert_eq!(
        forecast.lines().next(),
        Some("tag,stem,days_ahead,date,quantity,q05,q25,q50,q75,q95")
    );
    let first: Vec<&str> = forecast.lines().nth(1).unwrap().split(',').collect();
    assert_eq!(first[..5], ["A-1", "1", "14", "2026-05-15", "live"]);
    assert_eq!(forecast.lines().count(), 1 + 4 * 2 * 5);
    assert_eq!(
        std::fs::read_dir(folder.path()).unwrap().count(),
        4,
        "nothing half-written is left"
    );
}

#[test]
fn assess_speaks_json_and_spanish() {
    let folder = tempdir().unwrap();
    let (palms, looks) = yard(folder.path());
    let with = |extra: &[&str]| {
        let mut command = spearleaf();
        command
            .args(["assess", "--as-of", "2026-05-01", "--palms"])
            .arg(&palms)
            .arg("--inspections")
            .arg(&looks);
        run(command.args(extra))
    };
    let (status, out, _) = with(&["--json"]);
    assert_eq!(status, 0);
    let objects = lines(&out);
    let readings: Vec<&Value> = objects.iter().filter(|o| o["kind"] == "reading").collect();
    assert_eq!(readings.len(), 3);
    assert_eq!(readings[2]["stems"].as_array().unwrap().len(), 2);
    assert_eq!(readings[0]["stems"][0]["forecast"][0]["days_ahead"], 28);
    assert_eq!(objects.last().unwrap()["palms"], 3);
    let (_, _, err) = with(&["--lang", "es"]);
    assert!(err.contains("3 palmas leídas a 1 may 2026"), "{err}");
}

#[test]
fn assess_says_what_needs_a_person() {
    let folder = tempdir().unwrap();
    let palms = write(
        folder.path(),
        "palms.csv",
        "tag,species\nA,Syagrus romanzofiana\nB,Sabal palmetto\n",
    );
    let looks = "tag,date,green,yellowing,brown,spear\nA,2026-04-20,12,0,0,firm\nB,2026-04-20,30,0,0,down\n";
    let looks = write(folder.path(), "inspections.csv", looks);
    let mut command = spearleaf();
    command
        .args(["assess", "--as-of", "2026-05-01", "--palms"])
        .arg(palms)
        .arg("--inspections")
        .arg(looks);
    let (status, _, err) = run(&mut command);
    assert_eq!(status, 1);
    assert!(
        err.contains("A: needs a person: “Syagrus romanzofiana”")
            && err.contains("Syagrus romanzoffiana"),
        "{err}"
    );
    assert!(
        err.contains("B: needs a person: The spear of stem 1 was down"),
        "{err}"
    );
}

fn cuts(folder: &Path, looks: &str, extra: &[&str]) -> (i32, String, String) {
    let palms = write(folder, "palms.csv", "tag,species\nA,Sabal palmetto\n");
    let looks = write(folder, "inspections.csv", looks);
    let mut command = spearleaf();
    command
        .args(["cuts", "--as-of", "2026-05-01", "--palms"])
        .arg(palms)
        .arg("--inspections")
        .arg(looks);
    run(command.args(extra))
}

#[test]
fn cuts_plans_as_csv_and_json() {
    let folder = tempdir().unwrap();
    let looks = "tag,date,green,yellowing,brown,removed_brown,spear\n\
        A,2026-01-05,34,0,1,1,firm\nA,2026-04-30,33,1,4,,firm\n";
    let (status, out, err) = cuts(folder.path(), looks, &[]);
    assert_eq!(status, 0, "{err}");
    let mut reader = csv::Reader::from_reader(out.as_bytes());
    let row: std::collections::HashMap<String, String> =
        reader.deserialize().next().unwrap().unwrap();
    // wholly dead fronds may come off at any time, nothing live without a next visit (issue, section 3)
    let of = |column: &str| row[column].as_str();
    assert_eq!(
        [of("take_green"), of("take_yellowing"), of("take_brown")],
        ["0", "0", "4"]
    );
    assert!(of("reasons").contains("dead-any-time"), "{row:?}");
    let (_, out, _) = cuts(folder.path(), looks, &["--json"]);
    let objects = lines(&out);
    assert_eq!(objects[0]["kind"], "cut plan");
    assert_eq!(objects[0]["may_take"]["brown"], 4);
    let texts = objects[0]["findings"].as_array().unwrap();
    assert!(
        texts
            .iter()
            .all(|f| f["text"].as_str().unwrap().contains(' ')),
        "{texts:?}"
    );

    let (status, out, _) = cuts(folder.path(), &looks.replace("4,,firm", "4,,down"), &[]);
    assert_eq!(status, 1, "a palm on hold needs a person");
    assert!(out.contains("hold-spear-down"), "{out}");
}

#[test]
fn cuts_answers_an_asked_for_cut() {
    let folder = tempdir().unwrap();
    let looks = "tag,date,green,yellowing,brown,removed_brown,spear\n\
        A,2026-01-05,39,0,1,1,firm\nA,2026-04-30,40,0,2,,firm\n";
    // 40 fronds cut to 15: over-trimmed (common practice, no source)
    let (status, out, _) = cuts(
        folder.path(),
        looks,
        &["--tag", "A", "--take", "25", "--next-visit", "2026-11-01"],
    );
    assert_eq!(status, 1);
    assert!(
        out.starts_with("A, stem 1: refused (25 green") && out.contains("over-trimming"),
        "{out}"
    );
    let (status, out, _) = cuts(
        folder.path(),
        looks,
        &["--tag", "A", "--brown", "2", "--json"],
    );
    assert_eq!(status, 0, "{out}");
    assert_eq!(lines(&out)[0]["verdict"], "allowed");
    let (status, _, err) = cuts(folder.path(), looks, &["--tag", "Z", "--take", "1"]);
    assert_eq!(status, 2);
    assert!(err.contains("no palm with the tag “Z”"), "{err}");
    assert_eq!(
        cuts(
            folder.path(),
            looks,
            &["--tag", "A", "--stem", "2", "--take", "1"]
        )
        .0,
        2
    );
}

/// A data folder with the yard in it.
fn data(folder: &Path) -> std::path::PathBuf {
    let (palms, looks) = yard(folder);
    let data = folder.join("data");
    for (what, file) in [("palms", &palms), ("inspections", &looks)] {
        let mut command = spearleaf();
        let (status, out, err) = run(command
            .args(["import", what, "--as-of", "2026-05-01"])
            .arg(file)
            .arg("--data")
            .arg(&data));
        assert_eq!(status, 0, "{err}");
        assert!(out.contains(" taken, 0 already there, 0 refused."), "{out}");
    }
    data
}

#[test]
fn import_twice_records_once_and_a_contradiction_is_refused() {
    let folder = tempdir().unwrap();
    let data = data(folder.path());
    let again = |what: &str, text: &str| {
        let mut command = spearleaf();
        command
            .args(["import", what, "-", "--as-of", "2026-05-01", "--data"])
            .arg(&data)
            .write_stdin(text.to_owned());
        run(&mut command)
    };
    let (status, out, _) = again("palms", PALMS);
    assert_eq!(
        (status, out.as_str()),
        (0, "-: 0 taken, 3 already there, 0 refused.\n")
    );
    let (status, out, _) = again("inspections", LOOKS);
    assert_eq!(
        (status, out.as_str()),
        (0, "-: 0 taken, 5 already there, 0 refused.\n")
    );
    let (status, _, err) = again("palms", &PALMS.replace("Sabal palmetto", "Sabal minor"));
    assert_eq!(status, 2);
    assert!(
        err.contains("line 2, column tag: The register already has a palm “A-1”"),
        "{err}"
    );
    let (status, _, err) = again("inspections", &LOOKS.replace("33,1,4", "33,1,5"));
    assert_eq!(status, 2);
    assert!(
        err.contains("line 3, column date: The register already has another inspection"),
        "{err}"
    );
}

#[test]
fn import_of_inspections_wants_a_folder_with_palms() {
    let folder = tempdir().unwrap();
    let (_, looks) = yard(folder.path());
    let nowhere = folder.path().join("nowhere");
    let mut command = spearleaf();
    let (status, _, err) = run(command
        .args(["import", "inspections"])
        .arg(looks)
        .arg("--data")
        .arg(&nowhere));
    assert_eq!(status, 2);
    assert!(err.contains("no ledger here"), "{err}");
    assert!(!nowhere.exists());
}

#[test]
fn what_is_exported_imports_the_same() {
    let folder = tempdir().unwrap();
    let first = data(folder.path());
    let export = |what: &str, data: &Path| {
        let (status, out, err) = run(spearleaf().args(["export", what]).arg(data));
        assert_eq!(status, 0, "{err}");
        out
    };
    let (palms, looks) = (export("palms", &first), export("inspections", &first));
    assert!(
        palms.contains("Plaque") && palms.contains(",17\n") && looks.contains("calm"),
        "{palms}{looks}"
    );
    let second = folder.path().join("second");
    for (what, text) in [("palms", &palms), ("inspections", &looks)] {
        let mut command = spearleaf();
        command
            .args(["import", what, "-", "--as-of", "2026-05-01", "--data"])
            .arg(&second)
            .write_stdin(text.clone());
        assert_eq!(run(&mut command).0, 0);
    }
    assert_eq!(export("palms", &second), palms);
    assert_eq!(export("inspections", &second), looks);
}

#[test]
fn export_writes_entries_and_geojson() {
    let folder = tempdir().unwrap();
    let data = data(folder.path());
    let (status, out, _) = run(spearleaf().args(["export", "entries"]).arg(&data));
    assert_eq!(status, 0);
    let entries = lines(&out);
    assert_eq!(entries.len(), 8);
    assert_eq!(entries[0]["kind"], "palm-registered");
    assert_eq!(entries[3]["body"]["look"]["date"], "2026-01-05");
    let file = folder.path().join("palms.geojson");
    let (status, out, _) = run(spearleaf()
        .args(["export", "geojson"])
        .arg(&data)
        .arg("--out")
        .arg(&file));
    assert_eq!(status, 0, "{out}");
    let collection: Value = serde_json::from_slice(&std::fs::read(&file).unwrap()).unwrap();
    // RFC 7946, section 3.1.1: longitude first
    assert_eq!(
        collection["features"][0]["geometry"]["coordinates"],
        serde_json::json!([-80.24, 27.18])
    );
    assert!(collection["features"][2]["geometry"].is_null());
    let (status, _, err) = run(spearleaf().args(["export", "palms"]).arg(folder.path()));
    assert_eq!(status, 2);
    assert!(err.contains("no ledger here"), "{err}");
}

#[test]
fn backup_restore_and_verify() {
    let folder = tempdir().unwrap();
    let data = data(folder.path());
    let (file, second) = (
        folder.path().join("all.backup"),
        folder.path().join("second"),
    );
    let (status, out, err) = run(spearleaf().arg("backup").arg(&data).arg(&file));
    assert_eq!(status, 0, "{err}");
    assert!(out.starts_with("8 entries written to "), "{out}");
    assert_eq!(
        run(spearleaf().arg("backup").arg(&data).arg(&file)).0,
        2,
        "never overwrites"
    );
    let (status, out, err) = run(spearleaf().arg("restore").arg(&file).arg(&second));
    assert_eq!(status, 0, "{err}");
    assert!(out.starts_with("8 entries restored into "), "{out}");
    assert_eq!(
        run(spearleaf().arg("restore").arg(&file).arg(&second)).0,
        2,
        "only fills an empty folder"
    );
    let entries = |data: &Path| run(spearleaf().args(["export", "entries"]).arg(data)).1;
    assert_eq!(entries(&data), entries(&second));

    let (status, out, _) = run(spearleaf().args(["verify", "--json"]).arg(&second));
    assert_eq!(
        (status, &lines(&out)[0]["whole"], &lines(&out)[0]["entries"]),
        (0, &true.into(), &8.into())
    );
    spoil(&second.join("ledger.sqlite"));
    let (status, out, _) = run(spearleaf().arg("verify").arg(&second));
    assert_eq!(status, 2);
    assert!(out.contains("The ledger is broken"), "{out}");
    assert_eq!(
        run(spearleaf().arg("verify").arg(&data)).0,
        0,
        "the first is whole"
    );
}

/// Changes a count in the file behind the program's back.
fn spoil(file: &Path) {
    let mut bytes = std::fs::read(file).unwrap();
    let (from, to) = (b"\"green\":34", b"\"green\":43");
    let at = bytes
        .windows(from.len())
        .position(|w| w == from)
        .expect("the count stands in the file as text");
    bytes[at..at + to.len()].copy_from_slice(to);
    std::fs::write(file, bytes).unwrap();
}

#[test]
fn moved_palms_are_listed_for_people_and_programs() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let palms = write(
        folder.path(),
        "palms.csv",
        "tag,species,last_cleaned_on\nA-1,Syagrus romanzoffiana,2026-05-01\nA-2,Syagrus romanzoffiana,\n",
    );
    let moves = write(
        folder.path(),
        "moves.csv",
        "tag,dug_on,leaves\nA-1,2026-05-01,left\n",
    );
    let looks = write(
        folder.path(),
        "inspections.csv",
        "tag,date,green,yellowing,brown,spear\nA-1,2026-05-02,16,0,0,firm\nA-1,2026-06-10,14,1,2,firm\n",
    );
    for (what, file) in [
        ("palms", &palms),
        ("moves", &moves),
        ("inspections", &looks),
    ] {
        let (status, _, err) = run(spearleaf()
            .args(["import", what, "--as-of", "2026-06-15", "--data"])
            .arg(&data)
            .arg(file));
        assert_eq!(status, 0, "{what}: {err}");
    }
    let (status, out, _) = run(spearleaf()
        .args(["moved", "--as-of", "2026-06-15", "--lang", "en"])
        .arg(&data));
    assert_eq!(status, 0, "{out}");
    assert!(
        out.contains("A-1") && !out.contains("A-2") && out.contains("call"),
        "{out}"
    );
    let (_, out, _) = run(spearleaf()
        .args(["moved", "--as-of", "2026-06-15", "--json"])
        .arg(&data));
    let moved = lines(&out).remove(0);
    let palm = &moved["palms"][0];
    assert_eq!(palm["state"], "holds");
    assert_eq!(palm["days"], 45);
    // the day of the move plus 60
    assert_eq!(palm["next_look"], "2026-06-30");
    assert!(
        palm["stems"][0]["promise"]["call_from"].as_u64()
            > palm["stems"][0]["promise"]["high"].as_u64()
    );
}

#[test]
fn water_is_told_for_people_and_programs_with_weather_brought_in() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let palms = write(
        folder.path(),
        "palms.csv",
        "tag,species,site,crown_across_m,lat,lon\nA-1,Syagrus romanzoffiana,Yard,4,25.5,-80.5\nA-2,Syagrus romanzoffiana,Yard,,,\n",
    );
    let moves = write(
        folder.path(),
        "moves.csv",
        "tag,dug_on,ball_radius_m,ball_depth_m,soil\nA-1,2026-05-01,0.5,0.6,sandy-loam\n",
    );
    let weather = write(
        folder.path(),
        "weather.csv",
        "date,site,tmin_c,tmax_c,rain_mm\n2026-06-14,,23,32,0\n2026-06-15,,23,32,0\n",
    );
    for (what, file) in [("palms", &palms), ("moves", &moves), ("weather", &weather)] {
        let (status, _, err) = run(spearleaf()
            .args(["import", what, "--as-of", "2026-06-15", "--data"])
            .arg(&data)
            .arg(file));
        assert_eq!(status, 0, "{what}: {err}");
    }
    let (status, out, _) = run(spearleaf().args(["export", "weather"]).arg(&data));
    assert_eq!(status, 0);
    assert!(out.contains("2026-06-14,,23,32,,,,,0"), "{out}");
    let (status, out, _) = run(spearleaf()
        .args(["water", "--as-of", "2026-06-15", "--lang", "en"])
        .arg(&data));
    assert_eq!(status, 1, "a palm wants water: {out}");
    assert!(
        out.contains("A-1") && !out.contains("A-2") && out.contains("\u{a0}gal"),
        "{out}"
    );
    let (_, out, _) = run(spearleaf()
        .args(["water", "--as-of", "2026-06-15", "--json"])
        .arg(&data));
    let palm = &lines(&out).remove(0)["palms"][0];
    assert_eq!(palm["state"], "nothing-noted");
    assert_eq!(palm["reference_by"], "temperatures");
    // Hargreaves (FAO-56 equation 52) on 15 June, 23 to 32 degrees: 0.0023 (27.5 + 17.8) 9^0.5 times the extraterrestrial
    // radiation by equation 21, worked by hand for day 166 at 25.5 degrees north: 40.55 MJ a square metre, 0.408 mm a MJ
    let mm = palm["reference_mm"][0].as_f64().unwrap();
    assert!(
        (mm - 0.0023 * 45.3 * 3.0 * 40.55 * 0.408).abs() < 0.02,
        "{mm}"
    );
    assert!(palm["today_litres"].as_f64().unwrap() > 0.0);
    let bad = write(
        folder.path(),
        "bad.csv",
        "date,site,tmin_c,tmax_c\n2026-06-14,,32,23\n2026-06-13,Yrad,20,30\n",
    );
    let (status, _, err) = run(spearleaf()
        .args([
            "import",
            "weather",
            "--as-of",
            "2026-06-15",
            "--lang",
            "en",
            "--data",
        ])
        .arg(&data)
        .arg(&bad));
    assert_eq!(status, 2);
    assert!(
        err.contains("line 2") && err.contains("line 3") && err.contains("Yrad"),
        "{err}"
    );
}

#[test]
fn feeding_is_told_for_one_palm_and_its_product_by_the_ground_under_its_crown() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let palms = write(
        folder.path(),
        "palms.csv",
        "tag,species,site,crown_across_m\nA-1,Sabal palmetto,Yard,4\n",
    );
    let (status, _, err) = run(spearleaf()
        .args(["import", "palms", "--as-of", "2026-06-15", "--data"])
        .arg(&data)
        .arg(&palms));
    assert_eq!(status, 0, "{err}");
    let (_, out, _) = run(spearleaf()
        .args(["feeding", "--tag", "A-1", "--as-of", "2026-06-15", "--json"])
        .arg(&data));
    let palm = &lines(&out).remove(0)["palms"][0];
    let keep = palm["lines"].as_array().unwrap().last().unwrap();
    assert_eq!(keep["against"], "maintenance");
    // 1.5 lb on 100 square feet [mitchell-fert; ep261] is 73.2 g on a square metre; 4 m across are 12.57 square metres
    let grams = keep["doses"][0]["grams"][0].as_f64().unwrap();
    assert!((grams - 73.2 * 12.566).abs() < 1.0, "{grams}");
    assert_eq!(keep["doses"][0]["times_a_year"], 4.0);
    let (status, _, err) = run(spearleaf()
        .args(["feeding", "--tag", "Z-9", "--lang", "en"])
        .arg(&data));
    assert_eq!(status, 2);
    assert!(err.contains("Z-9"), "{err}");
}

#[test]
fn a_walk_is_ordered_for_people_and_programs() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    // 100 m of latitude are 0.0008993 degrees: C stands 20 m, B 60 m, A 100 m north of D
    let palms = write(
        folder.path(),
        "palms.csv",
        "tag,species,site,lat,lon\n\
         A,Sabal palmetto,North yard,27.0008993,-80.0\n\
         B,Sabal palmetto,North yard,27.0005396,-80.0\n\
         C,Sabal palmetto,North yard,27.0001799,-80.0\n\
         D,Sabal palmetto,North yard,27.0,-80.0\n",
    );
    let looks = write(
        folder.path(),
        "inspections.csv",
        "tag,date,green,yellowing,brown,spear\n\
         A,2026-06-10,30,0,4,firm\nB,2026-06-10,30,0,4,leaning\nC,2026-06-10,30,0,4,firm\n",
    );
    for (what, file) in [("palms", &palms), ("inspections", &looks)] {
        let (status, _, err) = run(spearleaf()
            .args(["import", what, "--as-of", "2026-06-15", "--data"])
            .arg(&data)
            .arg(file));
        assert_eq!(status, 0, "{what}: {err}");
    }
    let walk = |extra: &[&str]| {
        let mut command = spearleaf();
        command.args(["walk", "--as-of", "2026-06-15", "--site", "North yard"]);
        run(command.args(extra).arg(&data))
    };
    let (status, out, err) = walk(&["--json"]);
    assert_eq!(status, 1, "a spear leans: {err}");
    let walk_json = lines(&out).remove(0);
    let stops = walk_json["stops"].as_array().unwrap();
    let tags: Vec<&str> = stops.iter().map(|s| s["tag"].as_str().unwrap()).collect();
    // looked at and sound, never looked at, suspect: from A to C 80 m, to D 20 m, to B 60 m
    assert_eq!(tags, ["A", "C", "D", "B"]);
    assert_eq!(walk_json["metres"], 160.0);
    assert_eq!(stops[3]["health"], "suspect");
    assert_eq!(walk_json["shortest"], true);
    let (_, out, _) = walk(&[]);
    assert!(
        out.contains("4 palms") && out.contains("Suspect (1)"),
        "{out}"
    );
    let (status, _, err) = walk(&["--tags", "A,Z"]);
    assert_eq!(status, 2);
    assert!(err.contains('Z'), "{err}");
}

#[test]
fn how_to_get_at_a_palm_is_told_to_people_and_programs() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let palms = write(
        folder.path(),
        "palms.csv",
        "tag,species,trunk_height_m,wires_m\n\
         LOW,Sabal palmetto,2.0,60\nPOLE,Sabal palmetto,4.0,60\nHIGH,Sabal palmetto,12,60\nWIRE,Sabal palmetto,4.0,2\n",
    );
    let looks = write(
        folder.path(),
        "inspections.csv",
        "tag,date,green,yellowing,brown,spear\n\
         LOW,2026-06-10,30,0,4,firm\nPOLE,2026-06-10,30,0,4,firm\nHIGH,2026-06-10,30,0,4,firm\nWIRE,2026-06-10,30,0,4,firm\n",
    );
    for (what, file) in [("palms", &palms), ("inspections", &looks)] {
        let (status, _, err) = run(spearleaf()
            .args(["import", what, "--as-of", "2026-06-15", "--data"])
            .arg(&data)
            .arg(file));
        assert_eq!(status, 0, "{what}: {err}");
    }
    let reach = |tag: &str, extra: &[&str]| {
        let mut command = spearleaf();
        command.args(["reach", tag, "--as-of", "2026-06-15", "--data"]);
        run(command.arg(&data).args(extra))
    };
    for (tag, petiole, status, stand, tool) in [
        ("LOW", "3cm", 0, "ground", "loppers"),
        ("LOW", "2in", 0, "ground", "hand-saw"),
        ("POLE", "3cm", 0, "ground-with-pole", "pole-loppers"),
        ("POLE", "2in", 0, "ground-with-pole", "pole-saw"),
        ("HIGH", "3cm", 1, "lift", "lift"),
    ] {
        let (code, out, err) = reach(tag, &["--petiole", petiole, "--json"]);
        assert_eq!(code, status, "{tag}: {err}");
        let answer = lines(&out).remove(0);
        assert_eq!(answer["stand"], stand, "{tag}");
        assert_eq!(answer["tools"][0]["tool"], tool, "{tag} {petiole}");
        assert_eq!(
            answer["places"].as_array().unwrap().is_empty(),
            tag != "POLE"
        );
    }
    let (code, out, err) = reach("WIRE", &["--json"]);
    assert_eq!(code, 2, "{err}");
    let answer = lines(&out).remove(0);
    assert_eq!(answer["refused"], true);
    assert_eq!(answer["wires"], "within");
    let (code, out, _) = reach("POLE", &["--units", "us"]);
    assert_eq!(code, 0);
    assert!(
        out.contains("pole loppers") && out.contains("No climbing spikes"),
        "{out}"
    );
    assert_eq!(reach("NONE", &[]).0, 2);
    assert_eq!(reach("POLE", &["--petiole", "wide"]).0, 2);
}
