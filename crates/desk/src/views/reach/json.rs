//! Getting at a stem for machines.

use crate::reaching::Reached;
use care::Stand;
use care::reach::{Fits, Line};
use serde_json::{Value, json};

fn round(x: f64) -> f64 {
    (x * 1000.0).round() / 1000.0
}

/// One object: metres, degrees, keys; what is unknown is null.
pub fn json(tag: &str, stem: u16, reached: &Reached) -> Value {
    let reach = &reached.reach;
    let tools = reach.fits.iter().map(|fit| {
        let limit = match fit.fits {
            Fits::IfUpTo(_, limit) | Fits::Narrow(limit) | Fits::Short(limit) => Some(limit.0),
            _ => None,
        };
        json!({
            "tool": fit.tool.key,
            "fits": fit.fits.key(),
            "limit_m": limit.map(round),
            "at_hand": fit.at_hand,
            "take": fit.takes(),
        })
    });
    let places = reach.places.iter().map(|place| {
        json!({
            "degrees": place.degrees,
            "from_degrees": place.from,
            "to_degrees": place.to,
            "out_m": round(place.out_m),
            "fronds": place.ranks,
        })
    });
    let pole = reach.pole().map(|pole| {
        json!({
            "length_m": round(pole.length.0),
            "degrees": round(pole.degrees),
            "out_m": round(pole.out.0),
            "hands_m": round(pole.hands.0),
        })
    });
    json!({
        "kind": "reach",
        "tag": tag,
        "stem": stem,
        "refused": reach.refused,
        "stand": stand(reach.stand),
        "top_m": reach.top.map(|top| round(top.0)),
        "keep_out_m": reach.keep_out.map(|radius| round(radius.0)),
        "wires": wires(reach.line),
        "pole": pole,
        "tools": tools.collect::<Vec<_>>(),
        "places": places.collect::<Vec<_>>(),
        "blocked_fronds": reach.blocked,
        "says": reach.findings.iter().map(|f| f.code).collect::<Vec<_>>(),
    })
}

fn stand(stand: Stand) -> &'static str {
    match stand {
        Stand::Ground => "ground",
        Stand::GroundWithPole => "ground-with-pole",
        Stand::Lift => "lift",
        Stand::LiftFromAbove => "lift-from-above",
        Stand::Unknown => "unknown",
    }
}

fn wires(line: Line) -> &'static str {
    match line {
        Line::NotNoted => "not-noted",
        Line::Within { .. } => "within",
        Line::Held => "held",
        Line::VoltageUnknown { .. } => "voltage-unknown",
        Line::FallsNear { .. } => "falls-near",
        Line::Clear { .. } => "clear",
    }
}
