//! Language and units, kept in two cookies.

use crate::{App, Here, Reader, page};
use axum::extract::{Form, Query};
use axum::http::header::SET_COOKIE;
use axum::response::{AppendHeaders, IntoResponse, Redirect};
use axum::{Router, routing::get};
use desk::measure::Units;
use desk::words::Lang;
use maud::{Markup, html};
use serde::Deserialize;

/// `/settings`.
pub fn router() -> Router<App> {
    Router::new().route("/settings", get(show).post(save))
}

#[derive(Deserialize)]
struct Asked {
    #[serde(default)]
    back: String,
}

async fn show(reader: Reader, Query(asked): Query<Asked>) -> Markup {
    let body = html! {
        h1 { (reader.say("common-settings")) }
        (form(&reader, &asked.back))
    };
    page(
        &reader,
        Here::Settings,
        &reader.say("common-settings"),
        body,
    )
}

fn form(reader: &Reader, back: &str) -> Markup {
    let (lang, units) = (reader.words.lang(), reader.measure.units);
    html! {
        form.settings method="post" action="/settings" {
            input type="hidden" name="back" value=(back);
            fieldset {
                legend { (reader.say("common-language")) }
                @for l in Lang::ALL {
                    (choice("lang", l.tag(), l == lang, &reader.say(&format!("common-language-{}", l.tag()))))
                }
            }
            fieldset {
                legend { (reader.say("common-units")) }
                @for u in Units::ALL {
                    (choice("units", u.key(), u == units, &reader.say(&format!("common-units-{}", u.key()))))
                }
            }
            button type="submit" { (reader.say("common-save")) }
        }
    }
}

fn choice(name: &str, value: &str, chosen: bool, label: &str) -> Markup {
    html! { label.choice { input type="radio" name=(name) value=(value) checked[chosen]; span { (label) } } }
}

#[derive(Deserialize)]
struct Sent {
    lang: String,
    units: String,
    #[serde(default)]
    back: String,
}

async fn save(Form(sent): Form<Sent>) -> impl IntoResponse {
    let lang = Lang::parse(&sent.lang).unwrap_or_default().tag();
    let units = Units::parse(&sent.units).unwrap_or_default().key();
    let kept = |pair: String| {
        (
            SET_COOKIE,
            format!("{pair}; Path=/; Max-Age=31536000; SameSite=Lax"),
        )
    };
    // only a path of our own: a link elsewhere must not be reachable through us
    let own =
        sent.back.starts_with('/') && !sent.back.starts_with("//") && !sent.back.contains('\\');
    let back = if own { sent.back.as_str() } else { "/" };
    let cookies = [kept(format!("lang={lang}")), kept(format!("units={units}"))];
    (AppendHeaders(cookies), Redirect::to(back))
}
