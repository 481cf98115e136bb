//! One disorder: everything its page shows.

use super::super::cutting::Line;
use super::super::picker;
use super::super::said::{Cited, Speaker};
use super::super::{history, judgement};
use super::disagreements::{DisagreementView, about};
use care::judge::hold_reason;
use model::knowledge::{DayRange, DisorderRow, HostKind, SignLink, Spread, Strength};

/// The page of a disorder.
#[derive(Clone, PartialEq, Debug)]
pub struct DisorderView {
    /// Its key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// Its family.
    pub family: String,
    /// What it is.
    pub about: String,
    /// The organism; nothing if there is none.
    pub organism: Option<String>,
    /// Its hosts, by how well they are attested.
    pub hosts: Vec<HostLine>,
    /// How it spreads.
    pub spread: Vec<String>,
    /// From infection to the first sign, or "unknown".
    pub latency: String,
    /// From the first sign to death or a clear course, or "unknown".
    pub decline: String,
    /// How it shows in the counts.
    pub course: String,
    /// Its signs, strongest first.
    pub signs: Vec<SignLine>,
    /// What would settle it.
    pub confirm: String,
    /// Which sample to take, and how; empty if no laboratory can tell.
    pub sample: String,
    /// What to do first.
    pub first: String,
    /// What never to do.
    pub never: String,
    /// Nobody cuts while it is suspected: the reason, and what to do instead, whom to tell, what ends it.
    pub hold: Option<(String, [Line; 3])>,
    /// Where those who should know do not agree.
    pub disagree: Vec<DisagreementView>,
    /// How the row is known, where that must be said.
    pub mark: Option<String>,
    /// Its sources.
    pub sources: Vec<Cited>,
}

/// Hosts that are attested alike.
#[derive(Clone, PartialEq, Debug)]
pub struct HostLine {
    /// How well.
    pub kind: String,
    /// Their names, with whether each is a botanical name.
    pub names: Vec<(String, bool)>,
}

/// A sign of the disorder.
#[derive(Clone, PartialEq, Debug)]
pub struct SignLine {
    /// Key of the sign.
    pub key: String,
    /// Its name.
    pub name: String,
    /// Where it is looked for.
    pub place: String,
    /// How to look.
    pub how: String,
    /// Key of its strength.
    pub strength: &'static str,
    /// How strongly, in words.
    pub words: String,
    /// How that is known, where it must be said.
    pub mark: Option<String>,
    /// Who says so.
    pub sources: Vec<Cited>,
}

/// The page; `None` if no disorder has this key.
pub fn view(speaker: &Speaker, key: &str) -> Option<DisorderView> {
    let row = speaker.knowledge.disorder(key)?;
    let text = |texts| speaker.texts(texts).to_owned();
    let family = super::family_key(row.family);
    let course = model::knowledge::Course::ALL
        .iter()
        .find(|(known, _)| *known == row.course);
    Some(DisorderView {
        key: row.key.clone(),
        name: text(&row.name),
        family: speaker.say(&format!("family-{family}")),
        about: text(&row.about),
        organism: (!row.organism.is_empty()).then(|| row.organism.clone()),
        hosts: hosts(speaker, row),
        spread: row
            .spread
            .iter()
            .map(|spread| spread_words(speaker, *spread))
            .collect(),
        latency: days(speaker, row.latency),
        decline: days(speaker, row.decline),
        course: speaker.say(&format!("course-{}", course.map_or("", |(_, word)| *word))),
        signs: signs(speaker, key),
        confirm: text(&row.confirm),
        sample: text(&row.sample),
        first: text(&row.first),
        never: text(&row.never),
        hold: row.hold.map(|kind| {
            let reason = hold_reason(kind);
            (
                history::hold_reason(speaker, reason),
                judgement::what_to_do(speaker, reason),
            )
        }),
        disagree: about(speaker, &[key]),
        mark: speaker.basis(row.basis),
        sources: speaker.cite(&row.sources),
    })
}

fn hosts(speaker: &Speaker, row: &DisorderRow) -> Vec<HostLine> {
    const KINDS: [(HostKind, &str); 3] = [
        (HostKind::Prone, "host-prone"),
        (HostKind::Known, "host-known"),
        (HostKind::Reported, "host-reported"),
    ];
    let name = |name: &str| match name {
        "*" => (speaker.say("host-all"), false),
        name => (name.to_owned(), true),
    };
    let line = |(kind, code): (HostKind, &str)| HostLine {
        kind: speaker.say(code),
        names: row
            .hosts
            .iter()
            .filter(|h| h.kind == kind)
            .map(|h| name(&h.name))
            .collect(),
    };
    KINDS
        .map(line)
        .into_iter()
        .filter(|line| !line.names.is_empty())
        .collect()
}

fn spread_words(speaker: &Speaker, spread: Spread) -> String {
    let word = Spread::ALL.iter().find(|(known, _)| *known == spread);
    speaker.say(&format!("spread-{}", word.map_or("", |(_, word)| *word)))
}

/// "30 to 60 days", "from 3 months", "up to 2 years", "unknown".
fn days(speaker: &Speaker, range: DayRange) -> String {
    let written = |days: u32| speaker.measure.duration(f64::from(days)).into();
    match (range.min, range.max) {
        (None, None) => speaker.say("common-unknown"),
        (Some(min), None) => speaker.text("days-from", &[("low", written(min))]),
        (None, Some(max)) => speaker.text("days-up-to", &[("high", written(max))]),
        (Some(min), Some(max)) if min == max => speaker.measure.duration(f64::from(min)),
        (Some(min), Some(max)) => speaker.text(
            "measure-range",
            &[("low", written(min)), ("high", written(max))],
        ),
    }
}

fn signs(speaker: &Speaker, disorder: &str) -> Vec<SignLine> {
    let own = speaker
        .knowledge
        .sign_links
        .iter()
        .filter(|link| link.disorder == disorder);
    let mut own: Vec<&SignLink> = own.collect();
    own.sort_by_key(|link| link.strength);
    own.into_iter().map(|link| sign(speaker, link)).collect()
}

fn sign(speaker: &Speaker, link: &SignLink) -> SignLine {
    let row = speaker.knowledge.sign(&link.sign);
    let place = row.and_then(|row| {
        let part = model::knowledge::Part::ALL
            .iter()
            .find(|(part, _)| *part == row.part)?;
        Some(speaker.say(&format!("place-{}", part.1)))
    });
    let strength = Strength::ALL
        .iter()
        .find(|(known, _)| *known == link.strength);
    let strength = strength.map_or("", |(_, word)| *word);
    SignLine {
        key: link.sign.clone(),
        name: picker::name_of(speaker, &link.sign),
        place: place.unwrap_or_default(),
        how: row.map_or_else(String::new, |row| speaker.texts(&row.how).to_owned()),
        strength,
        words: speaker.say(&format!("strength-{strength}")),
        mark: speaker.basis(link.basis),
        sources: speaker.cite(&link.sources),
    }
}
