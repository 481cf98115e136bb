//! `/api/blades`: the rack for machines: times and stable codes, no sentences.

use super::{badge, log, palm_tag, ready_for};
use crate::clock;
use crate::office::Office;
use care::clean::Ready;
use model::State;
use model::state::{BladeRecord, BladeTouch, Touch};
use serde_json::{Value, json};

/// All blades, retired ones included, each with its log.
pub fn blades(office: &Office) -> Value {
    let state = office.state();
    let now = clock::now(office);
    let blades: Vec<Value> = state
        .blades
        .values()
        .map(|blade| {
            let ready = ready_for(office, blade, None, now);
            one(office, &state, blade, &ready)
        })
        .collect();
    json!({ "as_of": now.to_string(), "blades": blades })
}

fn one(office: &Office, state: &State, blade: &BladeRecord, ready: &Ready) -> Value {
    let log: Vec<Value> = blade
        .touches
        .iter()
        .map(|t| touch(office, state, t))
        .collect();
    json!({
        "tag": blade.blade.tag, "kind": blade.blade.kind.word(), "kit": blade.blade.kit, "holder": blade.blade.holder,
        "retired": blade.retired, "lent_to": blade.lent.as_ref().map(|lent| &lent.to),
        "ready": badge::key(ready), "missing_min": match ready { Ready::Short { missing_min } => *missing_min, _ => None },
        "log": log,
    })
}

fn touch(office: &Office, state: &State, touch: &BladeTouch) -> Value {
    let at = touch.at.to_string();
    match &touch.what {
        Touch::Cut(cut) => json!({
            "at": at, "what": "cut", "palm": palm_tag(state, cut.palm), "stem": cut.stem,
            "started": cut.started.map(|m| m.to_string()), "despite": cut.despite,
        }),
        Touch::Cleaned(cleaning) => json!({
            "at": at, "what": "cleaned", "agent": cleaning.agent, "strength_pct": cleaning.strength_pct,
            "contact_min": cleaning.contact_min, "brushed": cleaning.brushed,
            "worth": log::adequacy_key(super::adequacy(office, cleaning, touch.at)),
        }),
        Touch::Lent(to) => json!({ "at": at, "what": "lent", "to": to }),
        Touch::Returned => json!({ "at": at, "what": "returned" }),
    }
}
