//! Forms: new inspection, palms, import.

use crate::App;
use axum::Router;

/// All form pages.
pub fn router() -> Router<App> {
    Router::new()
}
