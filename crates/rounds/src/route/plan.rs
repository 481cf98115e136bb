//! From sequences of jobs to a plan with times, costs and reasons; slow, plain and exact.

use super::{Clock, Crew, Job, Plan, Problem, Route, Stop, Unplaced, Window};

/// First second from `arrive` on at which the work may start.
pub(super) fn start_from(job: &Job, arrive: Clock) -> Option<Clock> {
    if job.windows.is_empty() {
        return Some(arrive);
    }
    let w = job.windows.iter().find(|w| arrive <= w.close)?;
    Some(arrive.max(w.open))
}

/// Last second up to `latest` at which the work may start.
fn start_until(job: &Job, latest: Clock) -> Option<Clock> {
    if job.windows.is_empty() {
        return Some(latest);
    }
    let w = job.windows.iter().rev().find(|w| w.open <= latest)?;
    Some(latest.min(w.close))
}

/// The day of `crew` with these jobs in this order: home as early as can be, and left as late as that allows. `None` if the
/// crew lacks a skill or room, or cannot keep the windows and its hours; indices must be in range.
pub fn timetable(problem: &Problem, crew: usize, jobs: &[usize]) -> Option<Route> {
    let who = &problem.crews[crew];
    let able = jobs
        .iter()
        .all(|&j| problem.jobs[j].needs & !who.skills == 0);
    let roomy = (0..who.room.len())
        .all(|k| jobs.iter().map(|&j| problem.jobs[j].load[k]).sum::<i64>() <= who.room[k]);
    if !able || !roomy {
        return None;
    }
    let (_, back) = drive(problem, who, jobs, who.hours.open)?;
    if back > who.hours.close {
        return None;
    }
    let leave = latest(problem, who, jobs, back)?;
    let (stops, back) = drive(problem, who, jobs, leave)?;
    let places = || jobs.iter().map(|&j| problem.jobs[j].place);
    let distance = std::iter::once(who.from)
        .chain(places())
        .zip(places().chain([who.to]))
        .map(|(a, b)| problem.travel.distance[a * problem.travel.places + b])
        .sum();
    Some(Route {
        crew,
        leave,
        stops,
        back,
        distance,
    })
}

fn drive(
    problem: &Problem,
    who: &Crew,
    jobs: &[usize],
    leave: Clock,
) -> Option<(Vec<Stop>, Clock)> {
    let (mut here, mut now) = (who.from, leave);
    let mut stops = Vec::with_capacity(jobs.len());
    for &j in jobs {
        let job = &problem.jobs[j];
        let arrive = now + problem.seconds(here, job.place);
        let start = start_from(job, arrive)?;
        now = start + job.service;
        here = job.place;
        stops.push(Stop {
            job: j,
            arrive,
            start,
            end: now,
        });
    }
    Some((stops, now + problem.seconds(here, who.to)))
}

/// The latest departure that still brings the crew home at `back`.
fn latest(problem: &Problem, who: &Crew, jobs: &[usize], back: Clock) -> Option<Clock> {
    let (mut there, mut by) = (who.to, back);
    for &j in jobs.iter().rev() {
        let job = &problem.jobs[j];
        by = start_until(job, by - problem.seconds(job.place, there) - job.service)?;
        there = job.place;
    }
    Some((by - problem.seconds(who.from, there)).min(who.hours.close))
}

/// What a route costs: fixed, by distance and by the second from departure to return.
pub fn cost(problem: &Problem, route: &Route) -> i64 {
    let who = &problem.crews[route.crew];
    who.fixed + who.per_distance * route.distance + who.per_second * (route.back - route.leave)
}

/// Why a job cannot be done by any crew even with the whole day free, if so.
pub(super) fn hopeless(problem: &Problem, j: usize) -> Option<Unplaced> {
    let job = &problem.jobs[j];
    let able = |c: &&Crew| job.needs & !c.skills == 0;
    let roomy = |c: &&Crew| job.load.iter().zip(&c.room).all(|(l, r)| l <= r);
    let crews = || problem.crews.iter().filter(able);
    if crews().next().is_none() {
        return Some(Unplaced::Skills);
    }
    if !crews().any(|c| roomy(&c)) {
        return Some(Unplaced::Room);
    }
    let any = (0..problem.crews.len()).any(|c| timetable(problem, c, &[j]).is_some());
    (!any).then_some(Unplaced::Hours)
}

/// Sequences of jobs, one for each crew (empty: it stays at home), made whole: what still fits is put in, times, costs and
/// reasons are worked out. `hopeless` has the reason of every job that no crew can do.
pub(super) fn finish(
    problem: &Problem,
    hopeless: &[Option<Unplaced>],
    mut lines: Vec<Vec<usize>>,
) -> Plan {
    let mut left = left_out(problem, &lines);
    left.retain(|&j| hopeless[j].is_none());
    complete(problem, &mut lines, &mut left);
    tidy(problem, &mut lines);
    let mut plan = Plan::default();
    for (crew, jobs) in lines
        .iter()
        .enumerate()
        .filter(|(_, jobs)| !jobs.is_empty())
    {
        // a line that cannot be driven never gets here; were there one, its jobs would be listed as left out
        let Some(route) = timetable(problem, crew, jobs) else {
            continue;
        };
        plan.cost += cost(problem, &route);
        plan.routes.push(route);
    }
    let lines: Vec<Vec<usize>> = (0..problem.crews.len())
        .map(|c| {
            let route = plan.routes.iter().find(|r| r.crew == c);
            route.map_or_else(Vec::new, |r| r.stops.iter().map(|s| s.job).collect())
        })
        .collect();
    for j in left_out(problem, &lines) {
        let reason = hopeless[j].unwrap_or_else(|| match best_place(problem, &lines, j) {
            Some(_) => Unplaced::Worth,
            None => Unplaced::Full,
        });
        plan.unplaced.push((j, reason));
        plan.cost += problem.jobs[j].worth.unwrap_or(0);
    }
    plan
}

fn left_out(problem: &Problem, lines: &[Vec<usize>]) -> Vec<usize> {
    let mut placed = vec![false; problem.jobs.len()];
    lines.iter().flatten().for_each(|&j| placed[j] = true);
    (0..placed.len()).filter(|&j| !placed[j]).collect()
}

/// Puts in what must be done wherever it fits, then what is worth its cost, until nothing more goes in.
fn complete(problem: &Problem, lines: &mut [Vec<usize>], left: &mut Vec<usize>) {
    left.sort_by_key(|&j| problem.jobs[j].worth.is_some());
    loop {
        let before = left.len();
        left.retain(|&j| {
            let Some((crew, at, more)) = best_place(problem, lines, j) else {
                return true;
            };
            if problem.jobs[j].worth.is_some_and(|w| more >= w) {
                return true;
            }
            lines[crew].insert(at, j);
            false
        });
        if left.len() == before {
            return;
        }
    }
}

/// Cheapest place for a job: crew, position and what it adds to the cost.
fn best_place(problem: &Problem, lines: &[Vec<usize>], j: usize) -> Option<(usize, usize, i64)> {
    let mut best: Option<(usize, usize, i64)> = None;
    for (crew, line) in lines.iter().enumerate() {
        let spent = match line.is_empty() {
            true => 0,
            false => timetable(problem, crew, line).map_or(0, |r| cost(problem, &r)),
        };
        for at in possible(problem, crew, line, j) {
            let mut with = line.clone();
            with.insert(at, j);
            let Some(route) = timetable(problem, crew, &with) else {
                continue;
            };
            let more = cost(problem, &route) - spent;
            if best.is_none_or(|b| more < b.2) {
                best = Some((crew, at, more));
            }
        }
    }
    best
}

/// Positions at which the job keeps every window and the crew's hours, room and skills.
fn possible(problem: &Problem, crew: usize, line: &[usize], j: usize) -> Vec<usize> {
    let (who, job) = (&problem.crews[crew], &problem.jobs[j]);
    let roomy = (0..who.room.len()).all(|k| {
        line.iter().map(|&i| problem.jobs[i].load[k]).sum::<i64>() + job.load[k] <= who.room[k]
    });
    if !roomy || job.needs & !who.skills != 0 {
        return Vec::new();
    }
    let Some((stops, _)) = drive(problem, who, line, who.hours.open) else {
        return Vec::new();
    };
    let mut due = vec![who.hours.close; line.len() + 1];
    for i in (0..line.len()).rev() {
        let here = &problem.jobs[line[i]];
        let there = line.get(i + 1).map_or(who.to, |&n| problem.jobs[n].place);
        let by = due[i + 1] - problem.seconds(here.place, there) - here.service;
        due[i] = start_until(here, by).unwrap_or(Clock::MIN / 2);
    }
    (0..=line.len())
        .filter(|&at| {
            let (place, free) = match at {
                0 => (who.from, who.hours.open),
                _ => (problem.jobs[line[at - 1]].place, stops[at - 1].end),
            };
            let next = line.get(at).map_or(who.to, |&n| problem.jobs[n].place);
            start_from(job, free + problem.seconds(place, job.place))
                .is_some_and(|s| s + job.service + problem.seconds(job.place, next) <= due[at])
        })
        .collect()
}

/// Among crews that are alike the first go out, the earliest route first.
fn tidy(problem: &Problem, lines: &mut [Vec<usize>]) {
    let mut done = vec![false; lines.len()];
    for c in 0..lines.len() {
        if done[c] {
            continue;
        }
        let alike: Vec<usize> = (c..lines.len())
            .filter(|&d| problem.crews[d] == problem.crews[c])
            .collect();
        let mut routes: Vec<Vec<usize>> = Vec::with_capacity(alike.len());
        for &d in &alike {
            done[d] = true;
            routes.push(std::mem::take(&mut lines[d]));
        }
        routes.sort_by_cached_key(|jobs| {
            let start = timetable(problem, c, jobs).map(|r| r.leave);
            (jobs.is_empty(), start, jobs.first().copied())
        });
        for (d, jobs) in alike.into_iter().zip(routes) {
            lines[d] = jobs;
        }
    }
}

impl Problem {
    pub(super) fn seconds(&self, from: usize, to: usize) -> i64 {
        self.travel.seconds[from * self.travel.places + to]
    }
}

/// Whole days are windows too: what a job may use when it has none of its own.
pub(super) const ANY: Window = Window {
    open: -super::check::LONGEST * 2,
    close: super::check::LONGEST * 2,
};
