//! The next look: for every sign not yet looked for, how much doubt its answer is expected to take away.

use super::answer::NextLook;
use super::tables::{AGEING, Tables, bits};
use super::told::Told;
use super::weigh::Weighed;

/// Sets with less than this share are left out of the reckoning of next looks.
const WORTH_A_LOOK: f64 = 1e-4;
/// So many looks are named.
const LOOKS: usize = 5;
/// A look takes at least this long, minutes, whatever the table says.
const LEAST_MINUTES: f64 = 0.05;

/// The sets that still count, with their shares; they sum to 1.
pub(super) struct Kept(Vec<(usize, f64)>);

impl Kept {
    pub fn of(weighed: &Weighed) -> Kept {
        let least = WORTH_A_LOOK * weighed.total;
        let heavy = weighed.weight.iter().copied().enumerate();
        let mut kept: Vec<(usize, f64)> = heavy.filter(|(_, w)| *w >= least).collect();
        let sum: f64 = kept.iter().map(|(_, w)| w).sum();
        kept.iter_mut().for_each(|(_, w)| *w /= sum);
        Kept(kept)
    }

    /// Chance of every sign, and the doubt about it that would be left if the set were known, bits.
    fn chances(&self, tables: &Tables) -> (Vec<f64>, Vec<f64>) {
        let signs = tables.signs.len();
        let (mut chance, mut left) = (vec![0.0; signs], vec![0.0; signs]);
        for (set, share) in &self.0 {
            let seen = &tables.seen_by_set[set * signs..][..signs];
            let doubt = &tables.doubt_by_set[set * signs..][..signs];
            chance
                .iter_mut()
                .zip(seen)
                .for_each(|(sum, p)| *sum += share * p);
            left.iter_mut()
                .zip(doubt)
                .for_each(|(sum, d)| *sum += share * d);
        }
        (chance, left)
    }

    /// Probability of every disorder in the order of the table, as things are.
    fn now(&self, tables: &Tables) -> Vec<f64> {
        marginals(tables, self.0.iter().copied())
    }

    /// The same after a sign was seen, or looked for and not there.
    pub fn after(&self, tables: &Tables, sign: usize, seen: bool) -> Vec<f64> {
        let signs = tables.signs.len();
        let weigh = |(set, share): &(usize, f64)| {
            let p = tables.seen_by_set[set * signs + sign];
            (*set, share * if seen { p } else { 1.0 - p })
        };
        marginals(tables, self.0.iter().map(weigh))
    }

    /// Chance of each of two events after a sign was seen or not there.
    pub fn events_after(
        &self,
        tables: &Tables,
        sign: usize,
        seen: bool,
        events: [&[bool]; 2],
    ) -> [f64; 2] {
        let signs = tables.signs.len();
        let (mut of, mut all) = ([0.0; 2], 0.0);
        for (set, share) in &self.0 {
            let p = tables.seen_by_set[set * signs + sign];
            let weight = share * if seen { p } else { 1.0 - p };
            all += weight;
            for (of, event) in of.iter_mut().zip(events) {
                *of += if event[*set] { weight } else { 0.0 };
            }
        }
        of.map(|of| of / all)
    }

    /// Chance that a sign is there.
    pub fn chance(&self, tables: &Tables, sign: usize) -> f64 {
        let signs = tables.signs.len();
        let parts = self.0.iter();
        parts
            .map(|(set, share)| share * tables.seen_by_set[set * signs + sign])
            .sum()
    }
}

fn marginals(tables: &Tables, sets: impl Iterator<Item = (usize, f64)>) -> Vec<f64> {
    let n = tables.sets.n;
    let (mut of, mut all, mut nothing) = (vec![0.0; n + 1], 0.0, 0.0);
    for (set, weight) in sets {
        all += weight;
        if set == 0 {
            nothing += weight;
        } else {
            tables.sets.members[set]
                .iter()
                .for_each(|m| of[*m] += weight);
        }
    }
    let trouble = |k: &Option<usize>| k.map_or(nothing, |k| of[k]) / all;
    tables.trouble_of.iter().map(trouble).collect()
}

/// The best looks, best first.
pub(super) fn next(tables: &Tables, told: &Told, weighed: &Weighed) -> Vec<NextLook> {
    let kept = Kept::of(weighed);
    let (chance, left) = kept.chances(tables);
    let open = (0..tables.signs.len()).filter(|sign| !told.answered[*sign]);
    let mut rated: Vec<(usize, f64, f64)> = open
        .map(|sign| {
            let gain = (bits(chance[sign]) - left[sign]).max(0.0);
            (
                sign,
                gain,
                gain / tables.signs[sign].minutes.max(LEAST_MINUTES),
            )
        })
        .filter(|(_, gain, _)| *gain > 0.0)
        .collect();
    rated.sort_by(|a, b| b.2.total_cmp(&a.2));
    rated.truncate(LOOKS);
    let now = kept.now(tables);
    let look = |(sign, bits, bits_per_minute): (usize, f64, f64)| NextLook {
        sign: tables.signs[sign].key.as_str(),
        chance: chance[sign],
        bits,
        bits_per_minute,
        if_there: gains(tables, &now, &kept.after(tables, sign, true)),
        if_not: leads(tables, &kept.after(tables, sign, false)),
    };
    rated.into_iter().map(look).collect()
}

fn gains(tables: &Tables, now: &[f64], then: &[f64]) -> (&'static str, f64) {
    let gain: Vec<f64> = then.iter().zip(now).map(|(t, n)| t - n).collect();
    at_most(tables, &gain, then)
}

fn leads(tables: &Tables, then: &[f64]) -> (&'static str, f64) {
    at_most(tables, then, then)
}

/// The first disorder with the greatest measure, and its value.
fn at_most(tables: &Tables, measure: &[f64], value: &[f64]) -> (&'static str, f64) {
    let mut best = 0;
    for k in 1..measure.len() {
        if measure[k] > measure[best] {
            best = k;
        }
    }
    let key = tables
        .disorders
        .get(best)
        .map_or(AGEING, |row| row.key.as_str());
    (key, value.get(best).copied().unwrap_or(1.0))
}
