//! `spearleaf moved`: moved palms, what was promised for each, and whether it holds.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use desk::moved::{self, State};
use desk::views::Speaker;
use desk::views::moved::{json, view};
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
Palms moved within the last 540 days, worst first: how long ago, when to look next, how many fronds may still go
and from which count on to call.
Exit status 1 where a palm is past its promise.

Examples:
  spearleaf moved spearleaf-data
  spearleaf moved spearleaf-data --json | jq '.palms[] | select(.state == \"tripped\") | .tag'";

/// Options of `moved`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let (palms, more) = moved::all(&office);
    let list: Vec<_> = palms.iter().map(json).collect();
    talk.object(&json!({"kind": "moved", "palms": list, "not_shown": more}))?;
    let view = view(&Speaker::new(talk.measure), &office);
    talk.say(true, &view.summary)?;
    for row in view.rows.iter().chain(&view.arrived) {
        talk.say(true, "")?;
        talk.say(
            true,
            &format!("{}  {}  {}", row.tag, row.species, row.state_words),
        )?;
        let lines = row.trips.iter().map(|trip| &trip.text);
        for line in lines.chain([&row.promise, &row.next, &row.since]) {
            talk.say(true, &format!("  {line}"))?;
        }
    }
    if let Some(line) = &view.more {
        talk.say(true, line)?;
    }
    let tripped = palms.iter().any(|palm| palm.state() == State::Tripped);
    Ok(if tripped {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}
