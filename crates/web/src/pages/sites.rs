//! `/sites` and `/site/{name}`; `/crews` and `/crew/{name}`: where work is done, and who does it.

use super::palm::facts;
use super::{owners, palms};
use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::crews::{self, CrewRow, CrewView, CrewsView};
use desk::views::owner_summary::Who;
use desk::views::sites::{self, SiteRow, SiteView, SitesView};
use maud::{Markup, html};

/// The four pages.
pub fn router() -> Router<App> {
    Router::new()
        .route("/sites", get(all))
        .route("/site/{name}", get(one))
        .route("/crews", get(all_crews))
        .route("/crew/{name}", get(one_crew))
}

async fn all(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| sites::view(&speaker, office))
        .await?;
    let title = reader.say("sites-title");
    Ok(page(&reader, Here::Sites, &title, list(&reader, &view)))
}

async fn one(
    State(app): State<App>,
    reader: Reader,
    Path(name): Path<String>,
) -> Result<Markup, Fault> {
    let (speaker, standings) = (Speaker::new(reader.measure), app.standings.clone());
    let wanted = name.clone();
    let view = app
        .ask(&reader, move |office| {
            sites::one(&speaker, office, &standings, &wanted)
        })
        .await?;
    let view = view.ok_or_else(|| no_site(&reader, &name))?;
    Ok(page(&reader, Here::Sites, &name, site(&reader, &view)))
}

async fn all_crews(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| crews::view(&speaker, office))
        .await?;
    let title = reader.say("crews-title");
    Ok(page(
        &reader,
        Here::Sites,
        &title,
        crews_list(&reader, &view),
    ))
}

async fn one_crew(
    State(app): State<App>,
    reader: Reader,
    Path(name): Path<String>,
) -> Result<Markup, Fault> {
    let (speaker, wanted) = (Speaker::new(reader.measure), name.clone());
    let view = app
        .ask(&reader, move |office| crews::one(&speaker, office, &wanted))
        .await?;
    let view = view.ok_or_else(|| no_crew(&reader, &name))?;
    Ok(page(&reader, Here::Sites, &name, crew(&reader, &view)))
}

/// Nobody knows a site of this name.
pub fn no_site(reader: &Reader, name: &str) -> Fault {
    not_found(reader, "error-not-found-site", name)
}

/// Nobody knows a crew of this name.
pub fn no_crew(reader: &Reader, name: &str) -> Fault {
    not_found(reader, "error-not-found-crew", name)
}

fn not_found(reader: &Reader, code: &'static str, name: &str) -> Fault {
    let args = [("name", name.to_owned().into())];
    Fault::new(reader, StatusCode::NOT_FOUND, code, &args)
}

/// The style sheet that only these pages need.
pub fn style() -> Markup {
    html! { link rel="stylesheet" href=(assets::address("sites.css")); }
}

/// The three places: sites, crews and owners.
pub fn places(reader: &Reader, here: &str) -> Markup {
    const TO: [(&str, &str); 3] = [
        ("/sites", "sites-title"),
        ("/crews", "crews-title"),
        ("/owners", "owners-title"),
    ];
    html! {
        nav.places aria-label=(reader.say("sites-title")) {
            @for (href, words) in TO {
                a href=(href) aria-current=[(href == here).then_some("page")] { (reader.say(words)) }
            }
        }
    }
}

fn list(reader: &Reader, view: &SitesView) -> Markup {
    html! {
        (style())
        (places(reader, "/sites"))
        div.head {
            h1 { (reader.say("sites-title")) }
            a.button href="/sites/new" { (reader.say("sites-new")) }
        }
        p.lead role="status" data-testid="summary" { (view.summary) }
        p { (reader.say("sites-what")) }
        ul.site-list { @for row in &view.rows { li class=(row.state) data-site=(row.name) data-state=(row.state) { (row_of(row)) } } }
    }
}

fn row_of(row: &SiteRow) -> Markup {
    html! {
        a.row href=(address::site(&row.name, "")) {
            strong.name { (row.name) }
            span.count { (row.palms) }
        }
        @if !row.owner.is_empty() { p.owner { (row.owner) } }
        @if !row.hours.is_empty() { p.hours { (row.hours) } }
        @if !row.state_words.is_empty() { p.state { (row.state_words) } }
    }
}

fn site(reader: &Reader, view: &SiteView) -> Markup {
    let name = view.row.name.as_str();
    let edit = if view.described {
        "sites-edit"
    } else {
        "sites-describe"
    };
    html! {
        (style())
        (places(reader, ""))
        div.head {
            h1 { (name) }
            a.button.primary[!view.described] href=(address::site(name, "/edit")) { (reader.say(edit)) }
        }
        p.lead {
            (view.row.palms)
            @if !view.row.hours.is_empty() { " · " (view.row.hours) }
            @if !view.row.state_words.is_empty() { " · " strong.state.{ (view.row.state) } { (view.row.state_words) } }
        }
        p.actions { a.button href=(summary_of(&view.row)) { (reader.say("owners-link")) } }
        @if !view.described { p.note { (reader.say("sites-not-described")) } }
        @if !view.notes.is_empty() { p.own-words { (view.notes) } }
        @if view.described {
            section.facts aria-labelledby="facts" {
                h2 #facts { (reader.say("sites-facts")) }
                (facts::list(reader, &view.facts))
            }
            (closed(reader, view))
            (rules(reader, view))
        }
        @if !view.palms.is_empty() {
            section aria-labelledby="palms" {
                h2 #palms { (reader.say("sites-palms-head")) }
                (palms::list(reader, &view.palms))
                @if view.more {
                    p { a.button href=(address::with_query("/palms", &[("site", name)])) { (reader.say("sites-palms-all")) } }
                }
            }
        }
    }
}

/// The summary that tells of a site: its owner's, or its own where no owner is named.
fn summary_of(row: &SiteRow) -> String {
    owners::summary(&match row.owner.trim() {
        "" => Who::Site(row.name.clone()),
        owner => Who::Owner(owner.to_owned()),
    })
}

fn closed(reader: &Reader, view: &SiteView) -> Markup {
    html! {
        section aria-labelledby="closed" {
            h2 #closed { (reader.say("sites-closed-head")) }
            @if view.closed.is_empty() { p { (reader.say("sites-closed-none")) } } @else {
                ul.spells {
                    @for row in &view.closed {
                        li class=(row.key) data-state=(row.key) {
                            strong { (row.days) }
                            @if row.key == "now" { " " span.mark { (reader.say("sites-closed-now")) } }
                            @if row.key == "past" { " " span.mark { (reader.say("sites-closed-past")) } }
                            @if !row.why.is_empty() { " · " (row.why) }
                        }
                    }
                }
            }
        }
    }
}

fn rules(reader: &Reader, view: &SiteView) -> Markup {
    html! {
        @if !view.rules.is_empty() {
            section aria-labelledby="rules" {
                h2 #rules { (reader.say("sites-rules-head")) }
                ul.spells {
                    @for row in &view.rules {
                        li.now[row.now] {
                            strong { (row.words) }
                            @if row.now { " " span.mark { (reader.say("sites-rule-now")) } }
                            @if !row.rule.is_empty() { " · " (row.rule) }
                        }
                    }
                }
            }
        }
    }
}

fn crews_list(reader: &Reader, view: &CrewsView) -> Markup {
    html! {
        (style())
        (places(reader, "/crews"))
        div.head {
            h1 { (reader.say("crews-title")) }
            a.button href="/crews/new" { (reader.say("crews-new")) }
        }
        p { (reader.say("crews-what")) }
        @if view.rows.is_empty() { p.lead { (reader.say("crews-empty")) } }
        (crew_rows(&view.rows))
        @if !view.gone.is_empty() {
            details.why { summary { (reader.say("crews-gone")) } (crew_rows(&view.gone)) }
        }
    }
}

fn crew_rows(rows: &[CrewRow]) -> Markup {
    html! {
        @if !rows.is_empty() {
            ul.site-list {
                @for row in rows {
                    li.open.gone[row.gone] data-crew=(row.name) {
                        a.row href=(address::crew(&row.name, "")) {
                            strong.name { (row.name) }
                            span.count { (row.people) }
                        }
                        @if !row.hours.is_empty() { p.hours { (row.hours) } }
                        @if !row.skills.is_empty() { p.owner { (row.skills) } }
                    }
                }
            }
        }
    }
}

fn crew(reader: &Reader, view: &CrewView) -> Markup {
    let name = view.row.name.as_str();
    html! {
        (style())
        (places(reader, ""))
        div.head {
            h1 { (name) }
            a.button href=(address::crew(name, "/edit")) { (reader.say("crews-edit")) }
        }
        @if view.row.gone { p.note data-testid="gone" { (reader.say("crews-is-gone")) } }
        @if !view.notes.is_empty() { p.own-words { (view.notes) } }
        section.facts aria-labelledby="facts" {
            h2 #facts { (reader.say("sites-facts")) }
            (facts::list(reader, &view.facts))
        }
    }
}
