//! Options of `trace`.

use crate::args::day;
use crate::input::Reading;
use crate::talk::Talk;
use clap::{Args, ValueEnum};
use desk::tracing::{self, Ask, CaseAsk};
use desk::world::World;
use model::knowledge::{DayRange, DisorderRow};
use model::{Day, Finding, Metres, Moment};
use std::path::PathBuf;

const AFTER: &str = "\
No data folder is needed. touches.csv has one row a cut or cleaning, in any order: time, blade, what, tag, agent,
strength_pct, contact_min, who. Every cut by a blade after it cut an infectious palm exposes, until a cleaning that
is surely enough lies in between. The certain set holds whatever the doubtful cleanings were worth; the possible
set cannot be ruled out.
Exit status 1 where somebody is exposed, may be a source, or is to be watched, or rows were refused under --skip-bad.
A trace is no diagnosis: the plant health authority and a laboratory come before it.

Example:
  spearleaf trace --touches touches.csv --palms palms.csv --case C-1 --seen-sick 2026-03-02 \\
      --disorder fusarium-wilt-canariensis > exposures.csv";

/// Options of `trace`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// touches.csv (- for standard input)
    #[arg(long, value_name = "FILE")]
    pub touches: PathBuf,
    /// Tag of a palm that was found infected; may be given more than once
    #[arg(long = "case", value_name = "TAG", required = true)]
    cases: Vec<String>,
    /// Key of the disorder, such as fusarium-wilt-canariensis
    #[arg(long, value_name = "KEY")]
    disorder: Option<String>,
    /// Day on which the cases were seen to be sick; today unless told
    #[arg(long, value_name = "DATE", value_parser = day)]
    seen_sick: Option<Day>,
    /// Day from which the cases are taken to have been infectious; else worked out from the latency
    #[arg(long, value_name = "DATE", value_parser = day)]
    infectious_from: Option<Day>,
    /// Days from infection to the first sign, such as 180..540, 180.. or ..540; else those of the disorder
    #[arg(long, value_name = "MIN..MAX", value_parser = range)]
    latency_days: Option<DayRange>,
    /// palms.csv: species, grounds and positions of the palms
    #[arg(long, value_name = "FILE")]
    pub palms: Option<PathBuf>,
    /// Whom the cases may have reached, where they may have it from, or both
    #[arg(long, value_enum, default_value_t = Direction::Both)]
    direction: Direction,
    /// Days between two looks at an exposed palm
    #[arg(long, value_name = "DAYS", default_value_t = Ask::LOOK_EVERY, value_parser = clap::value_parser!(u32).range(1..))]
    look_every: u32,
    /// How far from a case palms are watched where blades do not carry the disorder, in metres
    #[arg(long, value_name = "METRES", default_value_t = Ask::RADIUS.0)]
    radius_m: f64,
    /// Write exposures.csv here instead of to standard output
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,
    /// How the files are read.
    #[command(flatten)]
    pub reading: Reading,
}

/// Which way through time.
#[derive(Clone, Copy, ValueEnum)]
enum Direction {
    Forward,
    Backward,
    Both,
}

impl Options {
    /// The disorder asked about.
    pub fn disorder(&self) -> Result<Option<&'static DisorderRow>, Finding> {
        self.disorder.as_deref().map(tracing::disorder).transpose()
    }

    /// The question, as of now or the end (UTC) of the day that is taken for today.
    pub fn ask<'k>(&self, disorder: Option<&'k DisorderRow>, talk: &Talk) -> Ask<'k> {
        let end = |day: Day| Moment(Moment::at_midnight(day.plus(1)).0 - 1);
        let now = || (World::here("", None).now)();
        let case = |tag: &String| CaseAsk {
            tag: tag.clone(),
            seen_sick: self.seen_sick,
            infectious_from: self.infectious_from,
        };
        Ask {
            cases: self.cases.iter().map(case).collect(),
            disorder,
            latency: self.latency_days.unwrap_or_default(),
            direction: match self.direction {
                Direction::Forward => tracing::Direction::Forward,
                Direction::Backward => tracing::Direction::Backward,
                Direction::Both => tracing::Direction::Both,
            },
            as_of: talk.as_of.map_or_else(now, end),
            look_every: self.look_every,
            radius: Metres(self.radius_m),
        }
    }
}

/// `180..540`; either end may be left out.
fn range(text: &str) -> Result<DayRange, String> {
    let wrong = || "days like 180..540, 180.. or ..540 were expected".to_owned();
    let (low, high) = text.split_once("..").ok_or_else(wrong)?;
    let days = |text: &str| match text.trim() {
        "" => Ok(None),
        days => days
            .parse::<u32>()
            .ok()
            .filter(|d| *d <= 36_525)
            .map(Some)
            .ok_or_else(wrong),
    };
    let (min, max) = (days(low)?, days(high)?);
    match (min, max) {
        (None, None) => Err(wrong()),
        (Some(low), Some(high)) if low > high => {
            Err("the shortest time is longer than the longest".to_owned())
        }
        _ => Ok(DayRange { min, max }),
    }
}
