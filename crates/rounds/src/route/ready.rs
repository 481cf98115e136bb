//! A problem laid out for a quick search: small numbers, side by side as the inner loop reads them.

use super::plan::{ANY, hopeless};
use super::{Crew, Problem, Travel, Unplaced};

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

/// Tables of travel, with the places in an order that puts near ones side by side, so that a search stays in near memory.
struct Ways {
    places: usize,
    /// Row: from.
    distance: Vec<i32>,
    seconds: Vec<i32>,
    /// Row: to; empty if it is the same both ways.
    distance_to: Vec<i32>,
    seconds_to: Vec<i32>,
    /// New index of each place.
    rank: Vec<u32>,
}

impl Ways {
    fn new(travel: &Travel) -> Ways {
        let places = travel.places;
        let order = chain(travel);
        let mut rank = vec![0; places];
        order
            .iter()
            .enumerate()
            .for_each(|(new, &old)| rank[old] = new as u32);
        let table = |of: &[i64], turned: bool| -> Vec<i32> {
            let cell = |a: usize, b: usize| {
                of[if turned {
                    b * places + a
                } else {
                    a * places + b
                }] as i32
            };
            order
                .iter()
                .flat_map(|&a| order.iter().map(move |&b| (a, b)))
                .map(|(a, b)| cell(a, b))
                .collect()
        };
        let same = |of: &[i64]| {
            (0..places).all(|a| (0..a).all(|b| of[a * places + b] == of[b * places + a]))
        };
        let turned = |of: &[i64]| {
            if same(of) {
                Vec::new()
            } else {
                table(of, true)
            }
        };
        Ways {
            places,
            distance: table(&travel.distance, false),
            seconds: table(&travel.seconds, false),
            distance_to: turned(&travel.distance),
            seconds_to: turned(&travel.seconds),
            rank,
        }
    }
}

/// Places in a chain, each followed by the nearest not yet in it.
fn chain(travel: &Travel) -> Vec<usize> {
    let mut rest: Vec<usize> = (0..travel.places).collect();
    let mut order = Vec::with_capacity(rest.len());
    let mut at = 0;
    while !rest.is_empty() {
        let way = |p: usize| {
            travel.distance[at * travel.places + p]
                .saturating_add(travel.distance[p * travel.places + at])
        };
        let k = (0..rest.len())
            .min_by_key(|&k| (way(rest[k]), rest[k]))
            .unwrap_or(0);
        at = rest.swap_remove(k);
        order.push(at);
    }
    order
}

pub(super) struct Ready {
    pub jobs: usize,
    pub crews: usize,
    pub kinds: usize,
    ways: Ways,
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
        let ways = Ways::new(&problem.travel);
        let (class, classes) = classes(&problem.crews);
        let hopeless: Vec<Option<Unplaced>> = hopeless_by_class(problem, &classes);
        let mut ready = Ready {
            jobs: problem.jobs.len(),
            crews: problem.crews.len(),
            kinds: problem.crews.first().map_or(0, |c| c.room.len()),
            tasks: tasks(problem, &ways.rank),
            ways,
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
        Leg {
            distance: self.distance(from)[to as usize],
            seconds: self.seconds(from, to),
        }
    }

    /// Distances from a place to all others.
    #[inline(always)]
    pub(super) fn distance(&self, from: u32) -> &[i32] {
        &self.ways.distance[from as usize * self.ways.places..][..self.ways.places]
    }

    /// Distances to a place from all others.
    #[inline(always)]
    pub(super) fn distance_to(&self, to: u32) -> &[i32] {
        let table = if self.ways.distance_to.is_empty() {
            &self.ways.distance
        } else {
            &self.ways.distance_to
        };
        &table[to as usize * self.ways.places..][..self.ways.places]
    }

    #[inline(always)]
    pub(super) fn seconds(&self, from: u32, to: u32) -> i32 {
        self.ways.seconds[from as usize * self.ways.places + to as usize]
    }

    /// The same, read from the row of where it leads to, so that one row after another is not needed.
    #[inline(always)]
    pub(super) fn seconds_to(&self, from: u32, to: u32) -> i32 {
        let table = if self.ways.seconds_to.is_empty() {
            &self.ways.seconds
        } else {
            &self.ways.seconds_to
        };
        table[to as usize * self.ways.places + from as usize]
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
            .map(|c| self.ways.rank[problem.crews[c[0] as usize].from])
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

fn tasks(problem: &Problem, rank: &[u32]) -> Vec<Task> {
    let jobs = problem.jobs.iter().map(|job| Task {
        place: rank[job.place],
        service: job.service as i32,
        open: job.windows.first().unwrap_or(&ANY).open as i32,
        close: job.windows.last().unwrap_or(&ANY).close as i32,
        gaps: job.windows.len() > 1,
        needs: job.needs,
        worth: job.worth,
    });
    let ends = problem.crews.iter().flat_map(|crew| {
        [crew.from, crew.to].map(|place| Task {
            place: rank[place],
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
