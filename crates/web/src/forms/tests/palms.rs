use super::*;
use model::Metres;

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

#[tokio::test]
async fn a_palm_form_sent_again_with_other_values_is_one_more_change() {
    let desk = Desk::new();
    let id = id_in(&desk.get("/palms/new").await.text);
    for (site, to) in [
        ("East", "/palm/E1"),
        ("West", "/palm/E1"),
        ("West", "/palm/E1"),
    ] {
        let sent = [
            ("id", id.as_str()),
            ("tag", "E1"),
            ("species", "Sabal palmetto"),
            ("site", site),
        ];
        assert_eq!(desk.post("/palms/new", &sent).await.to, to);
    }
    let record = desk.record("E1");
    assert_eq!(
        (record.palm.site.as_str(), record.entries.len()),
        ("West", 2)
    );
    let id = id_in(&desk.get("/palm/E1/edit").await.text);
    for site in ["North", "South", "South"] {
        let sent = [
            ("id", id.as_str()),
            ("tag", "E1"),
            ("species", "Sabal palmetto"),
            ("site", site),
        ];
        assert_eq!(desk.post("/palm/E1/edit", &sent).await.to, "/palm/E1");
    }
    let record = desk.record("E1");
    assert_eq!(
        (record.palm.site.as_str(), record.entries.len()),
        ("South", 4)
    );
}

#[tokio::test]
async fn what_others_wrote_meanwhile_is_not_overwritten_without_a_word() {
    let desk = Desk::new();
    let seen = |page: &str| {
        let at = page.find("name=\"seen\" value=\"").unwrap() + 19;
        page[at..at + 16].to_owned()
    };
    let old = seen(&desk.get("/palm/A1/edit").await.text);
    let sent = [
        ("seen", old.as_str()),
        ("tag", "A1"),
        ("species", "Sabal palmetto"),
        ("over", "pool"),
    ];
    assert_eq!(desk.post("/palm/A1/edit", &sent).await.to, "/palm/A1");
    let late = [
        ("seen", old.as_str()),
        ("tag", "A1"),
        ("species", "Sabal palmetto"),
        ("over", "path"),
    ];
    let asked = desk.post("/palm/A1/edit", &late).await;
    assert_eq!(asked.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(asked.text.contains("This palm was changed elsewhere"));
    assert_eq!(desk.record("A1").palm.over, "pool");
    let mut meant = late.to_vec();
    meant.push(("confirm-form-changed-meanwhile", "yes"));
    assert_eq!(desk.post("/palm/A1/edit", &meant).await.to, "/palm/A1");
    assert_eq!(desk.record("A1").palm.over, "path");
}
