//! `spearleaf assess`: from counts to readings and forecasts, on all cores, in bounded memory.

use crate::Outcome;
use crate::gather::{Files, Gathered, gather};
use crate::json;
use crate::output::Output;
use crate::progress::Progress;
use crate::talk::Talk;
use clap::Args;
use desk::assess::{
    Ask, FORECAST_COLUMNS, NEEDS_A_PERSON, PalmAnswer, READINGS_COLUMNS, answer, each,
    forecast_rows, readings_rows,
};
use serde_json::json;
use std::io::Write;
use std::path::{Path, PathBuf};

const AFTER: &str = "\
No data folder is needed. Readings have one row a stem, and one more with an empty stem for a palm with
several stems. Without --readings and --forecast the readings go to standard output.
Exit status 1 where a person is needed: a decline is probable (50 % or more), a loss that fewer than 1 of 20
ordinary palms would show, a spear that leans, is down or came out, an unknown species name, or rows refused
under --skip-bad.

Example:
  spearleaf assess --palms palms.csv --inspections inspections.csv \\
      --readings readings.csv --forecast forecast.csv --as-of 2026-05-01";

/// Options of `assess`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    #[command(flatten)]
    files: Files,
    /// Write readings.csv here (- for standard output)
    #[arg(long, value_name = "FILE")]
    readings: Option<PathBuf>,
    /// Write forecast.csv here (- for standard output)
    #[arg(long, value_name = "FILE")]
    forecast: Option<PathBuf>,
    /// Weeks ahead of the forecast, up to 104, separated by commas
    #[arg(long, value_name = "WEEKS", value_delimiter = ',', default_values_t = Ask::WEEKS,
        value_parser = clap::value_parser!(u32).range(0..=104))]
    weeks: Vec<u32>,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let Some(Gathered { yard, needs_person }) = gather(talk, &options.files)? else {
        return Ok(Outcome::Refused);
    };
    let ask = Ask::of(talk.today(), &options.weeks);
    let mut pages = Pages::create(&options, talk)?;
    let (readings, forecast) = (pages.readings.is_some(), pages.forecast.is_some());
    let mut tally = Tally::new(talk, !pages.on_stdout());
    let mut progress = Progress::new("assess", Some(yard.len() as u64));
    each(
        yard.len(),
        |index, sampler| Page::of(answer(&yard, index, &ask, sampler), readings, forecast),
        |page| {
            progress.add(1);
            let page = page?;
            tally.add(&page.answer)?;
            pages.write(&page)
        },
    )?;
    drop(progress);
    pages.finish(&tally)?;
    tally.end(&ask)?;
    Ok(if needs_person || tally.person > 0 {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

/// One palm's rows, written out where it was read so that all cores write.
struct Page {
    answer: PalmAnswer,
    readings: Vec<u8>,
    forecast: Vec<u8>,
}

impl Page {
    fn of(answer: PalmAnswer, readings: bool, forecast: bool) -> anyhow::Result<Page> {
        let readings = if readings {
            rows(&readings_rows(&answer))?
        } else {
            Vec::new()
        };
        let forecast = if forecast {
            rows(&forecast_rows(&answer))?
        } else {
            Vec::new()
        };
        Ok(Page {
            answer,
            readings,
            forecast,
        })
    }
}

fn rows<const N: usize>(rows: &[[String; N]]) -> anyhow::Result<Vec<u8>> {
    let mut out = csv::WriterBuilder::new()
        .buffer_capacity(2048)
        .from_writer(Vec::new());
    for row in rows {
        out.write_record(row)?;
    }
    Ok(out.into_inner()?)
}

/// The files being written.
struct Pages {
    readings: Option<Output>,
    forecast: Option<Output>,
    files: Vec<PathBuf>,
}

impl Pages {
    fn create(options: &Options, talk: &Talk) -> anyhow::Result<Pages> {
        // without a word on files, readings go to standard output, unless that is for objects
        let neither = options.readings.is_none() && options.forecast.is_none();
        let stdout = (neither && !talk.json).then(|| PathBuf::from("-"));
        let readings = options.readings.clone().or(stdout);
        let both = [&readings, &options.forecast].into_iter().flatten();
        let to_stdout = both.clone().filter(|p| *p == Path::new("-")).count();
        anyhow::ensure!(
            to_stdout <= 1,
            "only one of --readings and --forecast can go to standard output (-)"
        );
        anyhow::ensure!(
            to_stdout == 0 || !talk.json,
            "with --json, standard output is taken: name a file"
        );
        let files = both.filter(|p| *p != Path::new("-")).cloned().collect();
        Ok(Pages {
            readings: begin(readings.as_deref(), &READINGS_COLUMNS)?,
            forecast: begin(options.forecast.as_deref(), &FORECAST_COLUMNS)?,
            files,
        })
    }

    fn on_stdout(&self) -> bool {
        [&self.readings, &self.forecast]
            .into_iter()
            .flatten()
            .any(Output::is_stdout)
    }

    fn write(&mut self, page: &Page) -> anyhow::Result<()> {
        for (out, bytes) in [
            (&mut self.readings, &page.readings),
            (&mut self.forecast, &page.forecast),
        ] {
            if let Some(out) = out {
                out.write_all(bytes)?;
            }
        }
        Ok(())
    }

    fn finish(self, tally: &Tally) -> anyhow::Result<()> {
        for out in [self.readings, self.forecast].into_iter().flatten() {
            out.finish()?;
        }
        for file in &self.files {
            tally.line(
                "cli-written",
                &[("file", file.display().to_string().into())],
            )?;
        }
        Ok(())
    }
}

fn begin(path: Option<&Path>, columns: &[&str]) -> anyhow::Result<Option<Output>> {
    let Some(path) = path else { return Ok(None) };
    let mut out = Output::create(path)?;
    writeln!(out, "{}", columns.join(","))?;
    Ok(Some(out))
}

/// Findings shown one by one; all are in `--json`.
const SHOWN: u64 = 40;

/// What is said at the end.
struct Tally<'t> {
    talk: &'t Talk,
    to_stdout: bool,
    palms: i64,
    by_explanation: [i64; 4],
    person: i64,
    unseen: i64,
    found: u64,
}

impl<'t> Tally<'t> {
    fn new(talk: &'t Talk, to_stdout: bool) -> Tally<'t> {
        Tally {
            talk,
            to_stdout,
            palms: 0,
            by_explanation: [0; 4],
            person: 0,
            unseen: 0,
            found: 0,
        }
    }

    fn line(&self, code: &str, args: &[(&'static str, desk::words::Value)]) -> anyhow::Result<()> {
        Ok(self
            .talk
            .say(self.to_stdout, &self.talk.words(code, args))?)
    }

    fn add(&mut self, answer: &PalmAnswer) -> anyhow::Result<()> {
        self.palms += 1;
        match answer.looked_at {
            true => self.by_explanation[answer.explanation.index()] += 1,
            false => self.unseen += 1,
        }
        self.person += i64::from(answer.needs_a_person());
        if self.talk.json {
            return Ok(self
                .talk
                .object(&json::answer(answer, &self.talk.measure))?);
        }
        for finding in answer
            .findings
            .iter()
            .filter(|f| f.severity >= NEEDS_A_PERSON)
        {
            self.found += 1;
            if self.found <= SHOWN {
                self.talk
                    .say(self.to_stdout, &self.talk.of_palm(&answer.tag, finding))?;
            }
        }
        Ok(())
    }

    fn end(&self, ask: &Ask) -> anyhow::Result<()> {
        if self.found > SHOWN {
            self.line(
                "cli-more",
                &[("count", ((self.found - SHOWN) as i64).into())],
            )?;
        }
        let [ageing, moved, hunger, decline] = self.by_explanation;
        self.talk.object(&json!({
            "kind": "summary",
            "as_of": ask.as_of.to_string(),
            "palms": self.palms,
            "most_probable": {"ageing": ageing, "move": moved, "hunger": hunger, "decline": decline},
            "never_looked_at": self.unseen,
            "need_a_person": self.person,
        }))?;
        let args = [
            ("palms", self.palms.into()),
            ("date", self.talk.measure.date(ask.as_of).into()),
            ("ageing", ageing.into()),
            ("move", moved.into()),
            ("hunger", hunger.into()),
            ("decline", decline.into()),
            ("unseen", self.unseen.into()),
            ("person", self.person.into()),
        ];
        self.line("cli-assessed", &args)
    }
}
