//! Feedings that were noted, and whether the crown answered.

use super::super::said::Speaker;
use super::line;
use crate::feeding::{Fed, Noted};
use crate::words::Lang;
use care::feeding::Answer;

/// A feeding that was noted.
#[derive(Clone, PartialEq, Debug)]
pub struct LogLine {
    /// Its entry, to correct or take back.
    pub entry: String,
    /// The day.
    pub date: String,
    /// Product, amount, ground.
    pub what: String,
    /// Against what.
    pub against: String,
    /// Free words.
    pub notes: String,
    /// `not-looked`, `too-early`, `not-looked-for`, `answering`, `same`, `worse`; nothing for maintenance.
    pub verdict: Option<&'static str>,
    /// The answer in words.
    pub answer: Vec<String>,
}

pub(super) fn view(speaker: &Speaker, fed: &Fed) -> Vec<LogLine> {
    fed.noted.iter().map(|own| row(speaker, own)).collect()
}

fn row(speaker: &Speaker, own: &Noted) -> LogLine {
    let m = &speaker.measure;
    let product = match speaker.knowledge.product(&own.what.product) {
        Some(row) => speaker.texts(&row.name).to_owned(),
        None => own.what.product.clone(),
    };
    let mass = own.what.grams.map(|grams| m.mass(grams / 1000.0));
    let over = own
        .what
        .area_m2
        .map(|area| speaker.text("feed-over", &[("area", m.area(area).into())]));
    let parts: Vec<String> = [Some(product), mass, over].into_iter().flatten().collect();
    LogLine {
        entry: own.entry.clone(),
        date: m.date(own.day),
        what: parts.join(", "),
        against: line::name(speaker, &own.what.against),
        notes: own.what.notes.clone(),
        verdict: own.answer.as_ref().map(|answer| answer.verdict.key()),
        answer: own
            .answer
            .as_ref()
            .map(|answer| answered(speaker, answer))
            .unwrap_or_default(),
    }
}

/// The verdict, and what it rests on.
fn answered(speaker: &Speaker, answer: &Answer) -> Vec<String> {
    let m = &speaker.measure;
    let mut said = vec![speaker.say(&format!("feed-answer-{}", answer.verdict.key()))];
    if let Some((then, now)) = answer.live {
        let args = [("then", m.about(then).into()), ("now", m.about(now).into())];
        said.push(speaker.text("feed-answer-live", &args));
    }
    if answer.new_fronds > 0 {
        let args = [("n", i64::from(answer.new_fronds).into())];
        said.push(speaker.text("feed-answer-new", &args));
    }
    let named = [
        ("feed-answer-before", &answer.before),
        ("feed-answer-still", &answer.still),
        ("feed-answer-gone", &answer.gone),
    ];
    for (code, signs) in named.into_iter().filter(|(_, signs)| !signs.is_empty()) {
        said.push(speaker.text(code, &[("signs", signs_named(speaker, signs).into())]));
    }
    said
}

fn signs_named(speaker: &Speaker, signs: &[String]) -> String {
    let name = |key: &String| match speaker.knowledge.sign(key) {
        Some(row) if speaker.words().lang() == Lang::Es => row.name.es.clone(),
        Some(row) => row.name.en.clone(),
        None => key.clone(),
    };
    signs.iter().map(name).collect::<Vec<_>>().join(", ")
}
