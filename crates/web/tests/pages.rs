//! The pages as a browser gets them, on a ledger in memory.

mod support;

use axum::body::Body;
use axum::http::header::{CONTENT_TYPE, LOCATION, SET_COOKIE};
use axum::http::{Request, StatusCode};
use crown::Explanation;
use support::*;
use testkit::{Book, InspectionWith, PalmWith, inspection, palm};

/// Seven cabbage palms of a fed row, one of them hungry, one with a hold, one with two stems, one with a strange tag.
fn register() -> Book {
    let mut book = Book::new(1);
    for n in 1..=4 {
        let id = book.register(
            palm("Sabal palmetto")
                .tag(&format!("A{n}"))
                .site("North yard")
                .cleaned("2025-06-01")
                .trunk(6.1),
        );
        for (date, green, brown) in [
            ("2025-09-01", 30, 4),
            ("2026-01-10", 31, 8),
            ("2026-06-01", 30, 14),
        ] {
            book.on(date)
                .inspect(id, inspection(date).counts(green, 1, brown));
        }
    }
    let held = book.register(palm("Phoenix canariensis").tag("B1").site("South yard"));
    book.hold(held, "wilt-suspect", None);
    let stems = book.register(
        palm("Phoenix reclinata")
            .tag("C1")
            .site("South yard")
            .stems(2),
    );
    book.on("2026-06-01")
        .inspect(stems, inspection("2026-06-01").counts(20, 0, 1));
    book.inspect(stems, inspection("2026-06-01").stem(2).counts(9, 6, 2));
    book.register(palm("No such palm").tag("<b>&\"x/y"));
    book
}

const PLACES: [&str; 38] = [
    "/",
    "/palms",
    "/palms?q=zzz",
    "/sources",
    "/about",
    "/settings",
    "/palm/A1",
    "/palm/B1",
    "/palm/C1?stem=2",
    "/palm/A1?live=25",
    "/palm/%3Cb%3E%26%22x%2Fy",
    "/palm/A1?weeks=24&cut=uncut",
    "/moved",
    "/sites",
    "/sites/new",
    "/site/North%20yard",
    "/crews",
    "/crews/new",
    "/owners",
    "/owners/summary?site=North+yard",
    "/owners/summary?site=South%20yard&from=2026-01-01&until=2026-06-01",
    "/owners/summary?site=-",
    "/season",
    "/rounds",
    "/rounds/plan",
    "/selection",
    "/selection?n=3&species-0=Sabal+palmetto&green-0=20&brown-0=4&dug-0=40&species-1=Nonesuch&green-1=x&dug-2=3",
    "/watering",
    "/feeding",
    "/watering?site=South+yard",
    "/palm/A1/water",
    "/palm/A1/feeding",
    "/palm/B1/feeding?against=k-deficiency",
    "/palm/C1/feeding?against=fe-deficiency",
    "/palm/%3Cb%3E%26%22x%2Fy/water",
    "/palm/A1/move",
    "/palm/A1/owner",
    "/palm/C1/move?ask=yes&diameter=1&moist=no&hot=yes&kv=none",
];

#[tokio::test]
async fn every_page_speaks_both_languages_and_leaves_no_code_unsaid() {
    let office = office(&register());
    for who in [EN, ES, As("es", "metric"), As("en", "us")] {
        for path in PLACES {
            let body = page(&office, path, who).await;
            assert!(
                body.contains(&format!("<html lang=\"{}\"", who.0)),
                "{path}"
            );
            assert!(!body.contains("{$"), "{path}: an argument is missing");
            for text in texts(&body) {
                // a message without words shows as its code: lower case words with hyphens and nothing else
                let code =
                    text.contains('-') && text.chars().all(|c| c.is_ascii_lowercase() || c == '-');
                let source = text.chars().any(|c| c.is_ascii_digit());
                assert!(
                    !code || source,
                    "{path} in {}: “{text}” has no words",
                    who.0
                );
            }
        }
    }
}

#[tokio::test]
async fn the_demo_says_so_on_every_page_and_a_register_does_not() {
    let (demo, own) = (demo(), office(&register()));
    for path in [
        "/",
        "/palms",
        "/palm/L-16",
        "/sources",
        "/about",
        "/settings",
        "/no/such/page",
        "/palms/new",
        "/import",
    ] {
        assert!(
            get(&demo, path, EN)
                .await
                .1
                .contains("data-testid=\"demo\""),
            "{path}"
        );
    }
    for path in PLACES {
        assert!(
            !page(&own, path, EN).await.contains("data-testid=\"demo\""),
            "{path}"
        );
    }
}

#[tokio::test]
async fn a_palm_shows_its_crown_its_reading_and_its_year() {
    let office = office(&register());
    let body = page(&office, "/palm/A1", EN).await;
    let svg = body
        .split("<svg class=\"palm\"")
        .nth(1)
        .unwrap()
        .split("</svg>")
        .next()
        .unwrap();
    let drawn = svg.matches("<use ").count();
    let counts = body
        .split("id=\"crown-counts\"")
        .nth(1)
        .unwrap()
        .split('<')
        .next()
        .unwrap();
    let said: usize = counts
        .split(|c: char| !c.is_ascii_digit())
        .filter_map(|n| n.parse::<usize>().ok())
        .take(3)
        .sum();
    assert_eq!(drawn, said, "{counts}");
    assert!(svg.contains("<title") && svg.contains("<desc") && svg.contains("class=\"level\""));
    let json = body.split("id=\"crown-data\"").nth(1).unwrap();
    let json = json
        .split_once('>')
        .unwrap()
        .1
        .split("</script>")
        .next()
        .unwrap();
    let data: serde_json::Value = serde_json::from_str(json).unwrap();
    assert_eq!(data["weeks"].as_array().unwrap().len(), 14);
    assert_eq!(data["modes"]["plan"].as_array().unwrap().len(), 14);
    assert_eq!(
        data["modes"]["uncut"][0]["fronds"]
            .as_array()
            .unwrap()
            .len(),
        drawn
    );
    for key in ["ageing", "hunger", "decline"] {
        assert!(body.contains(&format!("data-testid=\"p-{key}\"")), "{key}");
    }
    assert!(
        !body.contains("data-testid=\"p-move\""),
        "it was never moved"
    );
}

#[tokio::test]
async fn without_script_other_weeks_are_links() {
    let office = office(&register());
    let now = page(&office, "/palm/A1", EN).await;
    let later = page(&office, "/palm/A1?weeks=24&cut=uncut", EN).await;
    assert!(now.contains("Now, 15 Jun 2026") && later.contains("In 24 weeks, 30 Nov 2026"));
    assert!(now.contains("<noscript>") && now.contains("/palm/A1?cut=plan&amp;weeks=24#crown"));
}

#[tokio::test]
async fn lengths_follow_the_units_and_dates_the_language() {
    let office = office(&register());
    let flat = |s: String| s.replace('\u{a0}', " ");
    assert!(flat(page(&office, "/palm/A1", EN).await).contains("Trunk 6.1 m"));
    assert!(flat(page(&office, "/palm/A1", As("en", "us")).await).contains("Trunk 20 ft"));
    let es = flat(page(&office, "/palm/A1", As("es", "metric")).await);
    assert!(es.contains("Tronco 6,1 m") && es.contains("15 jun 2026"));
}

#[tokio::test]
async fn cautions_are_in_the_readers_language_to_the_last_condition() {
    let office = office(&register());
    let (en, es) = (
        page(&office, "/about", EN).await,
        page(&office, "/about", ES).await,
    );
    let (plate, placa) = (
        "the plate of the machine comes first",
        "manda la placa de la máquina",
    );
    assert!(en.contains(plate) && !en.contains(placa));
    assert!(es.contains(placa) && !es.contains(plate));
}

/// What the counts cannot tell changes the plan and stays in the form: storm, weevils, frost.
#[tokio::test]
async fn circumstances_change_the_plan_and_are_kept() {
    let office = office(&register());
    let calm = page(&office, "/palm/A1", EN).await;
    let told = page(
        &office,
        "/palm/A1?storm=1&weevil=1&freeze=2026-06-10&kv=72.5",
        EN,
    )
    .await;
    let storm = "A storm is expected. No live frond comes off.";
    assert!(!calm.contains(storm) && told.contains(storm));
    assert!(told.contains("Palm weevils fly here and fresh cuts draw them."));
    let kept = [
        "name=\"storm\" value=\"1\" checked",
        "value=\"2026-06-10\"",
        "value=\"72.5\"",
    ];
    assert!(kept.iter().all(|k| told.contains(k)) && !calm.contains("checked"));
    assert!(
        told.contains("storm=1&amp;weevil=1"),
        "the drawing's links keep them too"
    );
}

#[tokio::test]
async fn stems_have_tabs_and_answers_of_their_own() {
    let office = office(&register());
    let (one, two) = (
        page(&office, "/palm/C1", EN).await,
        page(&office, "/palm/C1?stem=2", EN).await,
    );
    assert!(one.contains("/palm/C1?stem=2") && one.contains("id=\"explanations-palm\""));
    let headline = |s: &str| {
        s.split("id=\"crown-counts\"")
            .nth(1)
            .unwrap()
            .split('<')
            .next()
            .unwrap()
            .to_owned()
    };
    assert_ne!(headline(&one), headline(&two));
    assert_eq!(
        get(&office, "/palm/C1?stem=3", EN).await.0,
        StatusCode::NOT_FOUND
    );
}

#[tokio::test]
async fn taking_most_of_a_crown_is_refused_with_reasons() {
    // 40 fronds cut to 15 is over-trimming: common practice, no source
    let mut book = Book::new(2);
    let id = book.register(palm("Sabal palmetto").tag("P").cleaned("2025-06-01"));
    book.on("2026-06-10")
        .inspect(id, inspection("2026-06-10").counts(40, 0, 0));
    let office = office(&book);
    let body = page(&office, "/palm/P?live=25&next=2026-12-14", EN).await;
    assert!(body.contains("data-verdict=\"refused\""), "{body}");
    assert!(body.contains("data-code=\"over-trimming\""));
    assert!(
        body.contains("data-mode=\"asked\""),
        "the switch shows what was asked"
    );
    assert!(!page(&office, "/palm/P", EN).await.contains("data-verdict"));
    assert!(
        !page(&office, "/palm/P?live=many", EN)
            .await
            .contains("data-verdict")
    );
}

#[tokio::test]
async fn a_hold_stands_before_everything() {
    let office = office(&register());
    let today = page(&office, "/", EN).await;
    let first = today.split("<ol class=\"needs\">").nth(1).unwrap();
    assert!(
        first
            .trim_start()
            .starts_with("<li class=\"refuse\" data-code=\"need-wilt\">"),
        "{}",
        &first[..200]
    );
    let palm = page(&office, "/palm/B1", EN).await;
    assert!(palm.contains("hold-banner") && palm.contains("/palm/B1/holds"));
}

#[tokio::test]
async fn search_and_filters_find_palms() {
    let office = office(&register());
    let tags = |body: &str| body.matches("<li data-tag=").count();
    for (query, found) in [
        ("", 7),
        ("?q=sabal", 4),
        ("?q=a1", 1),
        ("?site=South%20yard", 2),
        ("?species=Sabal+palmetto&site=South+yard", 0),
        ("?q=zzz", 0),
        ("?explanation=nonsense&page=99", 7),
    ] {
        assert_eq!(
            tags(&page(&office, &format!("/palms{query}"), EN).await),
            found,
            "{query}"
        );
    }
    page(&office, "/", EN).await; // reads them all
}

#[tokio::test]
async fn whatever_stands_in_a_tag_stays_text() {
    let office = office(&register());
    for path in [
        "/",
        "/palms",
        "/palm/%3Cb%3E%26%22x%2Fy",
        "/palms?q=%3Cscript%3E",
    ] {
        let body = page(&office, path, EN).await;
        assert!(
            !body.contains("<b>&") && !body.contains("<script>"),
            "{path}"
        );
    }
    let (status, body) = get(&office, "/palm/%3Ci%3E", EN).await;
    assert_eq!(status, StatusCode::NOT_FOUND);
    assert!(body.contains("&lt;i&gt;") && !body.contains("<i>"));
}

#[tokio::test]
async fn every_link_between_pages_leads_somewhere() {
    let office = office(&register());
    let mut seen = std::collections::BTreeSet::new();
    let mut to_see: Vec<String> = vec!["/".into()];
    while let Some(path) = to_see.pop() {
        if !seen.insert(path.clone()) {
            continue;
        }
        let (status, body) = get(&office, &path, EN).await;
        assert_eq!(status, StatusCode::OK, "{path}");
        let links = body
            .split("href=\"/")
            .skip(1)
            .filter_map(|rest| rest.split('"').next());
        for link in links
            .map(|l| l.replace("&amp;", "&"))
            .filter(|l| !l.starts_with("assets/"))
        {
            let (address, _) = link.split_once('#').unwrap_or((&link, ""));
            // frames of the year, and places to come back to, differ in numbers only; sheets are no pages and have
            // tests of their own (tests/sheets.rs)
            let same = address.contains("weeks=") || address.contains("back=");
            if !same && !address.contains(".pdf") {
                to_see.push(format!("/{address}"));
            }
        }
    }
    assert!(seen.len() > 25, "{seen:?}");
}

#[tokio::test]
async fn sources_named_on_a_palm_are_in_the_list() {
    let office = office(&register());
    let list = page(&office, "/sources", EN).await;
    let palm = page(&office, "/palm/A1?live=25", EN).await;
    let keys: Vec<&str> = palm
        .split("href=\"/sources#")
        .skip(1)
        .filter_map(|r| r.split('"').next())
        .collect();
    assert!(keys.len() > 5, "{keys:?}");
    for key in keys {
        assert!(list.contains(&format!("<li id=\"{key}\"")), "{key}");
    }
}

#[tokio::test]
async fn settings_are_kept_and_lead_back_to_our_own_pages_only() {
    let office = office(&register());
    for (back, leads) in [
        ("/palms", "/palms"),
        ("//elsewhere.example", "/"),
        ("https://elsewhere.example", "/"),
        ("/\\elsewhere.example", "/"),
    ] {
        let form = format!(
            "lang=es&units=us&back={}",
            back.replace('/', "%2F")
                .replace(':', "%3A")
                .replace('\\', "%5C")
        );
        let request =
            Request::post("/settings").header(CONTENT_TYPE, "application/x-www-form-urlencoded");
        let response = send(&office, request.body(Body::from(form)).unwrap()).await;
        assert_eq!(response.status(), StatusCode::SEE_OTHER);
        assert_eq!(response.headers()[LOCATION], leads);
        let cookies: Vec<_> = response
            .headers()
            .get_all(SET_COOKIE)
            .iter()
            .map(|c| c.to_str().unwrap())
            .collect();
        assert!(
            cookies[0].starts_with("lang=es;") && cookies[1].starts_with("units=us;"),
            "{cookies:?}"
        );
    }
}

#[tokio::test]
async fn the_way_to_the_settings_leads_back_to_where_one_was() {
    let office = office(&register());
    let palm = page(&office, "/palm/A1?weeks=8", EN).await;
    assert!(palm.contains("href=\"/settings?back=%2Fpalm%2FA1%3Fweeks%3D8\""));
    let settings = page(&office, "/settings?back=%2Fpalm%2FA1%3Fweeks%3D8", EN).await;
    assert!(settings.contains("name=\"back\" value=\"/palm/A1?weeks=8\""));
    assert!(!settings.contains("settings?back="));
}

#[tokio::test]
async fn a_form_from_another_site_is_not_taken() {
    let office = office(&register());
    let send_from = |name: &'static str, value: &'static str| {
        let form = "application/x-www-form-urlencoded";
        let request = Request::post("/settings")
            .header("host", "palms.example:7474")
            .header(CONTENT_TYPE, form);
        send(
            &office,
            request
                .header(name, value)
                .body(Body::from("lang=es&units=us"))
                .unwrap(),
        )
    };
    for (name, value, status) in [
        ("sec-fetch-site", "cross-site", StatusCode::FORBIDDEN),
        ("sec-fetch-site", "same-site", StatusCode::FORBIDDEN),
        ("sec-fetch-site", "same-origin", StatusCode::SEE_OTHER),
        ("origin", "http://elsewhere.example", StatusCode::FORBIDDEN),
        ("origin", "null", StatusCode::FORBIDDEN),
        ("origin", "http://palms.example:7474", StatusCode::SEE_OTHER),
        ("accept", "*/*", StatusCode::SEE_OTHER),
    ] {
        assert_eq!(
            send_from(name, value).await.status(),
            status,
            "{name}: {value}"
        );
    }
}

#[tokio::test]
async fn pages_forbid_everything_from_outside() {
    let office = office(&register());
    for path in ["/", "/palm/A1", "/nowhere"] {
        let response = send(&office, Request::get(path).body(Body::empty()).unwrap()).await;
        let policy = response.headers()["content-security-policy"]
            .to_str()
            .unwrap()
            .to_owned();
        assert!(policy.contains("default-src 'self'"), "{path}");
        assert_eq!(response.headers()["x-content-type-options"], "nosniff");
        let body = text(response).await;
        assert!(
            !body.contains("http://") && !body.contains("style=\""),
            "{path} reaches outside or styles inline"
        );
        for asset in body
            .split("/assets/")
            .skip(1)
            .filter_map(|r| r.split('"').next())
        {
            let response = send(
                &office,
                Request::get(format!("/assets/{asset}"))
                    .body(Body::empty())
                    .unwrap(),
            )
            .await;
            assert_eq!(response.status(), StatusCode::OK, "{asset}");
        }
    }
}

#[tokio::test]
async fn the_browser_s_language_is_spoken_until_one_is_chosen() {
    let office = office(&register());
    for (accept, lang) in [
        ("es-MX,es;q=0.9,en;q=0.5", "es"),
        ("de,fr;q=0.5", "en"),
        ("de, es;q=0.3", "es"),
    ] {
        let request = Request::get("/about")
            .header("accept-language", accept)
            .body(Body::empty())
            .unwrap();
        let body = text(send(&office, request).await).await;
        assert!(body.contains(&format!("<html lang=\"{lang}\"")), "{accept}");
    }
}

#[tokio::test]
async fn machines_get_the_same_in_numbers() {
    let office = office(&register());
    let list: serde_json::Value =
        serde_json::from_str(&page(&office, "/api/palms?q=sabal", EN).await).unwrap();
    assert_eq!(
        (
            list["total"].as_u64(),
            list["palms"].as_array().map(Vec::len)
        ),
        (Some(4), Some(4))
    );
    let palm: serde_json::Value =
        serde_json::from_str(&page(&office, "/api/palm/A1?live=25", EN).await).unwrap();
    let stem = &palm["stem_readings"][0];
    let sum: f64 = Explanation::ALL
        .iter()
        .map(|e| stem["probabilities"][e.key()].as_f64().unwrap())
        .sum();
    assert!((sum - 1.0).abs() < 1e-9);
    assert_eq!(stem["forecast"].as_array().unwrap().len(), 4);
    assert_eq!(stem["asked"]["verdict"], "refused");
    assert_eq!(palm["last_inspection"], "2026-06-01");
    assert_eq!(
        get(&office, "/api/palm/none", EN).await.0,
        StatusCode::NOT_FOUND
    );
    let removed = page(&office, "/api/palm/C1", EN).await;
    assert_eq!(
        serde_json::from_str::<serde_json::Value>(&removed).unwrap()["stem_readings"]
            .as_array()
            .unwrap()
            .len(),
        2
    );
}
