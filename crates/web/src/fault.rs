//! Pages that say what went wrong and where to go.

use crate::{Here, Reader, page};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use desk::words::Value;
use maud::html;

/// A request that cannot be answered as asked.
#[derive(Debug)]
pub struct Fault {
    status: StatusCode,
    reader: Box<Reader>,
    says: String,
}

impl Fault {
    /// A fault with the words of a code.
    pub fn new(
        reader: &Reader,
        status: StatusCode,
        code: &str,
        args: &[(&'static str, Value)],
    ) -> Fault {
        Fault {
            status,
            reader: Box::new(reader.clone()),
            says: reader.words.text(code, args),
        }
    }

    /// No palm carries this tag.
    pub fn no_palm(reader: &Reader, tag: &str) -> Fault {
        Fault::new(
            reader,
            StatusCode::NOT_FOUND,
            "error-not-found-palm",
            &[("tag", tag.to_owned().into())],
        )
    }

    /// Something failed inside.
    pub fn broken(reader: &Reader) -> Fault {
        Fault::new(
            reader,
            StatusCode::INTERNAL_SERVER_ERROR,
            "error-broken",
            &[],
        )
    }
}

impl IntoResponse for Fault {
    fn into_response(self) -> Response {
        let body = html! {
            h1 { (self.says) }
            p { a.button href="/" { (self.reader.say("error-back")) } }
        };
        (
            self.status,
            page(&self.reader, Here::Elsewhere, &self.says, body),
        )
            .into_response()
    }
}

/// The page for an address that leads nowhere.
pub async fn nothing_here(reader: Reader) -> Fault {
    Fault::new(&reader, StatusCode::NOT_FOUND, "error-not-found", &[])
}
