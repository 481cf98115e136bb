//! Sites, crews, prices, weather and rounds out of the threads that speak of them.

use super::fact::{Line, What};
use super::threads::Threads;
use super::work_record::{Outcome, RoundRecord, Work};
use crate::entry::EntryId;
use crate::work::{RoundNote, RoundStep, WeatherDay};
use std::collections::BTreeMap;

/// What threads beside palms and blades speak of; all that speak of one topic are folded together.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) enum Topic {
    /// A site by name.
    Site(Box<str>),
    /// A crew by name.
    Crew(Box<str>),
    /// The price list.
    Prices,
    /// The weather of a site by name.
    Weather(Box<str>),
    /// A round by its thread.
    Round(EntryId),
}

/// Folds one topic anew into the work.
pub(super) fn fold_topic(threads: &Threads, topic: &Topic, work: &mut Work) {
    let lines = threads.lines(threads.on_topic(topic));
    match topic {
        Topic::Site(name) => {
            let site = last(&lines, |what| match what {
                What::Site(site) => Some((**site).clone()),
                _ => None,
            });
            set(&mut work.sites, (**name).to_owned(), site);
        }
        Topic::Crew(name) => {
            let crew = last(&lines, |what| match what {
                What::Crew(crew) => Some((**crew).clone()),
                _ => None,
            });
            set(&mut work.crews, (**name).to_owned(), crew);
        }
        Topic::Prices => {
            work.prices = last(&lines, |what| match what {
                What::Prices(prices) => Some((**prices).clone()),
                _ => None,
            });
        }
        Topic::Weather(site) => {
            let days: BTreeMap<_, WeatherDay> = lines
                .iter()
                .filter_map(|line| match &line.fact.what {
                    What::Weather(day) => Some((day.day, (**day).clone())),
                    _ => None,
                })
                .collect();
            let days = (!days.is_empty()).then_some(days);
            set(&mut work.weather, (**site).to_owned(), days);
        }
        Topic::Round(id) => set(&mut work.rounds, *id, round(threads, *id, &lines)),
    }
}

fn round(threads: &Threads, id: EntryId, lines: &[Line]) -> Option<RoundRecord> {
    let (line, plan) = lines.iter().find_map(|line| match &line.fact.what {
        What::RoundPlanned(plan) => Some((line, plan)),
        _ => None,
    })?;
    let mut plan = (**plan).clone();
    for stop in &mut plan.stops {
        stop.palm = threads.palm_named(stop.palm);
    }
    let mut record = RoundRecord {
        id,
        entry: line.id,
        planned: line.fact.at,
        plan,
        started: None,
        finished: None,
        outcomes: BTreeMap::new(),
    };
    for line in lines {
        if let What::RoundNoted(note) = &line.fact.what {
            step(threads, &mut record, line, note);
        }
    }
    Some(record)
}

fn step(threads: &Threads, record: &mut RoundRecord, line: &Line, note: &RoundNote) {
    let at = line.fact.at;
    match &note.step {
        RoundStep::Started => drop(record.started.get_or_insert(at)),
        RoundStep::Finished => record.finished = Some(at),
        RoundStep::Done {
            palm,
            minutes,
            note,
        } => {
            let outcome = Outcome::Done {
                at,
                minutes: *minutes,
                note: note.clone(),
            };
            record.outcomes.insert(threads.palm_named(*palm), outcome);
        }
        RoundStep::Skipped { palm, why } => {
            let why = why.clone();
            let outcome = Outcome::Skipped { at, why };
            record.outcomes.insert(threads.palm_named(*palm), outcome);
        }
    }
}

/// What the latest line that says something of a kind says.
fn last<T>(lines: &[Line], of: impl Fn(&What) -> Option<T>) -> Option<T> {
    lines.iter().rev().find_map(|line| of(&line.fact.what))
}

fn set<K: Ord, V>(map: &mut BTreeMap<K, V>, key: K, value: Option<V>) {
    match value {
        Some(value) => drop(map.insert(key, value)),
        None => drop(map.remove(&key)),
    }
}
