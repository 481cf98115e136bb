//! `/disorders`: what ails palms; `/disorders/{key}`: one of them; `/disagreements`: where views differ.

use super::palm::lines;
use super::said;
use crate::{App, Fault, Here, Reader, drawn, page};
use axum::extract::{Path, Query};
use axum::http::StatusCode;
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::disorders::{
    self, DisagreementView, DisorderLine, DisorderView, DisordersView, SignLine,
};
use maud::{Markup, html};
use serde::Deserialize;

/// The three pages.
pub fn router() -> Router<App> {
    Router::new()
        .route("/disorders", get(list))
        .route("/disorders/{key}", get(show))
        .route("/disagreements", get(disagreements))
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    on: String,
}

async fn list(reader: Reader, Query(asked): Query<Asked>) -> Markup {
    let view = disorders::view(&Speaker::new(reader.measure), &asked.on);
    let body = html! {
        h1 { (reader.say("disorders-title")) }
        p.lead { (reader.say("disorders-intro")) }
        (filter(&reader, &view))
        p data-testid="shown" { (shown(&reader, &view)) }
        @for family in &view.families {
            section aria-labelledby={ "family-" (family.key) } {
                h2 id={ "family-" (family.key) } { (family.name) }
                ul.disorders { @for row in &family.rows { (line(&reader, row)) } }
            }
        }
        p { a.button href="/disagreements" { (reader.say("disagreements-title")) } }
    };
    page(
        &reader,
        Here::Disorders,
        &reader.say("common-disorders"),
        body,
    )
}

fn filter(reader: &Reader, view: &DisordersView) -> Markup {
    html! {
        form.search method="get" action="/disorders" role="search" {
            label for="on" { (reader.say("disorders-for")) }
            p.small #on-hint { (reader.say("disorders-for-hint")) }
            div.ask {
                input #on type="search" name="on" value=(view.asked) autocomplete="off" aria-describedby="on-hint";
                button type="submit" { (reader.say("disorders-show")) }
            }
        }
    }
}

fn shown(reader: &Reader, view: &DisordersView) -> Markup {
    let n = ("n", (view.shown as i64).into());
    html! {
        @if view.unknown { (reader.words.text("disorders-host-unknown", &[("name", view.asked.clone().into())])) " " }
        @match &view.host {
            Some(host) => {
                (reader.words.text("disorders-shown", &[n, ("host", host.clone().into())])) ". "
                a.button href="/disorders" { (reader.say("disorders-all")) }
            }
            None => (reader.words.text("disorders-shown-all", &[n])),
        }
    }
}

fn line(reader: &Reader, row: &DisorderLine) -> Markup {
    html! {
        li {
            a.row href={ "/disorders/" (row.key) } {
                strong.name { (row.name) }
                span.flags {
                    @if row.hold { span.flag.hold { (reader.say("disorders-hold")) } }
                    @if row.blade { span.flag { (reader.say("disorders-blade")) } }
                    @if let Some(host) = &row.host { span.flag { (host) } }
                }
                span.about { (row.about) }
            }
        }
    }
}

async fn show(reader: Reader, Path(key): Path<String>) -> Result<Markup, Fault> {
    let view = disorders::disorder(&Speaker::new(reader.measure), &key);
    let none = || Fault::new(&reader, StatusCode::NOT_FOUND, "disorder-no-such", &[]);
    let view = view.ok_or_else(none)?;
    Ok(page(
        &reader,
        Here::Disorders,
        &view.name,
        one(&reader, &view),
    ))
}

fn one(reader: &Reader, view: &DisorderView) -> Markup {
    html! {
        article.disorder {
            p.small { (view.family) }
            h1 { (view.name) }
            p.lead { (view.about) }
            @if let Some(mark) = &view.mark { p.basis { (mark) } }
            @if let Some((title, what)) = &view.hold {
                div.hold-banner role="note" {
                    p.headline { (reader.say("disorder-hold")) }
                    p { strong { (title) } }
                    (lines(what))
                }
            }
            dl.lines {
                @if !view.first.is_empty() { dt { (reader.say("disorder-first")) } dd { (view.first) } }
                @if !view.never.is_empty() { dt { (reader.say("disorder-never")) } dd { (view.never) } }
                dt { (reader.say("disorder-confirm")) } dd { (view.confirm) }
                dt { (reader.say("disorder-sample")) }
                @if view.sample.is_empty() { dd.unknown { (reader.say("disorder-no-sample")) } } @else { dd { (view.sample) } }
            }
            (signs(reader, &view.signs))
            (figures(reader, view))
            @if !view.disagree.is_empty() {
                h2 { (reader.say("disagreements-title")) }
                p { (reader.say("disagreements-intro")) }
                @for one in &view.disagree { (disagreement(reader, one, false)) }
            }
            h2 { (reader.say("disorder-sources")) }
            (said::sources(&view.sources))
            p { a.button href="/disorders" { (reader.say("disorder-all")) } }
        }
    }
}

fn figures(reader: &Reader, view: &DisorderView) -> Markup {
    let unknown = reader.say("common-unknown");
    let known = |text: &String| (*text == unknown).then_some("unknown");
    html! {
        dl.facts {
            @if let Some(organism) = &view.organism { dt { (reader.say("disorder-organism")) } dd { i lang="la" { (organism) } } }
            @for line in &view.hosts {
                dt { (reader.say("disorder-hosts")) ": " (line.kind) }
                dd {
                    @for (at, (name, botanical)) in line.names.iter().enumerate() {
                        @if at > 0 { ", " }
                        @if *botanical { i lang="la" { (name) } } @else { (name) }
                    }
                }
            }
            dt { (reader.say("disorder-spread")) }
            dd class=[view.spread.is_empty().then_some("unknown")] {
                @if view.spread.is_empty() { (unknown) } @else { (view.spread.join("; ")) }
            }
            dt { (reader.say("disorder-latency")) } dd class=[known(&view.latency)] { (view.latency) }
            dt { (reader.say("disorder-decline")) } dd class=[known(&view.decline)] { (view.decline) }
            dt { (reader.say("disorder-course")) } dd { (view.course) }
        }
    }
}

fn signs(reader: &Reader, signs: &[SignLine]) -> Markup {
    html! {
        h2 { (reader.say("disorder-signs")) }
        @if signs.is_empty() { p { (reader.say("disorder-no-signs")) } } @else {
            p { (reader.say("disorder-signs-intro")) }
            ul.shown-signs { @for sign in signs { (sign_line(reader, sign)) } }
        }
    }
}

fn sign_line(reader: &Reader, sign: &SignLine) -> Markup {
    html! {
        li class=(sign.strength) data-sign=(sign.key) {
            p.what { (drawn::sign(&sign.key)) span { strong { (sign.name) } br; span.small { (sign.place) } } span.strength { (sign.words) } }
            details.why {
                summary { (reader.say("disorder-sign-sources")) span.sr { ": " (sign.name) } }
                p { (sign.how) }
                @if let Some(mark) = &sign.mark { p.basis { (mark) } }
                (said::sources(&sign.sources))
            }
        }
    }
}

async fn disagreements(reader: Reader) -> Markup {
    let all = disorders::disagreements(&Speaker::new(reader.measure));
    let body = html! {
        h1 { (reader.say("disagreements-title")) }
        p.lead { (reader.say("disagreements-intro")) }
        @for one in &all { (disagreement(&reader, one, true)) }
    };
    page(
        &reader,
        Here::Disorders,
        &reader.say("disagreements-title"),
        body,
    )
}

/// Both sides, marked, and what the tool does; folded under its question unless `open`.
pub fn disagreement(reader: &Reader, one: &DisagreementView, open: bool) -> Markup {
    html! {
        details.disagreement data-key=(one.key) open[open] {
            summary { (one.question) }
            div.two-sides {
                @for (side, title) in one.sides.iter().zip(["disagreements-one", "disagreements-other"]) {
                    div.side {
                        p.small { strong { (reader.say(title)) } }
                        p { (side.text) }
                        @if let Some(mark) = &side.mark { p.basis { (mark) } }
                        (said::sources(&side.sources))
                    }
                }
            }
            p.we { strong { (reader.say("disagreements-we")) ": " } (one.we) }
            @if !one.disorders.is_empty() {
                p.small {
                    (reader.say("disagreements-about")) ": "
                    @for (at, (key, name)) in one.disorders.iter().enumerate() { @if at > 0 { ", " } (name_link(key, name)) }
                }
            }
        }
    }
}

/// A disorder's name, leading to its page.
pub fn name_link(key: &str, name: &str) -> Markup {
    html! { a href={ "/disorders/" (key) } { (name) } }
}
