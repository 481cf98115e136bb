//! The forms through the router, over a memory ledger.

use crate::router;
use axum::body::{Body, to_bytes};
use axum::http::{Request, StatusCode, header};
use desk::office::Office;
use desk::world::World;
use ledger::Memory;
use model::{Metres, Moment, PalmRecord};
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
        let memory: Arc<dyn ledger::Ledger> = Arc::new(Memory::new());
        memory.append(book.entries()).unwrap();
        Desk {
            office: Arc::new(Office::open(memory, world).unwrap()),
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
        let fields: Vec<String> = pairs
            .iter()
            .map(|(name, value)| format!("{name}={}", encoded(value)))
            .collect();
        let request =
            Request::post(at).header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
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

#[tokio::test]
async fn an_inspection_is_saved_once_however_often_it_is_sent() {
    let desk = Desk::new();
    let form = desk.get("/palm/A1/inspect").await;
    assert_eq!(form.status, StatusCode::OK);
    assert!(
        form.text.contains("value=\"2026-05-01\""),
        "the date is today"
    );
    assert!(
        form.text
            .contains("Last time, 2 Mar 2026: 30 green, 2 yellowing, 1 brown.")
    );
    let id = id_in(&form.text);
    let sent = [
        ("id", id.as_str()),
        ("stem", "1"),
        ("date", TODAY),
        ("green", "28"),
        ("yellowing", "0"),
        ("spear", "firm"),
    ];
    let before = desk.entries();
    for _ in 0..3 {
        let answer = desk.post("/palm/A1/inspect", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/palm/A1")
        );
    }
    assert_eq!(desk.entries(), before + 1);
    let record = desk.record("A1");
    let look = record.last_look().unwrap();
    assert_eq!(
        (look.date, look.green, look.yellowing, look.brown),
        (day(TODAY), Some(28), Some(0), None)
    );
}

#[tokio::test]
async fn going_back_and_changing_a_saved_form_corrects_it() {
    let desk = Desk::new();
    let id = id_in(&desk.get("/palm/A1/inspect").await.text);
    for green in ["28", "27", "27"] {
        let answer = desk
            .post(
                "/palm/A1/inspect",
                &[
                    ("id", &id),
                    ("stem", "1"),
                    ("date", TODAY),
                    ("green", green),
                ],
            )
            .await;
        assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    }
    let record = desk.record("A1");
    assert_eq!(record.inspections.len(), 2);
    assert_eq!(record.last_look().unwrap().green, Some(27));
}

#[tokio::test]
async fn a_refused_form_keeps_what_was_typed_and_says_what_is_wrong_at_the_field() {
    let desk = Desk::new();
    let before = desk.entries();
    let sent = [
        ("stem", "1"),
        ("date", TODAY),
        ("green", "12.5"),
        ("brown", "3"),
        ("clock_left", "8.5"),
        ("notes", "by <the> gate"),
    ];
    let answer = desk.post("/palm/A1/inspect", &sent).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(desk.entries(), before);
    for kept in [
        "value=\"12.5\"",
        "value=\"3\"",
        "<option value=\"8.5\" selected>8:30</option>",
        "by &lt;the&gt; gate",
        "id=\"green-trouble\"",
        "aria-invalid=\"true\"",
        "“12.5” is no whole number.",
    ] {
        assert!(answer.text.contains(kept), "{kept} is not in the page");
    }
}

#[tokio::test]
async fn the_script_is_told_where_to_go() {
    let desk = Desk::new();
    let request = Request::post("/palm/A1/inspect")
        .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
        .header(header::ACCEPT, "application/json")
        .body(Body::from("stem=1&date=2026-05-01&green=9"))
        .unwrap();
    let answer = desk.ask(request).await;
    assert_eq!(
        (answer.status, answer.kind.as_str()),
        (StatusCode::OK, "application/json")
    );
    assert_eq!(answer.text, r#"{"to":"/palm/A1"}"#);
}

#[tokio::test]
async fn a_form_from_another_site_is_not_taken() {
    let desk = Desk::new();
    let before = desk.entries();
    for (name, value) in [
        ("sec-fetch-site", "cross-site"),
        ("origin", "https://elsewhere.example"),
    ] {
        let request = Request::post("/palm/A1/inspect")
            .header(header::HOST, "127.0.0.1:7474")
            .header(name, value)
            .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
            .body(Body::from("stem=1&date=2026-05-01&green=9"))
            .unwrap();
        assert_eq!(desk.ask(request).await.status, StatusCode::FORBIDDEN);
    }
    assert_eq!(desk.entries(), before);
}

#[tokio::test]
async fn stems_have_forms_of_their_own_and_lead_to_the_next() {
    let desk = Desk::new();
    let form = desk.get("/palm/C3/inspect?stem=2").await.text;
    assert!(form.contains("name=\"stem\" value=\"2\"") && form.contains("/palm/C3/inspect?stem=3"));
    let sent = [
        ("stem", "2"),
        ("date", TODAY),
        ("green", "9"),
        ("do", "next"),
    ];
    assert_eq!(
        desk.post("/palm/C3/inspect", &sent).await.to,
        "/palm/C3/inspect?stem=3"
    );
    let sent = [("stem", "4"), ("date", TODAY), ("green", "9")];
    let answer = desk.post("/palm/C3/inspect", &sent).await;
    assert!(
        answer
            .text
            .contains("Stem 4 was given, but the palm is registered with 3 stems.")
    );
}

#[tokio::test]
async fn spirals_are_counted_without_script() {
    let desk = Desk::new();
    let sent = [
        ("stem", "1"),
        ("date", TODAY),
        ("spiral", "4"),
        ("place", "3"),
        ("green", "11"),
        ("do", "spiral"),
    ];
    let answer = desk.post("/palm/A1/inspect", &sent).await;
    // the worked example of the oil palm field handbook [oilpalm-field-handbook]
    assert!(
        answer.text.contains("name=\"new_leaves\" value=\"19\""),
        "19 new fronds"
    );
    assert!(
        answer.text.contains("name=\"green\" value=\"11\""),
        "what was typed stays"
    );
}

#[tokio::test]
async fn an_inspection_is_corrected_and_taken_back_from_the_history() {
    let desk = Desk::new();
    let entry = desk.record("A1").inspection_entries[0].0.to_string();
    let form = desk
        .get(&format!("/palm/A1/inspect?corrects={entry}"))
        .await
        .text;
    assert!(form.contains("name=\"green\" value=\"30\"") && form.contains("value=\"2026-03-02\""));
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("corrects", &entry),
        ("stem", "1"),
        ("date", "2026-03-03"),
        ("green", "31"),
    ];
    for _ in 0..2 {
        assert_eq!(
            desk.post("/palm/A1/inspect", &sent).await.status,
            StatusCode::SEE_OTHER
        );
    }
    let record = desk.record("A1");
    let looks: Vec<_> = record
        .inspections
        .iter()
        .map(|look| (look.date, look.green))
        .collect();
    assert_eq!(looks, [(day("2026-03-03"), Some(31))]);
    let entry = record.inspection_entries[0].0.to_string();
    let refused = desk
        .post("/palm/A1/inspect/withdraw", &[("corrects", &entry)])
        .await;
    assert!(
        refused.status == StatusCode::UNPROCESSABLE_ENTITY && refused.text.contains("Say why.")
    );
    let sent = [("corrects", entry.as_str()), ("why", "wrong palm")];
    assert_eq!(
        desk.post("/palm/A1/inspect/withdraw", &sent).await.status,
        StatusCode::SEE_OTHER
    );
    assert_eq!(desk.record("A1").inspections, []);
}

#[tokio::test]
async fn a_second_look_on_the_same_day_is_asked_about() {
    let desk = Desk::new();
    let sent = [("stem", "1"), ("date", "2026-03-02"), ("green", "29")];
    let answer = desk.post("/palm/A1/inspect", &sent).await;
    assert!(
        answer.status == StatusCode::UNPROCESSABLE_ENTITY
            && answer.text.contains("confirm-form-same-day")
    );
    let mut confirmed = sent.to_vec();
    confirmed.push(("confirm-form-same-day", "yes"));
    assert_eq!(
        desk.post("/palm/A1/inspect", &confirmed).await.status,
        StatusCode::SEE_OTHER
    );
    let record = desk.record("A1");
    assert_eq!(
        (record.inspections.len(), record.inspections[0].green),
        (1, Some(29))
    );
    assert!(
        desk.office.state().noticed().is_empty(),
        "the first look was replaced, not contradicted"
    );
}

#[tokio::test]
async fn a_palm_is_registered_once_and_edited_in_the_readers_units() {
    let desk = Desk::new();
    let form = desk.get("/palms/new").await.text;
    assert!(
        form.contains("<option value=\"Sabal palmetto\"")
            && form.contains("<option value=\"North yard\"")
    );
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("units", "us"),
        ("tag", "N 1/2"),
        ("species", "queen palm"),
        ("site", "South yard"),
        ("stems", "1"),
        ("trunk_height", "12 ft 6 in"),
        ("wires", "20"),
        ("lat", "27.95, -82.46"),
        ("full_crown", "18"),
        ("fronds_per_year", "10.5"),
    ];
    let before = desk.entries();
    for _ in 0..2 {
        let answer = desk.post("/palms/new", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/palm/N%201%2F2"),
            "{}",
            answer.text
        );
    }
    assert_eq!(desk.entries(), before + 1);
    let palm = desk.record("N 1/2").palm.clone();
    assert!((palm.trunk_height.unwrap().0 - 3.81).abs() < 1e-9);
    assert_eq!(palm.wires, Some(Metres::from_feet(20.0)));
    assert_eq!(
        (palm.full_crown, palm.fronds_per_year),
        (Some(18.0), Some(10.5))
    );
    assert_eq!(palm.position.map(|p| (p.lat, p.lon)), Some((27.95, -82.46)));

    let form = desk.get("/palm/N%201%2F2/edit").await.text;
    assert!(
        form.contains("value=\"3.81\"") && form.contains("value=\"6.1\""),
        "metres for a metric reader"
    );
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("tag", "N2"),
        ("species", "queen palm"),
        ("stems", "1"),
        ("trunk_height", "3.81"),
    ];
    assert_eq!(
        desk.post("/palm/N%201%2F2/edit", &sent).await.to,
        "/palm/N2"
    );
    let after = desk.record("N2").palm.clone();
    assert_eq!(
        after.trunk_height, palm.trunk_height,
        "unchanged text keeps the stored value"
    );
    assert_eq!((after.wires, after.site.as_str()), (None, ""));
}

#[tokio::test]
async fn a_palm_form_refuses_slips_and_offers_names() {
    let desk = Desk::new();
    let answer = desk
        .post(
            "/palms/new",
            &[("tag", "A1"), ("species", "Sabal palmeto"), ("stems", "1")],
        )
        .await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    for said in [
        "Another palm carries the tag “A1”.",
        "Is it one of these: Sabal palmetto",
        "confirm-form-species-nearest",
    ] {
        assert!(answer.text.contains(said), "{said}");
    }
    assert_eq!(
        desk.get("/api/species?like=phoenix%20can").await.text,
        r#"["Phoenix canariensis"]"#
    );
    assert_eq!(
        desk.get("/palm/nobody/edit").await.status,
        StatusCode::NOT_FOUND
    );
}

/// In the evening west of Greenwich the clock (UTC) is a day ahead of the keeper.
#[tokio::test]
async fn a_hold_set_in_the_evening_holds_the_same_day() {
    let desk = Desk::at("2026-05-02");
    desk.post("/palm/A1/holds", &[("reason", "nest")]).await;
    let since = desk.record("A1").holds[0].since;
    assert_eq!(since.day(), day(TODAY));
}

#[tokio::test]
async fn holds_are_set_and_lifted_and_palms_taken_off() {
    let desk = Desk::new();
    let form = desk.get("/palm/A1/holds").await.text;
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("reason", "nest"),
        ("until", "2026-08-01"),
        ("note", "two eggs"),
    ];
    for _ in 0..2 {
        assert_eq!(desk.post("/palm/A1/holds", &sent).await.to, "/palm/A1");
    }
    let record = desk.record("A1");
    assert_eq!(
        (
            record.holds.len(),
            record.holds[0].reason.as_str(),
            record.holds[0].note.as_str()
        ),
        (1, "nest", "two eggs")
    );
    let page = desk.get("/palm/A1/holds").await.text;
    assert!(
        page.contains("Nest or bats in the crown")
            && page.contains("two eggs")
            && page.contains("Until 1 Aug 2026.")
    );
    let hold = record.holds[0].entry.0.to_string();
    let refused = desk.post("/palm/A1/holds/lift", &[("hold", &hold)]).await;
    assert!(
        refused.status == StatusCode::UNPROCESSABLE_ENTITY
            && refused.text.contains("Say why it may be lifted.")
    );
    assert_eq!(
        desk.post("/palm/A1/holds/lift", &[("hold", &hold), ("note", "flown")])
            .await
            .to,
        "/palm/A1"
    );
    assert!(desk.record("A1").holds.is_empty());

    assert_eq!(
        desk.post("/palm/A1/remove", &[("why", "")]).await.status,
        StatusCode::UNPROCESSABLE_ENTITY
    );
    for _ in 0..2 {
        assert_eq!(
            desk.post("/palm/A1/remove", &[("why", "felled")]).await.to,
            "/palms"
        );
    }
    assert!(desk.office.state().by_tag("A1").is_none());
}

/// Uploads a file as a browser does.
async fn upload(desk: &Desk, name: &str, file: &str) -> Answer {
    let body = format!(
        "--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"{name}\"\r\nContent-Type: text/csv\r\n\r\n{file}\r\n\
         --edge\r\nContent-Disposition: form-data; name=\"encoding\"\r\n\r\n\r\n--edge--\r\n"
    );
    let request =
        Request::post("/import").header(header::CONTENT_TYPE, "multipart/form-data; boundary=edge");
    desk.ask(request.body(Body::from(body)).unwrap()).await
}

/// One router for a whole conversation: previews wait in it.
async fn talk(router: &axum::Router, request: Request<Body>) -> (StatusCode, String, String) {
    let answer = router.clone().oneshot(request).await.unwrap();
    let to = answer
        .headers()
        .get(header::LOCATION)
        .map_or("", |v| v.to_str().unwrap())
        .to_owned();
    let status = answer.status();
    let bytes = to_bytes(answer.into_body(), 10_000_000).await.unwrap();
    (status, to, String::from_utf8(bytes.to_vec()).unwrap())
}

fn file_request(file: &str) -> Request<Body> {
    let body = format!(
        "--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"list.csv\"\r\n\r\n{file}\r\n--edge--\r\n"
    );
    let request =
        Request::post("/import").header(header::CONTENT_TYPE, "multipart/form-data; boundary=edge");
    request.body(Body::from(body)).unwrap()
}

#[tokio::test]
async fn a_file_is_looked_through_then_taken_once_and_refused_rows_come_back() {
    let desk = Desk::new();
    let router = router(desk.office.clone());
    let file = "tag,species,stems,colour\nB1,Sabal palmetto,1,red\nB2,Sabal palmeto,2,\nB3,Sabal palmetto,none,\nA1,Sabal palmetto,1,\n";
    let (status, at, _) = talk(&router, file_request(file)).await;
    assert_eq!(status, StatusCode::SEE_OTHER);
    let get = |at: String| talk(&router, Request::get(at).body(Body::empty()).unwrap());
    let before = desk.entries();
    let (_, _, page) = get(at.clone()).await;
    for said in [
        "2 rows would be recorded",
        "2 are refused",
        "Line 4, stems:",
        "Line 5, tag:",
        "Record 2 rows",
        "colour",
        "Nearest: Sabal palmetto",
    ] {
        assert!(page.contains(said), "{said} is not in {page}");
    }
    assert_eq!(desk.entries(), before, "a preview records nothing");
    let (_, _, refused) = get(format!("{at}/refused.csv")).await;
    assert!(refused.starts_with("tag,species,stems,colour,refused_line,refused_column,refused_because\nB3,Sabal palmetto,none,,4,stems,"));
    assert_eq!(refused.lines().count(), 3);
    for _ in 0..2 {
        let (status, to, _) = talk(
            &router,
            Request::post(format!("{at}/take"))
                .body(Body::empty())
                .unwrap(),
        )
        .await;
        assert_eq!((status, to.as_str()), (StatusCode::SEE_OTHER, at.as_str()));
    }
    assert_eq!(desk.entries(), before + 2);
    assert_eq!(
        desk.record("B1")
            .palm
            .extra
            .get("colour")
            .map(String::as_str),
        Some("red")
    );
    let (_, _, page) = get(at).await;
    assert!(page.contains("2 rows are recorded."));
    // the same file again: everything good is there already
    let (_, at, _) = talk(&router, file_request(file)).await;
    let (_, _, page) = talk(&router, Request::get(at).body(Body::empty()).unwrap()).await;
    assert!(
        page.contains("No row would be recorded")
            && page.contains("2 rows say what the register says already"),
        "{page}"
    );
}

#[tokio::test]
async fn inspections_come_in_by_file() {
    let desk = Desk::new();
    let router = router(desk.office.clone());
    let file = "tag,stem,date,green,yellowing,brown\nA1,,2026-04-01,29,1,2\nZ9,,2026-04-01,29,1,2\nC3,2,2026-04-01,9,,\n";
    let (_, at, _) = talk(&router, file_request(file)).await;
    let (_, _, page) = talk(&router, Request::get(&at).body(Body::empty()).unwrap()).await;
    assert!(page.contains("A list of inspections.") && page.contains("2 rows would be recorded"));
    talk(
        &router,
        Request::post(format!("{at}/take"))
            .body(Body::empty())
            .unwrap(),
    )
    .await;
    let record = desk.record("A1");
    assert_eq!(
        record.last_look().map(|look| (look.date, look.green)),
        Some((day("2026-04-01"), Some(29)))
    );
    assert_eq!(desk.record("C3").looks(2).next().unwrap().yellowing, None);
    assert!(record.registered < Moment::at_midnight(day(TODAY)));
}

#[tokio::test]
async fn files_that_are_none_are_refused_in_words() {
    let desk = Desk::new();
    let router = router(desk.office.clone());
    for (file, said) in [
        ("", "The file is empty."),
        (
            "a,b\n1,2\n",
            "This is neither a list of palms nor one of inspections",
        ),
        (
            "species,site\nSabal palmetto,North\n",
            "Columns are missing: tag.",
        ),
        (
            "tag,species\n\u{0}\u{1}\u{2},x\n",
            "This is not a text file",
        ),
    ] {
        let (_, at, _) = talk(&router, file_request(file)).await;
        let (_, _, page) = talk(&router, Request::get(&at).body(Body::empty()).unwrap()).await;
        assert!(
            page.contains(said) && page.contains("There is nothing to record."),
            "{said} is not in {page}"
        );
    }
    assert!(
        upload(&desk, "", "")
            .await
            .text
            .contains("Choose a file first.")
    );
    assert_eq!(
        desk.get("/import/nothing-here").await.status,
        StatusCode::NOT_FOUND
    );
}

#[tokio::test]
async fn forms_speak_spanish() {
    let desk = Desk::new();
    for (at, said) in [
        ("/palm/A1/inspect", "Inspeccionar A1"),
        ("/palms/new", "Registrar una palma"),
        ("/palm/A1/holds", "Mientras una palma está en suspensión"),
        ("/palm/A1/remove", "Dar de baja A1"),
        ("/import", "Archivo CSV"),
    ] {
        let request = Request::get(at)
            .header(header::COOKIE, "lang=es")
            .body(Body::empty())
            .unwrap();
        let page = desk.ask(request).await.text;
        assert!(page.contains(said), "{at}: {said}");
        assert!(
            !page.contains(">forms-") && !page.contains(">form-"),
            "{at}: a code without words"
        );
    }
}
