//! Keeping a proposal: each round becomes an entry.

use super::crews::has_begun;
use super::refuse;
use crate::clock;
use crate::forms::{BY, Stop};
use crate::office::{Note, Office};
use model::state::RoundRecord;
use model::{Arg, Body, Day, EntryId, Finding, PalmId, RoundPlan, RoundStop};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// A round as a form carries it from the page that shows it to the office that keeps it: what is kept is what was seen.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Carried {
    day: String,
    crew: String,
    leave: Option<u32>,
    back: Option<u32>,
    metres: Option<f64>,
    stops: Vec<CarriedStop>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct CarriedStop {
    palm: Uuid,
    start: Option<u32>,
    minutes: Option<f64>,
    tasks: Vec<String>,
}

/// Rounds as one text.
pub fn carried<'p>(plans: impl IntoIterator<Item = &'p RoundPlan>) -> String {
    let all: Vec<Carried> = plans.into_iter().map(Carried::of).collect();
    // plain data with text keys: it cannot fail
    serde_json::to_string(&all).unwrap_or_default()
}

impl Carried {
    fn of(plan: &RoundPlan) -> Carried {
        Carried {
            day: plan.day.to_string(),
            crew: plan.crew.clone(),
            leave: plan.leave,
            back: plan.back,
            metres: plan.metres,
            stops: plan
                .stops
                .iter()
                .map(|stop| CarriedStop {
                    palm: stop.palm.0,
                    start: stop.start,
                    minutes: stop.minutes,
                    tasks: stop.tasks.clone(),
                })
                .collect(),
        }
    }

    fn plan(self, notes: &str) -> Option<RoundPlan> {
        Some(RoundPlan {
            crew: self.crew,
            leave: self.leave,
            back: self.back,
            metres: self.metres,
            stops: self
                .stops
                .into_iter()
                .map(|stop| RoundStop {
                    palm: PalmId(stop.palm),
                    start: stop.start,
                    minutes: stop.minutes,
                    tasks: stop.tasks,
                })
                .collect(),
            notes: notes.to_owned(),
            ..RoundPlan::on(Day::parse(&self.day)?)
        })
    }
}

/// Reads carried rounds back, with words to the crew.
pub fn read(text: &str, notes: &str) -> Option<Vec<RoundPlan>> {
    let all: Vec<Carried> = serde_json::from_str(text).ok()?;
    all.into_iter().map(|one| one.plan(notes)).collect()
}

/// The round of a crew on a day that has not begun, which a new plan takes the place of.
pub fn replaced(office: &Office, day: Day, crew: &str) -> Option<RoundRecord> {
    let state = office.state();
    let mut rounds = state.work.rounds.values();
    rounds
        .find(|round| round.plan.day == day && round.plan.crew == crew && !has_begun(round))
        .cloned()
}

/// Records rounds, all or none; a crew that has set out meanwhile keeps its round, and that is refused. A palm stands in
/// one round of a day: whoever else had it planned and has not begun loses it. Returns the rounds' names.
///
/// `sent` is the id of the form: a form sent twice is kept once.
pub fn keep(
    office: &Office,
    plans: Vec<RoundPlan>,
    sent: Option<EntryId>,
) -> Result<Vec<EntryId>, Stop> {
    let state = office.state();
    let begun = |plan: &RoundPlan| {
        let mut rounds = state.work.rounds.values();
        rounds.any(|r| r.plan.day == plan.day && r.plan.crew == plan.crew && has_begun(r))
    };
    let wrong: Vec<Finding> = plans
        .iter()
        .filter(|plan| begun(plan))
        .map(|plan| refuse("round-begun").with("crew", Arg::Text(plan.crew.clone())))
        .collect();
    if !wrong.is_empty() {
        return Err(Stop::whole(wrong));
    }
    let mut notes = Vec::new();
    let mut names = Vec::new();
    for (i, plan) in plans.into_iter().enumerate() {
        let before = replaced(office, plan.day, &plan.crew);
        let id = sent.map_or_else(|| office.new_id(), |sent| nth(sent, i));
        if let Some(same) = before.as_ref().filter(|before| before.entry == id) {
            names.push(same.id);
            continue;
        }
        names.push(before.as_ref().map_or(id, |before| before.id));
        notes.push(Note {
            id: Some(id),
            at: clock::now(office),
            by: BY.to_owned(),
            body: Body::RoundPlanned(plan),
            replaces: before.map(|before| before.entry),
        });
    }
    office.record(notes)?;
    Ok(names)
}

/// The id of the n-th round of a form: the form's own, counted on in its last bits.
fn nth(sent: EntryId, n: usize) -> EntryId {
    let bits = sent.0.as_u128();
    EntryId(Uuid::from_u128(bits ^ n as u128))
}
