//! The sheets as a browser gets them.

#[allow(dead_code, reason = "shared with the other tests")]
mod support;

use axum::body::{Body, to_bytes};
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE, COOKIE, HOST};
use axum::http::{Request, StatusCode};
use support::*;

/// A sheet: its head says PDF, and so do its bytes.
async fn pdf(path: &str, who: As) {
    let request = Request::get(path)
        .header(HOST, "192.0.2.17:7474")
        .header(COOKIE, format!("lang={}; units={}", who.0, who.1));
    let response = send(&demo(), request.body(Body::empty()).unwrap()).await;
    assert_eq!(response.status(), StatusCode::OK, "{path}");
    assert_eq!(
        response.headers()[CONTENT_TYPE],
        "application/pdf",
        "{path}"
    );
    let name = response.headers()[CONTENT_DISPOSITION]
        .to_str()
        .unwrap()
        .to_owned();
    assert!(
        name.starts_with("inline; filename=") && name.ends_with(".pdf\""),
        "{name}"
    );
    let bytes = to_bytes(response.into_body(), usize::MAX).await.unwrap();
    assert!(bytes.starts_with(b"%PDF-"), "{path}");
}

async fn refused(path: &str, status: StatusCode, words: &str) {
    let request = Request::get(path).header(HOST, "192.0.2.17:7474");
    let response = send(&demo(), request.body(Body::empty()).unwrap()).await;
    assert_eq!(response.status(), status, "{path}");
    let page = text(response).await;
    assert!(page.contains(words), "{path}: {page}");
}

#[tokio::test]
async fn every_sheet_comes_in_both_languages() {
    for who in [EN, ES] {
        pdf("/clauses.pdf", who).await;
        pdf("/labels.pdf?what=palms", who).await;
        let tag = demo().state().standing().next().unwrap().palm.tag.clone();
        let tag = tag.replace(' ', "%20");
        pdf(&format!("/trace.pdf?case={tag}"), who).await;
    }
}

#[tokio::test]
async fn what_cannot_be_made_says_why() {
    refused(
        "/labels.pdf?what=palms&tag=nobody",
        StatusCode::NOT_FOUND,
        "nobody",
    )
    .await;
    refused(
        "/labels.pdf?what=palms&base=ftp://x",
        StatusCode::BAD_REQUEST,
        "ftp://x",
    )
    .await;
    refused(
        "/labels.pdf?what=palms&site=nowhere",
        StatusCode::NOT_FOUND,
        "nothing to print",
    )
    .await;
    refused("/trace.pdf?case=nobody", StatusCode::BAD_REQUEST, "nobody").await;
    refused(
        "/trace.pdf?case=nobody&disorder=nothing",
        StatusCode::BAD_REQUEST,
        "nothing",
    )
    .await;
}

#[tokio::test]
async fn the_page_of_sheets_offers_what_there_is_and_warns_of_an_address_that_leads_nowhere() {
    let ask = |host: &'static str| async move {
        let request = Request::get("/sheets")
            .header(HOST, host)
            .header(COOKIE, "lang=en");
        text(send(&demo(), request.body(Body::empty()).unwrap()).await).await
    };
    let here = ask("127.0.0.1:7474").await;
    assert!(here.contains("works on this machine only"));
    let there = ask("192.0.2.17:7474").await;
    assert!(!there.contains("works on this machine only"));
    for words in ["http://192.0.2.17:7474", "/clauses.pdf", "labels-palms"] {
        assert!(there.contains(words), "{words}");
    }
}
