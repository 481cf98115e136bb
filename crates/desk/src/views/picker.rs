//! The signs to look for, place by place on the palm, as the inspection form offers them.

use super::said::Speaker;
use crate::forms::{ABSENT, SEEN, SIGN_FIELD, Typed};
use care::SIGNS;
use model::knowledge::{Part, SignRow};

/// A place on the palm with its signs.
#[derive(Clone, PartialEq, Debug)]
pub struct Place {
    /// Key of the place: a file word of [`Part::ALL`], or `other`.
    pub key: &'static str,
    /// Its drawing; `None` for signs that no table has.
    pub part: Option<Part>,
    /// Its name.
    pub name: String,
    /// How many of its signs were seen, or looked for.
    pub answered: usize,
    /// Whether it is shown unfolded: something was answered, or a sign of it was asked for.
    pub open: bool,
    /// The signs.
    pub signs: Vec<Offered>,
}

/// A sign to look for.
#[derive(Clone, PartialEq, Debug)]
pub struct Offered {
    /// Its key.
    pub key: String,
    /// What is seen.
    pub name: String,
    /// How to look; empty for a sign without a row.
    pub how: String,
    /// How long the look takes; empty for a sign without a row.
    pub takes: String,
    /// What was noted: `seen`, `absent`, or empty.
    pub noted: &'static str,
}

/// All places, in the order of the palm from the spear down; last, if there are any, signs that no table has. `asked` is the key of a sign that somebody wants to look for now.
pub fn view(speaker: &Speaker, typed: &Typed, asked: &str) -> Vec<Place> {
    let mut places: Vec<Place> = Part::ALL
        .iter()
        .map(|(part, key)| {
            let rows = speaker
                .knowledge
                .signs
                .iter()
                .filter(|row| row.part == *part);
            let signs = rows.map(|row| offered(speaker, row, typed)).collect();
            let name = speaker.say(&format!("place-{key}"));
            place(key, Some(*part), name, signs, asked)
        })
        .collect();
    let name = speaker.say("place-other");
    places.push(place("other", None, name, others(speaker, typed), asked));
    places.retain(|place| !place.signs.is_empty());
    places
}

fn place(
    key: &'static str,
    part: Option<Part>,
    name: String,
    signs: Vec<Offered>,
    asked: &str,
) -> Place {
    let answered = signs.iter().filter(|sign| !sign.noted.is_empty()).count();
    Place {
        key,
        part,
        name,
        answered,
        open: answered > 0 || signs.iter().any(|sign| sign.key == asked),
        signs,
    }
}

fn offered(speaker: &Speaker, row: &SignRow, typed: &Typed) -> Offered {
    Offered {
        key: row.key.clone(),
        name: speaker.texts(&row.name).to_owned(),
        how: speaker.texts(&row.how).to_owned(),
        takes: minutes(speaker, row.minutes),
        noted: noted(typed, &row.key),
    }
}

/// What the rules of the cut plan listen to and no table has, and keys that came with an older look.
fn others(speaker: &Speaker, typed: &Typed) -> Vec<Offered> {
    let told = typed
        .below(SIGN_FIELD)
        .filter(|(_, value)| !value.is_empty());
    let mut keys: Vec<&str> = SIGNS.into_iter().chain(told.map(|(key, _)| key)).collect();
    let mut met = std::collections::BTreeSet::new();
    keys.retain(|key| speaker.knowledge.sign(key).is_none() && met.insert(*key));
    let offer = |key: &str| Offered {
        key: key.to_owned(),
        name: name_of(speaker, key),
        how: String::new(),
        takes: String::new(),
        noted: noted(typed, key),
    };
    keys.into_iter().map(offer).collect()
}

fn noted(typed: &Typed, key: &str) -> &'static str {
    let value = typed.get(&format!("{SIGN_FIELD}{key}"));
    [SEEN, ABSENT]
        .into_iter()
        .find(|v| *v == value)
        .unwrap_or("")
}

/// The name of a sign: from its row, from the words of the rules, or the key itself.
pub fn name_of(speaker: &Speaker, key: &str) -> String {
    if let Some(row) = speaker.knowledge.sign(key) {
        return speaker.texts(&row.name).to_owned();
    }
    let code = format!("sign-{key}");
    if speaker.words().has(&code) {
        speaker.say(&code)
    } else {
        key.to_owned()
    }
}

/// "about 2 min", "under a minute".
pub fn minutes(speaker: &Speaker, minutes: f64) -> String {
    if minutes < 1.0 {
        return speaker.say("signs-takes-under");
    }
    let n = speaker
        .measure
        .number(minutes, if minutes < 10.0 { 1 } else { 0 });
    speaker.text("signs-takes", &[("n", n.into())])
}
