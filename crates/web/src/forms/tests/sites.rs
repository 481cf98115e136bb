use super::*;
use model::{CrewWords, Hours, Site};

fn site(desk: &Desk, name: &str) -> Option<Site> {
    desk.office.state().work.sites.get(name).cloned()
}

fn crew(desk: &Desk, name: &str) -> Option<CrewWords> {
    desk.office.state().work.crews.get(name).cloned()
}

#[tokio::test]
async fn a_site_that_palms_name_is_described_and_changed_and_sent_twice_is_saved_once() {
    let desk = Desk::new();
    let list = desk.get("/sites").await.text;
    assert!(
        list.contains("data-site=\"North yard\" data-state=\"bare\""),
        "{list}"
    );
    let page = desk.get("/site/North%20yard").await.text;
    assert!(page.contains("A1") && page.contains("C3") && page.contains("Describe this site"));
    let form = desk.get("/site/North%20yard/edit").await.text;
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("owner", "the parish"),
        ("lat", "25.5, -80.25"),
        ("hours_1-from", "06:00"),
        ("hours_1-to", "11:00"),
        ("closed_1-first", "2026-05-10"),
        ("closed_1-last", "2026-05-12"),
        ("closed_1-why", "Feast"),
        ("weevil_area", "yes"),
        ("tidy", "1"),
    ];
    let before = desk.entries();
    for _ in 0..2 {
        let answer = desk.post("/site/North%20yard/edit", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/site/North%20yard"),
            "{}",
            answer.text
        );
    }
    assert_eq!(desk.entries(), before + 1);
    let known = site(&desk, "North yard").unwrap();
    assert_eq!(known.gate.map(|p| (p.lat, p.lon)), Some((25.5, -80.25)));
    assert_eq!(
        known.hours,
        [Hours {
            from: 21_600,
            to: 39_600
        }]
    );
    let page = desk.get("/site/North%20yard").await.text;
    assert!(
        page.contains("data-state=\"ahead\"") && page.contains("Feast"),
        "{page}"
    );
    assert!(
        desk.get("/sites")
            .await
            .text
            .contains("data-state=\"soon\"")
    );
    // the palm's page says what its site says
    let palm = desk.get("/palm/A1").await.text;
    assert!(palm.contains("data-testid=\"site-says\"") && palm.contains("/site/North%20yard"));

    // the person goes back and changes the figure: one more description
    let mut other = sent;
    other[9] = ("tidy", "2");
    let answer = desk.post("/site/North%20yard/edit", &other).await;
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    assert_eq!(site(&desk, "North yard").unwrap().tidy, Some(2));
    assert_eq!(desk.entries(), before + 2);
}

#[tokio::test]
async fn what_cannot_be_stays_typed_with_the_trouble_beside_its_row_in_both_languages() {
    let desk = Desk::new();
    let sent = [
        ("site_name", "South yard"),
        ("hours_1-from", "06:00"),
        ("hours_1-to", "11:00"),
        ("hours_2-from", "10:00"),
        ("hours_2-to", "12:00"),
        ("notes", "two dogs"),
    ];
    let answer = desk.post("/sites/new", &sent).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    let page = &answer.text;
    assert!(
        page.contains("This overlaps 06:00-11:00. Make one window of the two."),
        "{page}"
    );
    assert!(page.contains("href=\"#hours_2\"") && page.contains("id=\"hours_2\""));
    assert!(page.contains("value=\"South yard\"") && page.contains("two dogs"));
    assert!(page.contains("value=\"10:00\""));
    let spanish = desk.post_as("es", "/sites/new", &sent).await.text;
    assert!(
        spanish.contains("Esto se cruza con 06:00-11:00."),
        "{spanish}"
    );
    assert!(site(&desk, "South yard").is_none());
    // mended, it is there under its name, and the name is taken
    let mended = [("site_name", "South yard"), ("notes", "two dogs")];
    let answer = desk.post("/sites/new", &mended).await;
    assert_eq!(answer.to, "/site/South%20yard");
    let again = desk
        .post("/sites/new", &[("site_name", "South yard")])
        .await;
    assert_eq!(again.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(again.text.contains("is described already"));
}

#[tokio::test]
async fn a_crew_is_described_in_the_readers_units_and_leaves() {
    let desk = Desk::new();
    let form = desk.get("/crews/new").await.text;
    let id = id_in(&form);
    let sent = [
        ("id", id.as_str()),
        ("units", "us"),
        ("crew_name", "A/B"),
        ("people", "3"),
        ("hours_1-from", "06:00"),
        ("hours_1-to", "14:30"),
        ("skill-lift", "yes"),
        ("kit-pole-saw", "yes"),
        ("kit_more", "cones, rope"),
        ("room", "20"),
    ];
    for _ in 0..2 {
        let answer = desk.post("/crews/new", &sent).await;
        assert_eq!(
            (answer.status, answer.to.as_str()),
            (StatusCode::SEE_OTHER, "/crew/A%2FB"),
            "{}",
            answer.text
        );
    }
    let known = crew(&desk, "A/B").unwrap();
    // 20 cubic yards, each 0.764554857984 m³ (0.9144 m cubed)
    assert!((known.room_m3.unwrap() - 15.291_097).abs() < 1e-5);
    assert_eq!(known.kit, ["pole-saw", "cones", "rope"]);
    let page = desk.get("/crew/A%2FB").await.text;
    assert!(page.contains("3") && page.contains("cones"), "{page}");
    let form = desk.get("/crew/A%2FB/edit").await.text;
    assert!(
        form.contains("name=\"skill-lift\" value=\"yes\" checked"),
        "{form}"
    );
    let id = id_in(&form);
    let gone = [("id", id.as_str()), ("people", "3"), ("gone", "yes")];
    let answer = desk.post("/crew/A%2FB/edit", &gone).await;
    assert_eq!(answer.status, StatusCode::SEE_OTHER, "{}", answer.text);
    assert!(crew(&desk, "A/B").unwrap().gone);
    assert!(
        desk.get("/crew/A%2FB")
            .await
            .text
            .contains("data-testid=\"gone\"")
    );
}

#[tokio::test]
async fn unknown_sites_and_crews_are_said_to_be_unknown() {
    let desk = Desk::new();
    for address in [
        "/site/Nowhere",
        "/site/Nowhere/edit",
        "/crew/Nobody",
        "/crew/Nobody/edit",
    ] {
        let answer = desk.get(address).await;
        assert_eq!(answer.status, StatusCode::NOT_FOUND, "{address}");
        assert!(answer.text.contains("There is no"), "{address}");
    }
}
