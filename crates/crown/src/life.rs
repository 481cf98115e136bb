//! How long a frond lives, in units of its mean life.
//!
//! A frond lives `L * G` clock units: L its mean, G gamma with mean 1 and coefficient of variation 0.10 (assumed).
//! `survival(x)` is the share still alive at age `x * L`; `live(x)` is the integral of survival from 0 to x: the live
//! fronds of a crown whose fronds older than `x * L` are gone, as a share of the full crown.

use model::math;
use std::sync::LazyLock;

/// Coefficient of variation of a frond's life (assumed).
pub const LIFE_CV: f64 = 0.10;
/// Shape of the gamma distribution with mean 1 and that coefficient of variation.
pub const SHAPE: f64 = 1.0 / (LIFE_CV * LIFE_CV);
/// An age at which nothing is alive: stands for "never cut". Ages are kept at or below it.
pub const NEVER_CUT: f64 = 1.99;

// Small enough for a processor's nearest cache, fine enough for the errors stated below.
const PER_UNIT: f64 = 256.0;
const SIZE: usize = 512;
const SHARES: usize = 1024;
const ROUND: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52: adding it rounds to a whole number

/// Live share and survival at the nodes, and the inverse of the live share.
pub struct LifeTable {
    nodes: Box<[Node; SIZE]>,
    inverse: Box<[Slope; SHARES]>,
}

/// A straight piece of the inverse: age at its lower end and rise to its upper end.
#[derive(Clone, Copy, Default)]
struct Slope {
    age: f64,
    rise: f64,
}

#[derive(Clone, Copy, Default)]
struct Node {
    live: f64,
    survival: f64,
    half_density: f64,
}

/// The table, computed once; the same bits everywhere.
pub fn table() -> &'static LifeTable {
    static TABLE: LazyLock<LifeTable> = LazyLock::new(LifeTable::compute);
    &TABLE
}

impl LifeTable {
    fn compute() -> LifeTable {
        let mut nodes = Box::new([Node::default(); SIZE]);
        for (i, node) in nodes.iter_mut().enumerate() {
            let x = i as f64 / PER_UNIT;
            let survival = 1.0 - gamma_p(SHAPE, SHAPE * x);
            let live = x * survival + gamma_p(SHAPE + 1.0, SHAPE * x);
            *node = Node {
                live,
                survival,
                half_density: 0.5 * density(x),
            };
        }
        let mut out = LifeTable {
            nodes,
            inverse: Box::new([Slope::default(); SHARES]),
        };
        for i in 0..SHARES {
            let age = out.solve_age(i as f64 / SHARES as f64);
            let next = out.solve_age((i + 1) as f64 / SHARES as f64);
            out.inverse[i] = Slope {
                age,
                rise: next - age,
            };
        }
        out
    }

    /// Live share at age ceiling `x` (units of mean life, 0..=[`NEVER_CUT`]); absolute error below 1e-7.
    #[inline(always)]
    pub fn live(&self, x: f64) -> f64 {
        let (node, step) = self.node(x);
        node.live + step * (node.survival - step * node.half_density)
    }

    /// Share of fronds alive at age `x`.
    #[inline(always)]
    pub fn survival(&self, x: f64) -> f64 {
        let (node, step) = self.node(x);
        node.survival - 2.0 * step * node.half_density
    }

    /// The age ceiling of a crown with this live share (clamped to 0..=1); a full crown gives about 1.5.
    #[inline(always)]
    pub fn age(&self, live_share: f64) -> f64 {
        let place = math::larger(math::smaller(live_share, 1.0 - 1e-9), 0.0) * SHARES as f64;
        // rounding half a step lower is rounding down
        let shifted = (place - 0.499_999_999) + ROUND;
        let piece = self.inverse[(shifted.to_bits() & (SHARES as u64 - 1)) as usize];
        piece.age + (place - (shifted - ROUND)) * piece.rise
    }

    #[inline(always)]
    fn node(&self, x: f64) -> (Node, f64) {
        let place = math::smaller(x, NEVER_CUT) * PER_UNIT;
        let shifted = place + ROUND;
        let i = (shifted.to_bits() & (SIZE as u64 - 1)) as usize;
        (self.nodes[i], (place - (shifted - ROUND)) / PER_UNIT)
    }

    /// Bisection on the monotone live share.
    fn solve_age(&self, share: f64) -> f64 {
        if share >= 1.0 {
            return 1.5;
        }
        let (mut low, mut high) = (0.0, 1.5);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if self.live(middle) < share {
                low = middle
            } else {
                high = middle
            }
        }
        0.5 * (low + high)
    }
}

/// Density of the gamma distribution of G at x.
fn density(x: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    let log =
        SHAPE * math::ln(SHAPE) + (SHAPE - 1.0) * math::ln(x) - SHAPE * x - math::ln_gamma(SHAPE);
    math::exp(log)
}

/// Regularised lower incomplete gamma function P(a, x), by its series below a + 1 and its continued fraction above.
fn gamma_p(a: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    let front = math::exp(a * math::ln(x) - x - math::ln_gamma(a));
    if x < a + 1.0 {
        let (mut term, mut sum, mut k) = (1.0 / a, 1.0 / a, a);
        while term > sum * 1e-17 {
            k += 1.0;
            term *= x / k;
            sum += term;
        }
        front * sum
    } else {
        // Lentz's method for the continued fraction of the upper function
        let tiny = 1e-300;
        let mut b = x + 1.0 - a;
        let mut c = 1.0 / tiny;
        let mut d = 1.0 / b;
        let mut h = d;
        for i in 1..1000 {
            let an = -f64::from(i) * (f64::from(i) - a);
            b += 2.0;
            d = 1.0 / (an * d + b).max(tiny);
            c = (b + an / c).max(tiny);
            let delta = d * c;
            h *= delta;
            if (delta - 1.0).abs() < 1e-16 {
                break;
            }
        }
        1.0 - front * h
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use statrs::distribution::{ContinuousCDF, Gamma};

    /// Against the gamma distribution of the `statrs` library.
    #[test]
    fn survival_and_live_share_agree_with_a_reference_library() {
        let gamma = Gamma::new(SHAPE, SHAPE).unwrap();
        let t = table();
        let mut integral = 0.0;
        let h = 1.0 / 4096.0;
        for i in 0..(2 * 4096) {
            let x = f64::from(i) * h;
            assert!((t.survival(x) - gamma.sf(x)).abs() < 1e-4, "S({x})");
            assert!(
                (t.live(x) - integral).abs() < 1e-7,
                "F({x}) {} {integral}",
                t.live(x)
            );
            integral += h * (gamma.sf(x) + 4.0 * gamma.sf(x + h / 2.0) + gamma.sf(x + h)) / 6.0;
        }
        assert!(
            (t.live(NEVER_CUT) - 1.0).abs() < 1e-9,
            "a full crown is one mean life of births"
        );
    }

    #[test]
    fn the_age_of_a_live_share_is_its_inverse() {
        let t = table();
        for i in 0..=1000 {
            let x = f64::from(i) / 1000.0;
            let share = t.live(x);
            assert!((t.live(t.age(share)) - share).abs() < 1e-4, "{x}");
        }
        assert_eq!(t.age(0.0), t.age(-1.0));
        assert!(t.age(1.0) > 1.3 && t.live(t.age(1.0)) > 0.999_999);
    }
}
