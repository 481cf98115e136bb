//! `spearleaf estimate`: what the cuts take that may be made today, and what they cost.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use anyhow::anyhow;
use clap::Args;
use desk::estimating::{self, Ask, Estimate};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::estimating::{to_json, view};
use desk::views::standing::Standings;
use std::path::PathBuf;

const AFTER: &str = "\
Minutes, debris and money of the cuts that may be made today, with what is assumed. Nothing is recorded.
Three figures each: seldom less (one time in ten), as a rule, seldom more (one time in ten).

Examples:
  spearleaf estimate spearleaf-data --site \"Holding yard\"
  spearleaf estimate spearleaf-data --palm Q-01 --palm Q-02 --json | jq .gross";

/// Options of `estimate`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    #[command(flatten)]
    which: Which,
}

/// Which palms and which crew.
#[derive(Args)]
pub struct Which {
    /// Palms of this site that are due; may come several times (else all that are due)
    #[arg(long = "site", value_name = "SITE")]
    sites: Vec<String>,
    /// This palm, due or not; may come several times
    #[arg(long = "palm", value_name = "TAG")]
    palms: Vec<String>,
    /// At the pace of this crew
    #[arg(long, value_name = "CREW", default_value = "")]
    crew: String,
}

impl Which {
    /// The question.
    pub fn ask(&self) -> Ask {
        Ask {
            palms: self.palms.clone(),
            sites: self.sites.clone(),
            crew: self.crew.clone(),
        }
    }
}

/// The estimate; refused in words.
pub fn made(office: &Office, which: &Which, talk: &Talk) -> anyhow::Result<Estimate> {
    estimating::estimate(office, &Standings::default(), &which.ask()).map_err(|wrong| {
        let words: Vec<String> = wrong.iter().map(|f| talk.measure.finding(f)).collect();
        anyhow!(words.join("\n"))
    })
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let made = made(&office, &options.which, talk)?;
    talk.object(&to_json(&made))?;
    let speaker = Speaker::new(talk.measure);
    let view = view(&speaker, &made);
    let say = |line: &str| talk.say(true, line);
    say(&view.summary)?;
    say(&view.pace)?;
    say("")?;
    for line in &view.lines {
        say(&format!("  {}  {}", line.label, line.value))?;
    }
    say(&format!(
        "{}: {}",
        speaker.say("estimate-debris-title"),
        view.debris
    ))?;
    say("")?;
    for line in view.charges.iter().chain(&view.tax) {
        let mark = line.mark.as_ref().map(|mark| format!(" ({mark})"));
        let (count, mark) = (&line.count, mark.unwrap_or_default());
        say(&format!("  {}  {count}{mark}  {}", line.label, line.value))?;
    }
    say(&format!(
        "{}: {}",
        speaker.say("estimate-gross"),
        view.gross
    ))?;
    if let Some(line) = &view.prices {
        say(line)?;
    }
    for palm in &view.palms {
        say(&format!("  {}  {}  {}", palm.tag, palm.what, palm.minutes))?;
    }
    for (tag, why) in &view.left {
        say(&format!("  {tag}  {}", why.text))?;
    }
    Ok(Outcome::Done)
}
