//! The weeks to come in, chosen over all needs at once.
//!
//! Once the weeks are fixed every need finds its own cheapest way through them (a shortest path); what couples the needs is
//! that a trip and a lift day are paid once for all. The search has three steps: a good choice by local moves, a lower bound
//! by letting every need pay a share of each trip (Lagrangian relaxation; the shares found by subgradients), and the proof,
//! a dynamic programme forward over the weeks that cuts off what the bound rules out (`prove`). All in whole numbers, so a
//! bound is a bound.

use super::chain::{Chain, NEVER};
use super::{Effort, Season, prove};
use std::collections::BTreeMap;

/// What is done in a week.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Mode {
    /// Nobody comes.
    Away,
    /// A crew comes.
    Visit,
    /// A crew comes with a lift.
    Lift,
}

/// Needs that are alike, taken together.
pub struct Group {
    /// Only a lift reaches them.
    pub lift: bool,
    /// Cost of every leg, `nodes × nodes`, already times the number of needs.
    pub legs: Vec<i64>,
}

/// What is to be chosen.
pub struct Task {
    /// Nodes of a chain: weeks and two.
    pub nodes: usize,
    /// Cost of a visit, and of a lift on it.
    pub fixed: [i64; 2],
    /// Nodes that can be visited in.
    pub open: Vec<usize>,
    /// Needs, alike ones together.
    pub groups: Vec<Group>,
    /// Which group a need is in.
    pub group_of: Vec<usize>,
    /// Fewest visits.
    pub least: usize,
    /// Most visits.
    pub most: usize,
}

/// What was found.
#[derive(Clone, PartialEq, Debug)]
pub struct Answer {
    /// What is done at each node.
    pub modes: Vec<Mode>,
    /// Its cost; [`NEVER`] or more if there is no plan.
    pub cost: i64,
    /// No plan costs less.
    pub bound: i64,
    /// Cheapest way of each group over these modes, node by node.
    pub price: Vec<Vec<i64>>,
    /// Which group a need is in.
    pub group_of: Vec<usize>,
}

impl Answer {
    /// Whether there is a plan.
    pub fn feasible(&self) -> bool {
        self.cost < NEVER
    }

    /// Whether no plan is better.
    pub fn proven(&self) -> bool {
        self.bound >= self.cost
    }
}

/// Work left, in elementary steps.
pub struct Meter {
    /// Steps left.
    pub left: i64,
}

impl Meter {
    /// Takes so many steps; whether they were there.
    pub fn spend(&mut self, steps: usize) -> bool {
        self.left -= steps as i64;
        self.left > 0
    }
}

impl Task {
    /// From chains and the cost of their legs.
    pub fn of(
        season: &Season,
        chains: &[Chain],
        fixed: [i64; 2],
        cost: impl Fn(&Chain, usize, usize) -> i64,
    ) -> Task {
        let nodes = season.weeks.count() + 2;
        let mut alike: BTreeMap<(bool, Vec<i64>), usize> = BTreeMap::new();
        let mut group_of = Vec::with_capacity(chains.len());
        let mut count: Vec<i64> = Vec::new();
        for chain in chains {
            let mut legs = vec![NEVER; nodes * nodes];
            for from in 0..nodes - 1 {
                for to in from + 1..nodes {
                    legs[from * nodes + to] = cost(chain, from, to);
                }
            }
            let next = alike.len();
            let group = *alike.entry((chain.lift, legs)).or_insert(next);
            count.resize(alike.len(), 0);
            count[group] += 1;
            group_of.push(group);
        }
        let mut groups: Vec<(usize, Group)> = alike
            .into_iter()
            .map(|((lift, legs), group)| (group, Group { lift, legs }))
            .collect();
        groups.sort_by_key(|(group, _)| *group);
        for (group, own) in &mut groups {
            let legs = own.legs.iter_mut().filter(|leg| **leg < NEVER);
            legs.for_each(|leg| *leg *= count[*group]);
        }
        let open = season.weeks.days.iter().enumerate();
        Task {
            nodes,
            fixed,
            open: open
                .filter(|(_, d)| d.is_some())
                .map(|(w, _)| w + 1)
                .collect(),
            groups: groups.into_iter().map(|(_, group)| group).collect(),
            group_of,
            least: 0,
            most: usize::MAX,
        }
    }

    /// Cost of visits without anybody served.
    pub fn trips(&self, modes: &[Mode]) -> i64 {
        let of = |mode: &Mode| match mode {
            Mode::Away => 0,
            Mode::Visit => self.fixed[0],
            Mode::Lift => self.fixed[0] + self.fixed[1],
        };
        modes.iter().map(of).sum()
    }

    /// Cost of a choice of weeks, every need on its cheapest way; [`NEVER`] if one has none.
    pub fn cost(&self, modes: &[Mode]) -> i64 {
        let stops = [Mode::Visit, Mode::Lift].map(|least| self.stops(modes, least));
        let visits = stops[0].len() - 2;
        if visits < self.least || visits > self.most {
            return NEVER;
        }
        let mut there = vec![0; self.nodes];
        let mut sum = self.trips(modes);
        for group in &self.groups {
            sum += group.way(self.nodes, &stops[usize::from(group.lift)], &mut there);
            if sum >= NEVER {
                return NEVER;
            }
        }
        sum
    }

    /// The nodes a need may pass: the start, weeks with at least this mode, the end.
    pub fn stops(&self, modes: &[Mode], least: Mode) -> Vec<usize> {
        let weeks = (1..self.nodes - 1).filter(|w| modes[*w] >= least);
        core::iter::once(0)
            .chain(weeks)
            .chain([self.nodes - 1])
            .collect()
    }

    /// Steps that one look at the cost takes.
    fn steps(&self, modes: &[Mode]) -> usize {
        let stops = modes.iter().filter(|m| **m != Mode::Away).count() + 2;
        self.groups.len() * stops * stops / 2 + self.nodes
    }
}

impl Group {
    /// Cost of the cheapest way over some nodes in order.
    fn way(&self, nodes: usize, stops: &[usize], there: &mut [i64]) -> i64 {
        there[0] = 0;
        for (k, to) in stops.iter().enumerate().skip(1) {
            let ways = stops[..k].iter().zip(&*there);
            let cheapest = ways
                .map(|(from, cost)| cost + self.legs[from * nodes + to])
                .min();
            there[k] = cheapest.unwrap_or(NEVER).min(NEVER);
        }
        there[stops.len() - 1]
    }
}

/// Finds a choice of weeks and a bound.
pub fn solve(task: &Task, effort: Effort) -> Answer {
    let mut meter = Meter {
        left: i64::from(effort.0) * 1_000_000,
    };
    let (mut modes, mut cost) = first(task, &mut meter);
    improve(task, &mut modes, &mut cost, &mut meter);
    let mut shares = Shares::first(task);
    let mut answer = Answer {
        modes,
        cost,
        bound: i64::MIN,
        price: Vec::new(),
        group_of: task.group_of.clone(),
    };
    relax(task, &mut shares, &mut answer, &mut meter);
    if answer.feasible() && !answer.proven() {
        prove::prove(task, &shares, &mut answer, &mut meter);
    }
    answer.price = task.groups.iter().map(|group| group.legs.clone()).collect();
    answer
}

/// A first choice: everywhere with a lift, then week by week away what is not worth its cost.
fn first(task: &Task, meter: &mut Meter) -> (Vec<Mode>, i64) {
    let mut modes = vec![Mode::Away; task.nodes];
    let lift = task.groups.iter().any(|group| group.lift);
    let full = if lift { Mode::Lift } else { Mode::Visit };
    task.open.iter().for_each(|w| modes[*w] = full);
    // more than allowed: dearest ways are judged first without the limit
    let free = Task {
        nodes: task.nodes,
        fixed: task.fixed,
        open: task.open.clone(),
        groups: Vec::new(),
        group_of: Vec::new(),
        least: 0,
        most: usize::MAX,
    };
    let cost_of = |modes: &[Mode]| {
        let visits = modes.iter().filter(|m| **m != Mode::Away).count();
        let over = visits.saturating_sub(task.most) as i64;
        let mut there = vec![0; task.nodes];
        let stops = [Mode::Visit, Mode::Lift].map(|least| free.stops(modes, least));
        let ways = task.groups.iter();
        let ways: i64 = ways
            .map(|g| g.way(task.nodes, &stops[usize::from(g.lift)], &mut there))
            .fold(0, |a, b| (a + b).min(NEVER));
        (over, (ways + free.trips(modes)).min(NEVER), visits)
    };
    let mut now = cost_of(&modes);
    // thin out: every other week first, so that what stays is spread
    let mut order: Vec<usize> = Vec::new();
    for stride in [2, 4, 8, 16, 64] {
        let some = task.open.iter().copied().enumerate();
        order.extend(
            some.filter(|(k, _)| k % stride == stride / 2)
                .map(|(_, w)| w),
        );
    }
    order.extend(task.open.iter().copied());
    for week in order {
        if modes[week] == Mode::Away {
            continue;
        }
        for mode in [Mode::Away, Mode::Visit] {
            let old = modes[week];
            if mode >= old {
                continue;
            }
            modes[week] = mode;
            let then = cost_of(&modes);
            meter.spend(task.steps(&modes));
            let enough = then.2 >= task.least;
            if enough && (then.0 < now.0 || then.0 == now.0 && then.1 <= now.1) {
                now = then;
            } else {
                modes[week] = old;
            }
        }
    }
    let cost = task.cost(&modes);
    (modes, cost)
}

/// Moves that help, until none does: a visit away, added, changed to or from a lift, to another week; two for one.
fn improve(task: &Task, modes: &mut [Mode], cost: &mut i64, meter: &mut Meter) {
    let lifts = task.groups.iter().any(|group| group.lift);
    let kinds: &[Mode] = if lifts {
        &[Mode::Visit, Mode::Lift]
    } else {
        &[Mode::Visit]
    };
    // at most half of the effort goes into finding, the rest into proving
    let floor = meter.left / 2;
    loop {
        let before = *cost;
        for at in 0..task.open.len() {
            let week = task.open[at];
            for mode in core::iter::once(Mode::Away).chain(kinds.iter().copied()) {
                try_out(task, modes, cost, &[(week, mode)], meter);
            }
            if modes[week] == Mode::Away {
                continue;
            }
            for to in 0..task.open.len() {
                let (other, mode) = (task.open[to], modes[week]);
                if mode != Mode::Away && modes[other] == Mode::Away {
                    try_out(
                        task,
                        modes,
                        cost,
                        &[(week, Mode::Away), (other, mode)],
                        meter,
                    );
                }
            }
        }
        if *cost == before {
            two_for_one(task, modes, cost, kinds, meter, floor);
        }
        if *cost == before || meter.left < floor {
            return;
        }
    }
}

/// Two visits away and one instead; two visits moved a little.
fn two_for_one(
    task: &Task,
    modes: &mut [Mode],
    cost: &mut i64,
    kinds: &[Mode],
    meter: &mut Meter,
    floor: i64,
) {
    let visits: Vec<usize> = (0..task.nodes)
        .filter(|w| modes[*w] != Mode::Away)
        .collect();
    let start = *cost;
    for (k, one) in visits.iter().enumerate() {
        for two in &visits[k + 1..] {
            for week in &task.open {
                for kind in kinds {
                    let gone = [(*one, Mode::Away), (*two, Mode::Away), (*week, *kind)];
                    try_out(task, modes, cost, &gone, meter);
                    if *cost < start || meter.left < floor {
                        return;
                    }
                }
            }
        }
    }
}

fn try_out(
    task: &Task,
    modes: &mut [Mode],
    cost: &mut i64,
    change: &[(usize, Mode)],
    meter: &mut Meter,
) {
    let old: Vec<Mode> = change.iter().map(|(week, _)| modes[*week]).collect();
    change.iter().for_each(|(week, mode)| modes[*week] = *mode);
    meter.spend(task.steps(modes));
    let then = task.cost(modes);
    if then < *cost {
        *cost = then;
        return;
    }
    // backwards, in case a week is named twice
    for ((week, _), old) in change.iter().zip(old).rev() {
        modes[*week] = old;
    }
}

/// What each need pays for a visit in each week, beside its own costs.
#[derive(Clone)]
pub struct Shares {
    /// By group and node.
    pub pays: Vec<Vec<i64>>,
    /// Whether the group can be served there at all.
    usable: Vec<Vec<bool>>,
}

/// What the relaxation says with some shares.
pub struct Relaxed {
    /// Cheapest way onward from every node, by group, shares paid.
    pub onward: Vec<Vec<i64>>,
    /// What a visit in a week costs over what is paid for it, and the mode in which it costs that.
    pub net: Vec<(i64, Mode)>,
    /// The bound.
    pub bound: i64,
    /// Modes of the chosen weeks.
    modes: Vec<Mode>,
}

impl Shares {
    fn first(task: &Task) -> Shares {
        let n = task.nodes;
        let can = |group: &Group, to: usize| (0..to).any(|from| group.legs[from * n + to] < NEVER);
        let usable: Vec<Vec<bool>> = task
            .groups
            .iter()
            .map(|group| {
                (0..n)
                    .map(|w| task.open.contains(&w) && can(group, w))
                    .collect()
            })
            .collect();
        let mut pays = vec![vec![0; n]; task.groups.len()];
        for week in 0..n {
            let those = |lift: bool| {
                let all = task.groups.iter().zip(&usable);
                all.filter(|(g, u)| u[week] && (g.lift || !lift)).count() as i64
            };
            let (all, lifts) = (those(false).max(1), those(true).max(1));
            for (g, group) in task
                .groups
                .iter()
                .enumerate()
                .filter(|(g, _)| usable[*g][week])
            {
                let lift = if group.lift { task.fixed[1] / lifts } else { 0 };
                pays[g][week] = task.fixed[0] / all + lift;
            }
        }
        Shares { pays, usable }
    }

    /// The relaxation: every need on its own cheapest way, shares paid, and every week in its cheapest mode.
    pub fn relaxed(&self, task: &Task) -> Relaxed {
        let n = task.nodes;
        let mut onward = Vec::with_capacity(task.groups.len());
        let mut bound: i64 = 0;
        for (group, pays) in task.groups.iter().zip(&self.pays) {
            let mut own = vec![0; n];
            for from in (0..n - 1).rev() {
                let legs = &group.legs[from * n..(from + 1) * n];
                let ways = (from + 1..n).map(|to| legs[to] + pays[to] + own[to]);
                own[from] = ways.min().unwrap_or(NEVER).min(NEVER);
            }
            bound = (bound + own[0]).min(NEVER);
            onward.push(own);
        }
        let mut net = vec![(NEVER, Mode::Away); n];
        for week in &task.open {
            let paid = |lift: bool| -> i64 {
                let all = task.groups.iter().zip(&self.pays);
                all.filter(|(g, _)| g.lift == lift)
                    .map(|(_, p)| p[*week])
                    .sum()
            };
            let visit = task.fixed[0] - paid(false);
            let with_lift = visit + task.fixed[1] - paid(true);
            net[*week] = (visit, Mode::Visit).min((with_lift, Mode::Lift));
        }
        let (chosen, sum) = chosen(task, &net, 0, 0);
        let mut modes = vec![Mode::Away; n];
        chosen.iter().for_each(|w| modes[*w] = net[*w].1);
        Relaxed {
            onward,
            bound: (bound + sum).min(NEVER),
            net,
            modes,
        }
    }
}

/// The weeks after a node that the relaxation visits, when so many are visited already, and what they cost.
pub fn chosen(task: &Task, net: &[(i64, Mode)], after: usize, visited: usize) -> (Vec<usize>, i64) {
    let mut weeks: Vec<usize> = task.open.iter().copied().filter(|w| *w > after).collect();
    weeks.sort_by_key(|w| (net[*w].0, *w));
    let (must, may) = (
        task.least.saturating_sub(visited),
        task.most.saturating_sub(visited),
    );
    if weeks.len() < must {
        return (Vec::new(), NEVER);
    }
    let worth = weeks.iter().take_while(|w| net[**w].0 < 0).count();
    weeks.truncate(worth.min(may).max(must));
    let sum = weeks.iter().map(|w| net[*w].0).sum();
    (weeks, sum)
}

/// Rounds without a better bound before steps are halved.
const PATIENCE: u32 = 12;
const ROUNDS: usize = 500;

/// Finds shares that make the bound high, trying out the weeks the relaxation visits on the way.
fn relax(task: &Task, best: &mut Shares, answer: &mut Answer, meter: &mut Meter) {
    let mut shares = best.clone();
    let (mut length, mut waited) = (1.0, 0);
    let a_round = task.groups.len() * task.nodes * task.nodes / 2;
    // the proof needs the greater part
    let floor = meter.left / 2;
    for _ in 0..ROUNDS {
        let relaxed = shares.relaxed(task);
        if relaxed.bound > answer.bound {
            (answer.bound, waited) = (relaxed.bound, 0);
            best.clone_from(&shares);
        } else {
            waited += 1;
        }
        let cost = task.cost(&relaxed.modes);
        if cost < answer.cost {
            (answer.modes, answer.cost) = (relaxed.modes.clone(), cost);
            improve(task, &mut answer.modes, &mut answer.cost, meter);
        }
        if waited == PATIENCE {
            (length, waited) = (length * 0.6, 0);
            shares.clone_from(best);
        }
        let gap = answer.cost - relaxed.bound;
        meter.spend(a_round);
        let over = answer.proven() || !answer.feasible() || length < 1e-3 || meter.left < floor;
        if over || !shares.step(task, &relaxed, length * gap as f64) {
            break;
        }
    }
}

impl Shares {
    /// A step along the subgradient; whether there was any to take.
    fn step(&mut self, task: &Task, relaxed: &Relaxed, length: f64) -> bool {
        let n = task.nodes;
        let mut by: Vec<Vec<i64>> = vec![vec![0; n]; task.groups.len()];
        for (g, group) in task.groups.iter().enumerate() {
            let least = if group.lift { Mode::Lift } else { Mode::Visit };
            let mut from = 0;
            while from < n - 1 {
                let onward = &relaxed.onward[g];
                let cost = |to: &usize| group.legs[from * n + to] + self.pays[g][*to] + onward[*to];
                from = (from + 1..n).min_by_key(cost).unwrap_or(n - 1);
                by[g][from] += 1;
            }
            for week in &task.open {
                let there = i64::from(relaxed.modes[*week] >= least);
                by[g][*week] -= there;
                // nothing to take back, nobody to ask
                if !self.usable[g][*week] || by[g][*week] < 0 && self.pays[g][*week] == 0 {
                    by[g][*week] = 0;
                }
            }
            by[g][n - 1] = 0;
        }
        let squares: i64 = by.iter().flatten().map(|b| b * b).sum();
        if squares == 0 {
            return false;
        }
        let unit = (length / squares as f64).round() as i64;
        for (pays, by) in self.pays.iter_mut().flatten().zip(by.iter().flatten()) {
            *pays = (*pays + unit * by).max(0);
        }
        unit > 0
    }
}
