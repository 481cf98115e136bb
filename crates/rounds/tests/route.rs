//! The planner of days against a checker that shares nothing with it, against all plans of small days, and against
//! published benchmarks.

#![allow(clippy::disallowed_methods)] // a test may read files

use proptest::prelude::*;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use spearleaf_rounds::route::{
    Crew, Fault, Job, Place, Plan, Problem, Travel, Unplaced, Window, solve, solve_from,
};

// The checker: a day is driven second by second as the documentation words it.

fn seconds(p: &Problem, a: usize, b: usize) -> i64 {
    p.travel.seconds[a * p.travel.places + b]
}

fn metres(p: &Problem, a: usize, b: usize) -> i64 {
    p.travel.distance[a * p.travel.places + b]
}

fn may_start(job: &Job, at: i64) -> bool {
    job.windows.is_empty() || job.windows.iter().any(|w| w.open <= at && at <= w.close)
}

/// Starts (one for each job) and return of a crew that leaves at `leave` and never dawdles.
fn drive(p: &Problem, crew: &Crew, jobs: &[usize], leave: i64) -> Option<(Vec<i64>, i64)> {
    let (mut at, mut now, mut starts) = (crew.from, leave, vec![]);
    for &j in jobs {
        let job = &p.jobs[j];
        let arrive = now + seconds(p, at, job.place);
        let choices = job.windows.iter().map(|w| w.open).chain([arrive]);
        let start = choices
            .filter(|&s| s >= arrive && may_start(job, s))
            .min()?;
        starts.push(start);
        now = start + job.service;
        at = job.place;
    }
    Some((starts, now + seconds(p, at, crew.to)))
}

fn fits(p: &Problem, crew: &Crew, jobs: &[usize]) -> bool {
    jobs.iter()
        .all(|&j| p.jobs[j].needs & crew.skills == p.jobs[j].needs)
        && (0..crew.room.len())
            .all(|k| jobs.iter().map(|&j| p.jobs[j].load[k]).sum::<i64>() <= crew.room[k])
        && drive(p, crew, jobs, crew.hours.open).is_some_and(|(_, back)| back <= crew.hours.close)
}

/// Departure and return: home as early as can be, left as late as that allows; tried second by second from the end.
fn hours(p: &Problem, crew: &Crew, jobs: &[usize]) -> (i64, i64) {
    let (_, back) = drive(p, crew, jobs, crew.hours.open).unwrap();
    let same = |leave: i64| drive(p, crew, jobs, leave).is_some_and(|(_, b)| b == back);
    let (mut low, mut high) = (crew.hours.open, crew.hours.close);
    while low < high {
        let middle = (low + high + 1).div_euclid(2);
        if same(middle) {
            low = middle
        } else {
            high = middle - 1
        }
    }
    (low, back)
}

fn price(p: &Problem, crew: &Crew, jobs: &[usize]) -> i64 {
    if jobs.is_empty() {
        return 0;
    }
    let (leave, back) = hours(p, crew, jobs);
    crew.fixed + crew.per_distance * way(p, crew, jobs) + crew.per_second * (back - leave)
}

fn way(p: &Problem, crew: &Crew, jobs: &[usize]) -> i64 {
    let mut at = crew.from;
    let mut sum = 0;
    for &j in jobs {
        sum += metres(p, at, p.jobs[j].place);
        at = p.jobs[j].place;
    }
    sum + metres(p, at, crew.to)
}

/// Cheapest way to add a job to the day as it stands.
fn cheapest(p: &Problem, lines: &[Vec<usize>], j: usize) -> Option<i64> {
    let mut best = None;
    for (crew, line) in p.crews.iter().zip(lines) {
        for at in 0..=line.len() {
            let mut with = line.clone();
            with.insert(at, j);
            if fits(p, crew, &with) {
                let more = price(p, crew, &with) - price(p, crew, line);
                best = Some(best.map_or(more, |b: i64| b.min(more)));
            }
        }
    }
    best
}

fn first_true_reason(p: &Problem, lines: &[Vec<usize>], j: usize) -> Option<Unplaced> {
    let job = &p.jobs[j];
    let skilled: Vec<&Crew> = p
        .crews
        .iter()
        .filter(|c| job.needs & c.skills == job.needs)
        .collect();
    let roomy: Vec<&&Crew> = skilled
        .iter()
        .filter(|c| (0..c.room.len()).all(|k| job.load[k] <= c.room[k]))
        .collect();
    if skilled.is_empty() {
        Some(Unplaced::Skills)
    } else if roomy.is_empty() {
        Some(Unplaced::Room)
    } else if !roomy.iter().any(|c| fits(p, c, &[j])) {
        Some(Unplaced::Hours)
    } else {
        match cheapest(p, lines, j) {
            None => Some(Unplaced::Full),
            Some(more) => job.worth.filter(|&w| more >= w).map(|_| Unplaced::Worth),
        }
    }
}

fn lines_of(p: &Problem, plan: &Plan) -> Vec<Vec<usize>> {
    let mut lines = vec![vec![]; p.crews.len()];
    for route in &plan.routes {
        lines[route.crew] = route.stops.iter().map(|s| s.job).collect();
    }
    lines
}

/// Everything a plan promises.
fn audit(p: &Problem, plan: &Plan) {
    let mut seen = vec![0; p.jobs.len()];
    let mut cost = 0;
    for pair in plan.routes.windows(2) {
        assert!(pair[0].crew < pair[1].crew, "crews in order, each once");
    }
    for route in &plan.routes {
        let crew = &p.crews[route.crew];
        let jobs: Vec<usize> = route.stops.iter().map(|s| s.job).collect();
        jobs.iter().for_each(|&j| seen[j] += 1);
        assert!(!jobs.is_empty(), "a route has stops");
        assert!(
            fits(p, crew, &jobs),
            "skills, room, windows, hours of {route:?}"
        );
        assert_eq!(
            (route.leave, route.back),
            hours(p, crew, &jobs),
            "hours of {route:?}"
        );
        assert!(route.leave >= crew.hours.open && route.back <= crew.hours.close);
        let (starts, _) = drive(p, crew, &jobs, route.leave).unwrap();
        let (mut at, mut now) = (crew.from, route.leave);
        for (stop, start) in route.stops.iter().zip(starts) {
            let job = &p.jobs[stop.job];
            assert_eq!(stop.arrive, now + seconds(p, at, job.place));
            assert_eq!(stop.start, start);
            assert!(may_start(job, start) && start >= stop.arrive);
            assert_eq!(stop.end, start + job.service);
            (at, now) = (job.place, stop.end);
        }
        assert_eq!(route.back, now + seconds(p, at, crew.to));
        assert_eq!(route.distance, way(p, crew, &jobs));
        cost += price(p, crew, &jobs);
    }
    let lines = lines_of(p, plan);
    for pair in plan.unplaced.windows(2) {
        assert!(pair[0].0 < pair[1].0, "left out in order");
    }
    for &(j, reason) in &plan.unplaced {
        seen[j] += 1;
        cost += p.jobs[j].worth.unwrap_or(0);
        assert_eq!(
            Some(reason),
            first_true_reason(p, &lines, j),
            "job {j} of {p:?} in {plan:?}"
        );
    }
    assert!(seen.iter().all(|&n| n == 1), "every job once: {seen:?}");
    assert_eq!(cost, plan.cost);
}

fn missing(p: &Problem, plan: &Plan) -> usize {
    plan.unplaced
        .iter()
        .filter(|(j, _)| p.jobs[*j].worth.is_none())
        .count()
}

// Days by lot.

fn window() -> impl Strategy<Value = Vec<Window>> {
    prop_oneof![
        Just(vec![]),
        (0i64..300, 0i64..120).prop_map(|(open, long)| vec![Window {
            open,
            close: open + long
        }]),
        (0i64..150, 0i64..60, 1i64..80, 0i64..80).prop_map(|(open, long, gap, more)| {
            let again = open + long + gap;
            vec![
                Window {
                    open,
                    close: open + long,
                },
                Window {
                    open: again,
                    close: again + more,
                },
            ]
        }),
    ]
}

fn job(places: usize) -> impl Strategy<Value = Job> {
    let worth = prop_oneof![Just(None), Just(None), (0i64..400).prop_map(Some)];
    (
        0..places,
        0i64..30,
        window(),
        prop::collection::vec(0i64..6, 2),
        0u64..8,
        worth,
    )
        .prop_map(|(place, service, windows, load, needs, worth)| Job {
            place,
            service,
            windows,
            load,
            needs: needs & 3,
            worth,
        })
}

fn crew(places: usize) -> impl Strategy<Value = Crew> {
    let costs = (0i64..100, 0i64..4, 0i64..3);
    (
        0..places,
        0..places,
        0i64..60,
        100i64..400,
        prop::collection::vec(3i64..20, 2),
        0u64..4,
        costs,
    )
        .prop_map(
            |(from, to, open, long, room, skills, (fixed, per_distance, per_second))| Crew {
                from,
                to,
                hours: Window {
                    open,
                    close: open + long,
                },
                room,
                skills,
                fixed,
                per_distance,
                per_second,
            },
        )
}

/// Places on a plain, ways with and without detours, so that the direct way need not be the shortest.
fn day(jobs: usize, crews: usize) -> impl Strategy<Value = Problem> {
    (2usize..8).prop_flat_map(move |places| {
        let at = prop::collection::vec((0i64..60, 0i64..60), places);
        let detours = prop::collection::vec(0i64..25, places * places);
        let bent = any::<bool>();
        let jobs = prop::collection::vec(job(places), 0..=jobs);
        let crews = prop::collection::vec(crew(places), 0..=crews);
        (at, detours, bent, jobs, crews).prop_map(move |(at, detours, bent, jobs, crews)| {
            let table = |share: i64| -> Vec<i64> {
                (0..places * places)
                    .map(|i| {
                        let (a, b) = (at[i / places], at[i % places]);
                        let straight = (a.0 - b.0).abs() + (a.1 - b.1).abs();
                        straight + if bent { detours[i] / share } else { 0 }
                    })
                    .collect()
            };
            let travel = Travel {
                places,
                distance: table(1),
                seconds: table(2),
            };
            Problem {
                travel,
                jobs,
                crews,
            }
        })
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    #[test]
    fn plans_keep_every_promise(p in day(14, 4), seed in any::<u64>(), iterations in 0u64..400) {
        let mut told = 0;
        let plan = solve(&p, seed, iterations, &mut |i, best| {
            told += 1;
            assert!(i <= iterations);
            audit(&p, best);
            true
        }).unwrap();
        prop_assert!(told > 0);
        audit(&p, &plan);
        // and from that plan it never gets worse
        let again = solve_from(&p, &plan, seed ^ 1, 200, &mut |_, _| true).unwrap();
        audit(&p, &again);
        prop_assert!((missing(&p, &again), again.cost) <= (missing(&p, &plan), plan.cost));
    }

    #[test]
    fn the_same_seed_gives_the_same_plan(p in day(20, 5), seed in any::<u64>()) {
        let run = || solve(&p, seed, 600, &mut |_, _| true).unwrap();
        prop_assert_eq!(run(), run());
    }
}

// All plans of small days.

/// Least number of required jobs left out, and least cost with that.
fn by_force(p: &Problem) -> (usize, i64) {
    let all = 1usize << p.jobs.len();
    let nothing = (usize::MAX, i64::MAX);
    let lost = |set: usize| -> (usize, i64) {
        let left: Vec<&Job> = (0..p.jobs.len())
            .filter(|j| set >> j & 1 == 0)
            .map(|j| &p.jobs[j])
            .collect();
        (
            left.iter().filter(|j| j.worth.is_none()).count(),
            left.iter().filter_map(|j| j.worth).sum(),
        )
    };
    // cheapest[set]: these jobs done by the crews so far
    let mut cheapest = vec![nothing.1; all];
    cheapest[0] = 0;
    for crew in &p.crews {
        let mut alone = vec![nothing.1; all];
        orders(p, crew, &mut vec![], 0, &mut alone);
        let before = cheapest.clone();
        for set in 0..all {
            let mut part = set;
            while part > 0 {
                if alone[part] < nothing.1 && before[set ^ part] < nothing.1 {
                    cheapest[set] = cheapest[set].min(alone[part] + before[set ^ part]);
                }
                part = (part - 1) & set;
            }
        }
    }
    (0..all)
        .filter(|&set| cheapest[set] < nothing.1)
        .map(|set| (lost(set).0, lost(set).1 + cheapest[set]))
        .min()
        .unwrap()
}

fn orders(p: &Problem, crew: &Crew, line: &mut Vec<usize>, set: usize, alone: &mut [i64]) {
    if !line.is_empty() && fits(p, crew, line) {
        alone[set] = alone[set].min(price(p, crew, line));
    }
    for j in 0..p.jobs.len() {
        if set >> j & 1 == 0 {
            line.push(j);
            orders(p, crew, line, set | 1 << j, alone);
            line.pop();
        }
    }
}

/// The lots are fixed, so that this passes or fails the same way every time.
#[test]
fn small_days_are_planned_as_well_as_can_be() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut sizes = [0; 8];
    for round in 0..300 {
        let tree = day(if round % 6 == 0 { 7 } else { 6 }, 3)
            .new_tree(&mut runner)
            .unwrap();
        let p = proptest::strategy::ValueTree::current(&tree);
        sizes[p.jobs.len()] += 1;
        let plan = solve(&p, round, 3000, &mut |_, _| true).unwrap();
        audit(&p, &plan);
        assert_eq!(
            (missing(&p, &plan), plan.cost),
            by_force(&p),
            "{p:?} {plan:?}"
        );
    }
    assert!(sizes[7] > 2 && sizes[6] > 20, "{sizes:?}");
}

// Benchmarks.

/// Solomon's instances of 100 customers in the rounding of the DIMACS challenge, with the proven optimum of
/// `cases/vrptw/best-known.csv`: never below it, and at most a hundredth above.
#[test]
fn solomons_instances_come_out_near_their_optimum() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../cases/vrptw/");
    let known = std::fs::read_to_string(format!("{folder}best-known.csv")).unwrap();
    for name in ["R101", "C101", "RC101"] {
        let row = known
            .lines()
            .find(|l| l.starts_with(&format!("{name},")))
            .unwrap();
        let best: i64 = row.split(',').nth(1).unwrap().parse().unwrap();
        let p = vrplib(&std::fs::read_to_string(format!("{folder}{name}.vrp")).unwrap());
        let plan = solve(&p, 7, 150_000, &mut |_, _| true).unwrap();
        audit(&p, &plan);
        assert!(plan.unplaced.is_empty());
        assert!(
            plan.cost >= best,
            "{name}: {} is below the proven optimum {best}",
            plan.cost
        );
        assert!(
            plan.cost * 100 <= best * 101,
            "{name}: {} against {best}",
            plan.cost
        );
    }
}

/// VRPLIB text; everything in tenths, cut off.
fn vrplib(text: &str) -> Problem {
    let header = |key: &str| -> i64 {
        let line = text.lines().find(|l| l.starts_with(key)).unwrap();
        line.split(':').nth(1).unwrap().trim().parse().unwrap()
    };
    let section = |name: &str| -> Vec<Vec<i64>> {
        let rows = text.lines().skip_while(|l| !l.starts_with(name)).skip(1);
        let rows = rows.take_while(|l| l.starts_with(|c: char| c.is_ascii_digit()));
        rows.map(|l| {
            l.split_whitespace()
                .skip(1)
                .map(|x| x.parse().unwrap())
                .collect()
        })
        .collect()
    };
    let (at, load, windows) = (
        section("NODE_COORD"),
        section("DEMAND"),
        section("TIME_WINDOW"),
    );
    let window = |i: usize| Window {
        open: 10 * windows[i][0],
        close: 10 * windows[i][1],
    };
    let table: Vec<i64> = (0..at.len() * at.len())
        .map(|i| {
            let (a, b) = (&at[i / at.len()], &at[i % at.len()]);
            let square = 100 * ((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]));
            square.isqrt()
        })
        .collect();
    let jobs = (1..at.len()).map(|i| Job {
        place: i,
        service: 10 * header("SERVICE_TIME"),
        windows: vec![window(i)],
        load: vec![load[i][0]],
        needs: 0,
        worth: None,
    });
    let crew = Crew {
        from: 0,
        to: 0,
        hours: window(0),
        room: vec![header("CAPACITY")],
        skills: 0,
        fixed: 0,
        per_distance: 1,
        per_second: 0,
    };
    Problem {
        jobs: jobs.collect(),
        crews: vec![crew; header("VEHICLES") as usize],
        travel: Travel {
            places: at.len(),
            distance: table.clone(),
            seconds: table,
        },
    }
}

// Single questions.

fn plain() -> Problem {
    let ways = vec![0, 10, 20, 10, 0, 10, 20, 10, 0];
    Problem {
        travel: Travel {
            places: 3,
            distance: ways.clone(),
            seconds: ways,
        },
        jobs: vec![
            Job {
                place: 1,
                service: 5,
                windows: vec![],
                load: vec![1],
                needs: 0,
                worth: None,
            },
            Job {
                place: 2,
                service: 5,
                windows: vec![],
                load: vec![1],
                needs: 0,
                worth: None,
            },
        ],
        crews: vec![Crew {
            from: 0,
            to: 0,
            hours: Window {
                open: 100,
                close: 200,
            },
            room: vec![5],
            skills: 0,
            fixed: 0,
            per_distance: 1,
            per_second: 0,
        }],
    }
}

#[test]
fn quiet_hours_are_kept_between_two_windows() {
    let mut p = plain();
    p.jobs[0].windows = vec![
        Window {
            open: 100,
            close: 112,
        },
        Window {
            open: 150,
            close: 160,
        },
    ];
    p.jobs[1].windows = vec![Window {
        open: 120,
        close: 120,
    }];
    let plan = solve(&p, 1, 200, &mut |_, _| true).unwrap();
    audit(&p, &plan);
    assert!(plan.unplaced.is_empty());
    // 0 at 100, job 0 at 110..115, job 1 arrives 125 too late: so job 1 first, at 120, and job 0 in its second window
    let stops: Vec<(usize, i64, i64)> = plan.routes[0]
        .stops
        .iter()
        .map(|s| (s.job, s.arrive, s.start))
        .collect();
    assert_eq!(stops, [(1, 120, 120), (0, 135, 150)]);
    assert_eq!((plan.routes[0].leave, plan.routes[0].back), (100, 165));
}

#[test]
fn each_reason_is_given_when_it_is_true() {
    let one = |change: &dyn Fn(&mut Problem)| {
        let mut p = plain();
        change(&mut p);
        let plan = solve(&p, 1, 100, &mut |_, _| true).unwrap();
        audit(&p, &plan);
        plan.unplaced
    };
    assert_eq!(one(&|_| ()), []);
    assert_eq!(
        one(&|p| p.crews.clear()),
        [(0, Unplaced::Skills), (1, Unplaced::Skills)]
    );
    assert_eq!(one(&|p| p.jobs[1].needs = 4), [(1, Unplaced::Skills)]);
    assert_eq!(one(&|p| p.jobs[1].load = vec![6]), [(1, Unplaced::Room)]);
    assert_eq!(
        one(&|p| p.jobs[1].windows = vec![Window {
            open: 190,
            close: 195
        }]),
        [(1, Unplaced::Hours)]
    );
    assert_eq!(one(&|p| p.jobs[1].load = vec![5]).len(), 1);
    assert_eq!(one(&|p| p.jobs[1].load = vec![5])[0].1, Unplaced::Full);
    assert_eq!(one(&|p| p.jobs[1].worth = Some(20)), [(1, Unplaced::Worth)]);
    assert_eq!(one(&|p| p.jobs[1].worth = Some(21)), []);
}

#[test]
fn watching_stops_the_search_and_keeps_the_best() {
    let p = vrplib(
        &std::fs::read_to_string(concat!(
            env!("CARGO_MANIFEST_DIR"),
            "/../../cases/vrptw/R101.vrp"
        ))
        .unwrap(),
    );
    let mut seen: Vec<(u64, i64)> = vec![];
    let plan = solve(&p, 3, 1_000_000_000, &mut |i, best| {
        seen.push((i, best.cost));
        seen.len() < 12
    })
    .unwrap();
    assert_eq!(seen.len(), 12);
    assert!(
        seen.windows(2).all(|w| w[0].0 < w[1].0 && w[0].1 >= w[1].1),
        "{seen:?}"
    );
    assert!(seen[0].1 > seen[11].1);
    assert_eq!(plan.cost, seen[11].1);
}

#[test]
fn what_is_malformed_is_named_with_where_and_what_to_do() {
    let wrong = |change: &dyn Fn(&mut Problem)| {
        let mut p = plain();
        change(&mut p);
        solve(&p, 1, 10, &mut |_, _| true).unwrap_err()
    };
    let w = wrong(&|p| p.travel.seconds.truncate(8));
    assert_eq!(
        (w.at, w.what),
        (Place::Travel, Fault::Shape { has: 8, wants: 9 })
    );
    let w = wrong(&|p| p.travel.distance[5] = -1);
    assert_eq!(
        (w.at, w.what),
        (Place::Leg { from: 1, to: 2 }, Fault::Negative)
    );
    let w = wrong(&|p| p.travel.distance[5] = i64::MAX);
    assert_eq!(
        (w.at, w.what),
        (Place::Leg { from: 1, to: 2 }, Fault::TooLong)
    );
    let w = wrong(&|p| p.jobs[1].place = 3);
    assert_eq!((w.at, w.what), (Place::Job(1), Fault::NoSuchPlace(3)));
    let w = wrong(&|p| p.jobs[0].load = vec![1, 2]);
    assert_eq!(
        (w.at, w.what),
        (Place::Job(0), Fault::Kinds { has: 2, wants: 1 })
    );
    let w = wrong(&|p| p.crews[0].hours = Window { open: 9, close: 8 });
    assert_eq!(
        (w.at, w.what),
        (
            Place::Crew(0),
            Fault::Backwards(Window { open: 9, close: 8 })
        )
    );
    let w = wrong(&|p| {
        p.jobs[0].windows = vec![Window { open: 5, close: 9 }, Window { open: 9, close: 12 }]
    });
    assert_eq!(
        (w.at, w.what),
        (
            Place::Job(0),
            Fault::Disorder(Window { open: 9, close: 12 })
        )
    );
    assert_eq!(
        w.to_string(),
        "job 0: the window 9..12 begins before the one in front of it has ended; put windows in order and join those that \
         touch"
    );
    let w = wrong(&|p| p.crews[0].per_distance = i64::MAX / 8);
    assert_eq!((w.at, w.what), (Place::All, Fault::TooDear));
    let p = plain();
    let mut start = solve(&p, 1, 10, &mut |_, _| true).unwrap();
    start.routes[0].stops[0].job = 9;
    let w = solve_from(&p, &start, 1, 10, &mut |_, _| true).unwrap_err();
    assert_eq!((w.at, w.what), (Place::Start(0), Fault::NotARoute));
}

#[test]
fn a_large_random_day_with_scarce_crews_keeps_its_promises() {
    let mut lots = ChaCha8Rng::seed_from_u64(11);
    let places = 60;
    let at: Vec<(i64, i64)> = (0..places)
        .map(|_| (lots.random_range(0..900), lots.random_range(0..900)))
        .collect();
    let ways: Vec<i64> = (0..places * places)
        .map(|i| {
            let (a, b) = (at[i / places], at[i % places]);
            ((a.0 - b.0).pow(2) + (a.1 - b.1).pow(2)).isqrt()
        })
        .collect();
    let p = Problem {
        travel: Travel {
            places,
            distance: ways.clone(),
            seconds: ways,
        },
        jobs: (0..120)
            .map(|_| {
                let open = lots.random_range(0..6000);
                Job {
                    place: lots.random_range(0..places),
                    service: lots.random_range(10..300),
                    windows: vec![
                        Window {
                            open,
                            close: open + 1500,
                        },
                        Window {
                            open: open + 2500,
                            close: open + 3000,
                        },
                    ],
                    load: vec![lots.random_range(0..9)],
                    needs: [0, 0, 0, 1, 2][lots.random_range(0..5)],
                    worth: [None, Some(1500)][lots.random_range(0..2)],
                }
            })
            .collect(),
        crews: (0..5u64)
            .map(|c| Crew {
                from: c as usize,
                to: (c % 2) as usize,
                hours: Window {
                    open: 0,
                    close: 7000 + 500 * c as i64,
                },
                room: vec![90],
                skills: c,
                fixed: 300,
                per_distance: 1,
                per_second: 1,
            })
            .collect(),
    };
    let first = solve(&p, 1, 0, &mut |_, _| true).unwrap();
    let plan = solve(&p, 1, 20_000, &mut |_, _| true).unwrap();
    audit(&p, &first);
    audit(&p, &plan);
    assert!((missing(&p, &plan), plan.cost) < (missing(&p, &first), first.cost));
    assert!(
        !plan.unplaced.is_empty(),
        "more is asked than five crews can do"
    );
}
