//! `/estimate`: what the cuts take that may be made today, and what they cost.

use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use desk::estimating::{self, Ask};
use desk::views::Speaker;
use desk::views::estimating::{EstimateView, FigureRow, LineRow, view};
use maud::{Markup, html};
use model::Finding;
use serde::Deserialize;

/// `/estimate`.
pub fn router() -> Router<App> {
    Router::new().route("/estimate", get(show))
}

/// What is asked, as it stands in an address; every part may be missing.
#[derive(Deserialize, Default, Clone)]
#[serde(default)]
pub struct Asked {
    pub site: String,
    pub palms: String,
    pub crew: String,
}

impl Asked {
    /// The question.
    pub fn ask(&self) -> Ask {
        let split = |text: &str| {
            let parts = text.split([',', ';', '\n']).map(str::trim);
            parts
                .filter(|part| !part.is_empty())
                .map(str::to_owned)
                .collect()
        };
        Ask {
            palms: split(&self.palms),
            sites: Some(self.site.trim().to_owned())
                .filter(|site| !site.is_empty())
                .into_iter()
                .collect(),
            crew: self.crew.trim().to_owned(),
        }
    }
}

/// Sites and crews to choose from.
struct Choices {
    sites: Vec<String>,
    crews: Vec<String>,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let (standings, question) = (app.standings.clone(), asked.ask());
    let (choices, made) = app
        .ask(&reader, move |office| {
            let state = office.state();
            let sites: std::collections::BTreeSet<String> = state
                .standing()
                .map(|record| record.palm.site.clone())
                .filter(|site| !site.is_empty())
                .collect();
            let crews = state.work.crews.values().filter(|crew| !crew.gone);
            let choices = Choices {
                sites: sites.into_iter().collect(),
                crews: crews.map(|crew| crew.name.clone()).collect(),
            };
            let made = estimating::estimate(office, &standings, &question);
            (choices, made.map(|estimate| view(&speaker, &estimate)))
        })
        .await?;
    let title = reader.say("estimate-title");
    let body = html! {
        link rel="stylesheet" href=(assets::address("moved.css"));
        link rel="stylesheet" href=(assets::address("estimate.css"));
        h1 { (title) }
        p.lead { (reader.say("estimate-lead")) }
        (form(&reader, &asked, &choices))
        @match &made {
            Ok(view) => (shown(&reader, &asked, view)),
            Err(wrong) => (refused(&reader, wrong)),
        }
    };
    Ok(page(&reader, Here::Estimate, &title, body))
}

fn refused(reader: &Reader, wrong: &[Finding]) -> Markup {
    html! {
        div.trouble.summary role="alert" {
            @for finding in wrong { p data-code=(finding.code) { (reader.measure.finding(finding)) } }
        }
    }
}

fn form(reader: &Reader, asked: &Asked, choices: &Choices) -> Markup {
    html! {
        form.sheet method="get" action="/estimate" {
            (select(reader, "site", "estimate-site", &asked.site, &choices.sites))
            div.field {
                label for="palms" { (reader.say("estimate-palms")) }
                p.hint #palms-hint { (reader.say("estimate-palms-hint")) }
                input type="text" id="palms" name="palms" value=(asked.palms) autocomplete="off" aria-describedby="palms-hint";
            }
            (select(reader, "crew", "estimate-crew", &asked.crew, &choices.crews))
            button.primary type="submit" { (reader.say("estimate-make")) }
        }
    }
}

fn select(reader: &Reader, name: &str, word: &str, chosen: &str, all: &[String]) -> Markup {
    html! {
        div.field {
            label for=(name) { (reader.say(word)) }
            select id=(name) name=(name) {
                option value="" { (reader.say("estimate-any")) }
                @for one in all { option value=(one) selected[one == chosen] { (one) } }
            }
        }
    }
}

fn shown(reader: &Reader, asked: &Asked, view: &EstimateView) -> Markup {
    let query = [
        ("site", asked.site.as_str()),
        ("palms", asked.palms.as_str()),
        ("crew", asked.crew.as_str()),
    ];
    html! {
        p.lead role="status" data-testid="summary" { strong { (view.summary) } }
        p.actions {
            a.button href=(address::with_query("/quote.pdf", &query)) { (reader.say("estimate-print")) }
            a.button href="/prices" { (reader.say("estimate-prices-link")) }
        }
        h2 { (reader.say("estimate-time-title")) }
        p { (reader.say("estimate-time-what")) }
        p { (view.pace) }
        (table(&view.lines, &[(&reader.say("estimate-sum"), &view.minutes)]))
        h2 { (reader.say("estimate-debris-title")) }
        p { (view.debris) }
        h2 { (reader.say("estimate-money-title")) }
        @if let Some(words) = &view.prices { p.pending { (words) } }
        @let net = reader.say("estimate-net");
        @let gross = reader.say("estimate-gross");
        @let sums = match &view.tax {
            Some(tax) => vec![(net.as_str(), view.net.as_str()), (tax.label.as_str(), tax.value.as_str()), (gross.as_str(), view.gross.as_str())],
            None => vec![(gross.as_str(), view.gross.as_str())],
        };
        (table(&view.charges, &sums))
        @if !view.notes.is_empty() { p.own-words { (view.notes) } }
        h2 { (reader.say("estimate-palms-title")) }
        ul.moved-list {
            @for palm in &view.palms {
                li data-tag=(palm.tag) {
                    a.row href=(address::palm(&palm.tag, "")) { span { strong.tag { (palm.tag) } " " i { (palm.species) } } }
                    p { (palm.what) }
                    p { (palm.minutes) }
                    @if !palm.site.is_empty() { p.since { (palm.site) } }
                }
            }
        }
        @if !view.left.is_empty() {
            h2 { (reader.say("estimate-left-title")) }
            ul { @for (tag, why) in &view.left { li data-code=(why.code) { a href=(address::palm(tag, "")) { (tag) } ": " (why.text) } } }
        }
        h2 { (reader.say("estimate-assumed-title")) }
        p { (reader.say("estimate-assumed-what")) }
        ul.figures { @for row in &view.assumed { (figure(row)) } }
    }
}

fn figure(row: &FigureRow) -> Markup {
    html! {
        li data-key=(row.key) {
            (row.label) ": " strong { (row.value) } " (" (row.mark) ")"
            @for source in &row.sources { " " a href={ "/sources#" (source.key) } { (source.title) } }
        }
    }
}

fn table(rows: &[LineRow], sums: &[(&str, &str)]) -> Markup {
    html! {
        table.sums {
            @for row in rows {
                tr data-key=(row.key) {
                    th scope="row" {
                        (row.label)
                        @if !row.count.is_empty() { br; span.since { (row.count) @if let Some(mark) = &row.mark { " (" (mark) ")" } } }
                    }
                    td { (row.value) }
                }
            }
            @for (label, value) in sums { tr.sum { th scope="row" { (label) } td { strong { (value) } } } }
        }
    }
}
