//! `spearleaf rounds`: which crew goes to which palms on a day.

use crate::Outcome;
use crate::args::day;
use crate::folder;
use crate::input::{Reading, open, take};
use crate::progress::Progress;
use crate::talk::Talk;
use clap::Args;
use desk::day_rounds::{self, Ask, Proposal, Scope, Task, USUAL_TASKS};
use desk::forms::Stop;
use desk::intake::{TravelReader, TravelRow, TravelTable};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::rounds::{self, ProposalView};
use desk::views::standing::Standings;
use model::{Day, Finding, RoundPlan};
use serde_json::json;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

const AFTER: &str = "\
Palms due on the day are given to the crews that work: hours of crews and sites, lifts, closed days, and sound palms
before ill ones. What is left out is listed with the reason. Nothing is recorded without --keep. Ctrl-C ends the
search and keeps the best plan so far.
Exit status 1 where palms are left out.

A file of ways has the columns from, to, km, minutes; places are crews and sites by name.

Examples:
  spearleaf rounds spearleaf-data --day 2026-06-16
  spearleaf rounds spearleaf-data --day 2026-06-16 --site 'North yard' --crew 'Lift crew' --ways ways.csv --keep
  spearleaf rounds spearleaf-data --tasks 'water;feed'
  spearleaf rounds spearleaf-data --json | jq '.rounds[].stops[].tag'";

/// Options of `rounds`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// The day to plan; tomorrow unless told
    #[arg(long, value_name = "DATE", value_parser = day)]
    day: Option<Day>,
    /// Send this crew; may come several times; all that work unless told
    #[arg(long = "crew", value_name = "NAME")]
    crews: Vec<String>,
    /// Palms of this site only; may come several times
    #[arg(long = "site", value_name = "SITE", conflicts_with = "palms")]
    sites: Vec<String>,
    /// This palm, due or not; may come several times
    #[arg(long = "palm", value_name = "TAG")]
    palms: Vec<String>,
    /// What is done, with ; between: look, cut, water, feed; all but feed unless told
    #[arg(long, value_name = "TASKS", value_delimiter = ';', value_parser = task)]
    tasks: Vec<Task>,
    /// Kilometres and minutes between crews and sites, a CSV file; what it lacks is reckoned
    #[arg(long, value_name = "FILE")]
    ways: Option<PathBuf>,
    /// Rounds of the search: more take longer and find shorter days
    #[arg(long, value_name = "N", default_value_t = 20_000)]
    iterations: u64,
    /// Another seed finds another plan
    #[arg(long, value_name = "N", default_value_t = 1)]
    seed: u64,
    /// Record the rounds
    #[arg(long)]
    keep: bool,
    #[command(flatten)]
    reading: Reading,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let travel = match &options.ways {
        None => None,
        Some(path) => match ways(path, &options.reading, talk)? {
            None => return Ok(Outcome::Refused),
            some => some,
        },
    };
    let office = folder::office(&options.data, false, talk)?;
    let ask = ask(&options, travel, talk);
    let proposal = match search(&office, &ask) {
        Ok(proposal) => proposal,
        Err(findings) => return refused(&findings, talk),
    };
    let mut object = rounds::json(&office, &proposal);
    object["kind"] = json!("rounds");
    talk.object(&object)?;
    let view = rounds::proposal(&Speaker::new(talk.measure), &office, &proposal);
    say(&view, talk)?;
    if options.keep {
        let plans: Vec<RoundPlan> = proposal.rounds.iter().map(|r| r.plan.clone()).collect();
        let n = plans.len() as i64;
        match day_rounds::keep(&office, plans, None) {
            Ok(_) => talk.say(true, &talk.words("cli-rounds-kept", &[("n", n.into())]))?,
            Err(Stop::Troubles(troubles)) => {
                let findings: Vec<Finding> = troubles.into_iter().map(|t| t.finding).collect();
                return refused(&findings, talk);
            }
            Err(Stop::Ledger(error)) => return Err(error.into()),
            Err(Stop::NoPalm) => anyhow::bail!("a palm of the plan left the register meanwhile"),
        }
    }
    Ok(if proposal.left.is_empty() {
        Outcome::Done
    } else {
        Outcome::NeedsPerson
    })
}

fn ways(path: &Path, reading: &Reading, talk: &Talk) -> anyhow::Result<Option<TravelTable>> {
    let mut rows: Vec<TravelRow> = Vec::new();
    let opened = TravelReader::open(open(path, reading)?);
    let taken = take(talk, path, reading, opened, |row| {
        rows.push(row);
        Ok(())
    })?;
    Ok(taken.map(|_| TravelTable::of(rows)))
}

fn ask(options: &Options, travel: Option<TravelTable>, talk: &Talk) -> Ask {
    let scope = match (options.sites.as_slice(), options.palms.as_slice()) {
        ([], []) => Scope::Due,
        ([], tags) => Scope::Palms(tags.to_vec()),
        (sites, _) => Scope::Sites(sites.to_vec()),
    };
    Ask {
        day: options.day.unwrap_or(talk.today().plus(1)),
        crews: options.crews.clone(),
        scope,
        tasks: match options.tasks.as_slice() {
            [] => USUAL_TASKS.to_vec(),
            told => told.to_vec(),
        },
        travel,
        seed: options.seed,
        iterations: options.iterations,
    }
}

fn task(word: &str) -> Result<Task, String> {
    let all = Task::ALL.map(|(_, word)| word).join(", ");
    Task::of(word.trim()).ok_or_else(|| format!("no such task; give some of {all}"))
}

/// Searches with a bar; Ctrl-C ends it and keeps the best.
fn search(office: &Office, ask: &Ask) -> Result<Proposal, Vec<Finding>> {
    let enough = Arc::new(AtomicBool::new(false));
    listen(enough.clone());
    let mut progress = Progress::new("rounds", Some(ask.iterations));
    let mut before = 0;
    day_rounds::propose(office, &Standings::default(), ask, &mut |done, _| {
        progress.add(done.saturating_sub(before));
        before = done;
        !enough.load(Ordering::Relaxed)
    })
}

/// Notes the first Ctrl-C; a second one ends the program as ever.
fn listen(enough: Arc<AtomicBool>) {
    std::thread::spawn(move || {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build();
        let Ok(runtime) = runtime else {
            return;
        };
        // a signal that cannot be heard leaves the search to run to its end
        if runtime.block_on(tokio::signal::ctrl_c()).is_ok() {
            enough.store(true, Ordering::Relaxed);
            if runtime.block_on(tokio::signal::ctrl_c()).is_ok() {
                std::process::exit(130);
            }
        }
    });
}

fn refused(findings: &[Finding], talk: &Talk) -> anyhow::Result<Outcome> {
    for finding in findings {
        talk.remark("rounds", finding)?;
    }
    Ok(Outcome::Refused)
}

fn say(view: &ProposalView, talk: &Talk) -> anyhow::Result<()> {
    talk.say(true, &view.title)?;
    talk.say(true, &view.summary)?;
    for round in &view.rounds {
        talk.say(true, "")?;
        talk.say(true, &round.title)?;
        talk.say(true, &format!("  {}", round.sum))?;
        for stop in &round.stops {
            if let Some(site) = &stop.site {
                talk.say(true, &format!("  {site}"))?;
            }
            let lift = stop.lift.then(|| talk.words("round-lift", &[]));
            let more: Vec<String> = lift.into_iter().chain(stop.health.clone()).collect();
            let more = if more.is_empty() {
                String::new()
            } else {
                format!("  ({})", more.join("; "))
            };
            talk.say(
                true,
                &format!(
                    "    {}  {:<8} {:>4} min  {}{more}",
                    stop.start, stop.tag, stop.minutes, stop.tasks
                ),
            )?;
        }
    }
    if !view.left.is_empty() {
        talk.say(true, "")?;
        talk.say(true, &talk.words("plan-left", &[]))?;
        for group in &view.left {
            talk.say(true, &format!("  {}", group.why.text))?;
            talk.say(true, &format!("    {}", group.tags.join(" ")))?;
        }
    }
    talk.say(true, "")?;
    for remark in &view.remarks {
        talk.say(true, &remark.text)?;
    }
    Ok(())
}
