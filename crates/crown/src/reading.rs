//! The reading: explanations weighed against counts, and everything that follows from the weighted draws.

use crate::answer::{Cut, Explanation, LossReading, Quantiles};
use crate::case::StemCase;
use crate::draws::{NOISE, Sampler};
use crate::explain::Params;
use crate::lanes::{Lanes, WIDTH};
use crate::loss;
use crate::picture::Spread;
use crate::quantile::{LEVELS, weighted};
use crate::refine::{Batch, Point, dense, point};
use crate::track::{Crown, Timeline, Watch, run};
use crate::weigh::Best;
use model::{Day, math};

/// Refine while the weights of all explanations together rest on fewer draws than this.
pub const ENOUGH_DRAWS: f64 = 100.0;
const MOST_REFINEMENTS: usize = 6;
/// An explanation less probable than this is not worth refining.
const WORTH_REFINING: f64 = 0.01;
/// Draws lighter than this share of the heaviest are left behind.
const KEEP: f64 = 1e-4;

/// The reading of one stem.
pub struct Reading {
    /// The day it speaks for.
    pub as_of: Day,
    /// Probability of each explanation, ordered as [`Explanation::ALL`]; 0 where it does not apply.
    pub probabilities: [f64; 4],
    /// Effective number of draws behind it.
    pub effective_draws: f64,
    /// Vigour: this palm's frond making as a multiple of the prior median.
    pub vigour: Quantiles,
    /// Shortfall K: the share of a frond's life that hunger takes (0 under the other explanations).
    pub shortfall: Quantiles,
    /// Live fronds of this palm's full, fed crown.
    pub full_crown: Quantiles,
    /// Fronds a year that this palm makes at the reference place.
    pub fronds_per_year: Quantiles,
    /// The last inspection, if there is any.
    pub last_inspection: Option<Day>,
    /// Log of the evidence of each explanation, comparable between explanations only; minus infinity where it does not apply.
    pub log_evidence: [f64; 4],
    /// Weights of the explanations before the counts.
    pub prior_weights: [f64; 4],
    pub(crate) loss: Option<LossReading>,
    pub(crate) line: Timeline,
    pub(crate) rows: Vec<Row>,
    pub(crate) spread: Spread,
}

/// A row of weighted crowns on the day of the reading.
pub(crate) struct Row {
    pub kind: Explanation,
    pub p: Params,
    pub now: Crown,
    pub weight: Lanes,
    pub noise: Lanes,
}

/// Reads one stem. Same input, same answer, bit for bit. Inspections after `as_of` are not looked at.
pub fn read(case: &StemCase, as_of: Day, sampler: &mut Sampler) -> Reading {
    let season = sampler.season(case.climate.as_ref(), case.latitude);
    let line = Timeline::of(case, as_of, season);
    let prior_weights = if line.moved.is_some() {
        case.prior.moved
    } else {
        case.prior.settled
    };
    let batches = weighed_batches(case, &line, prior_weights, sampler);
    let shares = Shares::of(&batches, prior_weights);
    let rows = kept_rows(case, &line, &batches, &shares, sampler);
    let by_row = |value: fn(&Row, usize) -> f64| {
        Quantiles::from_levels(weighted(draws(&rows, value), LEVELS))
    };
    let per_year = by_row(|row, i| row.p.rate[i] * 365.25);
    let full_crown = by_row(|row, i| row.p.full[i]);
    let median = case.prior.fronds_per_year.median;
    Reading {
        as_of,
        probabilities: shares.probabilities,
        effective_draws: shares.effective,
        vigour: per_year.scaled(1.0 / median),
        shortfall: by_row(|row, i| row.p.shortfall[i]),
        full_crown,
        fronds_per_year: per_year,
        last_inspection: line.looks.checked_sub(1).map(|k| case.inspections[k].date),
        log_evidence: shares.log_evidence,
        prior_weights,
        loss: loss::reading(case, &line, &batches, prior_weights),
        spread: Spread::fitted(&case.inspections[..line.looks], full_crown.q50),
        line,
        rows,
    }
}

/// A value of every kept draw with its weight.
pub(crate) fn draws<'a>(
    rows: &'a [Row],
    value: impl Fn(&Row, usize) -> f64 + Copy + 'a,
) -> impl Iterator<Item = (f64, f64)> + Clone + 'a {
    rows.iter()
        .flat_map(move |row| (0..WIDTH).map(move |i| (value(row, i), row.weight[i])))
}

/// First batches of all explanations that apply, refined until the weights rest on enough draws.
fn weighed_batches<'a>(
    case: &StemCase,
    line: &Timeline,
    prior: [f64; 4],
    sampler: &'a Sampler,
) -> Vec<Batch<'a>> {
    let mut best = Best::none();
    let mut batches: Vec<Batch> = Explanation::ALL
        .into_iter()
        .filter(|kind| prior[kind.index()] > 0.0)
        .map(|kind| Batch::first(kind, line, case, sampler, &mut best))
        .collect();
    if line.looks == 0 {
        return batches;
    }
    for _ in 0..MOST_REFINEMENTS {
        let shares = Shares::of(&batches, prior);
        if shares.effective >= ENOUGH_DRAWS {
            break;
        }
        for batch in &mut batches {
            let k = batch.kind.index();
            let share = shares.probabilities[k];
            // an explanation with this much of the whole needs this many draws for the whole to have enough
            let wanted = 2.0 * ENOUGH_DRAWS * share * share;
            if share > WORTH_REFINING && shares.rests_on[k] < wanted.max(10.0) {
                *batch = batch.refined(line, case, sampler, &mut best);
            }
        }
    }
    batches
}

/// How the evidence divides among the explanations.
struct Shares {
    probabilities: [f64; 4],
    log_evidence: [f64; 4],
    rests_on: [f64; 4],
    effective: f64,
}

impl Shares {
    fn of(batches: &[Batch<'_>], prior: [f64; 4]) -> Shares {
        let mut out = Shares {
            probabilities: [0.0; 4],
            log_evidence: [f64::NEG_INFINITY; 4],
            rests_on: [0.0; 4],
            effective: 0.0,
        };
        for batch in batches {
            let k = batch.kind.index();
            out.log_evidence[k] = batch.evidence.log;
            out.rests_on[k] = batch.evidence.rests_on;
        }
        out.probabilities = posterior(prior, out.log_evidence);
        let squares: f64 = batches
            .iter()
            .map(|b| b.kind.index())
            .map(|k| out.probabilities[k] * out.probabilities[k] / out.rests_on[k])
            .sum();
        out.effective = 1.0 / squares;
        out
    }
}

/// Prior times evidence, normalised; the evidence as logarithms.
pub(crate) fn posterior(prior: [f64; 4], log_evidence: [f64; 4]) -> [f64; 4] {
    let top = log_evidence
        .iter()
        .copied()
        .fold(f64::NEG_INFINITY, f64::max);
    let mut out = [0.0; 4];
    for k in 0..4 {
        if prior[k] > 0.0 && log_evidence[k].is_finite() {
            out[k] = prior[k] * math::exp((log_evidence[k] - top).max(-700.0));
        }
    }
    let sum: f64 = out.iter().sum();
    out.map(|p| p / sum)
}

/// The draws that carry weight, run to the day of the reading. The ordinary explanations always keep some, since the
/// tripwire speaks of them even where they have become improbable.
fn kept_rows(
    case: &StemCase,
    line: &Timeline,
    batches: &[Batch<'_>],
    shares: &Shares,
    sampler: &Sampler,
) -> Vec<Row> {
    let scaled: Vec<f64> = batches
        .iter()
        .map(|b| shares.probabilities[b.kind.index()] / b.evidence.sum)
        .collect();
    let heaviest = scaled.iter().copied().fold(0.0, f64::max);
    let ordinary = |kind: Explanation| matches!(kind, Explanation::Ageing | Explanation::Move);
    let heaviest_ordinary = batches
        .iter()
        .zip(&scaled)
        .filter(|(b, _)| ordinary(b.kind))
        .map(|(_, s)| *s)
        .fold(0.0, f64::max);
    let mut rows = Vec::new();
    for (batch, scale) in batches.iter().zip(&scaled) {
        let least = KEEP
            * if ordinary(batch.kind) {
                heaviest_ordinary
            } else {
                heaviest
            };
        let mut kept: Vec<(Point, f64)> = Vec::new();
        for (z, w) in batch.rows.iter().zip(&batch.evidence.weights) {
            kept.extend(
                (0..WIDTH)
                    .filter(|&i| w[i] * scale > least)
                    .map(|i| (point(z, i), w[i] * scale)),
            );
        }
        for (z, weight) in dense(&kept) {
            let p = Params::of(batch.kind, &z, &case.prior, sampler.normal(), line.window);
            let now = run(batch.kind, line, case, &p, &mut Nobody);
            rows.push(Row {
                kind: batch.kind,
                p,
                now,
                weight,
                noise: z[NOISE],
            });
        }
    }
    rows
}

struct Nobody;

impl Watch for Nobody {
    fn look(&mut self, _: usize, _: f64, _: &Crown, _: bool) -> bool {
        true
    }
}

impl Reading {
    /// The explanation with the greatest probability.
    pub fn most_probable(&self) -> Explanation {
        let mut best = Explanation::Ageing;
        for kind in Explanation::ALL {
            if self.probabilities[kind.index()] > self.probabilities[best.index()] {
                best = kind;
            }
        }
        best
    }

    /// The loss between the last two looks; `None` with fewer than two looks and no known cleaning.
    pub fn loss(&self) -> Option<LossReading> {
        self.loss.clone()
    }

    /// Fronds made between `as_of` and `day`: what will have grown by then.
    pub fn regrowth(&self, day: Day) -> Quantiles {
        let crowns = self.crowns(Cut::NONE, &[day]).remove(0);
        let made = crowns.iter().zip(&self.rows).flat_map(|(crown, row)| {
            (0..WIDTH).map(move |i| (crown.born[i] - row.now.born[i], row.weight[i]))
        });
        Quantiles::from_levels(weighted(made, LEVELS))
    }

    /// Years a frond of this palm lives: live fronds of the crown it can keep over fronds made a year (the queue
    /// identity of an undisturbed crown).
    pub fn frond_life_years(&self) -> Quantiles {
        Quantiles::from_levels(weighted(
            draws(&self.rows, |row, i| {
                row.p.life[i] / (row.p.rate[i] * 365.25)
            }),
            LEVELS,
        ))
    }

    /// Median number of live fronds hanging below the level line (clock 9 and 3) on `as_of`.
    pub fn below_level(&self) -> f64 {
        let level = self.spread.level_share();
        let below = draws(&self.rows, |row, i| {
            (row.now.live[i] - level * row.p.full[i]).max(0.0)
        });
        weighted(below, [0.5])[0]
    }
}

impl Quantiles {
    fn scaled(self, by: f64) -> Quantiles {
        Quantiles {
            q05: self.q05 * by,
            q25: self.q25 * by,
            q50: self.q50 * by,
            q75: self.q75 * by,
            q95: self.q95 * by,
        }
    }
}
