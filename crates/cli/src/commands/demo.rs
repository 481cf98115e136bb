//! `spearleaf demo`: an invented scenario in a folder of its own, served.

use crate::Outcome;
use crate::commands::serve::{Address, serve};
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use desk::demo;
use desk::office::Office;
use std::path::{Path, PathBuf};
use std::sync::Arc;

const AFTER: &str = "\
Places, owners, people and palms of the demo are invented. A folder that already holds the demo is served again
as it is; any other folder that is not empty is refused.

Example:
  spearleaf demo";

/// Options of `demo`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The folder to fill
    #[arg(value_name = "FOLDER", default_value = "spearleaf-demo")]
    folder: PathBuf,
    #[command(flatten)]
    address: Address,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = if folder::holds_something(&options.folder)? {
        again(&options.folder, talk)?
    } else {
        let office = folder::office(&options.folder, true, talk)?;
        office
            .record(demo::notes(office.today()))
            .map_err(|refused| folder::refused(talk, refused))?;
        office
    };
    serve(
        talk,
        Arc::new(office),
        &options.folder,
        &options.address,
        true,
    )
}

/// The demo of an earlier run, as it was left.
fn again(place: &Path, talk: &Talk) -> anyhow::Result<Office> {
    let refuse = || {
        anyhow::anyhow!(talk.words(
            "cli-not-a-demo",
            &[("folder", place.display().to_string().into())]
        ))
    };
    let office = folder::office(place, false, talk).map_err(|_| refuse())?;
    if office.is_demo() {
        Ok(office)
    } else {
        Err(refuse())
    }
}
