//! `spearleaf backup`: one file that holds everything.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
The file is complete and checked, or not there at all; others may go on writing meanwhile.
An existing file is never overwritten.

Example:
  spearleaf backup spearleaf-data palms-2026-05-01.backup";

/// Options of `backup`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER")]
    data: PathBuf,
    /// The file to write
    #[arg(value_name = "FILE")]
    file: PathBuf,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let head = folder::backup(&options.data, &options.file)?;
    let file = options.file.display().to_string();
    let args = [
        ("count", (head.seq as i64).into()),
        ("file", file.clone().into()),
    ];
    talk.say(true, &talk.words("cli-kept", &args))?;
    talk.object(&json!({"kind": "backup", "file": file, "entries": head.seq, "hash": head.hash.to_string()}))?;
    Ok(Outcome::Done)
}
