//! The program `spearleaf`: palms, counts, readings, cut plans.
//!
//! Exit status: 0 done, 1 done with findings that need a person, 2 refused or bad input.

mod args;
mod commands;
mod folder;
mod gather;
mod input;
mod json;
mod output;
mod progress;
mod talk;

use args::Cli;
use clap::Parser;
use std::process::ExitCode;
use talk::Talk;

/// How a command ended.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Outcome {
    /// Done, nothing to say.
    Done,
    /// Done, and a person must look at something.
    NeedsPerson,
    /// Not done: refused, or bad input.
    Refused,
}

fn main() -> ExitCode {
    let cli = Cli::parse();
    let talk = Talk::new(&cli.common);
    let outcome = match commands::run(cli.command, &talk) {
        Ok(outcome) => outcome,
        // whoever reads our output has seen enough: not an error
        Err(error) if is_closed_pipe(&error) => Outcome::Done,
        Err(error) => {
            talk.error(&error);
            Outcome::Refused
        }
    };
    ExitCode::from(outcome as u8)
}

fn is_closed_pipe(error: &anyhow::Error) -> bool {
    error.chain().any(|cause| {
        let io = cause.downcast_ref::<std::io::Error>();
        io.is_some_and(|e| e.kind() == std::io::ErrorKind::BrokenPipe)
    })
}
