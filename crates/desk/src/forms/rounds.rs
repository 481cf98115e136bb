//! Forms about rounds: asking for a plan, keeping it, and what happened at each palm.

use super::save::{Stop, entry_id, once, whole};
use super::{Trouble, Troubles, Typed};
use crate::clock;
use crate::day_rounds::{self, Ask, Scope, Task, USUAL_TASKS};
use crate::forms::BY;
use crate::office::{Note, Office};
use model::{Body, Day, Entry, EntryId, PalmId, RoundNote, RoundStep};

/// Reasons for leaving a palm out, as stable words; their words are `round-why-…`.
pub const SKIP_REASONS: [&str; 6] = ["no-access", "occupied", "ill", "weather", "time", "other"];

/// Iterations of a search for which a person waits at a page.
const ITERATIONS: u64 = 3_000;

/// Reads what was asked. Fields: `day`, `scope` (`due`, `sites`, `palms`), `crew-…` and `site-…` ticked by name, `tags`,
/// `task-…` ticked by word.
pub fn round_ask(typed: &Typed, today: Day) -> Result<Ask, Vec<Trouble>> {
    let mut troubles = Troubles::default();
    let day = match Day::parse(typed.get("day")) {
        None => {
            troubles.refuse("day", "plan-form-day");
            today
        }
        Some(day) if day < today => {
            troubles.refuse("day", "plan-form-past");
            today
        }
        Some(day) => day,
    };
    let scope = match typed.get("scope") {
        "sites" => {
            let sites = ticked(typed, "site-");
            if sites.is_empty() {
                troubles.refuse("scope", "plan-form-sites");
            }
            Scope::Sites(sites)
        }
        "palms" => {
            let tags: Vec<String> = typed
                .get("tags")
                .split(|c: char| c == ',' || c.is_whitespace())
                .filter(|tag| !tag.is_empty())
                .map(str::to_owned)
                .collect();
            if tags.is_empty() {
                troubles.refuse("tags", "plan-form-tags");
            }
            Scope::Palms(tags)
        }
        _ => Scope::Due,
    };
    let tasks: Vec<Task> = Task::ALL
        .iter()
        .filter(|(_, word)| !typed.get(&format!("task-{word}")).is_empty())
        .map(|(task, _)| *task)
        .collect();
    if tasks.is_empty() {
        troubles.refuse("tasks", "plan-form-tasks");
    }
    troubles.or(Ask {
        day,
        crews: ticked(typed, "crew-"),
        scope,
        tasks,
        travel: None,
        seed: 1,
        iterations: ITERATIONS,
    })
}

/// Ticks the usual tasks where nobody was asked for them: on a page just opened, and behind a link.
pub fn usual_tasks(typed: &mut Typed) {
    if !typed.get("tasks").is_empty() {
        return;
    }
    for (_, word) in Task::ALL
        .iter()
        .filter(|(task, _)| USUAL_TASKS.contains(task))
    {
        typed.set(&format!("task-{word}"), "yes");
    }
}

fn ticked(typed: &Typed, prefix: &str) -> Vec<String> {
    typed
        .below(prefix)
        .filter(|(_, value)| !value.is_empty())
        .map(|(name, _)| name.to_owned())
        .collect()
}

/// Keeps the proposal that a form carries in `rounds`.
pub fn keep_rounds(office: &Office, typed: &Typed) -> Result<Vec<EntryId>, Stop> {
    let plans = day_rounds::read(typed.get("rounds"), typed.get("notes"));
    let plans = plans
        .filter(|plans| !plans.is_empty())
        .ok_or_else(|| whole("plan-form-carried"))?;
    day_rounds::keep(office, plans, entry_id(typed.get("id")))
}

/// Records a step of a round. Fields: `step` (`start`, `done`, `skip`, `finish`), `palm` (tag), `minutes`, `note`, `why`,
/// `words`.
pub fn save_round_step(office: &Office, round: EntryId, typed: &Typed) -> Result<(), Stop> {
    let state = office.state();
    let record = state
        .work
        .rounds
        .get(&round)
        .ok_or_else(|| whole("round-form-gone"))?;
    let palm = || -> Result<PalmId, Stop> {
        let found = state.by_tag(typed.get("palm")).map(|r| r.id);
        let planned = |palm: &PalmId| record.plan.stops.iter().any(|stop| stop.palm == *palm);
        found
            .filter(planned)
            .ok_or_else(|| whole("round-form-palm"))
    };
    let step = match typed.get("step") {
        "done" => RoundStep::Done {
            palm: palm()?,
            minutes: minutes(typed)?,
            note: typed.get("note").to_owned(),
        },
        "skip" => RoundStep::Skipped {
            palm: palm()?,
            why: why(typed)?,
        },
        "finish" => RoundStep::Finished,
        _ if record.started.is_some() => return Ok(()),
        _ => RoundStep::Started,
    };
    let note = Note {
        id: None,
        at: clock::now(office),
        by: BY.to_owned(),
        body: Body::RoundNoted(RoundNote { round, step }),
        replaces: None,
    };
    once(office, &sent_before(office, typed)?, typed, note)
}

/// Calls a round off.
pub fn call_off_round(office: &Office, round: EntryId, typed: &Typed) -> Result<(), Stop> {
    let state = office.state();
    let Some(record) = state.work.rounds.get(&round) else {
        return Ok(());
    };
    let why = typed.get("why").to_owned();
    let note = Note {
        id: entry_id(typed.get("id")),
        at: clock::now(office),
        by: BY.to_owned(),
        body: Body::Withdrawn { why },
        replaces: Some(record.entry),
    };
    office.record(vec![note])?;
    Ok(())
}

/// The entry this form has made already, if it was sent before.
fn sent_before(office: &Office, typed: &Typed) -> Result<Vec<Entry>, Stop> {
    let ids: Vec<EntryId> = entry_id(typed.get("id")).into_iter().collect();
    let kept = office.ledger().find(&ids)?;
    Ok(kept.into_iter().map(|kept| kept.entry).collect())
}

fn minutes(typed: &Typed) -> Result<Option<f64>, Stop> {
    let text = typed.get("minutes").replace(',', ".");
    if text.is_empty() {
        return Ok(None);
    }
    let minutes = text
        .parse::<f64>()
        .ok()
        .filter(|m| (0.0..=1440.0).contains(m));
    minutes
        .map(Some)
        .ok_or_else(|| at("minutes", "round-form-minutes"))
}

fn why(typed: &Typed) -> Result<String, Stop> {
    let own = typed.get("words");
    match typed.get("why") {
        "" | "other" if own.is_empty() => Err(at("why", "round-form-why")),
        _ if !own.is_empty() => Ok(own.to_owned()),
        known => Ok(known.to_owned()),
    }
}

fn at(field: &'static str, code: &'static str) -> Stop {
    let mut troubles = Troubles::default();
    troubles.refuse(field, code);
    Stop::Troubles(troubles.0)
}
