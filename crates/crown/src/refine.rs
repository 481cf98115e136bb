//! Weighted draws of one explanation, and where to look when too few of them fit.
//!
//! A batch is a set of points with their log-likelihoods and, for a refined batch, the ratio of prior to proposal.
//! A proposal is a normal around the weighted draws of the batch before (their weights flattened where they rest on
//! too few draws), mixed with one part in five of the prior, so that no region can get lost and no weight explodes.

use crate::answer::Explanation;
use crate::case::StemCase;
use crate::draws::{DIMS, NOISE, Points, Sampler};
use crate::explain::{Params, dimensions};
use crate::lanes::{Lanes, WIDTH};
use crate::track::Timeline;
use crate::weigh::{Weighed, weigh};
use model::math;

/// Every fifth point of a refined batch stays a draw of the prior.
const PRIOR_EVERY: usize = 5;
/// The proposal is this much wider than the weighted draws.
const WIDEN: f64 = 1.25;
/// Flatten weights until they rest on at least this many draws.
const REST_ON: f64 = 40.0;

/// One explanation's points with their weights.
pub(crate) struct Batch {
    pub kind: Explanation,
    pub rows: Vec<Points>,
    pub weighed: Vec<Weighed>,
    /// Log of prior over proposal, a row of lanes each.
    pub ratio: Vec<Lanes>,
}

impl Batch {
    /// The batch of the sampler's own points: draws of the prior.
    pub(crate) fn first(
        kind: Explanation,
        line: &Timeline,
        case: &StemCase,
        sampler: &Sampler,
    ) -> Batch {
        let ratio = vec![[0.0; WIDTH]; sampler.rows().len()];
        Batch::weighed(kind, sampler.rows().to_vec(), ratio, line, case, sampler)
    }

    fn weighed(
        kind: Explanation,
        rows: Vec<Points>,
        ratio: Vec<Lanes>,
        line: &Timeline,
        case: &StemCase,
        sampler: &Sampler,
    ) -> Batch {
        let weighed = rows
            .iter()
            .map(|z| {
                weigh(
                    kind,
                    line,
                    case,
                    &Params::of(kind, z, &case.prior, sampler.normal(), line.window),
                )
            })
            .collect();
        Batch {
            kind,
            rows,
            weighed,
            ratio,
        }
    }

    /// Number of points.
    pub(crate) fn len(&self) -> usize {
        self.rows.len() * WIDTH
    }

    /// Log weight of a point under all looks (`before` false) or without the last one.
    #[inline(always)]
    pub(crate) fn log_weight(&self, row: usize, lane: usize, before: bool) -> f64 {
        let w = &self.weighed[row];
        (if before { w.before[lane] } else { w.all[lane] }) + self.ratio[row][lane]
    }

    /// Largest log weight.
    pub(crate) fn top(&self, before: bool) -> f64 {
        let mut top = f64::NEG_INFINITY;
        for row in 0..self.rows.len() {
            for lane in 0..WIDTH {
                top = top.max(self.log_weight(row, lane, before));
            }
        }
        top
    }

    /// Log of the mean weight (the evidence), the weights relative to the largest, and the draws they rest on.
    pub(crate) fn evidence(&self, before: bool) -> (f64, Vec<Lanes>, f64) {
        let top = self.top(before);
        let (weights, sum, squares) = self.powered(top, 1.0, before);
        (
            top + math::ln(sum / self.len() as f64),
            weights,
            sum * sum / squares,
        )
    }

    fn powered(&self, top: f64, power: f64, before: bool) -> (Vec<Lanes>, f64, f64) {
        let (mut sum, mut squares) = (0.0, 0.0);
        let mut weights = vec![[0.0; WIDTH]; self.rows.len()];
        for (row, out) in weights.iter_mut().enumerate() {
            for (lane, w) in out.iter_mut().enumerate() {
                *w = math::exp_quick(power * (self.log_weight(row, lane, before) - top));
            }
            sum += out.iter().sum::<f64>();
            squares += out.iter().map(|w| w * w).sum::<f64>();
        }
        (weights, sum, squares)
    }

    /// Weights flattened until they rest on [`REST_ON`] draws.
    fn flattened(&self) -> Vec<Lanes> {
        let top = self.top(false);
        let (mut low, mut high) = (0.0, 1.0);
        let (weights, sum, squares) = self.powered(top, 1.0, false);
        if sum * sum / squares >= REST_ON {
            return weights;
        }
        for _ in 0..8 {
            let middle = 0.5 * (low + high);
            let (_, sum, squares) = self.powered(top, middle, false);
            if sum * sum / squares >= REST_ON {
                low = middle
            } else {
                high = middle
            }
        }
        self.powered(top, low, false).0
    }

    /// A batch of draws around the weighted ones.
    pub(crate) fn refined(&self, line: &Timeline, case: &StemCase, sampler: &Sampler) -> Batch {
        let proposal = Proposal::around(self);
        let rows: Vec<Points> = sampler
            .rows()
            .iter()
            .map(|base| proposal.row(base))
            .collect();
        let ratio = rows.iter().map(|row| proposal.log_ratio(row)).collect();
        Batch::weighed(self.kind, rows, ratio, line, case, sampler)
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
    fn around(batch: &Batch) -> Proposal {
        let size = dimensions(batch.kind);
        let weights = batch.flattened();
        let total: f64 = weights.iter().flatten().sum();
        let mut mean = [0.0; DIMS];
        for (z, w) in batch.rows.iter().zip(&weights) {
            for (d, m) in mean[..size].iter_mut().enumerate() {
                *m += z[d].iter().zip(w).map(|(z, w)| z * w).sum::<f64>() / total;
            }
        }
        let mut spread = [[0.0; DIMS]; DIMS];
        for (z, w) in batch.rows.iter().zip(&weights) {
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
pub(crate) fn dense(kept: &[(Points1, f64)]) -> Vec<(Points, Lanes)> {
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
pub(crate) type Points1 = [f64; DIMS];

/// One point of a row.
pub(crate) fn point(row: &Points, lane: usize) -> Points1 {
    std::array::from_fn(|d| row[d][lane])
}

const _: () = assert!(NOISE == DIMS - 1);
