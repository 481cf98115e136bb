//! What a disorder is easily taken for, and the signs that part the two.

use super::answer::{Ranked, TellApart};
use super::tables::Tables;
use super::told::Told;
use model::math;

/// So many look-alikes are shown.
const LOOK_ALIKES: usize = 3;
/// So many signs for each side.
const SIGNS: usize = 4;
/// A sign parts two disorders if it is so many times likelier with one.
const PARTS: f64 = 2.0;

/// The look-alikes of the first in the ranking: those that are probable and look like it.
pub(super) fn apart(tables: &Tables, told: &Told, ranked: &[Ranked]) -> Vec<TellApart> {
    let Some(first) = ranked.first() else {
        return Vec::new();
    };
    let this = set_of(tables, first.disorder);
    let mut others: Vec<(&Ranked, f64)> = ranked[1..]
        .iter()
        .map(|r| {
            (
                r,
                r.probability * likeness(tables, this, set_of(tables, r.disorder)),
            )
        })
        .filter(|(_, score)| *score > 0.0)
        .collect();
    others.sort_by(|a, b| b.1.total_cmp(&a.1));
    others.truncate(LOOK_ALIKES);
    others
        .into_iter()
        .map(|(other, _)| TellApart {
            this: first.disorder,
            other: other.disorder,
            for_this: parting(tables, told, this, set_of(tables, other.disorder)),
            for_other: parting(tables, told, set_of(tables, other.disorder), this),
        })
        .collect()
}

/// The set in which a disorder is alone; ageing alone is the empty set.
fn set_of(tables: &Tables, disorder: &str) -> usize {
    let at = tables.troubles.iter().position(|t| t.key == disorder);
    at.map_or(0, |k| k + 1)
}

fn chances(tables: &Tables, set: usize) -> &[f64] {
    let signs = tables.signs.len();
    &tables.seen_by_set[set * signs..][..signs]
}

/// Cosine of the angle between what two sets show beyond chance, 0..=1.
fn likeness(tables: &Tables, a: usize, b: usize) -> f64 {
    let beyond = |p: f64| (p - tables.weights.leak).max(0.0);
    let (mut both, mut one, mut other) = (0.0, 0.0, 0.0);
    for (p, q) in chances(tables, a).iter().zip(chances(tables, b)) {
        let (p, q) = (beyond(*p), beyond(*q));
        both += p * q;
        one += p * p;
        other += q * q;
    }
    if both > 0.0 {
        both / (one * other).sqrt()
    } else {
        0.0
    }
}

/// Signs not yet looked for that would speak for `a` against `b`: those expected to say most, first.
fn parting(tables: &Tables, told: &Told, a: usize, b: usize) -> Vec<&'static str> {
    let pairs = chances(tables, a)
        .iter()
        .zip(chances(tables, b))
        .enumerate();
    let mut rated: Vec<(usize, f64)> = pairs
        .filter(|(sign, (p, q))| !told.answered[*sign] && **p >= PARTS * **q)
        .map(|(sign, (p, q))| (sign, p * math::ln(p / q)))
        .collect();
    rated.sort_by(|a, b| b.1.total_cmp(&a.1));
    let best = rated.into_iter().take(SIGNS);
    best.map(|(sign, _)| tables.signs[sign].key.as_str())
        .collect()
}
