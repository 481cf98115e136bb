//! Builders, fixed clock, seeded ids, for tests only.
