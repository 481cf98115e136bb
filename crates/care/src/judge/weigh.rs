//! Weight of every set of disorders, given all that is told.

use super::answer::Evidence;
use super::circumstance::{Factors, Moved};
use super::tables::Tables;
use super::told::Told;
use crown::Explanation;
use model::math;

/// After so many signs the weights are brought back to size, so that hundreds of signs do not run out of numbers.
const RESIZE_EVERY: usize = 16;

/// Sets weighed.
pub(super) struct Weighed {
    pub factors: Factors,
    /// Likelihood of the counts in a set of each course, ordered as `Course::ALL`; ones without counts.
    pub counts: [f64; 4],
    /// Likelihood of all that was told in each set, any scale.
    likely: Vec<f64>,
    /// Prior times likelihood, any scale.
    pub weight: Vec<f64>,
    /// Their sum.
    pub total: f64,
}

/// Something that was told and can be left out.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) enum Item {
    Seen(usize),
    Absent(usize),
    /// Index among the kinds of [`Factors`].
    Circumstance(usize),
    Counts,
}

impl Weighed {
    pub fn of(tables: &Tables, evidence: &Evidence, told: &Told) -> Weighed {
        let factors = Factors::of(tables, evidence);
        let counts = counts(tables, evidence);
        let mut likely: Vec<f64> = tables.course.iter().map(|course| counts[*course]).collect();
        let signs = told.seen.iter().map(|sign| (*sign, true));
        let signs = signs.chain(told.absent.iter().map(|sign| (*sign, false)));
        for (nth, (sign, seen)) in signs.enumerate() {
            let row = row(tables, sign).iter();
            if seen {
                likely.iter_mut().zip(row).for_each(|(l, p)| *l *= p);
            } else {
                likely.iter_mut().zip(row).for_each(|(l, p)| *l *= 1.0 - p);
            }
            if (nth + 1) % RESIZE_EVERY == 0 {
                resize(&mut likely);
            }
        }
        let mut weight = prior(tables, &factors, None);
        weight.iter_mut().zip(&likely).for_each(|(w, l)| *w *= l);
        let total = sum(&weight);
        Weighed {
            factors,
            counts,
            likely,
            weight,
            total,
        }
    }

    /// Weights as they would be if one thing had not been told, everything else held.
    pub fn without(&self, tables: &Tables, item: Item) -> Vec<f64> {
        let weights = self.weight.iter();
        match item {
            Item::Seen(sign) => weights.zip(row(tables, sign)).map(|(w, p)| w / p).collect(),
            Item::Absent(sign) => weights
                .zip(row(tables, sign))
                .map(|(w, p)| w / (1.0 - p))
                .collect(),
            Item::Counts => weights
                .zip(&tables.course)
                .map(|(w, course)| w / self.counts[*course])
                .collect(),
            Item::Circumstance(kind) => {
                let mut weight = prior(tables, &self.factors, Some(kind));
                weight
                    .iter_mut()
                    .zip(&self.likely)
                    .for_each(|(w, l)| *w *= l);
                weight
            }
        }
    }

    /// Doubt in bits over the sets.
    pub fn doubt(&self) -> f64 {
        let parts = self.weight.iter().map(|w| w / self.total);
        let parts = parts.filter(|p| *p > f64::MIN_POSITIVE);
        let parts: Vec<f64> = parts.map(|p| -p * math::ln_quick(p)).collect();
        (sum(&parts) / std::f64::consts::LN_2).max(0.0)
    }

    /// Probability that one of these sets is the case.
    pub fn share(&self, sets: &[usize]) -> f64 {
        sets.iter().map(|set| self.weight[*set]).sum::<f64>() / self.total
    }
}

/// Sum in four strands, always the same ones: the adder need not wait for itself.
pub(super) fn sum(numbers: &[f64]) -> f64 {
    let mut strands = [0.0; 4];
    let chunks = numbers.chunks_exact(4);
    let rest: f64 = chunks.remainder().iter().sum();
    for chunk in chunks {
        strands.iter_mut().zip(chunk).for_each(|(s, x)| *s += x);
    }
    (strands[0] + strands[1]) + (strands[2] + strands[3]) + rest
}

/// Chance of a sign in every set.
fn row(tables: &Tables, sign: usize) -> &[f64] {
    let sets = tables.sets.len();
    &tables.seen_by_sign[sign * sets..][..sets]
}

fn resize(likely: &mut [f64]) {
    let most = likely.iter().copied().fold(0.0, math::larger);
    if most > 0.0 {
        likely.iter_mut().for_each(|l| *l /= most);
    }
}

/// Prior odds of every set against nothing, in the order of the sets.
fn prior(tables: &Tables, factors: &Factors, without: Option<usize>) -> Vec<f64> {
    let odds = |k: usize| {
        let common = tables.troubles[k].common * tables.weights.prior_scale;
        common * factors.without(without, k)
    };
    let odds: Vec<f64> = (0..tables.troubles.len()).map(odds).collect();
    let mut prior = Vec::with_capacity(tables.sets.len());
    prior.push(1.0);
    prior.extend(&odds);
    for (a, first) in odds.iter().enumerate() {
        prior.extend(odds[a + 1..].iter().map(|second| first * second));
    }
    prior
        .iter_mut()
        .zip(&tables.pair)
        .for_each(|(w, f)| *w *= f);
    prior
}

/// Likelihood of the counts by course. A disorder may not show yet: then the counts are those of ageing, or of the move
/// if there was one lately. An explanation that the reading did not weigh (0) is taken as the mean of the others.
fn counts(tables: &Tables, evidence: &Evidence) -> [f64; 4] {
    let w = &tables.weights;
    let Some(told) = evidence.counts.filter(|told| told.iter().any(|l| *l > 0.0)) else {
        return [1.0; 4];
    };
    let most = told.iter().copied().fold(0.0, math::larger);
    let tempered = told.map(|l| math::pow(l.max(0.0) / most, w.counts_temper).max(w.counts_least));
    let weighed = || (0..4).filter(|k| told[*k] > 0.0);
    let mean = weighed().map(|k| tempered[k]).sum::<f64>() / weighed().count() as f64;
    let likely = |k: usize| if told[k] > 0.0 { tempered[k] } else { mean };
    let ordinary = if Moved::of(evidence).recently(w) && told[Explanation::Move.index()] > 0.0 {
        Explanation::Move
    } else {
        Explanation::Ageing
    };
    let ordinary = likely(ordinary.index());
    // what is nothing but ageing shows as what is ordinary
    let mut out =
        [0, 1, 2, 3].map(|k| w.counts_show * likely(k) + (1.0 - w.counts_show) * ordinary);
    out[Explanation::Ageing.index()] = ordinary;
    out
}
