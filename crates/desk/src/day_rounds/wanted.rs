//! What is to be done at a palm on a day.

use super::crews::Crew;
use super::gather::Visit;
use super::{Ask, Scope};
use crate::estimating::{at_palm, figures_of, reach, spare_blade};
use crate::feeding;
use crate::health::health_of;
use crate::moved;
use crate::office::Office;
use crate::views::standing::Standing;
use crate::watering;
use crown::Cut;
use model::{Arg, Day, Finding, PalmId, PalmRecord, Severity};
use rounds::estimate::{self, Figures, Reach, Task};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// A palm that nobody has looked at for so many days is to be looked at (assumed: two looks a year).
const LOOK_AFTER: i32 = 182;

/// What is asked of palms on a day.
pub struct Wanted {
    day: Day,
    /// Named by tag: taken whether due or not.
    always: bool,
    tasks: Vec<Task>,
    /// Moved palms that want a look by the day.
    looks: BTreeSet<PalmId>,
    /// Palms that want water by the day, with the day on which they are due.
    dry: BTreeMap<PalmId, Day>,
    figures: Figures,
    /// The crew whose pace that is; `None`: the pace of all.
    crew: Option<String>,
    /// While one blade soaks there is another.
    spare_blade: bool,
    /// People of the crew, where one crew is asked for and has said.
    people: Option<u32>,
}

impl Wanted {
    /// What an ask wants. Of several crews nobody knows yet who goes where: they are reckoned at the pace they have in
    /// common.
    pub fn of(office: &Office, ask: &Ask, crews: &[Crew]) -> Wanted {
        let state = office.state();
        let crew = match crews {
            [only] => Some(only.name.clone()),
            _ => None,
        };
        let asks = |task: Task| ask.tasks.contains(&task);
        Wanted {
            day: ask.day,
            always: matches!(ask.scope, Scope::Palms(_)),
            tasks: ask.tasks.clone(),
            looks: match asks(Task::Look) {
                true => looks_due(office, ask.day),
                false => BTreeSet::new(),
            },
            dry: match asks(Task::Water) {
                true => dry(office, ask.day),
                false => BTreeMap::new(),
            },
            figures: figures_of(office, crew.as_deref().unwrap_or("")),
            spare_blade: spare_blade(&state),
            people: crew
                .as_ref()
                .and_then(|name| state.work.crews.get(name)?.people),
            crew,
        }
    }

    /// On what the minutes rest.
    pub fn minutes_remark(&self) -> Finding {
        match (self.figures.pace(), &self.crew) {
            (None, _) => Finding::new("round-remark-minutes", Severity::Info),
            (Some(_), None) => Finding::new("round-remark-minutes-all", Severity::Info),
            (Some(_), Some(crew)) => Finding::new("round-remark-minutes-crew", Severity::Info)
                .with("crew", Arg::Text(crew.clone())),
        }
    }

    /// Minutes on foot for each metre.
    pub fn minutes_a_metre(&self) -> f64 {
        self.figures.mid("walk") / 100.0
    }

    /// What is to be done at a palm; nothing where it is not due.
    pub fn visit(
        &self,
        office: &Office,
        record: &Arc<PalmRecord>,
        standing: &Standing,
    ) -> Option<Visit> {
        let tasks = self.tasks_at(office, record, standing);
        if tasks.is_empty() {
            return None;
        }
        let cut = tasks.contains(&Task::Cut);
        let from = reach(record, standing.lift);
        let visit = estimate::visit(
            &self.figures,
            &self.work(record, standing.take, from, &tasks),
        );
        let dry = self.dry.get(&record.id).copied();
        let latest = standing.due.latest.into_iter().chain(dry).min();
        Some(Visit {
            record: record.clone(),
            health: health_of(record, Some(standing), office.today()),
            lift: cut && from == Reach::Lift,
            tasks: words(&tasks),
            minutes: visit.minutes.mid,
            litres: (visit.debris_m3.mid * 1000.0).round() as i64,
            worth: worth(latest, self.day),
        })
    }

    /// Those of the tasks asked for that the palm wants on the day.
    fn tasks_at(
        &self,
        office: &Office,
        record: &Arc<PalmRecord>,
        standing: &Standing,
    ) -> Vec<Task> {
        let may_cut = standing.holds.is_empty() && standing.take != Cut::NONE;
        let earliest = standing.due.earliest;
        let due = earliest.is_some_and(|earliest| earliest <= self.day);
        let last = record.last_look().map(|look| look.date);
        let stale = last.is_none_or(|last| self.day.since(last) >= LOOK_AFTER);
        let wants = |task: &Task| match task {
            Task::Look => {
                stale || self.looks.contains(&record.id) || self.always || (due && !may_cut)
            }
            Task::Cut => may_cut && (due || self.always),
            Task::Water => self.dry.contains_key(&record.id),
            Task::Feed => {
                feeding::of(office, record, &[]).is_some_and(|fed| fed.wants_on(self.day))
            }
        };
        self.tasks.iter().copied().filter(wants).collect()
    }

    fn work(&self, record: &PalmRecord, off: Cut, from: Reach, tasks: &[Task]) -> estimate::Work {
        let cuts = tasks.contains(&Task::Cut);
        estimate::Work {
            tasks: tasks.to_vec(),
            dead: if cuts { off.brown } else { 0 },
            green: if cuts { off.live() } else { 0 },
            from,
            spare_blade: self.spare_blade,
            people: self.people,
            ..at_palm(record)
        }
    }
}

fn looks_due(office: &Office, day: Day) -> BTreeSet<PalmId> {
    let (moved, _) = moved::all(office);
    let due = moved.into_iter().filter(|palm| {
        palm.state() < moved::State::Due || palm.calendar.next.is_some_and(|next| next <= day)
    });
    due.map(|palm| palm.record.id).collect()
}

fn dry(office: &Office, day: Day) -> BTreeMap<PalmId, Day> {
    let (followed, _) = watering::all(office);
    let due = followed.iter().filter_map(|own| {
        let next = own.next().filter(|next| *next <= day)?;
        Some((own.record.id, next))
    });
    due.collect()
}

/// Tasks as rounds write them.
fn words(tasks: &[Task]) -> Vec<String> {
    let word = |task: &Task| Task::ALL.iter().find(|(own, _)| own == task);
    let words = tasks.iter().filter_map(word);
    words.map(|(_, word)| (*word).to_owned()).collect()
}

/// More than any detour of a day, and more with every day a palm is late.
fn worth(latest: Option<Day>, day: Day) -> i64 {
    let late = latest.map_or(0, |latest| day.since(latest).clamp(0, 365));
    1_000_000 + 10_000 * i64::from(late)
}
