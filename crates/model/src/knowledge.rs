//! The embedded knowledge tables.
use crate::species::Species;

/// All tables, parsed once.
#[derive(Debug, Default)]
pub struct Knowledge {
    /// Species, by name order.
    pub species: Vec<Species>,
}
