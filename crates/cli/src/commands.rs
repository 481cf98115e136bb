//! One file a command: its options, its help with an example, and what it does.

mod assess;
mod backup;
mod cuts;
mod demo;
mod estimate;
mod export;
mod feeding;
mod import;
mod judge;
mod moved;
mod reach;
mod restore;
mod rotation;
mod rounds;
mod season;
mod serve;
mod sheet;
mod trace;
mod verify;
mod walk;
mod water;

use crate::Outcome;
use crate::talk::Talk;
use clap::Subcommand;

/// All commands.
#[derive(Subcommand)]
pub enum Command {
    /// Fill a folder with an invented demo and serve it
    Demo(demo::Options),
    /// Serve the pages of a data folder
    Serve(serve::Options),
    /// Take palms or inspections from a CSV file into a data folder
    Import(import::Options),
    /// Read palms and forecast their crowns from CSV files alone
    Assess(assess::Options),
    /// Plan cuts, or answer an asked-for cut, from CSV files alone
    Cuts(cuts::Options),
    /// Trace by which blades a disorder may have travelled, from a CSV file of touches
    Trace(trace::Options),
    /// Plan blade sets in rotation: which cuts, which soak, how long to wait
    Rotation(rotation::Options),
    /// Plan a day: which crew goes to which palms, in which order, at what time
    Rounds(rounds::Options),
    /// Judge what could ail palms, from a CSV file of signs alone
    Judge(judge::Options),
    /// Show moved palms: what was promised for each, when to look, whether it holds
    Moved(moved::Options),
    /// Show which palms want water today and in the coming days, and how much
    Water(water::Options),
    /// Show what palms are to be fed, what bars it, and whether the crown answered
    Feeding(feeding::Options),
    /// Say with which tool and from where to get at a palm
    Reach(reach::Options),
    /// Order the palms of a site for a walk: healthy before ill, then the shortest way
    Walk(walk::Options),
    /// Plan when to come back to each site, and write it for calendars
    Season(season::Options),
    /// Estimate what cuts take and cost, with what is assumed
    Estimate(estimate::Options),
    /// Write a data folder out in open formats
    Export(export::Options),
    /// Make a sheet of paper as PDF: labels, clauses, the report of a trace
    Sheet(sheet::Options),
    /// Write a data folder's ledger into one file
    Backup(backup::Options),
    /// Make a data folder from a backup
    Restore(restore::Options),
    /// Prove that a data folder's ledger is whole
    Verify(verify::Options),
}

/// Runs a command.
pub fn run(command: Command, talk: &Talk) -> anyhow::Result<Outcome> {
    match command {
        Command::Demo(options) => demo::run(options, talk),
        Command::Serve(options) => serve::run(options, talk),
        Command::Import(options) => import::run(options, talk),
        Command::Assess(options) => assess::run(options, talk),
        Command::Cuts(options) => cuts::run(options, talk),
        Command::Trace(options) => trace::run(options, talk),
        Command::Rotation(options) => rotation::run(options, talk),
        Command::Rounds(options) => rounds::run(options, talk),
        Command::Judge(options) => judge::run(options, talk),
        Command::Moved(options) => moved::run(options, talk),
        Command::Water(options) => water::run(options, talk),
        Command::Feeding(options) => feeding::run(options, talk),
        Command::Reach(options) => reach::run(options, talk),
        Command::Walk(options) => walk::run(options, talk),
        Command::Season(options) => season::run(options, talk),
        Command::Estimate(options) => estimate::run(options, talk),
        Command::Export(options) => export::run(options, talk),
        Command::Sheet(options) => sheet::run(options, talk),
        Command::Backup(options) => backup::run(options, talk),
        Command::Restore(options) => restore::run(options, talk),
        Command::Verify(options) => verify::run(options, talk),
    }
}
