//! Use cases and views: where the core meets the world.
