use super::*;
use model::Moment;

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
            "This is no list of palms, inspections or moves",
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
