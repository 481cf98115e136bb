//! `/trace.pdf`: the report of a trace of what the register knows; asked as `/trace` is.

use super::{On, print};
use crate::pages::trace::Asked;
use crate::{App, Fault, Reader};
use axum::extract::{Query, State};
use axum::response::Response;
use axum::{Router, routing::get};
use desk::views::tracing;

/// `/trace.pdf`.
pub fn router() -> Router<App> {
    Router::new().route("/trace.pdf", get(show))
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
    Query(how): Query<On>,
) -> Result<Response, Fault> {
    let question = asked.question();
    print(&app, &reader, &how.paper, "trace", move |office, leaf| {
        let answer = tracing::made(office, &question)?;
        let disorder = tracing::disorder(&question.disorder);
        Ok(paper::trace_report(leaf, &answer, disorder)?)
    })
    .await
}
