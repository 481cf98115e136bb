//! `/about`: cautions, and what is assumed.

use super::said;
use crate::{App, Here, Reader, page};
use axum::{Router, routing::get};
use desk::views::{Speaker, cautions};
use maud::{Markup, html};

/// `/about`.
pub fn router() -> Router<App> {
    Router::new().route("/about", get(show))
}

async fn show(reader: Reader) -> Markup {
    let view = cautions::view(&Speaker::new(reader.measure));
    let body = html! {
        h1 { (reader.say("about-title")) }
        p.lead { (reader.say("about-intro")) }
        p.lead { strong { (reader.say("common-closing")) } }
        h2 { (reader.say("about-safety")) }
        ul.said {
            @for caution in &view.cautions {
                li.caution {
                    p.words { (caution.text) @if let Some(figure) = &caution.figure { " " strong { (figure) } } }
                    @if let Some(mark) = &caution.mark { p.basis { (mark) } }
                    @if !caution.condition.is_empty() { p.basis { (caution.condition) } }
                    @if !caution.sources.is_empty() {
                        details.why { summary { (reader.say("palm-sources")) } (said::sources(&caution.sources)) }
                    }
                }
            }
        }
        h2 { (reader.say("about-figures")) }
        ul { @for line in &view.assumed { li { (line) } } }
        p { (reader.say("about-kept")) }
    };
    page(&reader, Here::About, &reader.say("about-title"), body)
}
