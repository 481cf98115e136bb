//! `/import`: a file in; first a look at what would be taken and what not, then, on a second word, taking it.

use super::import_page::{blank, looked_through, taken};
use super::stash::Stash;
use crate::{App, Fault, Reader};
use axum::Router;
use axum::extract::{DefaultBodyLimit, Extension, Multipart, Path, State};
use axum::http::StatusCode;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use desk::forms::{self, Preview};
use desk::office::Refused;
use maud::Markup;
use std::sync::Arc;

/// The largest file that is taken over the browser; larger ones go in by the command line.
const LARGEST: usize = 64 * 1024 * 1024;

/// Upload, preview, taking, and the refused rows as a file.
pub fn router() -> Router<App> {
    Router::new()
        .route(
            "/import",
            get(start)
                .post(look)
                .layer(DefaultBodyLimit::max(LARGEST + 4096)),
        )
        .route("/import/{id}", get(shown))
        .route("/import/{id}/take", post(take))
        .route("/import/{id}/refused.csv", get(refused))
        .layer(Extension(Arc::new(Stash::default())))
}

async fn start(reader: Reader) -> Markup {
    blank(&reader, None)
}

async fn look(
    State(app): State<App>,
    Extension(stash): Extension<Arc<Stash>>,
    reader: Reader,
    body: Multipart,
) -> Result<Response, Fault> {
    let file = match uploaded(body).await {
        Ok(Some(file)) => file,
        Ok(None) => {
            return Ok((
                StatusCode::UNPROCESSABLE_ENTITY,
                blank(&reader, Some("forms-import-no-file")),
            )
                .into_response());
        }
        Err(_) => {
            return Ok((
                StatusCode::PAYLOAD_TOO_LARGE,
                blank(&reader, Some("forms-import-too-large")),
            )
                .into_response());
        }
    };
    let id = app
        .ask(&reader, move |office| {
            let preview = forms::preview(office, &file.bytes, &file.encoding);
            let id = office.new_id().0.to_string();
            stash.keep(&id, file.name, preview);
            id
        })
        .await?;
    // an address of its own: going back and forth, or loading again, sends no file twice
    Ok(Redirect::to(&format!("/import/{id}")).into_response())
}

struct File {
    name: String,
    bytes: Vec<u8>,
    encoding: String,
}

/// The file of an upload; `None` if none was chosen.
async fn uploaded(
    mut body: Multipart,
) -> Result<Option<File>, axum::extract::multipart::MultipartError> {
    let mut file = None;
    let mut encoding = String::new();
    while let Some(field) = body.next_field().await? {
        match field.name() {
            Some("file") => {
                let name = field.file_name().unwrap_or("").to_owned();
                let bytes = field.bytes().await?.to_vec();
                file = (!name.is_empty()).then_some((name, bytes));
            }
            Some("encoding") => encoding = field.text().await?,
            _ => {}
        }
    }
    Ok(file.map(|(name, bytes)| File {
        name,
        bytes,
        encoding,
    }))
}

async fn shown(
    Extension(stash): Extension<Arc<Stash>>,
    reader: Reader,
    Path(id): Path<String>,
) -> Response {
    match stash.get(&id) {
        Some(file) => match file.done() {
            Some(count) => taken(&reader, &id, &file.name, count, &file.preview).into_response(),
            None => looked_through(&reader, &id, &file.name, &file.preview, false).into_response(),
        },
        None => gone(&reader),
    }
}

async fn take(
    State(app): State<App>,
    Extension(stash): Extension<Arc<Stash>>,
    reader: Reader,
    Path(id): Path<String>,
) -> Result<Response, Fault> {
    let Some(file) = stash.get(&id) else {
        return Ok(gone(&reader));
    };
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        match forms::take(office, &file.preview) {
            Ok(count) => {
                file.set_done(count);
                Redirect::to(&format!("/import/{id}")).into_response()
            }
            Err(Refused::Findings(_) | Refused::Ledger(_)) => {
                let page = looked_through(&whose, &id, &file.name, &file.preview, true);
                (StatusCode::SERVICE_UNAVAILABLE, page).into_response()
            }
        }
    })
    .await
}

async fn refused(
    Extension(stash): Extension<Arc<Stash>>,
    reader: Reader,
    Path(id): Path<String>,
) -> Result<Response, Fault> {
    let Some(file) = stash.get(&id) else {
        return Ok(gone(&reader));
    };
    let rows = csv_of(&reader, &file.preview).map_err(|_| Fault::broken(&reader))?;
    let heads = [
        (CONTENT_TYPE, "text/csv; charset=utf-8"),
        (CONTENT_DISPOSITION, "attachment; filename=\"refused.csv\""),
    ];
    Ok((heads, rows).into_response())
}

fn csv_of(reader: &Reader, preview: &Preview) -> Result<Vec<u8>, impl std::error::Error> {
    preview.refused_file(|finding| reader.words.finding(finding, &reader.measure))
}

/// The preview is no longer kept: nothing was recorded, the file is asked for again.
fn gone(reader: &Reader) -> Response {
    (
        StatusCode::NOT_FOUND,
        blank(reader, Some("forms-import-gone")),
    )
        .into_response()
}
