//! How often a palm wants a visit: once it is cleaned on a day, when the next visit is worth it.
//!
//! Taking dead fronds off changes nothing of how the crown lives, so that what hangs on a later day is what would hang
//! uncleaned, less what was taken and would not have fallen by itself until then. That makes all cleanings of a year
//! cheap to follow once the uncleaned crown is.

use crate::answer::{Cut, DueWindow};
use crate::due::{STEP, STEPS, first_day};
use crate::lanes::{Lanes, WIDTH};
use crate::quantile::weighted;
use crate::reading::Reading;
use model::{Day, math};

/// Cleanings that are followed: today and every four weeks of a year after.
const CLEANINGS: usize = 14;

/// The due windows of a stem (or a whole palm) after cleanings within a year, and what hangs meanwhile.
#[derive(Clone, PartialEq, Debug)]
pub struct Rhythm {
    as_of: Day,
    now: DueWindow,
    after: [DueWindow; CLEANINGS],
    /// Dead fronds hanging if nobody cleans, mean, every [`STEP`] days.
    hangs: Vec<f32>,
    /// Fronds dying from `as_of` on, mean, every [`STEP`] days.
    died: Vec<f32>,
    /// Share of the fronds dead for so many steps that still hang.
    stays: Vec<f32>,
}

impl Reading {
    /// Due windows as in [`Reading::due`], today and after each cleaning of the coming year.
    pub fn rhythm(&self, tidy: u32, limit: u32) -> Rhythm {
        let days: Vec<Day> = (0..=STEPS).map(|s| self.as_of.plus(s * STEP)).collect();
        let crowns: Vec<Vec<(Lanes, Lanes)>> = self.walk(Cut::NONE, &days, |_, crowns| {
            crowns.iter().map(|c| (c.brown, c.lost)).collect()
        });
        let mean = |value: &dyn Fn(usize, usize) -> f64| {
            let (sum, weight) = self
                .weigh(value)
                .fold((0.0, 0.0), |s, (v, w)| (s.0 + v * w, s.1 + w));
            (sum / weight) as f32
        };
        let steps = 0..crowns.len();
        Rhythm {
            as_of: self.as_of,
            now: self.due(tidy, limit),
            after: std::array::from_fn(|from| self.after(&crowns, from, tidy, limit)),
            hangs: steps
                .clone()
                .map(|t| mean(&|r, i| crowns[t][r].0[i]))
                .collect(),
            died: steps
                .clone()
                .map(|t| mean(&|r, i| crowns[t][r].1[i] - crowns[0][r].1[i]))
                .collect(),
            stays: steps.map(|t| mean(&|r, i| self.stays(r, t)[i])).collect(),
        }
    }

    /// The window after a cleaning at a step.
    fn after(
        &self,
        crowns: &[Vec<(Lanes, Lanes)>],
        from: usize,
        tidy: u32,
        limit: u32,
    ) -> DueWindow {
        let (tidy, limit) = (f64::from(tidy), f64::from(limit));
        let (mut median, mut upper) = (vec![0.0], vec![0.0]);
        for t in from + 1..crowns.len() {
            let stays: Vec<Lanes> = (0..self.rows.len())
                .map(|r| self.stays(r, t - from))
                .collect();
            let hanging =
                |r: usize, i: usize| crowns[t][r].0[i] - crowns[from][r].0[i] * stays[r][i];
            let [half, most] = weighted(self.weigh(hanging), [0.50, 0.75]);
            median.push(half);
            upper.push(most);
            if half >= tidy && most >= limit {
                break;
            }
        }
        let cleaned = self.as_of.plus(from as i32 * STEP);
        DueWindow {
            earliest: first_day(&median, tidy).map(|d| cleaned.plus(d.ceil() as i32)),
            latest: first_day(&upper, limit).map(|d| cleaned.plus(d.floor() as i32)),
        }
    }

    /// Share of dead fronds that still hang after so many steps, by draw of a row.
    fn stays(&self, row: usize, steps: usize) -> Lanes {
        let p = &self.rows[row].p;
        let days = (steps as i32 * STEP) as f64;
        let mut out = [1.0; WIDTH];
        if p.fall_rates[0] > 0.0 {
            let by_class = p.fall_rates.map(|rate| math::exp_quick(-rate * days));
            for (stays, class) in out.iter_mut().zip(p.stay) {
                *stays = by_class[usize::from(class) % by_class.len()];
            }
        }
        out
    }
}

impl Rhythm {
    /// The window as the palm stands.
    pub fn now(&self) -> DueWindow {
        self.now
    }

    /// The window after all dead fronds come off on a day within a year; between the cleanings that were followed, days
    /// until due are taken along a straight line. `None` where nothing is due within two years of the reading.
    pub fn after(&self, cleaned: Day) -> DueWindow {
        let steps = f64::from(cleaned.since(self.as_of).max(0)) / f64::from(STEP);
        let k = (steps as usize).min(CLEANINGS - 1);
        let part = (steps - k as f64).min(1.0);
        let wait = |of: fn(&DueWindow) -> Option<Day>| {
            let gap = |k: usize| {
                let day = of(&self.after[k])?;
                Some(f64::from(day.since(self.as_of.plus(k as i32 * STEP))))
            };
            match (gap(k), gap((k + 1).min(CLEANINGS - 1))) {
                (Some(a), Some(b)) => Some(a + (b - a) * part),
                (a, b) => a.or(b),
            }
        };
        DueWindow {
            earliest: wait(|w| w.earliest).map(|d| cleaned.plus(d.ceil() as i32)),
            latest: wait(|w| w.latest).map(|d| cleaned.plus(d.floor() as i32)),
        }
    }

    /// Dead fronds hanging on a day, mean, if they last came off on `cleaned` (`None`: not again). An estimate: fronds are
    /// taken to fall at the average rate of all draws.
    pub fn hanging(&self, cleaned: Option<Day>, on: Day) -> f64 {
        let at = |day: Day| f64::from(day.since(self.as_of).max(0)) / f64::from(STEP);
        let Some(cleaned) = cleaned else {
            return between(&self.hangs, at(on));
        };
        let (from, to) = (at(cleaned), at(on));
        if to <= from {
            return 0.0;
        }
        let pieces = ((to - from).ceil() as usize).max(1);
        let width = (to - from) / pieces as f64;
        let piece = |k: usize| {
            let (a, b) = (from + width * k as f64, from + width * (k + 1) as f64);
            let died = between(&self.died, b) - between(&self.died, a);
            died * between(&self.stays, to - 0.5 * (a + b))
        };
        (0..pieces).map(piece).sum()
    }

    /// Together with another stem of the same palm, which a visit cleans too: due as soon as either is.
    pub fn with(mut self, other: &Rhythm) -> Rhythm {
        let first = |a: DueWindow, b: DueWindow| DueWindow {
            earliest: a.earliest.into_iter().chain(b.earliest).min(),
            latest: a.latest.into_iter().chain(b.latest).min(),
        };
        let total = |of: &Rhythm| of.died.last().copied().unwrap_or(0.0).max(1e-6);
        let share = total(&self) / (total(&self) + total(other));
        self.now = first(self.now, other.now);
        for (own, other) in self.after.iter_mut().zip(other.after) {
            *own = first(*own, other);
        }
        for (own, other) in self.stays.iter_mut().zip(&other.stays) {
            *own = *own * share + *other * (1.0 - share);
        }
        let add = |own: &mut Vec<f32>, other: &[f32]| {
            own.iter_mut().zip(other).for_each(|(a, b)| *a += *b);
        };
        add(&mut self.hangs, &other.hangs);
        add(&mut self.died, &other.died);
        self
    }
}

/// A value between the steps of a series; beyond its end, the last.
fn between(series: &[f32], at: f64) -> f64 {
    let k = (at as usize).min(series.len() - 1);
    let next = (k + 1).min(series.len() - 1);
    let (a, b) = (f64::from(series[k]), f64::from(series[next]));
    a + (b - a) * (at - k as f64).min(1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::track::advance;
    use crate::{Hang, Prior, Sampler, StemCase, read};
    use model::{Inspection, Knowledge, Palm};

    fn reading(species: &str, hang: Option<Hang>) -> Reading {
        let palm = Palm {
            species: species.into(),
            stems: 1,
            ..Palm::default()
        };
        let known = Knowledge::embedded();
        let row = match known.species_named(species) {
            model::knowledge::Named::Exact(s) => Some(s),
            _ => None,
        };
        let mut prior = Prior::of(&palm, row, &[]);
        prior.hang = hang.unwrap_or(prior.hang);
        let today = Day::parse("2026-06-01").unwrap();
        let mut look = Inspection::blank(1, today.plus(-20));
        (look.green, look.yellowing, look.brown) = (Some(24), Some(1), Some(4));
        let case = StemCase::of(&palm, 1, &[look], prior, None);
        read(&case, today, &mut Sampler::new(256))
    }

    /// Every crown cleaned on the day itself and followed on, as the forecast does it.
    fn cleaned_in_fact(reading: &Reading, from: usize, tidy: f64, limit: f64) -> DueWindow {
        let mut crowns: Vec<_> = reading.rows.iter().map(|row| row.now.clone()).collect();
        let (mut median, mut upper, mut now) = (Vec::new(), Vec::new(), 0.0);
        for step in 0..=STEPS as usize {
            let then = f64::from(step as i32 * STEP);
            for (row, crown) in reading.rows.iter().zip(&mut crowns) {
                advance(row.kind, &reading.line, &row.p, crown, now, then);
                if step == from {
                    crown.brown = [0.0; WIDTH];
                }
            }
            now = then;
            if step >= from {
                let hanging = reading.weigh(|r, i| crowns[r].brown[i]);
                let [half, most] = weighted(hanging, [0.50, 0.75]);
                median.push(half);
                upper.push(most);
            }
        }
        let cleaned = reading.as_of.plus(from as i32 * STEP);
        DueWindow {
            earliest: first_day(&median, tidy).map(|d| cleaned.plus(d.ceil() as i32)),
            latest: first_day(&upper, limit).map(|d| cleaned.plus(d.floor() as i32)),
        }
    }

    #[test]
    fn a_window_after_a_cleaning_is_that_of_a_crown_that_is_cleaned() {
        let kinds = [
            Some(Hang::UntilCut),
            Some(Hang::Falls { days: 40.0 }),
            Some(Hang::Between {
                low: 30.0,
                high: 400.0,
            }),
        ];
        for hang in kinds {
            let reading = reading("Sabal palmetto", hang);
            let rhythm = reading.rhythm(3, 8);
            assert_eq!(rhythm.now(), reading.due(3, 8));
            for from in [0, 1, 5, 13] {
                let day = reading.as_of.plus(from as i32 * STEP);
                let (told, fact) = (rhythm.after(day), cleaned_in_fact(&reading, from, 3.0, 8.0));
                let apart = |a: Option<Day>, b: Option<Day>| match (a, b) {
                    (Some(a), Some(b)) => a.since(b).abs() > 1,
                    (a, b) => a != b,
                };
                // a day of rounding in the sums
                assert!(
                    !apart(told.earliest, fact.earliest) && !apart(told.latest, fact.latest),
                    "{hang:?} step {from}: {told:?} {fact:?}"
                );
            }
        }
    }

    #[test]
    fn between_two_cleanings_the_window_lies_between() {
        let rhythm = reading("Sabal palmetto", Some(Hang::UntilCut)).rhythm(3, 8);
        let as_of = rhythm.as_of;
        let opens = |d: i32| rhythm.after(as_of.plus(d)).earliest.unwrap();
        let days: Vec<Day> = (0..364).map(opens).collect();
        assert!(
            days.iter()
                .enumerate()
                .all(|(d, day)| *day > as_of.plus(d as i32))
        );
        assert!(days.windows(2).all(|w| w[1].since(w[0]).abs() <= 3));
        // what hangs when it opens is about the tidy number
        let hangs = rhythm.hanging(Some(as_of.plus(100)), opens(100));
        assert!((2.0..4.0).contains(&hangs), "{hangs}");
        assert_eq!(rhythm.hanging(Some(as_of.plus(100)), as_of.plus(100)), 0.0);
    }

    #[test]
    fn two_stems_are_due_as_soon_as_either_and_hang_together() {
        let slow = reading("Sabal palmetto", Some(Hang::UntilCut)).rhythm(6, 12);
        let quick = reading("Sabal palmetto", Some(Hang::UntilCut)).rhythm(2, 4);
        let both = slow.clone().with(&quick);
        let day = slow.as_of.plus(60);
        assert_eq!(both.after(day), quick.after(day));
        let later = day.plus(100);
        let sum = slow.hanging(Some(day), later) + quick.hanging(Some(day), later);
        assert!((both.hanging(Some(day), later) - sum).abs() < 1e-3);
    }
}
