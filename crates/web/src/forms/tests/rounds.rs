use super::*;
use desk::office::Note;
use model::state::{Outcome, RoundRecord};
use model::{Body as Said, CrewWords, Position, Site};

const GATE: Position = Position {
    lat: 27.1,
    lon: -82.4,
};

/// The small office with a gate for its yard, and a crew that starts nearby.
fn crewed() -> Desk {
    let desk = Desk::new();
    let site = Site {
        name: "North yard".into(),
        gate: Some(GATE),
        ..Site::default()
    };
    let crew = CrewWords {
        name: "Terns".into(),
        from: Some(Position { lat: 27.12, ..GATE }),
        ..CrewWords::default()
    };
    let note = |body| Note {
        id: None,
        at: desk.office.now(),
        by: "Tester".into(),
        body,
        replaces: None,
    };
    let bodies = [Said::SiteDescribed(site), Said::CrewDescribed(crew)];
    desk.office.record(bodies.map(note).to_vec()).unwrap();
    desk
}

fn rounds(desk: &Desk) -> Vec<RoundRecord> {
    desk.office.state().work.rounds.values().cloned().collect()
}

/// The value of a hidden field, as a browser would send it back.
fn hidden(page: &str, name: &str) -> String {
    let at = page.find(&format!("name=\"{name}\" value=\"")).unwrap();
    let from = at + name.len() + 15;
    let end = page[from..].find('"').unwrap() + from;
    page[from..end]
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
}

const ASKED: &str = "/rounds/plan?go=yes&day=2026-05-02&scope=palms&tags=A1,+C3";

#[tokio::test]
async fn a_day_is_proposed_kept_once_and_worked_off() {
    let desk = crewed();
    let page = desk.get(ASKED).await.text;
    assert!(
        page.contains("data-testid=\"proposal\"") && page.contains("data-tag=\"A1\""),
        "{page}"
    );
    let carried = hidden(&page, "rounds");
    let form = &page[page.find("method=\"post\"").unwrap()..];
    let id = id_in(form);
    let sent = [
        ("id", id.as_str()),
        ("rounds", carried.as_str()),
        ("notes", "Mind the dog."),
    ];
    for _ in 0..2 {
        let answer = desk.post("/rounds/plan", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/rounds"),
            "{}",
            answer.text
        );
    }
    let kept = rounds(&desk);
    assert_eq!(kept.len(), 1);
    assert_eq!(
        (kept[0].plan.crew.as_str(), kept[0].plan.notes.as_str()),
        ("Terns", "Mind the dog.")
    );
    assert_eq!(kept[0].plan.stops.len(), 2);
    assert!(
        desk.get("/rounds")
            .await
            .text
            .contains("data-state=\"planned\"")
    );

    let at = format!("/round/{}", kept[0].id.0);
    let page = desk.get(&at).await.text;
    assert!(page.contains("data-testid=\"next\"") && page.contains("Mind the dog."));
    assert!(page.contains("data-testid=\"start\""), "not begun");
    desk.post(&at, &[("step", "start")]).await;
    assert!(rounds(&desk)[0].started.is_some());
    let bad = desk
        .post(
            &at,
            &[("step", "done"), ("palm", "A1"), ("minutes", "soon")],
        )
        .await;
    assert_eq!(bad.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(bad.text.contains("value=\"soon\"") && bad.text.contains("id=\"minutes-trouble\""));
    desk.post(
        &at,
        &[("step", "done"), ("palm", "A1"), ("minutes", "12,5")],
    )
    .await;
    let bad = desk.post(&at, &[("step", "skip"), ("palm", "C3")]).await;
    assert_eq!(bad.status, StatusCode::UNPROCESSABLE_ENTITY);
    desk.post(
        &at,
        &[("step", "skip"), ("palm", "C3"), ("why", "occupied")],
    )
    .await;
    let now = &rounds(&desk)[0];
    let outcome = |tag: &str| &now.outcomes[&desk.record(tag).id];
    assert!(matches!(outcome("A1"), Outcome::Done { minutes: Some(m), .. } if *m == 12.5));
    assert!(matches!(outcome("C3"), Outcome::Skipped { why, .. } if why == "occupied"));
    desk.post(&at, &[("step", "finish")]).await;
    let page = desk.get(&at).await.text;
    assert!(page.contains("nest or people in the way"), "{page}");
    assert!(
        desk.get("/rounds")
            .await
            .text
            .contains("data-state=\"finished\"")
    );
}

#[tokio::test]
async fn a_round_that_has_not_begun_can_be_called_off() {
    let desk = crewed();
    let page = desk.get(ASKED).await.text;
    let carried = hidden(&page, "rounds");
    desk.post("/rounds/plan", &[("rounds", carried.as_str())])
        .await;
    let at = format!("/round/{}", rounds(&desk)[0].id.0);
    let answer = desk.post(&format!("{at}/off"), &[("why", "storm")]).await;
    assert_eq!(
        (answer.status, answer.to.as_str()),
        (StatusCode::SEE_OTHER, "/rounds")
    );
    assert!(rounds(&desk).is_empty());
    assert_eq!(desk.get(&at).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn the_first_page_shows_the_rounds_of_its_own_day() {
    for (day, shown) in [("2026-05-01", true), ("2026-05-02", false)] {
        let desk = crewed();
        let asked = format!("/rounds/plan?go=yes&day={day}&scope=palms&tags=A1,+C3");
        let carried = hidden(&desk.get(&asked).await.text, "rounds");
        desk.post("/rounds/plan", &[("rounds", carried.as_str())])
            .await;
        let round = format!("href=\"/round/{}\"", rounds(&desk)[0].id.0);
        let first = desk.get("/").await.text;
        assert_eq!(first.contains(&round), shown, "{day}: {first}");
        assert_eq!(first.contains("Rounds today"), shown);
    }
}

#[tokio::test]
async fn a_day_is_for_what_is_ticked() {
    let desk = crewed();
    let page = desk.get("/rounds/plan").await.text;
    let ticked = |task: &str| {
        let at = page.find(&format!("name=\"task-{task}\"")).unwrap();
        page[at..at + page[at..].find('>').unwrap()].contains("checked")
    };
    let tasks = ["look", "cut", "water", "feed"].map(ticked);
    assert_eq!(tasks, [true, true, true, false]);
    let none = desk.get(&format!("{ASKED}&tasks=asked")).await.text;
    assert!(none.contains("Tick at least one thing to do.") && none.contains("id=\"tasks\""));
    let looks = desk
        .get(&format!("{ASKED}&tasks=asked&task-look=yes"))
        .await
        .text;
    let plan: serde_json::Value = serde_json::from_str(&hidden(&looks, "rounds")).unwrap();
    let stops = plan[0]["stops"].as_array().unwrap();
    assert!(
        !stops.is_empty()
            && stops
                .iter()
                .all(|stop| stop["tasks"] == serde_json::json!(["look"])),
        "{plan}"
    );
}

#[tokio::test]
async fn what_cannot_be_planned_says_why_and_keeps_what_was_asked() {
    let desk = crewed();
    let past = desk
        .get("/rounds/plan?go=yes&day=2026-04-01&scope=palms")
        .await
        .text;
    assert!(
        past.contains("id=\"day-trouble\"") && past.contains("id=\"tags-trouble\""),
        "{past}"
    );
    let none = desk
        .get("/rounds/plan?go=yes&day=2026-05-02&scope=palms&tags=X9")
        .await
        .text;
    assert!(none.contains("id=\"refused\"") && none.contains("X9"));
    let broken = desk.post("/rounds/plan", &[("rounds", "[{]")]).await;
    assert_eq!(broken.status, StatusCode::UNPROCESSABLE_ENTITY);
    let bare = Desk::new().get(ASKED).await.text;
    assert!(bare.contains("href=\"/crews\"") && bare.contains("id=\"refused\""));
}
