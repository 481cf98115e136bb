//! An office in memory and a browser without a screen.

use axum::body::{Body, to_bytes};
use axum::http::header::COOKIE;
use axum::http::{Request, Response, StatusCode};
use desk::office::Office;
use desk::world::World;
use std::sync::Arc;
use testkit::{Book, clock, day, ids};
use tower::ServiceExt;

/// The day all tests live on.
pub const TODAY: &str = "2026-06-15";

/// An office over what a book holds.
pub fn office(book: &Book) -> Arc<Office> {
    let office = empty();
    office.take_in(book.entries()).unwrap();
    office
}

/// An office over the demo.
pub fn demo() -> Arc<Office> {
    let office = empty();
    office.record(desk::demo::notes(day(TODAY))).unwrap();
    office
}

fn empty() -> Arc<Office> {
    let world = World {
        now: clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: ids(99),
        device: "test".into(),
    };
    Arc::new(Office::open(Arc::new(ledger::Memory::new()), world).unwrap())
}

/// Who asks: language and units of their cookies.
#[derive(Clone, Copy)]
pub struct As(pub &'static str, pub &'static str);

/// English, metric.
pub const EN: As = As("en", "metric");
/// Spanish, US customary.
pub const ES: As = As("es", "us");

/// Sends a request.
pub async fn send(office: &Arc<Office>, request: Request<Body>) -> Response<Body> {
    spearleaf_web::router(office.clone())
        .oneshot(request)
        .await
        .unwrap()
}

/// The body as text.
pub async fn text(response: Response<Body>) -> String {
    let bytes = to_bytes(response.into_body(), usize::MAX).await.unwrap();
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// Gets a page as somebody.
pub async fn get(office: &Arc<Office>, path: &str, who: As) -> (StatusCode, String) {
    let request = Request::get(path).header(COOKIE, format!("lang={}; units={}", who.0, who.1));
    let response = send(office, request.body(Body::empty()).unwrap()).await;
    (response.status(), text(response).await)
}

/// A page that must be there.
pub async fn page(office: &Arc<Office>, path: &str, who: As) -> String {
    let (status, body) = get(office, path, who).await;
    assert_eq!(status, StatusCode::OK, "{path}: {body}");
    body
}

/// The pieces of text between tags, without scripts.
pub fn texts(html: &str) -> Vec<String> {
    let mut out = Vec::new();
    for (i, piece) in html.split("<script").enumerate() {
        let piece = if i == 0 {
            piece
        } else {
            piece.split_once("</script>").map_or("", |(_, rest)| rest)
        };
        for part in piece.split('<') {
            let text = part.split_once('>').map_or(part, |(_, text)| text).trim();
            if !text.is_empty() {
                out.push(text.to_owned());
            }
        }
    }
    out
}
