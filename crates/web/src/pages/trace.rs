//! `/trace`: a palm turns out infected; whom may blades have carried it to, and where may it have come from.

use super::blades::places;
use super::{said, trace_drawing};
use crate::badge::icon;
use crate::{App, Fault, Here, Reader, address, page};
use axum::extract::{Query, State};
use axum::http::StatusCode;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use axum::{Json, Router, routing::get};
use desk::tracing::{EXPOSURE_COLUMNS, exposure_rows};
use desk::views::Speaker;
use desk::views::tracing::{self, Answer, ExposedRow, NearRow, Question, TraceView};
use maud::{Markup, html};
use model::Day;
use model::knowledge::DayRange;
use serde::Deserialize;
use serde_json::json;

/// `/trace`, `/trace.csv`, `/api/trace`.
pub fn router() -> Router<App> {
    Router::new()
        .route("/trace", get(show))
        .route("/trace.csv", get(csv))
        .route("/api/trace", get(api))
}

/// A trace as it stands in an address; every part may be missing.
#[derive(Deserialize, Default, Clone)]
#[serde(default)]
pub struct Asked {
    case: String,
    disorder: String,
    seen: String,
    min: String,
    max: String,
}

impl Asked {
    /// The question it means; what is no day or number says nothing.
    pub fn question(&self) -> Question {
        let days = |text: &str| text.trim().parse().ok();
        Question {
            case: self.case.trim().to_owned(),
            disorder: self.disorder.trim().to_owned(),
            seen: Day::parse(self.seen.trim()),
            latency: DayRange {
                min: days(&self.min),
                max: days(&self.max),
            },
        }
    }

    fn address(&self, path: &str) -> String {
        let pairs = [
            ("case", self.case.trim()),
            ("disorder", &self.disorder),
            ("seen", &self.seen),
            ("min", &self.min),
            ("max", &self.max),
        ];
        address::with_query(path, &pairs)
    }
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let (speaker, question) = (Speaker::new(reader.measure), asked.question());
    let view = app
        .ask(&reader, move |office| {
            tracing::view(&speaker, office, &question)
        })
        .await?;
    let title = reader.say("trace-title");
    Ok(page(
        &reader,
        Here::Blades,
        &title,
        body(&reader, &asked, &view),
    ))
}

async fn csv(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    let question = asked.question();
    let made = app
        .ask(&reader, move |office| tracing::made(office, &question))
        .await?;
    let Ok(answer) = made else {
        return Err(Fault::no_palm(&reader, &asked.case));
    };
    let mut text = line(EXPOSURE_COLUMNS.iter().copied());
    for row in exposure_rows(&answer) {
        text.push_str(&line(row.iter().map(String::as_str)));
    }
    let head = [
        (CONTENT_TYPE, "text/csv; charset=utf-8"),
        (CONTENT_DISPOSITION, "attachment; filename=\"trace.csv\""),
    ];
    Ok((head, text).into_response())
}

/// One line of a CSV file (RFC 4180): quoted where it must be.
fn line<'a>(cells: impl Iterator<Item = &'a str>) -> String {
    let cell = |cell: &str| {
        if cell.contains([',', '"', '\n', '\r']) {
            format!("\"{}\"", cell.replace('"', "\"\""))
        } else {
            cell.to_owned()
        }
    };
    let cells: Vec<String> = cells.map(cell).collect();
    cells.join(",") + "\r\n"
}

async fn api(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    let question = asked.question();
    let value = app
        .ask(&reader, move |office| {
            tracing::api::trace(office, &question)
        })
        .await?;
    Ok(match value {
        Ok(value) => Json(value).into_response(),
        Err(why) => {
            let says = reader.words.finding(&why, &reader.measure);
            (StatusCode::NOT_FOUND, Json(json!({ "error": says }))).into_response()
        }
    })
}

fn body(reader: &Reader, asked: &Asked, view: &TraceView) -> Markup {
    html! {
        (places(reader, "/trace"))
        h1 { (reader.say("trace-title")) }
        @if view.answer.is_none() { p.lead { (reader.say("trace-what")) } }
        @if let Some(why) = &view.refused { p.trouble #case-trouble role="alert" { (why) } }
        (form(reader, asked, view))
        @if let Some(answer) = &view.answer { (shown(reader, asked, answer)) }
    }
}

fn form(reader: &Reader, asked: &Asked, view: &TraceView) -> Markup {
    let or_known = |typed: &str, known: &str| {
        if typed.is_empty() {
            known.to_owned()
        } else {
            typed.to_owned()
        }
    };
    html! {
        form.sheet.ask-trace method="get" action="/trace" {
            div.field {
                label for="case" { (reader.say("trace-case-field")) }
                p.hint #case-hint { (reader.say("trace-case-hint")) }
                input type="text" #case name="case" value=(asked.case) list="known-palms" autocomplete="off" autocapitalize="characters"
                    aria-describedby={ "case-hint" @if view.refused.is_some() { " case-trouble" } } aria-invalid=[view.refused.is_some().then_some("true")];
                datalist #known-palms { @for (tag, species) in &view.palms { option value=(tag) { (species) } } }
            }
            (disorders(reader, asked, view))
            details.why open[!asked.min.is_empty() || !asked.max.is_empty() || !asked.seen.is_empty()] {
                summary { (reader.say("trace-latency-field")) }
                p.hint #latency-hint { (reader.say("trace-latency-hint")) }
                div.two {
                    (number(reader, "min", "trace-shortest", &or_known(&asked.min, &view.latency[0])))
                    (number(reader, "max", "trace-longest", &or_known(&asked.max, &view.latency[1])))
                }
                div.field {
                    label for="seen" { (reader.say("trace-seen")) }
                    p.hint #seen-hint { (reader.say("trace-seen-hint")) }
                    input type="date" #seen name="seen" value=(asked.seen) max=(view.today) aria-describedby="seen-hint";
                }
            }
            div.actions { button.primary type="submit" { (reader.say("trace-make")) } }
        }
    }
}

fn number(reader: &Reader, name: &str, words: &str, value: &str) -> Markup {
    html! {
        div.field {
            label for=(name) { (reader.say(words)) }
            input type="text" inputmode="numeric" id=(name) name=(name) value=(value) autocomplete="off" aria-describedby="latency-hint";
        }
    }
}

fn disorders(reader: &Reader, asked: &Asked, view: &TraceView) -> Markup {
    html! {
        div.field {
            label for="disorder" { (reader.say("trace-disorder")) }
            select #disorder name="disorder" {
                option value="" { (reader.say("trace-disorder-none")) }
                @for (group, travels) in [("trace-disorder-blades", true), ("trace-disorder-others", false)] {
                    optgroup label=(reader.say(group)) {
                        @for (key, name, _) in view.disorders.iter().filter(|d| d.2 == travels) {
                            option value=(key) selected[*key == asked.disorder] { (name) }
                        }
                    }
                }
            }
        }
    }
}

fn shown(reader: &Reader, asked: &Asked, answer: &Answer) -> Markup {
    let near = near_list(reader, &answer.nearby);
    html! {
        article.trace data-testid="trace" {
            p.as-of data-testid="as-of" { (answer.as_of) }
            @if let Some(first) = &answer.first { p.first role="note" data-testid="first" { (icon("unknown")) span { (first) } } }
            // where blades do not carry it, the palms near by come before the chains
            @if answer.first.is_some() { (near) }
            p.headline data-testid="summary" { (answer.summary) }
            p.actions {
                a.button href=(asked.address("/trace.pdf")) { (reader.say("trace-pdf")) }
                a.button href=(asked.address("/trace.csv")) { (reader.say("trace-csv")) }
            }
            div.lists {
                div.pictures {
                    @if let Some(lanes) = &answer.lanes { (trace_drawing::lanes(reader, lanes)) }
                    @if let Some(plot) = &answer.plot { (trace_drawing::plot(reader, plot)) }
                }
                div.listed {
                    (exposed(reader, answer))
                    (sources(reader, answer))
                    @if answer.first.is_none() { (near) }
                    section aria-labelledby="reckoned" {
                        h2 #reckoned { (reader.say("trace-reckoned")) }
                        ul { @for line in &answer.reckoned { li { (line) } } }
                        (said::sources(&answer.sources_of_latency))
                    }
                    (said::closed(reader, "trace-findings", &answer.findings))
                }
            }
        }
    }
}

fn exposed(reader: &Reader, answer: &Answer) -> Markup {
    html! {
        section aria-labelledby="exposed" {
            h2 #exposed { (reader.say("trace-list")) }
            @if answer.generations.is_empty() { p { (reader.say("trace-list-none")) } }
            @for (title, rows) in &answer.generations {
                h3 { (title) }
                ul.exposed { @for row in rows { (one(reader, row)) } }
            }
        }
    }
}

fn sources(reader: &Reader, answer: &Answer) -> Markup {
    html! {
        section aria-labelledby="came-from" {
            h2 #came-from { (reader.say("trace-sources")) }
            @if answer.sources.is_empty() { p { (reader.say("trace-sources-none")) } }
            ul.exposed { @for row in &answer.sources { (one(reader, row)) } }
        }
    }
}

fn one(reader: &Reader, row: &ExposedRow) -> Markup {
    html! {
        li class=(row.key) data-tag=(row.tag) {
            p.who {
                a.tag href=(address::palm(&row.tag, "")) { (row.tag) } " "
                i { (row.species) } @if !row.site.is_empty() { " · " (row.site) }
            }
            p { (trace_drawing::key_mark(row.key)) " " strong { (reader.say(&format!("trace-{}", row.key))) } ". " (row.when) " " (row.host) }
            @if !row.watch.is_empty() { p { (row.watch) " " (row.looks) } }
            details.why {
                summary { (reader.say("trace-chain")) span.sr { ": " (row.tag) } }
                ol { @for step in &row.chain { li { (step) } } }
            }
        }
    }
}

fn near_list(reader: &Reader, rows: &[NearRow]) -> Markup {
    html! {
        @if !rows.is_empty() {
            section aria-labelledby="near" {
                h2 #near { (reader.say("trace-nearby")) }
                ul.exposed data-testid="nearby" {
                    @for row in rows {
                        li.near data-tag=(row.tag) {
                            p.who { a.tag href=(address::palm(&row.tag, "")) { (row.tag) } " " i { (row.species) } }
                            p { (row.distance) ". " (row.host) }
                            p { (row.watch) " " (row.looks) }
                        }
                    }
                }
            }
        }
    }
}
