//! A walk for machines.

use crate::walk::SiteWalk;
use rounds::walk::Health;
use serde_json::{Value, json};

/// Metres to the tenth.
fn metres(metres: f64) -> f64 {
    (metres * 10.0).round() / 10.0
}

/// The walk as one object: metres, minutes, keys; what is unknown is null.
pub fn json(walk: &SiteWalk) -> Value {
    let stops = walk.stops.iter().enumerate().map(|(i, stop)| {
        let blade = walk.blade(stop);
        let turn = walk.blades.as_ref().zip(stop.cut);
        let turn = turn.and_then(|(made, cut)| made.plan.turns.get(cut));
        json!({
            "n": i + 1,
            "tag": stop.record.palm.tag,
            "health": stop.because.health().key(),
            "because": stop.because.key(),
            "metres": stop.metres.map(metres),
            "cut": blade.is_some(),
            "set": blade.as_ref().map(|(set, _)| set),
            "clean_blade_before": blade.as_ref().is_some_and(|(_, clean)| *clean),
            "clean_hands_before": stop.hands,
            "start_min": turn.map(|turn| turn.start),
            "waited_min": turn.map(|turn| turn.waited),
        })
    });
    let counts = Health::ALL.map(|health| (health.key().to_owned(), walk.count(health).into()));
    json!({
        "kind": "walk",
        "metres": metres(walk.way.metres),
        "shortest": walk.way.exact,
        "without_place": walk.way.unplaced,
        "from_gate": walk.gate.is_some(),
        "palms": serde_json::Map::from_iter(counts),
        "sets": walk.blades.as_ref().map(|made| made.kit.sets),
        "soak_min": walk.blades.as_ref().map(|made| made.kit.soak_min),
        "waits_min": walk.blades.as_ref().map(|made| made.plan.waiting_min),
        "fewest_sets": walk.blades.as_ref().map(|made| made.fewest),
        "stops": stops.collect::<Vec<_>>(),
    })
}
