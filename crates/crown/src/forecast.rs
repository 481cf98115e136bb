//! What would be counted on a later day, cut or uncut.

use crate::answer::{Cut, Forecast, Quantiles};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::quantile::{CountMixture, LEVELS, weighted};
use crate::reading::{Reading, Row};
use crate::track::{Crown, advance, yellowing};
use crate::weigh::{SIZE_BROWN, SIZE_YELLOWING, STRAY, sd_live};
use model::Day;

impl Reading {
    /// What would be counted on `day` (not before `as_of`) if `cut` is taken off on `as_of`.
    pub fn forecast(&self, cut: Cut, day: Day) -> Forecast {
        self.forecasts(cut, &[day]).remove(0)
    }

    /// The same for several days in ascending order; cheaper than one by one.
    pub fn forecasts(&self, cut: Cut, days: &[Day]) -> Vec<Forecast> {
        let crowns = self.crowns(cut, days);
        days.iter()
            .zip(&crowns)
            .map(|(day, crowns)| self.counted(crowns, *day))
            .collect()
    }

    /// All rows moved on to each of the days (ascending), after a cut on `as_of`.
    pub(crate) fn crowns(&self, cut: Cut, days: &[Day]) -> Vec<Vec<Crown>> {
        let mut now = 0.0;
        let mut crowns: Vec<Crown> = self.rows.iter().map(|row| after_cut(row, cut)).collect();
        let mut out = Vec::with_capacity(days.len());
        for day in days {
            let then = f64::from(day.since(self.as_of)).max(now);
            for (row, crown) in self.rows.iter().zip(&mut crowns) {
                advance(row.kind, &self.line, &row.p, crown, now, then);
            }
            now = then;
            out.push(crowns.clone());
        }
        out
    }

    pub(crate) fn yellow(&self, row: &Row, crown: &Crown, day: Day) -> Lanes {
        yellowing(
            row.kind,
            &self.line,
            &row.p,
            crown,
            f64::from(day.since(self.as_of)),
        )
    }

    fn counted(&self, crowns: &[Crown], day: Day) -> Forecast {
        let yellow: Vec<Lanes> = self
            .rows
            .iter()
            .zip(crowns)
            .map(|(row, crown)| self.yellow(row, crown, day))
            .collect();
        let noisy: Vec<(Lanes, Lanes)> = self
            .rows
            .iter()
            .zip(crowns)
            .zip(&yellow)
            .map(|((row, crown), yellow)| {
                let live =
                    lanes(|i| (crown.live[i] + row.noise[i] * sd_live(crown.live[i])).max(0.0));
                (live, lanes(|i| (live[i] - yellow[i]).max(0.0)))
            })
            .collect();
        let count = |value: &dyn Fn(usize, usize) -> f64, size: f64| {
            CountMixture::of(self.weigh(|r, i| value(r, i).max(0.0) + STRAY), size as i32)
                .quantiles()
        };
        let spread = |value: &dyn Fn(usize, usize) -> f64| {
            Quantiles::from_levels(weighted(self.weigh(value), LEVELS))
        };
        Forecast {
            live: spread(&|r, i| noisy[r].0[i]),
            green: spread(&|r, i| noisy[r].1[i]),
            yellowing: count(&|r, i| yellow[r][i], SIZE_YELLOWING),
            brown_on: count(&|r, i| crowns[r].brown[i], SIZE_BROWN),
            lost: count(&|r, i| crowns[r].lost[i], SIZE_BROWN),
        }
    }

    /// A value of each draw, by row number and lane, with the draw's weight.
    pub(crate) fn weigh<'a>(
        &'a self,
        value: impl Fn(usize, usize) -> f64 + Copy + 'a,
    ) -> impl Iterator<Item = (f64, f64)> + Clone + 'a {
        self.rows
            .iter()
            .enumerate()
            .flat_map(move |(r, row)| (0..WIDTH).map(move |i| (value(r, i), row.weight[i])))
    }
}

/// A row's crowns on the day of the reading once the cut is done.
fn after_cut(row: &Row, cut: Cut) -> Crown {
    let mut crown = row.now.clone();
    crown.cut(&row.p, f64::from(cut.live()), |brown| {
        brown - f64::from(cut.brown)
    });
    crown
}
