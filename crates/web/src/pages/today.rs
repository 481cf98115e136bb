//! `/`: what needs a person, worst first.

use super::{paging, rounds};
use crate::{App, Fault, Here, Reader, address, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::today::{self, AT_ONCE, NeedRow, TodayView};
use maud::{Markup, html};
use serde::Deserialize;

/// `/`.
pub fn router() -> Router<App> {
    Router::new().route("/", get(show))
}

#[derive(Deserialize)]
struct Asked {
    #[serde(default)]
    page: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let (speaker, shared) = (Speaker::new(reader.measure), app.clone());
    let number = asked.page.parse().unwrap_or(1);
    let view = app.ask(&reader, move |office| {
        if shared.standings.missing(office) <= AT_ONCE {
            shared.standings.fill(office);
        }
        today::view(&speaker, office, &shared.standings, number)
    });
    let view = view.await?;
    if view.pending.is_some() {
        app.read_in_background();
    }
    Ok(page(
        &reader,
        Here::Today,
        &reader.say("common-today"),
        body(&reader, &view),
    ))
}

fn body(reader: &Reader, view: &TodayView) -> Markup {
    html! {
        p.date { (view.date) }
        h1 { (reader.say("today-title")) }
        @if view.empty { (empty(reader)) } @else {
            p.lead data-testid="summary" { (view.summary) }
            @if let Some(pending) = &view.pending { p.pending role="status" { (pending) } }
            @if !view.rounds.is_empty() && view.paging.page == 1 {
                (rounds::style())
                section data-testid="rounds" {
                    h2 { (reader.say("today-rounds")) }
                    (rounds::rows(&view.rounds))
                }
                h2 { (reader.say("common-palms")) }
            }
            ol.needs { @for row in &view.rows { li class=(row.weight) data-code=(row.code) { (need(reader, row)) } } }
            (paging::links(reader, &view.paging, |n| address::with_query("/", &[("page", &n.to_string())])))
            @if !view.noticed.is_empty() {
                h2 { (reader.say("today-noticed")) }
                ul { @for line in &view.noticed { li { (line) } } }
            }
        }
    }
}

fn empty(reader: &Reader) -> Markup {
    html! {
        p.lead { (reader.say("today-empty")) }
        p.actions {
            a.button.primary href="/palms/new" { (reader.say("palms-new")) }
            a.button href="/import" { (reader.say("common-import")) }
        }
    }
}

fn need(reader: &Reader, row: &NeedRow) -> Markup {
    let more = [("n", (row.more.len() as i64).into())];
    html! {
        a.row href=(address::palm(&row.tag, "")) {
            span.weight { (reader.say(&format!("weight-{}", row.weight))) }
            span.who { strong.tag { (row.tag) } " " i { (row.species) } }
            @if !row.site.is_empty() { span.site { (row.site) } }
            span.text { (row.text) }
        }
        @if !row.more.is_empty() {
            details.why {
                summary { (reader.words.text("today-more", &more)) }
                ul { @for line in &row.more { li { (line) } } }
            }
        }
    }
}
