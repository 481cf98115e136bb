//! `/blades`: the rack; `/blades/{tag}`: one blade with its log (where the code on its label leads).

use super::said;
use crate::badge::{badge, icon};
use crate::{App, Fault, Here, Reader, address, page};
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::blades::log::LogLine;
use desk::views::blades::{self, BladeRow, BladeView, BladesView};
use maud::{Markup, html};

/// So many lines of a log are shown without a tap.
const NEWEST: usize = 20;

/// `/blades` and `/blades/{tag}`.
pub fn router() -> Router<App> {
    Router::new()
        .route("/blades", get(all))
        .route("/blades/{tag}", get(one))
}

async fn all(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| blades::view(&speaker, office))
        .await?;
    let title = reader.say("common-blades");
    Ok(page(&reader, Here::Blades, &title, rack(&reader, &view)))
}

async fn one(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
) -> Result<Markup, Fault> {
    let (speaker, wanted) = (Speaker::new(reader.measure), tag.clone());
    let view = app
        .ask(&reader, move |office| {
            blades::one(&speaker, office, &wanted)
        })
        .await?;
    let view = view.ok_or_else(|| no_blade(&reader, &tag))?;
    Ok(page(
        &reader,
        Here::Blades,
        &view.row.tag,
        blade(&reader, &view),
    ))
}

/// No blade carries this tag.
pub fn no_blade(reader: &Reader, tag: &str) -> Fault {
    let args = [("tag", tag.to_owned().into())];
    Fault::new(
        reader,
        StatusCode::NOT_FOUND,
        "error-not-found-blade",
        &args,
    )
}

/// The four places of blades: the rack, the log, the bath, the trace.
pub fn places(reader: &Reader, here: &str) -> Markup {
    const TO: [(&str, &str); 4] = [
        ("/blades", "blades-place-rack"),
        ("/cutting", "blades-place-cutting"),
        ("/cleaning", "blades-place-cleaning"),
        ("/trace", "blades-place-trace"),
    ];
    html! {
        nav.places aria-label=(reader.say("blades-places")) {
            @for (href, words) in TO {
                a href=(href) aria-current=[(href == here).then_some("page")] { (reader.say(words)) }
            }
        }
    }
}

fn rack(reader: &Reader, view: &BladesView) -> Markup {
    html! {
        (places(reader, "/blades"))
        div.head {
            h1 { (reader.say("common-blades")) }
            a.button href="/blades/new" { (reader.say("blades-new")) }
        }
        @if view.rows.is_empty() { p.lead { (reader.say("blades-empty")) } } @else {
            p.lead data-testid="summary" { (view.summary) }
            ul.rack { @for row in &view.rows { li data-tag=(row.tag) { (line(row)) } } }
        }
        p.actions {
            (super::rotation::link(reader))
            a.button href="/sheets" { (reader.say("blades-labels")) }
            a.button href="/clauses.pdf" { (reader.say("blades-clauses")) }
        }
        @if !view.retired.is_empty() {
            details.why {
                summary { (reader.say("blades-retired")) }
                ul { @for (tag, why) in &view.retired { li { a href=(address::blade(tag, "")) { (tag) } ": " (why) } } }
            }
        }
        (said::closed(reader, "blades-noticed", &view.noticed))
    }
}

fn line(row: &BladeRow) -> Markup {
    html! {
        a.row href=(address::blade(&row.tag, "")) {
            strong.tag { (row.tag) }
            span.kind { (row.kind) }
            (badge(&row.badge))
            span.who {
                @if !row.kit.is_empty() { (row.kit) }
                @if !row.kit.is_empty() && !row.holder.is_empty() { " · " }
                (row.holder)
            }
            span.last { (row.last) }
        }
    }
}

fn blade(reader: &Reader, view: &BladeView) -> Markup {
    let row = &view.row;
    html! {
        (places(reader, ""))
        header.head {
            div {
                h1 { (row.tag) }
                p.kind {
                    (row.kind)
                    @if !row.kit.is_empty() { " · " (row.kit) }
                    @if !row.holder.is_empty() { " · " (row.holder) }
                }
            }
        }
        @if let Some(why) = &view.retired {
            p.note data-testid="retired" { (reader.words.text("blades-is-retired", &[("why", why.clone().into())])) }
        } @else {
            section class={ "stands " (row.badge.key) } data-testid="stands" data-state=(row.badge.key) {
                (icon(row.badge.key))
                div {
                    p.headline { (row.badge.text) }
                    @if row.badge.text != view.stands { p { (view.stands) } }
                    @if let Some(lent) = &view.lent { p { (lent) } }
                    @if !view.since_clean.is_empty() && row.badge.key != "clean" { (since(reader, &view.since_clean)) }
                }
            }
            (actions(reader, view))
        }
        @if !view.notes.is_empty() { p.own-words { (view.notes) } }
        (log(reader, &view.log))
        (said::closed(reader, "blades-noticed", &view.noticed))
        @if view.retired.is_none() {
            nav.aside aria-label=(reader.say("blades-more")) {
                a.button href=(address::blade(&row.tag, "/edit")) { (reader.say("blades-edit")) }
                @if view.lent.is_none() { a.button href=(address::blade(&row.tag, "/lend")) { (reader.say("blades-lend")) } }
                a.button href=(address::blade(&row.tag, "/retire")) { (reader.say("blades-retire")) }
            }
        }
    }
}

fn since(reader: &Reader, tags: &[String]) -> Markup {
    html! {
        p {
            (reader.say("blades-since-clean")) " "
            @for (n, tag) in tags.iter().enumerate() {
                @if n > 0 { ", " }
                a href=(address::palm(tag, "")) { (tag) }
            }
        }
    }
}

fn actions(reader: &Reader, view: &BladeView) -> Markup {
    let tag = view.row.tag.as_str();
    html! {
        p.actions {
            @if view.lent.is_some() {
                a.button.primary href=(address::blade(tag, "/back")) { (reader.say("blades-back")) }
            } @else {
                a.button.primary href=(address::with_query("/cutting", &[("blade", tag)])) { (reader.say("blades-cut-with")) }
                a.button href=(address::with_query("/cleaning", &[("blade", tag)])) { (reader.say("blades-clean")) }
            }
        }
    }
}

fn log(reader: &Reader, lines: &[LogLine]) -> Markup {
    let (newest, older) = lines.split_at(lines.len().min(NEWEST));
    html! {
        section.blade-log aria-labelledby="log" {
            h2 #log { (reader.say("blades-log")) }
            @if lines.is_empty() { p { (reader.say("blades-log-empty")) } }
            (entries(newest, reader))
            @if !older.is_empty() {
                details.why { summary { (reader.say("palm-history-older")) } (entries(older, reader)) }
            }
        }
    }
}

fn entries(lines: &[LogLine], reader: &Reader) -> Markup {
    html! {
        ol.log {
            @for line in lines {
                li class=(line.key) {
                    (icon(line.key))
                    div {
                        p {
                            span.date { (line.when) } " "
                            @match &line.palm {
                                Some(tag) => a href=(address::palm(tag, "")) { (line.what) },
                                None => strong { (line.what) },
                            }
                        }
                        @if !line.detail.is_empty() { p.detail { (line.detail) } }
                        @if !line.despite.is_empty() {
                            p.despite { strong { (reader.say("blades-despite")) } " " (line.despite) }
                        }
                    }
                }
            }
        }
    }
}
