//! Decline: a disease takes the whole crown, oldest first, while frond making stops.
//!
//! Onset anywhere from 45 days before the first inspection to today; D 60 to 180 days to death (queen and Mexican fan
//! palm wilt 60 to 90 [pp278]; lethal yellowing 90 to 180). The share `((t - onset)/D)^(1/0.7)` of the fronds is gone
//! by t, fronds made after the onset included, so that nothing lives at onset + D. Production falls to 0 over D.
//! What would change it: a dated loss curve of a named wilt.

use super::{OWN, Params, Window, between, settled};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::life::LifeTable;
use crate::track::{Crown, Span};
use model::math;
use std::sync::LazyLock;

const ONSET: usize = 0;
const PER_LENGTH: usize = 1;

/// The decline may have begun this long before the first inspection, days.
pub const ONSET_BEFORE_FIRST: f64 = 45.0;
/// Longest step in days: the share is a smooth curve over at least 60 days.
pub(crate) const STEP: f64 = 45.0;

pub(crate) fn parameters(u: &impl Fn(usize) -> Lanes, p: &mut Params, window: Window) {
    p.own[ONSET] = between(&u(OWN), (window.first - ONSET_BEFORE_FIRST, window.today));
    let length = between(&u(OWN + 1), (60.0, 180.0));
    p.own[PER_LENGTH] = lanes(|i| 1.0 / length[i]);
}

/// First onset and last death of a row, days of the case: before and after, no step need be short.
pub(crate) fn bounds(p: &Params) -> (f64, f64) {
    let mut bounds = (f64::MAX, f64::MIN);
    for i in 0..WIDTH {
        let onset = p.own[ONSET][i];
        bounds = (
            bounds.0.min(onset),
            bounds.1.max(onset + 1.0 / p.own[PER_LENGTH][i]),
        );
    }
    bounds
}

/// Share of the crown left at each part of a decline, in straight pieces (error below 1e-4).
struct Left([(f64, f64); 2 * PIECES]);

const PIECES: usize = 256;

impl Left {
    #[inline(always)]
    fn at(&self, part: f64) -> f64 {
        const ROUND: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52: adding it rounds to a whole number
        let place = part * PIECES as f64;
        // rounding half a step lower is rounding down
        let shifted = (place - 0.499_999_999) + ROUND;
        let (left, rise) = self.0[(shifted.to_bits() & (2 * PIECES as u64 - 1)) as usize];
        left + (place - (shifted - ROUND)) * rise
    }
}

#[inline(always)]
fn within_one(x: f64) -> f64 {
    math::larger(math::smaller(x, 1.0), 0.0)
}

fn left() -> &'static Left {
    static LEFT: LazyLock<Left> = LazyLock::new(|| {
        let share = |k: usize| 1.0 - math::pow((k as f64 / PIECES as f64).min(1.0), 1.0 / 0.7);
        Left(std::array::from_fn(|k| (share(k), share(k + 1) - share(k))))
    });
    &LEFT
}

/// Births up to the onset, births after it, and the share of the crown left by a span of `dt` days each.
#[inline(always)]
fn course(p: &Params, span: Span, dt: &Lanes) -> (Lanes, Lanes, Lanes) {
    let left = left();
    let mut quiet = [0.0; WIDTH];
    let mut ill = [0.0; WIDTH];
    let mut share = [0.0; WIDTH];
    for i in 0..WIDTH {
        let since = span.from - p.own[ONSET][i];
        let x0 = within_one(since * p.own[PER_LENGTH][i]);
        let x1 = within_one((since + dt[i]) * p.own[PER_LENGTH][i]);
        share[i] = left.at(x1) / math::larger(left.at(x0), 1e-12);
        // full production up to the onset, then 1 - x
        let length = 1.0 / p.own[PER_LENGTH][i];
        let pace = p.rate[i] * span.pace;
        quiet[i] = pace * math::smaller(math::larger(-since, 0.0), dt[i]);
        ill[i] = pace * (x1 - x0) * length * (1.0 - 0.5 * (x0 + x1));
    }
    (quiet, ill, share)
}

/// Moves the crowns over a span of `dt` days each; `span.from` in days of the case. Returns births and deaths.
#[inline(always)]
pub(crate) fn advance(
    life: &LifeTable,
    p: &Params,
    crown: &mut Crown,
    span: Span,
    dt: &Lanes,
) -> (Lanes, Lanes) {
    let (quiet, ill, share) = course(p, span, dt);
    let before = crown.live;
    // half the births before the loss and half after it; none after the end
    let later = lanes(|i| if share[i] > 0.0 { 0.5 * ill[i] } else { 0.0 });
    settled::advance(life, p, crown, &lanes(|i| quiet[i] + ill[i] - later[i]));
    keep_share(life, p, crown, &share);
    settled::advance(life, p, crown, &later);
    let clock = lanes(|i| quiet[i] + ill[i]);
    let died = lanes(|i| clock[i] - (crown.live[i] - before[i]));
    (clock, died)
}

/// Fronds yellowing at the start of a span: those that age away as on a fed palm, and those that the decline takes
/// within `dt` days.
#[inline(always)]
pub(crate) fn yellowing(
    life: &LifeTable,
    p: &Params,
    crown: &Crown,
    span: Span,
    dt: &Lanes,
) -> Lanes {
    let (quiet, ill, share) = course(p, span, dt);
    let clock = lanes(|i| quiet[i] + ill[i]);
    let aged = settled::yellowing_in_turn(life, p, crown, &clock, dt);
    lanes(|i| aged[i] + (crown.live[i] - aged[i]) * (1.0 - share[i]))
}

#[inline(always)]
fn keep_share(life: &LifeTable, p: &Params, crown: &mut Crown, share: &Lanes) {
    for i in 0..WIDTH {
        crown.live[i] *= share[i];
        crown.age[i] = life.age(crown.live[i] * p.per_life[i]);
    }
}
