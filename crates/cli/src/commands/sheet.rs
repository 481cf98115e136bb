//! `spearleaf sheet`: sheets of paper as PDF.

use super::estimate::Which;
use crate::Outcome;
use crate::args::day;
use crate::folder;
use crate::output::Output;
use crate::talk::Talk;
use anyhow::{anyhow, bail};
use clap::{Args, Subcommand};
use desk::clock;
use desk::season::Seasons;
use desk::tracing::{self, Ask, CaseAsk};
use desk::views::owner_summary::{self, Period, Who};
use desk::views::standing::Standings;
use desk::views::{Speaker, owner, rounds};
use model::state::RoundRecord;
use model::{Day, Finding};
use paper::{Choice, Error, Leaf, Pdf, Size};
use serde_json::json;
use std::io::Write;
use std::path::PathBuf;

const AFTER: &str = "\
Language and units are those of --lang and --units; the day printed on the sheet is that of --as-of.

Examples:
  spearleaf sheet labels blades spearleaf-data --base http://192.168.1.20:7474 -o labels.pdf
  spearleaf sheet clauses --lang es -o clausulas.pdf
  spearleaf sheet round spearleaf-data --day 2026-06-16 --crew 'Lift crew' -o round.pdf
  spearleaf sheet trace spearleaf-data --case C-1 --disorder fusarium-wilt-canariensis -o trace.pdf
  spearleaf sheet owner spearleaf-data --tag Q-01 --lang es -o dueno.pdf
  spearleaf sheet summary spearleaf-data --owner 'The parish' --from 2026-01-01 -o parish.pdf";

/// Options of `sheet`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// Which sheet
    #[command(subcommand)]
    sheet: Sheet,
}

#[derive(Subcommand)]
enum Sheet {
    /// Labels with QR codes that open a page of the register
    Labels(Labels),
    /// Clauses for outside firms, with blanks for names and dates
    Clauses(Print),
    /// The quote of an estimate: what comes off which palm and what it costs
    Quote(Quote),
    /// The report of a trace, from a data folder's log of cuts and cleanings
    Trace(Trace),
    /// The owner's sheet of a palm: what was done, what to expect, when to call
    Owner(Owner),
    /// The summary for an owner over all palms: counts, what was done, what comes next, palms that need attention
    Summary(Summary),
    /// The crew sheet of a round: order, drawn crowns with the cuts marked, cautions, lines to fill in
    Round(Round),
}

/// Where a sheet goes.
#[derive(Args)]
struct Print {
    /// Write here
    #[arg(short, long, value_name = "FILE")]
    out: PathBuf,
    /// Size of the paper: a4 or letter (else what is usual with the units)
    #[arg(long, value_name = "SIZE", value_parser = size)]
    paper: Option<Size>,
}

#[derive(Args)]
struct Labels {
    /// Whose labels
    #[arg(value_enum, value_name = "WHAT")]
    what: What,
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// The address under which phones reach the pages
    #[arg(long, value_name = "ADDRESS")]
    base: String,
    /// Blades of this kit only
    #[arg(long, value_name = "KIT", default_value = "")]
    kit: String,
    /// Palms of this site only
    #[arg(long, value_name = "SITE", default_value = "")]
    site: String,
    /// This tag only; may come several times
    #[arg(long = "tag", value_name = "TAG")]
    tags: Vec<String>,
    #[command(flatten)]
    print: Print,
}

#[derive(Args)]
struct Quote {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    #[command(flatten)]
    which: Which,
    #[command(flatten)]
    print: Print,
}

#[derive(Args)]
struct Trace {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Tag of a palm that was found infected; may be given more than once
    #[arg(long = "case", value_name = "TAG", required = true)]
    cases: Vec<String>,
    /// Key of the disorder, such as fusarium-wilt-canariensis
    #[arg(long, value_name = "KEY")]
    disorder: Option<String>,
    /// Day on which the cases were seen to be sick; today unless told
    #[arg(long, value_name = "DATE", value_parser = day)]
    seen_sick: Option<Day>,
    /// Day from which the cases are taken to have been infectious; else worked out
    #[arg(long, value_name = "DATE", value_parser = day)]
    infectious_from: Option<Day>,
    #[command(flatten)]
    print: Print,
}

#[derive(Args)]
struct Round {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Whose round; may be left out where one crew goes out that day
    #[arg(long, value_name = "NAME")]
    crew: Option<String>,
    /// The day of the round; today unless told
    #[arg(long, value_name = "DATE", value_parser = day)]
    day: Option<Day>,
    /// The address under which phones reach the pages, for the code that opens the round
    #[arg(long, value_name = "ADDRESS")]
    base: Option<String>,
    #[command(flatten)]
    print: Print,
}

#[derive(Args)]
struct Owner {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Tag of the palm
    #[arg(long, value_name = "TAG")]
    tag: String,
    #[command(flatten)]
    print: Print,
}

#[derive(Args)]
struct Summary {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// The owner, as the sites name them
    #[arg(
        long,
        value_name = "NAME",
        conflicts_with = "site",
        required_unless_present = "site"
    )]
    owner: Option<String>,
    /// One site instead; an empty name is for palms without a site
    #[arg(long, value_name = "NAME")]
    site: Option<String>,
    /// First day that is told; 26 weeks before the last unless told
    #[arg(long, value_name = "DATE", value_parser = day)]
    from: Option<Day>,
    /// Last day that is told; today unless told
    #[arg(long, value_name = "DATE", value_parser = day)]
    until: Option<Day>,
    #[command(flatten)]
    print: Print,
}

#[derive(Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
enum What {
    /// Blades in service
    Blades,
    /// Standing palms
    Palms,
}

fn size(text: &str) -> Result<Size, String> {
    Size::parse(text).ok_or_else(|| "a4 or letter was expected".to_owned())
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    match options.sheet {
        Sheet::Labels(options) => labels(&options, talk),
        Sheet::Clauses(print) => finish(&print, talk, paper::clauses(&leaf(&print, talk, false))),
        Sheet::Quote(options) => quote(&options, talk),
        Sheet::Trace(options) => trace(&options, talk),
        Sheet::Owner(options) => owner(&options, talk),
        Sheet::Summary(options) => summary(&options, talk),
        Sheet::Round(options) => round(&options, talk),
    }
}

fn labels(options: &Labels, talk: &Talk) -> anyhow::Result<Outcome> {
    let palms = options.what == What::Palms;
    let (right, wrong) = match palms {
        true => (&options.site, &options.kit),
        false => (&options.kit, &options.site),
    };
    if !wrong.is_empty() {
        bail!(talk.words("cli-sheet-group", &[]));
    }
    let choice = Choice {
        group: right.clone(),
        tags: options.tags.clone(),
    };
    let office = folder::office(&options.data, false, talk)?;
    let leaf = leaf(&options.print, talk, office.is_demo());
    let state = office.state();
    let labels = match palms {
        true => paper::palm_labels(&state, &choice),
        false => paper::blade_labels(&leaf, &state, &choice),
    };
    let made = labels.and_then(|labels| paper::labels(&leaf, &options.base, &labels));
    finish(&options.print, talk, made)
}

fn quote(options: &Quote, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let made = super::estimate::made(&office, &options.which, talk)?;
    let leaf = leaf(&options.print, talk, office.is_demo());
    finish(&options.print, talk, paper::quote(&leaf, &made))
}

fn trace(options: &Trace, talk: &Talk) -> anyhow::Result<Outcome> {
    let said = |finding: Finding| anyhow!(talk.measure.finding(&finding));
    let office = folder::office(&options.data, false, talk)?;
    let key = options.disorder.as_deref();
    let disorder = key.map(tracing::disorder).transpose().map_err(said)?;
    let case = |tag: &String| CaseAsk {
        tag: tag.clone(),
        seen_sick: options.seen_sick,
        infectious_from: options.infectious_from,
    };
    let ask = Ask {
        cases: options.cases.iter().map(case).collect(),
        ..Ask::of("", disorder, clock::now(&office))
    };
    let answer = tracing::of_state(&office.state(), &ask).map_err(said)?;
    let leaf = leaf(&options.print, talk, office.is_demo());
    finish(
        &options.print,
        talk,
        paper::trace_report(&leaf, &answer, disorder),
    )
}

fn round(options: &Round, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let (state, day) = (office.state(), options.day.unwrap_or(talk.today()));
    let wanted = |round: &&RoundRecord| {
        let crew = options.crew.as_ref();
        round.plan.day == day && crew.is_none_or(|crew| *crew == round.plan.crew)
    };
    let found: Vec<&RoundRecord> = state.work.rounds.values().filter(wanted).collect();
    let date = ("date", talk.measure.date(day).into());
    let [found] = found.as_slice() else {
        let crews: Vec<&str> = found.iter().map(|round| round.plan.crew.as_str()).collect();
        match crews.is_empty() {
            true => bail!(talk.words("cli-no-round", &[date])),
            false => bail!(talk.words(
                "cli-which-round",
                &[date, ("crews", crews.join(", ").into())]
            )),
        }
    };
    let leaf = leaf(&options.print, talk, office.is_demo());
    let sheet = rounds::sheet(&Speaker::new(talk.measure), &office, found.id);
    let sheet = sheet.ok_or_else(|| anyhow!(talk.words("round-form-gone", &[])))?;
    finish(
        &options.print,
        talk,
        paper::crew_sheet(&leaf, &sheet, options.base.as_deref()),
    )
}

fn owner(options: &Owner, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let leaf = leaf(&options.print, talk, office.is_demo());
    let speaker = Speaker::new(talk.measure);
    let state = office.state();
    let record = state.by_tag(&options.tag);
    let made = record
        .and_then(|record| owner::view(&speaker, &office, record))
        .ok_or_else(|| Error::NoSuch(options.tag.clone()))
        .and_then(|view| paper::owner_sheet(&leaf, &view, None));
    finish(&options.print, talk, made)
}

fn summary(options: &Summary, talk: &Talk) -> anyhow::Result<Outcome> {
    let (who, name, unknown) = match (&options.owner, &options.site) {
        (Some(owner), _) => (Who::Owner(owner.clone()), owner, "summary-no-such-owner"),
        (None, Some(site)) => (Who::Site(site.clone()), site, "season-no-such-site"),
        // the parser asks for one of the two
        (None, None) => bail!(talk.words("sheet-empty", &[])),
    };
    let office = folder::office(&options.data, false, talk)?;
    let period = Period::of(options.from, options.until, office.today());
    let period = period.map_err(|wrong| {
        let said = wrong.iter().map(|(option, finding)| {
            let words = talk.measure.finding(finding);
            format!("--{option}: {words}")
        });
        anyhow!(said.collect::<Vec<_>>().join("\n"))
    })?;
    let (standings, seasons) = (Standings::default(), Seasons::default());
    let speaker = Speaker::new(talk.measure);
    let view = owner_summary::view(&speaker, &office, &standings, &seasons, &who, period);
    let Some(view) = view else {
        let field = match who {
            Who::Owner(_) => "name",
            Who::Site(_) => "site",
        };
        bail!(talk.words(unknown, &[(field, name.clone().into())]));
    };
    let leaf = leaf(&options.print, talk, office.is_demo());
    finish(&options.print, talk, paper::owner_summary(&leaf, &view))
}

fn leaf(print: &Print, talk: &Talk, demo: bool) -> Leaf {
    Leaf {
        size: print.paper.unwrap_or(Size::usual(talk.measure.units)),
        measure: talk.measure,
        day: talk.today(),
        demo,
    }
}

fn finish(print: &Print, talk: &Talk, made: Result<Pdf, Error>) -> anyhow::Result<Outcome> {
    let pdf = match made {
        Ok(pdf) => pdf,
        Err(error) => bail!(talk.measure.finding(&error.finding())),
    };
    let mut out = Output::create(&print.out)?;
    let to_stdout = out.is_stdout();
    out.write_all(&pdf.bytes)?;
    out.finish()?;
    if !to_stdout {
        let file = print.out.display().to_string();
        talk.say(
            true,
            &talk.words("cli-written", &[("file", file.clone().into())]),
        )?;
        talk.object(&json!({"kind": "sheet", "file": file, "pages": pdf.pages}))?;
    }
    Ok(Outcome::Done)
}
