//! `/round/{id}/sheet.pdf`: the crew sheet of a round.

use super::{On, own_address, print};
use crate::{App, Fault, Reader};
use axum::extract::{Path, Query, State};
use axum::http::HeaderMap;
use axum::response::Response;
use axum::{Router, routing::get};
use desk::forms;
use desk::views::{Speaker, rounds};
use model::{Finding, Severity};

/// `/round/{id}/sheet.pdf`.
pub fn router() -> Router<App> {
    Router::new().route("/round/{id}/sheet.pdf", get(show))
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    headers: HeaderMap,
    Path(id): Path<String>,
    Query(how): Query<On>,
) -> Result<Response, Fault> {
    let base = own_address(&headers);
    print(&app, &reader, &how.paper, "round", move |office, leaf| {
        let gone = || Finding::new("round-form-gone", Severity::Refuse);
        let id = forms::entry_id(&id).ok_or_else(gone)?;
        let sheet = rounds::sheet(&Speaker::new(leaf.measure), office, id).ok_or_else(gone)?;
        Ok(paper::crew_sheet(leaf, &sheet, Some(&base))?)
    })
    .await
}
