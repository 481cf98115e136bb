//! `exposures.csv`.

use super::{Between, Exposure, Nearby, Passed, Step, TraceAnswer, Way};
use model::Day;

/// Columns of `exposures.csv`.
pub const EXPOSURE_COLUMNS: [&str; 20] = [
    "what",
    "tag",
    "species",
    "site",
    "host",
    "set",
    "generation",
    "when",
    "possibly_from",
    "last",
    "times",
    "from",
    "blade",
    "left",
    "reached",
    "cleanings_between",
    "cuts_between",
    "chain",
    "watch_until",
    "next_looks",
];

/// One row for each exposed palm, each candidate source and each palm to watch near by, in the order of the answer.
pub fn exposure_rows(answer: &TraceAnswer) -> impl Iterator<Item = [String; 20]> {
    let exposed = answer.exposed.iter().map(|one| row("exposed", one));
    let sources = answer.sources.iter().map(|one| row("source", one));
    exposed.chain(sources).chain(answer.nearby.iter().map(near))
}

fn row(what: &str, one: &Exposure) -> [String; 20] {
    // the passage at the palm itself: the last one to it, or the first one from it
    let step = match what {
        "exposed" => one.way.chain.last(),
        _ => one.way.chain.first(),
    };
    let of_step = |of: fn(&Step) -> String| step.map_or_else(String::new, of);
    [
        what.to_owned(),
        one.palm.tag.clone(),
        one.palm.species.clone(),
        one.palm.site.clone(),
        one.host.word().to_owned(),
        if one.certain { "certain" } else { "possible" }.to_owned(),
        one.way.generation.to_string(),
        one.way.when.to_string(),
        one.first().when.to_string(),
        one.last.to_string(),
        one.times.to_string(),
        of_step(|step| step.from.clone()),
        of_step(|step| step.blade.clone()),
        of_step(|step| step.left.to_string()),
        of_step(|step| step.reached.to_string()),
        of_step(|step| cleanings(&step.between)),
        of_step(|step| step.cuts_between.to_string()),
        chain(&one.way),
        one.watch_until
            .map_or_else(String::new, |day| day.to_string()),
        days(&one.looks),
    ]
}

fn near(one: &Nearby) -> [String; 20] {
    let mut row: [String; 20] = std::array::from_fn(|_| String::new());
    row[0] = "nearby".to_owned();
    row[1] = one.palm.tag.clone();
    row[2] = one.palm.species.clone();
    row[3] = one.palm.site.clone();
    row[4] = one.host.word().to_owned();
    row[18] = one
        .watch_until
        .map_or_else(String::new, |day| day.to_string());
    row[19] = days(&one.looks);
    row
}

fn days(days: &[Day]) -> String {
    let days: Vec<String> = days.iter().map(ToString::to_string).collect();
    days.join(";")
}

/// `2026-03-02T10:00:00Z bleach short`, `;` between.
fn cleanings(between: &[Between]) -> String {
    let one = |b: &Between| {
        let agent = if b.agent.is_empty() { "?" } else { &b.agent };
        format!("{} {agent} {}", b.at, passed(b.passed))
    };
    let all: Vec<String> = between.iter().map(one).collect();
    all.join(";")
}

/// The file word of why a cleaning does not end a chain.
pub fn passed(passed: Passed) -> &'static str {
    match passed {
        Passed::Short(_) => "short",
        Passed::Unknown(_) => "unknown",
        Passed::OrderOpen => "order-open",
    }
}

/// `A-1 >saw-1> A-2 >saw-3> A-9`.
fn chain(way: &Way) -> String {
    let mut out = way
        .chain
        .first()
        .map_or_else(String::new, |step| step.from.clone());
    for step in &way.chain {
        out.push_str(&format!(" >{}> {}", step.blade, step.to));
    }
    out
}
