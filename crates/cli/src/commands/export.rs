//! `spearleaf export`: a data folder in open formats.

use crate::Outcome;
use crate::folder;
use crate::output::Output;
use crate::talk::Talk;
use clap::{Args, ValueEnum};
use desk::export;
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
palms, inspections, moves, weather, sites, crews, blades, cuts and cleanings are CSV that import reads back the same;
touches is what trace reads; entries is everything ever recorded, one JSON
object a line; geojson is RFC 7946, longitude first, without a geometry where the position is not known.

Examples:
  spearleaf export palms spearleaf-data > palms.csv
  spearleaf export geojson spearleaf-data --out palms.geojson";

/// Options of `export`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// What to write
    #[arg(value_enum, value_name = "WHAT")]
    what: What,
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Write here instead of to standard output
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

#[derive(Clone, Copy, ValueEnum)]
enum What {
    /// palms.csv
    Palms,
    /// inspections.csv
    Inspections,
    /// moves.csv
    Moves,
    /// sites.csv
    Sites,
    /// crews.csv
    Crews,
    /// weather.csv
    Weather,
    /// blades.csv
    Blades,
    /// cuts.csv
    Cuts,
    /// cleanings.csv
    Cleanings,
    /// touches.csv: cuts and cleanings as the command trace reads them
    Touches,
    /// Every entry, one JSON object a line
    Entries,
    /// GeoJSON (RFC 7946)
    Geojson,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let path = options.out.unwrap_or_else(|| PathBuf::from("-"));
    // the ledger is opened first: a folder without one must not leave an empty file behind
    let count = match options.what {
        What::Entries => {
            let ledger = folder::ledger(&options.data)?;
            let mut out = Output::create(&path)?;
            let count = export::entries(&ledger, &mut out)?;
            out.finish().map(|()| count)?
        }
        table => {
            let state = folder::office(&options.data, false, talk)?.state();
            let mut out = Output::create(&path)?;
            let count = match table {
                What::Inspections => export::inspections(&state, &mut out)?,
                What::Moves => export::moves(&state, &mut out)?,
                What::Sites => export::sites(&state, &mut out)?,
                What::Crews => export::crews(&state, &mut out)?,
                What::Weather => export::weather(&state, &mut out)?,
                What::Blades => export::blades(&state, &mut out)?,
                What::Cuts => export::cuts(&state, &mut out)?,
                What::Cleanings => export::cleanings(&state, &mut out)?,
                What::Touches => export::touches(&state, &mut out)?,
                What::Geojson => export::geojson(&state, &mut out)?,
                What::Palms | What::Entries => export::palms(&state, &mut out)?,
            };
            out.finish().map(|()| count)?
        }
    };
    if path.as_os_str() != "-" {
        let file = path.display().to_string();
        talk.say(
            true,
            &talk.words("cli-written", &[("file", file.clone().into())]),
        )?;
        talk.object(&json!({"kind": "export", "file": file, "rows": count}))?;
    }
    Ok(Outcome::Done)
}
