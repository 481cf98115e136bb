//! What each blade did, row by row: to say what lay between two of its cuts.

use super::book::{Mark, Row};
use std::ops::Range;

/// Row numbers by blade, in the order of time.
pub(super) struct Lanes<'a> {
    rows: &'a [Row],
    /// By blade: where its rows begin in `order`; one more at the end.
    starts: Vec<usize>,
    order: Vec<u32>,
    /// The same for cleanings alone.
    clean_starts: Vec<usize>,
    cleanings: Vec<u32>,
}

impl<'a> Lanes<'a> {
    pub fn of(rows: &'a [Row], blades: usize) -> Lanes<'a> {
        let all = || 0..rows.len() as u32;
        let cleaning = |n: &u32| matches!(rows[*n as usize].mark(), Mark::Kind(_));
        let (starts, order) = by_blade(rows, blades, all());
        let (clean_starts, cleanings) = by_blade(rows, blades, all().filter(cleaning));
        Lanes {
            rows,
            starts,
            order,
            clean_starts,
            cleanings,
        }
    }

    /// Rows of a blade from one second to another, both included.
    pub fn rows(&self, blade: u32, from: i64, to: i64) -> &[u32] {
        let lane = &self.order[lane(&self.starts, blade)];
        &lane[within(self.rows, lane, from, to)]
    }

    /// Its cleanings in that time.
    pub fn cleanings(&self, blade: u32, from: i64, to: i64) -> &[u32] {
        let lane = &self.cleanings[lane(&self.clean_starts, blade)];
        &lane[within(self.rows, lane, from, to)]
    }
}

fn lane(starts: &[usize], blade: u32) -> Range<usize> {
    starts[blade as usize]..starts[blade as usize + 1]
}

fn within(rows: &[Row], lane: &[u32], from: i64, to: i64) -> Range<usize> {
    let before = |limit: i64| move |n: &u32| rows[*n as usize].at < limit;
    lane.partition_point(before(from))..lane.partition_point(before(to.saturating_add(1)))
}

/// Counting sort by blade; keeps the order of time.
fn by_blade(
    rows: &[Row],
    blades: usize,
    numbers: impl Iterator<Item = u32> + Clone,
) -> (Vec<usize>, Vec<u32>) {
    let mut starts = vec![0; blades + 1];
    for n in numbers.clone() {
        starts[rows[n as usize].blade as usize + 1] += 1;
    }
    for blade in 0..blades {
        starts[blade + 1] += starts[blade];
    }
    let (mut next, mut order) = (starts.clone(), vec![0; starts[blades]]);
    for n in numbers {
        let at = &mut next[rows[n as usize].blade as usize];
        order[*at] = n;
        *at += 1;
    }
    (starts, order)
}
