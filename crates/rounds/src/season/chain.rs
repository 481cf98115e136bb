//! One need over the season: from which visit to which it may go, how late that makes it and what it costs.
//!
//! Nodes are 0 (as the palm stands), 1 to n (served in that week) and n + 1 (the end of the season).

use super::{Kind, Need, Season};
use crown::DueWindow;
use model::Day;

/// No way.
pub const NEVER: i64 = i64::MAX / 4;

/// Between two nodes.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Leg {
    /// Days past the limit at its end.
    pub late: i64,
    /// Days since the window opened.
    pub wait: i64,
    /// Cost, smallest unit of money.
    pub money: i64,
    /// Whether a best plan may use it: part of a way with the least lateness.
    pub punctual: bool,
}

/// A need with all its legs.
#[derive(Clone, PartialEq, Debug)]
pub struct Chain {
    /// Whether it needs the lift.
    pub lift: bool,
    /// Days late that cannot be helped, with a visit in every open week.
    pub least_late: i64,
    nodes: usize,
    legs: Vec<Option<Leg>>,
}

impl Chain {
    /// The legs of a need.
    pub fn of(season: &Season, need: &Need) -> Chain {
        let nodes = season.weeks.count() + 2;
        let mut legs = vec![None; nodes * nodes];
        for from in 0..nodes - 1 {
            // served only where somebody can come
            let stands = from == 0 || season.weeks.days[from - 1].is_some();
            for to in from + 1..nodes {
                if stands {
                    legs[from * nodes + to] = leg(season, need, from, to);
                }
            }
        }
        let mut chain = Chain {
            lift: need.lift,
            least_late: 0,
            nodes,
            legs,
        };
        chain.mark_punctual();
        chain
    }

    /// The leg between two nodes, if there is one.
    pub fn leg(&self, from: usize, to: usize) -> Option<&Leg> {
        self.legs[from * self.nodes + to].as_ref()
    }

    /// Money of a leg that makes nobody later than can be helped.
    pub fn punctual_money(&self, from: usize, to: usize) -> i64 {
        let leg = self.leg(from, to).filter(|leg| leg.punctual);
        leg.map_or(NEVER, |leg| leg.money)
    }

    /// Days late before money, with so much money a day.
    pub fn late_then_money(&self, from: usize, to: usize, dear: i64) -> i64 {
        self.leg(from, to)
            .map_or(NEVER, |leg| leg.late * dear + leg.money)
    }

    /// Days waiting before money, nobody later than can be helped.
    pub fn wait_then_money(&self, from: usize, to: usize, dear: i64) -> i64 {
        let leg = self.leg(from, to).filter(|leg| leg.punctual);
        leg.map_or(NEVER, |leg| leg.wait * dear + leg.money)
    }

    /// At most what one way can cost: the dearest leg out of every node.
    pub fn most_money(&self) -> i64 {
        let rows = self.legs.chunks(self.nodes);
        rows.map(|row| row.iter().flatten().map(|l| l.money).max().unwrap_or(0))
            .sum()
    }

    /// Finds the least lateness and marks the legs that keep to it.
    fn mark_punctual(&mut self) {
        let n = self.nodes;
        let (mut there, mut onward) = (vec![NEVER; n], vec![NEVER; n]);
        (there[0], onward[n - 1]) = (0, 0);
        for to in 1..n {
            for from in 0..to {
                if let Some(leg) = self.leg(from, to) {
                    there[to] = there[to].min(there[from] + leg.late);
                }
            }
        }
        for from in (0..n - 1).rev() {
            for to in from + 1..n {
                if let Some(leg) = self.leg(from, to) {
                    onward[from] = onward[from].min(leg.late + onward[to]);
                }
            }
        }
        self.least_late = there[n - 1];
        for (from, row) in self.legs.chunks_mut(n).enumerate() {
            for (leg, onward) in row.iter_mut().zip(&onward) {
                if let Some(leg) = leg {
                    leg.punctual = there[from] + leg.late + onward == self.least_late;
                }
            }
        }
    }
}

/// The window that a node opens.
pub fn window(need: &Need, from: usize) -> DueWindow {
    let nothing = DueWindow {
        earliest: None,
        latest: None,
    };
    match from {
        0 => need.now,
        _ => need.after.get(from - 1).copied().unwrap_or(nothing),
    }
}

/// The first day on which the need may be served out of a node: never before it is worth it, nor while it is held.
pub fn opens(need: &Need, from: usize) -> Option<Day> {
    let earliest = window(need, from).earliest?;
    Some(need.not_before.map_or(earliest, |held| earliest.max(held)))
}

fn leg(season: &Season, need: &Need, from: usize, to: usize) -> Option<Leg> {
    let weeks = &season.weeks;
    let (opens, latest) = (opens(need, from), window(need, from).latest);
    let at_end = to == weeks.count() + 1;
    let day = if at_end {
        weeks.end
    } else {
        weeks.days[to - 1].filter(|day| opens.is_some_and(|opens| opens <= *day))?
    };
    let past = |limit: Option<Day>| limit.map_or(0, |l| i64::from(day.since(l).max(0)));
    if need.kind == Kind::Stalks {
        if !at_end && past(latest) > 0 {
            return None;
        }
        let left = at_end && from == 0 && opens.is_some();
        let work = if at_end {
            0
        } else {
            cost(season, need, 1.0, 0.0)
        };
        return Some(Leg {
            late: 0,
            wait: if at_end { 0 } else { past(opens) },
            money: work + if left { need.missed } else { 0 },
            punctual: true,
        });
    }
    let fronds = hanging(need, weeks.count(), from, to - 1);
    // what hangs at the end is charged as if it came off then, so that no plan gains by leaving it
    let times = if at_end { 0.0 } else { 1.0 };
    Some(Leg {
        late: past(latest),
        wait: past(opens),
        money: cost(season, need, times, fronds) + storm(season, need, from, day),
        punctual: true,
    })
}

/// Dead fronds hanging in a week (or at the end) since a node.
pub fn hanging(need: &Need, weeks: usize, from: usize, week: usize) -> f64 {
    let figure = need.hanging.get(from * (weeks + 1) + week);
    figure.copied().unwrap_or(0.0)
}

/// Crew and debris, rounded to the smallest unit of money.
fn cost(season: &Season, need: &Need, times: f64, fronds: f64) -> i64 {
    let tariff = &season.tariff;
    let minutes = times * need.minutes + fronds * need.minutes_each;
    let crew = minutes / 60.0 * tariff.crew_hour as f64;
    (crew + fronds * need.m3_each * tariff.debris_m3 as f64).round() as i64
}

/// What hangs when the storm season opens, if that is between the node and the day.
fn storm(season: &Season, need: &Need, from: usize, day: Day) -> i64 {
    let weeks = &season.weeks;
    let Some(opens) = season.storm.filter(|opens| *opens <= day) else {
        return 0;
    };
    let before = from == 0 || weeks.days[from - 1].is_some_and(|served| served < opens);
    let Some(week) = weeks.week_of(opens).filter(|_| before) else {
        return 0;
    };
    let fronds = hanging(need, weeks.count(), from, week);
    (fronds * season.tariff.storm_frond as f64).round() as i64
}
