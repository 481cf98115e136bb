//! `spearleaf restore`: a data folder from a backup.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
The backup is checked first. The folder must be new or empty.

Example:
  spearleaf restore palms-2026-05-01.backup spearleaf-data";

/// Options of `restore`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The backup
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// The data folder to fill
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let head = folder::restore(&options.file, &options.data)?;
    let place = options.data.display().to_string();
    let args = [
        ("count", (head.seq as i64).into()),
        ("folder", place.clone().into()),
    ];
    talk.say(true, &talk.words("cli-restored", &args))?;
    talk.object(&json!({"kind": "restore", "folder": place, "entries": head.seq, "hash": head.hash.to_string()}))?;
    Ok(Outcome::Done)
}
