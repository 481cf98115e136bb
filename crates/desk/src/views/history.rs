//! What happened to a palm, newest first.

use super::said::Speaker;
use model::{Body, Day, Entry, EntryId, Inspection};
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
        Body::Withdrawn { why } => plain("history-withdrawn", why),
        Body::Unknown { kind, .. } => (
            speaker.text("history-unknown", &[("kind", kind.clone().into())]),
            String::new(),
        ),
    }
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
    if !look.notes.is_empty() {
        parts.push(look.notes.clone());
    }
    parts.join(", ")
}

fn sign_words(speaker: &Speaker, sign: &str) -> String {
    let code = format!("sign-{sign}");
    if !speaker.words().has(&code) {
        return sign.to_owned();
    }
    // in the middle of a sentence
    let words = speaker.say(&code);
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
