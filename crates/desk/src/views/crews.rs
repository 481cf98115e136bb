//! Crews as pages show them.

use super::facts::{Fact, fact};
use super::said::Speaker;
use super::sites::{hours_words, place_words, told};
use crate::forms::SKILLS;
use crate::office::Office;
use model::{CrewWords, Knowledge, Position, State};

/// A crew that starts so near to a gate, degrees, starts there (about ten metres).
const AT_GATE: f64 = 0.0001;

/// One crew in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct CrewRow {
    /// Name.
    pub name: String,
    /// How many people, in words.
    pub people: String,
    /// When it works, in words; empty if not said.
    pub hours: String,
    /// What it can do, in words; empty if nothing is said.
    pub skills: String,
    /// No longer works.
    pub gone: bool,
}

/// All crews.
#[derive(Clone, PartialEq, Debug)]
pub struct CrewsView {
    /// Those that work, by name.
    pub rows: Vec<CrewRow>,
    /// Those that are gone.
    pub gone: Vec<CrewRow>,
}

/// One crew.
#[derive(Clone, PartialEq, Debug)]
pub struct CrewView {
    /// As in the list.
    pub row: CrewRow,
    /// What is known.
    pub facts: Vec<Fact>,
    /// Free words.
    pub notes: String,
}

/// The list.
pub fn view(speaker: &Speaker, office: &Office) -> CrewsView {
    let state = office.state();
    let rows = state.work.crews.values().map(|crew| row(speaker, crew));
    let (gone, rows) = rows.partition(|row| row.gone);
    CrewsView { rows, gone }
}

/// One crew; `None` if there is none of this name.
pub fn one(speaker: &Speaker, office: &Office, name: &str) -> Option<CrewView> {
    let state = office.state();
    let crew = state.work.crews.get(name)?;
    Some(CrewView {
        row: row(speaker, crew),
        facts: facts(speaker, &state, crew),
        notes: crew.notes.clone(),
    })
}

fn row(speaker: &Speaker, crew: &CrewWords) -> CrewRow {
    let people = match crew.people {
        Some(n) => speaker.text("crews-people", &[("n", i64::from(n).into())]),
        None => speaker.say("crews-people-unknown"),
    };
    CrewRow {
        name: crew.name.clone(),
        people,
        hours: hours_words(speaker, crew.hours.as_slice()),
        skills: skills(speaker, crew).join(", "),
        gone: crew.gone,
    }
}

fn skills(speaker: &Speaker, crew: &CrewWords) -> Vec<String> {
    let word = |skill: &String| match SKILLS.contains(&skill.as_str()) {
        true => speaker.say(&format!("crew-skill-{skill}")),
        false => skill.clone(),
    };
    crew.skills.iter().map(word).collect()
}

fn kit(speaker: &Speaker, crew: &CrewWords) -> Vec<String> {
    crew.kit
        .iter()
        .map(|tool| tool_name(speaker, tool))
        .collect()
}

/// A tool's name; its key where no table has it.
pub fn tool_name(speaker: &Speaker, key: &str) -> String {
    let row = Knowledge::embedded().tool(key);
    row.map_or(key.to_owned(), |row| speaker.texts(&row.name).to_owned())
}

fn facts(speaker: &Speaker, state: &State, crew: &CrewWords) -> Vec<Fact> {
    let words = |all: Vec<String>| (!all.is_empty()).then(|| all.join(", "));
    let people = crew.people.map(|n| speaker.measure.count(n.into()));
    let from = crew.from.map(|place| at(speaker, state, place));
    let to = match crew.to {
        Some(place) => Some(at(speaker, state, place)),
        None => crew.from.map(|_| speaker.say("crews-to-where-from")),
    };
    let hours = crew
        .hours
        .map(|hours| hours_words(speaker, std::slice::from_ref(&hours)));
    let room = crew.room_m3.map(|m3| speaker.measure.bulk(m3));
    let mut facts = vec![
        fact(speaker, "crews-fact-people", people),
        fact(speaker, "crews-fact-from", from),
        fact(speaker, "crews-fact-to", to),
        fact(speaker, "crews-fact-hours", hours),
        fact(speaker, "crews-fact-skills", words(skills(speaker, crew))),
        fact(speaker, "crews-fact-kit", words(kit(speaker, crew))),
        fact(speaker, "crews-fact-room", room),
    ];
    facts.extend(crew.extra.iter().map(told));
    facts
}

/// A place in words: the gate of a site if it is one, else its degrees.
fn at(speaker: &Speaker, state: &State, place: Position) -> String {
    let near = |gate: Position| {
        (gate.lat - place.lat).abs() < AT_GATE && (gate.lon - place.lon).abs() < AT_GATE
    };
    let mut sites = state.work.sites.values();
    let site = sites.find(|site| site.gate.is_some_and(near));
    match site {
        Some(site) => {
            let args = [("site", site.name.clone().into())];
            speaker.text("crews-at-gate", &args)
        }
        None => place_words(speaker, place),
    }
}
