//! The pages that show.

mod about;
mod api;
pub mod blades;
mod disorders;
pub mod estimate;
pub mod feeding;
pub mod moved;
pub mod owner;
mod owners;
mod paging;
mod palm;
mod palms;
pub mod reach;
pub mod rotation;
mod rotation_drawing;
pub mod rounds;
pub mod said;
mod season;
mod selection;
mod settings;
pub mod sheets;
pub mod sites;
mod sources;
mod today;
mod trace;
mod trace_drawing;
mod walk;
pub mod watering;

pub use palm::{advised, lines};

use crate::App;
use axum::Router;

/// All pages but the forms.
pub fn router() -> Router<App> {
    Router::new()
        .merge(today::router())
        .merge(palms::router())
        .merge(palm::router())
        .merge(blades::router())
        .merge(trace::router())
        .merge(rotation::router())
        .merge(rounds::router())
        .merge(disorders::router())
        .merge(moved::router())
        .merge(watering::router())
        .merge(feeding::router())
        .merge(season::router())
        .merge(owner::router())
        .merge(owners::router())
        .merge(estimate::router())
        .merge(selection::router())
        .merge(walk::router())
        .merge(reach::router())
        .merge(sites::router())
        .merge(sources::router())
        .merge(about::router())
        .merge(settings::router())
        .merge(sheets::router())
        .merge(api::router())
}
