//! What the tests of the command line share.
#![allow(dead_code, missing_docs)]

use assert_cmd::Command;
use std::path::{Path, PathBuf};

/// The program, in English whatever the terminal says.
pub fn spearleaf() -> Command {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("spearleaf"));
    command.env("LC_ALL", "C").env_remove("LANG");
    command
}

/// A folder of the repository.
pub fn repository(path: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .join(path)
}

/// A file in a folder.
pub fn write(folder: &Path, name: &str, text: impl AsRef<[u8]>) -> PathBuf {
    let path = folder.join(name);
    std::fs::write(&path, text).unwrap();
    path
}

/// Runs with exit status, standard output and standard error as text.
pub fn run(command: &mut Command) -> (i32, String, String) {
    let out = command.output().unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (
        out.status.code().unwrap_or(-1),
        text(out.stdout),
        text(out.stderr),
    )
}

pub const PALMS: &str = "\
tag,species,site,stems,moved_on,trunk_height_m,lat,lon,Plaque
A-1,Sabal palmetto,North yard,1,,6.1,27.18,-80.24,17
A-2,Syagrus romanzoffiana,North yard,1,2026-03-02,3.05,27.18,-80.24,
B-1,Phoenix reclinata,Court,2,,,,,
";

pub const LOOKS: &str = "\
tag,stem,date,green,yellowing,brown,removed_brown,spear,clock_left,Wind
A-1,1,2026-01-05,34,0,1,1,firm,8.5,calm
A-1,1,2026-04-20,33,1,4,,firm,,
A-2,1,2026-04-20,10,1,2,2,firm,,
B-1,2,2026-04-20,20,1,,,,,
B-1,1,2026-04-20,22,0,2,,,,
";

/// `palms.csv` and `inspections.csv` in a folder.
pub fn yard(folder: &Path) -> (PathBuf, PathBuf) {
    (
        write(folder, "palms.csv", PALMS),
        write(folder, "inspections.csv", LOOKS),
    )
}
