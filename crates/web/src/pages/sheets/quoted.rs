//! `/quote.pdf`: the quote of an estimate; asked as `/estimate` is.

use super::{On, print};
use crate::pages::estimate::Asked;
use crate::{App, Fault, Reader};
use axum::extract::{Query, State};
use axum::response::Response;
use axum::{Router, routing::get};
use desk::estimating;
use model::{Finding, Severity};

/// `/quote.pdf`.
pub fn router() -> Router<App> {
    Router::new().route("/quote.pdf", get(show))
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
    Query(how): Query<On>,
) -> Result<Response, Fault> {
    let (question, standings) = (asked.ask(), app.standings.clone());
    print(&app, &reader, &how.paper, "quote", move |office, leaf| {
        let nothing = || Finding::new("estimate-nothing", Severity::Refuse);
        let made = estimating::estimate(office, &standings, &question)
            .map_err(|wrong| wrong.into_iter().next().unwrap_or_else(nothing))?;
        Ok(paper::quote(leaf, &made)?)
    })
    .await
}
