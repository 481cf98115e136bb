//! What speaks for a disorder and what against it: its odds with and without each thing told, everything else held.

use super::answer::{Speaks, WeightOf};
use super::circumstance::KINDS;
use super::tables::Tables;
use super::told::Told;
use super::weigh::{Item, Weighed, sum};

/// A factor nearer to 1 than this (or its inverse) is not worth a line.
const WORTH_SAYING: f64 = 1.05;

/// What speaks for, and what against; strongest first.
pub(super) type ForAndAgainst = (Vec<Speaks>, Vec<Speaks>);

/// For each event (a list of sets in which it holds) what speaks for and against it.
pub(super) fn speaks(
    tables: &Tables,
    told: &Told,
    weighed: &Weighed,
    events: &[&[usize]],
) -> Vec<ForAndAgainst> {
    let mut out: Vec<ForAndAgainst> = events.iter().map(|_| Default::default()).collect();
    let odds_with: Vec<f64> = events
        .iter()
        .map(|e| odds(&weighed.weight, weighed.total, e))
        .collect();
    for (item, what) in items(tables, told, weighed) {
        let without = weighed.without(tables, item);
        let all = sum(&without);
        for ((event, with), out) in events.iter().zip(&odds_with).zip(&mut out) {
            let factor = with / odds(&without, all, event);
            if factor >= WORTH_SAYING {
                out.0.push(Speaks { what, factor });
            } else if factor <= 1.0 / WORTH_SAYING {
                out.1.push(Speaks { what, factor });
            }
        }
    }
    for (for_it, against) in &mut out {
        for_it.sort_by(|a, b| b.factor.total_cmp(&a.factor));
        against.sort_by(|a, b| a.factor.total_cmp(&b.factor));
    }
    out
}

/// Odds that one of these sets is the case, of weights with this sum. The rest is summed by itself where taking the
/// difference would lose digits.
fn odds(weight: &[f64], all: f64, event: &[usize]) -> f64 {
    let of: f64 = event.iter().map(|set| weight[*set]).sum();
    if of < 0.999 * all {
        return of / (all - of);
    }
    let mut in_event = event.iter().copied().peekable();
    let others = weight
        .iter()
        .enumerate()
        .filter(|(set, _)| in_event.next_if_eq(set).is_none());
    of / others.map(|(_, w)| w).sum::<f64>()
}

fn items(tables: &Tables, told: &Told, weighed: &Weighed) -> Vec<(Item, WeightOf)> {
    let key = |sign: usize| tables.signs[sign].key.as_str();
    let seen = told
        .seen
        .iter()
        .map(|k| (Item::Seen(*k), WeightOf::Seen(key(*k))));
    let absent = told
        .absent
        .iter()
        .map(|k| (Item::Absent(*k), WeightOf::NotThere(key(*k))));
    let kinds: [WeightOf; KINDS] = [
        WeightOf::Host,
        WeightOf::Season,
        WeightOf::Move,
        WeightOf::Frost,
        WeightOf::Storm,
    ];
    let kinds = kinds.into_iter().enumerate();
    let kinds = kinds.filter(|(kind, _)| weighed.factors.speaks(*kind));
    let kinds = kinds.map(|(kind, what)| (Item::Circumstance(kind), what));
    let counted = weighed.counts != [1.0; 4];
    let counts = counted.then_some((Item::Counts, WeightOf::Counts));
    seen.chain(absent).chain(kinds).chain(counts).collect()
}
