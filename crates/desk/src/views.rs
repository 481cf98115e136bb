//! What the pages and sheets show, as plain values: chosen, ordered, written out; nothing is left to compute.

pub mod drawing;
