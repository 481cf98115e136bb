//! `/selection`: dug specimens side by side, from typed counts. Works without script.

use super::moved::style;
use super::said;
use crate::{App, Fault, Here, Reader, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::moved::selection::{self, Column, MOST, SelectionView, Typed};
use maud::{Markup, html};
use model::Spear;
use std::collections::HashMap;

/// `/selection`.
pub fn router() -> Router<App> {
    Router::new().route("/selection", get(show))
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<HashMap<String, String>>,
) -> Result<Markup, Fault> {
    let typed = typed(&asked);
    let speaker = Speaker::new(reader.measure);
    let given = typed.clone();
    let view = app
        .ask(&reader, move |office| {
            selection::view(&speaker, office, &given)
        })
        .await?;
    let title = reader.say("select-title");
    Ok(page(
        &reader,
        Here::Moved,
        &title,
        body(&reader, &typed, &view),
    ))
}

/// Fields are named after their specimen: `green-0`, `green-1`, ...; `n` says how many there are.
fn typed(asked: &HashMap<String, String>) -> Vec<Typed> {
    let wanted = asked.get("n").and_then(|n| n.parse().ok()).unwrap_or(2);
    let count = if asked.contains_key("more") {
        wanted + 1
    } else {
        wanted
    };
    let field = |name: &str, n: usize| {
        let key = format!("{name}-{n}");
        asked.get(&key).cloned().unwrap_or_default()
    };
    (0..count.clamp(2, MOST))
        .map(|n| Typed {
            name: field("name", n),
            species: field("species", n),
            green: field("green", n),
            yellowing: field("yellowing", n),
            brown: field("brown", n),
            spear: field("spear", n),
            dug: field("dug", n),
            cleaned: field("cleaned", n),
        })
        .collect()
}

fn body(reader: &Reader, typed: &[Typed], view: &SelectionView) -> Markup {
    html! {
        (style())
        h1 { (reader.say("select-title")) }
        @if view.columns.is_empty() { p.lead { (reader.say("select-what")) } }
        @if !view.troubles.is_empty() {
            div.trouble #trouble role="alert" data-testid="trouble" {
                p { strong { (reader.say("select-trouble")) } }
                ul {
                    @for one in &view.troubles {
                        li { a href={ "#" (one.field) "-" (one.specimen) } { (letter(one.specimen)) ": " (one.text) } }
                    }
                }
            }
        }
        @if !view.columns.is_empty() { (answer(reader, view)) }
        (form(reader, typed, view))
        (said::closed(reader, "moved-usual-title", &view.usual))
    }
}

fn answer(reader: &Reader, view: &SelectionView) -> Markup {
    html! {
        section aria-labelledby="answer" data-testid="answer" {
            h2 #answer { (reader.say("select-side-by-side")) }
            @if !view.said.is_empty() { (said::list(reader, &view.said)) }
            ul.verdicts { @for column in &view.columns { li.refused[column.refused] { (specimen(reader, column)) } } }
            p.hint { (reader.say("select-note")) }
        }
    }
}

fn specimen(reader: &Reader, column: &Column) -> Markup {
    let weeks = [4, 8, 26].map(|n| reader.words.text("select-weeks", &[("n", n.into())]));
    html! {
        h3 { span { (column.name) } @if column.refused { span.no { (reader.say("select-refused")) } } }
        table.ahead {
            thead { tr { th scope="col" {} @for one in &weeks { th scope="col" { (one) } } } }
            tbody {
                tr { th scope="row" { (reader.say("select-further")) } @for one in &column.further { td { (one) } } }
                tr { th scope="row" { (reader.say("select-live")) } @for one in &column.live { td { (one) } } }
            }
        }
        p { (reader.say("select-browned")) ": " strong { (column.browned) } }
        (said::list(reader, &column.said))
        (said::reasons(reader, &column.said))
    }
}

fn letter(n: usize) -> String {
    char::from(b'A' + n as u8).to_string()
}

fn form(reader: &Reader, typed: &[Typed], view: &SelectionView) -> Markup {
    html! {
        form.sheet method="get" action="/selection" {
            input type="hidden" name="n" value=(typed.len());
            div.specimens { @for (n, one) in typed.iter().enumerate() { (fields(reader, n, one, view)) } }
            div.actions {
                button.primary type="submit" { (reader.say("select-compare")) }
                @if typed.len() < MOST { button type="submit" name="more" value="yes" { (reader.say("select-more")) } }
            }
        }
    }
}

fn fields(reader: &Reader, n: usize, typed: &Typed, view: &SelectionView) -> Markup {
    let title = [("letter", letter(n).into())];
    let field = |name: &'static str, value: &str, mode: Option<&str>| {
        let id = format!("{name}-{n}");
        let wrong = view
            .troubles
            .iter()
            .find(|t| t.specimen == n && t.field == name);
        html! {
            div.field {
                label for=(id) { (reader.say(&format!("select-{name}"))) }
                input type="text" id=(id) name=(id) value=(value) inputmode=[mode] autocomplete="off"
                    aria-invalid=[wrong.map(|_| "true")] aria-describedby=[wrong.map(|_| format!("{id}-trouble"))];
                @if let Some(wrong) = wrong { p.trouble id={ (id) "-trouble" } { (wrong.text) } }
            }
        }
    };
    let whole = Some("numeric");
    let spears: Vec<(&str, String)> = Spear::ALL
        .iter()
        .map(|(_, word)| (*word, reader.say(&format!("forms-spear-{word}"))))
        .chain([("", reader.say("forms-spear-none"))])
        .collect();
    let cleaned = [
        ("digging", reader.say("select-cleaned-digging")),
        ("since", reader.say("select-cleaned-again")),
        ("", reader.say("select-cleaned-not-told")),
    ];
    html! {
        fieldset {
            legend { (reader.words.text("select-specimen", &title)) }
            (field("name", &typed.name, None))
            (field("species", &typed.species, None))
            div.two {
                (field("green", &typed.green, whole))
                (field("yellowing", &typed.yellowing, whole))
                (field("brown", &typed.brown, whole))
                (field("dug", &typed.dug, whole))
            }
            (choice(reader, "spear", n, &typed.spear, &spears))
            (choice(reader, "cleaned", n, &typed.cleaned, &cleaned))
        }
    }
}

fn choice(reader: &Reader, name: &str, n: usize, now: &str, choices: &[(&str, String)]) -> Markup {
    let id = format!("{name}-{n}");
    html! {
        div.field {
            label for=(id) { (reader.say(&format!("select-{name}"))) }
            select id=(id) name=(id) {
                @for (value, words) in choices { option value=(value) selected[*value == now] { (words) } }
            }
        }
    }
}
