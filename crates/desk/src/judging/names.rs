//! What the tables call things, for files.

use crate::words::Lang;
use model::Knowledge;
use model::knowledge::Texts;

/// A text in a language.
pub fn text(texts: &Texts, lang: Lang) -> &str {
    match lang {
        Lang::En => &texts.en,
        Lang::Es => &texts.es,
    }
}

/// The name of a disorder; its key where the table does not have it.
pub fn name_of(disorder: &'static str, lang: Lang) -> &'static str {
    let row = Knowledge::embedded().disorder(disorder);
    row.map_or(disorder, |row| text(&row.name, lang))
}

/// How long a look for a sign takes, minutes.
pub fn minutes_of(sign: &str) -> Option<f64> {
    Knowledge::embedded().sign(sign).map(|row| row.minutes)
}
