//! A trace in words.

use crate::clock;
use crate::tracing::{Between, Exposure, HostWord, Nearby, Passed, Step, TraceAnswer, Travel};
use crate::views::blades::log::agent_name;
use crate::views::said::Speaker;
use model::knowledge::DayRange;
use model::{Day, Finding};

/// A palm that a chain of blades joins to the case.
#[derive(Clone, PartialEq, Debug)]
pub struct ExposedRow {
    /// Tag.
    pub tag: String,
    /// Species as written; may be empty.
    pub species: String,
    /// Site; may be empty.
    pub site: String,
    /// `certain` or `possible`.
    pub key: &'static str,
    /// When it was first exposed (a source: last cut by the blade that leads to the case).
    pub when: String,
    /// The chain, a sentence a passage.
    pub chain: Vec<String>,
    /// Whether it is a host.
    pub host: String,
    /// Until when it is watched; empty for a source.
    pub watch: String,
    /// When to look at it; may be empty.
    pub looks: String,
}

/// A palm to watch because of where it stands.
#[derive(Clone, PartialEq, Debug)]
pub struct NearRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// How far, in words.
    pub distance: String,
    /// Whether it is a host.
    pub host: String,
    /// Until when it is watched.
    pub watch: String,
    /// When to look at it; may be empty.
    pub looks: String,
}

/// How many palms.
pub fn summary(speaker: &Speaker, answer: &TraceAnswer) -> String {
    let certain = answer.exposed.iter().filter(|one| one.certain).count() as i64;
    let args = [
        ("certain", certain.into()),
        ("possible", (answer.exposed.len() as i64 - certain).into()),
        ("sources", (answer.sources.len() as i64).into()),
    ];
    speaker.text("trace-summary", &args)
}

/// What was reckoned with: the case, its times, the latency.
pub fn reckoned(speaker: &Speaker, answer: &TraceAnswer) -> Vec<String> {
    let measure = &speaker.measure;
    let mut lines: Vec<String> = Vec::new();
    for case in &answer.cases {
        let from = match case.possibly_from {
            Some(from) => clock::says(measure, from),
            None => speaker.say("trace-from-the-start"),
        };
        let args = [
            ("tag", case.palm.tag.clone().into()),
            ("seen", measure.date(case.seen_sick).into()),
            ("surely", clock::says(measure, case.surely_from).into()),
            ("possibly", from.into()),
            ("cuts", (case.cuts as i64).into()),
        ];
        lines.push(speaker.text("trace-case", &args));
    }
    let range = [("range", range(speaker, answer.latency.range).into())];
    let code = if answer.latency.by_keeper {
        "trace-latency-keeper"
    } else {
        "trace-latency"
    };
    lines.push(speaker.text(code, &range));
    lines
}

fn range(speaker: &Speaker, range: DayRange) -> String {
    let days = |n: u32| speaker.measure.duration(f64::from(n));
    match (range.min, range.max) {
        (Some(low), Some(high)) => {
            let args = [("low", days(low).into()), ("high", days(high).into())];
            speaker.text("measure-range", &args)
        }
        (Some(low), None) => speaker.text("trace-at-least", &[("n", days(low).into())]),
        (None, Some(high)) => speaker.text("trace-at-most", &[("n", days(high).into())]),
        (None, None) => speaker.say("common-unknown"),
    }
}

/// Exposed palms by generation.
pub fn generations(speaker: &Speaker, answer: &TraceAnswer) -> Vec<(String, Vec<ExposedRow>)> {
    let mut all: Vec<(u32, Vec<ExposedRow>)> = Vec::new();
    for one in &answer.exposed {
        let row = row(speaker, one, false);
        match all.last_mut() {
            Some((generation, rows)) if *generation == one.way.generation => rows.push(row),
            _ => all.push((one.way.generation, vec![row])),
        }
    }
    all.into_iter()
        .map(|(n, rows)| {
            let args = [
                ("n", i64::from(n).into()),
                ("count", (rows.len() as i64).into()),
            ];
            (speaker.text("trace-generation", &args), rows)
        })
        .collect()
}

/// One palm of the trace.
pub fn row(speaker: &Speaker, one: &Exposure, source: bool) -> ExposedRow {
    let when = [("when", clock::says(&speaker.measure, one.way.when).into())];
    ExposedRow {
        tag: one.palm.tag.clone(),
        species: one.palm.species.clone(),
        site: one.palm.site.clone(),
        key: if one.certain { "certain" } else { "possible" },
        when: speaker.text(
            if source {
                "trace-source-when"
            } else {
                "trace-exposed-when"
            },
            &when,
        ),
        chain: one
            .way
            .chain
            .iter()
            .map(|step| sentence(speaker, step))
            .collect(),
        host: host(speaker, one.host),
        watch: if source {
            String::new()
        } else {
            watch(speaker, one.watch_until)
        },
        looks: looks(speaker, &one.looks),
    }
}

/// One passage of a blade in words, with all that lay between.
fn sentence(speaker: &Speaker, step: &Step) -> String {
    let measure = &speaker.measure;
    let args = [
        ("blade", step.blade.clone().into()),
        ("from", step.from.clone().into()),
        ("left", clock::says(measure, step.left).into()),
        ("to", step.to.clone().into()),
        ("reached", clock::says(measure, step.reached).into()),
        ("between", between(speaker, step).into()),
    ];
    speaker.text("trace-step", &args)
}

fn between(speaker: &Speaker, step: &Step) -> String {
    let mut parts: Vec<String> = step.between.iter().map(|b| cleaning(speaker, b)).collect();
    if parts.is_empty() {
        parts.push(speaker.say("trace-no-cleaning"));
    }
    if !step.cut_between.is_empty() {
        let tags = [("tags", step.cut_between.join(", ").into())];
        parts.push(speaker.text("trace-cut-between", &tags));
    }
    parts.join("; ")
}

fn cleaning(speaker: &Speaker, between: &Between) -> String {
    let measure = &speaker.measure;
    let agent = match between.agent.as_str() {
        "" => speaker.say("blades-agent-unknown"),
        agent => agent_name(speaker, agent),
    };
    let when = ("when", clock::says(measure, between.at).into());
    let agent = ("agent", agent.into());
    match between.passed {
        Passed::Short(Some(missing)) => {
            let n = ("n", measure.number(missing, 1).into());
            speaker.text("trace-cleaned-short", &[when, agent, n])
        }
        Passed::Short(None) => speaker.text("trace-cleaned-weak", &[when, agent]),
        Passed::Unknown(_) => speaker.text("trace-cleaned-unknown", &[when, agent]),
        Passed::OrderOpen => speaker.text("trace-cleaned-order-open", &[when, agent]),
    }
}

fn host(speaker: &Speaker, host: HostWord) -> String {
    speaker.say(&format!("trace-host-{}", host.word()))
}

fn watch(speaker: &Speaker, until: Option<Day>) -> String {
    match until {
        Some(day) => {
            let args = [("date", speaker.measure.date(day).into())];
            speaker.text("trace-watch-until", &args)
        }
        None => speaker.say("trace-watch-open"),
    }
}

fn looks(speaker: &Speaker, days: &[Day]) -> String {
    if days.is_empty() {
        return String::new();
    }
    let days: Vec<String> = days.iter().map(|day| speaker.measure.date(*day)).collect();
    speaker.text("trace-looks", &[("dates", days.join("; ").into())])
}

/// Palms to watch by distance and host.
pub fn nearby(speaker: &Speaker, answer: &TraceAnswer) -> Vec<NearRow> {
    let row = |near: &Nearby| NearRow {
        tag: near.palm.tag.clone(),
        species: near.palm.species.clone(),
        distance: match near.distance {
            Some(metres) => {
                let args = [("distance", speaker.measure.length(metres).into())];
                speaker.text("trace-away", &args)
            }
            None => speaker.say("trace-same-site"),
        },
        host: host(speaker, near.host),
        watch: watch(speaker, near.watch_until),
        looks: looks(speaker, &near.looks),
    };
    answer.nearby.iter().map(row).collect()
}

/// All findings but the one that is said first.
pub fn findings(answer: &TraceAnswer) -> Vec<Finding> {
    const FIRST: [&str; 3] = [
        "tracing-not-on-blades",
        "tracing-spread-unknown",
        "tracing-not-named",
    ];
    let said = answer.travel != Travel::OnBlades;
    let rest = answer
        .findings
        .iter()
        .filter(|f| !(said && FIRST.contains(&f.code)));
    rest.cloned().collect()
}
