//! `spearleaf import`: CSV rows become entries of a data folder, all or none.

use crate::Outcome;
use crate::folder;
use crate::input::{Reading, Taken, name, open, take};
use crate::talk::Talk;
use clap::{Args, Subcommand};
use desk::assess::{Kind, NEEDS_A_PERSON};
use desk::intake::{Fate, Importing, InspectionReader, PalmReader};
use desk::office::{Note, Office};
use model::Knowledge;
use serde_json::json;
use std::collections::HashSet;
use std::path::PathBuf;

const AFTER: &str = "\
All good rows are written in one go. Reading the same file again changes nothing; a row that contradicts
the register is refused. Columns that are not known are kept and come out again with export.
Exit status 1 where a person is needed: an unknown species name, or rows refused under --skip-bad.

Examples:
  spearleaf import palms palms.csv --data spearleaf-data
  spearleaf import inspections inspections.csv --data spearleaf-data --skip-bad";

/// Options of `import`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    #[command(subcommand)]
    what: What,
}

#[derive(Subcommand)]
enum What {
    /// Register palms from palms.csv
    #[command(after_help = "Example:\n  spearleaf import palms palms.csv --data spearleaf-data")]
    Palms(From),
    /// Record inspections from inspections.csv
    #[command(
        after_help = "Example:\n  spearleaf import inspections inspections.csv --data spearleaf-data"
    )]
    Inspections(From),
}

#[derive(Args)]
struct From {
    /// The CSV file (- for standard input)
    #[arg(value_name = "FILE")]
    file: PathBuf,
    /// The data folder; made if it is not there
    #[arg(long, value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Who says so, written into the entries
    #[arg(long, value_name = "NAME", default_value = "import")]
    by: String,
    #[command(flatten)]
    reading: Reading,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let (from, palms) = match options.what {
        What::Palms(from) => (from, true),
        What::Inspections(from) => (from, false),
    };
    // inspections need palms, so a folder that is not there is most likely a slip
    let office = folder::office(&from.data, palms, talk)?;
    let mut batch = Batch {
        importing: Importing::new(office.state(), office.now(), &from.by),
        notes: Vec::new(),
        already: 0,
    };
    let (taken, unknown) = if palms {
        batch.palms(talk, &from, &office)?
    } else {
        (batch.inspections(talk, &from, &office)?, false)
    };
    let Some(taken) = taken else {
        return Ok(Outcome::Refused);
    };
    let new = batch.notes.len() as i64;
    office
        .record(batch.notes)
        .map_err(|refused| folder::refused(talk, refused))?;
    let args = [
        ("file", name(&from.file).into()),
        ("taken", new.into()),
        ("already", batch.already.into()),
        ("refused", (taken.refused as i64).into()),
    ];
    talk.say(true, &talk.words("cli-taken", &args))?;
    talk.object(&json!({
        "kind": "import", "file": name(&from.file), "taken": new, "already": batch.already, "refused": taken.refused,
    }))?;
    Ok(if taken.needs_person || unknown {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

struct Batch {
    importing: Importing,
    notes: Vec<Note>,
    already: i64,
}

impl Batch {
    fn keep(&mut self, fate: Fate) {
        match fate {
            Fate::New(note) => self.notes.push(*note),
            Fate::Already => self.already += 1,
        }
    }

    /// Palms; whether a species name needs a person.
    fn palms(
        &mut self,
        talk: &Talk,
        from: &From,
        office: &Office,
    ) -> anyhow::Result<(Option<Taken>, bool)> {
        let reader =
            PalmReader::open(open(&from.file, &from.reading)?).map(|r| r.not_after(office.today()));
        let (mut names, mut unknown) = (HashSet::new(), false);
        let taken = take(talk, &from.file, &from.reading, reader, |palm| {
            if names.insert(palm.species.clone()) {
                let kind = Kind::named(Knowledge::embedded(), &palm.species);
                for finding in kind.finding.iter() {
                    unknown |= finding.severity >= NEEDS_A_PERSON;
                    talk.note(&talk.of_palm(&palm.tag, finding));
                }
            }
            let fate = self.importing.palm(palm)?;
            self.keep(fate);
            Ok(())
        })?;
        Ok((taken, unknown))
    }

    fn inspections(
        &mut self,
        talk: &Talk,
        from: &From,
        office: &Office,
    ) -> anyhow::Result<Option<Taken>> {
        let known = self.importing.known();
        let reader = InspectionReader::open(open(&from.file, &from.reading)?, &known)
            .map(|r| r.not_after(office.today()));
        take(talk, &from.file, &from.reading, reader, |row| {
            let fate = self.importing.inspection(row)?;
            self.keep(fate);
            Ok(())
        })
    }
}
