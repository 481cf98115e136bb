//! `/sheets`: which sheets there are, and what each wants to know.

use super::own_address;
use crate::{App, Fault, Here, Reader, page};
use axum::extract::State;
use axum::http::HeaderMap;
use axum::{Router, routing::get};
use maud::{Markup, html};
use paper::Size;

/// `/sheets`.
pub fn router() -> Router<App> {
    Router::new().route("/sheets", get(show))
}

async fn show(State(app): State<App>, reader: Reader, headers: HeaderMap) -> Result<Markup, Fault> {
    let groups = app
        .ask(&reader, |office| paper::groups(&office.state()))
        .await?;
    let base = own_address(&headers);
    let title = reader.say("sheets-title");
    let body = html! {
        h1 { (title) }
        p.lead { (reader.say("sheets-lead")) }
        @if groups.blades > 0 {
            h2 { (reader.say("sheets-blades")) }
            (labels(&reader, &base, "blades", ("kit", "sheets-kit"), &groups.kits))
        }
        @if groups.palms > 0 {
            h2 { (reader.say("sheets-palms")) }
            (labels(&reader, &base, "palms", ("site", "sheets-site"), &groups.sites))
        }
        h2 { (reader.say("sheets-clauses")) }
        p { (reader.say("sheets-clauses-about")) }
        form.sheet method="get" action="/clauses.pdf" {
            (sizes(&reader, "clauses"))
            button.primary type="submit" { (reader.say("sheets-make")) }
        }
    };
    Ok(page(&reader, Here::Elsewhere, &title, body))
}

fn labels(
    reader: &Reader,
    base: &str,
    what: &str,
    (name, word): (&str, &str),
    groups: &[String],
) -> Markup {
    let id = |field: &str| format!("{what}-{field}");
    html! {
        form.sheet method="get" action="/labels.pdf" data-testid={ "labels-" (what) } {
            input type="hidden" name="what" value=(what);
            @if groups.len() > 1 {
                div.field {
                    label for=(id(name)) { (reader.say(word)) }
                    select id=(id(name)) name=(name) {
                        option value="" { (reader.say("sheets-all")) }
                        @for group in groups { option value=(group) { (group) } }
                    }
                }
            }
            div.field {
                label for=(id("base")) { (reader.say("sheets-base")) }
                p.hint { (reader.say("sheets-base-hint")) }
                @if stays_here(base) { p.hint { strong { (reader.say("sheets-base-here")) } } }
                input id=(id("base")) name="base" type="url" value=(base) required;
            }
            (sizes(reader, what))
            button.primary type="submit" { (reader.say("sheets-make")) }
        }
    }
}

fn sizes(reader: &Reader, what: &str) -> Markup {
    let id = format!("{what}-paper");
    let usual = Size::usual(reader.measure.units);
    html! {
        div.field {
            label for=(id) { (reader.say("sheets-paper")) }
            select id=(id) name="paper" {
                @for size in Size::ALL {
                    option value=(size.key()) selected[size == usual] { (reader.say(&format!("sheets-paper-{}", size.key()))) }
                }
            }
        }
    }
}

/// Whether an address leads to this machine from this machine only.
pub(crate) fn stays_here(base: &str) -> bool {
    let host = base.split_once("://").map_or(base, |(_, rest)| rest);
    ["localhost", "127.", "[::1]"]
        .iter()
        .any(|own| host.starts_with(own))
}
