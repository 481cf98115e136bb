//! A trace as its page shows it.

pub mod api;
mod draw;
pub mod lanes;
pub mod plot;
mod words;

pub use words::{ExposedRow, NearRow};

use super::said::{Cited, Said, Speaker};
use crate::clock;
use crate::office::Office;
use crate::tracing::{self, Ask, CaseAsk, TraceAnswer, Travel};
use crate::views::blades::said_in;
use lanes::Lanes;
use model::knowledge::{DayRange, DisorderRow};
use model::{Day, Finding, Knowledge, PalmRecord};
use plot::Plot;

/// Palms offered in the tag field at most.
const OFFERED: usize = 2000;

/// What an address asks.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Question {
    /// Tag of the case palm; empty: nothing asked yet.
    pub case: String,
    /// Key of the disorder; empty: not named.
    pub disorder: String,
    /// The day it was seen to be sick; `None`: today.
    pub seen: Option<Day>,
    /// Shortest and longest time to the first sign, days, as the keeper has it.
    pub latency: DayRange,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct TraceView {
    /// Tags of palms with their species, for the field.
    pub palms: Vec<(String, String)>,
    /// Disorders by name, those that travel on blades first.
    pub disorders: Vec<(String, String, bool)>,
    /// Shortest and longest time of the disorder as the tables have it, as fields want them.
    pub latency: [String; 2],
    /// Today, as a field wants it.
    pub today: String,
    /// What a trace of this says; nothing without a case.
    pub answer: Option<Answer>,
    /// Why there is none.
    pub refused: Option<String>,
}

/// The answer.
#[derive(Clone, PartialEq, Debug)]
pub struct Answer {
    /// How the disorder travels, to be said first: key and words; nothing where blades carry it.
    pub first: Option<String>,
    /// As of when, and that late entries change it.
    pub as_of: String,
    /// How many palms, in a sentence.
    pub summary: String,
    /// What was reckoned with.
    pub reckoned: Vec<String>,
    /// Sources of that.
    pub sources_of_latency: Vec<Cited>,
    /// Exposed palms, by generation: its title and rows.
    pub generations: Vec<(String, Vec<ExposedRow>)>,
    /// Candidate sources.
    pub sources: Vec<ExposedRow>,
    /// Palms to watch by distance and host.
    pub nearby: Vec<NearRow>,
    /// Blades as lanes over time; nothing without a chain.
    pub lanes: Option<Lanes>,
    /// Where the palms stand.
    pub plot: Option<Plot>,
    /// What must be known of log and trace.
    pub findings: Vec<Said>,
}

/// The page for a question.
pub fn view(speaker: &Speaker, office: &Office, question: &Question) -> TraceView {
    let state = office.state();
    let row = disorder(&question.disorder);
    let (mut answer, mut refused) = (None, None);
    if !question.case.is_empty() {
        match made(office, question) {
            Ok(made) => answer = Some(shown(speaker, office, &made)),
            Err(why) => refused = Some(speaker.finding(&why).text),
        }
    }
    let palms = state
        .tags()
        .iter()
        .filter_map(|(tag, id)| Some((tag.clone(), state.palm(*id)?.palm.species.clone())));
    let days = |n: Option<u32>| n.map(|n| n.to_string()).unwrap_or_default();
    let latency = row.map(|row| row.latency).unwrap_or_default();
    TraceView {
        palms: palms.take(OFFERED).collect(),
        disorders: disorders(speaker),
        latency: [days(latency.min), days(latency.max)],
        today: office.today().to_string(),
        answer,
        refused,
    }
}

/// The trace itself.
pub fn made(office: &Office, question: &Question) -> Result<TraceAnswer, Finding> {
    let row = match question.disorder.as_str() {
        "" => None,
        key => Some(disorder(key).map_or_else(|| tracing::disorder(key), Ok)?),
    };
    let known = row.map(|row| row.latency).unwrap_or_default();
    // what the form was filled in with is not the keeper's own
    let own = |typed: Option<u32>, known: Option<u32>| typed.filter(|n| Some(*n) != known);
    let ask = Ask {
        cases: vec![CaseAsk {
            tag: question.case.clone(),
            seen_sick: question.seen,
            infectious_from: None,
        }],
        latency: DayRange {
            min: own(question.latency.min, known.min),
            max: own(question.latency.max, known.max),
        },
        ..Ask::of(&question.case, row, clock::now(office))
    };
    tracing::of_state(&office.state(), &ask)
}

/// The disorder with a key.
pub fn disorder(key: &str) -> Option<&'static DisorderRow> {
    let mut rows = Knowledge::embedded().disorders.iter();
    rows.find(|row| row.key == key)
}

/// The disorder that a hold on a palm speaks of: the first of the table with that reason that has the palm as a host.
pub fn suspected(record: &PalmRecord, today: Day) -> Option<&'static str> {
    let species = record.palm.species.as_str();
    let genus = species.split_whitespace().next().unwrap_or("");
    let host = |row: &DisorderRow, name: &str| row.hosts.iter().any(|host| host.name == name);
    let reasons: Vec<&str> = record
        .holds_on(today)
        .map(|hold| hold.reason.as_str())
        .collect();
    let held = |row: &&DisorderRow| {
        let mut kinds = model::knowledge::HoldKind::ALL.iter();
        kinds.any(|(kind, code)| row.hold == Some(*kind) && reasons.contains(code))
    };
    let rows = || Knowledge::embedded().disorders.iter().filter(held);
    let own = rows().find(|row| host(row, species));
    let own = own.or_else(|| rows().find(|row| host(row, genus)));
    own.map(|row| row.key.as_str())
}

/// Key, name, and whether it travels on blades; those that do first, then by name.
fn disorders(speaker: &Speaker) -> Vec<(String, String, bool)> {
    use model::knowledge::{Family, Spread};
    let rows = speaker.knowledge.disorders.iter();
    let mut all: Vec<(String, String, bool)> = rows
        .filter(|row| matches!(row.family, Family::Disease | Family::Pest))
        .map(|row| {
            let name = said_in(speaker, &row.name).to_owned();
            (row.key.clone(), name, row.spread.contains(&Spread::Blade))
        })
        .collect();
    all.sort_by(|a, b| b.2.cmp(&a.2).then_with(|| a.1.cmp(&b.1)));
    all
}

fn shown(speaker: &Speaker, office: &Office, answer: &TraceAnswer) -> Answer {
    Answer {
        first: first(speaker, answer),
        as_of: as_of(speaker, answer),
        summary: words::summary(speaker, answer),
        reckoned: words::reckoned(speaker, answer),
        sources_of_latency: speaker.cite(&answer.latency.sources),
        generations: words::generations(speaker, answer),
        sources: answer
            .sources
            .iter()
            .map(|one| words::row(speaker, one, true))
            .collect(),
        nearby: words::nearby(speaker, answer),
        lanes: draw::lanes(speaker, office, answer),
        plot: draw::plot(speaker, answer),
        findings: speaker.findings(&words::findings(answer)),
    }
}

/// A disorder that blades do not carry is told before anything else.
fn first(speaker: &Speaker, answer: &TraceAnswer) -> Option<String> {
    let code = match answer.travel {
        Travel::OnBlades => return None,
        Travel::NotOnBlades => "tracing-not-on-blades",
        Travel::Unknown => "tracing-spread-unknown",
        Travel::NotNamed => "tracing-not-named",
    };
    Some(speaker.say(code))
}

fn as_of(speaker: &Speaker, answer: &TraceAnswer) -> String {
    let when = clock::says(&speaker.measure, answer.as_of);
    let args = [
        ("when", when.into()),
        ("cuts", (answer.log.cuts as i64).into()),
        ("cleanings", (answer.log.cleanings as i64).into()),
        ("blades", (answer.log.blades as i64).into()),
    ];
    speaker.text("trace-as-of", &args)
}
