//! What all commands share on the command line.

use crate::commands::Command;
use clap::{Args, Parser};
use desk::measure::Units;
use desk::words::Lang;
use model::Day;

const AFTER: &str = "\
Exit status: 0 done, 1 done with findings that need a person, 2 refused or bad input.
Output goes to standard output, messages and progress to standard error.
Files are UTF-8 CSV with a header, dates like 2026-03-02, SI units; an empty cell means unknown.

Example:
  spearleaf assess --palms palms.csv --inspections inspections.csv";

/// Reads frond loss, forecasts crowns and plans cuts for palm keepers.
#[derive(Parser)]
#[command(name = "spearleaf", version, after_help = AFTER, max_term_width = 100)]
pub struct Cli {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
    /// For all commands.
    #[command(flatten)]
    pub common: Common,
}

/// Options of all commands.
#[derive(Args)]
pub struct Common {
    /// Write for machines: one JSON object a line on standard output
    #[arg(long, global = true)]
    pub json: bool,
    /// The day to take as today, such as 2026-03-02
    #[arg(long, global = true, value_name = "DATE", value_parser = day)]
    pub as_of: Option<Day>,
    /// Language of messages: en or es (else the terminal's)
    #[arg(long, global = true, value_name = "LANGUAGE", value_parser = lang)]
    pub lang: Option<Lang>,
    /// Units of messages: metric or us; files are always SI
    #[arg(long, global = true, value_name = "UNITS", value_parser = units)]
    pub units: Option<Units>,
}

/// A date option.
pub fn day(text: &str) -> Result<Day, String> {
    Day::parse(text).ok_or_else(|| "a date like 2026-03-02 was expected".to_owned())
}

fn lang(text: &str) -> Result<Lang, String> {
    Lang::parse(text).ok_or_else(|| "en or es was expected".to_owned())
}

fn units(text: &str) -> Result<Units, String> {
    Units::parse(text).ok_or_else(|| "metric or us was expected".to_owned())
}
