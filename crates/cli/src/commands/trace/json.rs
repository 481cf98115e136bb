//! A trace as objects for machines.

use crate::json;
use desk::measure::Measure;
use desk::tracing::{
    Between, CaseTold, Exposure, Nearby, Passed, Stand, Step, TraceAnswer, Travel, Way, passed,
};
use model::Finding;
use serde_json::{Value, json};

/// A finding on the log or the trace.
pub fn finding(finding: &Finding, measure: &Measure) -> Value {
    let mut object = json::finding(finding, measure);
    object["kind"] = json!("remark");
    object
}

/// Everything a trace found: the question first, then palm by palm.
pub fn answer(answer: &TraceAnswer) -> impl Iterator<Item = Value> {
    let head = std::iter::once(head(answer));
    let exposed = answer.exposed.iter().map(|one| exposure("exposed", one));
    let sources = answer.sources.iter().map(|one| exposure("source", one));
    head.chain(exposed)
        .chain(sources)
        .chain(answer.nearby.iter().map(nearby))
}

fn head(answer: &TraceAnswer) -> Value {
    let sources: Vec<String> = answer
        .latency
        .sources
        .iter()
        .map(ToString::to_string)
        .collect();
    json!({
        "kind": "trace",
        "as_of": answer.as_of.to_string(),
        "disorder": answer.disorder,
        "travels_on_blades": match answer.travel {
            Travel::OnBlades => Some(true),
            Travel::NotOnBlades => Some(false),
            Travel::Unknown | Travel::NotNamed => None,
        },
        "latency_days": {
            "min": answer.latency.range.min,
            "max": answer.latency.range.max,
            "by_keeper": answer.latency.by_keeper,
            "sources": sources,
        },
        "cases": answer.cases.iter().map(case).collect::<Value>(),
    })
}

fn case(case: &CaseTold) -> Value {
    json!({
        "tag": case.palm.tag,
        "seen_sick": case.seen_sick.to_string(),
        "surely_infectious_from": case.surely_from.to_string(),
        "possibly_infectious_from": case.possibly_from.map(|m| m.to_string()),
        "exposed_from": case.exposed_from.map(|m| m.to_string()),
        "exposed_until": case.exposed_until.to_string(),
        "cuts": case.cuts,
    })
}

fn stand(kind: &str, palm: &Stand) -> Value {
    json!({"kind": kind, "tag": palm.tag, "species": palm.species, "site": palm.site})
}

fn exposure(kind: &str, one: &Exposure) -> Value {
    let mut object = stand(kind, &one.palm);
    object["host"] = json!(one.host.word());
    object["set"] = json!(if one.certain { "certain" } else { "possible" });
    object["way"] = way(&one.way);
    object["possible_way"] = one.possible.as_ref().map_or(Value::Null, way);
    object["last"] = json!(one.last.to_string());
    object["times"] = json!(one.times);
    object["watch_until"] = json!(one.watch_until.map(|day| day.to_string()));
    object["next_looks"] = one.looks.iter().map(ToString::to_string).collect();
    object
}

fn way(way: &Way) -> Value {
    json!({
        "generation": way.generation,
        "when": way.when.to_string(),
        "chain": way.chain.iter().map(step).collect::<Value>(),
    })
}

fn step(step: &Step) -> Value {
    json!({
        "blade": step.blade,
        "from": step.from,
        "left": step.left.to_string(),
        "to": step.to,
        "reached": step.reached.to_string(),
        "cleanings_between": step.between.iter().map(between).collect::<Value>(),
        "cuts_between": step.cuts_between,
        "palms_cut_between": step.cut_between,
    })
}

fn between(one: &Between) -> Value {
    let missing = match one.passed {
        Passed::Short(missing) | Passed::Unknown(missing) => missing,
        Passed::OrderOpen => None,
    };
    json!({
        "at": one.at.to_string(),
        "agent": one.agent,
        "strength_pct": one.strength_pct,
        "contact_min": one.contact_min,
        "passed": passed(one.passed),
        "missing_min": missing,
    })
}

fn nearby(one: &Nearby) -> Value {
    let mut object = stand("nearby", &one.palm);
    object["host"] = json!(one.host.word());
    object["distance_m"] = json!(one.distance.map(|m| m.0));
    object["watch_until"] = json!(one.watch_until.map(|day| day.to_string()));
    object["next_looks"] = one.looks.iter().map(ToString::to_string).collect();
    object
}

/// The last object.
pub fn summary(answer: &TraceAnswer, certain: usize) -> Value {
    json!({
        "kind": "summary",
        "as_of": answer.as_of.to_string(),
        "exposed": answer.exposed.len(),
        "certain": certain,
        "sources": answer.sources.len(),
        "nearby": answer.nearby.len(),
        "cuts": answer.log.cuts,
        "cleanings": answer.log.cleanings,
        "blades": answer.log.blades,
    })
}
