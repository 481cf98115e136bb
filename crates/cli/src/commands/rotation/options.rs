//! Options of `rotation`.

use crate::input::Reading;
use clap::Args;
use std::path::PathBuf;

const AFTER: &str = "\
One crew cuts one palm after the other, in the order given, with a clean set for each; the set laid down is brushed,
soaks and is rinsed beside the cutting, by somebody else. No schedule in that order ends sooner. A bath is changed
after ten palms or two hours.
The file of --cuts has one row a cut: tag, minutes, and where you know it needs_clean (yes or no); empty means yes,
unless the cut before was at the same palm.
Exit status 1 where minutes told by --soak are not enough for --agent, or rows were refused under --skip-bad; 2 also where
no source says how long the agent must act.
The label of the agent, local code and the machine's manual come before every plan; a chain saw is taken apart to be
cleaned.

Examples:
  spearleaf rotation --palms 20 --minutes-each 6 --sets 2 --agent bleach > rotation.csv
  spearleaf rotation --cuts round.csv --sets 3 --soak 10 --json";

/// Options of `rotation`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// So many palms, all alike
    #[arg(long, value_name = "NUMBER", requires = "minutes_each", conflicts_with = "cuts", required_unless_present = "cuts",
        value_parser = clap::value_parser!(u16).range(1..=10_000))]
    pub palms: Option<u16>,
    /// Minutes of cutting for each of them
    #[arg(long, value_name = "MINUTES", requires = "palms", value_parser = minutes)]
    pub minutes_each: Option<f64>,
    /// The cuts of the round in their order (- for standard input)
    #[arg(long, value_name = "FILE")]
    pub cuts: Option<PathBuf>,
    /// Blade sets
    #[arg(long, value_name = "NUMBER", default_value_t = 2, value_parser = clap::value_parser!(u16).range(1..=1000))]
    pub sets: u16,
    /// Minutes in the bath; else as long as the strictest source asks of --agent
    #[arg(long, value_name = "MINUTES", required_unless_present = "agent", value_parser = minutes)]
    pub soak: Option<f64>,
    /// What they soak in: a key of the cleaner table such as bleach, or its name
    #[arg(long, value_name = "AGENT")]
    pub agent: Option<String>,
    /// Percent by volume of the product in the bath; else that of the first mix in the table that can be enough
    #[arg(long, value_name = "PERCENT", requires = "agent", value_parser = percent)]
    pub strength: Option<f64>,
    /// Key of the disorder it must do for; else all that the sources of the agent name
    #[arg(long, value_name = "KEY", requires = "agent")]
    pub disorder: Option<String>,
    /// Minutes of brushing before the bath (assumed, not read)
    #[arg(long, value_name = "MINUTES", default_value = "1", value_parser = minutes)]
    pub brush: f64,
    /// Minutes of rinsing and drying after it (assumed, not read)
    #[arg(long, value_name = "MINUTES", default_value = "1", value_parser = minutes)]
    pub rinse: f64,
    /// Sets that the bath holds at a time; all unless told
    #[arg(long, value_name = "NUMBER", value_parser = clap::value_parser!(u16).range(1..))]
    pub bath_holds: Option<u16>,
    /// Write rotation.csv here instead of to standard output
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,
    /// How the file is read.
    #[command(flatten)]
    pub reading: Reading,
}

/// Minutes of a day at the most.
fn minutes(text: &str) -> Result<f64, String> {
    within(text, 1440.0).ok_or_else(|| "minutes from 0 to 1440 were expected".to_owned())
}

fn percent(text: &str) -> Result<f64, String> {
    within(text, 100.0).ok_or_else(|| "a percentage from 0 to 100 was expected".to_owned())
}

fn within(text: &str, most: f64) -> Option<f64> {
    let value: f64 = text.trim().parse().ok()?;
    (0.0..=most).contains(&value).then_some(value)
}
