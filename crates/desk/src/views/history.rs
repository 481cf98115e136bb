//! What happened to a palm, newest first.

use super::blades::said_in;
use super::said::Speaker;
use model::{
    Body, Cleaning, CutMade, Day, Entry, EntryId, Feeding, Inspection, Move, RoundStep, Tending,
};
use std::collections::BTreeSet;

/// One entry in words.
#[derive(Clone, PartialEq, Debug)]
pub struct Event {
    /// The day it happened.
    pub date: String,
    /// What happened.
    pub what: String,
    /// Its particulars; may be empty.
    pub detail: String,
    /// Who wrote it.
    pub by: String,
    /// Corrected or taken back since: shown struck out.
    pub superseded: bool,
    /// It corrects an entry before it.
    pub corrects: bool,
    /// Whether a form can correct it: an inspection that stands.
    pub may_correct: bool,
    /// Its id, as a form to correct it wants it.
    pub id: String,
}

/// A palm's entries in words, newest first.
pub fn view(speaker: &Speaker, entries: &[Entry]) -> Vec<Event> {
    let superseded: BTreeSet<EntryId> = entries.iter().filter_map(|e| e.replaces).collect();
    entries
        .iter()
        .rev()
        .map(|entry| event(speaker, entry, superseded.contains(&entry.id)))
        .collect()
}

fn event(speaker: &Speaker, entry: &Entry, superseded: bool) -> Event {
    let (what, detail) = said(speaker, &entry.body);
    Event {
        date: speaker.measure.date(day_of(entry)),
        what,
        detail,
        by: entry.by.clone(),
        superseded,
        corrects: entry.replaces.is_some(),
        may_correct: !superseded && matches!(entry.body, Body::Inspected { .. }),
        id: entry.id.0.to_string(),
    }
}

/// An inspection happened on its own date; everything else when its entry says.
fn day_of(entry: &Entry) -> Day {
    match &entry.body {
        Body::Inspected { inspection, .. } => inspection.date,
        _ => entry.at.day(),
    }
}

fn said(speaker: &Speaker, body: &Body) -> (String, String) {
    let plain = |code: &str, detail: &str| (speaker.say(code), detail.to_owned());
    match body {
        Body::PalmRegistered(palm) => plain("history-registered", &palm.species),
        Body::PalmChanged { .. } => plain("history-changed", ""),
        Body::PalmRemoved { why, .. } => plain("history-removed", why),
        Body::Inspected { inspection, .. } => {
            let stem = [("n", i64::from(inspection.stem).into())];
            (
                speaker.text("history-inspected", &stem),
                counted(speaker, inspection),
            )
        }
        Body::HoldSet {
            reason,
            note,
            until,
            ..
        } => {
            let until = until.map(|d| {
                speaker.text("history-until", &[("date", speaker.measure.date(d).into())])
            });
            let reason = hold_reason(speaker, reason);
            let detail: Vec<String> = [Some(reason), until, Some(note.clone())]
                .into_iter()
                .flatten()
                .filter(|s| !s.is_empty())
                .collect();
            (speaker.say("history-hold-set"), detail.join("; "))
        }
        Body::HoldLifted { note, .. } => plain("history-hold-lifted", note),
        Body::Noted { text, .. } => plain("history-noted", text),
        Body::BladeRegistered(blade) => plain("history-blade-registered", &blade.tag),
        Body::BladeChanged { to, .. } => plain("history-blade-changed", &to.tag),
        Body::BladeRetired { why, .. } => plain("history-blade-retired", why),
        Body::BladeLent { to, .. } => plain("history-blade-lent", to),
        Body::BladeReturned { .. } => plain("history-blade-returned", ""),
        Body::CutMade(cut) => (
            speaker.text("history-cut", &[("n", i64::from(cut.stem).into())]),
            taken_off(speaker, cut),
        ),
        Body::BathMixed(bath) => plain("history-bath-mixed", &agent_words(speaker, &bath.agent)),
        Body::Cleaned(cleaning) => (
            speaker.say("history-cleaned"),
            how_cleaned(speaker, cleaning),
        ),
        Body::Tended { what, .. } => match what {
            Tending::Moved(moved) => (speaker.say("history-moved"), how_moved(speaker, moved)),
            Tending::Watered(water) => {
                let litres = water.litres.map(|l| speaker.measure.litres(l));
                let parts = [litres, Some(water.notes.clone())];
                (speaker.say("history-watered"), joined(parts))
            }
            Tending::Fed(fed) => (speaker.say("history-fed"), how_fed(speaker, fed)),
        },
        Body::LinkGiven { link, .. } => plain("history-link-given", &link.owner),
        Body::SiteDescribed(site) => plain("history-site", &site.name),
        Body::CrewDescribed(crew) => plain("history-crew", &crew.name),
        Body::PricesSet(_) => plain("history-prices", ""),
        Body::WeatherNoted(day) => plain("history-weather", &day.site),
        Body::RoundPlanned(plan) => plain("history-round-planned", &plan.crew),
        Body::RoundNoted(note) => match &note.step {
            RoundStep::Started => plain("history-round-started", ""),
            RoundStep::Done { note, .. } => plain("history-round-done", note),
            RoundStep::Skipped { why, .. } => plain("history-round-skipped", why),
            RoundStep::Finished => plain("history-round-finished", ""),
        },
        Body::Withdrawn { why } => plain("history-withdrawn", why),
        Body::Unknown { kind, .. } => (
            speaker.text("history-unknown", &[("kind", kind.clone().into())]),
            String::new(),
        ),
    }
}

/// From where and since when a palm was moved; only what was noted.
fn how_moved(speaker: &Speaker, moved: &Move) -> String {
    let date =
        |code: &str, day: Day| speaker.text(code, &[("date", speaker.measure.date(day).into())]);
    joined([
        Some(date("history-moved-dug", moved.dug_on)),
        moved
            .planted_on
            .map(|day| date("history-moved-planted", day)),
        Some(moved.from.clone()),
        moved
            .leaves
            .map(|leaves| speaker.say(&format!("history-leaves-{}", leaves.word()))),
        Some(moved.notes.clone()),
    ])
}

/// What a palm was fed; only what was noted.
fn how_fed(speaker: &Speaker, fed: &Feeding) -> String {
    joined([
        Some(fed.product.clone()),
        fed.grams.map(|grams| speaker.measure.mass(grams / 1000.0)),
        Some(fed.notes.clone()),
    ])
}

/// Parts that say something, with commas between.
fn joined<const N: usize>(parts: [Option<String>; N]) -> String {
    let said = parts.into_iter().flatten().filter(|part| !part.is_empty());
    said.collect::<Vec<_>>().join(", ")
}

/// The words of a hold's reason; a reason without words is shown as it was written.
pub fn hold_reason(speaker: &Speaker, reason: &str) -> String {
    let code = format!("forms-hold-reason-{reason}");
    if speaker.words().has(&code) {
        speaker.say(&code)
    } else {
        reason.to_owned()
    }
}

/// What a cut took off, who cut, and why although the blade was not clean; only what was noted.
pub fn taken_off(speaker: &Speaker, cut: &CutMade) -> String {
    let count =
        |code: &str, n: Option<u32>| n.map(|n| speaker.text(code, &[("n", i64::from(n).into())]));
    let words = |words: &str| (!words.is_empty()).then(|| words.to_owned());
    let despite =
        words(&cut.despite).map(|why| speaker.text("history-cut-despite", &[("why", why.into())]));
    let parts = [
        count("history-took-green", cut.off.green),
        count("history-took-yellowing", cut.off.yellowing),
        count("history-took-brown", cut.off.brown),
        count("history-took-stalks", cut.off.stalks),
        words(&cut.crew),
        despite,
        words(&cut.notes),
    ];
    joined(parts)
}

/// With what and how long a blade was cleaned; only what was noted.
pub fn how_cleaned(speaker: &Speaker, cleaning: &Cleaning) -> String {
    let figure = |code: &str, n: Option<f64>| {
        n.map(|n| speaker.text(code, &[("n", speaker.measure.number(n, 1).into())]))
    };
    let words = |words: String| (!words.is_empty()).then_some(words);
    let brushed = cleaning.brushed.map(|brushed| {
        speaker.say(match brushed {
            true => "history-cleaned-brushed",
            false => "history-cleaned-unbrushed",
        })
    });
    let parts = [
        words(agent_words(speaker, &cleaning.agent)),
        figure("history-cleaned-strength", cleaning.strength_pct),
        figure("history-cleaned-minutes", cleaning.contact_min),
        brushed,
        words(cleaning.by.clone()),
    ];
    joined(parts)
}

/// The name of an agent of the table; any other as the keeper wrote it.
fn agent_words(speaker: &Speaker, agent: &str) -> String {
    let known = speaker.knowledge;
    let key = known.cleaner_named(agent).unwrap_or_default();
    match known.cleaners_of(key).next() {
        Some(row) => said_in(speaker, &row.name).to_owned(),
        None => agent.to_owned(),
    }
}

/// Green, yellowing and brown fronds that an inspection counted, nothing else it noted.
pub fn counted_fronds(speaker: &Speaker, look: &Inspection) -> String {
    let count =
        |code: &str, n: Option<u32>| n.map(|n| speaker.text(code, &[("n", i64::from(n).into())]));
    joined([
        count("history-green", look.green),
        count("history-yellowing", look.yellowing),
        count("history-brown", look.brown),
    ])
}

/// What an inspection noted, only what it noted.
pub fn counted(speaker: &Speaker, look: &Inspection) -> String {
    let count =
        |code: &str, n: Option<u32>| n.map(|n| speaker.text(code, &[("n", i64::from(n).into())]));
    let mut parts: Vec<String> = [
        count("history-green", look.green),
        count("history-yellowing", look.yellowing),
        count("history-brown", look.brown),
        count("history-new", look.new_leaves),
        count("history-took-green", look.removed.green.filter(|n| *n > 0)),
        count(
            "history-took-yellowing",
            look.removed.yellowing.filter(|n| *n > 0),
        ),
        count("history-took-brown", look.removed.brown.filter(|n| *n > 0)),
        look.spear
            .map(|s| speaker.say(&format!("spear-state-{}", s.word()))),
        clock(speaker, look),
    ]
    .into_iter()
    .flatten()
    .collect();
    parts.extend(look.signs.iter().map(|sign| sign_words(speaker, sign)));
    if !look.absent.is_empty() {
        let not_there: Vec<String> = look
            .absent
            .iter()
            .map(|sign| sign_words(speaker, sign))
            .collect();
        parts.push(speaker.text(
            "history-not-there",
            &[("signs", not_there.join(", ").into())],
        ));
    }
    if !look.notes.is_empty() {
        parts.push(look.notes.clone());
    }
    parts.join(", ")
}

fn sign_words(speaker: &Speaker, sign: &str) -> String {
    let words = super::picker::name_of(speaker, sign);
    if words == sign {
        return words;
    }
    // in the middle of a sentence
    words
        .chars()
        .take(1)
        .flat_map(char::to_lowercase)
        .chain(words.chars().skip(1))
        .collect()
}

fn clock(speaker: &Speaker, look: &Inspection) -> Option<String> {
    let hours = |c: Option<model::Clock>| {
        c.map_or_else(|| "–".to_owned(), |c| speaker.measure.number(c.0, 2))
    };
    (look.clock_left.is_some() || look.clock_right.is_some()).then(|| {
        let args = [
            ("left", hours(look.clock_left).into()),
            ("right", hours(look.clock_right).into()),
        ];
        speaker.text("history-clock", &args)
    })
}
