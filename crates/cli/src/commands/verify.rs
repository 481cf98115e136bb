//! `spearleaf verify`: every link of the chain, recomputed.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use ledger::Verdict;
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
Reads only. Exit status 0 if every entry is there and unchanged, 2 if not.

Example:
  spearleaf verify spearleaf-data";

/// Options of `verify`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    match folder::verify(&options.data)? {
        Verdict::Whole(head) => {
            talk.say(
                true,
                &talk.words("cli-whole", &[("count", (head.seq as i64).into())]),
            )?;
            let hash = head.hash.to_string();
            talk.object(
                &json!({"kind": "verdict", "whole": true, "entries": head.seq, "hash": hash}),
            )?;
            Ok(Outcome::Done)
        }
        Verdict::Broken { seq, what } => {
            let what = format!("{seq}: {what}");
            talk.say(
                true,
                &talk.words("cli-broken", &[("what", what.clone().into())]),
            )?;
            talk.object(&json!({"kind": "verdict", "whole": false, "entry": seq, "what": what}))?;
            Ok(Outcome::Refused)
        }
    }
}
