//! Where trade talk and published work, or two publications, do not agree.

use super::super::said::{Cited, Speaker};
use model::knowledge::DisagreementRow;

/// Both sides, and what the tool does.
#[derive(Clone, PartialEq, Debug)]
pub struct DisagreementView {
    /// Its key.
    pub key: String,
    /// The question.
    pub question: String,
    /// The two sides.
    pub sides: [SideView; 2],
    /// What the tool does until it is settled.
    pub we: String,
    /// The disorders it is about: keys and names; empty if about cutting or cleaning as such.
    pub disorders: Vec<(String, String)>,
}

/// What one side says.
#[derive(Clone, PartialEq, Debug)]
pub struct SideView {
    /// What it says.
    pub text: String,
    /// Who says so; a side without a source is common practice.
    pub sources: Vec<Cited>,
    /// How it is known, where no source is named.
    pub mark: Option<String>,
}

/// All of them, in the order of the table.
pub fn all(speaker: &Speaker) -> Vec<DisagreementView> {
    speaker
        .knowledge
        .disagreements
        .iter()
        .map(|row| view(speaker, row))
        .collect()
}

/// Those about any of these disorders.
pub fn about(speaker: &Speaker, disorders: &[&str]) -> Vec<DisagreementView> {
    let touched = |row: &&DisagreementRow| {
        row.disorders
            .iter()
            .any(|d| disorders.contains(&d.as_str()))
    };
    let rows = speaker.knowledge.disagreements.iter().filter(touched);
    rows.map(|row| view(speaker, row)).collect()
}

fn view(speaker: &Speaker, row: &DisagreementRow) -> DisagreementView {
    let side = |text, sources: &[model::SourceKey]| SideView {
        text: speaker.texts(text).to_owned(),
        sources: speaker.cite(sources),
        mark: sources.is_empty().then(|| speaker.say("basis-practice")),
    };
    let named = |key: &String| {
        (
            key.clone(),
            super::super::judgement::disorder_name(speaker, key),
        )
    };
    DisagreementView {
        key: row.key.clone(),
        question: speaker.texts(&row.question).to_owned(),
        sides: [
            side(&row.one, &row.one_sources),
            side(&row.other, &row.other_sources),
        ],
        we: speaker.texts(&row.we).to_owned(),
        disorders: row.disorders.iter().map(named).collect(),
    }
}
