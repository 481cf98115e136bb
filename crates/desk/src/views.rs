//! What the pages and sheets show, as plain values.
