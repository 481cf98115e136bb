//! The page of cautions: what the tables say before any work, and what is assumed.

use super::case::DEFAULT_VISIT_DAYS;
use super::needs::{LONG_DAYS, LONG_MOVED_DAYS, MOVED_DAYS};
use super::said::{Cited, Speaker};
use super::standing::{LIMIT, TIDY};
use crate::words::Lang;
use model::knowledge::SafetyRow;

/// One caution of the tables.
#[derive(Clone, PartialEq, Debug)]
pub struct Caution {
    /// What it says.
    pub text: String,
    /// Its figure with unit as the source gives it, if it has one.
    pub figure: Option<String>,
    /// How it is known, where that must be said.
    pub mark: Option<String>,
    /// When it holds.
    pub condition: String,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct CautionsView {
    /// In the order of the table.
    pub cautions: Vec<Caution>,
    /// What is assumed, in sentences.
    pub assumed: Vec<String>,
}

/// All cautions.
pub fn view(speaker: &Speaker) -> CautionsView {
    CautionsView {
        cautions: speaker
            .knowledge
            .safety
            .iter()
            .map(|row| caution(speaker, row))
            .collect(),
        assumed: assumed(speaker),
    }
}

fn caution(speaker: &Speaker, row: &SafetyRow) -> Caution {
    let figure = match row.value.as_str() {
        "" => None,
        "unknown" => Some(speaker.say("common-unknown")),
        value => Some(format!("({})", format!("{value} {}", row.unit).trim())),
    };
    let (text, condition) = match speaker.words().lang() {
        Lang::Es => (&row.text_es, &row.condition_es),
        Lang::En => (&row.text, &row.condition),
    };
    Caution {
        text: text.clone(),
        figure,
        mark: speaker.basis(row.basis),
        condition: condition.clone(),
        sources: speaker.cite(&row.sources),
    }
}

fn assumed(speaker: &Speaker) -> Vec<String> {
    let time = |days: i32| speaker.measure.duration(f64::from(days));
    let due = [
        ("tidy", i64::from(TIDY.0).into()),
        ("tidyshare", speaker.measure.percent(TIDY.1).into()),
        ("limit", i64::from(LIMIT.0).into()),
        ("limitshare", speaker.measure.percent(LIMIT.1).into()),
    ];
    let looks = [
        ("long", time(LONG_DAYS).into()),
        ("short", time(LONG_MOVED_DAYS).into()),
        ("moved", time(MOVED_DAYS).into()),
    ];
    vec![
        speaker.say("about-assumed-prior"),
        speaker.say("about-assumed-spread"),
        speaker.text("about-assumed-due", &due),
        speaker.text("about-assumed-looks", &looks),
        speaker.text(
            "about-assumed-visit",
            &[("visit", time(DEFAULT_VISIT_DAYS).into())],
        ),
    ]
}
