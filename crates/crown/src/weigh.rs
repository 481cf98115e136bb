//! Counts against crowns: how likely is what was counted.
//!
//! live ~ normal(live, 0.7 + 0.03 live); yellowing ~ negative binomial of size 6; brown ~ negative binomial of size 8;
//! new ~ normal(births, 0.6); all assumed. A negative binomial's mean is raised a little ([`CountNoise`]). Terms that are the same for every crown are left out. A missing count drops out.

use crate::answer::Explanation;
use crate::case::StemCase;
use crate::explain::Params;
use crate::lanes::{Lanes, WIDTH};
use crate::track::{Crown, Timeline, Watch, run, yellowing};
use model::{Inspection, math};

/// Counting noise of fronds that are told one by one: negative binomial around the mean raised by `stray`, since a torn,
/// spotted or tipped frond gets counted now and then.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CountNoise {
    /// Size of the negative binomial.
    pub size: u32,
    /// Added to the mean.
    pub stray: f64,
}

/// Noise of a yellowing count (assumed): any yellow or dead tissue counts, so a fed crown often shows one or two.
pub const YELLOWING: CountNoise = CountNoise {
    size: 6,
    stray: 0.5,
};
/// Noise of a count of dead or lost fronds (assumed).
pub const BROWN: CountNoise = CountNoise {
    size: 8,
    stray: 0.15,
};
/// Standard deviation of a count of new fronds (assumed).
pub const SD_NEW: f64 = 0.6;

/// Standard deviation of a live count (assumed).
#[inline(always)]
pub fn sd_live(live: f64) -> f64 {
    0.7 + 0.03 * live
}

/// A row's log-likelihood and what the loss reading needs of it.
#[derive(Clone)]
pub(crate) struct Weighed {
    /// Log-likelihood of all looks.
    pub all: Lanes,
    /// Log-likelihood without the last look.
    pub before: Lanes,
    /// Deaths in the stretch that ends with the last look.
    pub lost: Lanes,
    /// Whether the row was followed to the last look.
    pub complete: bool,
}

/// The best log-likelihood seen so far: what can no longer come near it need not be followed to its end.
pub(crate) struct Best(f64);

/// Draws this far below the best (in logarithms) weigh nothing.
const HOPELESS: f64 = 40.0;
/// The most that one look can add: a live count met exactly by a small crown; all other terms are at most 0.
const MOST_A_LOOK: f64 = 0.36;

impl Best {
    pub(crate) fn none() -> Best {
        Best(f64::NEG_INFINITY)
    }
}

/// Runs a row and weighs it against every look. A row that has fallen hopelessly behind is left where it is, its
/// log-likelihoods (already that far down) as they stand.
pub(crate) fn weigh(
    kind: Explanation,
    line: &Timeline,
    case: &StemCase,
    p: &Params,
    best: &mut Best,
) -> Weighed {
    let zero = [0.0; WIDTH];
    let out = Weighed {
        all: zero,
        before: zero,
        lost: zero,
        complete: false,
    };
    let mut scale = Scale {
        kind,
        line,
        case,
        p,
        best: best.0,
        out,
    };
    if line.looks > 0 {
        run(kind, line, case, p, &mut scale);
        best.0 = scale.best.max(top(&scale.out.all));
    }
    scale.out
}

fn top(row: &Lanes) -> f64 {
    row.iter().copied().fold(f64::NEG_INFINITY, f64::max)
}

struct Scale<'a> {
    kind: Explanation,
    line: &'a Timeline,
    case: &'a StemCase,
    p: &'a Params,
    best: f64,
    out: Weighed,
}

impl Watch for Scale<'_> {
    fn look(&mut self, k: usize, t: f64, crown: &Crown, brown_known: bool) -> bool {
        let look = &self.case.inspections[k];
        self.out.before = self.out.all;
        self.out.lost = crown.lost;
        let all = &mut self.out.all;
        let mut likelihood = [1.0; WIDTH];
        if look.yellowing.is_some() || look.green.is_some() {
            let yellow = yellowing(self.kind, self.line, self.p, crown, t);
            counted_live(all, &mut likelihood, look, crown, &yellow);
            if let Some(count) = look.yellowing {
                negative_binomial(all, &mut likelihood, count, &yellow, YELLOWING);
            }
        }
        if let (Some(count), true) = (look.brown, brown_known) {
            negative_binomial(all, &mut likelihood, count, &crown.brown, BROWN);
        }
        if let (Some(count), true) = (look.new_leaves, k > 0) {
            for i in 0..WIDTH {
                let off = (f64::from(count) - crown.born[i]) / SD_NEW;
                all[i] -= 0.5 * off * off;
            }
        }
        for i in 0..WIDTH {
            all[i] += math::ln_quick(likelihood[i]);
        }
        let left = (self.line.looks - 1 - k) as f64;
        let hopeless = top(all) + left * MOST_A_LOOK < self.best - HOPELESS;
        self.out.complete = left == 0.0;
        if hopeless && left > 0.0 {
            self.out.before = self.out.all;
        }
        left > 0.0 && !hopeless
    }
}

/// The live count, or the green count alone where yellowing was not counted.
#[inline(always)]
fn counted_live(
    all: &mut Lanes,
    likelihood: &mut Lanes,
    look: &Inspection,
    crown: &Crown,
    yellow: &Lanes,
) {
    let Some(green) = look.green.map(f64::from) else {
        return;
    };
    let (count, share) = match look.yellowing {
        Some(y) => (green + f64::from(y), 0.0),
        None => (green, 1.0),
    };
    for i in 0..WIDTH {
        let precision = 1.0 / sd_live(crown.live[i]);
        let off = (count - (crown.live[i] - share * yellow[i])) * precision;
        all[i] -= 0.5 * off * off;
        likelihood[i] *= precision;
    }
}

/// Counts up to this go into the plain product, which is far from the ends of a double's range; its logarithm is
/// taken once a look. Larger ones go in as logarithms.
const SMALL_COUNT: u32 = 20;

#[inline(always)]
fn negative_binomial(
    all: &mut Lanes,
    likelihood: &mut Lanes,
    count: u32,
    mean: &Lanes,
    noise: CountNoise,
) {
    let size = f64::from(noise.size);
    if count > SMALL_COUNT {
        let n = f64::from(count);
        for i in 0..WIDTH {
            let mean = mean[i] + noise.stray;
            all[i] += n * math::ln_quick(mean) - (n + size) * math::ln_quick(mean + size);
        }
        return;
    }
    // (mean / (mean + size))^count (size / (mean + size))^size, up to a constant; a few lanes at a time, which then stay
    // in the processor's registers through all the multiplications
    for (product, mean) in likelihood
        .chunks_exact_mut(STRIP)
        .zip(mean.chunks_exact(STRIP))
    {
        let mut odds = [0.0; STRIP];
        let mut none = [0.0; STRIP];
        for i in 0..STRIP {
            none[i] = size / (mean[i] + noise.stray + size);
            odds[i] = 1.0 - none[i];
        }
        multiply_power(product, odds, count);
        multiply_power(product, none, noise.size);
    }
}

const STRIP: usize = 8;

/// Multiplies by a whole power, by squaring.
#[inline(always)]
fn multiply_power(product: &mut [f64], mut base: [f64; STRIP], mut power: u32) {
    while power > 0 {
        if power & 1 == 1 {
            for i in 0..STRIP {
                product[i] *= base[i];
            }
        }
        power >>= 1;
        if power > 0 {
            for b in &mut base {
                *b *= *b;
            }
        }
    }
}
