//! Signs of an inspection that the rules listen to.

/// Their keys; `sign-<key>` is the key of their words. Other signs are kept and shown, and say nothing to a rule.
pub const SIGNS: [&str; 7] = [
    "nest",
    "bats",
    "bees",
    "one-sided-browning",
    "wilt",
    "skirt",
    "fruit",
];
