//! Solves a benchmark of the vehicle routing problem with time windows for some seconds and says how far it is from the
//! best known value.
//!
//!     cargo run --release -p spearleaf-rounds --example vrptw -- FILE.vrp SECONDS [SEED] [--json]
//!
//! Distances and times are cut after one decimal, as the DIMACS challenge of 2022 has it, and the cost is the distance. Best
//! known values are read from `best-known.csv` beside the file. Two searches with seeds of their own run side by side; in
//! the last third both go on from the better plan. Only this file looks at a clock; the search itself counts iterations.

#![allow(clippy::disallowed_methods, clippy::disallowed_macros)] // an example reads files, clocks and prints

use spearleaf_rounds::route::{Crew, Job, Plan, Problem, Travel, Window, solve, solve_from};
use std::path::Path;
use std::time::{Duration, Instant};

fn main() {
    let args: Vec<String> = std::env::args().skip(1).filter(|a| a != "--json").collect();
    let json = std::env::args().any(|a| a == "--json");
    let [file, seconds, ..] = &args[..] else {
        eprintln!("give a file and a number of seconds: vrptw FILE.vrp SECONDS [SEED] [--json]");
        std::process::exit(2);
    };
    let seconds: f64 = seconds.parse().expect("the seconds are a number");
    let seed: u64 = args
        .get(2)
        .map_or(1, |s| s.parse().expect("the seed is a whole number"));
    let text = std::fs::read_to_string(file).expect("the file can be read");
    let problem = read(&text);
    let begun = Instant::now();
    let (plan, iterations) = two(&problem, seed, seconds);
    let name = Path::new(file)
        .file_stem()
        .unwrap()
        .to_string_lossy()
        .into_owned();
    let known = best_known(Path::new(file), &name);
    let gap = known.map(|k| 100.0 * (plan.cost as f64 / k as f64 - 1.0));
    let spent = begun.elapsed().as_secs_f64();
    if json {
        println!(
            "{{\"name\":\"{name}\",\"cost\":{},\"routes\":{},\"unplaced\":{},\"iterations\":{iterations},\"seconds\":{spent:.1},\
             \"known\":{},\"gap\":{}}}",
            plan.cost,
            plan.routes.len(),
            plan.unplaced.len(),
            known.map_or("null".into(), |k| k.to_string()),
            gap.map_or("null".into(), |g| format!("{g:.3}")),
        );
    } else {
        println!(
            "{name}: cost {:.1}, {} routes, {} unplaced, {iterations} iterations in {spent:.1} s, gap {}",
            plan.cost as f64 / 10.0,
            plan.routes.len(),
            plan.unplaced.len(),
            gap.map_or("unknown".into(), |g| format!("{g:.2} %")),
        );
    }
}

/// Two threads, two seeds; then both go on from the better of the two plans.
fn two(problem: &Problem, seed: u64, seconds: f64) -> (Plan, u64) {
    let part = seconds * 0.65;
    let (mut best, mut done) = side_by_side(part, |which, end| {
        timed(problem, None, seed * 1000 + which, end)
    });
    let (later, more) = side_by_side(seconds - part, |which, end| {
        timed(problem, Some(&best), seed * 1000 + 10 + which, end)
    });
    done += more;
    if later.cost < best.cost {
        best = later;
    }
    (best, done)
}

fn side_by_side(seconds: f64, work: impl Fn(u64, Instant) -> (Plan, u64) + Sync) -> (Plan, u64) {
    let end = Instant::now() + Duration::from_secs_f64(seconds);
    let work = &work;
    let plans: Vec<(Plan, u64)> = std::thread::scope(|scope| {
        let threads: Vec<_> = (0..2)
            .map(|which| scope.spawn(move || work(which, end)))
            .collect();
        threads.into_iter().map(|t| t.join().unwrap()).collect()
    });
    let done = plans.iter().map(|p| p.1).sum();
    let best = plans
        .into_iter()
        .map(|p| p.0)
        .min_by_key(|p| (p.unplaced.len(), p.cost))
        .unwrap();
    (best, done)
}

/// As many iterations as fit until `end`: a short run tells how quick they are.
fn timed(problem: &Problem, start: Option<&Plan>, seed: u64, end: Instant) -> (Plan, u64) {
    // iterations done, and seconds from the first of them to the last
    let run = |iterations: u64, until: Instant| {
        let (mut count, mut first, mut last) = (0, None, Instant::now());
        let mut watch = |i: u64, _: &Plan| {
            (count, last) = (i, Instant::now());
            first.get_or_insert(last);
            last < until
        };
        let plan = match start {
            None => solve(problem, seed, iterations, &mut watch),
            Some(plan) => solve_from(problem, plan, seed, iterations, &mut watch),
        };
        let spent = (last - first.unwrap_or(last)).as_secs_f64();
        (plan.expect("a benchmark is a sound problem"), count, spent)
    };
    let begun = Instant::now();
    let (first, count, spent) = run(u64::MAX / 2, begun + (end - begun).mul_f64(0.05));
    let rate = count as f64 / spent.max(1e-6);
    let left = end.saturating_duration_since(Instant::now()).as_secs_f64();
    let (plan, more, _) = run(((rate * left) as u64).max(1000), end);
    let best = if first.cost < plan.cost { first } else { plan };
    (best, count + more)
}

fn best_known(file: &Path, name: &str) -> Option<i64> {
    let table = std::fs::read_to_string(file.parent()?.join("best-known.csv")).ok()?;
    let row = table
        .lines()
        .find(|line| line.split(',').next() == Some(name))?;
    row.split(',').nth(1)?.parse().ok()
}

/// A file in the format of the VRPLIB collections, as far as these benchmarks use it; all numbers times ten.
fn read(text: &str) -> Problem {
    let (mut vehicles, mut capacity, mut service) = (0, 0, 0);
    let (mut at, mut demand, mut windows) = (Vec::new(), Vec::new(), Vec::new());
    let mut section = "";
    for line in text.lines().map(str::trim) {
        if let Some((key, value)) = line.split_once(':') {
            let number = || value.trim().parse::<i64>().unwrap_or(0);
            match key.trim() {
                "VEHICLES" => vehicles = number(),
                "CAPACITY" => capacity = number(),
                "SERVICE_TIME" => service = number(),
                _ => {}
            }
        } else if line.ends_with("_SECTION") {
            section = line;
        } else {
            let row: Vec<i64> = line
                .split_whitespace()
                .skip(1)
                .filter_map(|x| x.parse().ok())
                .collect();
            match (section, &row[..]) {
                ("NODE_COORD_SECTION", &[x, y]) => at.push((x as f64, y as f64)),
                ("DEMAND_SECTION", &[d]) => demand.push(d),
                ("TIME_WINDOW_SECTION", &[a, b]) => windows.push(Window {
                    open: 10 * a,
                    close: 10 * b,
                }),
                _ => {}
            }
        }
    }
    let table: Vec<i64> = at
        .iter()
        .flat_map(|a| {
            at.iter().map(move |b| {
                (10.0 * ((a.0 - b.0).powi(2) + (a.1 - b.1).powi(2)).sqrt()).floor() as i64
            })
        })
        .collect();
    let jobs = (1..at.len())
        .map(|i| Job {
            place: i,
            service: 10 * service,
            windows: vec![windows[i]],
            load: vec![demand[i]],
            needs: 0,
            worth: None,
        })
        .collect();
    let crew = Crew {
        from: 0,
        to: 0,
        hours: windows[0],
        room: vec![capacity],
        skills: 0,
        fixed: 0,
        per_distance: 1,
        per_second: 0,
    };
    Problem {
        travel: Travel {
            places: at.len(),
            distance: table.clone(),
            seconds: table,
        },
        jobs,
        crews: vec![crew; vehicles as usize],
    }
}
