//! `/watering`: palms that want water today, this week, later; one tap notes that a palm was watered.

use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::watering::{self, Group, WaterRow, WateringView};
use maud::{Markup, html};
use serde::Deserialize;

/// `/watering`.
pub fn router() -> Router<App> {
    Router::new().route("/watering", get(show))
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    site: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let site = asked.site.clone();
    let (view, ids) = app
        .ask(&reader, move |office| {
            let view = watering::view(&speaker, office, &site);
            let rows: usize = view.groups.iter().map(|group| group.rows.len()).sum();
            let ids: Vec<String> = (0..rows).map(|_| office.new_id().0.to_string()).collect();
            (view, ids)
        })
        .await?;
    let title = reader.say("watering-title");
    let body = body(&reader, &view, &asked.site, &ids);
    Ok(page(&reader, Here::Watering, &title, body))
}

/// The style sheet that only these pages need.
pub fn style() -> Markup {
    html! {
        link rel="stylesheet" href=(assets::address("moved.css"));
        link rel="stylesheet" href=(assets::address("watering.css"));
    }
}

/// The list, narrowed to a site or not.
pub fn list_address(site: &str) -> String {
    address::with_query("/watering", &[("site", site)])
}

fn body(reader: &Reader, view: &WateringView, site: &str, ids: &[String]) -> Markup {
    let mut ids = ids.iter();
    html! {
        (style())
        h1 { (reader.say("watering-title")) }
        @if view.groups.is_empty() { p.lead { (reader.say("watering-empty")) } } @else {
            p.lead role="status" data-testid="summary" { (view.summary) }
            @if let Some(total) = &view.total { p.total data-testid="total" { (total) } }
        }
        @if !view.sites.is_empty() { (sites(reader, view, site)) }
        @for line in &view.weather { p.pending { (line) " " a href="/import" { (reader.say("watering-bring-weather")) } } }
        @if let Some(more) = &view.more { p.pending { (more) } }
        @for group in &view.groups { (one_group(reader, group, site, &mut ids)) }
        p.small { (view.what) }
    }
}

fn sites(reader: &Reader, view: &WateringView, site: &str) -> Markup {
    html! {
        nav.sites aria-label=(reader.say("watering-sites")) {
            a href="/watering" aria-current=[site.is_empty().then_some("page")] { (reader.say("watering-all-sites")) }
            @for own in &view.sites {
                a href=(list_address(&own.name)) aria-current=[own.here.then_some("page")] { (own.name) span.n { (own.today) } }
            }
        }
    }
}

fn one_group<'i>(
    reader: &Reader,
    group: &Group,
    site: &str,
    ids: &mut impl Iterator<Item = &'i String>,
) -> Markup {
    html! {
        section data-group=(group.key) {
            h2 { (group.title) }
            ul.water-list {
                @for row in &group.rows {
                    li class=(row.state) data-tag=(row.tag) data-state=(row.state) {
                        (one(reader, row, site, ids.next().map_or("", String::as_str)))
                    }
                }
            }
        }
    }
}

fn one(reader: &Reader, row: &WaterRow, site: &str, id: &str) -> Markup {
    html! {
        div.words {
            a.row href=(address::palm(&row.tag, "/water")) {
                span { strong.tag { (row.tag) } " " i { (row.species) } }
                span.sr { ": " (reader.say("watering-open")) }
            }
            @if let Some(give) = &row.give { p.give { (give) } }
            p.when { (row.next) }
            p.soft { (row.rhythm) }
            p.soft { (row.last) @if !row.site.is_empty() && site.is_empty() { " · " (row.site) } }
        }
        (tap(&row.tag, id, row.tap.as_deref(), &row.tap_words, Some(site)))
    }
}

/// One tap notes a watering of today. `back`: to the list of this site; else to the palm's page.
pub fn tap(tag: &str, id: &str, litres: Option<&str>, words: &str, back: Option<&str>) -> Markup {
    html! {
        form.tap method="post" action=(address::palm(tag, "/water")) {
            input type="hidden" name="id" value=(id);
            @if let Some(litres) = litres { input type="hidden" name="litres" value=(litres); }
            @if let Some(site) = back {
                input type="hidden" name="back" value="watering";
                input type="hidden" name="back_site" value=(site);
            }
            button type="submit" data-testid="tap" { (words) }
        }
    }
}
