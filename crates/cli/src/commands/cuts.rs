//! `spearleaf cuts`: cut plans for all palms, or the answer to an asked-for cut of one.

use crate::Outcome;
use crate::args::day;
use crate::gather::{Files, Gathered, gather};
use crate::input::name;
use crate::json;
use crate::output::Output;
use crate::progress::Progress;
use crate::talk::Talk;
use anyhow::Context;
use care::{AskedAnswer, CutPlan, Grounds, Verdict};
use clap::Args;
use crown::{Cut, Recovery, Sampler};
use desk::assess::{NEEDS_A_PERSON, Visit, Yard, asked_for, each, plans};
use model::{Day, Finding};
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
Exit status 1 where a person is needed: a stem on hold, an unknown species name, an asked-for cut that is
not allowed in full, or rows refused under --skip-bad.
Local code, the utility, the machine's manual and licensed or certified people come before every plan.

Examples:
  spearleaf cuts --palms palms.csv --inspections inspections.csv --next-visit 2026-11-01 > cuts.csv
  spearleaf cuts --palms palms.csv --inspections inspections.csv --tag A-17 --take 25";

/// Options of `cuts`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    #[command(flatten)]
    files: Files,
    /// Write the plans here instead of to standard output
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// Day of the visit after this one; without it nothing live is allowed
    #[arg(long, value_name = "DATE", value_parser = day)]
    next_visit: Option<Day>,
    /// Palm weevils fly here
    #[arg(long)]
    weevil_area: bool,
    /// A storm is expected
    #[arg(long)]
    storm: bool,
    /// Day of the last freeze that may have burnt fronds
    #[arg(long, value_name = "DATE", value_parser = day)]
    freeze_on: Option<Day>,
    /// Voltage to ground of the nearest line in kV, told by the utility
    #[arg(long, value_name = "KV")]
    line_kv: Option<f64>,
    #[command(flatten)]
    asked: Asked,
}

/// A cut somebody asks for.
#[derive(Args)]
#[group(id = "asked")]
struct Asked {
    /// Answer an asked-for cut of this palm
    #[arg(long, value_name = "TAG")]
    tag: Option<String>,
    /// The stem of the asked-for cut
    #[arg(long, value_name = "STEM", default_value_t = 1, requires = "tag")]
    stem: u16,
    /// Live fronds to be taken off, oldest first
    #[arg(long, value_name = "FRONDS", requires = "tag", conflicts_with_all = ["green", "yellowing"],
        value_parser = clap::value_parser!(u32).range(0..=1000))]
    take: Option<u32>,
    /// Wholly green fronds to be taken off
    #[arg(long, value_name = "FRONDS", requires = "tag", value_parser = clap::value_parser!(u32).range(0..=1000))]
    green: Option<u32>,
    /// Partly dead fronds to be taken off
    #[arg(long, value_name = "FRONDS", requires = "tag", value_parser = clap::value_parser!(u32).range(0..=1000))]
    yellowing: Option<u32>,
    /// Wholly dead fronds to be taken off
    #[arg(long, value_name = "FRONDS", requires = "tag", value_parser = clap::value_parser!(u32).range(0..=1000))]
    brown: Option<u32>,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let Some(Gathered { yard, needs_person }) = gather(talk, &options.files)? else {
        return Ok(Outcome::Refused);
    };
    let visit = Visit {
        on: talk.today(),
        next: options.next_visit,
        grounds: Grounds {
            weevil_area: options.weevil_area,
            storm_expected: options.storm,
            freeze_on: options.freeze_on,
            line_kv: options.line_kv,
        },
    };
    let person = match &options.asked.tag {
        Some(tag) => answer(talk, &yard, tag, &options, &visit)?,
        None => plan_all(talk, &yard, &options, &visit)?,
    };
    Ok(if needs_person || person {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

const COLUMNS: [&str; 18] = [
    "tag",
    "stem",
    "as_of",
    "holds",
    "take_green",
    "take_yellowing",
    "take_brown",
    "if_asked_green",
    "if_asked_yellowing",
    "if_asked_brown",
    "must_stay_green",
    "must_stay_yellowing",
    "stub_low_m",
    "stub_high_m",
    "tool",
    "stand",
    "reasons",
    "cautions",
];

/// Plans for all palms; whether one needs a person.
fn plan_all(talk: &Talk, yard: &Yard, options: &Options, visit: &Visit) -> anyhow::Result<bool> {
    let path = options
        .out
        .clone()
        .or((!talk.json).then(|| PathBuf::from("-")));
    let mut out = path
        .as_deref()
        .map(Output::create)
        .transpose()?
        .map(csv::Writer::from_writer);
    if let Some(out) = &mut out {
        out.write_record(COLUMNS)?;
    }
    let mut progress = Progress::new("cuts", Some(yard.len() as u64));
    let (mut holds, mut unknown) = (0_i64, false);
    let work = |index: usize, sampler: &mut Sampler| (index, plans(yard, index, visit, sampler));
    each(yard.len(), work, |(index, plans)| -> anyhow::Result<()> {
        progress.add(1);
        let tag = &yard.palm(index).tag;
        if let Some(finding) = yard
            .kind(index)
            .finding
            .as_ref()
            .filter(|f| f.severity >= NEEDS_A_PERSON)
        {
            unknown = true;
            talk.note(&talk.of_palm(tag, finding));
        }
        for plan in &plans {
            holds += i64::from(!plan.holds.is_empty());
            if let Some(out) = &mut out {
                out.write_record(row(tag, visit.on, plan))?;
            }
            talk.object(&json::plan(tag, &visit.on.to_string(), plan, &talk.measure))?;
        }
        Ok(())
    })?;
    drop(progress);
    let to_stdout = path.is_some_and(|p| p.as_os_str() != "-");
    if let Some(out) = out {
        out.into_inner().map_err(|e| e.into_error())?.finish()?;
    }
    let date = talk.measure.date(visit.on);
    let args = [
        ("palms", (yard.len() as i64).into()),
        ("date", date.into()),
        ("holds", holds.into()),
    ];
    talk.say(to_stdout, &talk.words("cli-planned", &args))?;
    talk.object(&json!({"kind": "summary", "palms": yard.len(), "stems_on_hold": holds}))?;
    Ok(unknown || holds > 0)
}

fn row(tag: &str, on: Day, plan: &CutPlan) -> [String; 18] {
    let n = |n: u32| n.to_string();
    let stub = |end: fn(&care::StubLength) -> f64| {
        plan.method
            .stub
            .as_ref()
            .map_or_else(String::new, |s| format!("{:.3}", end(s)))
    };
    [
        tag.to_owned(),
        plan.stem.to_string(),
        on.to_string(),
        codes([&plan.holds]),
        n(plan.may_take.green),
        n(plan.may_take.yellowing),
        n(plan.may_take.brown),
        n(plan.if_asked.green),
        n(plan.if_asked.yellowing),
        n(plan.if_asked.brown),
        n(plan.must_stay.green),
        n(plan.must_stay.yellowing),
        stub(|s| s.low.0),
        stub(|s| s.high.0),
        json::tool(plan.method.tool).to_owned(),
        json::stand(plan.method.stand).to_owned(),
        codes([&plan.findings, &plan.method.findings]),
        codes([&plan.cautions]),
    ]
}

/// Stable codes, `;` between; `--json` has their words, figures and sources.
fn codes<const N: usize>(lists: [&Vec<Finding>; N]) -> String {
    let all: Vec<&str> = lists.into_iter().flatten().map(|f| f.code).collect();
    all.join(";")
}

/// The answer to an asked-for cut; whether it needs a person.
fn answer(
    talk: &Talk,
    yard: &Yard,
    tag: &str,
    options: &Options,
    visit: &Visit,
) -> anyhow::Result<bool> {
    let asked = &options.asked;
    let file = name(&options.files.palms);
    let missing = || {
        talk.words(
            "cli-no-such-tag",
            &[("tag", tag.to_owned().into()), ("file", file.into())],
        )
    };
    let index = yard.tagged(tag).with_context(missing)?;
    let cut = |case: &care::CutCase| {
        let live = asked
            .take
            .map_or(Cut::NONE, |n| care::oldest_first(case, n));
        Cut {
            green: asked.green.unwrap_or(live.green),
            yellowing: asked.yellowing.unwrap_or(live.yellowing),
            brown: asked.brown.unwrap_or(live.brown),
        }
    };
    let answer = asked_for(yard, index, asked.stem, visit, cut, &mut Sampler::new(1024))
        .with_context(|| format!("{tag}: the palm has no stem {}", asked.stem))?;
    talk.object(&json::asked(tag, asked.stem, &answer, &talk.measure))?;
    say(talk, tag, asked.stem, &answer)?;
    Ok(answer.verdict != Verdict::Allowed)
}

fn say(talk: &Talk, tag: &str, stem: u16, answer: &AskedAnswer) -> anyhow::Result<()> {
    if talk.json {
        return Ok(());
    }
    let code = match answer.verdict {
        Verdict::Allowed => "cli-asked-allowed",
        Verdict::Partly => "cli-asked-partly",
        Verdict::Refused => "cli-asked-refused",
    };
    let args = [
        ("tag", tag.to_owned().into()),
        ("stem", stem.to_string().into()),
        ("asked", cut_words(talk, answer.asked).into()),
        ("allowed", cut_words(talk, answer.allowed).into()),
    ];
    talk.say(true, &talk.words(code, &args))?;
    for finding in &answer.findings {
        talk.say(true, &format!("- {}", talk.measure.finding(finding)))?;
        if !finding.sources.is_empty() {
            let sources: Vec<String> = finding.sources.iter().map(ToString::to_string).collect();
            talk.say(true, &format!("  [{}]", sources.join(", ")))?;
        }
    }
    Ok(talk.say(true, &recovery_words(talk, &answer.recovery))?)
}

fn cut_words(talk: &Talk, cut: Cut) -> String {
    let n = |n: u32| i64::from(n).into();
    talk.words(
        "cli-cut",
        &[
            ("green", n(cut.green)),
            ("yellowing", n(cut.yellowing)),
            ("brown", n(cut.brown)),
        ],
    )
}

fn recovery_words(talk: &Talk, r: &Recovery) -> String {
    let time = |days: Option<f64>| {
        days.map_or_else(
            || talk.words("cli-beyond", &[]),
            |d| talk.measure.duration(d),
        )
    };
    let span = |ends: [Option<f64>; 3]| {
        let (low, high) = (time(ends[0]), time(ends[2]));
        if low == high {
            low
        } else {
            talk.words("cli-span", &[("low", low.into()), ("high", high.into())])
        }
    };
    let months = talk
        .measure
        .counts(r.frond_months_lost[0], r.frond_months_lost[2]);
    let args = [
        ("level", span(r.to_level).into()),
        ("full", span(r.to_full).into()),
        ("months", months.into()),
    ];
    talk.words("cli-recovery", &args)
}
