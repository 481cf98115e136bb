//! The season planner against a general solver: the same season as a mixed-integer programme, solved by HiGHS.
//!
//! The programme is written from the needs themselves (windows, hanging fronds, prices), not from the planner's own tables.
//! HiGHS: Huangfu and Hall, Parallelizing the dual revised simplex method, Math. Prog. Comp. 10, 2018
//! (doi:10.1007/s12532-017-0130-5). Every season here is invented.

use crown::DueWindow;
use good_lp::{Expression, ProblemVariables, Solution, SolverModel, Variable, highs, variable};
use model::Day;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use spearleaf_rounds::season::{Effort, Kind, Need, Plan, Season, Tariff, plan, weeks};

const TODAY: Day = Day(20_520);

/// An invented season of so many weeks and palms.
fn season(seed: u64, count: usize, palms: usize) -> Season {
    let mut dice = ChaCha8Rng::seed_from_u64(seed);
    let shut: Vec<Day> = (0..count / 4)
        .map(|_| TODAY.plus(dice.random_range(0..count as i32 * 7)))
        .collect();
    let weeks = weeks(TODAY, count, |day| {
        shut.iter().any(|first| (0..7).contains(&day.since(*first)))
    });
    let with_lift = dice.random_bool(0.5);
    let storm = dice
        .random_bool(0.4)
        .then(|| TODAY.plus(dice.random_range(0..count as i32 * 7)));
    let mut season = Season {
        needs: Vec::new(),
        tariff: Tariff {
            trip: dice.random_range(1_000..15_000),
            lift_day: dice.random_range(5_000..40_000),
            crew_hour: dice.random_range(2_000..12_000),
            debris_m3: dice.random_range(500..4_000),
            storm_frond: dice.random_range(0..2_000),
            day_hours: 1_000.0,
        },
        storm,
        weeks,
    };
    for _ in 0..palms {
        let need = need(&mut dice, &season, with_lift);
        season.needs.push(need);
    }
    season
}

fn need(dice: &mut ChaCha8Rng, season: &Season, with_lift: bool) -> Need {
    let count = season.weeks.count();
    let lift = with_lift && dice.random_bool(0.4);
    if dice.random_bool(0.15) {
        let first = TODAY.plus(dice.random_range(-20..count as i32 * 7));
        return Need {
            kind: Kind::Stalks,
            lift,
            now: DueWindow {
                earliest: Some(first),
                latest: Some(first.plus(dice.random_range(7..50))),
            },
            after: Vec::new(),
            not_before: None,
            minutes: dice.random_range(5.0..30.0),
            minutes_each: 0.0,
            m3_each: 0.0,
            hanging: Vec::new(),
            missed: dice.random_range(0..6_000),
        };
    }
    let per_week = dice.random_range(0.15..1.2);
    let (tidy, limit) = (dice.random_range(1.5..4.0), dice.random_range(4.5..8.0));
    let start: f64 = dice.random_range(0.0..7.0);
    // growth changes with the season, so that a window after one week is not one after another moved along
    let pace = |week: f64| per_week * (1.0 + 0.3 * model::math::sin(week / 6.0));
    let hangs = |from: usize, to: f64| {
        let (begin, have) = match from {
            0 => (0.0, start),
            _ => ((from - 1) as f64, 0.0),
        };
        let steps = ((to - begin).max(0.0) * 7.0) as usize;
        have + (0..steps)
            .map(|d| pace(begin + d as f64 / 7.0) / 7.0)
            .sum::<f64>()
    };
    let mut window = |from: usize| {
        let reaches = |goal: f64| (0..700).find(|d| hangs(from, f64::from(*d) / 7.0) >= goal);
        let mut day = |d: Option<i32>| d.filter(|_| !dice.random_bool(0.02)).map(|d| TODAY.plus(d));
        let (earliest, latest) = (day(reaches(tidy)), day(reaches(limit)));
        DueWindow {
            earliest,
            // some are past their limit already
            latest: latest.map(|l| {
                if from == 0 && start > 6.5 {
                    l.plus(-9)
                } else {
                    l
                }
            }),
        }
    };
    let (now, after) = (window(0), (1..=count).map(&mut window).collect());
    Need {
        kind: Kind::Fronds,
        lift,
        now,
        after,
        not_before: dice
            .random_bool(0.1)
            .then(|| TODAY.plus(dice.random_range(0..60))),
        minutes: dice.random_range(5.0..20.0),
        minutes_each: dice.random_range(0.5..3.0),
        m3_each: dice.random_range(0.01..0.1),
        hanging: (0..=count)
            .flat_map(|from| {
                (0..=count)
                    .map(move |to| hangs(from, to as f64))
                    .collect::<Vec<_>>()
            })
            .collect(),
        missed: 0,
    }
}

/// What a leg is, read off the need: days late, days waiting, money.
fn leg(season: &Season, need: &Need, from: usize, to: usize) -> Option<[f64; 3]> {
    let (weeks, tariff) = (&season.weeks, &season.tariff);
    let count = weeks.count();
    let at_end = to == count + 1;
    if from > 0 {
        weeks.days[from - 1]?;
    }
    let window = match from {
        0 => need.now,
        _ if need.kind == Kind::Stalks => DueWindow {
            earliest: None,
            latest: None,
        },
        _ => need.after[from - 1],
    };
    let opens = window
        .earliest
        .map(|day| day.max(need.not_before.unwrap_or(day)));
    let day = if at_end {
        weeks.end
    } else {
        weeks.days[to - 1]?
    };
    if !at_end && opens.is_none_or(|opens| day < opens) {
        return None;
    }
    let days = |since: Option<Day>| since.map_or(0.0, |since| f64::from((day.0 - since.0).max(0)));
    let crew = tariff.crew_hour as f64 / 60.0;
    if need.kind == Kind::Stalks {
        if !at_end && days(window.latest) > 0.0 {
            return None;
        }
        let missed = from == 0 && opens.is_some();
        return Some(if at_end {
            [0.0, 0.0, if missed { need.missed as f64 } else { 0.0 }]
        } else {
            [0.0, days(opens), (need.minutes * crew).round()]
        });
    }
    let hanging = |week: usize| need.hanging[from * (count + 1) + week];
    let fronds = hanging(to - 1);
    let minutes = if at_end { 0.0 } else { need.minutes } + fronds * need.minutes_each;
    let work = (minutes * crew + fronds * need.m3_each * tariff.debris_m3 as f64).round();
    let served = if from == 0 {
        None
    } else {
        weeks.days[from - 1]
    };
    let storm = season.storm.filter(|opens| {
        *opens <= day && *opens < weeks.end && served.is_none_or(|served| served < *opens)
    });
    let storm = storm.map_or(0.0, |opens| {
        let week = (0..count).rfind(|w| weeks.starts[*w] <= opens).unwrap();
        (hanging(week) * tariff.storm_frond as f64).round()
    });
    Some([days(window.latest), days(opens), work + storm])
}

/// What the programme looks for.
#[derive(Clone, Copy)]
enum Goal {
    Late,
    Wait,
    Money,
}

/// Least value of a goal with between `least` and `most` visits, given limits on the goals before it.
fn milp(season: &Season, goal: Goal, visits: (usize, usize), limits: [Option<f64>; 2]) -> f64 {
    let count = season.weeks.count();
    let mut vars = ProblemVariables::new();
    let open = |w: usize| season.weeks.days[w - 1].is_some();
    let mut flag = |allowed: bool| {
        let most = if allowed { 1.0 } else { 0.0 };
        vars.add(variable().integer().min(0.0).max(most))
    };
    let visit: Vec<Variable> = (1..=count).map(|w| flag(open(w))).collect();
    let lift: Vec<Variable> = (1..=count).map(|w| flag(open(w))).collect();
    let mut sums: [Expression; 3] = Default::default();
    let fixed = [season.tariff.trip as f64, season.tariff.lift_day as f64];
    for w in 0..count {
        sums[2] += fixed[0] * visit[w] + fixed[1] * lift[w];
    }
    let mut rules = Vec::new();
    for w in 0..count {
        rules.push((Expression::from(lift[w]) - visit[w]).leq(0.0));
    }
    for need in &season.needs {
        let (mut into, mut out) = (
            vec![Expression::default(); count + 2],
            vec![Expression::default(); count + 2],
        );
        let legs = (0..=count).flat_map(|from| (from + 1..=count + 1).map(move |to| (from, to)));
        for (from, to) in legs {
            let Some(costs) = leg(season, need, from, to) else {
                continue;
            };
            let goes = vars.add(variable().min(0.0).max(1.0).integer());
            out[from] += goes;
            into[to] += goes;
            for (sum, cost) in sums.iter_mut().zip(costs) {
                *sum += cost * goes;
            }
        }
        for w in 1..=count {
            let served = if need.lift { lift[w - 1] } else { visit[w - 1] };
            rules.push((into[w].clone() - out[w].clone()).eq(0.0));
            rules.push((into[w].clone() - served).leq(0.0));
        }
        rules.push(out[0].clone().eq(1.0));
    }
    let total: Expression = visit.iter().sum();
    rules.push(total.clone().geq(visits.0 as f64));
    rules.push(total.leq(visits.1 as f64));
    for (sum, limit) in sums.iter().zip(limits) {
        if let Some(limit) = limit {
            rules.push(sum.clone().leq(limit + 1e-6));
        }
    }
    let sought = sums[goal as usize].clone();
    let mut problem = vars.minimise(sought.clone()).using(highs);
    problem.set_verbose(false);
    for rule in rules {
        problem = problem.with(rule);
    }
    let found = problem
        .set_mip_rel_gap(0.0)
        .unwrap()
        .solve()
        .expect("has a plan");
    found.eval(&sought).round()
}

/// Nobody is served early: each visit of a need falls on or after the day its window opens, which the visit before set.
fn nobody_early(season: &Season, plan: &Plan) {
    for (n, need) in season.needs.iter().enumerate() {
        let mut window = need.now;
        for visit in &plan.visits {
            if visit.served.iter().any(|s| s.need == n) {
                assert!(
                    window.earliest.is_some_and(|day| day <= visit.day),
                    "need {n} early"
                );
                assert!(
                    need.not_before.is_none_or(|day| day <= visit.day),
                    "need {n} held"
                );
                assert!(visit.lift || !need.lift, "need {n} without a lift");
                window = need.after.get(visit.week).copied().unwrap_or(DueWindow {
                    earliest: None,
                    latest: None,
                });
            }
        }
    }
}

fn agrees(seed: u64, count: usize, palms: usize) {
    let season = season(seed, count, palms);
    let answers = plan(&season, Effort(400));
    let name = format!("seed {seed}, {count} weeks, {palms} palms");
    let any = (0, count);
    let late = milp(&season, Goal::Late, any, [None, None]);
    let money = milp(&season, Goal::Money, any, [Some(late), None]);
    let best = &answers.best;
    assert!(best.proven, "{name}: not proven");
    assert_eq!(best.days_late as f64, late, "{name}: late");
    assert_eq!(best.weighed as f64, money, "{name}: money");
    nobody_early(&season, best);
    if let Some(fewer) = &answers.fewer {
        let visits = (0, best.visits.len() - 1);
        let late = milp(&season, Goal::Late, visits, [None, None]);
        let money = milp(&season, Goal::Money, visits, [Some(late), None]);
        assert!(fewer.proven, "{name}: fewer not proven");
        assert_eq!(fewer.days_late as f64, late, "{name}: fewer, late");
        assert_eq!(fewer.weighed as f64, money, "{name}: fewer, money");
        nobody_early(&season, fewer);
    }
    if let Some(more) = &answers.more {
        let visits = (best.visits.len() + 1, best.visits.len() + 1);
        let wait = milp(&season, Goal::Wait, visits, [Some(late), None]);
        assert!(more.proven, "{name}: more not proven");
        assert_eq!(more.days_late as f64, late, "{name}: more, late");
        assert_eq!(more.days_waiting as f64, wait, "{name}: more, waiting");
        nobody_early(&season, more);
    }
}

#[test]
fn many_small_seasons_agree_with_the_general_solver() {
    for seed in 0..60 {
        agrees(seed, 6 + (seed % 7) as usize, 1 + (seed % 6) as usize);
    }
}

#[test]
fn half_a_year_of_a_dozen_palms_agrees_with_the_general_solver() {
    for seed in 100..104 {
        agrees(seed, 26, 12);
    }
}
