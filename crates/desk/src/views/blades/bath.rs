//! Cleaning: agents of the table, baths in use, and the blades.

use super::{BladeRow, log, row, said_in};
use crate::clock;
use crate::forms::{Offer, baths_in_use, mixes};
use crate::office::Office;
use crate::views::said::{Cited, Said, Speaker};
use care::clean;
use model::knowledge::{CleanerRow, Works};
use model::state::{BathRecord, BladeRecord};
use model::{BladeKind, Finding, Moment, State};

/// What the page of cleaning shows.
#[derive(Clone, PartialEq, Debug)]
pub struct CleaningView {
    /// Blades to clean: those that need it first.
    pub blades: Vec<BladeRow>,
    /// Mixes to choose, those stated to work on palms first.
    pub mixes: Vec<MixChoice>,
    /// Agents of the table, with all that is said of them.
    pub agents: Vec<Agent>,
    /// Baths in use, mixed last first.
    pub baths: Vec<BathRow>,
    /// Cautions of every cleaning.
    pub cautions: Vec<Said>,
    /// Kits, for the field.
    pub kits: Vec<String>,
    /// Now, milliseconds since 1970, for the script.
    pub now_ms: i64,
    /// Now, as a field of date and hour wants it.
    pub now_typed: String,
}

/// An agent of the cleaner table, with all that is said of it.
#[derive(Clone, PartialEq, Debug)]
pub struct Agent {
    /// Its key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// Everything the table says of it.
    pub rows: Vec<CleanerLine>,
    /// Cautions, each once.
    pub cautions: Vec<String>,
}

/// A mix of the table to choose.
#[derive(Clone, PartialEq, Debug)]
pub struct MixChoice {
    /// Its value in the form.
    pub value: String,
    /// The agent's name.
    pub name: String,
    /// How it is mixed.
    pub mix: String,
    /// Minutes of contact, in words.
    pub minutes: String,
    /// A source states it to work on palms.
    pub sound: bool,
    /// It is mixed in a bath: not a flame, nor a new blade.
    pub in_bath: bool,
}

/// One thing a source says of an agent.
#[derive(Clone, PartialEq, Debug)]
pub struct CleanerLine {
    /// `yes`, `partly`, `no`.
    pub works: &'static str,
    /// Mix, contact, what for, in words.
    pub text: String,
    /// How it is known, where that must be said.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// A bath in use.
#[derive(Clone, PartialEq, Debug)]
pub struct BathRow {
    /// Id of the entry that mixed it.
    pub id: String,
    /// Its value in the form.
    pub value: String,
    /// Agent, strength and kit in words.
    pub name: String,
    /// When it was mixed, how old it is, how many it served.
    pub age: String,
    /// Why it is to be changed now; nothing if it may serve on.
    pub change: Option<Said>,
}

/// The page.
pub fn view(speaker: &Speaker, office: &Office) -> CleaningView {
    let (state, now) = (office.state(), clock::now(office));
    let mut blades: Vec<&BladeRecord> = state
        .serving()
        .filter(|b| b.lent.is_none())
        .map(|b| &**b)
        .collect();
    blades.sort_by(|a, b| (&a.blade.kit, &a.blade.tag).cmp(&(&b.blade.kit, &b.blade.tag)));
    let mut rows: Vec<BladeRow> = blades
        .iter()
        .map(|b| row(speaker, office, b, None, now))
        .collect();
    rows.sort_by_key(|row| row.badge.key == "clean");
    let mut kits: Vec<String> = blades.iter().map(|b| b.blade.kit.clone()).collect();
    kits.retain(|kit| !kit.is_empty());
    kits.sort();
    kits.dedup();
    CleaningView {
        blades: rows,
        mixes: mix_choices(speaker),
        agents: agents(speaker),
        baths: baths_in_use(&state, now)
            .into_iter()
            .map(|bath| bath_row(speaker, office, bath, now))
            .collect(),
        cautions: speaker.findings(&cautions(&state, speaker)),
        kits,
        now_ms: now.0,
        now_typed: clock::typed(now),
    }
}

/// What to mind at the bath: of the agents that work and of what is on the rack, each once, the most dangerous first.
fn cautions(state: &State, speaker: &Speaker) -> Vec<Finding> {
    let mut kinds: Vec<BladeKind> = state.serving().map(|blade| blade.blade.kind).collect();
    kinds.sort_unstable();
    kinds.dedup();
    let mut all: Vec<Finding> = Vec::new();
    for mix in mixes().iter().filter(|mix| mix.sound) {
        for kind in kinds.iter().chain(&[BladeKind::HandSaw]) {
            for caution in clean::cautions(*kind, &mix.agent, speaker.knowledge) {
                if !all.iter().any(|other| other.code == caution.code) {
                    all.push(caution);
                }
            }
        }
    }
    all.sort_by_key(|caution| std::cmp::Reverse(caution.severity));
    all
}

/// Agents in the order of the table.
pub fn agents(speaker: &Speaker) -> Vec<Agent> {
    let rows = &speaker.knowledge.cleaners;
    let mut keys: Vec<&str> = Vec::new();
    for row in rows {
        if !keys.contains(&row.agent.as_str()) {
            keys.push(&row.agent);
        }
    }
    keys.into_iter()
        .map(|key| {
            agent(
                speaker,
                key,
                rows.iter().filter(|r| r.agent == key).collect(),
            )
        })
        .collect()
}

fn agent(speaker: &Speaker, key: &str, rows: Vec<&CleanerRow>) -> Agent {
    let mut cautions: Vec<String> = rows
        .iter()
        .map(|row| said_in(speaker, &row.caution).to_owned())
        .filter(|text| !text.is_empty())
        .collect();
    cautions.sort();
    cautions.dedup();
    Agent {
        key: key.to_owned(),
        name: log::agent_name(speaker, key),
        rows: rows.iter().map(|row| line(speaker, row)).collect(),
        cautions,
    }
}

/// The mixes of the table as choices.
pub fn mix_choices(speaker: &Speaker) -> Vec<MixChoice> {
    mixes().iter().map(|offer| choice(speaker, offer)).collect()
}

fn choice(speaker: &Speaker, offer: &Offer) -> MixChoice {
    let measure = &speaker.measure;
    let minutes = offer.minutes.map(|n| measure.number(n, 1));
    MixChoice {
        value: offer.value.clone(),
        name: log::agent_name(speaker, &offer.agent),
        mix: offer
            .row
            .map_or_else(String::new, |row| said_in(speaker, &row.mix).to_owned()),
        minutes: match &minutes {
            Some(n) => speaker.text("blades-contact", &[("n", n.clone().into())]),
            None => speaker.say("blades-contact-unknown"),
        },
        sound: offer.sound,
        in_bath: offer.strength_pct.is_some(),
    }
}

fn line(speaker: &Speaker, row: &CleanerRow) -> CleanerLine {
    let measure = &speaker.measure;
    let contact = match (row.contact_min, row.contact_max) {
        (Some(low), Some(high)) if low < high => {
            let args = [
                ("low", measure.number(low, 1).into()),
                ("high", measure.number(high, 1).into()),
            ];
            speaker.text("cleaning-contact-range", &args)
        }
        (Some(low), _) => speaker.text("blades-contact", &[("n", measure.number(low, 1).into())]),
        (None, _) => speaker.say("blades-contact-unknown"),
    };
    let works = match row.works {
        Works::Yes => "yes",
        Works::Partly => "partly",
        Works::No => "no",
    };
    let args = [
        ("mix", said_in(speaker, &row.mix).to_owned().into()),
        ("contact", contact.into()),
    ];
    CleanerLine {
        works,
        text: speaker.text(&format!("cleaning-row-{works}"), &args),
        basis: if row.indirect {
            Some(speaker.say("cleaning-indirect"))
        } else {
            speaker.basis(row.basis)
        },
        sources: speaker.cite(&row.sources),
    }
}

fn bath_row(speaker: &Speaker, office: &Office, bath: &BathRecord, now: Moment) -> BathRow {
    let measure = &speaker.measure;
    let strength = bath.bath.strength_pct.map(|pct| measure.number(pct, 2));
    let mut name = log::agent_name(speaker, &bath.bath.agent);
    if let Some(pct) = &strength {
        name = format!(
            "{name}, {}",
            speaker.text("blades-strength", &[("n", pct.clone().into())])
        );
    }
    if !bath.bath.kit.is_empty() {
        name = format!("{name} ({})", bath.bath.kit);
    }
    let minutes = (now.0 - bath.mixed.0) / 60_000;
    let served = bath.served.iter().filter(|(at, _)| *at <= now).count() as i64;
    let args = [
        (
            "when",
            clock::says_on(measure, bath.mixed, office.today()).into(),
        ),
        ("age", age(speaker, minutes).into()),
        ("n", served.into()),
    ];
    BathRow {
        id: bath.id.0.to_string(),
        value: format!("bath:{}", bath.id.0),
        name,
        age: speaker.text("cleaning-bath-age", &args),
        change: super::change_now(speaker, bath, now),
    }
}

/// "1 h 20 min".
pub fn age(speaker: &Speaker, minutes: i64) -> String {
    let args = [("h", (minutes / 60).into()), ("min", (minutes % 60).into())];
    speaker.text(
        if minutes < 60 {
            "cleaning-minutes"
        } else {
            "cleaning-hours"
        },
        &args,
    )
}
