//! Decline: a disease takes the whole crown, oldest first, while frond making stops.
//!
//! Onset anywhere from 45 days before the first inspection to today; D 60 to 180 days to death (queen and Mexican fan
//! palm wilt 60 to 90 [pp278]; lethal yellowing 90 to 180). The share `((t - onset)/D)^(1/0.7)` of the fronds is gone
//! by t, fronds made after the onset included, so that nothing lives at onset + D. Production falls to 0 over D.
//! What would change it: a dated loss curve of a named wilt.

use super::{OWN, Params, Window, between};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::life::LifeTable;
use crate::track::{Crown, Span};
use model::math;

const ONSET: usize = 0;
const PER_LENGTH: usize = 1;

/// The decline may have begun this long before the first inspection, days.
pub const ONSET_BEFORE_FIRST: f64 = 45.0;
/// Longest step in days: the share is a smooth curve over at least 60 days.
pub(crate) const STEP: f64 = 30.0;

pub(crate) fn parameters(u: &impl Fn(usize) -> Lanes, p: &mut Params, window: Window) {
    p.own[ONSET] = between(&u(OWN), (window.first - ONSET_BEFORE_FIRST, window.today));
    let length = between(&u(OWN + 1), (60.0, 180.0));
    p.own[PER_LENGTH] = lanes(|i| 1.0 / length[i]);
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
    let mut half = [0.0; WIDTH];
    let mut quiet = [0.0; WIDTH];
    let mut ill = [0.0; WIDTH];
    for i in 0..WIDTH {
        let x0 = ((span.from - p.own[ONSET][i]) * p.own[PER_LENGTH][i]).clamp(0.0, 1.0);
        let x1 = ((span.from + dt[i] - p.own[ONSET][i]) * p.own[PER_LENGTH][i]).clamp(0.0, 1.0);
        let left = |x: f64| 1.0 - math::exp_quick(math::ln_quick(x.max(1e-9)) * (1.0 / 0.7));
        half[i] = (left(x1).max(0.0) / left(x0).max(1e-12)).min(1.0).sqrt();
        // full production up to the onset, then 1 - x
        let length = 1.0 / p.own[PER_LENGTH][i];
        let pace = p.rate[i] * span.pace;
        quiet[i] = pace * (p.own[ONSET][i] - span.from).clamp(0.0, dt[i]);
        ill[i] = pace * (x1 - x0) * length * (1.0 - 0.5 * (x0 + x1));
    }
    let before = crown.live;
    super::settled::advance(life, p, crown, &quiet);
    keep_share(life, p, crown, &half);
    super::settled::advance(life, p, crown, &ill);
    keep_share(life, p, crown, &half);
    let clock = lanes(|i| quiet[i] + ill[i]);
    let died = lanes(|i| clock[i] - (crown.live[i] - before[i]));
    (clock, died)
}

#[inline(always)]
fn keep_share(life: &LifeTable, p: &Params, crown: &mut Crown, share: &Lanes) {
    for i in 0..WIDTH {
        crown.live[i] *= share[i];
        crown.age[i] = life.age(crown.live[i] * p.per_life[i]);
    }
}
