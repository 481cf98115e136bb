//! `/feeding`: palms that may be short of something or are fed; what may be done for them now.

use super::watering::style;
use crate::{App, Fault, Here, Reader, address, page};
use axum::extract::State;
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::feeding::{FeedGroup, FeedingList, ListRow, list};
use maud::{Markup, html};

/// `/feeding`.
pub fn router() -> Router<App> {
    Router::new().route("/feeding", get(show))
}

async fn show(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| list(&speaker, office))
        .await?;
    let title = reader.say("feed-list-title");
    let body = body(&reader, &title, &view);
    Ok(page(&reader, Here::Feeding, &title, body))
}

fn body(reader: &Reader, title: &str, view: &FeedingList) -> Markup {
    html! {
        (style())
        h1 { (title) }
        @if view.groups.is_empty() { p.lead { (reader.say("feed-list-empty")) } } @else {
            p.lead role="status" data-testid="summary" { (view.summary) }
        }
        @for site in &view.rules_unknown { (rules(reader, site)) }
        @for group in &view.groups { (one_group(reader, group)) }
        p.small { (reader.say("feed-list-what")) }
    }
}

/// That nobody entered the local rules of a site, and where to.
pub fn rules(reader: &Reader, site: &str) -> Markup {
    let words = [("site", site.to_owned().into())];
    html! {
        p.pending {
            (reader.words.text("feed-list-rules", &words)) " "
            a href=(address::site(site, "/edit")) { (reader.say("feed-list-rules-enter")) }
        }
    }
}

fn one_group(reader: &Reader, group: &FeedGroup) -> Markup {
    html! {
        section data-group=(group.key) {
            h2 { (group.title) }
            ul.water-list {
                @for row in &group.rows { li class=(edge(group.key)) data-tag=(row.tag) { (one(reader, row)) } }
            }
        }
    }
}

/// The edge of a row, as in the list of watering.
fn edge(group: &str) -> &'static str {
    match group {
        "worse" => "due",
        "now" => "soon",
        _ => "later",
    }
}

fn one(reader: &Reader, row: &ListRow) -> Markup {
    html! {
        div.words {
            a.row href=(address::palm(&row.tag, "/feeding")) {
                span { strong.tag { (row.tag) } " " i { (row.species) } }
                span.sr { ": " (reader.say("feed-list-open")) }
            }
            @for line in &row.lines {
                p data-against=(line.key) data-wants=(line.wants) {
                    (line.name) ": " @if line.wants { strong { (line.what) } } @else { span.soft { (line.what) } }
                }
            }
            @if let Some(answer) = &row.answer { p.soft { (answer) } }
            @if !row.site.is_empty() { p.soft { (row.site) } }
        }
    }
}
