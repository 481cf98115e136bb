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
    let place = &options.folder;
    let fresh = !folder::holds_something(place)?;
    let office = if fresh {
        folder::office(place, true, talk)?
    } else {
        again(place, talk)?
    };
    if office.ledger().head()?.seq == 0 {
        office
            .record(demo::notes(office.today()))
            .map_err(|refused| folder::refused(talk, refused))?;
    }
    serve(talk, Arc::new(office), place, &options.address, true)
}

/// The demo of an earlier run, as it was left; or a ledger still empty because that run was cut short.
fn again(place: &Path, talk: &Talk) -> anyhow::Result<Office> {
    let folder = ("folder", place.display().to_string().into());
    let refuse = || anyhow::anyhow!(talk.words("cli-not-a-demo", std::slice::from_ref(&folder)));
    let office = folder::office(place, false, talk).map_err(|_| refuse())?;
    let ours = office.is_demo() || office.ledger().head()?.seq == 0;
    if ours { Ok(office) } else { Err(refuse()) }
}
