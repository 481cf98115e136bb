//! `/walk`: in which order to take the palms of one site. Works without script.

use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::walk::draw::{Map, Mark};
use desk::views::walk::{self, Answer, ClassRows, Question, Row, WalkView};
use maud::{Markup, html};
use rounds::walk::Health;
use serde::Deserialize;

/// `/walk`.
pub fn router() -> Router<App> {
    Router::new().route("/walk", get(show))
}

/// The question as it stands in an address; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    site: String,
    which: String,
    tags: String,
    minutes: String,
    sets: String,
    soak: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let (speaker, shared) = (Speaker::new(reader.measure), app.clone());
    let question = Question {
        site: asked.site,
        which: asked.which,
        tags: asked.tags,
        minutes: asked.minutes,
        sets: asked.sets,
        soak: asked.soak,
    };
    let (view, question) = app
        .ask(&reader, move |office| {
            let view = walk::view(&speaker, office, &shared.standings, &question);
            (view, question)
        })
        .await?;
    let title = reader.say("walk-title");
    let content = body(&reader, &question, &view);
    Ok(page(&reader, Here::Palms, &title, content))
}

fn body(reader: &Reader, question: &Question, view: &WalkView) -> Markup {
    html! {
        // only this page needs it
        link rel="stylesheet" href=(assets::address("walk.css"));
        h1 { (reader.say("walk-title")) }
        @if view.answer.is_none() { p.lead { (reader.say("walk-what")) } }
        @if !view.troubles.is_empty() {
            div.trouble #trouble role="alert" data-testid="trouble" {
                p { strong { (reader.say("walk-trouble")) } }
                ul { @for one in &view.troubles { li { a href={ "#" (one.field) } { (one.text) } } } }
            }
        }
        @if let Some(answer) = &view.answer {
            p.headline role="status" data-testid="answer" { (answer.sentence) }
            p { (answer.blades) }
            (shown(reader, answer))
        }
        (form(reader, question, view))
        @if let Some(answer) = &view.answer {
            section aria-labelledby="notes" {
                h2 #notes { (reader.say("walk-notes")) }
                ul { @for note in &answer.notes { li { (note) } } }
                p { strong { (reader.say("common-closing")) } }
            }
        }
    }
}

fn form(reader: &Reader, question: &Question, view: &WalkView) -> Markup {
    let wrong = |field: &str| {
        let mut own = view.troubles.iter().filter(|t| t.field == field);
        own.next().map(|trouble| trouble.text.as_str())
    };
    let more = ["minutes", "sets", "soak"]
        .iter()
        .any(|f| wrong(f).is_some());
    let due = question.which == "due";
    html! {
        form.sheet.ask-walk method="get" action="/walk" {
            div.field {
                label for="site" { (reader.say("walk-site")) }
                select #site name="site" required aria-invalid=[wrong("site").map(|_| "true")] {
                    option value="" { (reader.say("walk-site-choose")) }
                    @for (value, name) in &view.sites { option value=(value) selected[*value == question.site] { (name) } }
                }
                (trouble(wrong("site")))
            }
            fieldset {
                legend { (reader.say("walk-which")) }
                label.choice { input type="radio" name="which" value="all" checked[!due]; span { (reader.say("walk-which-all")) } }
                label.choice { input type="radio" name="which" value="due" checked[due]; span { (reader.say("walk-which-due")) } }
            }
            (field(reader, "tags", &question.tags, "text", Some("walk-tags-hint"), wrong("tags")))
            details.why open[more] {
                summary { (reader.say("walk-more")) }
                (field(reader, "minutes", &question.minutes, "decimal", Some("walk-minutes-hint"), wrong("minutes")))
                (field(reader, "sets", &question.sets, "numeric", None, wrong("sets")))
                (field(reader, "soak", &question.soak, "decimal", Some("walk-soak-hint"), wrong("soak")))
            }
            div.actions { button.primary type="submit" { (reader.say("walk-ask")) } }
        }
    }
}

fn field(
    reader: &Reader,
    name: &str,
    value: &str,
    mode: &str,
    hint: Option<&str>,
    wrong: Option<&str>,
) -> Markup {
    html! {
        div.field {
            label for=(name) { (reader.say(&format!("walk-{name}"))) }
            @if let Some(hint) = hint { p.hint id={ (name) "-hint" } { (reader.say(hint)) } }
            input type="text" inputmode=(mode) id=(name) name=(name) value=(value) autocomplete="off"
                aria-describedby=[hint.map(|_| format!("{name}-hint"))] aria-invalid=[wrong.map(|_| "true")];
            (trouble(wrong))
        }
    }
}

fn trouble(wrong: Option<&str>) -> Markup {
    html! { @if let Some(text) = wrong { p.trouble { (text) } } }
}

fn shown(reader: &Reader, answer: &Answer) -> Markup {
    html! {
        div.walked {
            @if let Some(map) = &answer.map { (drawn(reader, map)) }
            section.walk-list aria-labelledby="list" {
                h2 #list { (reader.say("walk-list")) }
                @for class in &answer.classes { (rows(class)) }
            }
        }
    }
}

fn rows(class: &ClassRows) -> Markup {
    html! {
        h3 { (mark_key(class.key)) (class.name) }
        ol.walk-stops data-class=(class.key) { @for row in &class.rows { (one(row)) } }
    }
}

fn one(row: &Row) -> Markup {
    html! {
        li.cut[row.cut] value=(row.n) data-tag=(row.tag) {
            @for before in &row.before { p.clean { (before) } }
            div.stop {
                span.n aria-hidden="true" { (row.n) }
                a.tag href=(address::palm(&row.tag, "")) { (row.tag) }
                span.way { (row.way) }
                span.what { i lang="la" { (row.species) } " · " (row.task) }
                span.why-class { (row.why) }
            }
        }
    }
}

fn drawn(reader: &Reader, map: &Map) -> Markup {
    let (width, height) = map.size;
    let bar = map.bar.0;
    html! {
        section.walk-map aria-labelledby="map" {
            h2 #map { (reader.say("walk-map")) }
            svg.walk-drawn viewBox={ "0 0 " (width) " " (height) } role="img" aria-label=(reader.say("walk-map-label")) {
                path.way d=(map.line) {}
                @if let Some((x, y)) = map.gate { (gate(reader, x, y, width)) }
                @for mark in &map.marks { (self::mark(mark)) }
                @for mark in &map.marks { (number(mark, width)) }
                g.scale-bar transform={ "translate(16 " (height - 14) ")" } {
                    path d={ "M0 -7V0H" (bar) "V-7" } {}
                    text x=(bar + 8) y="2" { (map.bar.1) }
                }
                g.north transform={ "translate(" (width - 26) " 30)" } {
                    path d="M0 -20L8 6L0 0L-8 6Z" {}
                    text y="24" text-anchor="middle" { "N" }
                }
            }
            ul.legend {
                @for health in Health::ALL { li { (mark_key(health.key())) (reader.say(&format!("walk-key-{}", health.key()))) } }
            }
            p.hint { (reader.say("walk-map-hint")) }
        }
    }
}

fn gate(reader: &Reader, x: i32, y: i32, width: i32) -> Markup {
    let right = x > width - 120;
    html! {
        g.gate transform={ "translate(" (x) " " (y) ")" } {
            path d="M-9 9V-9M9 9V-9M-9 -3H9M-9 4H9" {}
            text x=(if right { -16 } else { 16 }) y="5" text-anchor=(if right { "end" } else { "start" }) { (reader.say("walk-gate")) }
        }
    }
}

fn mark(mark: &Mark) -> Markup {
    html! {
        g.spot transform={ "translate(" (mark.x) " " (mark.y) ")" } {
            title { (mark.tag) }
            @if mark.clean { circle.ring r="13" {} }
            (shape(mark.key))
        }
    }
}

fn number(mark: &Mark, width: i32) -> Markup {
    let right = mark.x > width - 40;
    html! {
        @if let Some(n) = mark.number {
            text.n x=(if right { mark.x - 14 } else { mark.x + 14 }) y=(mark.y - 8) text-anchor=(if right { "end" } else { "start" }) { (n) }
        }
    }
}

/// A class's own shape: a ring, a dashed ring, a triangle, a filled square.
fn shape(key: &str) -> Markup {
    html! {
        @match key {
            "healthy" => circle.healthy r="7" {},
            "unknown" => circle.unknown r="7" {},
            "suspect" => path.suspect d="M0 -9L9 7H-9Z" {},
            _ => path.confirmed d="M-8 -8H8V8H-8Z" {},
        }
    }
}

fn mark_key(key: &str) -> Markup {
    html! { svg.key viewBox="-12 -12 24 24" width="24" height="24" aria-hidden="true" focusable="false" { (shape(key)) } }
}
