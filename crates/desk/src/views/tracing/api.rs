//! `/api/trace`: a trace for machines: numbers, times and stable codes, no sentences.

use super::{Question, made};
use crate::office::Office;
use crate::tracing::{Exposure, Nearby, Step, TraceAnswer, Travel, passed};
use crate::views::api::findings;
use model::Finding;
use serde_json::{Value, json};

/// The trace of a question, or why there is none.
pub fn trace(office: &Office, question: &Question) -> Result<Value, Finding> {
    made(office, question).map(|answer| value(&answer))
}

fn value(answer: &TraceAnswer) -> Value {
    let exposed: Vec<Value> = answer.exposed.iter().map(exposure).collect();
    let sources: Vec<Value> = answer.sources.iter().map(exposure).collect();
    let nearby: Vec<Value> = answer.nearby.iter().map(near).collect();
    json!({
        "as_of": answer.as_of.to_string(), "disorder": answer.disorder, "travel": travel(answer.travel),
        "latency_days": { "min": answer.latency.range.min, "max": answer.latency.range.max, "by_keeper": answer.latency.by_keeper },
        "log": { "cuts": answer.log.cuts, "cleanings": answer.log.cleanings, "blades": answer.log.blades, "palms": answer.log.palms },
        "cases": answer.cases.iter().map(|case| json!({
            "tag": case.palm.tag, "seen_sick": case.seen_sick.to_string(), "surely_from": case.surely_from.to_string(),
            "possibly_from": case.possibly_from.map(|m| m.to_string()), "cuts": case.cuts,
        })).collect::<Vec<_>>(),
        "exposed": exposed, "sources": sources, "nearby": nearby, "findings": findings(&answer.findings),
    })
}

fn travel(travel: Travel) -> &'static str {
    match travel {
        Travel::OnBlades => "on-blades",
        Travel::NotOnBlades => "not-on-blades",
        Travel::Unknown => "unknown",
        Travel::NotNamed => "not-named",
    }
}

fn exposure(one: &Exposure) -> Value {
    json!({
        "tag": one.palm.tag, "species": one.palm.species, "site": one.palm.site, "host": one.host.word(),
        "certain": one.certain, "generation": one.way.generation, "when": one.way.when.to_string(),
        "chain": one.way.chain.iter().map(step).collect::<Vec<_>>(),
        "times": one.times, "watch_until": one.watch_until.map(|d| d.to_string()),
        "looks": one.looks.iter().map(ToString::to_string).collect::<Vec<_>>(),
    })
}

fn step(step: &Step) -> Value {
    let between: Vec<Value> = step
        .between
        .iter()
        .map(|b| json!({ "at": b.at.to_string(), "agent": b.agent, "passed": passed(b.passed) }))
        .collect();
    json!({
        "blade": step.blade, "from": step.from, "left": step.left.to_string(), "to": step.to,
        "reached": step.reached.to_string(), "cleanings": between, "cut_between": step.cut_between,
    })
}

fn near(one: &Nearby) -> Value {
    json!({
        "tag": one.palm.tag, "species": one.palm.species, "distance_m": one.distance.map(|m| m.0),
        "host": one.host.word(), "watch_until": one.watch_until.map(|d| d.to_string()),
        "looks": one.looks.iter().map(ToString::to_string).collect::<Vec<_>>(),
    })
}
