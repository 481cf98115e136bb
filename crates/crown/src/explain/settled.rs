//! Ageing: a fed, settled crown. One death per birth once it is full; a crown cut short loses nothing until it has
//! filled up again. Hunger moves a crown in the same way, with shorter lives.
//!
//! When the clock advances by d the age ceiling A becomes A + d and live becomes F(A + d); deaths are the difference.
//! What would change it: a measured spread of frond lives (the 10 % is assumed).

use super::{Params, YELLOW_DAYS_FED};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::life::{LifeTable, NEVER_CUT};
use crate::track::Crown;
use model::math;

/// Deaths that an advance by `clock` fronds would bring; the crowns stay as they are.
#[inline(always)]
pub(crate) fn deaths(life: &LifeTable, p: &Params, crown: &Crown, clock: &Lanes) -> Lanes {
    lanes(|i| {
        let age = math::smaller(crown.age[i] + clock[i] * p.per_life[i], NEVER_CUT);
        clock[i] - (p.life[i] * life.live(age) - crown.live[i])
    })
}

/// Fronds yellowing because they age in their turn, on a palm that makes `clock` fronds in `dt` days: they do so as
/// quickly as on a fed palm, however long the fronds linger that something else takes.
#[inline(always)]
pub(crate) fn yellowing_in_turn(
    life: &LifeTable,
    p: &Params,
    crown: &Crown,
    clock: &Lanes,
    dt: &Lanes,
) -> Lanes {
    let fed = 0.5 * (YELLOW_DAYS_FED.0 + YELLOW_DAYS_FED.1);
    deaths(life, p, crown, &lanes(|i| clock[i] * fed / dt[i]))
}

/// Moves the crowns by `clock` fronds each; returns the deaths.
#[inline(always)]
pub(crate) fn advance(life: &LifeTable, p: &Params, crown: &mut Crown, clock: &Lanes) -> Lanes {
    let mut died = [0.0; WIDTH];
    for i in 0..WIDTH {
        let age = math::smaller(crown.age[i] + clock[i] * p.per_life[i], NEVER_CUT);
        let live = p.life[i] * life.live(age);
        died[i] = clock[i] - (live - crown.live[i]);
        crown.age[i] = age;
        crown.live[i] = live;
    }
    died
}
