//! `/round/{id}`: a round on the phone, the next palm first.

use super::super::case::StemToday;
use super::super::cutting::{self, CuttingView};
use super::super::said::{Said, Speaker};
use super::builder::tasks;
use super::{hour, list, when};
use crate::blades::{Leg, jobs};
use crate::clock;
use crate::judging;
use crate::office::Office;
use crate::views::watering::give_on;
use crate::watering;
use model::state::{Outcome, RoundRecord};
use model::{Day, EntryId, Moment, PalmId, PalmRecord, Position, RoundStop};
use std::sync::Arc;

/// The next palm.
#[derive(Clone, PartialEq, Debug)]
pub struct NextStop {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// Where it stands.
    pub at: Option<Position>,
    /// Planned start.
    pub start: String,
    /// What is to be done, in words.
    pub tasks: String,
    /// The same as stable words.
    pub task_keys: Vec<String>,
    /// How much water it gets; `None` where it is not watered, or nobody can tell.
    pub water: Option<String>,
    /// The cut plan of each stem; empty where nothing is to be cut.
    pub plans: Vec<CuttingView>,
    /// What holds it.
    pub holds: Vec<Said>,
    /// Cautions of all stems, each once.
    pub cautions: Vec<Said>,
    /// The blade must be cleaned before; `None` where nothing is cut.
    pub clean: Option<bool>,
}

impl NextStop {
    /// Whether a task is to be done.
    pub fn has(&self, task: &str) -> bool {
        self.task_keys.iter().any(|own| own == task)
    }
}

/// A palm in the list below.
#[derive(Clone, PartialEq, Debug)]
pub struct StopLine {
    /// Tag.
    pub tag: String,
    /// Site.
    pub site: String,
    /// Planned start.
    pub start: String,
    /// What is to be done.
    pub tasks: String,
    /// `open`, `done`, `skipped`.
    pub state: &'static str,
    /// The same in words.
    pub state_words: String,
    /// The blade must be cleaned before it.
    pub clean: bool,
}

/// The page of a round.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundPage {
    /// Its name, as its address carries it.
    pub id: String,
    /// Whose round.
    pub title: String,
    /// Day and hours.
    pub when: String,
    /// How it stands: `planned`, `under-way`, `finished`, `open`.
    pub state: &'static str,
    /// Done, left out, to go.
    pub progress: String,
    /// When it began, when it ended.
    pub times: Vec<String>,
    /// Words to the crew.
    pub notes: String,
    /// Whether the crew has set out.
    pub begun: bool,
    /// Whether it is back.
    pub ended: bool,
    /// The palm in hand.
    pub next: Option<NextStop>,
    /// All palms in order.
    pub stops: Vec<StopLine>,
}

/// The page of a round; `at` puts another palm than the next in hand. `None`: no such round.
pub fn page(
    speaker: &Speaker,
    office: &Office,
    round: EntryId,
    at: Option<&str>,
) -> Option<RoundPage> {
    let state = office.state();
    let record = state.work.rounds.get(&round)?;
    let plan = &record.plan;
    let clean = cleaning_points(office, &plan.stops);
    let tag_is =
        |stop: &RoundStop, tag: &str| state.palm(stop.palm).is_some_and(|r| r.palm.tag == tag);
    let open = |stop: &&RoundStop| !record.outcomes.contains_key(&stop.palm);
    let named = at.and_then(|tag| plan.stops.iter().find(|stop| tag_is(stop, tag)));
    let next = named
        .or_else(|| plan.stops.iter().find(open))
        .and_then(|stop| {
            let own = state.palm(stop.palm)?;
            let clean = plan
                .stops
                .iter()
                .position(|s| s.palm == stop.palm)
                .map(|i| clean[i]);
            Some(next_stop(
                speaker,
                office,
                stop,
                own,
                plan.day,
                clean.unwrap_or(true),
            ))
        });
    let lines = plan.stops.iter().zip(&clean).filter_map(|(stop, clean)| {
        let own = state.palm(stop.palm)?;
        Some(line(speaker, office, record, stop, own, *clean))
    });
    let (done, skipped) = list::counts(record);
    let figures = [
        ("done", done.into()),
        ("skipped", skipped.into()),
        ("open", (plan.stops.len() as i64 - done - skipped).into()),
    ];
    let stamp = |code: &str, moment: Option<Moment>| {
        moment.map(|m| {
            speaker.text(
                code,
                &[("time", clock::says_on(&speaker.measure, m, plan.day).into())],
            )
        })
    };
    Some(RoundPage {
        id: round.0.to_string(),
        title: speaker.text("round-title", &[("crew", plan.crew.clone().into())]),
        when: when(speaker, plan.day, plan.leave, plan.back),
        state: list::standing(speaker, record, office.today()).0,
        progress: speaker.text("round-progress", &figures),
        times: [
            stamp("round-began", record.started),
            stamp("round-ended", record.finished),
        ]
        .into_iter()
        .flatten()
        .collect(),
        notes: plan.notes.clone(),
        begun: record.started.is_some(),
        ended: record.finished.is_some(),
        next,
        stops: lines.collect(),
    })
}

/// Before which stops the blade must be cleaned; `false` where nothing is cut.
pub fn cleaning_points(office: &Office, stops: &[RoundStop]) -> Vec<bool> {
    let legs: Vec<Leg> = stops
        .iter()
        .filter(|stop| stop.has("cut"))
        .map(|stop| Leg {
            palm: stop.palm,
            minutes: stop.minutes.unwrap_or(0.0),
        })
        .collect();
    let mut needed = jobs(office, &legs).into_iter().map(|job| job.needs_clean);
    stops
        .iter()
        .map(|stop| stop.has("cut") && needed.next().unwrap_or(true))
        .collect()
}

/// The cut plan of each stem of a palm today, in words.
pub fn plans(speaker: &Speaker, office: &Office, palm: PalmId) -> Vec<CuttingView> {
    let state = office.state();
    let (Some(record), Some(reading)) = (state.palm(palm), office.reading(palm)) else {
        return Vec::new();
    };
    let judged = judging::in_brief(office, record, &reading);
    StemToday::each(office, record, &reading, &judged)
        .map(|at| cutting::view(speaker, &care::cut_plan(&at.case())))
        .collect()
}

/// How much water a stop of a day gets, in words.
pub fn water(
    speaker: &Speaker,
    office: &Office,
    stop: &RoundStop,
    record: &Arc<PalmRecord>,
    day: Day,
) -> Option<String> {
    let watered = stop.has("water").then(|| watering::of(office, record))??;
    give_on(speaker, &watered, day)
}

fn next_stop(
    speaker: &Speaker,
    office: &Office,
    stop: &RoundStop,
    record: &Arc<PalmRecord>,
    day: Day,
    clean: bool,
) -> NextStop {
    let cut = stop.has("cut");
    let plans = plans(speaker, office, stop.palm);
    let once = |of: fn(&CuttingView) -> &Vec<Said>| {
        let mut all: Vec<Said> = Vec::new();
        for said in plans.iter().flat_map(of) {
            if all.iter().all(|other| other.code != said.code) {
                all.push(said.clone());
            }
        }
        all
    };
    NextStop {
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        site: record.palm.site.clone(),
        at: record.palm.position,
        start: stop.start.map_or_else(String::new, hour),
        tasks: tasks(speaker, &stop.tasks),
        task_keys: stop.tasks.clone(),
        water: water(speaker, office, stop, record, day),
        holds: once(|plan| &plan.holds),
        cautions: if cut {
            once(|plan| &plan.cautions)
        } else {
            Vec::new()
        },
        clean: cut.then_some(clean),
        plans: if cut { plans } else { Vec::new() },
    }
}

fn line(
    speaker: &Speaker,
    office: &Office,
    round: &RoundRecord,
    stop: &RoundStop,
    own: &PalmRecord,
    clean: bool,
) -> StopLine {
    let time = |at: Moment| {
        (
            "time",
            clock::says_on(&speaker.measure, at, office.today()).into(),
        )
    };
    let (state, state_words) = match round.outcomes.get(&stop.palm) {
        None => ("open", speaker.say("round-stop-open")),
        Some(Outcome::Done {
            at, minutes: None, ..
        }) => ("done", speaker.text("round-stop-done", &[time(*at)])),
        Some(Outcome::Done {
            at,
            minutes: Some(minutes),
            ..
        }) => {
            let minutes = ("minutes", speaker.measure.number(*minutes, 0).into());
            (
                "done",
                speaker.text("round-stop-done-minutes", &[time(*at), minutes]),
            )
        }
        Some(Outcome::Skipped { at, why }) => {
            let why = ("why", reason(speaker, why).into());
            (
                "skipped",
                speaker.text("round-stop-skipped", &[time(*at), why]),
            )
        }
    };
    StopLine {
        tag: own.palm.tag.clone(),
        site: own.palm.site.clone(),
        start: stop.start.map_or_else(String::new, hour),
        tasks: tasks(speaker, &stop.tasks),
        state,
        state_words,
        clean,
    }
}

/// A reason for leaving a palm out: a stable word in the reader's language, free words as they are.
fn reason(speaker: &Speaker, why: &str) -> String {
    let code = format!("round-why-{why}");
    match speaker.words().has(&code) {
        true => speaker.say(&code),
        false => why.to_owned(),
    }
}
