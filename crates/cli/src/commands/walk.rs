//! `spearleaf walk`: in which order to take the palms of a site.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use desk::views::Speaker;
use desk::views::standing::Standings;
use desk::views::walk::{Answer, answer, json};
use desk::walk::{Ask, Cannot, MOST_PALMS, Which, walk};
use rounds::walk::Health;
use std::collections::BTreeSet;
use std::path::PathBuf;

const AFTER: &str = "\
Healthy palms first, then those nobody looked at lately, then suspect ones, confirmed ones last; within that the
shortest way on foot from the gate of the site, else from the best first palm. Where nothing shorter can exist it says so.
A clean blade is taken up where the table of disorders asks for it, and before and after a suspect palm.
Exit status 1 where a palm of the walk is suspect or confirmed.
Labels, local code and licensed or certified people come before every plan.

Examples:
  spearleaf walk spearleaf-data --site 'North yard' --due
  spearleaf walk spearleaf-data --site 'North yard' --json | jq -r '.stops[].tag'";

/// Options of `walk`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// The grounds, as palms write them
    #[arg(long, value_name = "NAME")]
    site: String,
    /// Only palms to cut or to look at now
    #[arg(long, conflicts_with = "tags")]
    due: bool,
    /// Only these palms, with commas between
    #[arg(long, value_name = "TAGS", value_delimiter = ',')]
    tags: Vec<String>,
    /// Minutes of cutting at a palm (assumed, not read)
    #[arg(long, value_name = "MINUTES", default_value = "6", value_parser = minutes)]
    minutes: f64,
    /// Blade sets
    #[arg(long, value_name = "NUMBER", default_value_t = 2, value_parser = clap::value_parser!(u16).range(1..=50))]
    sets: u16,
    /// Minutes of soak; else what the first mix of the table that can be enough asks for
    #[arg(long, value_name = "MINUTES", value_parser = minutes)]
    soak: Option<f64>,
}

/// Minutes of a day at the most.
fn minutes(text: &str) -> Result<f64, String> {
    let value = text.trim().parse().ok();
    let fits = value.filter(|x: &f64| (0.0..=1440.0).contains(x));
    fits.ok_or_else(|| "minutes from 0 to 1440 were expected".to_owned())
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let tags: BTreeSet<String> = options.tags.iter().map(|t| t.trim().to_owned()).collect();
    let ask = Ask {
        site: options.site.clone(),
        which: match (tags.is_empty(), options.due) {
            (false, _) => Which::Tags(tags),
            (true, true) => Which::Due,
            (true, false) => Which::All,
        },
        cut_min: options.minutes,
        sets: options.sets.into(),
        soak_min: options.soak,
    };
    let walk = match walk(&office, &Standings::default(), &ask) {
        Ok(walk) => walk,
        Err(cannot) => anyhow::bail!("{}: {}", options.site, why(talk, &cannot)),
    };
    talk.object(&json(&walk))?;
    show(talk, &answer(&Speaker::new(talk.measure), &walk))?;
    let ill = walk.count(Health::Suspect) + walk.count(Health::Confirmed);
    Ok(if ill > 0 {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

fn why(talk: &Talk, cannot: &Cannot) -> String {
    let count = |n: usize| (n as i64).into();
    match cannot {
        Cannot::Nobody => talk.words("walk-nobody", &[]),
        Cannot::NoSuch(tags) => talk.words("walk-no-such", &[("tags", tags.join(", ").into())]),
        Cannot::TooMany(n) => talk.words(
            "walk-too-many",
            &[("n", count(*n)), ("most", count(MOST_PALMS))],
        ),
    }
}

fn show(talk: &Talk, answer: &Answer) -> anyhow::Result<()> {
    talk.say(true, &answer.sentence)?;
    talk.say(true, &answer.blades)?;
    for class in &answer.classes {
        talk.say(true, "")?;
        talk.say(true, &class.name)?;
        for row in &class.rows {
            for before in &row.before {
                talk.say(true, &format!("      -- {before} --"))?;
            }
            let line = [&row.way, &row.task, &row.why];
            let line: Vec<&str> = line.map(String::as_str).into();
            let line = line.into_iter().filter(|part| !part.is_empty());
            let line = line.collect::<Vec<_>>().join("; ");
            talk.say(true, &format!("{:>4}  {}  {line}", row.n, row.tag))?;
        }
    }
    talk.say(true, "")?;
    for note in &answer.notes {
        talk.say(true, note)?;
    }
    Ok(())
}
