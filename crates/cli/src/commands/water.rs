//! `spearleaf water`: which palms want water today and in the coming days, and how much.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use desk::views::Speaker;
use desk::views::watering::{json, view};
use desk::watering::{self, State};
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
Palms on their way to being established, and palms for which a watering was noted in the last 60 days: litres and
gallons for today, when each is due next, the longest safe interval, when it was last watered. Weather comes in with
import weather; where there is none, the monthly means of the nearest known place stand in.
Exit status 1 where a palm wants water today.

Examples:
  spearleaf water spearleaf-data
  spearleaf water spearleaf-data --site \"North yard\"
  spearleaf water spearleaf-data --json | jq '.palms[] | select(.today_litres) | [.tag, .today_litres]'";

/// Options of `water`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Only the palms of this site
    #[arg(long, value_name = "NAME", default_value = "")]
    site: String,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let (mut palms, more) = watering::all(&office);
    palms.retain(|w| options.site.is_empty() || w.record.palm.site == options.site);
    let list: Vec<_> = palms.iter().map(json).collect();
    talk.object(&json!({"kind": "water", "palms": list, "not_shown": more}))?;
    let view = view(&Speaker::new(talk.measure), &office, &options.site);
    talk.say(true, &view.summary)?;
    for line in view
        .total
        .iter()
        .chain(&view.weather)
        .chain(view.more.iter())
    {
        talk.say(true, line)?;
    }
    for group in &view.groups {
        talk.say(true, "")?;
        talk.say(true, &group.title)?;
        for row in &group.rows {
            let give = row.give.as_deref().unwrap_or("–");
            talk.say(true, &format!("{}  {}  {give}", row.tag, row.species))?;
            for line in [&row.next, &row.rhythm, &row.last] {
                talk.say(true, &format!("  {line}"))?;
            }
        }
    }
    let today = palms.iter().map(|w| w.state()).any(State::is_today);
    Ok(if today {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}
