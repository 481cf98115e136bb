//! What was done for a palm besides cutting: moved, watered, fed; and the owner's private link.

use crate::day::Day;
use crate::units::Metres;
use std::collections::BTreeMap;

/// Something done for one palm.
#[derive(Clone, PartialEq, Debug)]
pub enum Tending {
    /// Dug and planted elsewhere.
    Moved(Move),
    /// Watered; the entry's `at` is the end of it.
    Watered(Watering),
    /// Fed; the entry's `at` is the day of it.
    Fed(Feeding),
}

/// What was done with the leaves when a palm was dug.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum LeavesAtMove {
    /// All stayed and hung free.
    Left,
    /// All stayed and were tied up.
    Tied,
    /// Some were taken off.
    Thinned,
    /// All were taken off.
    Stripped,
}

impl LeavesAtMove {
    /// All with their file words.
    pub const ALL: [(LeavesAtMove, &'static str); 4] = [
        (LeavesAtMove::Left, "left"),
        (LeavesAtMove::Tied, "tied"),
        (LeavesAtMove::Thinned, "thinned"),
        (LeavesAtMove::Stripped, "stripped"),
    ];

    /// The word used in files.
    pub fn word(self) -> &'static str {
        LeavesAtMove::ALL
            .iter()
            .find(|(own, _)| *own == self)
            .map_or("", |(_, word)| word)
    }

    /// From the word used in files.
    pub fn parse(word: &str) -> Option<LeavesAtMove> {
        LeavesAtMove::ALL
            .iter()
            .find(|(_, own)| *own == word)
            .map(|(own, _)| *own)
    }
}

/// A move. `None` means not noted.
#[derive(Clone, PartialEq, Debug)]
pub struct Move {
    /// Day it was dug; the palm counts as moved since then.
    pub dug_on: Day,
    /// Day it was planted where it stands now.
    pub planted_on: Option<Day>,
    /// Where it came from.
    pub from: String,
    /// Radius of the root ball, from the trunk's surface outward.
    pub ball_radius: Option<Metres>,
    /// Depth of the root ball.
    pub ball_depth: Option<Metres>,
    /// What was done with the leaves.
    pub leaves: Option<LeavesAtMove>,
    /// Live fronds taken off at the move, if counted.
    pub fronds_taken: Option<u32>,
    /// Planted deeper (above zero) or higher (below zero) than it stood.
    pub deeper: Option<Metres>,
    /// Braced, and how.
    pub bracing: String,
    /// Soil of the ball: a key of the soil table, or empty.
    pub soil: String,
    /// Free words.
    pub notes: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}

impl Move {
    /// A move of which only the day is known.
    pub fn on(dug_on: Day) -> Move {
        Move {
            dug_on,
            planted_on: None,
            from: String::new(),
            ball_radius: None,
            ball_depth: None,
            leaves: None,
            fronds_taken: None,
            deeper: None,
            bracing: String::new(),
            soil: String::new(),
            notes: String::new(),
            extra: BTreeMap::new(),
        }
    }
}

/// Water given to one palm.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Watering {
    /// How much, litres; `None`: watered, amount not noted.
    pub litres: Option<f64>,
    /// Free words.
    pub notes: String,
}

/// Something fed to one palm.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Feeding {
    /// What: a key of the product table, or the keeper's own words.
    pub product: String,
    /// How much in all, grams of product.
    pub grams: Option<f64>,
    /// Spread over so many square metres.
    pub area_m2: Option<f64>,
    /// Against which shortage: a key of the disorder table; empty: maintenance.
    pub against: String,
    /// Free words.
    pub notes: String,
}

/// A private link to a palm's sheet for its owner. Withdrawing the entry revokes it.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct OwnerLink {
    /// Hash of the secret in the link, hexadecimal: the ledger cannot give the link away.
    pub secret_hash: String,
    /// Last day on which it works; `None`: until revoked.
    pub until: Option<Day>,
    /// For whom.
    pub owner: String,
}
