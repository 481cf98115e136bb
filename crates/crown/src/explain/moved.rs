//! Move: after a move the palm can keep only the share q of its crown, and makes fronds slowly at first.
//!
//! Besides ageing, `X(t) = n0 (1 - q) (1 - exp(-(t - lag)/tau))` fronds go, oldest first, n0 the live fronds at the
//! move. q normal 0.82, sd 0.06, kept within 0.4 to 0.98 (assumed, from the common practice that 15 to 20 % of a
//! moved palm's crown browns); tau 25 to 70 d, lag 3 to 10 d, m0 0.2 to 0.8, T 180 to 540 d (all assumed).
//! What would change it: dated counts of moved palms.

use super::{OWN, Params, between, settled};
use crate::draws::Points;
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::life::LifeTable;
use crate::track::{Crown, Span};
use model::math;

const KEPT: usize = 0;
const PER_TAU: usize = 1;
const LAG: usize = 2;
const START: usize = 3;
const RECOVER: usize = 4;

/// A move counts for this many days.
pub const COUNTS_FOR_DAYS: i32 = 540;
/// Days after the move at which long steps are cut, so that the fast shedding at first is followed closely.
pub(crate) const NODES: [f64; 12] = [
    10.0, 20.0, 30.0, 45.0, 60.0, 80.0, 105.0, 140.0, 190.0, 260.0, 380.0, 540.0,
];

pub(crate) fn parameters(z: &Points, u: &impl Fn(usize) -> Lanes, p: &mut Params) {
    p.own[KEPT] = lanes(|i| (0.82 + 0.06 * z[OWN][i]).clamp(0.4, 0.98));
    let tau = between(&u(OWN + 1), (25.0, 70.0));
    p.own[PER_TAU] = lanes(|i| 1.0 / tau[i]);
    p.own[LAG] = between(&u(OWN + 2), (3.0, 10.0));
    p.own[START] = between(&u(OWN + 3), (0.2, 0.8));
    p.own[RECOVER] = between(&u(OWN + 4), (180.0, 540.0));
}

/// Births and fronds shed over a span of `dt` days each; `span.from` in days since the move.
#[inline(always)]
fn course(p: &Params, crown: &Crown, span: Span, dt: &Lanes) -> (Lanes, Lanes) {
    let s0 = span.from;
    let mut clock = [0.0; WIDTH];
    let mut shed = [0.0; WIDTH];
    for i in 0..WIDTH {
        let s1 = s0 + dt[i];
        let still =
            |s: f64| math::exp_quick(-math::larger(s - p.own[LAG][i], 0.0) * p.own[PER_TAU][i]);
        shed[i] = crown.at_move[i] * (1.0 - p.own[KEPT][i]) * (still(s0) - still(s1));
        let grown = |s: f64| {
            let t = p.own[RECOVER][i];
            let inside = math::smaller(s, t);
            0.5 * inside * inside / t + (s - inside)
        };
        let start = p.own[START][i];
        let made = start * dt[i] + (1.0 - start) * (grown(s1) - grown(s0));
        clock[i] = p.rate[i] * span.pace * made;
    }
    (clock, shed)
}

/// Moves the crowns over a span of `dt` days each; `span.from` in days since the move. Returns births and deaths.
#[inline(always)]
pub(crate) fn advance(
    life: &LifeTable,
    p: &Params,
    crown: &mut Crown,
    span: Span,
    dt: &Lanes,
) -> (Lanes, Lanes) {
    let (clock, shed) = course(p, crown, span, dt);
    let before = crown.live;
    let half = lanes(|i| 0.5 * shed[i]);
    take_oldest(life, p, crown, &half);
    settled::advance(life, p, crown, &clock);
    take_oldest(life, p, crown, &half);
    let died = lanes(|i| clock[i] - (crown.live[i] - before[i]));
    (clock, died)
}

/// Fronds yellowing at the start of a span: those that age away as on a fed palm, and those that the move takes
/// within `dt` days.
#[inline(always)]
pub(crate) fn yellowing(
    life: &LifeTable,
    p: &Params,
    crown: &Crown,
    span: Span,
    dt: &Lanes,
) -> Lanes {
    let (clock, shed) = course(p, crown, span, dt);
    let aged = settled::yellowing_in_turn(life, p, crown, &clock, dt);
    lanes(|i| aged[i] + shed[i])
}

/// Takes the oldest `count` live fronds of each crown.
#[inline(always)]
pub(crate) fn take_oldest(life: &LifeTable, p: &Params, crown: &mut Crown, count: &Lanes) {
    for i in 0..WIDTH {
        crown.live[i] = math::larger(crown.live[i] - count[i], 0.0);
        crown.age[i] = life.age(crown.live[i] * p.per_life[i]);
    }
}
