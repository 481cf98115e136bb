//! `spearleaf rotation`: which blade set cuts when, while the others soak.

mod json;
mod options;

use crate::Outcome;
use crate::input::{name, open, take};
use crate::output::Output;
use crate::talk::Talk;
use desk::blades::bath_rules;
use desk::intake::{Fault, RoundReader, RoundRow};
use desk::rotating::{
    Made, Needed, ROTATION_COLUMNS, RoundCut, alike, figure, made, needed, next_cut, rotation_rows,
    sentence, span, too_short,
};
use model::{Arg, Finding, Severity};
pub use options::Options;
use std::path::{Path, PathBuf};

/// More cuts than this are no round.
const MOST_CUTS: usize = 10_000;

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let needed = match soak(&options) {
        Ok(needed) => needed,
        Err(findings) => {
            for finding in &findings {
                talk.remark("rotation", finding)?;
            }
            return Ok(Outcome::Refused);
        }
    };
    let Some((cuts, needs_person)) = round(&options, talk)? else {
        return Ok(Outcome::Refused);
    };
    let soak_min = options
        .soak
        .or(needed.as_ref().map(|needed| needed.minutes));
    let mut kit = bath_rules(options.sets.into(), soak_min.unwrap_or_default());
    kit.brush_min = options.brush;
    kit.rinse_min = options.rinse;
    kit.bath_holds = options.bath_holds.map(usize::from);
    // the options let nothing through that the engine refuses
    let Some(made) = made(cuts, kit) else {
        anyhow::bail!("these figures make no schedule");
    };
    let short = doubts(&options, needed.as_ref(), talk)?;
    write(&options, &made, needed.as_ref(), talk)?;
    Ok(if needs_person || short {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

/// The soak that the tables ask for; `None` where no agent is named.
fn soak(options: &Options) -> Result<Option<Needed>, Vec<Finding>> {
    let disorder = options.disorder.as_deref();
    if let Some(key) = disorder {
        desk::tracing::disorder(key).map_err(|finding| vec![finding])?;
    }
    let Some(agent) = &options.agent else {
        return Ok(None);
    };
    match needed(agent, options.strength, disorder) {
        // own minutes were given: they are taken, and what is doubtful is said
        Err(findings) if options.soak.is_none() => Err(findings),
        found => Ok(found.ok()),
    }
}

/// The cuts and whether a person is needed; `None`: refused, and said so.
fn round(options: &Options, talk: &Talk) -> anyhow::Result<Option<(Vec<RoundCut>, bool)>> {
    let Some(path) = &options.cuts else {
        let palms = options.palms.unwrap_or_default().into();
        let minutes = options.minutes_each.unwrap_or_default();
        return Ok(Some((alike(palms, minutes), false)));
    };
    let mut cuts: Vec<RoundCut> = Vec::new();
    let rows = RoundReader::open(open(path, &options.reading)?);
    let taken = take(talk, path, &options.reading, rows, |row: RoundRow| {
        if cuts.len() == MOST_CUTS {
            let limit = Arg::Count(MOST_CUTS as i64);
            return Err(Fault::cell("rotation-too-many", "tag", &row.tag).with("limit", limit));
        }
        cuts.push(next_cut(cuts.last(), row));
        Ok(())
    })?;
    let Some(taken) = taken else {
        return Ok(None);
    };
    if cuts.is_empty() {
        let empty = Finding::new("rotation-no-cuts", Severity::Refuse);
        talk.remark(&name(path), &empty)?;
        return Ok(None);
    }
    Ok(Some((cuts, taken.needs_person)))
}

/// Says why minutes told by hand would not do for the agent; whether there is such a reason.
fn doubts(options: &Options, needed: Option<&Needed>, talk: &Talk) -> anyhow::Result<bool> {
    let (Some(minutes), Some(agent)) = (options.soak, &options.agent) else {
        return Ok(false);
    };
    let disorder = options.disorder.as_deref();
    let short = match needed {
        Some(needed) => too_short(needed, minutes, disorder),
        None => desk::rotating::needed(agent, options.strength, disorder)
            .err()
            .unwrap_or_default(),
    };
    for finding in &short {
        talk.remark("rotation", finding)?;
    }
    Ok(!short.is_empty())
}

fn write(
    options: &Options,
    made: &Made,
    needed: Option<&Needed>,
    talk: &Talk,
) -> anyhow::Result<()> {
    for object in json::objects(made, needed) {
        talk.object(&object)?;
    }
    let to_stdout = (!talk.json).then(|| PathBuf::from("-"));
    let path = options.out.clone().or(to_stdout);
    let on_stdout = match &path {
        Some(path) => table(path, made, talk)?,
        None => false,
    };
    for line in lines(options, made, needed, talk) {
        talk.say(!on_stdout, &line)?;
    }
    Ok(())
}

/// Writes the schedule; whether it went to standard output.
fn table(path: &Path, made: &Made, talk: &Talk) -> anyhow::Result<bool> {
    anyhow::ensure!(
        !(talk.json && path.as_os_str() == "-"),
        "with --json, standard output is taken: name a file"
    );
    let mut out = Output::create(path)?;
    let on_stdout = out.is_stdout();
    let mut csv = csv::Writer::from_writer(&mut out);
    csv.write_record(ROTATION_COLUMNS)?;
    for row in rotation_rows(made) {
        csv.write_record(&row)?;
    }
    csv.flush()?;
    drop(csv);
    out.finish()?;
    Ok(on_stdout)
}

/// The answer and what it rests on, for people.
fn lines(options: &Options, made: &Made, needed: Option<&Needed>, talk: &Talk) -> Vec<String> {
    let (measure, kit) = (&talk.measure, &made.kit);
    let number = |minutes: f64| measure.number(minutes, 2);
    let min = ("min", number(kit.soak_min).into());
    let soak = match needed.filter(|_| options.soak.is_none()) {
        Some(needed) => {
            let strength = needed.strength_pct.map(figure);
            let strength = strength.unwrap_or_else(|| "none".to_owned());
            let agent = ("agent", needed.agent.clone().into());
            talk.words(
                "rotation-soak-from",
                &[min, agent, ("strength", strength.into())],
            )
        }
        None => talk.words("rotation-soak-own", &[min]),
    };
    let hands = [
        ("brush", number(kit.brush_min).into()),
        ("rinse", number(kit.rinse_min).into()),
    ];
    let clean = [
        ("all", span(measure, made.plan.all_clean_min).into()),
        ("baths", (made.plan.baths as i64).into()),
    ];
    let mut lines = vec![
        sentence(measure, made),
        talk.words("rotation-all-clean", &clean),
        soak,
        talk.words("rotation-assumed", &hands),
    ];
    if let Some(agent) = &options.agent {
        // a hand saw stands for every blade: what chain saws ask for besides is in the register and on the pages
        let known = model::Knowledge::embedded();
        let cautions = care::clean::cautions(model::BladeKind::HandSaw, agent, known);
        let worst = cautions.iter().filter(|c| c.severity >= Severity::Caution);
        lines.extend(worst.map(|caution| measure.finding(caution)));
    }
    lines
}
