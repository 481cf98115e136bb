//! Previews that wait for a word. A few are kept in memory; the oldest goes when another comes, and its file is
//! simply asked for again.

use desk::forms::Preview;
use std::collections::VecDeque;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

/// So many previews wait at most.
const KEPT: usize = 4;

/// A file that was looked through.
pub struct Waiting {
    /// Its name as uploaded.
    pub name: String,
    /// What was found.
    pub preview: Preview,
    done: OnceLock<usize>,
}

impl Waiting {
    /// How many rows were recorded, once they were.
    pub fn done(&self) -> Option<usize> {
        self.done.get().copied()
    }

    /// Marks it recorded; saying so twice changes nothing.
    pub fn set_done(&self, count: usize) {
        let _ = self.done.set(count);
    }
}

/// The waiting previews by id, oldest first.
#[derive(Default)]
pub struct Stash {
    files: Mutex<VecDeque<(String, Arc<Waiting>)>>,
}

impl Stash {
    /// Keeps a preview under an id.
    pub fn keep(&self, id: &str, name: String, preview: Preview) {
        let mut files = self.files.lock().unwrap_or_else(PoisonError::into_inner);
        files.push_back((
            id.to_owned(),
            Arc::new(Waiting {
                name,
                preview,
                done: OnceLock::new(),
            }),
        ));
        while files.len() > KEPT {
            files.pop_front();
        }
    }

    /// The preview with this id, if it is still kept.
    pub fn get(&self, id: &str) -> Option<Arc<Waiting>> {
        let files = self.files.lock().unwrap_or_else(PoisonError::into_inner);
        files
            .iter()
            .find(|(kept, _)| kept == id)
            .map(|(_, file)| file.clone())
    }
}
