//! `/sources`: where every figure and rule comes from.

use super::said;
use crate::{App, Here, Reader, page};
use axum::{Router, routing::get};
use desk::views::{Cited, Speaker, source_list};
use maud::{Markup, html};

/// `/sources`.
pub fn router() -> Router<App> {
    Router::new().route("/sources", get(show))
}

async fn show(reader: Reader) -> Markup {
    let sources: Vec<Cited> = source_list::view(&Speaker::new(reader.measure));
    let count = [("n", (sources.len() as i64).into())];
    let body = html! {
        h1 { (reader.say("sources-title")) }
        p.lead { (reader.say("sources-intro")) }
        p { (reader.words.text("sources-count", &count)) }
        ol.bibliography {
            @for source in &sources {
                li id=(source.key) { (said::cite(source)) }
            }
        }
    };
    page(&reader, Here::Sources, &reader.say("sources-title"), body)
}
