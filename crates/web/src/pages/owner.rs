//! `/o/{secret}`: a palm's sheet for its owner, without account. No address leads from it to anything else.
//!
//! A secret that is unknown, revoked or past its day, and any other address below `/o/`, get one and the same answer.

mod sheet;

pub use sheet::{legend, points, rests_on};

pub use sheet::{body, style};

use super::sheets::{own_address, print};
use crate::{App, Fault, Reader, assets};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::http::header::{CACHE_CONTROL, HeaderName, HeaderValue, REFERRER_POLICY};
use axum::http::{HeaderMap, Method, StatusCode};
use axum::response::{IntoResponse, Response};
use axum::routing::{any, get};
use desk::measure::{Measure, Units};
use desk::views::{Speaker, owner};
use desk::words::{Lang, Words};
use maud::{DOCTYPE, Markup, html};
use model::PalmRecord;
use paper::Size;
use serde::Deserialize;
use std::sync::Arc;

/// Everything below this is for owners; see `guard`.
pub const BELOW: &str = "/o/";
/// The file behind a link.
const PDF: &str = "sheet.pdf";

/// `/o/...` and the keeper's `/palm/{tag}/owner.pdf`.
pub fn router() -> Router<App> {
    Router::new()
        .merge(owners())
        .route("/palm/{tag}/owner.pdf", get(printed))
}

/// What owners may reach, and nothing else.
fn owners() -> Router<App> {
    Router::new()
        .route("/o", any(closed_door))
        .route("/o/", any(closed_door))
        .route("/o/{*path}", any(show))
}

/// How the sheet is wanted; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
pub struct How {
    lang: String,
    units: String,
    paper: String,
}

impl How {
    /// The reader with the language and units of the address.
    fn spoken(&self, mut reader: Reader) -> Reader {
        let lang = Lang::parse(&self.lang).unwrap_or(reader.words.lang());
        let units = Units::parse(&self.units).unwrap_or(reader.measure.units);
        reader.words = Words::new(lang);
        reader.measure = Measure::new(units, reader.words);
        reader
    }
}

async fn closed_door(reader: Reader) -> Response {
    closed(&reader)
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    method: Method,
    headers: HeaderMap,
    Path(path): Path<String>,
    Query(how): Query<How>,
) -> Response {
    let (secret, file) = path.split_once('/').unwrap_or((&path, ""));
    let read = matches!(method, Method::GET | Method::HEAD);
    let opened = match read && (file.is_empty() && !path.ends_with('/') || file == PDF) {
        true => opened(&app, &reader, secret).await,
        false => None,
    };
    let Some(record) = opened else {
        return closed(&reader);
    };
    let reader = how.spoken(reader);
    let made = match file {
        PDF => {
            let link = format!("{}{BELOW}{secret}", own_address(&headers));
            pdf(&app, &reader, &how, record, Some(link)).await
        }
        _ => page(&app, &reader, record).await,
    };
    private(made.into_response())
}

async fn opened(app: &App, reader: &Reader, secret: &str) -> Option<Arc<PalmRecord>> {
    let secret = secret.to_owned();
    let found = app.ask(reader, move |office| desk::owner::opened(office, &secret));
    found.await.ok().flatten()
}

async fn page(app: &App, reader: &Reader, record: Arc<PalmRecord>) -> Result<Response, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(reader, move |office| owner::view(&speaker, office, &record))
        .await?
        .ok_or_else(|| Fault::broken(reader))?;
    let content = html! {
        (body(reader, &view))
        (switches(reader))
    };
    Ok(bare(reader, &view.title, content).into_response())
}

/// Language, units and the PDF, all of them on this very address.
fn switches(reader: &Reader) -> Markup {
    let (lang, units) = (reader.words.lang(), reader.measure.units);
    let here = reader.at.split('?').next().unwrap_or_default();
    let to = |lang: Lang, units: Units| format!("?lang={}&units={}", lang.tag(), units.key());
    html! {
        nav.switches aria-label=(reader.say("owner-page-lang")) {
            @for own in Lang::ALL {
                a.button href=(to(own, units)) hreflang=(own.tag()) aria-current=[(own == lang).then_some("true")] {
                    (reader.say(&format!("common-language-{}", own.tag())))
                }
            }
            @for own in Units::ALL {
                a.button href=(to(lang, own)) aria-current=[(own == units).then_some("true")] {
                    (reader.say(&format!("common-units-{}-short", own.key())))
                }
            }
            a.button.primary href={ (here) "/" (PDF) (to(lang, units)) } data-testid="pdf" { (reader.say("owner-as-pdf")) }
        }
    }
}

/// The one answer to every link that opens nothing.
fn closed(reader: &Reader) -> Response {
    let title = reader.say("owner-closed-title");
    let content = html! {
        h1 { (title) }
        p.lead { (reader.say("owner-closed")) }
    };
    private((StatusCode::NOT_FOUND, bare(reader, &title, content)).into_response())
}

/// Not kept by browsers and proxies, not listed by search engines, its address told to nobody.
pub fn private(mut response: Response) -> Response {
    let heads = response.headers_mut();
    let mut set = |name, value| heads.insert(name, HeaderValue::from_static(value));
    set(CACHE_CONTROL, "no-store, private");
    set(
        HeaderName::from_static("x-robots-tag"),
        "noindex, nofollow, noarchive",
    );
    set(REFERRER_POLICY, "no-referrer");
    response
}

/// A page without the bar: nothing of the register can be reached from it.
fn bare(reader: &Reader, title: &str, content: Markup) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(reader.words.lang().tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="robots" content="noindex, nofollow, noarchive";
                meta name="referrer" content="no-referrer";
                title { (title) }
                link rel="stylesheet" href=(assets::address("spearleaf.css"));
                (style())
                link rel="icon" type="image/svg+xml" href=(assets::address("leaf.svg"));
            }
            body.owner-page {
                @if reader.demo { aside.demo data-testid="demo" { (reader.say("common-demo")) } }
                main #content tabindex="-1" { (content) }
                footer { p { (reader.say("common-closing")) } }
            }
        }
    }
}

async fn printed(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    Query(how): Query<How>,
) -> Result<Response, Fault> {
    let wanted = tag.clone();
    let record = app
        .ask(&reader, move |office| {
            office.state().by_tag(&wanted).cloned()
        })
        .await?
        .ok_or_else(|| Fault::no_palm(&reader, &tag))?;
    let reader = how.spoken(reader);
    pdf(&app, &reader, &how, record, None).await
}

async fn pdf(
    app: &App,
    reader: &Reader,
    how: &How,
    record: Arc<PalmRecord>,
    link: Option<String>,
) -> Result<Response, Fault> {
    let size = Size::parse(&how.paper).unwrap_or(Size::usual(reader.measure.units));
    let tag = record.palm.tag.clone();
    print(app, reader, size.key(), "owner", move |office, leaf| {
        let view = owner::view(&Speaker::new(leaf.measure), office, &record)
            .ok_or(paper::Error::NoSuch(tag))?;
        Ok(paper::owner_sheet(leaf, &view, link.as_deref())?)
    })
    .await
}
