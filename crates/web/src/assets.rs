//! The style sheet and the little script, embedded.

use crate::App;
use axum::extract::Path;
use axum::http::StatusCode;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use axum::{Router, routing::get};
use rust_embed::RustEmbed;

#[derive(RustEmbed)]
#[folder = "assets/"]
struct Files;

/// `/assets/{name}`.
pub fn router() -> Router<App> {
    Router::new().route("/assets/{name}", get(asset))
}

async fn asset(Path(name): Path<String>) -> Response {
    let Some(file) = Files::get(&name) else {
        return StatusCode::NOT_FOUND.into_response();
    };
    let kind = match name.rsplit('.').next() {
        Some("css") => "text/css; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("svg") => "image/svg+xml",
        _ => "application/octet-stream",
    };
    // the address carries a mark of the content, so it may be kept for good
    let keep = "public, max-age=31536000, immutable";
    ([(CONTENT_TYPE, kind), (CACHE_CONTROL, keep)], file.data).into_response()
}

/// The address of an asset, with a mark that changes when its content does.
pub fn address(name: &str) -> String {
    let Some(file) = Files::get(name) else {
        return format!("/assets/{name}");
    };
    let mark: String = file.metadata.sha256_hash()[..6]
        .iter()
        .map(|b| format!("{b:02x}"))
        .collect();
    format!("/assets/{name}?{mark}")
}
