//! Sheets of paper as PDF: labels, clauses, the trace report; and the page that offers them.

mod offer;
mod quoted;
mod rounds;
mod traced;

pub(crate) use offer::stays_here;

use crate::{App, Fault, Reader};
use axum::extract::{Query, State};
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_SECURITY_POLICY, CONTENT_TYPE, HOST};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use axum::{Router, routing::get};
use desk::office::Office;
use model::Finding;
use paper::{Choice, Error, Leaf, Pdf, Size};
use serde::Deserialize;

/// `/sheets`, `/labels.pdf`, `/clauses.pdf`, `/trace.pdf`.
pub fn router() -> Router<App> {
    Router::new()
        .merge(offer::router())
        .merge(quoted::router())
        .merge(traced::router())
        .merge(rounds::router())
        .route("/labels.pdf", get(labels))
        .route("/clauses.pdf", get(clauses))
}

/// What is asked for, as it stands in an address; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    /// `palms`, else blades.
    what: String,
    kit: String,
    site: String,
    tag: String,
    base: String,
    paper: String,
}

/// On which paper; empty: what is usual.
#[derive(Deserialize, Default)]
#[serde(default)]
struct On {
    paper: String,
}

async fn labels(
    State(app): State<App>,
    reader: Reader,
    headers: HeaderMap,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    let base = match asked.base.as_str() {
        "" => own_address(&headers),
        base => base.to_owned(),
    };
    let palms = asked.what == "palms";
    let choice = Choice {
        group: if palms { asked.site } else { asked.kit },
        tags: Some(asked.tag)
            .filter(|t| !t.is_empty())
            .into_iter()
            .collect(),
    };
    print(
        &app,
        &reader,
        &asked.paper,
        "labels",
        move |office, leaf| {
            let state = office.state();
            let labels = match palms {
                true => paper::palm_labels(&state, &choice)?,
                false => paper::blade_labels(leaf, &state, &choice)?,
            };
            Ok(paper::labels(leaf, &base, &labels)?)
        },
    )
    .await
}

async fn clauses(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    print(&app, &reader, &asked.paper, "clauses", |_, leaf| {
        Ok(paper::clauses(leaf)?)
    })
    .await
}

/// Sets a sheet where it may take its time, and sends it under a name.
pub(crate) async fn print<F>(
    app: &App,
    reader: &Reader,
    size: &str,
    name: &str,
    sheet: F,
) -> Result<Response, Fault>
where
    F: FnOnce(&Office, &Leaf) -> Result<Pdf, Refusal> + Send + 'static,
{
    let (measure, demo) = (reader.measure, reader.demo);
    let size = Size::parse(size).unwrap_or(Size::usual(measure.units));
    let made = app.ask(reader, move |office| {
        let leaf = Leaf {
            size,
            measure,
            day: office.today(),
            demo,
        };
        sheet(office, &leaf)
    });
    let pdf = made.await?.map_err(|refusal| refusal.fault(reader))?;
    let heads = [
        (CONTENT_TYPE, "application/pdf".to_owned()),
        (
            CONTENT_DISPOSITION,
            format!("inline; filename=\"{name}.pdf\""),
        ),
        // the policy of our pages would stop the viewers of some browsers
        (CONTENT_SECURITY_POLICY, "frame-ancestors 'none'".to_owned()),
    ];
    Ok((heads, pdf.bytes).into_response())
}

/// Why there is no sheet.
pub(crate) struct Refusal {
    status: StatusCode,
    finding: Finding,
}

impl From<Error> for Refusal {
    fn from(error: Error) -> Refusal {
        let status = match error {
            Error::Empty | Error::NoSuch(_) => StatusCode::NOT_FOUND,
            Error::Template(_) => StatusCode::INTERNAL_SERVER_ERROR,
            _ => StatusCode::BAD_REQUEST,
        };
        Refusal {
            status,
            finding: error.finding(),
        }
    }
}

impl From<Finding> for Refusal {
    fn from(finding: Finding) -> Refusal {
        Refusal {
            status: StatusCode::BAD_REQUEST,
            finding,
        }
    }
}

impl Refusal {
    fn fault(self, reader: &Reader) -> Fault {
        let args: Vec<_> = self
            .finding
            .args
            .iter()
            .map(|(name, arg)| (*name, reader.measure.arg(arg)))
            .collect();
        Fault::new(reader, self.status, self.finding.code, &args)
    }
}

/// The address under which the asker reached us.
pub(crate) fn own_address(headers: &HeaderMap) -> String {
    let text = |name: &str| headers.get(name).and_then(|v| v.to_str().ok());
    // set by a proxy that speaks TLS for us
    let scheme = match text("x-forwarded-proto") {
        Some("https") => "https",
        _ => "http",
    };
    format!("{scheme}://{}", text(HOST.as_str()).unwrap_or_default())
}
