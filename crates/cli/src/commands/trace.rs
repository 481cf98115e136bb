//! `spearleaf trace`: whom a case may have reached by blades, and where it may have it from.

mod json;
mod options;

use crate::Outcome;
use crate::input::{Taken, open, take};
use crate::output::Output;
use crate::talk::Talk;
use desk::intake::{PalmReader, TouchReader, TouchRow, TouchWhat};
use desk::tracing::{
    self, BookMaker, Cleaned, EXPOSURE_COLUMNS, Stand, TraceAnswer, exposure_rows,
};
use model::Palm;
pub use options::Options;
use std::path::PathBuf;

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let disorder = match options.disorder() {
        Ok(disorder) => disorder,
        Err(finding) => {
            talk.remark("trace", &finding)?;
            return Ok(Outcome::Refused);
        }
    };
    let mut maker = BookMaker::new();
    let Some(palms) = palms(&options, talk, &mut maker)? else {
        return Ok(Outcome::Refused);
    };
    let Some(touches) = touches(&options, talk, &mut maker)? else {
        return Ok(Outcome::Refused);
    };
    let answer = match tracing::of_book(&maker.done(), &options.ask(disorder, talk)) {
        Ok(answer) => answer,
        Err(finding) => {
            talk.remark(&crate::input::name(&options.touches), &finding)?;
            return Ok(Outcome::Refused);
        }
    };
    write(&options, &answer, talk)?;
    let found = answer.exposed.len() + answer.sources.len() + answer.nearby.len();
    Ok(if found > 0 || palms.needs_person || touches.needs_person {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

fn palms(options: &Options, talk: &Talk, maker: &mut BookMaker) -> anyhow::Result<Option<Taken>> {
    let Some(path) = &options.palms else {
        return Ok(Some(Taken::default()));
    };
    let read = open(path, &options.reading)?;
    let rows = PalmReader::open(read).map(|rows| rows.not_after(talk.latest_day()));
    take(talk, path, &options.reading, rows, |palm: Palm| {
        maker.palm(Stand {
            id: None,
            tag: palm.tag,
            species: palm.species,
            site: palm.site,
            position: palm.position,
        });
        Ok(())
    })
}

fn touches(options: &Options, talk: &Talk, maker: &mut BookMaker) -> anyhow::Result<Option<Taken>> {
    let (path, reading) = (&options.touches, &options.reading);
    let rows = TouchReader::open(open(path, reading)?);
    let rows = rows.map(|rows| rows.not_after(talk.latest_day()));
    take(talk, path, reading, rows, |row: TouchRow| {
        let blade = maker.blade_named(&row.blade);
        match row.what {
            TouchWhat::Cut(tag) => {
                let palm = maker.palm_named(&tag);
                maker.cut(row.at, blade, palm);
            }
            TouchWhat::Clean {
                agent,
                strength_pct,
                contact_min,
            } => maker.clean(
                row.at,
                blade,
                &Cleaned {
                    agent,
                    strength_pct,
                    contact_min,
                    ..Cleaned::default()
                },
            ),
        }
        Ok(())
    })
}

fn write(options: &Options, answer: &TraceAnswer, talk: &Talk) -> anyhow::Result<()> {
    for finding in &answer.findings {
        talk.note(&talk.measure.finding(finding));
        talk.object(&json::finding(finding, &talk.measure))?;
    }
    if talk.json {
        for object in json::answer(answer) {
            talk.object(&object)?;
        }
    }
    let to_stdout = (!talk.json).then(|| PathBuf::from("-"));
    let path = options.out.clone().or(to_stdout);
    let mut on_stdout = false;
    if let Some(path) = &path {
        anyhow::ensure!(
            !(talk.json && path.as_os_str() == "-"),
            "with --json, standard output is taken: name a file"
        );
        let mut out = Output::create(path)?;
        on_stdout = out.is_stdout();
        let mut csv = csv::Writer::from_writer(&mut out);
        csv.write_record(EXPOSURE_COLUMNS)?;
        for row in exposure_rows(answer) {
            csv.write_record(&row)?;
        }
        csv.flush()?;
        drop(csv);
        out.finish()?;
    }
    say(answer, talk, !on_stdout)
}

fn say(answer: &TraceAnswer, talk: &Talk, to_stdout: bool) -> anyhow::Result<()> {
    let certain = answer.exposed.iter().filter(|one| one.certain).count();
    let count = |n: usize| (n as i64).into();
    let args = [
        ("exposed", count(answer.exposed.len())),
        ("certain", count(certain)),
        ("possible", count(answer.exposed.len() - certain)),
        ("sources", count(answer.sources.len())),
        ("nearby", count(answer.nearby.len())),
        ("cuts", count(answer.log.cuts)),
        ("cleanings", count(answer.log.cleanings)),
        ("date", answer.as_of.to_string().into()),
    ];
    talk.say(to_stdout, &talk.words("cli-traced", &args))?;
    Ok(talk.object(&json::summary(answer, certain))?)
}
