//! What a person typed into a form, checked into entries.
