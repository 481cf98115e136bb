//! Words to people (standard error and output) and objects to machines (standard output).

use crate::args::Common;
use crate::json;
use desk::intake::Refusal;
use desk::measure::Measure;
use desk::words::{Lang, Value, Words};
use desk::world::World;
use model::{Day, Finding, Severity};
use serde_json::json;
use std::io::{self, Write};

/// How this run speaks, and which day it takes for today.
pub struct Talk {
    /// Units and language of messages.
    pub measure: Measure,
    /// Whether standard output is for machines.
    pub json: bool,
    /// `--as-of`, if given.
    pub as_of: Option<Day>,
}

impl Talk {
    /// From the options and the terminal's language.
    pub fn new(common: &Common) -> Talk {
        let lang = common.lang.unwrap_or_else(terminal_language);
        let units = common.units.unwrap_or_default();
        Talk {
            measure: Measure::new(units, Words::new(lang)),
            json: common.json,
            as_of: common.as_of,
        }
    }

    /// Today: `--as-of`, else the day on the wall calendar here.
    pub fn today(&self) -> Day {
        World::here("", self.as_of).today()
    }

    /// The last day on which something can have happened: what is dated later is a slip.
    pub fn latest_day(&self) -> Day {
        self.today().max(World::here("", None).today())
    }

    /// Words of a code.
    pub fn words(&self, code: &str, args: &[(&'static str, Value)]) -> String {
        self.measure.words.text(code, args)
    }

    /// A line for people: on standard output, or on standard error where that is for machines or data.
    pub fn say(&self, to_stdout: bool, line: &str) -> io::Result<()> {
        if to_stdout && !self.json {
            writeln!(io::stdout(), "{line}")
        } else {
            writeln!(io::stderr(), "{line}")
        }
    }

    /// A message beside the work, on standard error.
    pub fn note(&self, line: &str) {
        // a closed standard error must not stop the work
        let _ = writeln!(io::stderr(), "{line}");
    }

    /// An object for machines.
    pub fn object(&self, value: &serde_json::Value) -> io::Result<()> {
        if self.json {
            writeln!(io::stdout(), "{value}")
        } else {
            Ok(())
        }
    }

    /// A refusal: words on standard error, an object for machines.
    pub fn refusal(&self, file: &str, refusal: &Refusal) -> io::Result<()> {
        self.note(&refusal.say(file, &self.measure));
        self.object(&json::refusal(file, refusal, &self.measure))
    }

    /// A remark on a file.
    pub fn remark(&self, file: &str, finding: &Finding) -> io::Result<()> {
        let what = self.measure.finding(finding);
        self.note(&self.words(
            "cli-of-file",
            &[("file", file.to_owned().into()), ("what", what.into())],
        ));
        let mut object = json::finding(finding, &self.measure);
        object["kind"] = json!("remark");
        object["file"] = json!(file);
        self.object(&object)
    }

    /// A finding about a palm as one line.
    pub fn of_palm(&self, tag: &str, finding: &Finding) -> String {
        let severity = self.measure.words.say(severity_code(finding.severity));
        let args = [
            ("tag", tag.to_owned().into()),
            ("severity", severity.into()),
            ("what", self.measure.finding(finding).into()),
        ];
        self.words("cli-of-palm", &args)
    }

    /// Why nothing was done.
    pub fn error(&self, error: &anyhow::Error) {
        self.note(&format!("spearleaf: {error:#}"));
        let _ = self.object(&json!({"kind": "error", "message": format!("{error:#}")}));
    }
}

fn severity_code(severity: Severity) -> &'static str {
    match severity {
        Severity::Info => "cli-severity-info",
        Severity::Caution => "cli-severity-caution",
        Severity::Act => "cli-severity-act",
        Severity::Refuse => "cli-severity-refuse",
    }
}

/// The terminal's language by the usual variables, the strongest first; English where we do not speak it.
fn terminal_language() -> Lang {
    let set = ["LC_ALL", "LC_MESSAGES", "LANG"]
        .iter()
        .filter_map(|name| std::env::var(name).ok());
    set.into_iter()
        .find(|value| !value.is_empty())
        .and_then(|value| Lang::parse(&value))
        .unwrap_or_default()
}
