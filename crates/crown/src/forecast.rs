//! What would be counted on a later day, cut or uncut.

use crate::answer::{Cut, Forecast, Quantiles};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::quantile::{CountMixture, LEVELS, weighted};
use crate::reading::{Reading, Row};
use crate::track::{Crown, advance, yellowing};
use crate::weigh::{BROWN, CountNoise, YELLOWING, sd_live};
use model::Day;

impl Reading {
    /// What would be counted on `day` (not before `as_of`) if `cut` is taken off on `as_of`.
    pub fn forecast(&self, cut: Cut, day: Day) -> Forecast {
        self.forecasts(cut, &[day]).remove(0)
    }

    /// The same for several days in ascending order; cheaper than one by one.
    pub fn forecasts(&self, cut: Cut, days: &[Day]) -> Vec<Forecast> {
        self.walk(cut, days, |day, crowns| self.counted(crowns, day))
    }

    /// All rows moved on to each of the days (ascending), after a cut on `as_of`.
    pub(crate) fn crowns(&self, cut: Cut, days: &[Day]) -> Vec<Vec<Crown>> {
        self.walk(cut, days, |_, crowns| crowns.to_vec())
    }

    /// Moves all rows on from day to day (ascending), after a cut on `as_of`, and keeps what is seen on each.
    pub(crate) fn walk<T>(
        &self,
        cut: Cut,
        days: &[Day],
        see: impl Fn(Day, &[Crown]) -> T,
    ) -> Vec<T> {
        let mut now = 0.0;
        let mut crowns: Vec<Crown> = self.rows.iter().map(|row| after_cut(row, cut)).collect();
        let mut out = Vec::with_capacity(days.len());
        for day in days {
            let then = f64::from(day.since(self.as_of)).max(now);
            for (row, crown) in self.rows.iter().zip(&mut crowns) {
                advance(row.kind, &self.line, &row.p, crown, now, then);
            }
            now = then;
            out.push(see(*day, &crowns));
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
        let live = self.noisy_live(crowns);
        let green: Vec<Lanes> = live
            .iter()
            .zip(&yellow)
            .map(|(live, yellow)| lanes(|i| (live[i] - yellow[i]).max(0.0)))
            .collect();
        let spread = |values: &[Lanes]| {
            Quantiles::from_levels(weighted(self.weigh(|r, i| values[r][i]), LEVELS))
        };
        Forecast {
            live: spread(&live),
            green: spread(&green),
            yellowing: self.count(YELLOWING, |r, i| yellow[r][i]).quantiles(),
            brown_on: self.count(BROWN, |r, i| crowns[r].brown[i]).quantiles(),
            lost: self.count(BROWN, |r, i| crowns[r].lost[i]).quantiles(),
        }
    }

    /// Live counts as somebody would make them: each draw with its own counting noise.
    pub(crate) fn noisy_live(&self, crowns: &[Crown]) -> Vec<Lanes> {
        let rows = self.rows.iter().zip(crowns);
        rows.map(|(row, crown)| {
            lanes(|i| (crown.live[i] + row.noise[i] * sd_live(crown.live[i])).max(0.0))
        })
        .collect()
    }

    /// Distribution of a count whose mean in each draw is `mean`.
    pub(crate) fn count(
        &self,
        noise: CountNoise,
        mean: impl Fn(usize, usize) -> f64 + Copy,
    ) -> CountMixture {
        CountMixture::of(
            self.weigh(|r, i| mean(r, i).max(0.0) + noise.stray),
            noise.size,
        )
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
