//! From CSV files to a yard: what `assess` and `cuts` have in common.

use crate::input::{Reading, Taken, name, open, take};
use crate::talk::Talk;
use clap::Args;
use desk::assess::{Gather, Yard};
use desk::intake::{ClimateReader, InspectionReader, Known, PalmReader, climates};
use model::{Arg, Climate, Finding, Knowledge, Palm, Severity};
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

/// The CSV files that readings and plans are made from.
#[derive(Args)]
pub struct Files {
    /// palms.csv (- for standard input)
    #[arg(long, value_name = "FILE")]
    pub palms: PathBuf,
    /// inspections.csv (- for standard input)
    #[arg(long, value_name = "FILE")]
    pub inspections: PathBuf,
    /// climate.csv: monthly means of the sites
    #[arg(long, value_name = "FILE")]
    pub climate: Option<PathBuf>,
    /// How the files are read.
    #[command(flatten)]
    pub reading: Reading,
}

/// Palms and inspections, and whether something about the files needs a person.
pub struct Gathered {
    /// The palms.
    pub yard: Yard<'static>,
    /// Rows refused under `--skip-bad`, or a remark that weighs.
    pub needs_person: bool,
}

/// Reads all files. `None`: refused, and said so.
pub fn gather(talk: &Talk, files: &Files) -> anyhow::Result<Option<Gathered>> {
    let inputs = [&files.palms, &files.inspections]
        .into_iter()
        .chain(&files.climate);
    let stdin = inputs.filter(|path| path.as_os_str() == "-").count();
    anyhow::ensure!(
        stdin <= 1,
        "only one of the files can be standard input (-)"
    );
    let mut gather = Gather::new(Knowledge::embedded());
    let mut known = Known::default();
    let mut sites = BTreeSet::new();
    let palms = palms(talk, files, |palm| {
        known.add(&palm);
        sites.insert(palm.site.clone());
        gather.palm(palm);
    })?;
    let Some(palms) = palms else { return Ok(None) };
    let Some(looks) = looks(talk, files, &known, &mut gather)? else {
        return Ok(None);
    };
    let Some((months, by_site)) = climate(talk, files)? else {
        return Ok(None);
    };
    if files.climate.is_some() {
        for site in sites.iter().filter(|site| !by_site.contains_key(*site)) {
            let finding = Finding::new("assess-no-climate", Severity::Info)
                .with("site", Arg::Text(site.clone()));
            talk.remark(&name(&files.palms), &finding)?;
        }
    }
    gather.climates(by_site);
    let needs_person = [&palms, &looks, &months]
        .into_iter()
        .any(|taken| taken.needs_person);
    Ok(Some(Gathered {
        yard: gather.done(),
        needs_person,
    }))
}

fn palms(talk: &Talk, files: &Files, mut keep: impl FnMut(Palm)) -> anyhow::Result<Option<Taken>> {
    let read = open(&files.palms, &files.reading)?;
    let rows = PalmReader::open(read).map(|rows| rows.not_after(talk.latest_day()));
    take(talk, &files.palms, &files.reading, rows, |palm| {
        keep(palm);
        Ok(())
    })
}

fn looks(
    talk: &Talk,
    files: &Files,
    known: &Known,
    gather: &mut Gather,
) -> anyhow::Result<Option<Taken>> {
    let read = open(&files.inspections, &files.reading)?;
    let rows = InspectionReader::open(read, known).map(|rows| rows.not_after(talk.latest_day()));
    take(talk, &files.inspections, &files.reading, rows, |row| {
        gather.inspection(row.palm, row.inspection);
        Ok(())
    })
}

fn climate(
    talk: &Talk,
    files: &Files,
) -> anyhow::Result<Option<(Taken, BTreeMap<String, Climate>)>> {
    let Some(path) = &files.climate else {
        return Ok(Some((Taken::default(), BTreeMap::new())));
    };
    let mut months = Vec::new();
    let taken = take(
        talk,
        path,
        &files.reading,
        ClimateReader::open(open(path, &files.reading)?),
        |row| {
            months.push(row);
            Ok(())
        },
    )?;
    let Some(taken) = taken else { return Ok(None) };
    let (by_site, incomplete) = climates(months);
    for finding in &incomplete {
        talk.remark(&name(path), finding)?;
    }
    Ok(Some((taken, by_site)))
}
