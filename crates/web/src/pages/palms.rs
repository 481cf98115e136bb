//! `/palms`: the register with search and filters.

use super::paging;
use crate::{App, Fault, Here, Reader, address, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use crown::Explanation;
use desk::views::Speaker;
use desk::views::palms::{self, Choice, Due, PalmRow, PalmsView, Search};
use maud::{Markup, html};
use serde::Deserialize;

/// `/palms`.
pub fn router() -> Router<App> {
    Router::new().route("/palms", get(show))
}

/// The search as it stands in an address; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
pub struct Asked {
    q: String,
    site: String,
    species: String,
    explanation: String,
    due: String,
    page: String,
}

impl Asked {
    /// The search it means; words that mean nothing do not filter.
    pub fn search(&self) -> Search {
        Search {
            text: self.q.clone(),
            site: self.site.clone(),
            species: self.species.clone(),
            explanation: Explanation::ALL
                .into_iter()
                .find(|e| e.key() == self.explanation),
            due: Due::parse(&self.due),
            page: self.page.parse().unwrap_or(1),
        }
    }

    fn address(&self, page: usize) -> String {
        let page = page.to_string();
        let pairs = [
            ("q", self.q.as_str()),
            ("site", &self.site),
            ("species", &self.species),
            ("explanation", &self.explanation),
            ("due", &self.due),
            ("page", &page),
        ];
        address::with_query("/palms", &pairs)
    }

    fn filters(&self) -> bool {
        [&self.site, &self.species, &self.explanation, &self.due]
            .iter()
            .any(|s| !s.is_empty())
    }
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let (speaker, standings, search) = (
        Speaker::new(reader.measure),
        app.standings.clone(),
        asked.search(),
    );
    let view = app
        .ask(&reader, move |office| {
            palms::view(&speaker, office, &standings, &search)
        })
        .await?;
    if view.pending.is_some() {
        app.read_in_background();
    }
    Ok(page(
        &reader,
        Here::Palms,
        &reader.say("common-palms"),
        body(&reader, &asked, &view),
    ))
}

fn body(reader: &Reader, asked: &Asked, view: &PalmsView) -> Markup {
    html! {
        div.head {
            h1 { (reader.say("common-palms")) }
            a.button href="/palms/new" { (reader.say("palms-new")) }
            a.button href="/walk" { (reader.say("walk-link")) }
        }
        (form(reader, asked, view))
        p.lead role="status" data-testid="summary" { (view.summary) }
        @if let Some(pending) = &view.pending { p.pending { (pending) } }
        @if view.rows.is_empty() { p { (reader.say("palms-none")) } } @else { (list(reader, &view.rows)) }
        (paging::links(reader, &view.paging, |n| asked.address(n)))
    }
}

fn form(reader: &Reader, asked: &Asked, view: &PalmsView) -> Markup {
    let explanations =
        Explanation::ALL.map(|e| (e.key(), reader.say(&format!("explanation-{}", e.key()))));
    let dues = Due::ALL.map(|d| (d.key(), reader.say(&format!("palms-due-{}", d.key()))));
    html! {
        form.search method="get" action="/palms" role="search" {
            label.text for="q" { (reader.say("palms-search-hint")) }
            div.ask {
                input #q type="search" name="q" value=(asked.q) autocomplete="off" enterkeyhint="search";
                button.primary type="submit" { (reader.say("palms-search")) }
            }
            details.filters open[asked.filters()] {
                summary { (reader.say("palms-filters")) }
                div.fields {
                    (chosen(reader, "site", "palms-site", &asked.site, &view.sites))
                    (chosen(reader, "species", "palms-species", &asked.species, &view.species))
                    (select(reader, "explanation", "palms-explanation", &asked.explanation, &explanations))
                    (select(reader, "due", "palms-due", &asked.due, &dues))
                }
                div.actions {
                    button type="submit" { (reader.say("palms-show")) }
                    a.button href="/palms" { (reader.say("palms-clear")) }
                }
            }
        }
    }
}

fn chosen(reader: &Reader, name: &str, label: &str, now: &str, choices: &[Choice]) -> Markup {
    let words = |c: &Choice| {
        let args = [
            ("value", c.value.clone().into()),
            ("count", reader.measure.count(c.count as i64).into()),
        ];
        reader.words.text("palms-choice", &args)
    };
    html! {
        div.field {
            label for=(name) { (reader.say(label)) }
            // too many to choose from: typed instead
            @if choices.is_empty() { input id=(name) name=(name) value=(now) autocomplete="off"; } @else {
                select id=(name) name=(name) {
                    option value="" { (reader.say("palms-any")) }
                    @for choice in choices {
                        option value=(choice.value) selected[choice.value == now] { (words(choice)) }
                    }
                }
            }
        }
    }
}

fn select(
    reader: &Reader,
    name: &str,
    label: &str,
    now: &str,
    choices: &[(&str, String)],
) -> Markup {
    html! {
        div.field {
            label for=(name) { (reader.say(label)) }
            select id=(name) name=(name) {
                option value="" { (reader.say("palms-any")) }
                @for (key, words) in choices { option value=(key) selected[*key == now] { (words) } }
            }
        }
    }
}

/// Palms, one a row.
pub fn list(reader: &Reader, rows: &[PalmRow]) -> Markup {
    html! {
        ul.palms { @for row in rows { li data-tag=(row.tag) { (palm(reader, row)) } } }
    }
}

fn palm(reader: &Reader, row: &PalmRow) -> Markup {
    html! {
        a.row href=(address::palm(&row.tag, "")) {
            strong.tag { (row.tag) }
            i.species { (row.species) }
            span.site { (row.site) }
            span class={ "key " (row.key.unwrap_or("none")) } { (row.explanation) }
            span.due { (row.due) }
            span.last { (reader.say("palms-last-look")) ": " (row.last_look) }
        }
    }
}
