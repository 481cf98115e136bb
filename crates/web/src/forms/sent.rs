//! A form as it arrives, and the ways to answer it: saved, look again, could not, the palm is gone.

use crate::{App, Fault};
use axum::Json;
use axum::extract::{Form, FromRequest, Request};
use axum::http::StatusCode;
use axum::http::header::ACCEPT;
use axum::response::{IntoResponse, Redirect, Response};
use desk::forms::{Stop, Trouble, Typed};
use maud::Markup;

/// What was sent, and whether our script sent it (it asks for JSON and goes to the address we name).
pub struct Sent {
    /// What was typed.
    pub typed: Typed,
    by_script: bool,
}

impl FromRequest<App> for Sent {
    type Rejection = Response;

    async fn from_request(request: Request, app: &App) -> Result<Sent, Response> {
        let accepts = request
            .headers()
            .get(ACCEPT)
            .and_then(|v| v.to_str().ok())
            .unwrap_or("");
        let by_script = accepts.starts_with("application/json");
        let pairs = Form::<Vec<(String, String)>>::from_request(request, app).await;
        let Form(pairs) = pairs.map_err(IntoResponse::into_response)?;
        Ok(Sent {
            typed: Typed::of(pairs),
            by_script,
        })
    }
}

impl Sent {
    /// Saved: on to this address.
    pub fn saved(&self, to: &str) -> Response {
        if self.by_script {
            return Json(serde_json::json!({ "to": to })).into_response();
        }
        Redirect::to(to).into_response()
    }
}

/// Something is to be put right: the form again, with what was typed.
pub fn again(page: Markup) -> Response {
    (StatusCode::UNPROCESSABLE_ENTITY, page).into_response()
}

/// The ledger would not: the form again, with what was typed.
pub fn could_not(page: Markup) -> Response {
    (StatusCode::SERVICE_UNAVAILABLE, page).into_response()
}

/// Not saved, where no palm can be gone: the form again, drawn with what is wrong or with the word that the ledger would
/// not.
pub fn refused(stop: Stop, draw: impl FnOnce(&[Trouble], bool) -> Markup) -> Response {
    match stop {
        Stop::Troubles(troubles) => again(draw(&troubles, false)),
        Stop::NoPalm | Stop::Ledger(_) => could_not(draw(&[], true)),
    }
}

/// The same where the palm, or what the form is about, may be gone: then there is nothing to draw, and `gone` says so.
pub fn refused_of(
    stop: Stop,
    gone: impl FnOnce() -> Fault,
    draw: impl FnOnce(&[Trouble], bool) -> Result<Markup, Fault>,
) -> Result<Response, Fault> {
    match stop {
        Stop::NoPalm => Err(gone()),
        Stop::Troubles(troubles) => draw(&troubles, false).map(again),
        Stop::Ledger(_) => draw(&[], true).map(could_not),
    }
}
