//! Logged times: what crews took, against what the tables say of the same work.
//!
//! Two kinds: a palm of a round that was noted as done with its minutes (all of the visit), and a cut whose begin and
//! end were noted (the cutting alone). What came off must be known; a time without it teaches nothing.

use super::gather::at_palm;
use crate::clock::local_day;
use model::state::Outcome;
use model::{Day, PalmRecord, State, math};
use rounds::estimate::{Figures, Logged, Task, Visit, Work, visit};

/// Minutes that can be meant; others are slips.
const SOUND: std::ops::RangeInclusive<f64> = 0.2..=600.0;

/// All logged times that can be used, and how many could not.
pub(super) fn logged(state: &State, figures: &Figures) -> (Vec<Logged>, usize) {
    let mut times = Vec::new();
    let mut unused = 0;
    for round in state.work.rounds.values() {
        for (palm, outcome) in &round.outcomes {
            let Outcome::Done {
                minutes: Some(minutes),
                at,
                ..
            } = outcome
            else {
                continue;
            };
            let stop = round.plan.stops.iter().find(|stop| stop.palm == *palm);
            let tasks: Vec<Task> = stop
                .into_iter()
                .flat_map(|stop| stop.tasks.iter())
                .filter_map(|word| Task::of(word))
                .collect();
            let record = state.palms.get(palm);
            let work = record.and_then(|record| work(record, local_day(*at), tasks));
            let ratio = work.and_then(|work| {
                let people = state
                    .work
                    .crews
                    .get(&round.plan.crew)
                    .and_then(|c| c.people);
                log_ratio(
                    *minutes,
                    visit(figures, &Work { people, ..work }).minutes.mid,
                )
            });
            match ratio {
                Some(log_ratio) => times.push(Logged {
                    crew: round.plan.crew.clone(),
                    log_ratio,
                }),
                None => unused += 1,
            }
        }
    }
    for record in state.palms.values() {
        times.extend(cuts(record, figures));
    }
    (times, unused)
}

/// What was done at a palm of a round on a day; `None` if it was cut and nobody noted what came off.
fn work(record: &PalmRecord, day: Day, tasks: Vec<Task>) -> Option<Work> {
    let mut work = Work { ..at_palm(record) };
    if tasks.contains(&Task::Cut) {
        let cuts = record.cuts.iter().filter(|cut| local_day(cut.at) == day);
        for cut in cuts {
            add(&mut work, &cut.cut.off);
        }
        if work.dead + work.green + work.stalks == 0 {
            return None;
        }
    }
    work.tasks = tasks;
    (!work.tasks.is_empty()).then_some(work)
}

fn add(work: &mut Work, off: &model::TakenOff) {
    work.dead += off.brown.unwrap_or(0);
    work.green += off.green.unwrap_or(0) + off.yellowing.unwrap_or(0);
    work.stalks += off.stalks.unwrap_or(0);
}

/// Cuts with a begin: the minutes of the cutting alone.
fn cuts(record: &PalmRecord, figures: &Figures) -> Vec<Logged> {
    let one = |cut: &model::state::PalmCut| {
        let started = cut.cut.started?;
        let minutes = (cut.at.0 - started.0) as f64 / 60_000.0;
        let mut work = at_palm(record);
        add(&mut work, &cut.cut.off);
        let log_ratio = log_ratio(minutes, cutting(&visit(figures, &work)))?;
        Some(Logged {
            crew: cut.cut.crew.clone(),
            log_ratio,
        })
    };
    record.cuts.iter().filter_map(one).collect()
}

fn cutting(visit: &Visit) -> f64 {
    let own = visit.lines.iter();
    own.filter(|line| matches!(line.key, "fronds" | "stalks"))
        .map(|line| line.minutes.mid)
        .sum()
}

fn log_ratio(minutes: f64, estimated: f64) -> Option<f64> {
    (SOUND.contains(&minutes) && estimated > 0.0).then(|| math::ln(minutes / estimated))
}
