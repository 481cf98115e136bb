//! From the plan of the search to rounds of palms.

use super::crews::Crew;
use super::gather::Work;
use super::ways::set_up;
use super::{Ask, Left, Proposal, Proposed, ProposedStop};
use model::{Arg, Finding, RoundPlan, RoundStop, Severity};
use rounds::route::{Plan, Problem, Route, Unplaced};

/// The proposal of a plan.
pub fn proposal(
    ask: &Ask,
    crews: &[Crew],
    mut work: Work,
    problem: &Problem,
    plan: &Plan,
    remarks: Vec<Finding>,
) -> Proposal {
    for (piece, why) in &plan.unplaced {
        let visits = work.pieces[*piece].visits.clone();
        let why = reason(*why, &work, *piece);
        work.leave(&visits, &why);
    }
    let rounds = plan
        .routes
        .iter()
        .map(|route| round(ask, crews, &work, problem, route))
        .collect();
    let mut left = std::mem::take(&mut work.left);
    let tag = |left: &Left| {
        let record = work.visits.iter().find(|v| v.record.id == left.palm);
        record.map(|v| (v.record.palm.site.clone(), v.record.palm.tag.clone()))
    };
    left.sort_by_cached_key(tag);
    Proposal {
        day: ask.day,
        rounds,
        left,
        remarks,
    }
}

fn reason(why: Unplaced, work: &Work, piece: usize) -> Finding {
    let place = &work.places[work.pieces[piece].place];
    let code = match why {
        Unplaced::Skills => "round-left-skills",
        Unplaced::Room => "round-left-room",
        Unplaced::Hours => "round-left-hours",
        // what a palm is worth is above any detour: it was put behind others
        Unplaced::Full | Unplaced::Worth => "round-left-full",
    };
    Finding::new(code, Severity::Act).with("site", Arg::Text(place.site.clone()))
}

fn round(ask: &Ask, crews: &[Crew], work: &Work, problem: &Problem, route: &Route) -> Proposed {
    let crew = &crews[route.crew];
    let (mut stops, mut plan_stops) = (Vec::new(), Vec::new());
    for run in runs(work, route) {
        for (visit, start) in timed(work, &run) {
            let v = &work.visits[visit];
            stops.push(ProposedStop {
                palm: v.record.id,
                site: v.record.palm.site.clone(),
                at: v.record.palm.position,
                health: v.health,
                lift: v.lift,
            });
            plan_stops.push(RoundStop {
                palm: v.record.id,
                start: u32::try_from(start).ok(),
                // to the tenth: what is recorded and what is shown are one
                minutes: Some((v.minutes * 10.0).round() / 10.0),
                tasks: v.tasks.clone(),
            });
        }
    }
    let plan = RoundPlan {
        crew: crew.name.clone(),
        leave: u32::try_from(route.leave).ok(),
        back: u32::try_from(route.back).ok(),
        metres: Some(route.distance as f64),
        stops: plan_stops,
        ..RoundPlan::on(ask.day)
    };
    Proposed {
        driving: driving(work, problem, route),
        plan,
        stops,
        from: crew.from,
        to: crew.to,
    }
}

/// Seconds between places of a route, without setting up.
fn driving(work: &Work, problem: &Problem, route: &Route) -> i64 {
    let travel = &problem.travel;
    let crew = &problem.crews[route.crew];
    let (mut at, mut seconds) = (crew.from, 0);
    for stop in &route.stops {
        let next = problem.jobs[stop.job].place;
        let place = &work.places[work.pieces[stop.job].place];
        let way = travel.seconds[at * travel.places + next];
        if at != next {
            seconds += (way - set_up(place.lift)).max(0);
        }
        at = next;
    }
    seconds + travel.seconds[at * travel.places + crew.to]
}

/// Pieces at one place that follow each other without a pause, by index.
struct Run {
    start: i64,
    end: i64,
    pieces: Vec<usize>,
}

fn runs(work: &Work, route: &Route) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for stop in &route.stops {
        let place = work.pieces[stop.job].place;
        match runs.last_mut() {
            Some(run) if run.end == stop.start && work.pieces[run.pieces[0]].place == place => {
                run.pieces.push(stop.job);
                run.end = stop.end;
            }
            _ => runs.push(Run {
                start: stop.start,
                end: stop.end,
                pieces: vec![stop.job],
            }),
        }
    }
    // pieces of a place were cut from one walk, so the order of their index is the walk's. Work without a pause takes as
    // long in any order, and it is all within the same hours of the site.
    for run in &mut runs {
        run.pieces.sort_unstable();
    }
    runs
}

/// Palms of a run with their starts.
fn timed(work: &Work, run: &Run) -> Vec<(usize, i64)> {
    let visits = run
        .pieces
        .iter()
        .flat_map(|piece| &work.pieces[*piece].visits);
    let mut clock = run.start;
    let mut timed = Vec::new();
    for visit in visits {
        timed.push((*visit, clock));
        clock += work.seconds(*visit);
    }
    timed
}
