//! What is said of getting at a crown.

use super::{Ask, Line, Reach, aside};
use crate::plan::Stand;
use crate::rule::{Say, cite};
use crate::rules::wires_within::written;
use model::knowledge::Edge;
use model::{Arg, Finding, Metres, Severity};

const WITHIN: Say = Say::new("reach-wires-within", Severity::Refuse).on(&[
    "line_min_50kv",
    "line_add_per_10kv",
    "line_formula",
    "line_1910_333",
    "defer_all",
]);
const HELD: Say =
    Say::new("reach-wires-held", Severity::Refuse).on(&["line_min_50kv", "defer_all"]);
const VOLTAGE: Say = Say::new("reach-wires-voltage", Severity::Refuse).on(&[
    "line_formula",
    "line_vector_800",
    "defer_all",
]);
const NOT_NOTED: Say = Say::new("reach-wires-not-noted", Severity::Act).on(&[
    "line_min_50kv",
    "pole_nonconductive",
    "defer_all",
]);
const FALLS: Say = Say::new("reach-wires-falls", Severity::Act).on(&[
    "line_min_50kv",
    "line_formula",
    "pole_nonconductive",
    "defer_all",
]);
const SKIRT: Say = Say::new("reach-skirt", Severity::Act).on(&[
    "skirt_never_below",
    "skirt_from_above",
    "skirt_trained",
    "defer_all",
]);
const LIFT: Say = Say::new("reach-lift-only", Severity::Act)
    .on(&["lift_tie_off", "lift_wind_rating", "defer_all"])
    .practice();
const NO_LIFT: Say = Say::new("reach-no-lift", Severity::Act)
    .on(&["lift_tie_off", "defer_all"])
    .practice();
const NO_TOOL: Say = Say::new("reach-no-tool", Severity::Act).practice();
const HEIGHT: Say = Say::new("reach-height-unknown", Severity::Act);
const PETIOLE: Say = Say::new("reach-petiole", Severity::Caution).practice();
const SMOOTHER: Say = Say::new("reach-smoother", Severity::Info).practice();
const ASIDE: Say = Say::new("reach-aside", Severity::Caution)
    .on(&["pole_handling", "defer_all"])
    .practice();
const BLOCKED: Say = Say::new("reach-blocked", Severity::Act);
const DRAWN: Say = Say::new("reach-drawn", Severity::Info);
const KEEP_OUT: Say = Say::new("reach-keep-out", Severity::Caution)
    .on(&["drop_zone_pruning", "pole_handling", "defer_all"])
    .practice();
const KEEP_OUT_UNKNOWN: Say = Say::new("reach-keep-out-unknown", Severity::Caution)
    .on(&["drop_zone_pruning", "pole_handling", "defer_all"])
    .practice();
const SPIKES: Say = Say::new("reach-no-spikes", Severity::Caution)
    .on(&["spikes_prohibited", "defer_all"])
    .against(&["spikes_over_65ft", "spikes_allowed_palms"]);
const LADDER: Say = Say::new("reach-no-ladder", Severity::Caution)
    .on(&[
        "ladder_palm",
        "ladder_ratio",
        "ladder_top_rungs",
        "defer_all",
    ])
    .practice();

/// All that can be said.
pub const SAYS: [Say; 19] = [
    WITHIN,
    HELD,
    VOLTAGE,
    NOT_NOTED,
    FALLS,
    SKIRT,
    LIFT,
    NO_LIFT,
    NO_TOOL,
    HEIGHT,
    PETIOLE,
    SMOOTHER,
    ASIDE,
    BLOCKED,
    DRAWN,
    KEEP_OUT,
    KEEP_OUT_UNKNOWN,
    SPIKES,
    LADDER,
];

/// What to say, the worst first; among equals in the order in which it is done.
pub(super) fn findings(ask: &Ask, reach: &Reach) -> Vec<Finding> {
    let mut all = Vec::new();
    all.extend(wires(ask, reach));
    if !reach.refused {
        all.extend(way(ask, reach));
        all.extend(blade(ask, reach));
        all.extend(places(ask, reach));
        all.push(say(ask, &SPIKES));
        if reach.stand != Stand::Ground {
            all.push(say(ask, &LADDER));
        }
    }
    all.push(match reach.keep_out {
        Some(radius) => say(ask, &KEEP_OUT).with("radius", Arg::Length(radius)),
        None => say(ask, &KEEP_OUT_UNKNOWN),
    });
    all.sort_by_key(|finding| core::cmp::Reverse(finding.severity));
    all
}

/// A finding with the sources of the rows it stands on.
fn say(ask: &Ask, say: &Say) -> Finding {
    let mut finding = Finding::new(say.code, say.severity);
    finding.practice = say.practice;
    for key in say.cites {
        let (sources, _) = cite(ask.knowledge, key);
        for source in sources {
            if !finding.sources.contains(source) {
                finding.sources.push(source.clone());
            }
        }
    }
    finding.conflicts = say.conflicts.to_vec();
    finding
}

fn wires(ask: &Ask, reach: &Reach) -> Option<Finding> {
    let far = |keep| Arg::Text(written(keep));
    Some(match reach.line {
        Line::Within { wires, keep } => say(ask, &WITHIN)
            .with("wires", Arg::Length(wires))
            .with("keep", far(keep)),
        Line::Held => say(ask, &HELD),
        Line::VoltageUnknown { wires, most } => say(ask, &VOLTAGE)
            .with("wires", Arg::Length(wires))
            .with("most", far(most)),
        Line::NotNoted => say(ask, &NOT_NOTED),
        Line::FallsNear { wires, keep, by } => say(ask, &FALLS)
            .with("wires", Arg::Length(wires))
            .with("keep", far(keep))
            .with("by", Arg::Length(by)),
        Line::Clear { .. } => return None,
    })
}

/// From where, and whether those who come can.
fn way(ask: &Ask, reach: &Reach) -> Vec<Finding> {
    let lift = matches!(reach.stand, Stand::Lift | Stand::LiftFromAbove);
    let mut all = Vec::new();
    match reach.stand {
        Stand::LiftFromAbove => all.push(say(ask, &SKIRT)),
        Stand::Lift => {
            let top = reach.top.unwrap_or(Metres(0.0));
            let base = ask.crown_base.unwrap_or(Metres(0.0));
            let finding = say(ask, &LIFT).with("base", Arg::Length(base));
            all.push(finding.with("top", Arg::Length(top)));
        }
        Stand::Unknown => all.push(say(ask, &HEIGHT)),
        Stand::Ground | Stand::GroundWithPole => {}
    }
    if lift && !ask.has("lift") {
        all.push(say(ask, &NO_LIFT));
    }
    all
}

/// What is cut with.
fn blade(ask: &Ask, reach: &Reach) -> Vec<Finding> {
    let mut all = Vec::new();
    if ask.stub.is_none() || reach.stand == Stand::Unknown {
        return all;
    }
    let cuts = |edge: Edge| edge != Edge::None;
    let mut taken = reach.takes().filter(|fit| cuts(fit.tool.edge));
    let Some(first) = taken.next() else {
        all.push(say(ask, &NO_TOOL));
        return all;
    };
    if let super::Fits::IfUpTo(_, width) = first.fits {
        all.push(say(ask, &PETIOLE).with("width", Arg::ShortLength(width)));
    }
    if first.tool.edge == Edge::Shears && taken.any(|fit| fit.tool.edge == Edge::Teeth) {
        all.push(say(ask, &SMOOTHER));
    }
    all
}

/// Where to stand.
fn places(ask: &Ask, reach: &Reach) -> Vec<Finding> {
    let mut all = Vec::new();
    if matches!(reach.stand, Stand::Ground | Stand::GroundWithPole) && ask.stub.is_some() {
        let aside = aside(ask.frond, ask.fan);
        all.push(say(ask, &ASIDE).with("aside", Arg::Length(aside)));
    }
    if !reach.blocked.is_empty() {
        let n = i64::try_from(reach.blocked.len()).unwrap_or(i64::MAX);
        all.push(say(ask, &BLOCKED).with("n", Arg::Count(n)));
    }
    if !reach.places.is_empty() {
        all.push(say(ask, &DRAWN));
    }
    all
}
