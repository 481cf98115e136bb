//! When to come back: visit days of one site over a season.
