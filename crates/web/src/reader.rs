//! Who is looking: language and units, from cookies (or the browser's language).

use crate::App;
use axum::extract::FromRequestParts;
use axum::http::header::{ACCEPT_LANGUAGE, COOKIE};
use axum::http::request::Parts;
use axum::http::{HeaderMap, HeaderName};
use desk::measure::{Measure, Units};
use desk::words::{Lang, Words};
use std::convert::Infallible;

/// How to speak to the person behind a request. Cheap to clone.
#[derive(Clone, Debug)]
pub struct Reader {
    /// Words in their language.
    pub words: Words,
    /// Quantities in their units.
    pub measure: Measure,
    /// Whether the ledger is the demo, which every page says.
    pub demo: bool,
    /// Path and query asked for, so that the settings can lead back.
    pub at: String,
}

impl Reader {
    /// Words without arguments.
    pub fn say(&self, code: &str) -> String {
        self.words.say(code)
    }
}

impl FromRequestParts<App> for Reader {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Reader, Infallible> {
        let lang = cookie(&parts.headers, "lang").and_then(Lang::parse);
        let lang = lang
            .or_else(|| asked_for(&parts.headers))
            .unwrap_or_default();
        let units = cookie(&parts.headers, "units")
            .and_then(Units::parse)
            .unwrap_or_default();
        let words = Words::new(lang);
        let at = parts
            .uri
            .path_and_query()
            .map_or("/", |p| p.as_str())
            .to_owned();
        Ok(Reader {
            words,
            measure: Measure::new(units, words),
            demo: app.office.is_demo(),
            at,
        })
    }
}

/// The value of one cookie, as it was sent.
fn cookie<'h>(headers: &'h HeaderMap, name: &str) -> Option<&'h str> {
    let pairs = text(headers, COOKIE)?.split(';');
    pairs
        .filter_map(|pair| pair.trim().split_once('='))
        .find(|(n, _)| *n == name)
        .map(|(_, v)| v)
}

/// The first language of the browser that we speak; browsers list them in order of liking.
fn asked_for(headers: &HeaderMap) -> Option<Lang> {
    text(headers, ACCEPT_LANGUAGE)?
        .split(',')
        .find_map(|tag| Lang::parse(tag.split(';').next()?))
}

fn text(headers: &HeaderMap, name: HeaderName) -> Option<&str> {
    headers.get(name)?.to_str().ok()
}
