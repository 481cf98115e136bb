//! The forms through the router, over a memory ledger.

mod full;
mod import;
mod inspect;
mod moving;
mod palms;
mod rounds;
mod sites;
mod watering;

use crate::router;
use axum::body::{Body, to_bytes};
use axum::http::{Request, StatusCode, header};
use desk::office::Office;
use desk::world::World;
use ledger::Memory;
use model::PalmRecord;
use std::sync::Arc;
use testkit::{Book, InspectionWith, PalmWith, day, ids, inspection, palm};
use tower::ServiceExt;

const TODAY: &str = "2026-05-01";

/// A small office: palm A1 (one stem, one look), palm C3 (three stems), both on the North yard.
struct Desk {
    office: Arc<Office>,
}

/// An answer, read whole.
struct Answer {
    status: StatusCode,
    to: String,
    kind: String,
    text: String,
}

impl Desk {
    fn new() -> Desk {
        Desk::at(TODAY)
    }

    /// With a clock that may be ahead of the keeper's day.
    fn at(clock: &str) -> Desk {
        Desk::over(Arc::new(Memory::new()), clock)
    }

    fn over(ledger: Arc<dyn ledger::Ledger>, clock: &str) -> Desk {
        let mut book = Book::new(1);
        let first = book.register(
            palm("Sabal palmetto")
                .tag("A1")
                .site("North yard")
                .trunk(4.0),
        );
        book.register(
            palm("Phoenix reclinata")
                .tag("C3")
                .site("North yard")
                .stems(3),
        );
        book.on("2026-03-02")
            .inspect(first, inspection("2026-03-02").counts(30, 2, 1));
        let world = World {
            now: testkit::clock(clock),
            as_of: Some(day(TODAY)),
            new_id: ids(2),
            device: "test".into(),
        };
        ledger.append(book.entries()).unwrap();
        Desk {
            office: Arc::new(Office::open(ledger, world).unwrap()),
        }
    }

    async fn ask(&self, request: Request<Body>) -> Answer {
        let answer = router(self.office.clone()).oneshot(request).await.unwrap();
        let head = |name| {
            answer
                .headers()
                .get(name)
                .map_or("", |v| v.to_str().unwrap())
                .to_owned()
        };
        let (status, to, kind) = (
            answer.status(),
            head(header::LOCATION),
            head(header::CONTENT_TYPE),
        );
        let bytes = to_bytes(answer.into_body(), 10_000_000).await.unwrap();
        Answer {
            status,
            to,
            kind,
            text: String::from_utf8(bytes.to_vec()).unwrap(),
        }
    }

    async fn get(&self, at: &str) -> Answer {
        self.ask(Request::get(at).body(Body::empty()).unwrap())
            .await
    }

    async fn post(&self, at: &str, pairs: &[(&str, &str)]) -> Answer {
        self.post_as("en", at, pairs).await
    }

    async fn post_as(&self, lang: &str, at: &str, pairs: &[(&str, &str)]) -> Answer {
        let fields: Vec<String> = pairs
            .iter()
            .map(|(name, value)| format!("{name}={}", encoded(value)))
            .collect();
        let request =
            Request::post(at).header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
        let request = request.header(header::COOKIE, format!("lang={lang}"));
        self.ask(request.body(Body::from(fields.join("&"))).unwrap())
            .await
    }

    fn record(&self, tag: &str) -> Arc<PalmRecord> {
        self.office
            .state()
            .by_tag(tag)
            .unwrap_or_else(|| panic!("no palm {tag}"))
            .clone()
    }

    fn entries(&self) -> u64 {
        self.office.ledger().head().unwrap().seq
    }
}

fn encoded(value: &str) -> String {
    value
        .bytes()
        .map(|b| {
            if b.is_ascii_alphanumeric() {
                (b as char).to_string()
            } else {
                format!("%{b:02X}")
            }
        })
        .collect()
}

/// The id a drawn form carries.
fn id_in(page: &str) -> String {
    let start = page
        .find("name=\"id\" value=\"")
        .expect("the form carries an id")
        + 17;
    page[start..start + 36].to_owned()
}
