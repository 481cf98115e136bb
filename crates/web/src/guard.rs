//! What a browser may do with our pages, and who may send us forms.

use crate::{App, Fault, Reader};
use axum::Router;
use axum::extract::Request;
use axum::http::header::{
    CONTENT_SECURITY_POLICY, HOST, HeaderName, HeaderValue, ORIGIN, REFERRER_POLICY,
    X_CONTENT_TYPE_OPTIONS,
};
use axum::http::{HeaderMap, Method, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use tower_http::set_header::SetResponseHeaderLayer;

/// Refuses a form that another site sent in the name of a browser that can reach us. Below `/o/` nothing takes a form,
/// and who asks there sees nothing of the register, not even a refusal in its frame.
pub async fn own_forms_only(reader: Reader, request: Request, next: Next) -> Response {
    let reads = matches!(
        *request.method(),
        Method::GET | Method::HEAD | Method::OPTIONS
    );
    let owners = request.uri().path().starts_with(crate::pages::owner::BELOW);
    if !reads && !owners && foreign(request.headers()) {
        return Fault::new(&reader, StatusCode::FORBIDDEN, "error-foreign", &[]).into_response();
    }
    next.run(request).await
}

/// Whether the browser says that the request comes from another site. Programs that are no browser say nothing.
fn foreign(headers: &HeaderMap) -> bool {
    let text = |name: HeaderName| headers.get(name).and_then(|v| v.to_str().ok());
    if let Some(site) = text(HeaderName::from_static("sec-fetch-site")) {
        return !matches!(site, "same-origin" | "none");
    }
    let Some(origin) = text(ORIGIN) else {
        return false;
    };
    let from = origin.split_once("://").map(|(_, host)| host);
    from.is_none() || from != text(HOST)
}

/// Only our own script and style, no frames around us, no address told to other sites.
pub fn with_headers(router: Router<App>) -> Router<App> {
    let fixed =
        |name, value| SetResponseHeaderLayer::if_not_present(name, HeaderValue::from_static(value));
    let policy = "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
    router
        .layer(fixed(CONTENT_SECURITY_POLICY, policy))
        .layer(fixed(X_CONTENT_TYPE_OPTIONS, "nosniff"))
        .layer(fixed(REFERRER_POLICY, "same-origin"))
}
