//! The assumed numbers of the judgement: rows of `weights.csv`, by key.

use model::knowledge::{Strength, WeightRow};

macro_rules! weights {
    ($($(#[$doc:meta])* $field:ident = $key:literal, $default:literal;)*) => {
        /// The numbers by name.
        #[derive(Clone, Copy, PartialEq, Debug)]
        pub struct Weights {
            $($(#[$doc])* pub $field: f64,)*
        }

        impl Weights {
            /// Keys of the rows, with the number that stands in where a table has no such row (assumed like the rows).
            pub const KEYS: &'static [(&'static str, f64)] = &[$(($key, $default)),*];

            /// From rows; rows with other keys are left alone.
            pub fn of(rows: &[WeightRow]) -> Weights {
                let value = |key: &str, default: f64| {
                    rows.iter().find(|row| row.key == key).map_or(default, |row| row.value)
                };
                Weights { $($field: value($key, $default),)* }
            }
        }
    };
}

weights! {
    /// Chance that a sign of this strength is there, if the disorder is.
    always = "strength-always", 0.95;
    /// The same.
    usual = "strength-usual", 0.7;
    /// The same.
    sometimes = "strength-sometimes", 0.3;
    /// The same.
    rare = "strength-rare", 0.07;
    /// Factor on the chance of a sign for every disorder of a set that speaks against it.
    excludes = "strength-excludes", 0.15;
    /// Chance that a sign is there without a cause that the tables know.
    leak = "leak", 0.02;
    /// How much of the signs of ordinary ageing still shows while something else is at work.
    ageing_behind = "ageing-behind", 0.3;
    /// Odds before anything is seen of a disorder with weight 1 on an ordinary host.
    prior_scale = "prior-scale", 0.05;
    /// Factor on two declines to death at once.
    pair_lethal = "pair-lethal", 0.1;
    /// Factor for a host that is hit more than others.
    host_prone = "host-prone", 3.0;
    /// Factor for an ordinary host.
    host_known = "host-known", 1.0;
    /// Factor for a host by experiment or hearsay.
    host_reported = "host-reported", 0.3;
    /// Factor for another species of a genus in which one is a host.
    host_relative = "host-relative", 0.1;
    /// Factor for a palm that is no host as far as the tables know.
    host_none = "host-none", 0.01;
    /// Factor where the species is unknown.
    host_unknown = "host-unknown", 0.3;
    /// Days for which a move counts in full.
    move_fresh_days = "move-fresh-days", 180.0;
    /// Days after which a palm counts as established.
    move_established_days = "move-established-days", 540.0;
    /// What is left of the move by then.
    move_established = "move-established", 0.1;
    /// Days after which nothing is left of it.
    move_settled_days = "move-settled-days", 1095.0;
    /// What counts of a move whose time is unknown.
    move_undated = "move-undated", 0.3;
    /// Factor on hunger right after a move.
    hunger_just_moved = "hunger-just-moved", 0.25;
    /// Days for which that holds, where the latency of the hunger is unknown.
    hunger_latency_days = "hunger-latency-days", 120.0;
    /// Days from then until it no longer holds at all.
    hunger_rise_days = "hunger-rise-days", 60.0;
    /// Days for which a frost counts in full.
    frost_fresh_days = "frost-fresh-days", 60.0;
    /// Days after which it no longer counts.
    frost_gone_days = "frost-gone-days", 365.0;
    /// Days for which a storm counts in full.
    storm_fresh_days = "storm-fresh-days", 30.0;
    /// Days after which it no longer counts.
    storm_gone_days = "storm-gone-days", 180.0;
    /// Factor on the harm that weather does, where the last such weather was too long ago.
    weather_long_ago = "weather-long-ago", 0.1;
    /// Chance that a disorder at work shows in the counts.
    counts_show = "counts-show", 0.7;
    /// Power to which the likelihoods of the counts are taken: below 1 they speak less loudly.
    counts_temper = "counts-temper", 0.5;
    /// The counts never speak more strongly against an explanation than this, against the best one.
    counts_least = "counts-least", 0.05;
    /// From this probability on nobody cuts.
    hold_from = "hold-from", 0.2;
}

impl Weights {
    /// Chance that a sign of this strength is there, if the disorder is; none for a sign that speaks against it.
    pub fn chance(&self, strength: Strength) -> f64 {
        let chance = match strength {
            Strength::Always => self.always,
            Strength::Usual => self.usual,
            Strength::Sometimes => self.sometimes,
            Strength::Rare => self.rare,
            Strength::Excludes => 0.0,
        };
        possible(chance)
    }
}

/// A chance that is never quite certain, whatever the table says.
pub(super) fn possible(chance: f64) -> f64 {
    chance.clamp(0.0, 0.999)
}

/// Rows that speak of one disorder each: `<what>-<disorder>`.
pub const ABOUT_ONE: [&str; 7] = [
    "winter-",
    "spring-",
    "summer-",
    "autumn-",
    "after-move-",
    "after-frost-",
    "after-storm-",
];

/// Rows of signs that are often there without a disorder: `base-<sign>` stands in for `leak`.
pub const BASE: &str = "base-";

/// The number of `<prefix><key>`, if there is such a row.
pub(super) fn about(rows: &[WeightRow], prefix: &str, key: &str) -> Option<f64> {
    rows.iter()
        .find(|row| row.key.strip_prefix(prefix) == Some(key))
        .map(|row| row.value)
}
