//! `spearleaf season`: when to come back to each site, at least cost, nobody early.

use crate::Outcome;
use crate::folder;
use crate::output::Output;
use crate::talk::Talk;
use clap::{Args, ValueEnum};
use desk::season::feed::{self, Parts};
use desk::season::prices::SeasonPrices;
use desk::season::{Ask, Effort, sites};
use desk::views::Speaker;
use desk::views::season::{SiteView, view};
use desk::views::standing::Standings;
use std::io::Write;
use std::path::PathBuf;

const AFTER: &str = "\
Visits of every site over the season: the windows of its palms met at the least cost, no palm cut before its window
opens. --site shows what one visit fewer or more would do. --ics writes windows, proposed visits and planned rounds
for calendars (iCalendar, RFC 5545).
Exit status 1 where a window is not met.

Examples:
  spearleaf season spearleaf-data --weeks 26
  spearleaf season spearleaf-data --site \"North yard\"
  spearleaf season spearleaf-data --ics season.ics --only visits
  spearleaf season spearleaf-data --json | jq '.visits[] | .day'";

/// Options of `season`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// How far ahead
    #[arg(long, value_name = "WEEKS", default_value_t = 52, value_parser = clap::value_parser!(u8).range(26..=52))]
    weeks: u8,
    /// One site, with one visit fewer and one more
    #[arg(long, value_name = "NAME")]
    site: Option<String>,
    /// Write a calendar file here (- for standard output)
    #[arg(long, value_name = "FILE")]
    ics: Option<PathBuf>,
    /// What the calendar holds, if not all
    #[arg(long, value_enum, value_name = "WHAT", requires = "ics")]
    only: Option<Only>,
    /// Work for the proof of each site, millions of steps
    #[arg(long, value_name = "N", default_value_t = 400, value_parser = clap::value_parser!(u32).range(1..=100_000))]
    effort: u32,
}

#[derive(Clone, Copy, ValueEnum)]
enum Only {
    /// The window of each palm
    Windows,
    /// The visits the season plan proposes
    Visits,
    /// Planned rounds
    Rounds,
}

impl Only {
    fn parts(self) -> Parts {
        Parts::parse(match self {
            Only::Windows => "windows",
            Only::Visits => "visits",
            Only::Rounds => "rounds",
        })
    }
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let standings = Standings::default();
    talk.note(&talk.words("season-reading", &[]));
    standings.fill(&office);
    let ask = Ask {
        weeks: options.weeks.into(),
        site: options.site.clone(),
        effort: Effort(options.effort),
    };
    let found = sites(&office, &standings, &ask);
    if let Some(site) = options.site.as_ref().filter(|_| found.is_empty()) {
        anyhow::bail!(talk.words("season-no-such-site", &[("site", site.clone().into())]));
    }
    let speaker = Speaker::new(talk.measure);
    if let Some(path) = &options.ics {
        let parts = options.only.map_or(Parts::ALL, Only::parts);
        let text = feed::feed(&speaker, &office, &found, parts);
        anyhow::ensure!(
            !(talk.json && path.as_os_str() == "-"),
            "with --json, standard output is taken: name a file"
        );
        let mut out = Output::create(path)?;
        out.write_all(text.as_bytes())?;
        let on_stdout = out.is_stdout();
        out.finish()?;
        if on_stdout {
            return Ok(outcome(&found));
        }
        let file = path.display().to_string();
        talk.say(true, &talk.words("cli-written", &[("file", file.into())]))?;
    }
    for site in &found {
        talk.object(&feed::json(site))?;
    }
    let prices = SeasonPrices::of(&office.state());
    let view = view(&speaker, &found, &prices, ask.weeks, ask.site.as_deref());
    talk.say(true, &view.summary)?;
    for site in &view.sites {
        for line in lines(talk, site) {
            talk.say(true, &line)?;
        }
    }
    if let Some(line) = &view.prices {
        talk.say(true, "")?;
        talk.say(true, line)?;
    }
    Ok(outcome(&found))
}

fn outcome(found: &[desk::season::SiteSeason]) -> Outcome {
    match found.iter().all(|site| site.best.late.is_empty()) {
        true => Outcome::Done,
        false => Outcome::NeedsPerson,
    }
}

fn lines(talk: &Talk, site: &SiteView) -> Vec<String> {
    let mut lines = vec![String::new(), format!("{}: {}", site.name, site.summary)];
    for visit in &site.visits {
        lines.push(format!("  {}  {}, {}", visit.date, visit.what, visit.work));
        let tags: Vec<&str> = visit.palms.iter().map(|(tag, _)| tag.as_str()).collect();
        lines.push(format!("      {}", tags.join(" ")));
    }
    if !site.visits.is_empty() {
        lines.push(format!("  {}", site.cost));
    }
    lines.push(format!("  {}", site.proof));
    for plan in &site.otherwise {
        lines.push(format!(
            "  {}. {} {} {}",
            plan.title, plan.palms, plan.purse, plan.proof
        ));
    }
    let late = site.late.iter().map(|line| ("season-late", line));
    let left = site.left.iter().map(|line| ("season-left", line));
    for (title, line) in late.chain(left) {
        lines.push(format!(
            "  {}: {}: {}",
            talk.words(title, &[]),
            line.tag,
            line.text
        ));
    }
    lines.extend(
        site.closed
            .iter()
            .map(|line| format!("  {}: {line}", talk.words("season-closed-title", &[]))),
    );
    lines.extend(site.notes.iter().map(|line| format!("  {line}")));
    lines
}
