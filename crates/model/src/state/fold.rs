//! The fold itself.
use super::State;
use crate::entry::Entry;
use std::sync::Arc;

/// A state that can take more entries.
#[derive(Default)]
pub struct Fold {
    state: Arc<State>,
}

impl Fold {
    /// Takes entries in; what they touch is folded anew.
    pub fn apply(&mut self, entries: impl IntoIterator<Item = Entry>) {
        let _ = entries.into_iter();
        todo!("being written")
    }

    /// The state now.
    pub fn state(&self) -> Arc<State> {
        self.state.clone()
    }

    /// The state, for good.
    pub fn into_state(self) -> Arc<State> {
        self.state
    }
}
