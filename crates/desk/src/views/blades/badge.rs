//! How a blade stands: one word, one shape, one colour; and in a sentence.

use super::palm_tag;
use crate::clock;
use crate::office::Office;
use crate::views::history::hold_reason;
use crate::views::said::Speaker;
use care::clean::Ready;
use model::Moment;

/// How a blade stands, short. The key picks shape and colour; the words say the same.
#[derive(Clone, PartialEq, Debug)]
pub struct Badge {
    /// `clean`, `same`, `short`, `unknown`, `dirty`, `nothing`, `spent`, `blocked`, `lent`.
    pub key: &'static str,
    /// The words.
    pub text: String,
}

impl Badge {
    /// For an answer of the rules.
    pub fn of(speaker: &Speaker, office: &Office, ready: &Ready, now: Moment) -> Badge {
        let (key, text) = say(speaker, office, ready, now, "blade-is");
        Badge { key, text }
    }

    /// In other hands.
    pub fn lent(speaker: &Speaker, to: &str) -> Badge {
        Badge {
            key: "lent",
            text: speaker.text("blade-is-lent", &[("to", to.to_owned().into())]),
        }
    }
}

/// The same in a sentence, with what to do.
pub fn sentence(speaker: &Speaker, office: &Office, ready: &Ready, now: Moment) -> String {
    say(speaker, office, ready, now, "blade-says").1
}

/// The key of an answer.
pub fn key(ready: &Ready) -> &'static str {
    match ready {
        Ready::Clean { .. } => "clean",
        Ready::SamePalm => "same",
        Ready::Short { .. } => "short",
        Ready::UnknownCleaning => "unknown",
        Ready::NotCleaned { .. } => "dirty",
        Ready::Blocked { .. } => "blocked",
        Ready::NothingKnown => "nothing",
        Ready::BathSpent { .. } => "spent",
    }
}

fn say(
    speaker: &Speaker,
    office: &Office,
    ready: &Ready,
    now: Moment,
    words: &str,
) -> (&'static str, String) {
    let key = key(ready);
    let when = |at: Moment| clock::says_on(&speaker.measure, at, clock::local_day(now));
    let tag = |palm| palm_tag(&office.state(), palm);
    let text = match ready {
        Ready::Clean { since } => {
            speaker.text(&format!("{words}-clean"), &[("when", when(*since).into())])
        }
        Ready::Short {
            missing_min: Some(missing),
        } => {
            let args = [("n", missing.ceil().into())];
            speaker.text(&format!("{words}-short"), &args)
        }
        Ready::Short { missing_min: None } => speaker.say(&format!("{words}-weak")),
        Ready::NotCleaned { last: Some(palm) } => {
            speaker.text(&format!("{words}-dirty"), &[("tag", tag(*palm).into())])
        }
        Ready::NotCleaned { last: None } => speaker.say(&format!("{words}-back")),
        Ready::Blocked { palm, at, reason } => {
            let args = [
                ("tag", tag(*palm).into()),
                ("when", when(*at).into()),
                ("reason", lower(&reason_words(speaker, reason)).into()),
            ];
            speaker.text(&format!("{words}-blocked"), &args)
        }
        Ready::BathSpent { mixed, .. } => {
            speaker.text(&format!("{words}-spent"), &[("when", when(*mixed).into())])
        }
        Ready::SamePalm | Ready::UnknownCleaning | Ready::NothingKnown => {
            speaker.say(&format!("{words}-{key}"))
        }
    };
    (key, text)
}

/// A hold's reason or a disorder's name.
fn reason_words(speaker: &Speaker, reason: &str) -> String {
    let mut rows = speaker.knowledge.disorders.iter();
    match rows.find(|row| row.key == reason) {
        Some(row) => super::said_in(speaker, &row.name).to_owned(),
        None => hold_reason(speaker, reason),
    }
}

/// In the middle of a sentence.
pub fn lower(words: &str) -> String {
    let mut letters = words.chars();
    let first = letters.next().into_iter().flat_map(char::to_lowercase);
    first.chain(letters).collect()
}
