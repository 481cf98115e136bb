//! Nobody cuts: which suspicions call for a hold.

use super::answer::HoldAdvice;
use super::tables::Tables;
use super::told::Told;
use super::weigh::Weighed;
use model::knowledge::HoldKind;

/// Signs that alone call for a hold, whatever the probability: what is seen is the trouble itself, or makes the palm
/// unsafe to climb or to lean on.
pub const ALONE: [(&str, HoldKind); 6] = [
    ("conk-lower-trunk", HoldKind::TrunkRot),
    ("trunk-soft-high", HoldKind::TrunkRot),
    ("crown-fell", HoldKind::TrunkRot),
    ("spear-pulls-out", HoldKind::BudRot),
    ("grubs-or-cocoons", HoldKind::Weevil),
    ("holes-chewed-fibre", HoldKind::Weevil),
];

/// Reason codes of holds that have words for what to do instead, whom to tell and what ends them.
const REASONS: [&str; 13] = [
    "wilt-suspect",
    "phytoplasma-suspect",
    "bud-rot-suspect",
    "trunk-rot-suspect",
    "weevil-suspect",
    "conk",
    "spear",
    "nest",
    "bats",
    "bees",
    "wires",
    "lab-confirmed",
    "keeper",
];

/// Every reason for which nobody cuts, by code. Of each, `hold-instead-<reason>` says what to do instead,
/// `hold-tell-<reason>` whom to tell, `hold-ends-<reason>` what ends the hold.
pub fn hold_reasons() -> &'static [&'static str] {
    &REASONS
}

/// The reason code of a kind.
pub fn hold_reason(kind: HoldKind) -> &'static str {
    let all = HoldKind::ALL.iter().find(|(known, _)| *known == kind);
    all.map_or("keeper", |(_, code)| code)
}

/// The kind of hold that a sign alone calls for.
pub fn hold_by_sign(sign: &str) -> Option<HoldKind> {
    ALONE
        .iter()
        .find(|(key, _)| *key == sign)
        .map(|(_, kind)| *kind)
}

/// The holds that a judgement calls for, worst first: those with a sign of their own, then by probability.
pub(super) fn holds(tables: &Tables, told: &Told, weighed: &Weighed) -> Vec<HoldAdvice> {
    let mut holds: Vec<HoldAdvice> = HoldKind::ALL
        .iter()
        .zip(&tables.held)
        .filter_map(|((kind, _), sets)| {
            let probability = weighed.share(sets);
            let sign = alone(tables, told, *kind);
            let likely = probability >= tables.weights.hold_from;
            (likely || sign.is_some()).then(|| HoldAdvice {
                kind: *kind,
                probability,
                because: because(tables, weighed, *kind),
                likely,
                sign,
            })
        })
        .collect();
    holds.sort_by(|a, b| {
        let by_sign = b.sign.is_some().cmp(&a.sign.is_some());
        by_sign.then(b.probability.total_cmp(&a.probability))
    });
    holds
}

fn alone(tables: &Tables, told: &Told, kind: HoldKind) -> Option<&'static str> {
    let seen = told
        .seen
        .iter()
        .map(|sign| tables.signs[*sign].key.as_str());
    seen.into_iter()
        .find(|sign| hold_by_sign(sign) == Some(kind))
}

/// Disorders of a kind, most probable first.
fn because(tables: &Tables, weighed: &Weighed, kind: HoldKind) -> Vec<&'static str> {
    let of_kind = tables.troubles.iter().enumerate();
    let of_kind = of_kind.filter(|(_, trouble)| trouble.hold == Some(kind));
    let mut rated: Vec<(&'static str, f64)> = of_kind
        .map(|(k, trouble)| (trouble.key.as_str(), weighed.share(&tables.sets.with[k])))
        .collect();
    rated.sort_by(|a, b| b.1.total_cmp(&a.1));
    rated.into_iter().map(|(key, _)| key).collect()
}
