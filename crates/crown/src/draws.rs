//! Low-discrepancy points and the tables that turn them into parameters.

use crate::explain::OWN;
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::season::Season;
use model::{Climate, math};

/// Dimensions of a point: five shared by all explanations, up to five of an explanation's own, one for counting noise.
pub(crate) const DIMS: usize = 11;
/// The dimension that carries counting noise of forecasts.
pub(crate) const NOISE: usize = DIMS - 1;

/// A row of points in standard normal coordinates, one row of lanes a dimension.
pub(crate) type Points = [Lanes; DIMS];

/// Low-discrepancy points and tables; make one per thread and reuse it. Holds no palm's data: the same case gives
/// the same answer whatever was read before.
pub struct Sampler {
    rows: Vec<Points>,
    normal: NormalTable,
    season: Option<(SeasonKey, Season)>,
}

type SeasonKey = (Option<[f64; 12]>, Option<f64>);

impl Sampler {
    /// A sampler with this many draws per explanation, rounded up to a multiple of 64 (1,024 is the default).
    pub fn new(draws: usize) -> Sampler {
        let count = draws.max(1).div_ceil(WIDTH) * WIDTH;
        let mut points: Vec<[f64; DIMS]> = (0..count).map(point).collect();
        // neighbours alike in an explanation's first parameter: a row of declines then begins at about one time
        points.sort_by(|a, b| a[OWN].total_cmp(&b[OWN]));
        let row = |row: &[[f64; DIMS]]| std::array::from_fn(|d| lanes(|i| row[i][d]));
        Sampler {
            rows: points.chunks(WIDTH).map(row).collect(),
            normal: NormalTable::compute(),
            season: None,
        }
    }

    pub(crate) fn rows(&self) -> &[Points] {
        &self.rows
    }

    pub(crate) fn normal(&self) -> &NormalTable {
        &self.normal
    }

    /// The season of a place; the one computed last is remembered, since neighbours share it.
    pub(crate) fn season(&mut self, climate: Option<&Climate>, latitude: Option<f64>) -> Season {
        let means = climate.and_then(Climate::tmean);
        let key = (means, if means.is_some() { None } else { latitude });
        match &self.season {
            Some((known, season)) if *known == key => season.clone(),
            _ => {
                let season = Season::of(climate, latitude);
                self.season = Some((key, season.clone()));
                season
            }
        }
    }
}

/// Point `index` of the scrambled Sobol sequence in standard normal coordinates.
fn point(index: usize) -> [f64; DIMS] {
    const HALF_STEP: f64 = 0.5 / 16_777_216.0;
    std::array::from_fn(|dimension| {
        let u = f64::from(sobol_burley::sample(index as u32, dimension as u32, 0x5EA2));
        normal_quantile((u + HALF_STEP).min(1.0 - HALF_STEP))
    })
}

/// The standard normal quantile by Newton's method on the distribution function, from a rational start
/// (Abramowitz and Stegun 26.2.23).
pub(crate) fn normal_quantile(u: f64) -> f64 {
    let tail = u.min(1.0 - u);
    let t = (-2.0 * math::ln(tail)).sqrt();
    let start = t
        - (2.515517 + t * (0.802853 + t * 0.010328))
            / (1.0 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    let mut z = if u < 0.5 { -start } else { start };
    for _ in 0..3 {
        let density = math::exp(-0.5 * z * z) / std::f64::consts::TAU.sqrt();
        z -= (math::normal_cdf(z) - u) / density;
    }
    z
}

const PER_SIGMA: f64 = 256.0;
const SIZE: usize = 4096;

/// The standard normal distribution function by table: nearest node and three terms of Taylor, error below 1e-9.
pub(crate) struct NormalTable {
    nodes: Box<[(f64, f64); SIZE]>,
}

impl NormalTable {
    fn compute() -> NormalTable {
        let mut nodes = Box::new([(0.0, 0.0); SIZE]);
        for (i, node) in nodes.iter_mut().enumerate() {
            let z = (i as f64 - SIZE as f64 / 2.0) / PER_SIGMA;
            *node = (
                math::normal_cdf(z),
                math::exp(-0.5 * z * z) / std::f64::consts::TAU.sqrt(),
            );
        }
        NormalTable { nodes }
    }

    /// Probability below z.
    #[inline(always)]
    pub(crate) fn below(&self, z: f64) -> f64 {
        const ROUND: f64 = 4_503_599_627_370_496.0;
        let place = math::larger(math::smaller(z, 7.9), -7.9) * PER_SIGMA + SIZE as f64 / 2.0;
        let shifted = place + ROUND;
        let nearest = shifted - ROUND;
        let (value, density) = self.nodes[(shifted.to_bits() & (SIZE as u64 - 1)) as usize];
        let at = (nearest - SIZE as f64 / 2.0) / PER_SIGMA;
        let step = (place - nearest) / PER_SIGMA;
        value + step * density * (1.0 - 0.5 * step * at)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn normal_tables_agree_with_libm() {
        let table = NormalTable::compute();
        for i in -700..700 {
            let z = f64::from(i) * 0.01003;
            assert!((table.below(z) - math::normal_cdf(z)).abs() < 2e-9, "{z}");
        }
        for u in [1e-6, 0.025, 0.3, 0.5, 0.8, 0.975, 1.0 - 1e-6] {
            assert!(
                (math::normal_cdf(normal_quantile(u)) - u).abs() < 1e-12,
                "{u}"
            );
        }
    }

    #[test]
    fn points_are_even_in_every_dimension() {
        let sampler = Sampler::new(1024);
        for dimension in 0..DIMS {
            let mut tenths = [0; 10];
            for row in sampler.rows() {
                for z in row[dimension] {
                    tenths[(math::normal_cdf(z) * 10.0) as usize] += 1;
                }
            }
            assert!(
                tenths.iter().all(|n| (100..=105).contains(n)),
                "{dimension}: {tenths:?}"
            );
        }
    }
}
