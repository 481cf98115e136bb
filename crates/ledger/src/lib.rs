//! The port to storage: append entries, read entries; memory engine, wire records, conformance suite.

/// Storage failed or refused.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The engine's own words.
    #[error("{0}")]
    Engine(String),
}

/// A place where entries are kept, append-only.
pub trait Ledger: Send + Sync {}
