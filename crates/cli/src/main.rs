//! The program `spearleaf`.
fn main() {}
