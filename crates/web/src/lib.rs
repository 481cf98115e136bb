//! Pages and JSON API: a handler loads, asks, shows. No arithmetic and no rule lives here.
//!
//! Everything is drawn on the server and works without script; the little script there is only makes it smoother.

mod address;
mod app;
mod assets;
mod badge;
mod drawn;
mod fault;
pub mod forms;
mod guard;
mod layout;
mod pages;
mod reader;

pub use app::App;
pub use fault::Fault;
pub use layout::{Here, page};
pub use reader::Reader;

use axum::Router;
use desk::office::Office;
use std::sync::Arc;
use tokio::net::TcpListener;
use tower_http::compression::CompressionLayer;

/// All pages, forms and the API over one office.
pub fn router(office: Arc<Office>) -> Router {
    routes(App::new(office))
}

fn routes(app: App) -> Router {
    let all = Router::new()
        .merge(pages::router())
        .merge(forms::router())
        .merge(assets::router())
        .fallback(fault::nothing_here)
        .layer(axum::middleware::from_fn_with_state(
            app.clone(),
            guard::own_forms_only,
        ));
    guard::with_headers(all)
        .layer(CompressionLayer::new())
        .with_state(app)
}

/// Serves until Ctrl-C (or the terminal goes away); requests under way are finished first.
pub async fn serve(office: Arc<Office>, listener: TcpListener) -> std::io::Result<()> {
    let app = App::new(office);
    app.read_in_background();
    axum::serve(listener, routes(app))
        .with_graceful_shutdown(stop())
        .await
}

async fn stop() {
    // if the signal cannot be heard the server simply runs until it is killed
    if tokio::signal::ctrl_c().await.is_err() {
        std::future::pending::<()>().await;
    }
}
