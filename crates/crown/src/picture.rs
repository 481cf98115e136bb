//! The crown as it would be drawn: fronds at their angles.
//!
//! The frond of age a (clock units) leans `theta = theta_end * a / N` from the vertical, theta_end 150° for a full
//! round crown (assumed; no measured curve found); clock readings of the lowest live frond fit it.

use crate::answer::{Cut, Picture, PictureFrond, Tint};
use crate::quantile::weighted;
use crate::reading::Reading;
use model::{Day, Inspection};

/// Lean of the oldest frond of a full round crown, degrees (assumed).
pub const THETA_END_DEGREES: f64 = 150.0;
const THETA_RANGE: (f64, f64) = (90.0, 175.0);
/// Dead fronds hang between these, degrees from straight up (assumed, for drawing only).
const HANGING: (f64, f64) = (152.0, 172.0);
/// Successive fronds stand the golden angle apart, degrees.
const GOLDEN_ANGLE: f64 = 137.507_764_050_037_85;

/// How far a full crown spreads.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Spread {
    pub theta_end: f64,
    pub from_clock: bool,
}

impl Spread {
    /// From the clock readings: the oldest of n live fronds has age n, so it leans `theta_end n / N`.
    pub(crate) fn fitted(looks: &[Inspection], full_crown: f64) -> Spread {
        let fits: Vec<f64> = looks
            .iter()
            .filter_map(|look| theta_of(look, full_crown))
            .collect();
        match fits.len() {
            0 => Spread {
                theta_end: THETA_END_DEGREES,
                from_clock: false,
            },
            n => {
                let mean = fits.iter().sum::<f64>() / n as f64;
                Spread {
                    theta_end: mean.clamp(THETA_RANGE.0, THETA_RANGE.1),
                    from_clock: true,
                }
            }
        }
    }

    /// Share of a full crown's fronds that stand at or above the level line.
    pub(crate) fn level_share(self) -> f64 {
        (90.0 / self.theta_end).min(1.0)
    }
}

fn theta_of(look: &Inspection, full_crown: f64) -> Option<f64> {
    let live = f64::from(look.live()?);
    let sides: Vec<f64> = [look.clock_left, look.clock_right]
        .into_iter()
        .flatten()
        .map(|c| c.degrees_from_vertical())
        .collect();
    if sides.is_empty() || live < 1.0 {
        return None;
    }
    let lean = sides.iter().sum::<f64>() / sides.len() as f64;
    Some(lean * full_crown / live)
}

impl Reading {
    /// The median crown of `day` to draw, after `cut` on `as_of`. On `as_of` itself cut fronds are drawn and marked.
    pub fn picture(&self, cut: Cut, day: Day) -> Picture {
        self.pictures(cut, &[day]).remove(0)
    }

    /// The same for several days in ascending order.
    pub fn pictures(&self, cut: Cut, days: &[Day]) -> Vec<Picture> {
        let later = self.crowns(cut, days);
        days.iter()
            .zip(&later)
            .map(|(&day, crowns)| {
                let marked = day <= self.as_of;
                let today;
                let crowns = if marked {
                    today = self.crowns(Cut::NONE, &[day]).remove(0);
                    &today
                } else {
                    crowns
                };
                let yellow: Vec<_> = self
                    .rows
                    .iter()
                    .zip(crowns)
                    .map(|(row, c)| self.yellow(row, c, day))
                    .collect();
                let median =
                    |value: &dyn Fn(usize, usize) -> f64| weighted(self.weigh(value), [0.5])[0];
                let counts = [
                    median(&|r, i| crowns[r].live[i]),
                    median(&|r, i| yellow[r][i]),
                    median(&|r, i| crowns[r].brown[i]),
                ];
                self.drawn(counts, day, if marked { cut } else { Cut::NONE })
            })
            .collect()
    }

    /// Median live, yellowing and dead fronds as a picture, those of `cut` marked.
    fn drawn(&self, [live, yellow, brown]: [f64; 3], day: Day, cut: Cut) -> Picture {
        let (live, brown) = (live.round() as u32, brown.round() as u32);
        let yellow = (yellow.round() as u32).min(live);
        let mut fronds: Vec<PictureFrond> = Vec::with_capacity((live + brown) as usize);
        let theta_end = self.spread.theta_end;
        for rank in 1..=live {
            let tint = if rank > live - yellow {
                Tint::Yellowing
            } else {
                Tint::Green
            };
            let lean =
                (theta_end * (f64::from(rank) - 0.5) / self.full_crown.q50).min(THETA_RANGE.1);
            fronds.push(frond(rank, lean, tint));
        }
        for k in 0..brown {
            let share = (f64::from(k) + 0.5) / f64::from(brown);
            let lean = HANGING.0 + (HANGING.1 - HANGING.0) * share;
            fronds.push(frond(live + k + 1, lean, Tint::Brown));
        }
        for (tint, count) in [
            (Tint::Green, cut.green),
            (Tint::Yellowing, cut.yellowing),
            (Tint::Brown, cut.brown),
        ] {
            for f in fronds
                .iter_mut()
                .rev()
                .filter(|f| f.tint == tint)
                .take(count as usize)
            {
                f.cut = true;
            }
        }
        Picture {
            day,
            fronds,
            theta_end_degrees: theta_end,
            theta_from_clock: self.spread.from_clock,
        }
    }
}

fn frond(rank: u32, lean_degrees: f64, tint: Tint) -> PictureFrond {
    let turns = f64::from(rank) * GOLDEN_ANGLE / 360.0;
    PictureFrond {
        rank,
        lean_degrees,
        azimuth_degrees: 360.0 * (turns - turns.floor()),
        tint,
        cut: false,
    }
}
