//! Weighted draws of one explanation, and where to look when too few of them fit.
//!
//! A batch is a set of points with their log-likelihoods and, for a refined batch, the ratio of prior to proposal.
//! A proposal is a normal around the weighted draws of the batch before (their weights flattened where they rest on
//! too few draws), mixed with one part in five of the prior, so that no region can get lost and no weight explodes.

use crate::answer::Explanation;
use crate::case::StemCase;
use crate::draws::{DIMS, Points, Sampler};
use crate::explain::{Params, dimensions};
use crate::lanes::{Lanes, WIDTH};
use crate::track::Timeline;
use crate::weigh::{Best, Weighed, weigh};
use model::math;
use std::borrow::Cow;

/// Every fifth point of a refined batch stays a draw of the prior.
const PRIOR_EVERY: usize = 5;
/// The proposal is this much wider than the weighted draws.
const WIDEN: f64 = 1.25;
/// A whole row this far below the best (in logarithms) weighs nothing.
const NOTHING: f64 = -40.0;
/// Flatten weights until they rest on at least this many draws.
const REST_ON: f64 = 40.0;

/// One explanation's points with their weights.
pub(crate) struct Batch<'a> {
    pub kind: Explanation,
    pub rows: Cow<'a, [Points]>,
    pub weighed: Vec<Weighed>,
    /// Log of prior over proposal; `None` for draws of the prior.
    ratio: Option<Vec<Lanes>>,
    /// Evidence of all looks.
    pub evidence: Evidence,
}

/// What a batch's weights say together.
pub(crate) struct Evidence {
    /// Log of the mean weight.
    pub log: f64,
    /// Weights relative to the largest.
    pub weights: Vec<Lanes>,
    /// Sum of those.
    pub sum: f64,
    /// Draws they rest on: squared sum over sum of squares.
    pub rests_on: f64,
}

impl<'a> Batch<'a> {
    /// The batch of the sampler's own points: draws of the prior.
    pub(crate) fn first(
        kind: Explanation,
        line: &Timeline,
        case: &StemCase,
        sampler: &'a Sampler,
        best: &mut Best,
    ) -> Batch<'a> {
        Batch::weighed(
            kind,
            Cow::Borrowed(sampler.rows()),
            None,
            line,
            case,
            sampler,
            best,
        )
    }

    fn weighed(
        kind: Explanation,
        rows: Cow<'a, [Points]>,
        ratio: Option<Vec<Lanes>>,
        line: &Timeline,
        case: &StemCase,
        sampler: &Sampler,
        best: &mut Best,
    ) -> Batch<'a> {
        let mut weigh_row = |z| {
            weigh(
                kind,
                line,
                case,
                &Params::of(kind, z, &case.prior, sampler.normal(), line.window),
                best,
            )
        };
        let weighed: Vec<Weighed> = rows.iter().map(&mut weigh_row).collect();
        let evidence = evidence(&weighed, ratio.as_deref(), 1.0, |w| &w.all);
        Batch {
            kind,
            rows,
            weighed,
            ratio,
            evidence,
        }
    }

    /// Evidence of all looks but the last.
    pub(crate) fn evidence_before(&self) -> Evidence {
        evidence(&self.weighed, self.ratio.as_deref(), 1.0, |w| &w.before)
    }

    /// Weights flattened until they rest on [`REST_ON`] draws.
    fn flattened(&self) -> Cow<'_, [Lanes]> {
        if self.evidence.rests_on >= REST_ON {
            return Cow::Borrowed(&self.evidence.weights);
        }
        let powered = |power| evidence(&self.weighed, self.ratio.as_deref(), power, |w| &w.all);
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..8 {
            let middle = 0.5 * (low + high);
            if powered(middle).rests_on >= REST_ON {
                low = middle
            } else {
                high = middle
            }
        }
        Cow::Owned(powered(low).weights)
    }

    /// A batch of draws around the weighted ones.
    pub(crate) fn refined(
        &self,
        line: &Timeline,
        case: &StemCase,
        sampler: &Sampler,
        best: &mut Best,
    ) -> Batch<'a> {
        let proposal = Proposal::around(self);
        let rows: Vec<Points> = sampler
            .rows()
            .iter()
            .map(|base| proposal.row(base))
            .collect();
        let ratio = rows.iter().map(|row| proposal.log_ratio(row)).collect();
        Batch::weighed(
            self.kind,
            Cow::Owned(rows),
            Some(ratio),
            line,
            case,
            sampler,
            best,
        )
    }
}

/// Weights (log-likelihood and ratio, raised to a power) and what they say together.
fn evidence(
    weighed: &[Weighed],
    ratio: Option<&[Lanes]>,
    power: f64,
    log: fn(&Weighed) -> &Lanes,
) -> Evidence {
    let mut weights: Vec<Lanes> = weighed.iter().map(|w| *log(w)).collect();
    if let Some(ratio) = ratio {
        for (row, ratio) in weights.iter_mut().zip(ratio) {
            for i in 0..WIDTH {
                row[i] += ratio[i];
            }
        }
    }
    let tops: Vec<f64> = weights
        .iter()
        .map(|row| row.iter().copied().fold(f64::NEG_INFINITY, f64::max))
        .collect();
    let top = tops.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let (mut sum, mut squares) = (0.0, 0.0);
    for (row, row_top) in weights.iter_mut().zip(tops) {
        if power * (row_top - top) < NOTHING {
            *row = [0.0; WIDTH];
            continue;
        }
        for w in row.iter_mut() {
            *w = math::exp_quick(power * (*w - top));
        }
        sum += row.iter().sum::<f64>();
        squares += row.iter().map(|w| w * w).sum::<f64>();
    }
    let count = (weights.len() * WIDTH) as f64;
    Evidence {
        log: top + math::ln(sum / count),
        weights,
        sum,
        rests_on: sum * sum / squares,
    }
}

/// A normal distribution in the coordinates of an explanation's points.
struct Proposal {
    size: usize,
    mean: [f64; DIMS],
    /// Lower triangle of the Cholesky factor of the widened covariance.
    factor: [[f64; DIMS]; DIMS],
    log_det: f64,
}

impl Proposal {
    fn around(batch: &Batch<'_>) -> Proposal {
        let size = dimensions(batch.kind);
        let weights = batch.flattened();
        let total: f64 = weights.iter().flatten().sum();
        let mut mean = [0.0; DIMS];
        for (z, w) in batch.rows.iter().zip(weights.iter()) {
            for (d, m) in mean[..size].iter_mut().enumerate() {
                *m += z[d].iter().zip(w).map(|(z, w)| z * w).sum::<f64>() / total;
            }
        }
        let mut spread = [[0.0; DIMS]; DIMS];
        for (z, w) in batch.rows.iter().zip(weights.iter()) {
            if w.iter().all(|w| *w < 1e-9) {
                continue;
            }
            for a in 0..size {
                for b in 0..=a {
                    let mut sum = 0.0;
                    for i in 0..WIDTH {
                        sum += w[i] * (z[a][i] - mean[a]) * (z[b][i] - mean[b]);
                    }
                    spread[a][b] += sum / total;
                }
            }
        }
        let mut out = Proposal {
            size,
            mean,
            factor: spread,
            log_det: 0.0,
        };
        out.factorise();
        out
    }

    /// Cholesky in place, after widening and with a floor that keeps it positive.
    fn factorise(&mut self) {
        for a in 0..self.size {
            for b in 0..=a {
                let mut sum = self.factor[a][b] * WIDEN * WIDEN + if a == b { 1e-4 } else { 0.0 };
                for k in 0..b {
                    sum -= self.factor[a][k] * self.factor[b][k];
                }
                self.factor[a][b] = if a == b {
                    sum.max(1e-6).sqrt()
                } else {
                    sum / self.factor[b][b]
                };
            }
            self.log_det += math::ln(self.factor[a][a]);
        }
    }

    fn row(&self, base: &Points) -> Points {
        let mut out = *base;
        for a in 0..self.size {
            for lane in 0..WIDTH {
                if lane % PRIOR_EVERY != 0 {
                    out[a][lane] = self.mean[a]
                        + (0..=a)
                            .map(|b| self.factor[a][b] * base[b][lane])
                            .sum::<f64>();
                }
            }
        }
        out
    }

    /// Log of prior over the mixture of prior and normal.
    fn log_ratio(&self, z: &Points) -> Lanes {
        let prior_share = WIDTH.div_ceil(PRIOR_EVERY) as f64 / WIDTH as f64;
        let mut own = [[0.0; WIDTH]; DIMS];
        let mut gain = [-self.log_det; WIDTH];
        for a in 0..self.size {
            for lane in 0..WIDTH {
                let mut sum = z[a][lane] - self.mean[a];
                for b in 0..a {
                    sum -= self.factor[a][b] * own[b][lane];
                }
                own[a][lane] = sum / self.factor[a][a];
                gain[lane] += 0.5 * (z[a][lane] * z[a][lane] - own[a][lane] * own[a][lane]);
            }
        }
        gain.map(|g| -math::ln_quick(prior_share + (1.0 - prior_share) * math::exp_quick(g)))
    }
}

/// The rows of kept points: dense rows again, the last one filled with points of weight 0.
pub(crate) fn dense(kept: &[(Point, f64)]) -> Vec<(Points, Lanes)> {
    kept.chunks(WIDTH)
        .map(|chunk| {
            let mut z = [[0.0; WIDTH]; DIMS];
            let mut weight = [0.0; WIDTH];
            for (lane, (point, w)) in chunk.iter().enumerate() {
                for (d, row) in z.iter_mut().enumerate() {
                    row[lane] = point[d];
                }
                weight[lane] = *w;
            }
            (z, weight)
        })
        .collect()
}

/// One point.
pub(crate) type Point = [f64; DIMS];

/// One point of a row.
pub(crate) fn point(row: &Points, lane: usize) -> Point {
    std::array::from_fn(|d| row[d][lane])
}
