//! The invented demo scenario.
