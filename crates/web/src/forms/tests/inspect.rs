use super::*;

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
async fn forms_speak_spanish() {
    let desk = Desk::new();
    for (at, said) in [
        ("/palm/A1/inspect", "Inspeccionar A1"),
        ("/palms/new", "Registrar una palma"),
        ("/palm/A1/holds", "Mientras una palma está en espera"),
        ("/palm/A1/remove", "Quitar A1 del registro"),
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
