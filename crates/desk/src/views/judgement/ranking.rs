//! One disorder of the ranking, with what speaks for and against it.

use super::super::picker;
use super::super::said::{Cited, Speaker};
use care::judge::{Ranked, Speaks, WeightOf};

/// So many things are named for a disorder, and so many against it.
const CHIPS: usize = 6;
/// A factor nearer to 1 than this is not worth a chip (assumed).
const SLIGHT: f64 = 1.05;

/// A disorder with its probability.
#[derive(Clone, PartialEq, Debug)]
pub struct RankView {
    /// Its key.
    pub key: &'static str,
    /// Its name.
    pub name: String,
    /// Key of its family.
    pub family: &'static str,
    /// Key of the probability in words.
    pub level: &'static str,
    /// The probability in words.
    pub words: String,
    /// The probability as a number.
    pub percent: String,
    /// The length of its bar, percent.
    pub length: f64,
    /// What speaks for it, strongest first.
    pub for_it: Vec<Chip>,
    /// What speaks against it, strongest first.
    pub against: Vec<Chip>,
    /// What would settle it.
    pub confirm: String,
    /// Which sample to take, and how; empty if no laboratory can tell.
    pub sample: String,
    /// What to do first.
    pub first: String,
    /// How the row is known, where that must be said.
    pub mark: Option<String>,
    /// Its sources.
    pub sources: Vec<Cited>,
}

/// One thing that speaks for or against.
#[derive(Clone, PartialEq, Debug)]
pub struct Chip {
    /// What: "seen: sharp green centre".
    pub text: String,
    /// How much: "×12" for, "÷4" against.
    pub factor: String,
}

/// A rank in words.
pub fn view(speaker: &Speaker, rank: &Ranked) -> RankView {
    let row = speaker.knowledge.disorder(rank.disorder);
    let text = |of: fn(&model::knowledge::DisorderRow) -> &model::knowledge::Texts| {
        row.map_or_else(String::new, |row| speaker.texts(of(row)).to_owned())
    };
    RankView {
        key: rank.disorder,
        name: super::disorder_name(speaker, rank.disorder),
        family: row.map_or("", |row| super::super::disorders::family_key(row.family)),
        level: rank.level,
        words: speaker.say(&format!("level-{}", rank.level)),
        percent: speaker.measure.percent(rank.probability),
        length: (rank.probability * 1000.0).round() / 10.0,
        for_it: chips(speaker, &rank.for_it),
        against: chips(speaker, &rank.against),
        confirm: text(|row| &row.confirm),
        sample: text(|row| &row.sample),
        first: text(|row| &row.first),
        mark: row.and_then(|row| speaker.basis(row.basis)),
        sources: row
            .map(|row| speaker.cite(&row.sources))
            .unwrap_or_default(),
    }
}

pub fn chips(speaker: &Speaker, speaks: &[Speaks]) -> Vec<Chip> {
    let told = speaks
        .iter()
        .filter(|s| s.factor >= SLIGHT || s.factor <= 1.0 / SLIGHT);
    told.take(CHIPS).map(|s| chip(speaker, s)).collect()
}

fn chip(speaker: &Speaker, speaks: &Speaks) -> Chip {
    let sign = |code: &str, key: &str| {
        speaker.text(code, &[("sign", picker::name_of(speaker, key).into())])
    };
    let text = match speaks.what {
        WeightOf::Seen(key) => sign("speaks-seen", key),
        WeightOf::NotThere(key) => sign("speaks-absent", key),
        WeightOf::Host => speaker.say("speaks-host"),
        WeightOf::Season => speaker.say("speaks-season"),
        WeightOf::Move => speaker.say("speaks-move"),
        WeightOf::Frost => speaker.say("speaks-frost"),
        WeightOf::Storm => speaker.say("speaks-storm"),
        WeightOf::Counts => speaker.say("speaks-counts"),
    };
    Chip {
        text,
        factor: factor(speaker, speaks.factor),
    }
}

/// A factor on the odds as a person says it: times for, divided by against.
fn factor(speaker: &Speaker, factor: f64) -> String {
    let (sign, of) = if factor >= 1.0 {
        ('×', factor)
    } else {
        ('÷', 1.0 / factor.max(1e-6))
    };
    if of > 999.0 {
        return format!("{sign}999+");
    }
    format!(
        "{sign}{}",
        speaker.measure.number(of, if of < 10.0 { 1 } else { 0 })
    )
}
