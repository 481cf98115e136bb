//! The search: ruin and recreate.
//!
//! Strings of stops near each other are torn out of several routes and put back one by one at the cheapest place, now and
//! then looking away (slack induction by string removals: Christiaens J., Vanden Berghe G., Transportation Science 54, 2020,
//! doi:10.1287/trsc.2019.0914). Each place is tried in constant time from the earliest end of the stop before and the latest
//! arrival at the stop after. `docs/route.md` tells the rest.

use super::lots::Lots;
use super::plan::finish;
use super::ready::{Near, Ready};
use super::{Plan, Problem};
use model::math;

const NONE: u32 = u32::MAX;
/// `watch` is asked every so many iterations.
const WATCH: u64 = 512;
/// One place in so many is overlooked.
const BLINK: usize = 100;
/// Stops torn out at a time, about, and the longest string.
const TORN: f64 = 10.0;
const STRING: f64 = 10.0;
/// Share of strings that leave some stops in their middle.
const SPLIT: f64 = 0.5;
/// Chance that one more stop is left in the middle.
const SPARE: f64 = 0.3;
/// Share of iterations that tear out a whole route.
const WHOLE: f64 = 0.005;
/// First and last temperature, as shares of the mean cost of a stop in the first plan; the cooler start is for a given plan.
const HOT: f64 = 0.6;
const WARM: f64 = 0.05;
const COLD: f64 = 0.005;
/// Jobs left out that are tried again in one iteration, besides those torn out.
const AGAIN: usize = 12;

/// A stop, or an end of a route: where it hangs and its bounds in time.
#[derive(Clone, Copy)]
struct Node {
    prev: u32,
    next: u32,
    route: u32,
    place: u32,
    /// Earliest end of the work here.
    done: i32,
    /// Latest arrival here that keeps all that follows.
    due: i32,
    /// Distance to the next.
    onward: i32,
}

/// Stops in a row as one: seconds from the first arrival to the last departure, and the first arrivals that need no more.
#[derive(Clone, Copy)]
struct Span {
    long: i64,
    early: i64,
    late: i64,
}

impl Span {
    fn then(self, seconds: i32, next: Span) -> Span {
        let shift = self.long + i64::from(seconds);
        let wait = (next.early - shift - self.late).max(0);
        Span {
            long: shift + next.long + wait,
            early: self.early.max(next.early - shift - wait),
            late: self.late.min(next.late - shift),
        }
    }
}

#[derive(Clone, Copy)]
struct Line {
    skills: u64,
    fixed: i64,
    per_distance: i64,
    per_second: i64,
    distance: i64,
    /// Seconds from departure to return; kept only where they cost.
    seconds: i64,
    stops: u32,
    /// Stops with more than one window.
    gaps: u32,
}

impl Line {
    fn cost(&self) -> i64 {
        if self.stops == 0 {
            return 0;
        }
        self.fixed + self.per_distance * self.distance + self.per_second * self.seconds
    }
}

/// How a plan was before this iteration touched it.
#[derive(Default)]
struct Before {
    lines: Vec<(u32, Line)>,
    spare: Vec<i64>,
    nodes: Vec<(u32, Node)>,
    spans: Vec<(Span, Span)>,
    left: Vec<u32>,
}

#[derive(Clone, Default)]
struct Kept {
    missing: usize,
    cost: i64,
    lines: Vec<u32>,
}

struct Search<'a> {
    ready: &'a Ready,
    lots: Lots,
    nodes: Vec<Node>,
    lines: Vec<Line>,
    /// `crews × kinds`.
    spare: Vec<i64>,
    /// What comes before and with a stop, and with and after it; kept only where time costs.
    ahead: Vec<Span>,
    behind: Vec<Span>,
    timed: bool,
    least_per_distance: i64,
    /// Crews at home, by class, and where each stands there.
    home: Vec<Vec<u32>>,
    home_at: Vec<u32>,
    /// Jobs in no route.
    left: Vec<u32>,
    absent: Vec<u64>,
    before: Before,
    stamp: Vec<u64>,
    now: u64,
    blink: usize,
    pool: Vec<u32>,
    torn: Vec<u32>,
    hit: Vec<u32>,
    scratch: Vec<u32>,
    cost: i64,
    missing: usize,
}

pub(super) fn run(
    problem: &Problem,
    start: Option<&Plan>,
    seed: u64,
    iterations: u64,
    watch: &mut dyn FnMut(u64, &Plan) -> bool,
) -> Plan {
    let ready = Ready::new(problem);
    let mut search = Search::new(problem, &ready, seed);
    search.begin(start);
    let mut best = search.keep();
    let mut plan = finish(problem, &ready.hopeless, lines_of(&ready, &best));
    if !watch(0, &plan) || ready.active.is_empty() {
        return plan;
    }
    let placed = (ready.active.len() - search.left.len()).max(1);
    let mean = search.lines.iter().map(Line::cost).sum::<i64>().max(1) as f64 / placed as f64;
    let hot = mean * if start.is_some() { WARM } else { HOT };
    let cold = mean * COLD;
    let (mut heat, mut fresh) = (hot, false);
    for i in 1..=iterations {
        if i % 64 == 1 {
            heat = hot * math::pow(cold / hot, i as f64 / iterations as f64);
        }
        search.step(heat);
        if (search.missing, search.cost) < (best.missing, best.cost) {
            search.keep_in(&mut best);
            fresh = true;
        }
        if i % WATCH == 0 {
            if fresh {
                plan = better(
                    plan,
                    finish(problem, &ready.hopeless, lines_of(&ready, &best)),
                    problem,
                );
                fresh = false;
            }
            if !watch(i, &plan) {
                return plan;
            }
        }
    }
    if fresh {
        plan = better(
            plan,
            finish(problem, &ready.hopeless, lines_of(&ready, &best)),
            problem,
        );
    }
    plan
}

/// A plan that places more of what must be done, or costs less.
fn better(a: Plan, b: Plan, problem: &Problem) -> Plan {
    let rank = |p: &Plan| {
        let missing = p
            .unplaced
            .iter()
            .filter(|u| problem.jobs[u.0].worth.is_none())
            .count();
        (missing, p.cost)
    };
    if rank(&b) < rank(&a) { b } else { a }
}

fn lines_of(ready: &Ready, kept: &Kept) -> Vec<Vec<usize>> {
    let mut lines = vec![Vec::new(); ready.crews];
    let mut crew = 0;
    for &x in &kept.lines {
        match (x as usize).checked_sub(ready.jobs) {
            Some(c) => crew = c,
            None => lines[crew].push(x as usize),
        }
    }
    lines
}

impl<'a> Search<'a> {
    fn new(problem: &Problem, ready: &'a Ready, seed: u64) -> Search<'a> {
        let count = ready.jobs + 2 * ready.crews;
        let node = |i: usize| Node {
            prev: NONE,
            next: NONE,
            route: NONE,
            place: ready.tasks[i].place,
            done: 0,
            due: 0,
            onward: 0,
        };
        let mut search = Search {
            ready,
            lots: Lots::new(seed),
            nodes: (0..count).map(node).collect(),
            lines: problem
                .crews
                .iter()
                .map(|c| Line {
                    skills: c.skills,
                    fixed: c.fixed,
                    per_distance: c.per_distance,
                    per_second: c.per_second,
                    distance: 0,
                    seconds: 0,
                    stops: 0,
                    gaps: 0,
                })
                .collect(),
            spare: problem
                .crews
                .iter()
                .flat_map(|c| c.room.iter().copied())
                .collect(),
            ahead: (0..count).map(|i| alone(ready, i)).collect(),
            behind: (0..count).map(|i| alone(ready, i)).collect(),
            timed: problem.crews.iter().any(|c| c.per_second > 0),
            least_per_distance: problem
                .crews
                .iter()
                .map(|c| c.per_distance)
                .min()
                .unwrap_or(0),
            home: vec![Vec::new(); ready.classes.len()],
            home_at: vec![NONE; ready.crews],
            left: Vec::new(),
            absent: vec![0; ready.jobs],
            before: Before::default(),
            stamp: vec![0; ready.crews],
            now: 0,
            blink: BLINK,
            pool: Vec::new(),
            torn: Vec::new(),
            hit: Vec::new(),
            scratch: Vec::new(),
            cost: 0,
            missing: 0,
        };
        for c in (0..ready.crews).rev() {
            let (first, last) = search.ends(c);
            let (open, close) = (ready.tasks[first].open, ready.tasks[first].close);
            search.nodes[first] = Node {
                next: last as u32,
                route: c as u32,
                done: open,
                due: close,
                ..node(first)
            };
            search.nodes[last] = Node {
                prev: first as u32,
                route: c as u32,
                done: open,
                due: close,
                ..node(last)
            };
            search.set_home(c);
        }
        search
    }

    fn ends(&self, crew: usize) -> (usize, usize) {
        let first = self.ready.jobs + 2 * crew;
        (first, first + 1)
    }

    fn set_home(&mut self, crew: usize) {
        let at_home = self.home_at[crew] != NONE;
        let empty = self.lines[crew].stops == 0;
        let home = &mut self.home[self.ready.class[crew] as usize];
        if empty && !at_home {
            self.home_at[crew] = home.len() as u32;
            home.push(crew as u32);
        } else if !empty && at_home {
            let at = self.home_at[crew] as usize;
            home.swap_remove(at);
            if let Some(&moved) = home.get(at) {
                self.home_at[moved as usize] = at as u32;
            }
            self.home_at[crew] = NONE;
        }
    }

    /// The first plan: the given one, or job by job.
    fn begin(&mut self, start: Option<&Plan>) {
        self.left = self.ready.active.clone();
        for route in start.iter().flat_map(|p| &p.routes) {
            let (mut at, _) = self.ends(route.crew);
            for stop in &route.stops {
                self.link(stop.job, at);
                at = stop.job;
            }
            self.refresh(route.crew);
            self.set_home(route.crew);
        }
        self.left.retain(|&u| self.nodes[u as usize].route == NONE);
        let mut all = std::mem::take(&mut self.left);
        self.order(&mut all, 2);
        for u in all {
            self.put(u, false);
        }
        self.cost = self.lines.iter().map(Line::cost).sum::<i64>() + self.lost();
        self.missing = self.count_missing();
    }

    fn lost(&self) -> i64 {
        self.left
            .iter()
            .filter_map(|&u| self.ready.tasks[u as usize].worth)
            .sum()
    }

    fn count_missing(&self) -> usize {
        self.left
            .iter()
            .filter(|&&u| self.ready.tasks[u as usize].worth.is_none())
            .count()
    }

    fn keep(&self) -> Kept {
        let mut kept = Kept::default();
        self.keep_in(&mut kept);
        kept
    }

    fn keep_in(&self, kept: &mut Kept) {
        (kept.missing, kept.cost) = (self.missing, self.cost);
        kept.lines.clear();
        for crew in 0..self.ready.crews {
            let (first, last) = self.ends(crew);
            if self.lines[crew].stops == 0 {
                continue;
            }
            let mut at = first;
            while at != last {
                kept.lines.push(at as u32);
                at = self.nodes[at].next as usize;
            }
        }
        // the start of a route stands for its crew
        for x in &mut kept.lines {
            if *x as usize >= self.ready.jobs {
                *x = (self.ready.jobs + (*x as usize - self.ready.jobs) / 2) as u32;
            }
        }
    }

    /// One round: tear out, put back, keep or undo.
    fn step(&mut self, heat: f64) {
        self.now += 1;
        self.before.clear(&self.left);
        self.tear();
        for k in 0..self.hit.len() {
            let crew = self.hit[k] as usize;
            if !self.refresh(crew) {
                // a way may be shorter by way of the stop torn out: then the others cannot stay either
                self.tear_whole(crew);
                self.refresh(crew);
            }
            self.set_home(crew);
        }
        self.put_back();
        for k in 0..self.before.lines.len() {
            self.set_home(self.before.lines[k].0 as usize);
        }
        let touched = &self.before.lines;
        let change: i64 = touched
            .iter()
            .map(|(c, was)| self.lines[*c as usize].cost() - was.cost())
            .sum();
        let was_lost: i64 = self
            .before
            .left
            .iter()
            .filter_map(|&u| self.ready.tasks[u as usize].worth)
            .sum();
        let cost = self.cost + change + self.lost() - was_lost;
        let missing = self.count_missing();
        if self.accept(missing, cost, heat) {
            (self.cost, self.missing) = (cost, missing);
        } else {
            self.undo();
        }
    }

    fn accept(&mut self, missing: usize, cost: i64, heat: f64) -> bool {
        let mut easier = false;
        if missing > 0 || self.missing > 0 {
            let weary = |left: &[u32]| -> u64 {
                let must = left
                    .iter()
                    .filter(|&&u| self.ready.tasks[u as usize].worth.is_none());
                must.map(|&u| self.absent[u as usize]).sum()
            };
            easier = weary(&self.left) < weary(&self.before.left);
            for k in 0..self.left.len() {
                self.absent[self.left[k] as usize] += 1;
            }
        }
        if missing != self.missing {
            return missing < self.missing || easier;
        }
        let worse = (cost - self.cost) as f64;
        easier || worse <= 0.0 || worse < -heat * math::ln(self.lots.unit())
    }

    /// Writes down a route before it is first changed in this round.
    fn touch(&mut self, crew: usize) {
        if self.stamp[crew] == self.now {
            return;
        }
        self.stamp[crew] = self.now;
        let kinds = self.ready.kinds;
        self.before.lines.push((crew as u32, self.lines[crew]));
        self.before
            .spare
            .extend_from_slice(&self.spare[crew * kinds..][..kinds]);
        let (mut at, last) = self.ends(crew);
        loop {
            self.before.nodes.push((at as u32, self.nodes[at]));
            if self.timed {
                self.before.spans.push((self.ahead[at], self.behind[at]));
            }
            if at == last {
                return;
            }
            at = self.nodes[at].next as usize;
        }
    }

    fn undo(&mut self) {
        let kinds = self.ready.kinds;
        for k in 0..self.before.lines.len() {
            let (crew, line) = self.before.lines[k];
            let crew = crew as usize;
            let (first, last) = self.ends(crew);
            let mut at = self.nodes[first].next as usize;
            while at != last {
                self.nodes[at].route = NONE;
                at = self.nodes[at].next as usize;
            }
            self.lines[crew] = line;
            self.spare[crew * kinds..][..kinds]
                .copy_from_slice(&self.before.spare[k * kinds..][..kinds]);
        }
        for k in 0..self.before.nodes.len() {
            let (at, node) = self.before.nodes[k];
            self.nodes[at as usize] = node;
            if self.timed {
                (self.ahead[at as usize], self.behind[at as usize]) = self.before.spans[k];
            }
        }
        for k in 0..self.before.lines.len() {
            self.set_home(self.before.lines[k].0 as usize);
        }
        self.left.clone_from(&self.before.left);
    }

    /// Tears strings of stops out of routes around a job picked by lot; `torn` has the jobs, `hit` the routes.
    fn tear(&mut self) {
        self.torn.clear();
        self.hit.clear();
        let ready = self.ready;
        let seed = ready.active[self.lots.below(ready.active.len())] as usize;
        let routes = self.out();
        if routes == 0 {
            return;
        }
        if self.lots.unit() < WHOLE && self.nodes[seed].route != NONE {
            let crew = self.nodes[seed].route;
            self.hit.push(crew);
            return self.tear_whole(crew as usize);
        }
        let placed = ready.active.len() - self.left.len();
        let longest = STRING.min(placed as f64 / routes as f64).max(1.0);
        let most = 4.0 * TORN / (1.0 + longest) - 1.0;
        let strings = (self.lots.unit() * most + 1.0).floor().max(1.0) as usize;
        for &c in &ready.around[seed] {
            let crew = self.nodes[c as usize].route;
            if crew == NONE || self.hit.contains(&crew) {
                continue;
            }
            let most = longest.min(f64::from(self.lines[crew as usize].stops));
            let long = (self.lots.unit() * most).ceil().max(1.0) as usize;
            self.hit.push(crew);
            self.touch(crew as usize);
            self.tear_string(c as usize, long);
            if self.hit.len() >= strings {
                break;
            }
        }
    }

    fn out(&self) -> usize {
        self.ready.crews - self.home.iter().map(Vec::len).sum::<usize>()
    }

    fn tear_whole(&mut self, crew: usize) {
        self.touch(crew);
        let (first, last) = self.ends(crew);
        let from = self.torn.len();
        let mut at = self.nodes[first].next as usize;
        while at != last {
            self.torn.push(at as u32);
            at = self.nodes[at].next as usize;
        }
        for k in from..self.torn.len() {
            self.unlink(self.torn[k] as usize);
        }
    }

    /// Takes `long` stops of a route out, `at` being among them unless it is spared in the middle.
    fn tear_string(&mut self, at: usize, long: usize) {
        let stops = self.lines[self.nodes[at].route as usize].stops as usize;
        let mut spared = 0;
        if long > 1 && long < stops && self.lots.unit() < SPLIT {
            spared = 1;
            while long + spared < stops && self.lots.unit() < SPARE {
                spared += 1;
            }
        }
        let span = long + spared;
        let (back, fore) = (
            self.steps(at, span - 1, false),
            self.steps(at, span - 1, true),
        );
        let (least, most) = ((span - 1).saturating_sub(fore), back.min(span - 1));
        let mut first = at;
        for _ in 0..least + self.lots.below(most - least + 1) {
            first = self.nodes[first].prev as usize;
        }
        let skip = if spared > 0 {
            1 + self.lots.below(long - 1)
        } else {
            span
        };
        let from = self.torn.len();
        let mut x = first;
        for i in 0..span {
            if i < skip || i >= skip + spared {
                self.torn.push(x as u32);
            }
            x = self.nodes[x].next as usize;
        }
        for k in from..self.torn.len() {
            self.unlink(self.torn[k] as usize);
        }
    }

    /// Stops before or after this one, counted up to `most`.
    fn steps(&self, mut at: usize, most: usize, fore: bool) -> usize {
        for i in 0..most {
            at = if fore {
                self.nodes[at].next
            } else {
                self.nodes[at].prev
            } as usize;
            if at >= self.ready.jobs {
                return i;
            }
        }
        most
    }

    /// Takes a stop out; the route's bounds and sums must be refreshed after.
    fn unlink(&mut self, u: usize) {
        let Node {
            prev, next, route, ..
        } = self.nodes[u];
        self.nodes[prev as usize].next = next;
        self.nodes[next as usize].prev = prev;
        self.nodes[u].route = NONE;
        self.count(u, route as usize, -1);
    }

    /// Hangs a stop in; the route's bounds and sums must be brought up to date after.
    fn link(&mut self, u: usize, after: usize) {
        let Node { next, route, .. } = self.nodes[after];
        self.nodes[after].next = u as u32;
        self.nodes[next as usize].prev = u as u32;
        let node = &mut self.nodes[u];
        (node.prev, node.next, node.route) = (after as u32, next, route);
        self.count(u, route as usize, 1);
    }

    fn count(&mut self, u: usize, crew: usize, sign: i64) {
        let line = &mut self.lines[crew];
        line.stops = (i64::from(line.stops) + sign) as u32;
        if self.ready.tasks[u].gaps {
            line.gaps = (i64::from(line.gaps) + sign) as u32;
        }
        let kinds = self.ready.kinds;
        for k in 0..kinds {
            self.spare[crew * kinds + k] -= sign * self.ready.load[u * kinds + k];
        }
    }

    /// Works out a route anew from end to end; whether it can be driven.
    fn refresh(&mut self, crew: usize) -> bool {
        let (first, last) = self.ends(crew);
        let ready = self.ready;
        if self.lines[crew].stops == 0 {
            self.nodes[first].onward = 0;
            (self.lines[crew].distance, self.lines[crew].seconds) = (0, 0);
            self.nodes[last].done = self.nodes[first].done;
            self.nodes[first].due = self.nodes[last].due;
            return true;
        }
        let (mut at, mut distance, mut sound) = (first, 0, true);
        while at != last {
            let next = self.nodes[at].next as usize;
            let leg = ready.leg(self.nodes[at].place, self.nodes[next].place);
            self.nodes[at].onward = leg.distance;
            distance += i64::from(leg.distance);
            let arrive = self.nodes[at].done + leg.seconds;
            let start = ready.start_from(next, arrive);
            sound &= start.is_some();
            self.nodes[next].done = start.unwrap_or(arrive) + ready.tasks[next].service;
            at = next;
        }
        self.lines[crew].distance = distance;
        while at != first {
            let prev = self.nodes[at].prev as usize;
            let leg = ready.leg(self.nodes[prev].place, self.nodes[at].place);
            let by = self.nodes[at].due - leg.seconds - ready.tasks[prev].service;
            self.nodes[prev].due = ready.start_until(prev, by).unwrap_or(by);
            at = prev;
        }
        self.time(crew);
        sound
    }

    /// Brings the bounds of a route up to date after `u` was hung in.
    fn renew(&mut self, u: usize) {
        let ready = self.ready;
        let crew = self.nodes[u].route as usize;
        let (first, last) = self.ends(crew);
        let mut at = self.nodes[u].prev as usize;
        let mut new = true;
        loop {
            let next = self.nodes[at].next as usize;
            let leg = ready.leg(self.nodes[at].place, self.nodes[next].place);
            if at == u || next == u {
                self.nodes[at].onward = leg.distance;
            }
            let arrive = self.nodes[at].done + leg.seconds;
            let done = ready.start_from(next, arrive).unwrap_or(arrive) + ready.tasks[next].service;
            if !new && done == self.nodes[next].done {
                break;
            }
            self.nodes[next].done = done;
            new = next == u;
            at = next;
            if at == last {
                break;
            }
        }
        let mut at = self.nodes[u].next as usize;
        let mut new = true;
        loop {
            let prev = self.nodes[at].prev as usize;
            let leg = ready.leg(self.nodes[prev].place, self.nodes[at].place);
            let by = self.nodes[at].due - leg.seconds - ready.tasks[prev].service;
            let due = ready.start_until(prev, by).unwrap_or(by);
            if !new && due == self.nodes[prev].due {
                break;
            }
            self.nodes[prev].due = due;
            new = prev == u;
            at = prev;
            if at == first {
                break;
            }
        }
        self.time(crew);
    }

    /// Spans and seconds of a route, where they cost.
    fn time(&mut self, crew: usize) {
        if self.lines[crew].per_second == 0 {
            return;
        }
        let (first, last) = self.ends(crew);
        if self.lines[crew].gaps > 0 {
            self.lines[crew].seconds = self.slow(crew, NONE as usize, 0);
            return;
        }
        let mut at = first;
        while at != last {
            let next = self.nodes[at].next as usize;
            let leg = self.ready.leg(self.nodes[at].place, self.nodes[next].place);
            self.ahead[next] = self.ahead[at].then(leg.seconds, alone(self.ready, next));
            at = next;
        }
        while at != first {
            let prev = self.nodes[at].prev as usize;
            let leg = self.ready.leg(self.nodes[prev].place, self.nodes[at].place);
            self.behind[prev] = alone(self.ready, prev).then(leg.seconds, self.behind[at]);
            at = prev;
        }
        self.lines[crew].seconds = self.ahead[last].long;
        // the ends of an empty route are read as they were
        self.behind[last] = alone(self.ready, last);
    }

    /// Seconds of a route with `u` hung in after `after`, stop by stop: home as early as can be, left as late as that
    /// allows. `u` may be none.
    fn slow(&mut self, crew: usize, u: usize, after: usize) -> i64 {
        let (first, last) = self.ends(crew);
        let ready = self.ready;
        let mut order = std::mem::take(&mut self.scratch);
        order.clear();
        let mut at = first;
        loop {
            order.push(at as u32);
            if at == after && u != NONE as usize {
                order.push(u as u32);
            }
            if at == last {
                break;
            }
            at = self.nodes[at].next as usize;
        }
        let mut now = ready.tasks[first].open;
        for w in order.windows(2) {
            let arrive = now
                + ready
                    .leg(
                        self.nodes[w[0] as usize].place,
                        self.nodes[w[1] as usize].place,
                    )
                    .seconds;
            now = ready.start_from(w[1] as usize, arrive).unwrap_or(arrive)
                + ready.tasks[w[1] as usize].service;
        }
        let mut by = now;
        for w in order.windows(2).rev() {
            let leg = ready.leg(
                self.nodes[w[0] as usize].place,
                self.nodes[w[1] as usize].place,
            );
            let latest = by - leg.seconds - ready.tasks[w[0] as usize].service;
            by = ready.start_until(w[0] as usize, latest).unwrap_or(latest);
        }
        self.scratch = order;
        i64::from(now) - i64::from(by)
    }

    /// Sorts jobs by one of the ways: 0 by lot, 1 bulky first, 2 far first, 3 near first, 4 narrow windows first, 5 early
    /// first, 6 late first; what must be done comes before what may be left.
    fn order(&mut self, jobs: &mut [u32], way: usize) {
        self.lots.shuffle(jobs);
        let ready = self.ready;
        let task = |u: &u32| &ready.tasks[*u as usize];
        match way {
            1 => jobs.sort_by_key(|u| -ready.bulk[*u as usize]),
            2 => jobs.sort_by_key(|u| -ready.far[*u as usize]),
            3 => jobs.sort_by_key(|u| ready.far[*u as usize]),
            4 => jobs.sort_by_key(|u| task(u).close - task(u).open),
            5 => jobs.sort_by_key(|u| task(u).open),
            6 => jobs.sort_by_key(|u| -task(u).close),
            _ => {}
        }
    }

    /// Puts the torn out, and some of those left out before, back at their cheapest places.
    fn put_back(&mut self) {
        let mut pool = std::mem::take(&mut self.pool);
        pool.clear();
        pool.extend_from_slice(&self.torn);
        for _ in 0..AGAIN.min(self.left.len()) {
            let k = self.lots.below(self.left.len());
            pool.push(self.left.swap_remove(k));
        }
        let way = [0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 3, 4, 4, 5, 5, 6, 6][self.lots.below(17)];
        self.order(&mut pool, way);
        for &u in &pool {
            let reckless = self.ready.tasks[u as usize].worth.is_some() && self.lots.below(16) == 0;
            self.put(u, reckless);
        }
        self.pool = pool;
    }

    /// Puts one job at its cheapest place, if it is worth it (`reckless`: whatever it costs); else it is left out.
    fn put(&mut self, u: u32, reckless: bool) {
        let limit = match self.ready.tasks[u as usize].worth {
            Some(worth) if !reckless => worth,
            _ => i64::MAX,
        };
        let mut best = (limit, NONE);
        self.try_likely(u as usize, &mut best);
        self.try_home(u as usize, &mut best);
        if best.1 == NONE && (limit == i64::MAX || self.lots.below(16) == 0) {
            self.try_all(u as usize, &mut best);
        }
        if best.1 == NONE {
            self.left.push(u);
            return;
        }
        let crew = self.nodes[best.1 as usize].route as usize;
        self.touch(crew);
        let empty = self.lines[crew].stops == 0;
        self.link(u as usize, best.1 as usize);
        if empty {
            self.refresh(crew);
            self.set_home(crew);
            return;
        }
        let was = self.nodes[best.1 as usize].onward;
        self.renew(u as usize);
        let now = i64::from(self.nodes[best.1 as usize].onward)
            + i64::from(self.nodes[u as usize].onward);
        self.lines[crew].distance += now - i64::from(was);
    }

    fn blinks(&mut self) -> bool {
        self.blink -= 1;
        if self.blink == 0 {
            self.blink = 1 + self.lots.below(2 * BLINK - 1);
            return true;
        }
        false
    }

    fn try_likely(&mut self, u: usize, best: &mut (i64, u32)) {
        let ready = self.ready;
        let place = self.nodes[u].place;
        for &Near { job: v, leg } in &ready.before[u] {
            let node = &self.nodes[v as usize];
            if node.route != NONE
                && !self.hopeless(leg.distance - node.onward, best.0)
                && !self.blinks()
            {
                let next = self.nodes[self.nodes[v as usize].next as usize].place;
                let on = ready.distance(place)[next as usize];
                self.weigh(u, v as usize, leg.distance, on, best);
            }
        }
        for &Near { job, leg } in &ready.after[u] {
            let node = &self.nodes[job as usize];
            if node.route == NONE {
                continue;
            }
            let prev = &self.nodes[node.prev as usize];
            if !self.hopeless(leg.distance - prev.onward, best.0) && !self.blinks() {
                let v = self.nodes[job as usize].prev as usize;
                let here = ready.distance_to(place)[self.nodes[v].place as usize];
                self.weigh(u, v, here, leg.distance, best);
            }
        }
    }

    /// Going there and back from the nearer end is more than the best so far; were no way shorter by way of a third place,
    /// this could not be the best.
    #[inline(always)]
    fn hopeless(&self, longer: i32, best: i64) -> bool {
        2 * self.least_per_distance * i64::from(longer) >= best
    }

    /// A crew of each class that is still at home.
    fn try_home(&mut self, u: usize, best: &mut (i64, u32)) {
        for k in 0..self.home.len() {
            if let Some(&crew) = self.home[k].last() {
                let (first, last) = self.ends(crew as usize);
                let (place, ready) = (self.nodes[u].place, self.ready);
                let here = ready.distance_to(place)[self.nodes[first].place as usize];
                let on = ready.distance(place)[self.nodes[last].place as usize];
                self.weigh(u, first, here, on, best);
            }
        }
    }

    fn try_all(&mut self, u: usize, best: &mut (i64, u32)) {
        let ready = self.ready;
        let place = self.nodes[u].place;
        for crew in 0..ready.crews {
            if self.lines[crew].stops == 0 {
                continue;
            }
            let (mut at, last) = self.ends(crew);
            while at != last {
                let next = self.nodes[at].next as usize;
                let here = ready.distance_to(place)[self.nodes[at].place as usize];
                let on = ready.distance(place)[self.nodes[next].place as usize];
                if !self.blinks() {
                    self.weigh(u, at, here, on, best);
                }
                at = next;
            }
        }
    }

    /// What it would add to the cost to hang `u` in after `v`, if that can be done and beats the best so far.
    #[inline(always)]
    fn weigh(&mut self, u: usize, v: usize, here: i32, on: i32, best: &mut (i64, u32)) {
        let ready = self.ready;
        let (node, task) = (&self.nodes[v], &ready.tasks[u]);
        let crew = node.route as usize;
        let line = &self.lines[crew];
        let longer = i64::from(here) + i64::from(on) - i64::from(node.onward);
        let mut more = line.per_distance * longer;
        if line.stops == 0 {
            more += line.fixed;
        }
        if line.per_second == 0 && more >= best.0 {
            return;
        }
        let next = &self.nodes[node.next as usize];
        let here = ready.seconds_to(node.place, task.place);
        let Some(start) = ready.start_from(u, node.done + here) else {
            return;
        };
        let on = ready.seconds(task.place, next.place);
        if start + task.service + on > next.due {
            return;
        }
        if task.needs & !line.skills != 0 {
            return;
        }
        for k in 0..ready.kinds {
            if ready.load[u * ready.kinds + k] > self.spare[crew * ready.kinds + k] {
                return;
            }
        }
        if line.per_second != 0 {
            let (per_second, seconds) = (line.per_second, line.seconds);
            let with = if line.gaps > 0 || task.gaps {
                self.slow(crew, u, v)
            } else {
                let next = self.nodes[v].next as usize;
                self.ahead[v]
                    .then(here, alone(ready, u))
                    .then(on, self.behind[next])
                    .long
            };
            more += per_second * (with - seconds);
            if more >= best.0 {
                return;
            }
        }
        *best = (more, v as u32);
    }
}

impl Before {
    fn clear(&mut self, left: &[u32]) {
        self.lines.clear();
        self.spare.clear();
        self.nodes.clear();
        self.spans.clear();
        self.left.clear();
        self.left.extend_from_slice(left);
    }
}

/// One stop as a span.
#[inline(always)]
fn alone(ready: &Ready, i: usize) -> Span {
    let task = &ready.tasks[i];
    Span {
        long: i64::from(task.service),
        early: i64::from(task.open),
        late: i64::from(task.close),
    }
}
