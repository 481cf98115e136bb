//! Lengths, dates and counts written in the reader's units and language.
