//! What is known of a palm and of its species, each figure with how it is known.

use super::said::{Cited, Speaker};
use crate::watering::crown_across;
use model::knowledge::Named;
use model::species::{Armature, Habit, LeafForm, Range, SelfCleaning};
use model::{Basis, Day, Metres, Palm, Sourced, Species};

/// One figure.
#[derive(Clone, PartialEq, Debug)]
pub struct Fact {
    /// What it is.
    pub name: String,
    /// Its value with unit, or "unknown".
    pub value: String,
    /// Whether it is known at all.
    pub known: bool,
    /// How it is known, where that must be said: from memory, assumed, the keeper's own.
    pub mark: Option<String>,
    /// A remark on it.
    pub note: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// A figure by the key of its name; `None` is unknown.
pub(super) fn fact(speaker: &Speaker, name: &str, value: Option<String>) -> Fact {
    Fact {
        name: speaker.say(name),
        known: value.is_some(),
        value: value.unwrap_or_else(|| speaker.say("common-unknown")),
        mark: None,
        note: None,
        sources: Vec::new(),
    }
}

/// What the keeper wrote about a palm.
pub fn of_palm(speaker: &Speaker, palm: &Palm) -> Vec<Fact> {
    let m = speaker.measure;
    let date = |day: Option<Day>| day.map(|d| m.date(d));
    let length = |metres: Option<Metres>| metres.map(|x| m.length(x));
    let words = |text: &str| (!text.is_empty()).then(|| text.to_owned());
    let place = palm
        .position
        .map(|p| format!("{}, {}", m.number(p.lat, 5), m.number(p.lon, 5)));
    let own = |name, value: Option<String>| {
        let mark = value
            .is_some()
            .then(|| speaker.basis(Basis::Keeper))
            .flatten();
        Fact {
            mark,
            ..fact(speaker, name, value)
        }
    };
    let mut facts = vec![
        fact(speaker, "fact-site", words(&palm.site)),
        fact(speaker, "fact-stems", Some(m.count(palm.stems.into()))),
        fact(speaker, "fact-trunk", length(palm.trunk_height)),
        fact(speaker, "fact-crown-across", length(crown_across(palm))),
        fact(speaker, "fact-planted", date(palm.planted_on)),
        fact(speaker, "fact-moved", date(palm.moved_on)),
        fact(speaker, "fact-cleaned", date(palm.last_cleaned_on)),
        fact(speaker, "fact-over", words(&palm.over)),
        fact(speaker, "fact-wires", length(palm.wires)),
        fact(speaker, "fact-position", place),
    ];
    // the keeper's own figures are worth a line only where there are some
    facts.extend(
        palm.full_crown
            .map(|n| own("fact-live-leaves", Some(m.number(n, 0)))),
    );
    facts.extend(
        palm.fronds_per_year
            .map(|n| own("fact-per-year", Some(m.number(n, 1)))),
    );
    facts.extend(words(&palm.notes).map(|notes| fact(speaker, "fact-notes", Some(notes))));
    facts
}

/// How the palm's species was found, in words, where the name as written is not the accepted one.
pub fn named(speaker: &Speaker, written: &str) -> Option<String> {
    match speaker.knowledge.species_named(written) {
        Named::Exact(_) => None,
        Named::Synonym(s) => {
            Some(speaker.text("species-note-synonym", &[("name", s.name.clone().into())]))
        }
        Named::Near(names) => {
            Some(speaker.text("species-note-near", &[("names", names.join(", ").into())]))
        }
        Named::Unknown => Some(speaker.say("species-note-unknown")),
    }
}

/// What the tables say of a species.
pub fn of_species(speaker: &Speaker, species: &Species) -> Vec<Fact> {
    let m = speaker.measure;
    let length = |x: &Metres| m.length(*x);
    let yes = |x: &bool| speaker.say(if *x { "common-yes" } else { "common-no" });
    let say = |code: &str| speaker.say(code);
    let common = (!species.common.is_empty()).then(|| species.common.join(", "));
    vec![
        fact(speaker, "fact-common", common),
        row(
            speaker,
            species,
            "leaf_form",
            "fact-form",
            &species.leaf_form,
            |x| say(form(*x)),
        ),
        row(
            speaker,
            species,
            "habit",
            "fact-habit",
            &species.habit,
            |x| say(habit(*x)),
        ),
        row(
            speaker,
            species,
            "crownshaft",
            "fact-crownshaft",
            &species.crownshaft,
            yes,
        ),
        row(
            speaker,
            species,
            "self_cleaning",
            "fact-self-cleaning",
            &species.self_cleaning,
            |x| say(cleaning(*x)),
        ),
        armature(speaker, species),
        row(
            speaker,
            species,
            "live_leaves",
            "fact-live-leaves",
            &species.live_leaves,
            |x| range(speaker, x),
        ),
        row(
            speaker,
            species,
            "leaves_per_year",
            "fact-per-year",
            &species.leaves_per_year,
            |x| range(speaker, x),
        ),
        row(
            speaker,
            species,
            "leaf_length",
            "fact-leaf-length",
            &species.leaf_length,
            length,
        ),
        row(
            speaker,
            species,
            "max_height",
            "fact-max-height",
            &species.max_height,
            length,
        ),
        row(
            speaker,
            species,
            "trunk_diameter",
            "fact-thick",
            &species.trunk_diameter,
            |x| m.short_length(*x),
        ),
        row(
            speaker,
            species,
            "fusarium",
            "fact-fusarium",
            &species.fusarium,
            yes,
        ),
        row(
            speaker,
            species,
            "lethal_bronzing",
            "fact-bronzing",
            &species.lethal_bronzing,
            yes,
        ),
        row(
            speaker,
            species,
            "hardiness_c",
            "fact-cold",
            &species.hardiness_c,
            |x| m.temperature(*x),
        ),
    ]
}

fn row<T>(
    speaker: &Speaker,
    species: &Species,
    field: &str,
    name: &str,
    value: &Option<Sourced<T>>,
    words: impl Fn(&T) -> String,
) -> Fact {
    let Some(known) = value else {
        return fact(speaker, name, None);
    };
    Fact {
        mark: speaker.basis(known.basis),
        note: species.note(field).map(str::to_owned),
        sources: speaker.cite(&known.sources),
        ..fact(speaker, name, Some(words(&known.value)))
    }
}

fn armature(speaker: &Speaker, species: &Species) -> Fact {
    let fact = row(
        speaker,
        species,
        "armature",
        "fact-armature",
        &species.armature,
        |x| {
            speaker.say(match x {
                Armature::Unarmed => "armature-none",
                Armature::Armed => "armature-armed",
                Armature::Teeth => "armature-teeth",
                Armature::Spines => "armature-spines",
            })
        },
    );
    let note = (!species.armature_note.is_empty()).then(|| species.armature_note.clone());
    Fact {
        note: note.or(fact.note),
        ..fact
    }
}

fn range(speaker: &Speaker, range: &Range) -> String {
    let high = speaker.measure.number(range.high, 1);
    match range.low {
        None => speaker.text("measure-up-to", &[("n", high.into())]),
        Some(low) if low == range.high => high,
        Some(low) => {
            let low = speaker.measure.number(low, 1);
            speaker.text(
                "measure-range",
                &[("low", low.into()), ("high", high.into())],
            )
        }
    }
}

fn form(form: LeafForm) -> &'static str {
    match form {
        LeafForm::Pinnate => "form-pinnate",
        LeafForm::Bipinnate => "form-bipinnate",
        LeafForm::Palmate => "form-palmate",
        LeafForm::Costapalmate => "form-costapalmate",
    }
}

fn habit(habit: Habit) -> &'static str {
    match habit {
        Habit::Solitary => "habit-solitary",
        Habit::Clustering => "habit-clustering",
        Habit::Either => "habit-either",
    }
}

fn cleaning(cleaning: SelfCleaning) -> &'static str {
    match cleaning {
        SelfCleaning::Yes => "cleaning-yes",
        SelfCleaning::Partly => "cleaning-partly",
        SelfCleaning::No => "cleaning-no",
    }
}
