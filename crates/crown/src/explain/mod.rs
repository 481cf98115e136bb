//! The explanations: why a crown loses fronds. One file each, with its parameters and how it moves a crown.
//!
//! All share: N and r (log-normal), the start (three of four palms start with an undisturbed crown, the others as cut
//! short, down to nothing: assumed), and how long dead fronds stay on.

pub(crate) mod decline;
pub(crate) mod hunger;
pub(crate) mod moved;
pub(crate) mod settled;

use crate::answer::Explanation;
use crate::draws::{NormalTable, Points};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::life::NEVER_CUT;
use crate::prior::{Hang, Prior};
use model::math;

/// Classes of how long dead fronds stay on: equally likely, so that a step needs one exponential a class.
pub(crate) const STAYS: usize = 16;

/// Shared dimensions of a point.
const FULL: usize = 0;
const RATE: usize = 1;
const YELLOW: usize = 2;
const START: usize = 3;
const STAY: usize = 4;
/// First dimension of an explanation's own.
pub(crate) const OWN: usize = 5;

/// Share of palms whose crown is undisturbed when first met (assumed).
pub const UNDISTURBED_SHARE: f64 = 0.75;
/// Youngest age ceiling of a crown met cut short, in mean frond lives (assumed; the oldest is 1): some are met headed.
pub const CUT_SHORT_FROM: f64 = 0.0;
/// Days from first dead tissue to wholly dead of a fed frond [enh1182, broschat-gilman-2013]; also of the fronds that
/// age in their turn on a moved or declining palm.
pub const YELLOW_DAYS_FED: (f64, f64) = (3.0, 4.0);
/// The same of a potassium-hungry frond [broschat-gilman-2013].
pub const YELLOW_DAYS_HUNGRY: (f64, f64) = (30.0, 90.0);
/// The same of a frond that the move or the decline takes before its time (assumed: between fed and hungry).
pub const YELLOW_DAYS_SHED: (f64, f64) = (5.0, 30.0);

/// Parameters of a row of crowns.
#[derive(Clone)]
pub(crate) struct Params {
    /// N, live fronds of the full, fed crown.
    pub full: Lanes,
    /// Fronds made a day where w = 1 and m = 1.
    pub rate: Lanes,
    /// K.
    pub shortfall: Lanes,
    /// N (1 - K), clock units.
    pub life: Lanes,
    /// 1 / life.
    pub per_life: Lanes,
    /// y, days.
    pub yellow_days: Lanes,
    /// Age ceiling at the start, mean lives.
    pub start_age: Lanes,
    /// Class of how long dead fronds stay on: index into `fall_rates`.
    pub stay: [u8; WIDTH],
    /// Rate at which dead fronds fall by class, 1/day; all 0 where they hang until cut.
    pub fall_rates: [f64; STAYS],
    /// The explanation's own.
    pub own: [Lanes; 5],
}

/// Times an explanation's parameters depend on, in days of the case.
#[derive(Clone, Copy)]
pub(crate) struct Window {
    /// First inspection (or today without any).
    pub first: f64,
    /// The day the reading speaks for.
    pub today: f64,
}

impl Params {
    /// Parameters of a row of points under an explanation.
    pub(crate) fn of(
        kind: Explanation,
        z: &Points,
        prior: &Prior,
        normal: &NormalTable,
        window: Window,
    ) -> Params {
        let u = |dimension: usize| -> Lanes { lanes(|i| normal.below(z[dimension][i])) };
        let mut p = Params {
            full: log_normal(&z[FULL], prior.full_crown.median, prior.full_crown.sd_ln),
            rate: log_normal(
                &z[RATE],
                prior.fronds_per_year.median / 365.25,
                prior.fronds_per_year.sd_ln,
            ),
            shortfall: [0.0; WIDTH],
            life: [0.0; WIDTH],
            per_life: [0.0; WIDTH],
            yellow_days: [0.0; WIDTH],
            start_age: start_age(&u(START)),
            stay: stay(&z[STAY], normal),
            fall_rates: fall_rates(prior.hang),
            own: [[0.0; WIDTH]; 5],
        };
        let days = match kind {
            Explanation::Ageing => YELLOW_DAYS_FED,
            Explanation::Hunger => YELLOW_DAYS_HUNGRY,
            Explanation::Move | Explanation::Decline => YELLOW_DAYS_SHED,
        };
        p.yellow_days = between(&u(YELLOW), days);
        match kind {
            Explanation::Ageing => {}
            Explanation::Hunger => hunger::parameters(&u, &mut p),
            Explanation::Move => moved::parameters(z, &u, &mut p),
            Explanation::Decline => decline::parameters(&u, &mut p, window),
        }
        for i in 0..WIDTH {
            p.life[i] = p.full[i] * (1.0 - p.shortfall[i]);
            p.per_life[i] = 1.0 / p.life[i];
        }
        p
    }
}

/// How many dimensions an explanation uses (the noise dimension not counted).
pub(crate) fn dimensions(kind: Explanation) -> usize {
    match kind {
        Explanation::Ageing => OWN,
        Explanation::Hunger => OWN + 1,
        Explanation::Decline => OWN + 2,
        Explanation::Move => OWN + 5,
    }
}

/// Uniform between two values.
pub(crate) fn between(u: &Lanes, (low, high): (f64, f64)) -> Lanes {
    lanes(|i| low + (high - low) * u[i])
}

fn log_normal(z: &Lanes, median: f64, sd: f64) -> Lanes {
    lanes(|i| median * math::exp_quick(sd * z[i]))
}

fn start_age(u: &Lanes) -> Lanes {
    lanes(|i| {
        let share = (u[i] - UNDISTURBED_SHARE) / (1.0 - UNDISTURBED_SHARE);
        if share < 0.0 {
            NEVER_CUT
        } else {
            CUT_SHORT_FROM + (1.0 - CUT_SHORT_FROM) * share
        }
    })
}

fn stay(z: &Lanes, normal: &NormalTable) -> [u8; WIDTH] {
    std::array::from_fn(|i| (normal.below(z[i]) * STAYS as f64) as u8)
}

/// Rate of each class: the middles of equal shares of the log-uniform range.
fn fall_rates(hang: Hang) -> [f64; STAYS] {
    match hang {
        Hang::UntilCut => [0.0; STAYS],
        Hang::Falls { days } => [1.0 / days; STAYS],
        Hang::Between { low, high } => {
            let width = math::ln(high / low);
            std::array::from_fn(|k| math::exp(-width * (k as f64 + 0.5) / STAYS as f64) / low)
        }
    }
}
