//! A rotation for machines: one object a cut, then the summary. Minutes count from the start of the round.

use desk::rotating::{Made, Needed, letter};
use serde_json::{Value, json};

/// The objects, in the order of the cuts.
pub fn objects(made: &Made, needed: Option<&Needed>) -> Vec<Value> {
    let rows = made.plan.turns.iter().zip(made.soaks());
    let mut out: Vec<Value> = rows
        .map(|(turn, soak)| {
            let soak = soak.map(|soak| {
                json!({
                    "laid_down_min": soak.from,
                    "into_bath_min": soak.into_bath,
                    "out_of_bath_min": soak.out_of_bath,
                    "ready_min": soak.ready,
                    "bath": soak.bath + 1,
                })
            });
            json!({
                "kind": "cut",
                "cut": turn.job + 1,
                "tag": made.cuts[turn.job].tag,
                "needs_clean": made.cuts[turn.job].job.needs_clean,
                "set": letter(turn.set),
                "waited_min": turn.waited,
                "start_min": turn.start,
                "end_min": turn.end,
                "soak": soak,
            })
        })
        .collect();
    out.push(summary(made, needed));
    out
}

fn summary(made: &Made, needed: Option<&Needed>) -> Value {
    let choices: Vec<Value> = made
        .choices
        .iter()
        .map(|choice| {
            json!({
                "sets": choice.sets,
                "waiting_min": choice.waiting_min,
                "makespan_min": choice.makespan_min,
            })
        })
        .collect();
    json!({
        "kind": "summary",
        "cuts": made.cuts.len(),
        "sets": made.kit.sets,
        "waiting_min": made.plan.waiting_min,
        "makespan_min": made.plan.makespan_min,
        "all_clean_min": made.plan.all_clean_min,
        "baths": made.plan.baths,
        "fewest_sets": made.fewest,
        "choices": choices,
        "soak_min": made.kit.soak_min,
        "brush_min": made.kit.brush_min,
        "rinse_min": made.kit.rinse_min,
        "agent": needed.map(|needed| &needed.agent),
        "strength_pct": needed.and_then(|needed| needed.strength_pct),
        "needed_min": needed.map(|needed| needed.minutes),
    })
}
