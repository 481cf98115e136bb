//! `spearleaf judge`: what could it be, from a file of signs.

use crate::Outcome;
use crate::input::{Reading, open, take};
use crate::json;
use crate::output::Output;
use crate::progress::Progress;
use crate::talk::Talk;
use clap::Args;
use desk::assess::{NEEDS_A_PERSON, in_order};
use desk::intake::SignsReader;
use desk::judging::{Cases, JUDGEMENT_COLUMNS, Judged, judgement_rows, name_of};
use model::Finding;
use serde_json::json;
use std::io::Write;
use std::path::PathBuf;

const AFTER: &str = "\
One row a palm and look in, one row a disorder out, the most probable first; --json has the whole judgement.
Exit status 1 where a person is needed: nobody may cut a palm before it is known what ails it, a species name
or a sign that is not known, a sign said to be there and not there, or rows refused under --skip-bad.
A judgement is no diagnosis: the plant health authority, a laboratory and licensed applicators come before it.

Example:
  spearleaf judge --signs signs.csv --as-of 2026-05-01 > judgements.csv";

/// Options of `judge`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// signs.csv: tag, species, signs seen and not there, dates (- for standard input)
    #[arg(long, value_name = "FILE")]
    signs: PathBuf,
    /// Write the judgements here instead of to standard output
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// How many disorders of each palm are written
    #[arg(long, value_name = "NUMBER", default_value_t = 5, value_parser = clap::value_parser!(u16).range(1..))]
    most: u16,
    #[command(flatten)]
    reading: Reading,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let mut cases = Cases::new(talk.today());
    let read = open(&options.signs, &options.reading)?;
    let rows = SignsReader::open(read).map(|rows| rows.not_after(talk.latest_day()));
    let taken = take(talk, &options.signs, &options.reading, rows, |row| {
        cases.add(row);
        Ok(())
    })?;
    let Some(taken) = taken else {
        return Ok(Outcome::Refused);
    };
    let mut page = Page::begin(&options, talk)?;
    let mut tally = Tally::new(talk, &cases, !page.is_stdout());
    let mut progress = Progress::new("judge", Some(cases.len() as u64));
    let lang = talk.measure.words.lang();
    let work = |index: usize| -> anyhow::Result<(usize, Judged, Vec<u8>)> {
        let judged = cases.judge(index);
        let rows = judgement_rows(cases.tag(index), &judged, options.most.into(), lang);
        Ok((index, judged, bytes(&rows)?))
    };
    in_order(cases.len(), work, |done| -> anyhow::Result<()> {
        progress.add(1);
        let (index, judged, rows) = done?;
        page.write(&rows)?;
        tally.add(index, &judged)
    })?;
    drop(progress);
    page.finish(talk)?;
    let person = tally.end()?;
    Ok(if person || taken.needs_person {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

fn bytes<const N: usize>(rows: &[[String; N]]) -> anyhow::Result<Vec<u8>> {
    let mut out = csv::WriterBuilder::new()
        .buffer_capacity(2048)
        .from_writer(Vec::new());
    for row in rows {
        out.write_record(row)?;
    }
    Ok(out.into_inner()?)
}

/// The file being written; none where standard output is for objects and no file is named.
struct Page {
    out: Option<Output>,
    path: Option<PathBuf>,
}

impl Page {
    fn begin(options: &Options, talk: &Talk) -> anyhow::Result<Page> {
        let path = options
            .out
            .clone()
            .or((!talk.json).then(|| PathBuf::from("-")));
        let to_stdout = path.as_ref().is_some_and(|p| p.as_os_str() == "-");
        anyhow::ensure!(
            !(to_stdout && talk.json),
            "with --json, standard output is taken: name a file"
        );
        let mut out = path.as_deref().map(Output::create).transpose()?;
        if let Some(out) = &mut out {
            writeln!(out, "{}", JUDGEMENT_COLUMNS.join(","))?;
        }
        Ok(Page { out, path })
    }

    fn is_stdout(&self) -> bool {
        self.out.as_ref().is_some_and(Output::is_stdout)
    }

    fn write(&mut self, rows: &[u8]) -> anyhow::Result<()> {
        if let Some(out) = &mut self.out {
            out.write_all(rows)?;
        }
        Ok(())
    }

    fn finish(self, talk: &Talk) -> anyhow::Result<()> {
        let to_stdout = self.is_stdout();
        if let Some(out) = self.out {
            out.finish()?;
        }
        if let Some(path) = self.path.filter(|_| !to_stdout) {
            let file = path.display().to_string();
            talk.say(true, &talk.words("cli-written", &[("file", file.into())]))?;
        }
        Ok(())
    }
}

/// Palms on hold named one by one; all are in the file.
const SHOWN: u64 = 40;

/// What is said of all rows.
struct Tally<'t> {
    talk: &'t Talk,
    cases: &'t Cases,
    to_stdout: bool,
    holds: u64,
    person: u64,
    said: u64,
}

impl<'t> Tally<'t> {
    fn new(talk: &'t Talk, cases: &'t Cases, to_stdout: bool) -> Tally<'t> {
        Tally {
            talk,
            cases,
            to_stdout,
            holds: 0,
            person: 0,
            said: 0,
        }
    }

    fn add(&mut self, index: usize, judged: &Judged) -> anyhow::Result<()> {
        let tag = self.cases.tag(index);
        let findings = self.cases.findings(index, judged);
        let urgent = |f: &&&Finding| f.severity >= NEEDS_A_PERSON;
        let mut lines: Vec<String> = findings
            .iter()
            .filter(urgent)
            .map(|f| self.talk.of_palm(tag, f))
            .collect();
        let hold = judged.judgement.holds.first();
        lines.extend(hold.map(|hold| self.held(tag, hold)));
        self.holds += u64::from(hold.is_some());
        self.person += u64::from(!lines.is_empty());
        if self.talk.json {
            let object = json::judgement(tag, judged, &findings, &self.talk.measure);
            return Ok(self.talk.object(&object)?);
        }
        for line in lines {
            self.said += 1;
            if self.said <= SHOWN {
                self.talk.say(self.to_stdout, &line)?;
            }
        }
        Ok(())
    }

    fn held(&self, tag: &str, hold: &care::judge::HoldAdvice) -> String {
        let lang = self.talk.measure.words.lang();
        let because: Vec<&str> = hold.because.iter().map(|key| name_of(key, lang)).collect();
        let args = [
            ("tag", tag.to_owned().into()),
            ("because", because.join(", ").into()),
            ("share", self.talk.measure.percent(hold.probability).into()),
        ];
        self.talk.words("cli-judged-hold", &args)
    }

    /// Whether a person is needed.
    fn end(&self) -> anyhow::Result<bool> {
        if self.said > SHOWN {
            let more = (self.said - SHOWN) as i64;
            let line = self.talk.words("cli-more", &[("count", more.into())]);
            self.talk.say(self.to_stdout, &line)?;
        }
        let rows = self.cases.len();
        let args = [
            ("rows", (rows as i64).into()),
            ("holds", (self.holds as i64).into()),
        ];
        self.talk
            .say(self.to_stdout, &self.talk.words("cli-judged", &args))?;
        self.talk.object(&json!({
            "kind": "summary",
            "rows": rows,
            "on_hold": self.holds,
            "need_a_person": self.person,
        }))?;
        Ok(self.person > 0)
    }
}
