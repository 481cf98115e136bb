//! `spearleaf import`: CSV rows become entries of a data folder, all or none.

use crate::Outcome;
use crate::folder;
use crate::input::{Reading, Taken, name, open, take};
use crate::talk::Talk;
use clap::{Args, Subcommand};
use desk::assess::{Kind, NEEDS_A_PERSON};
use desk::intake::{
    BladeReader, CleaningReader, CrewReader, CutReader, Fate, Importing, InspectionReader, Logging,
    MoveReader, PalmReader, SiteReader, WeatherReader,
};
use desk::office::{Note, Office};
use model::{EntryId, Knowledge, Severity};
use serde_json::json;
use std::collections::HashSet;
use std::path::PathBuf;

const AFTER: &str = "\
All good rows are written in one go. Reading the same file again changes nothing; a row that contradicts
the register is refused. Columns that are not known are kept and come out again with export.
A blade that cuts or cleanings name and nobody registered is registered with its tag alone.
Exit status 1 where a person is needed: an unknown species name, a blade nobody registered, cuts that overlap,
clocks that jump, or rows refused under --skip-bad.

Examples:
  spearleaf import palms palms.csv --data spearleaf-data
  spearleaf import inspections inspections.csv --data spearleaf-data --skip-bad
  spearleaf import cuts cuts.csv --data spearleaf-data";

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
    /// Record moves of palms from moves.csv
    #[command(after_help = "Example:\n  spearleaf import moves moves.csv --data spearleaf-data")]
    Moves(From),
    /// Describe sites from sites.csv
    #[command(after_help = "Example:\n  spearleaf import sites sites.csv --data spearleaf-data")]
    Sites(From),
    /// Describe crews from crews.csv
    #[command(after_help = "Example:\n  spearleaf import crews crews.csv --data spearleaf-data")]
    Crews(From),
    /// Record weather from weather.csv
    #[command(
        after_help = "Example:\n  spearleaf import weather weather.csv --data spearleaf-data"
    )]
    Weather(From),
    /// Register blades from blades.csv
    #[command(after_help = "Example:\n  spearleaf import blades blades.csv --data spearleaf-data")]
    Blades(From),
    /// Record cuts from cuts.csv
    #[command(after_help = "Example:\n  spearleaf import cuts cuts.csv --data spearleaf-data")]
    Cuts(From),
    /// Record cleanings of blades from cleanings.csv
    #[command(
        after_help = "Example:\n  spearleaf import cleanings cleanings.csv --data spearleaf-data"
    )]
    Cleanings(From),
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
    let (from, rows) = match options.what {
        What::Palms(from) => (from, Rows::Palms),
        What::Inspections(from) => (from, Rows::Inspections),
        What::Moves(from) => (from, Rows::Moves),
        What::Sites(from) => (from, Rows::Sites),
        What::Crews(from) => (from, Rows::Crews),
        What::Weather(from) => (from, Rows::Weather),
        What::Blades(from) => return log(LogFile::Blades, &from, talk),
        What::Cuts(from) => return log(LogFile::Cuts, &from, talk),
        What::Cleanings(from) => return log(LogFile::Cleanings, &from, talk),
    };
    // inspections and moves need palms, so a folder that is not there is most likely a slip
    let begins = !matches!(rows, Rows::Inspections | Rows::Moves);
    let office = folder::office(&from.data, begins, talk)?;
    let mut batch = Batch {
        importing: Importing::new(office.state(), office.now(), &from.by),
        notes: Vec::new(),
        already: 0,
    };
    let (taken, unknown) = match rows {
        Rows::Palms => batch.palms(talk, &from, &office)?,
        Rows::Inspections => (batch.inspections(talk, &from, &office)?, false),
        Rows::Moves => (batch.moves(talk, &from, &office)?, false),
        Rows::Sites => (batch.sites(talk, &from)?, false),
        Rows::Crews => (batch.crews(talk, &from)?, false),
        Rows::Weather => (batch.weather(talk, &from, &office)?, false),
    };
    let Some(taken) = taken else {
        return Ok(Outcome::Refused);
    };
    let new = batch.notes.len() as i64;
    office
        .record(batch.notes)
        .map_err(|refused| folder::refused(talk, refused))?;
    say(talk, &from, new, batch.already, &taken)?;
    Ok(if taken.needs_person || unknown {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

fn say(talk: &Talk, from: &From, new: i64, already: i64, taken: &Taken) -> anyhow::Result<()> {
    let args = [
        ("file", name(&from.file).into()),
        ("taken", new.into()),
        ("already", already.into()),
        ("refused", (taken.refused as i64).into()),
    ];
    talk.say(true, &talk.words("cli-taken", &args))?;
    talk.object(&json!({
        "kind": "import", "file": name(&from.file), "taken": new, "already": already, "refused": taken.refused,
    }))?;
    Ok(())
}

/// Files about palms, and about where and by whom they are worked on.
#[derive(Clone, Copy, PartialEq)]
enum Rows {
    Palms,
    Inspections,
    Moves,
    Sites,
    Crews,
    Weather,
}

/// Files about blades.
#[derive(Clone, Copy, PartialEq)]
enum LogFile {
    Blades,
    Cuts,
    Cleanings,
}

/// Takes a file about blades; what the register then finds odd about it is said, and needs a person.
fn log(file: LogFile, from: &From, talk: &Talk) -> anyhow::Result<Outcome> {
    // cuts need palms, so a folder that is not there is most likely a slip
    let office = folder::office(&from.data, file != LogFile::Cuts, talk)?;
    let mut logging = Logging::new(office.state(), &from.by, || office.new_id());
    let (read, now, today) = (
        open(&from.file, &from.reading)?,
        office.now(),
        office.today(),
    );
    let (path, reading) = (&from.file, &from.reading);
    let taken = match file {
        LogFile::Blades => take(talk, path, reading, BladeReader::open(read), |blade| {
            logging.blade(blade, now)
        })?,
        LogFile::Cuts => {
            let known = logging.known();
            let reader = CutReader::open(read, &known).map(|r| r.not_after(today));
            take(talk, path, reading, reader, |row| logging.cut(row))?
        }
        LogFile::Cleanings => {
            let reader = CleaningReader::open(read).map(|r| r.not_after(today));
            take(talk, path, reading, reader, |row| logging.cleaning(row))?
        }
    };
    let Some(taken) = taken else {
        return Ok(Outcome::Refused);
    };
    let (notes, mut odd, already) = logging.done();
    let entries = office
        .record(notes)
        .map_err(|refused| folder::refused(talk, refused))?;
    let ids: HashSet<EntryId> = entries.iter().map(|entry| entry.id).collect();
    let state = office.state();
    let noticed = state.noticed().iter().filter(|n| ids.contains(&n.entry));
    odd.extend(noticed.map(|n| n.finding.clone()));
    for finding in &odd {
        talk.remark(&name(&from.file), finding)?;
    }
    say(talk, from, entries.len() as i64, already, &taken)?;
    let person = odd.iter().any(|f| f.severity >= Severity::Caution);
    Ok(if person || taken.needs_person {
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

    fn moves(
        &mut self,
        talk: &Talk,
        from: &From,
        office: &Office,
    ) -> anyhow::Result<Option<Taken>> {
        let known = self.importing.known();
        let reader = MoveReader::open(open(&from.file, &from.reading)?, &known)
            .map(|r| r.not_after(office.today()));
        take(talk, &from.file, &from.reading, reader, |row| {
            let fate = self.importing.moved(row)?;
            self.keep(fate);
            Ok(())
        })
    }

    fn sites(&mut self, talk: &Talk, from: &From) -> anyhow::Result<Option<Taken>> {
        let reader = SiteReader::open(open(&from.file, &from.reading)?);
        take(talk, &from.file, &from.reading, reader, |site| {
            let fate = self.importing.site(site)?;
            self.keep(fate);
            Ok(())
        })
    }

    fn crews(&mut self, talk: &Talk, from: &From) -> anyhow::Result<Option<Taken>> {
        let reader = CrewReader::open(open(&from.file, &from.reading)?);
        take(talk, &from.file, &from.reading, reader, |crew| {
            let fate = self.importing.crew(crew)?;
            self.keep(fate);
            Ok(())
        })
    }

    fn weather(
        &mut self,
        talk: &Talk,
        from: &From,
        office: &Office,
    ) -> anyhow::Result<Option<Taken>> {
        let reader = WeatherReader::open(open(&from.file, &from.reading)?)
            .map(|r| r.not_after(office.today()));
        take(talk, &from.file, &from.reading, reader, |day| {
            let fate = self.importing.weather(day)?;
            self.keep(fate);
            Ok(())
        })
    }
}
