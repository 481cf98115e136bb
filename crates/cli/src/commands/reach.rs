//! `spearleaf reach`: with which tool and from where to get at a palm.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use anyhow::{Context, bail};
use clap::Args;
use desk::forms::read_length;
use desk::reaching::{Reached, Told, crews};
use desk::views::Speaker;
use desk::views::reach::{Brief, brief, json, with_stem};
use model::{Metres, Severity};
use std::path::PathBuf;

const AFTER: &str = "\
For what the cut plan takes off today. Loppers come before teeth where both reach and the petiole goes in; a pole is held
so that the hands are out from under the cut; near wires the answer is no.
Exit status 1 where somebody must act first: measure the height, look for wires, send a lift.
Local code, the utility, the machine's manual and licensed or certified people come before every answer.

Examples:
  spearleaf reach A-17 --data spearleaf-data --petiole 3.2cm
  spearleaf reach A-17 --data spearleaf-data --json | jq '.tools[] | select(.take) | .tool'";

/// Options of `reach`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The palm
    #[arg(value_name = "TAG")]
    tag: String,
    /// The data folder
    #[arg(long, value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Which stem
    #[arg(long, value_name = "NUMBER", default_value_t = 1)]
    stem: u16,
    /// Width of a petiole where it is cut, such as 3.2cm or 1.25in
    #[arg(long, value_name = "WIDTH")]
    petiole: Option<String>,
    /// How high the hands work, such as 2.4m or 8ft (8 ft unless told)
    #[arg(long, value_name = "HEIGHT")]
    hand: Option<String>,
    /// Only what this crew carries and is trained for
    #[arg(long, value_name = "NAME")]
    crew: Option<String>,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let mut told = Told::default();
    if let Some(text) = &options.petiole {
        told.petiole = Some(length(talk, "--petiole", text, 0.002, 0.4)?);
    }
    if let Some(text) = &options.hand {
        told.hand_reach = length(talk, "--hand", text, 1.0, 3.5)?;
    }
    if let Some(name) = &options.crew {
        told.crew = crews(&office).into_iter().find(|crew| crew.name == *name);
        if told.crew.is_none() {
            bail!(talk.words("reach-no-crew", &[("crew", name.clone().into())]));
        }
    }
    let speaker = Speaker::new(talk.measure);
    let answer = with_stem(&office, &options.tag, options.stem, &told, |_, reached| {
        let object = json(&options.tag, options.stem, reached);
        (
            object,
            lines(talk, reached, &brief(&speaker, reached)),
            worst(reached),
        )
    });
    let (object, lines, worst) = answer.with_context(|| {
        talk.words(
            "error-not-found-palm",
            &[("tag", options.tag.clone().into())],
        )
    })?;
    talk.object(&object)?;
    for line in lines {
        talk.say(true, &line)?;
    }
    Ok(match worst {
        Severity::Refuse => Outcome::Refused,
        Severity::Act => Outcome::NeedsPerson,
        Severity::Info | Severity::Caution => Outcome::Done,
    })
}

fn worst(reached: &Reached) -> Severity {
    let all = reached.reach.findings.iter().map(|f| f.severity);
    all.max().unwrap_or(Severity::Info)
}

fn length(talk: &Talk, option: &str, text: &str, low: f64, high: f64) -> anyhow::Result<Metres> {
    let read = read_length(text, talk.measure.units);
    let fits = read.filter(|m| (low..=high).contains(&m.0));
    fits.with_context(|| {
        format!(
            "{option} {text}: a length from {low} to {high} m was expected, such as 3.2cm or 8ft"
        )
    })
}

fn lines(talk: &Talk, reached: &Reached, brief: &Brief) -> Vec<String> {
    let mut lines = vec![brief.sentence.clone(), brief.keep_out.clone()];
    lines.extend(
        brief
            .places
            .iter()
            .map(|p| format!("  {}. {}", p.n, p.text)),
    );
    let findings = reached.reach.findings.iter();
    lines.extend(findings.map(|finding| format!("- {}", talk.measure.finding(finding))));
    lines
}
