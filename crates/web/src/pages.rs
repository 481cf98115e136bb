//! The pages that show.

mod settings;

use crate::App;
use axum::Router;

/// All pages but the forms.
pub fn router() -> Router<App> {
    Router::new().merge(settings::router())
}
