//! How long a cut crown needs.

use crate::answer::{Cut, Recovery};
use crate::lanes::{Lanes, lanes};
use crate::quantile::weighted;
use crate::reading::Reading;
use model::Day;

/// A crown counts as full again at this share of the crown it can keep (assumed).
pub const FULL_AGAIN: f64 = 0.95;
const MONTH: i32 = 30;
const MONTHS: i32 = 122;
const MONTHS_OF_LOSS: usize = 24;
const NEVER: f64 = 1e6;

impl Reading {
    /// How long the crown needs after `cut` on `as_of`, followed month by month for ten years.
    ///
    /// Down to the level line: live fronds reach the share of a full crown that hangs above it. Full: 0.95 of the live
    /// fronds that this palm can keep (a hungry palm's own, smaller crown).
    pub fn recovery(&self, cut: Cut) -> Recovery {
        let days: Vec<Day> = (0..=MONTHS).map(|m| self.as_of.plus(m * MONTH)).collect();
        let after = self.crowns(cut, &days);
        let level = self.spread.level_share();
        let to_level = self.first_days(&after, |r, i| level * self.rows[r].p.full[i]);
        let to_full = self.first_days(&after, |r, i| FULL_AGAIN * self.rows[r].p.life[i]);
        let uncut = self.crowns(Cut::NONE, &days[..=MONTHS_OF_LOSS]);
        let missing = |r: usize, i: usize| {
            let month = |m: usize| uncut[m][r].live[i] - after[m][r].live[i];
            let ends = 0.5 * (month(0) + month(MONTHS_OF_LOSS));
            let inner: f64 = (1..MONTHS_OF_LOSS).map(month).sum();
            (ends + inner) * f64::from(MONTH) * 12.0 / 365.25
        };
        const LEVELS: [f64; 3] = [0.05, 0.50, 0.95];
        let known = |days: &[Lanes]| self.weighted_days(days, LEVELS);
        Recovery {
            to_level: known(&to_level),
            to_full: known(&to_full),
            frond_months_lost: weighted(self.weigh(missing), LEVELS),
        }
    }

    /// For every draw the day on which live fronds first reach a number, straight lines between months.
    fn first_days(
        &self,
        months: &[Vec<crate::track::Crown>],
        goal: impl Fn(usize, usize) -> f64,
    ) -> Vec<Lanes> {
        (0..self.rows.len())
            .map(|r| {
                lanes(|i| {
                    let goal = goal(r, i);
                    let live = |m: usize| months[m][r].live[i];
                    match (0..months.len()).find(|&m| live(m) >= goal) {
                        None => NEVER,
                        Some(0) => 0.0,
                        Some(m) => {
                            let part = (goal - live(m - 1)) / (live(m) - live(m - 1));
                            f64::from(MONTH) * (m as f64 - 1.0 + part)
                        }
                    }
                })
            })
            .collect()
    }

    /// Quantiles of days of which some are never: those are the largest.
    fn weighted_days<const N: usize>(&self, days: &[Lanes], levels: [f64; N]) -> [Option<f64>; N] {
        let total: f64 = self.weigh(|_, _| 1.0).map(|d| d.1).sum();
        let reached = self.weigh(|r, i| days[r][i]).filter(|d| d.0 < NEVER);
        let share = reached.clone().map(|d| d.1).sum::<f64>() / total;
        levels.map(|level| (level <= share).then(|| weighted(reached.clone(), [level / share])[0]))
    }
}
