//! Forms: new inspection, palms, holds, import.
//!
//! A form that is refused comes back with what was typed and a message at the field; one that is sent twice is saved
//! once. `assets/forms.js` adds counters, the dial and drafts; nothing depends on it.

mod blades;
mod cleaning;
mod cleaning_page;
mod counter;
mod cutting;
mod cutting_page;
mod dial;
mod feeding;
mod feeding_page;
mod holds;
mod import;
mod import_page;
mod inspect;
mod inspect_page;
mod moving;
mod moving_page;
mod owner;
mod palms;
mod parts;
mod prices;
mod remove;
mod rounds;
mod rounds_page;
mod sent;
mod signs;
mod sites;
mod sites_page;
mod soaks;
mod spear;
mod species;
mod stash;
mod watering;
mod watering_page;

#[cfg(test)]
mod tests;

use crate::App;
use axum::Router;

/// All form pages.
pub fn router() -> Router<App> {
    Router::new()
        .merge(inspect::router())
        .merge(palms::router())
        .merge(holds::router())
        .merge(moving::router())
        .merge(watering::router())
        .merge(feeding::router())
        .merge(owner::router())
        .merge(remove::router())
        .merge(rounds::router())
        .merge(species::router())
        .merge(import::router())
        .merge(prices::router())
        .merge(blades::router())
        .merge(cutting::router())
        .merge(cleaning::router())
        .merge(sites::router())
}
