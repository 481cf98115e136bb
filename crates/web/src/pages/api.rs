//! `/api/...`: the same views for machines.

use super::palm::Asked as PalmAsked;
use super::palms::Asked as PalmsAsked;
use crate::{App, Fault, Reader};
use axum::extract::{Path, Query, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use axum::{Json, Router, routing::get};
use desk::views::api;
use serde_json::json;

/// `/api/palms`, `/api/palm/{tag}`.
pub fn router() -> Router<App> {
    Router::new()
        .route("/api/palms", get(palms))
        .route("/api/palm/{tag}", get(palm))
        .route("/api/blades", get(blades))
}

async fn palms(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<PalmsAsked>,
) -> Result<Response, Fault> {
    let (standings, search) = (app.standings.clone(), asked.search());
    let value = app
        .ask(&reader, move |office| {
            api::palms(office, &standings, &search)
        })
        .await?;
    Ok(Json(value).into_response())
}

async fn palm(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    Query(asked): Query<PalmAsked>,
) -> Result<Response, Fault> {
    let (wanted, question) = (tag.clone(), asked.question());
    let value = app
        .ask(&reader, move |office| api::palm(office, &wanted, &question))
        .await?;
    let none = || {
        let says = reader
            .words
            .text("error-not-found-palm", &[("tag", tag.into())]);
        (StatusCode::NOT_FOUND, Json(json!({ "error": says }))).into_response()
    };
    Ok(value.map_or_else(none, |value| Json(value).into_response()))
}

async fn blades(State(app): State<App>, reader: Reader) -> Result<Response, Fault> {
    let value = app.ask(&reader, desk::views::blades::api::blades).await?;
    Ok(Json(value).into_response())
}
