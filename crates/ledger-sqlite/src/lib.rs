//! The default storage engine.
