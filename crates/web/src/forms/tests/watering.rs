use super::*;
use model::Tending;

fn given(desk: &Desk, tag: &str) -> Vec<Option<f64>> {
    let record = desk.record(tag);
    let own = record
        .tended
        .iter()
        .filter_map(|tended| match &tended.what {
            Tending::Watered(water) => Some(water.litres),
            _ => None,
        });
    own.collect()
}

#[tokio::test]
async fn a_tap_is_noted_once_and_leads_back_to_the_list_of_its_site() {
    let desk = Desk::new();
    let form = desk.get("/palm/A1/water").await.text;
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("litres", "120.0 L"),
        ("back", "watering"),
        ("back_site", "North yard"),
    ];
    for _ in 0..2 {
        let answer = desk.post("/palm/A1/water", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/watering?site=North%20yard"),
            "{}",
            answer.text
        );
    }
    assert_eq!(given(&desk, "A1"), [Some(120.0)]);
    let list = desk.get("/watering").await.text;
    assert!(
        list.contains("data-tag=\"A1\""),
        "a watering was noted: it is followed"
    );
}

#[tokio::test]
async fn a_watering_is_corrected_and_taken_back() {
    let desk = Desk::new();
    let sent = [("date", "2026-04-30"), ("litres", "40")];
    desk.post("/palm/A1/water", &sent).await;
    let entry = desk.record("A1").tended[0].entry.0.to_string();
    let form = desk
        .get(&format!("/palm/A1/water?corrects={entry}"))
        .await
        .text;
    assert!(form.contains("value=\"40\"") && form.contains("value=\"2026-04-30\""));
    let sent = [
        ("corrects", entry.as_str()),
        ("date", "2026-04-30"),
        ("litres", "60"),
    ];
    let answer = desk.post("/palm/A1/water", &sent).await;
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    assert_eq!(given(&desk, "A1"), [Some(60.0)]);
    let back = [("corrects", entry.as_str()), ("why", "at another palm")];
    let answer = desk.post("/palm/A1/water/withdraw", &back).await;
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    assert!(given(&desk, "A1").is_empty());
}

#[tokio::test]
async fn what_is_refused_comes_back_with_what_was_typed() {
    let desk = Desk::new();
    let sent = [("litres", "a bucket"), ("water_notes", "by hand")];
    let answer = desk.post("/palm/A1/water", &sent).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(
        answer.text.contains("value=\"a bucket\"") && answer.text.contains("value=\"by hand\"")
    );
    assert!(answer.text.contains("litres-trouble"));
    let sent = [
        ("product_own", ""),
        ("mass", "heaps"),
        ("feed_notes", "raked"),
    ];
    let answer = desk.post("/palm/A1/feeding", &sent).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(answer.text.contains("mass-trouble") && answer.text.contains("product-trouble"));
    assert!(answer.text.contains("value=\"raked\""));
    assert!(desk.record("A1").tended.is_empty());
}

#[tokio::test]
async fn a_feeding_is_noted_and_the_next_too_soon_is_asked_about() {
    let desk = Desk::new();
    let id = id_in(&desk.get("/palm/A1/feeding").await.text);
    let sent = [
        ("id", id.as_str()),
        ("product", "palm-blend"),
        ("mass", "900 g"),
        ("date", "2026-04-20"),
    ];
    for _ in 0..2 {
        let answer = desk.post("/palm/A1/feeding", &sent).await;
        assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    }
    assert_eq!(desk.record("A1").tended.len(), 1);
    let again = [("product", "palm-blend"), ("mass", "900 g")];
    let answer = desk.post("/palm/A1/feeding", &again).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(
        answer.text.contains("confirm-feeding-too-soon"),
        "{}",
        answer.text
    );
}
