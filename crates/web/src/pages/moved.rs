//! `/moved`: palms moved lately, what was promised for each, and whether it holds.

use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::State;
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::moved::{self, MovedRow, MovedView};
use maud::{Markup, html};

/// `/moved`.
pub fn router() -> Router<App> {
    Router::new().route("/moved", get(show))
}

async fn show(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| moved::view(&speaker, office))
        .await?;
    let title = reader.say("moved-title");
    Ok(page(&reader, Here::Moved, &title, body(&reader, &view)))
}

/// The style sheet that only these pages need.
pub fn style() -> Markup {
    html! { link rel="stylesheet" href=(assets::address("moved.css")); }
}

fn body(reader: &Reader, view: &MovedView) -> Markup {
    let empty = view.rows.is_empty() && view.arrived.is_empty();
    html! {
        (style())
        h1 { (reader.say("moved-title")) }
        @if empty { p.lead { (reader.say("moved-empty")) } } @else {
            p.lead role="status" data-testid="summary" { (view.summary) }
        }
        p { (view.what) }
        p.actions { a.button href="/watering" { (reader.say("watering-title")) } " " a.button href="/selection" { (reader.say("moved-select-link")) } }
        @if let Some(more) = &view.more { p.pending { (more) } }
        (rows(reader, &view.rows))
        @if !view.arrived.is_empty() {
            h2 { (reader.say("moved-arrived")) }
            (rows(reader, &view.arrived))
        }
    }
}

fn rows(reader: &Reader, rows: &[MovedRow]) -> Markup {
    html! {
        @if !rows.is_empty() {
            ul.moved-list { @for row in rows { li class=(row.state) data-tag=(row.tag) data-state=(row.state) { (one(reader, row)) } } }
        }
    }
}

fn one(reader: &Reader, row: &MovedRow) -> Markup {
    html! {
        a.row href=(address::palm(&row.tag, "/move")) {
            span { strong.tag { (row.tag) } " " i { (row.species) } }
            span class={ "stand " (row.state) } { (row.state_words) }
        }
        @for trip in &row.trips { p data-code=(trip.code) { strong { (trip.text) } } }
        p.promise { (row.promise) }
        p.when-next { (row.next) }
        p.since { (row.since) @if !row.site.is_empty() { " · " (row.site) } " · " a href=(address::palm(&row.tag, "/owner")) { (reader.say("owner-link")) } }
        span.sr { (reader.say("moved-open")) }
    }
}
