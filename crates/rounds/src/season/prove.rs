//! The proof: a dynamic programme forward over the weeks.
//!
//! A state is the choice for all weeks up to one, and with it the cost of every need's cheapest way to each visit so far.
//! From there on no plan can cost less than: what is paid, every need's cheapest way onward with its shares paid, and the
//! weeks to come at what the shares do not cover. A state for which that is no less than the best plan known is dropped.
//! When the work allowed is used up the least bound among the states left is the bound that was proven.

use super::chain::NEVER;
use super::search::{Answer, Meter, Mode, Shares, Task, chosen};

/// Searches until nothing better can be left or the work is used up; `answer` has the best plan and the bound.
pub fn prove(task: &Task, shares: &Shares, answer: &mut Answer, meter: &mut Meter) {
    let relaxed = shares.relaxed(task);
    let ahead = task
        .groups
        .iter()
        .enumerate()
        .map(|(g, group)| ahead(task.nodes, &group.legs, &shares.pays[g], &relaxed.onward[g]))
        .collect();
    let weeks = (0..task.nodes - 1)
        .map(|w| task.open.contains(&w))
        .collect();
    let mut proof = Proof {
        task,
        ahead,
        open: weeks,
        net: relaxed.net,
        lifts: task.groups.iter().any(|group| group.lift),
        modes: vec![Mode::Away; task.nodes],
        stops: vec![0],
        there: vec![vec![0; task.groups.len()]],
        left: i64::MAX,
        answer,
        meter,
    };
    proof.from(0);
    let left = proof.left;
    answer.bound = answer.bound.max(left.min(answer.cost));
}

/// Cheapest way onward from each node if the next visit is after each week: `ahead[from × nodes + week]`.
fn ahead(n: usize, legs: &[i64], pays: &[i64], onward: &[i64]) -> Vec<i64> {
    let mut out = vec![NEVER; n * n];
    for from in 0..n - 1 {
        let mut least = NEVER;
        for next in (from + 1..n).rev() {
            least = least.min(legs[from * n + next] + pays[next] + onward[next]);
            out[from * n + next - 1] = least;
        }
    }
    out
}

struct Proof<'a> {
    task: &'a Task,
    ahead: Vec<Vec<i64>>,
    open: Vec<bool>,
    net: Vec<(i64, Mode)>,
    lifts: bool,
    modes: Vec<Mode>,
    /// Nodes visited so far, the start first.
    stops: Vec<usize>,
    /// By stop and group: the cheapest way there.
    there: Vec<Vec<i64>>,
    /// Least bound of what was not looked into.
    left: i64,
    answer: &'a mut Answer,
    meter: &'a mut Meter,
}

impl Proof<'_> {
    /// Everything after a week, the choice up to it being made.
    fn from(&mut self, week: usize) {
        let next = week + 1;
        if next == self.task.nodes - 1 {
            let visits = self.stops.len() - 1;
            // the bound at the end is the cost
            let cost = self.bound(week);
            if cost < self.answer.cost && (self.task.least..=self.task.most).contains(&visits) {
                self.answer.cost = cost;
                self.answer.modes.clone_from(&self.modes);
            }
            return;
        }
        let mut choices = vec![(self.bound(next), Mode::Away)];
        if self.open[next] && self.stops.len() <= self.task.most {
            for mode in [Mode::Visit, Mode::Lift] {
                if mode == Mode::Visit || self.lifts {
                    self.enter(next, mode);
                    choices.push((self.bound(next), mode));
                    self.leave(next);
                }
            }
        }
        choices.sort_unstable();
        for (bound, mode) in choices {
            if bound >= self.answer.cost {
                break;
            }
            if self.meter.left <= 0 {
                self.left = self.left.min(bound);
                break;
            }
            match mode {
                Mode::Away => self.from(next),
                _ => {
                    self.enter(next, mode);
                    self.from(next);
                    self.leave(next);
                }
            }
        }
    }

    fn enter(&mut self, week: usize, mode: Mode) {
        let n = self.task.nodes;
        let mut arrived = vec![NEVER; self.task.groups.len()];
        for (g, group) in self.task.groups.iter().enumerate() {
            if group.lift && mode != Mode::Lift {
                continue;
            }
            let ways = self.stops.iter().zip(&self.there);
            let ways = ways.map(|(from, there)| there[g] + group.legs[from * n + week]);
            arrived[g] = ways.min().unwrap_or(NEVER).min(NEVER);
        }
        self.modes[week] = mode;
        self.stops.push(week);
        self.there.push(arrived);
    }

    fn leave(&mut self, week: usize) {
        self.modes[week] = Mode::Away;
        self.stops.pop();
        self.there.pop();
    }

    /// No plan that begins with the choices up to a week costs less.
    fn bound(&mut self, week: usize) -> i64 {
        let n = self.task.nodes;
        self.meter
            .spend(self.task.groups.len() * self.stops.len() + n);
        let (_, to_come) = chosen(self.task, &self.net, week, self.stops.len() - 1);
        let mut sum = (self.task.trips(&self.modes) + to_come).min(NEVER);
        for (g, ahead) in self.ahead.iter().enumerate() {
            let ways = self.stops.iter().zip(&self.there);
            let ways = ways.map(|(from, there)| there[g] + ahead[from * n + week]);
            sum = (sum + ways.min().unwrap_or(NEVER)).min(NEVER);
        }
        sum
    }
}
