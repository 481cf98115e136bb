//! `/moved`: palms moved lately, what was promised for each, and whether it holds.

use super::super::said::{Said, Speaker};
use super::plan;
use crate::moved::{self, Moved, RECENT_DAYS, State};
use crate::office::Office;
use serde_json::{Value, json};

/// A moved palm in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct MovedRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// How it stands: `tripped`, `not-seen`, `due`, `holds`, `established`.
    pub state: &'static str,
    /// The same in a word or two.
    pub state_words: String,
    /// "Dug 63 days ago".
    pub since: String,
    /// When the next look is due, in words.
    pub next: String,
    /// What was promised, in words.
    pub promise: String,
    /// What has broken it.
    pub trips: Vec<Said>,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct MovedView {
    /// One sentence: how many, and how many need a person.
    pub summary: String,
    /// Palms not yet established, worst first.
    pub rows: Vec<MovedRow>,
    /// Palms established again.
    pub arrived: Vec<MovedRow>,
    /// More palms than are shown, in words.
    pub more: Option<String>,
    /// What a promise is, in words.
    pub what: String,
}

/// The page of moved palms.
pub fn view(speaker: &Speaker, office: &Office) -> MovedView {
    let (moved, more) = moved::all(office);
    let tripped = moved.iter().filter(|m| m.state() == State::Tripped).count();
    let (arrived, under_way): (Vec<&Moved>, Vec<&Moved>) =
        moved.iter().partition(|m| m.state() == State::Established);
    let due = under_way
        .iter()
        .filter(|m| matches!(m.state(), State::Due | State::NotSeen))
        .count();
    let counts = [
        ("n", (under_way.len() as i64).into()),
        ("tripped", (tripped as i64).into()),
        ("due", (due as i64).into()),
    ];
    let rows = |list: &[&Moved]| list.iter().map(|m| row(speaker, m)).collect();
    let weeks = [
        ("weeks", moved::promise_weeks().into()),
        (
            "recent",
            speaker.measure.duration(f64::from(RECENT_DAYS)).into(),
        ),
    ];
    MovedView {
        summary: speaker.text("moved-summary", &counts),
        rows: rows(&under_way),
        arrived: rows(&arrived),
        more: (more > 0).then(|| speaker.text("moved-more", &[("n", (more as i64).into())])),
        what: speaker.text("moved-what", &weeks),
    }
}

fn row(speaker: &Speaker, moved: &Moved) -> MovedRow {
    let palm = &moved.record.palm;
    let state = moved.state();
    let since = [
        (
            "ago",
            speaker.measure.duration(f64::from(moved.days)).into(),
        ),
        ("date", speaker.measure.date(moved.moved_on).into()),
    ];
    MovedRow {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        state: state.key(),
        state_words: speaker.say(&format!("moved-state-{}", state.key())),
        since: speaker.text("moved-since", &since),
        next: plan::next_look(speaker, moved),
        promise: match state {
            State::Established => plan::established(speaker, moved),
            _ => plan::promise_of(speaker, moved).short,
        },
        trips: trips(speaker, moved),
    }
}

pub(super) fn trips(speaker: &Speaker, moved: &Moved) -> Vec<Said> {
    moved
        .stems
        .iter()
        .flat_map(|stem| speaker.findings(&stem.trips))
        .collect()
}

/// A moved palm for a program: plain figures, dates as ISO 8601.
pub fn json(moved: &Moved) -> Value {
    let palm = &moved.record.palm;
    let stems: Vec<Value> = moved
        .stems
        .iter()
        .map(|stem| {
            let trips: Vec<&str> = stem.trips.iter().map(|f| f.code).collect();
            json!({
                "stem": stem.stem,
                "promise": {
                    "since": stem.promise.since.to_string(), "by": stem.promise.by.to_string(),
                    "low": stem.promise.low, "high": stem.promise.high, "call_from": stem.promise.call_from,
                },
                "trips": trips,
                "pace": stem.progress.pace, "pace_back": stem.progress.pace_back,
                "loss_ordinary": stem.progress.loss_ordinary,
                "established": stem.progress.settled == care::Settled::Established,
                "by_date_alone": stem.progress.by_date_alone,
            })
        })
        .collect();
    json!({
        "tag": palm.tag, "species": palm.species, "site": palm.site,
        "state": moved.state().key(),
        "moved_on": moved.moved_on.to_string(), "days": moved.days,
        "last_look": moved.last_look.map(|d| d.to_string()),
        "next_look": moved.calendar.next.map(|d| d.to_string()),
        "stems": stems,
    })
}
