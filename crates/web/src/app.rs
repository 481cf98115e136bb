//! What every handler shares.

use crate::{Fault, Reader};
use desk::office::Office;
use desk::season::Seasons;
use desk::views::standing::Standings;
use std::sync::Arc;

/// The state behind all handlers. Cheap to clone.
#[derive(Clone)]
pub struct App {
    /// The one office.
    pub office: Arc<Office>,
    /// Where its palms stand, for lists.
    pub standings: Arc<Standings>,
    /// Seasons that were planned.
    pub seasons: Arc<Seasons>,
}

impl App {
    /// Over an office.
    pub fn new(office: Arc<Office>) -> App {
        App {
            office,
            standings: Arc::default(),
            seasons: Arc::default(),
        }
    }

    /// Runs work that reads the ledger or computes on a thread where it may take its time.
    /// A panic in it becomes the page that says so.
    pub async fn ask<T, F>(&self, reader: &Reader, work: F) -> Result<T, Fault>
    where
        F: FnOnce(&Office) -> T + Send + 'static,
        T: Send + 'static,
    {
        let office = self.office.clone();
        let done = tokio::task::spawn_blocking(move || work(&office)).await;
        done.map_err(|_| Fault::broken(reader))
    }

    /// Starts to read the palms that have not been read today; returns at once.
    pub fn read_in_background(&self) {
        let app = self.clone();
        // a thread of its own: nobody waits for it, and it does not hold up the end of the program
        std::thread::spawn(move || app.standings.fill(&app.office));
    }
}
