//! What logged times teach: how long this keeper's crews take against the figures of the tables.
//!
//! The logarithm of logged minutes over estimated minutes is normal: a visit differs from the next of the same crew by
//! `visit_sd`, crews among themselves by `crew_sd`, and the keeper's crews on the whole from the tables by `pace_sd`.
//! Each crew's pace is shrunk towards that of all the keeper's crews, and that towards the tables, by as much as the
//! times are few (normal-normal, conjugate). How far visits and crews differ is estimated from the times (within crews
//! pooled; between crews by restricted maximum likelihood) and mixed with the assumed figures by `prior-weight`.

use super::Figures;
use std::collections::BTreeMap;

/// A logged time against what the tables say of the same work.
#[derive(Clone, PartialEq, Debug)]
pub struct Logged {
    /// Which crew; empty: not told.
    pub crew: String,
    /// Natural logarithm of logged over estimated minutes (without any pace).
    pub log_ratio: f64,
}

/// How fast somebody works against the tables.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pace {
    /// Logarithm of the factor on minutes.
    pub log_mean: f64,
    /// How unsure that is: standard deviation.
    pub sd: f64,
    /// How far single visits differ: standard deviation of the logarithm.
    pub visit_sd: f64,
    /// How many logged times of the crew's own speak in it.
    pub own: usize,
}

/// What the times of all crews teach.
#[derive(Clone, PartialEq, Debug)]
pub struct Taught {
    /// A crew of which nothing is logged, or when the crew is not known.
    pub anybody: Pace,
    /// Crews with logged times.
    pub crews: BTreeMap<String, Pace>,
    /// Logged times in all.
    pub times: usize,
    /// How far crews differ among themselves: standard deviation of the logarithm.
    pub crew_sd: f64,
}

impl Taught {
    /// The pace of a crew.
    pub fn of(&self, crew: &str) -> Pace {
        self.crews.get(crew).copied().unwrap_or(self.anybody)
    }
}

/// Learns from logged times; `None` without any that can be used. Ratios that are no number are left out.
pub fn learn(figures: &Figures, times: &[Logged]) -> Option<Taught> {
    let mut by_crew: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for time in times.iter().filter(|time| time.log_ratio.is_finite()) {
        by_crew.entry(&time.crew).or_default().push(time.log_ratio);
    }
    if by_crew.is_empty() {
        return None;
    }
    let square = |key| figures.mid(key) * figures.mid(key);
    let weight = figures.mid("prior-weight");
    let visit = visit_variance(&by_crew, square("visit-sd"), weight);
    let means: Vec<(f64, f64)> = by_crew
        .values()
        .map(|ratios| (mean(ratios), visit / ratios.len() as f64))
        .collect();
    let crew = crew_variance(&means, square("crew-sd"), weight);
    let (all, paces) = shrink(&means, crew, square("pace-sd"));
    let pace = |(log_mean, variance): (f64, f64), own| Pace {
        log_mean,
        sd: variance.sqrt(),
        visit_sd: visit.sqrt(),
        own,
    };
    let crews = by_crew.iter().zip(paces).map(|((crew, ratios), own)| {
        let own = pace(own, ratios.len());
        ((*crew).to_owned(), own)
    });
    Some(Taught {
        anybody: pace((all.0, all.1 + crew), 0),
        crews: crews.collect(),
        times: by_crew.values().map(Vec::len).sum(),
        crew_sd: crew.sqrt(),
    })
}

fn mean(xs: &[f64]) -> f64 {
    xs.iter().sum::<f64>() / xs.len() as f64
}

/// Variance of visits within a crew: pooled over crews, the assumed one counting for `weight` visits.
fn visit_variance(by_crew: &BTreeMap<&str, Vec<f64>>, assumed: f64, weight: f64) -> f64 {
    let (mut squares, mut free) = (0.0, 0.0);
    for ratios in by_crew.values() {
        let middle = mean(ratios);
        squares += ratios.iter().map(|x| squared(x - middle)).sum::<f64>();
        free += ratios.len() as f64 - 1.0;
    }
    (weight * assumed + squares) / (weight + free)
}

/// Variance between crews, the assumed one counting for `weight` crews.
fn crew_variance(means: &[(f64, f64)], assumed: f64, weight: f64) -> f64 {
    let free = means.len() as f64 - 1.0;
    (weight * assumed + free * between(means)) / (weight + free)
}

/// Variance between groups from their means and the variances of those means, by restricted maximum likelihood (Fisher
/// scoring, as in Viechtbauer 2005, Journal of Educational and Behavioral Statistics 30:261-293); not below zero, and
/// zero for a single group.
pub fn between(means: &[(f64, f64)]) -> f64 {
    if means.len() < 2 {
        return 0.0;
    }
    let mut tau2 = 0.0_f64;
    for _ in 0..200 {
        let weights: Vec<f64> = means.iter().map(|(_, v)| 1.0 / (v + tau2)).collect();
        let power = |n: i32| -> f64 { weights.iter().map(|w| raised(*w, n)).sum() };
        let (one, two, three) = (power(1), power(2), power(3));
        let pairs = || weights.iter().zip(means);
        let centre = pairs().map(|(w, (y, _))| w * y).sum::<f64>() / one;
        let spread: f64 = pairs().map(|(w, (y, _))| w * w * squared(y - centre)).sum();
        let trace = one - two / one;
        let bend = two - 2.0 * three / one + two * two / (one * one);
        let next = (tau2 + (spread - trace) / bend).max(0.0);
        let done = (next - tau2).abs() <= 1e-12 * (1.0 + tau2);
        tau2 = next;
        if done {
            break;
        }
    }
    tau2
}

/// Mean and variance of all crews together, and of each, given how far crews differ (`crew`) and how far all may be from
/// zero (`pace`): the exact posterior of the normal-normal model.
pub fn shrink(means: &[(f64, f64)], crew: f64, pace: f64) -> ((f64, f64), Vec<(f64, f64)>) {
    let precision = 1.0 / pace + means.iter().map(|(_, v)| 1.0 / (v + crew)).sum::<f64>();
    let middle = means.iter().map(|(y, v)| y / (v + crew)).sum::<f64>() / precision;
    let unsure = 1.0 / precision;
    let each = means.iter().map(|(y, v)| {
        let pulled = v / (v + crew);
        let log_mean = pulled * middle + (1.0 - pulled) * y;
        (log_mean, (1.0 - pulled) * v + pulled * pulled * unsure)
    });
    ((middle, unsure), each.collect())
}

fn raised(x: f64, n: i32) -> f64 {
    (0..n).fold(1.0, |product, _| product * x)
}

fn squared(x: f64) -> f64 {
    x * x
}
