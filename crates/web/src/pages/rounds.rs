//! `/rounds`: what is planned, and what was.

use crate::{App, Fault, Here, Reader, assets, page};
use axum::extract::State;
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::rounds::{self, RoundRow, RoundsView};
use maud::{Markup, html};

/// `/rounds`.
pub fn router() -> Router<App> {
    Router::new().route("/rounds", get(show))
}

async fn show(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| rounds::list(&speaker, office))
        .await?;
    let title = reader.say("rounds-title");
    Ok(page(&reader, Here::Rounds, &title, body(&reader, &view)))
}

/// The style sheet that only these pages need.
pub fn style() -> Markup {
    html! { link rel="stylesheet" href=(assets::address("rounds.css")); }
}

fn body(reader: &Reader, view: &RoundsView) -> Markup {
    html! {
        (style())
        h1 { (reader.say("rounds-title")) }
        p.lead data-testid="summary" { (view.lead) }
        p.actions { a.button.primary href="/rounds/plan" { (reader.say("rounds-plan-link")) } }
        (rows(&view.ahead))
        @if !view.earlier.is_empty() {
            h2 { (reader.say("rounds-past")) }
            (rows(&view.earlier))
        }
    }
}

/// Rounds, each with the way to its page.
pub fn rows(rows: &[RoundRow]) -> Markup {
    html! {
        @if !rows.is_empty() {
            ul.rounds-list {
                @for row in rows {
                    li class=(row.state) data-state=(row.state) {
                        a href={ "/round/" (row.id) } {
                            span.when { (row.when) }
                            span.what { (row.what) }
                            span.state { (row.state_words) }
                        }
                    }
                }
            }
        }
    }
}
