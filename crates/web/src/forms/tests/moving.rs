use super::*;
use model::{LeavesAtMove, Metres, Move, Tending};

fn moves(desk: &Desk, tag: &str) -> Vec<Move> {
    let record = desk.record(tag);
    let moves = record
        .tended
        .iter()
        .filter_map(|tended| match &tended.what {
            Tending::Moved(moved) => Some(moved.clone()),
            _ => None,
        });
    moves.collect()
}

#[tokio::test]
async fn a_move_is_noted_once_and_corrected_and_the_palm_then_has_a_promise() {
    let desk = Desk::new();
    let form = desk.get("/palm/A1/move").await.text;
    assert!(!form.contains("data-testid=\"promise\""), "never moved yet");
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("dug_on", "2026-03-01"),
        ("ball_radius", "45 cm"),
        ("leaves", "left"),
        ("depth_way", "same"),
    ];
    let before = desk.entries();
    for _ in 0..2 {
        let answer = desk.post("/palm/A1/move", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/palm/A1/move"),
            "{}",
            answer.text
        );
    }
    assert_eq!(desk.entries(), before + 1);
    let page = desk.get("/palm/A1/move").await.text;
    assert!(page.contains("data-testid=\"promise\"") && page.contains("data-state=\"due\""));
    assert_eq!(desk.record("A1").palm.moved_on, Some(day("2026-03-01")));

    let entry = desk.record("A1").tended[0].entry.0.to_string();
    let form = desk
        .get(&format!("/palm/A1/move?corrects={entry}"))
        .await
        .text;
    assert!(form.contains("value=\"0.45\""));
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("corrects", entry.as_str()),
        ("dug_on", "2026-03-02"),
        ("ball_radius", "0.45"),
        ("leaves", "tied"),
    ];
    let answer = desk.post("/palm/A1/move", &sent).await;
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    let now = moves(&desk, "A1");
    assert_eq!(now.len(), 1);
    assert_eq!(
        (now[0].dug_on, now[0].leaves, now[0].ball_radius),
        (
            day("2026-03-02"),
            Some(LeavesAtMove::Tied),
            Some(Metres(0.45))
        )
    );
}

#[tokio::test]
async fn a_refused_move_comes_back_with_what_was_typed() {
    let desk = Desk::new();
    let sent = [
        ("dug_on", "2026-09-01"),
        ("from", "a grove"),
        ("ball_radius", "wide"),
    ];
    let answer = desk.post("/palm/A1/move", &sent).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(answer.text.contains("value=\"a grove\"") && answer.text.contains("value=\"wide\""));
    assert!(answer.text.contains("dug_on-trouble") && answer.text.contains("ball_radius-trouble"));
    assert!(moves(&desk, "A1").is_empty());
    let nobody = desk.get("/palm/Z9/move").await;
    assert_eq!(nobody.status, StatusCode::NOT_FOUND);
}
