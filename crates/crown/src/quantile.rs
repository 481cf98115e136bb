//! Quantiles of weighted draws, with and without counting noise.

use crate::answer::Quantiles;

/// The five levels.
pub(crate) const LEVELS: [f64; 5] = [0.05, 0.25, 0.50, 0.75, 0.95];

impl Quantiles {
    pub(crate) fn from_levels(q: [f64; 5]) -> Quantiles {
        Quantiles {
            q05: q[0],
            q25: q[1],
            q50: q[2],
            q75: q[3],
            q95: q[4],
        }
    }
}

const BINS: usize = 512;

/// Quantiles at given levels of weighted values, by a fine histogram with straight lines inside its bins
/// (error below 1/512 of the range). Values that are all the same give that value. Weights need not sum to 1.
pub(crate) fn weighted<const N: usize>(
    draws: impl Iterator<Item = (f64, f64)> + Clone,
    levels: [f64; N],
) -> [f64; N] {
    let (mut low, mut high) = (f64::MAX, f64::MIN);
    for (value, weight) in draws.clone() {
        if weight > 0.0 {
            low = low.min(value);
            high = high.max(value);
        }
    }
    if low.partial_cmp(&high) != Some(std::cmp::Ordering::Less) {
        return [if low == high { low } else { 0.0 }; N];
    }
    let mut bins = [0.0; BINS];
    let per_bin = BINS as f64 / (high - low);
    for (value, weight) in draws {
        if weight > 0.0 {
            bins[(((value - low) * per_bin) as usize).min(BINS - 1)] += weight;
        }
    }
    let total: f64 = bins.iter().sum();
    let mut out = [high; N];
    let (mut bin, mut below) = (0, 0.0);
    for (slot, level) in out.iter_mut().zip(levels) {
        let aim = level * total;
        while bin < BINS - 1 && below + bins[bin] < aim {
            below += bins[bin];
            bin += 1;
        }
        let part = if bins[bin] > 0.0 {
            ((aim - below) / bins[bin]).clamp(0.0, 1.0)
        } else {
            0.0
        };
        *slot = low + (bin as f64 + part) / per_bin;
    }
    out
}

/// The distribution of a count whose mean is a weighted mixture, negative binomial around each mean.
pub(crate) struct CountMixture {
    /// `below[k]` is the probability of at most k.
    below: Vec<f64>,
}

const MEANS: usize = 40;

impl CountMixture {
    /// From weighted means (each at least 0) and the size of the negative binomial (whole).
    pub(crate) fn of(draws: impl Iterator<Item = (f64, f64)> + Clone, size: u32) -> CountMixture {
        let high = draws
            .clone()
            .filter(|d| d.1 > 0.0)
            .fold(0.0, |h: f64, d| h.max(d.0));
        // bins finer near zero, where a mean matters most: equal steps of the square root
        let per_bin = (MEANS as f64 - 1e-9) / high.max(1e-9).sqrt();
        let mut bins = [(0.0, 0.0); MEANS];
        for (mean, weight) in draws {
            if weight > 0.0 {
                let bin = &mut bins[((mean.max(0.0).sqrt() * per_bin) as usize).min(MEANS - 1)];
                bin.0 += weight;
                bin.1 += weight * mean;
            }
        }
        let top = high + 8.0 * (high + high * high / f64::from(size)).sqrt() + 12.0;
        let mut share = vec![0.0; top as usize + 1];
        add_negative_binomials(&mut share, &bins, f64::from(size));
        let mut sum = 0.0;
        for s in &mut share {
            sum += *s;
            *s = sum;
        }
        CountMixture { below: share }
    }

    /// Smallest count whose probability of not being passed reaches `level`.
    pub(crate) fn quantile(&self, level: f64) -> f64 {
        self.below
            .partition_point(|b| *b < level)
            .min(self.below.len() - 1) as f64
    }

    /// The five quantiles.
    pub(crate) fn quantiles(&self) -> Quantiles {
        Quantiles::from_levels(LEVELS.map(|l| self.quantile(l)))
    }

    /// Probability of at least `count`.
    pub(crate) fn at_least(&self, count: f64) -> f64 {
        let k = count.ceil().max(0.0) as usize;
        match k {
            0 => 1.0,
            _ => (1.0 - self.below.get(k - 1).copied().unwrap_or(1.0)).max(0.0),
        }
    }

    /// Smallest count reached with less than this probability.
    pub(crate) fn rare_from(&self, probability: f64) -> u32 {
        self.below.partition_point(|b| *b <= 1.0 - probability) as u32 + 1
    }
}

/// Adds the probabilities of every count, all means side by side.
fn add_negative_binomials(share: &mut [f64], bins: &[(f64, f64); MEANS], size: f64) {
    let total: f64 = bins.iter().map(|b| b.0).sum();
    let mut step = [0.0; MEANS];
    let mut p = [0.0; MEANS];
    for (i, (weight, weighted_mean)) in bins.iter().enumerate().filter(|(_, b)| b.0 > 0.0) {
        let mean = weighted_mean / weight;
        step[i] = mean / (mean + size);
        p[i] = (0..size as u32).fold(weight / total, |p, _| p * (1.0 - step[i]));
    }
    for (k, slot) in share.iter_mut().enumerate() {
        let ratio = (k as f64 + size) / (k as f64 + 1.0);
        // four partial sums: the compiler may not reorder a sum by itself
        let mut sums = [0.0; 4];
        for (p, step) in p.chunks_exact_mut(4).zip(step.chunks_exact(4)) {
            for i in 0..4 {
                sums[i] += p[i];
                p[i] *= step[i] * ratio;
            }
        }
        *slot = (sums[0] + sums[1]) + (sums[2] + sums[3]);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use statrs::distribution::{DiscreteCDF, NegativeBinomial};

    #[test]
    fn quantiles_of_a_uniform() {
        let draws = (0..10_000).map(|i| (f64::from(i) / 10_000.0, 2.0));
        let q = weighted(draws, LEVELS);
        for (got, want) in q.iter().zip(LEVELS) {
            assert!((got - want).abs() < 0.002, "{got} {want}");
        }
        assert_eq!(
            weighted([(3.0, 1.0), (3.0, 0.5), (9.0, 0.0)].into_iter(), [0.5]),
            [3.0]
        );
        assert_eq!(weighted(std::iter::empty(), [0.5]), [0.0]);
    }

    /// Against the negative binomial of the `statrs` library.
    #[test]
    fn a_single_mean_gives_the_negative_binomial() {
        for mean in [0.15, 2.0, 17.0] {
            let mix = CountMixture::of([(mean, 1.0)].into_iter(), 8);
            let reference = NegativeBinomial::new(8.0, 8.0 / (8.0 + mean)).unwrap();
            for k in 1..40u32 {
                let want = 1.0 - reference.cdf(u64::from(k) - 1);
                assert!(
                    (mix.at_least(f64::from(k)) - want).abs() < 1e-9,
                    "{mean} {k}"
                );
            }
            let rare = mix.rare_from(0.05);
            assert!(
                mix.at_least(f64::from(rare)) < 0.05 && mix.at_least(f64::from(rare - 1)) >= 0.05
            );
            assert_eq!(
                mix.quantile(0.5),
                (0..).find(|k| reference.cdf(*k) >= 0.5).unwrap() as f64
            );
        }
    }
}
