//! A problem laid out for a quick search: small numbers, side by side as the inner loop reads them.

use super::plan::{ANY, hopeless};
use super::{Crew, Problem, Unplaced};

/// Distance and seconds of one way.
#[derive(Clone, Copy)]
pub(super) struct Leg {
    pub distance: i32,
    pub seconds: i32,
}

/// A job near another, with the way between the two.
#[derive(Clone, Copy)]
pub(super) struct Near {
    pub job: u32,
    pub leg: Leg,
}

/// What does not change about a job, or about one end of a crew's day.
#[derive(Clone, Copy)]
pub(super) struct Task {
    pub place: u32,
    pub service: i32,
    /// First and last second at which it may start; `gaps` says whether all in between are allowed.
    pub open: i32,
    pub close: i32,
    pub gaps: bool,
    pub needs: u64,
    /// `None`: must be done.
    pub worth: Option<i64>,
}

/// So many of the likeliest jobs to come just before, and just after, are looked at first.
const LIKELY: usize = 40;
/// So many of the nearest jobs can be torn out together.
const AROUND: usize = 200;

pub(super) struct Ready {
    pub jobs: usize,
    pub crews: usize,
    pub kinds: usize,
    places: usize,
    /// Row: from.
    legs: Vec<Leg>,
    /// Row: to.
    back: Vec<Leg>,
    pub tasks: Vec<Task>,
    windows: Vec<Vec<(i32, i32)>>,
    /// `jobs × kinds`.
    pub load: Vec<i64>,
    /// Jobs by how much of the largest crew's room they take, in millionths; the largest of the kinds.
    pub bulk: Vec<i64>,
    /// Distance from the nearest start.
    pub far: Vec<i64>,
    pub before: Vec<Vec<Near>>,
    pub after: Vec<Vec<Near>>,
    pub around: Vec<Vec<u32>>,
    /// Crews alike, by the lowest index among them.
    pub class: Vec<u32>,
    pub classes: Vec<Vec<u32>>,
    pub hopeless: Vec<Option<Unplaced>>,
    /// Jobs that some crew can do.
    pub active: Vec<u32>,
}

impl Ready {
    pub(super) fn new(problem: &Problem) -> Ready {
        let places = problem.travel.places;
        let legs: Vec<Leg> = (0..places * places)
            .map(|i| Leg {
                distance: problem.travel.distance[i] as i32,
                seconds: problem.travel.seconds[i] as i32,
            })
            .collect();
        let back = (0..places * places)
            .map(|i| legs[(i % places) * places + i / places])
            .collect();
        let (class, classes) = classes(&problem.crews);
        let hopeless: Vec<Option<Unplaced>> = hopeless_by_class(problem, &classes);
        let mut ready = Ready {
            jobs: problem.jobs.len(),
            crews: problem.crews.len(),
            kinds: problem.crews.first().map_or(0, |c| c.room.len()),
            places,
            legs,
            back,
            tasks: tasks(problem),
            windows: problem
                .jobs
                .iter()
                .map(|j| {
                    j.windows
                        .iter()
                        .map(|w| (w.open as i32, w.close as i32))
                        .collect()
                })
                .collect(),
            load: problem
                .jobs
                .iter()
                .flat_map(|j| j.load.iter().copied())
                .collect(),
            bulk: problem
                .jobs
                .iter()
                .map(|j| bulk(problem, &j.load))
                .collect(),
            far: Vec::new(),
            before: Vec::new(),
            after: Vec::new(),
            around: Vec::new(),
            class,
            classes,
            active: (0..problem.jobs.len() as u32)
                .filter(|&j| hopeless[j as usize].is_none())
                .collect(),
            hopeless,
        };
        ready.neighbours(problem);
        ready
    }

    #[inline(always)]
    pub(super) fn leg(&self, from: u32, to: u32) -> Leg {
        self.legs[from as usize * self.places + to as usize]
    }

    /// Ways from a place to all others.
    #[inline(always)]
    pub(super) fn from(&self, place: u32) -> &[Leg] {
        &self.legs[place as usize * self.places..][..self.places]
    }

    /// Ways to a place from all others.
    #[inline(always)]
    pub(super) fn to(&self, place: u32) -> &[Leg] {
        &self.back[place as usize * self.places..][..self.places]
    }

    /// First second from `arrive` on at which job `u` may start.
    #[inline(always)]
    pub(super) fn start_from(&self, u: usize, arrive: i32) -> Option<i32> {
        let task = &self.tasks[u];
        if arrive > task.close {
            return None;
        }
        if !task.gaps {
            return Some(arrive.max(task.open));
        }
        self.windows[u]
            .iter()
            .find(|w| arrive <= w.1)
            .map(|w| arrive.max(w.0))
    }

    /// Last second up to `latest` at which job `u` may start.
    #[inline(always)]
    pub(super) fn start_until(&self, u: usize, latest: i32) -> Option<i32> {
        let task = &self.tasks[u];
        if latest < task.open {
            return None;
        }
        if !task.gaps {
            return Some(latest.min(task.close));
        }
        self.windows[u]
            .iter()
            .rev()
            .find(|w| w.0 <= latest)
            .map(|w| latest.min(w.1))
    }

    fn neighbours(&mut self, problem: &Problem) {
        let starts: Vec<u32> = self
            .classes
            .iter()
            .map(|c| problem.crews[c[0] as usize].from as u32)
            .collect();
        self.far = (0..self.jobs)
            .map(|j| {
                let ways = starts
                    .iter()
                    .map(|&s| i64::from(self.leg(s, self.tasks[j].place).distance));
                ways.min().unwrap_or(0)
            })
            .collect();
        self.before = vec![Vec::new(); self.jobs];
        self.after = vec![Vec::new(); self.jobs];
        self.around = vec![Vec::new(); self.jobs];
        let mut keyed: Vec<(i64, u32)> = Vec::new();
        for &u in &self.active {
            let others = || self.active.iter().copied().filter(|&v| v != u);
            let place = |v: u32| self.tasks[v as usize].place;
            keyed.clear();
            keyed.extend(others().filter_map(|v| Some((self.likely(v, u)?, v))));
            self.before[u as usize] = first(&mut keyed, LIKELY)
                .map(|v| Near {
                    job: v,
                    leg: self.leg(place(v), place(u)),
                })
                .collect();
            keyed.clear();
            keyed.extend(others().filter_map(|v| Some((self.likely(u, v)?, v))));
            self.after[u as usize] = first(&mut keyed, LIKELY)
                .map(|v| Near {
                    job: v,
                    leg: self.leg(place(u), place(v)),
                })
                .collect();
            keyed.clear();
            keyed.extend(others().map(|v| {
                let ways = [self.leg(place(u), place(v)), self.leg(place(v), place(u))];
                (
                    ways.iter()
                        .map(|l| i64::from(l.distance) + i64::from(l.seconds))
                        .sum::<i64>(),
                    v,
                )
            }));
            self.around[u as usize] = std::iter::once(u)
                .chain(first(&mut keyed, AROUND))
                .collect();
        }
    }

    /// How ill it would do to go straight from one job to another: the way and a part of the wait that cannot be helped.
    /// `None` if the second can never be reached in time.
    fn likely(&self, from: u32, to: u32) -> Option<i64> {
        let (a, b) = (&self.tasks[from as usize], &self.tasks[to as usize]);
        let leg = self.leg(a.place, b.place);
        let after = |start: i32| i64::from(start) + i64::from(a.service) + i64::from(leg.seconds);
        if after(a.open) > i64::from(b.close) {
            return None;
        }
        let wait = (i64::from(b.open) - after(a.close)).max(0);
        Some(5 * i64::from(leg.distance) + 5 * i64::from(leg.seconds) + 2 * wait)
    }
}

/// The `n` smallest in order.
fn first(keyed: &mut Vec<(i64, u32)>, n: usize) -> impl Iterator<Item = u32> + '_ {
    if keyed.len() > n {
        keyed.select_nth_unstable(n);
        keyed.truncate(n);
    }
    keyed.sort_unstable();
    keyed.iter().map(|k| k.1)
}

fn tasks(problem: &Problem) -> Vec<Task> {
    let jobs = problem.jobs.iter().map(|job| Task {
        place: job.place as u32,
        service: job.service as i32,
        open: job.windows.first().unwrap_or(&ANY).open as i32,
        close: job.windows.last().unwrap_or(&ANY).close as i32,
        gaps: job.windows.len() > 1,
        needs: job.needs,
        worth: job.worth,
    });
    let ends = problem.crews.iter().flat_map(|crew| {
        [crew.from, crew.to].map(|place| Task {
            place: place as u32,
            service: 0,
            open: crew.hours.open as i32,
            close: crew.hours.close as i32,
            gaps: false,
            needs: 0,
            worth: None,
        })
    });
    jobs.chain(ends).collect()
}

fn bulk(problem: &Problem, load: &[i64]) -> i64 {
    let shares = load.iter().enumerate().map(|(k, &l)| {
        let most = problem
            .crews
            .iter()
            .map(|c| c.room[k])
            .max()
            .unwrap_or(0)
            .max(1);
        (i128::from(l) * 1_000_000 / i128::from(most)).min(i128::from(i64::MAX)) as i64
    });
    shares.max().unwrap_or(0)
}

fn classes(crews: &[Crew]) -> (Vec<u32>, Vec<Vec<u32>>) {
    let mut classes: Vec<Vec<u32>> = Vec::new();
    let class = (0..crews.len())
        .map(|c| {
            let known = classes
                .iter()
                .position(|k| crews[k[0] as usize] == crews[c]);
            let k = known.unwrap_or_else(|| {
                classes.push(Vec::new());
                classes.len() - 1
            });
            classes[k].push(c as u32);
            k as u32
        })
        .collect();
    (class, classes)
}

/// One crew of each kind is enough to ask.
fn hopeless_by_class(problem: &Problem, classes: &[Vec<u32>]) -> Vec<Option<Unplaced>> {
    let one_each = Problem {
        travel: problem.travel.clone(),
        jobs: problem.jobs.clone(),
        crews: classes
            .iter()
            .map(|c| problem.crews[c[0] as usize].clone())
            .collect(),
    };
    (0..problem.jobs.len())
        .map(|j| hopeless(&one_each, j))
        .collect()
}
