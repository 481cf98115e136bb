//! The owner's page: open without a session, closed to everything else.

#[allow(dead_code, reason = "shared with the other tests")]
mod support;

use axum::body::Body;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE, HOST, ORIGIN, REFERRER_POLICY};
use axum::http::{Method, Request, StatusCode};
use desk::demo::OWNER_SECRET;
use desk::owner::{fresh_secret, hash};
use model::{Body as Says, OwnerLink, Site};
use support::*;
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

/// A palm with three links: open, over, revoked; in this order their secrets.
fn register() -> (Book, [String; 3]) {
    let secrets = [fresh_secret(), fresh_secret(), fresh_secret()];
    let mut book = Book::new(1);
    let id = book.register(
        palm("Sabal palmetto")
            .tag("A1")
            .site("North yard")
            .trunk(6.0),
    );
    book.on("2026-06-01")
        .inspect(id, inspection("2026-06-01").counts(30, 1, 4));
    let mut give = |secret: &str, until: Option<&str>| {
        let link = OwnerLink {
            secret_hash: hash(secret),
            until: until.map(day),
            owner: "Ines".into(),
        };
        book.write(Says::LinkGiven { palm: id, link }, None)
    };
    give(&secrets[0], None);
    give(&secrets[1], Some("2026-06-14"));
    let revoked = give(&secrets[2], None);
    book.write(Says::Withdrawn { why: "over".into() }, Some(revoked));
    (book, secrets)
}

async fn ask(
    book: &Book,
    method: Method,
    path: &str,
) -> (StatusCode, Vec<(String, String)>, String) {
    let request = Request::builder()
        .method(method)
        .uri(path)
        .header(HOST, "palms.example")
        .header(ORIGIN, "https://elsewhere.example")
        .body(Body::empty())
        .unwrap();
    let answer = send(&office(book), request).await;
    let heads = answer
        .headers()
        .iter()
        .map(|(name, value)| (name.to_string(), value.to_str().unwrap().to_owned()))
        .collect();
    (answer.status(), heads, text(answer).await)
}

fn head<'h>(heads: &'h [(String, String)], name: &str) -> &'h str {
    let own = heads.iter().find(|(own, _)| own == name);
    own.map_or("", |(_, value)| value)
}

#[tokio::test]
async fn an_open_link_shows_its_palm_and_leads_nowhere_else() {
    let (book, [open, ..]) = register();
    let path = format!("/o/{open}");
    let (status, heads, page) = ask(&book, Method::GET, &path).await;
    assert_eq!(status, StatusCode::OK);
    assert!(page.contains("A1") && page.contains("Sabal palmetto"));
    assert_eq!(head(&heads, CACHE_CONTROL.as_str()), "no-store, private");
    assert_eq!(head(&heads, REFERRER_POLICY.as_str()), "no-referrer");
    assert!(head(&heads, "x-robots-tag").contains("noindex"));
    assert!(!page.contains("<script") && !page.contains("<form"));
    for piece in page.split("href=\"").skip(1) {
        let to = piece.split('"').next().unwrap();
        let own = to.starts_with("?lang=") || to.starts_with(&path) || to.starts_with('#');
        assert!(own || to.starts_with("/assets/"), "{to}");
    }
}

#[tokio::test]
async fn every_closed_link_gets_the_same_answer() {
    let (book, [open, over, revoked]) = register();
    let never = fresh_secret();
    let paths = [
        (Method::GET, format!("/o/{never}")),
        (Method::GET, format!("/o/{over}")),
        (Method::GET, format!("/o/{revoked}")),
        (Method::GET, format!("/o/{revoked}/sheet.pdf")),
        (Method::GET, format!("/o/{open}/")),
        (Method::GET, format!("/o/{open}/palms")),
        (Method::GET, "/o/".to_owned()),
        (Method::GET, "/o".to_owned()),
        (Method::GET, "/o/..%2Fpalms".to_owned()),
        // nothing below takes a form, whoever sends it
        (Method::POST, format!("/o/{open}")),
        (Method::DELETE, format!("/o/{open}")),
    ];
    let (_, _, wanted) = ask(&book, Method::GET, "/o/x").await;
    assert!(wanted.contains("This link is closed"));
    assert!(!wanted.contains("<nav") && !wanted.contains("href=\"/palms"));
    for (method, path) in paths {
        let (status, heads, page) = ask(&book, method.clone(), &path).await;
        assert_eq!(status, StatusCode::NOT_FOUND, "{method} {path}");
        assert_eq!(page, wanted, "{method} {path}");
        assert_eq!(
            head(&heads, CACHE_CONTROL.as_str()),
            "no-store, private",
            "{path}"
        );
        assert!(head(&heads, "x-robots-tag").contains("noindex"), "{path}");
    }
}

#[tokio::test]
async fn only_what_is_below_o_is_let_through_the_guard() {
    let (book, _) = register();
    // a form of another site is refused everywhere else, as before
    for path in [
        "/palm/A1/owner",
        "/palm/A1/owner/revoke",
        "/other/o/x",
        "/oo",
    ] {
        let (status, ..) = ask(&book, Method::POST, path).await;
        assert_eq!(status, StatusCode::FORBIDDEN, "{path}");
    }
}

#[tokio::test]
async fn the_sheet_is_a_pdf_behind_the_link_and_for_the_keeper() {
    let (book, [open, ..]) = register();
    for path in [
        format!("/o/{open}/sheet.pdf"),
        "/palm/A1/owner.pdf?paper=letter".into(),
    ] {
        let request = Request::get(&path).header(HOST, "palms.example");
        let answer = send(&office(&book), request.body(Body::empty()).unwrap()).await;
        assert_eq!(answer.status(), StatusCode::OK, "{path}");
        assert_eq!(answer.headers()[CONTENT_TYPE], "application/pdf");
        let private = path.starts_with("/o/");
        let kept = answer.headers().get(CACHE_CONTROL);
        assert_eq!(
            kept.is_some_and(|v| v == "no-store, private"),
            private,
            "{path}"
        );
    }
}

#[tokio::test]
async fn a_link_is_given_shown_once_and_revoked() {
    let (book, _) = register();
    let office = office(&book);
    let id = office.new_id().0.to_string();
    let post = |path: &'static str, form: String| {
        let office = office.clone();
        async move {
            let request = Request::post(path)
                .header(HOST, "palms.example")
                .header(CONTENT_TYPE, "application/x-www-form-urlencoded")
                .body(Body::from(form))
                .unwrap();
            send(&office, request).await
        }
    };
    let before = office.state().by_tag("A1").unwrap().links.len();
    let refused = post("/palm/A1/owner", format!("id={id}")).await;
    assert_eq!(refused.status(), StatusCode::UNPROCESSABLE_ENTITY);
    let form = format!("id={id}&link_owner=Rui&link_until=2026-07-01");
    let given = post("/palm/A1/owner", form.clone()).await;
    assert_eq!(given.headers()[CACHE_CONTROL], "no-store, private");
    let shown = text(given).await;
    let link = shown.split("http://palms.example/o/").nth(1).unwrap();
    let secret = link.split('"').next().unwrap().to_owned();
    assert!(
        page(&office, &format!("/o/{secret}"), ES)
            .await
            .contains("A1")
    );
    // sent twice: the same link, and nobody sees the secret again
    let again = text(post("/palm/A1/owner", form).await).await;
    assert!(again.contains("data-testid=\"given-before\"") && !again.contains(&secret));
    let keeper = page(&office, "/palm/A1/owner", EN).await;
    assert!(keeper.contains("Rui") && !keeper.contains(&secret));
    let record = office.state().by_tag("A1").unwrap().clone();
    assert_eq!(record.links.len(), before + 1);

    let entry = record.links.last().unwrap().entry.0;
    let answer = post("/palm/A1/owner/revoke", format!("link={entry}")).await;
    assert_eq!(answer.status(), StatusCode::SEE_OTHER);
    assert_eq!(
        get(&office, &format!("/o/{secret}"), EN).await.0,
        StatusCode::NOT_FOUND
    );
}

#[tokio::test]
async fn the_demo_has_an_open_link_and_says_that_it_is_one() {
    let shown = page(&demo(), &format!("/o/{OWNER_SECRET}"), EN).await;
    assert!(shown.contains("data-testid=\"demo\"") && shown.contains("Q-01"));
    let keeper = page(&demo(), "/palm/L-16/owner", EN).await;
    assert!(keeper.contains("data-works=\"false\""));
}

/// An owner with a name that wants encoding, a site without an owner, a palm without a site.
fn owned() -> Book {
    let mut book = Book::new(8);
    for (name, owner) in [("East & West", "R&D <Söhne>"), ("North", "")] {
        let site = Site {
            name: name.into(),
            owner: owner.into(),
            ..Site::default()
        };
        book.write(Says::SiteDescribed(site), None);
    }
    for (tag, site) in [("E1", "East & West"), ("N1", "North"), ("Z1", "")] {
        let id = book.register(palm("Sabal palmetto").tag(tag).site(site).trunk(4.0));
        book.on("2026-06-01")
            .inspect(id, inspection("2026-06-01").counts(30, 1, 0));
    }
    book
}

const SUMMARY: &str = "/owners/summary?owner=R%26D%20%3CS%C3%B6hne%3E";

#[tokio::test]
async fn owners_and_sites_without_one_lead_to_their_summaries() {
    let office = office(&owned());
    let list = page(&office, "/owners", EN).await;
    for address in [
        SUMMARY,
        "/owners/summary?site=North",
        "/owners/summary?site=-",
    ] {
        assert!(
            list.contains(&format!("href=\"{address}\"")),
            "{address}: {list}"
        );
        let shown = page(&office, address, ES).await;
        assert!(shown.contains("data-count=\"palms\""), "{address}");
    }
    assert!(list.contains("R&amp;D &lt;Söhne&gt;") && !list.contains("<Söhne>"));
    let shown = page(&office, SUMMARY, EN).await;
    assert!(shown.contains("1 palm as it should be.") && !shown.contains("N1"));
    // the way there from the sites
    assert!(
        page(&office, "/sites", EN)
            .await
            .contains("href=\"/owners\"")
    );
    let site = page(&office, "/site/East%20%26%20West", EN).await;
    assert!(site.contains(&format!("href=\"{SUMMARY}\"")));
    for nobody in ["owner=Nobody", "site=Nobody"] {
        let (status, said) = get(&office, &format!("/owners/summary?{nobody}"), EN).await;
        assert_eq!(status, StatusCode::NOT_FOUND, "{nobody}");
        assert!(said.contains("Nobody"), "{nobody}");
    }
    let (status, _) = get(&office, "/owners/summary", EN).await;
    assert_eq!(status, StatusCode::SEE_OTHER);
}

#[tokio::test]
async fn the_days_of_a_summary_are_chosen_and_what_is_wrong_stands_beside_its_field() {
    let office = office(&owned());
    let told = |path: String| {
        let office = office.clone();
        async move { get(&office, &path, EN).await }
    };
    let looked = |body: &str| {
        let part = body.split("data-count=\"looked\"").nth(1).unwrap();
        part.split("<strong>").nth(1).unwrap().starts_with('1')
    };
    let (_, body) = told(format!("{SUMMARY}&from=2026-06-01&until=2026-06-01")).await;
    assert!(looked(&body) && body.contains("1 Jun 2026 to 1 Jun 2026"));
    let pdf = "/owners/summary.pdf?owner=R%26D%20%3CS%C3%B6hne%3E&amp;from=2026-06-01&amp;until=2026-06-01";
    assert!(
        body.contains(&format!("href=\"{pdf}\"")),
        "the PDF tells of the same days"
    );
    let (_, body) = told(format!("{SUMMARY}&from=2026-01-01&until=2026-05-31")).await;
    assert!(!looked(&body));
    let (status, body) = told(format!("{SUMMARY}&from=June&until=2999-01-01")).await;
    assert_eq!(status, StatusCode::BAD_REQUEST);
    assert!(body.contains("data-code=\"summary-no-day\"") && body.contains("value=\"2999-01-01\""));
    let (status, body) = told(format!("{SUMMARY}&until=2999-01-01")).await;
    assert!(status == StatusCode::BAD_REQUEST && body.contains("id=\"until-trouble\""));
}

#[tokio::test]
async fn the_summary_is_a_pdf_for_the_keeper_only() {
    let office = office(&owned());
    let request = |path: &str| Request::get(path).body(Body::empty()).unwrap();
    let path = SUMMARY.replace("/summary?", "/summary.pdf?");
    let answer = send(&office, request(&format!("{path}&paper=letter"))).await;
    assert_eq!(answer.headers()[CONTENT_TYPE], "application/pdf");
    for (bad, status) in [
        (format!("{path}&from=June"), StatusCode::BAD_REQUEST),
        (
            "/owners/summary.pdf?owner=Nobody".to_owned(),
            StatusCode::NOT_FOUND,
        ),
    ] {
        assert_eq!(send(&office, request(&bad)).await.status(), status, "{bad}");
    }
}
