//! A palm and what was seen on it.

use crate::day::Day;
use crate::units::{Clock, Metres, Position};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Identity of a palm: the id of the entry that registered it. A tag may be corrected, this never changes.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct PalmId(pub Uuid);

/// A registered palm, as the keeper describes it. `None` means unknown.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Palm {
    /// The keeper's own mark on the palm; unique among palms not removed.
    pub tag: String,
    /// Botanical name as written; resolved against the knowledge when needed, so a later, better table helps old entries.
    pub species: String,
    /// The grounds it stands on.
    pub site: String,
    /// Number of stems, at least 1.
    pub stems: u16,
    /// Day it was planted where it stands.
    pub planted_on: Option<Day>,
    /// Day it was dug and moved, if it was.
    pub moved_on: Option<Day>,
    /// Day all dead fronds were last taken off.
    pub last_cleaned_on: Option<Day>,
    /// Ground to the base of the crown.
    pub trunk_height: Option<Metres>,
    /// Where it stands.
    pub position: Option<Position>,
    /// What lies beneath: path, car park, pool.
    pub over: String,
    /// Nearest overhead conductor to the crown.
    pub wires: Option<Metres>,
    /// The keeper's own figure for the live fronds of a full crown; overrides the species row.
    pub full_crown: Option<f64>,
    /// The keeper's own figure for fronds made in a year; overrides the species row.
    pub fronds_per_year: Option<f64>,
    /// Free words.
    pub notes: String,
    /// Columns of an imported file that this version does not know, kept as they came.
    pub extra: BTreeMap<String, String>,
}

/// The youngest, still closed leaf.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Spear {
    /// Upright and firm.
    Firm,
    /// Out of the vertical.
    Leaning,
    /// Fallen over.
    Down,
    /// Comes out when pulled.
    Pulled,
}

impl Spear {
    /// The four states with their file words.
    pub const ALL: [(Spear, &'static str); 4] = [
        (Spear::Firm, "firm"),
        (Spear::Leaning, "leaning"),
        (Spear::Down, "down"),
        (Spear::Pulled, "pulled"),
    ];

    /// The word used in files.
    pub fn word(self) -> &'static str {
        Spear::ALL
            .iter()
            .find(|(s, _)| *s == self)
            .map_or("", |(_, w)| w)
    }

    /// From the word used in files.
    pub fn parse(word: &str) -> Option<Spear> {
        Spear::ALL.iter().find(|(_, w)| *w == word).map(|(s, _)| *s)
    }
}

/// Fronds taken off after the count, same day. `None` means not noted, which counts as none taken.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Removed {
    /// Wholly green fronds.
    pub green: Option<u32>,
    /// Partly dead fronds.
    pub yellowing: Option<u32>,
    /// Wholly dead fronds.
    pub brown: Option<u32>,
}

/// What one look at one stem's crown gave. A missing count is missing, not zero.
#[derive(Clone, PartialEq, Debug)]
pub struct Inspection {
    /// Stem number, from 1.
    pub stem: u16,
    /// Day of the look.
    pub date: Day,
    /// Wholly green fronds, the spear not counted.
    pub green: Option<u32>,
    /// Fronds with any dead or yellow tissue, not wholly dead.
    pub yellowing: Option<u32>,
    /// Wholly dead fronds still on.
    pub brown: Option<u32>,
    /// New fronds since the spear marked at the inspection before.
    pub new_leaves: Option<u32>,
    /// Taken off after the count.
    pub removed: Removed,
    /// State of the spear.
    pub spear: Option<Spear>,
    /// Lowest live frond on the left, read on the clock (6 to 12).
    pub clock_left: Option<Clock>,
    /// Lowest live frond on the right (12 through 3 to 6).
    pub clock_right: Option<Clock>,
    /// Keys of signs seen.
    pub signs: Vec<String>,
    /// Keys of signs looked for and not there. A sign in neither list was not looked for.
    pub absent: Vec<String>,
    /// Free words.
    pub notes: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}

impl Inspection {
    /// An empty look at a stem on a day: everything missing.
    pub fn blank(stem: u16, date: Day) -> Inspection {
        Inspection {
            stem,
            date,
            green: None,
            yellowing: None,
            brown: None,
            new_leaves: None,
            removed: Removed::default(),
            spear: None,
            clock_left: None,
            clock_right: None,
            signs: Vec::new(),
            absent: Vec::new(),
            notes: String::new(),
            extra: BTreeMap::new(),
        }
    }

    /// Live fronds counted: green and yellowing, if both were counted.
    pub fn live(&self) -> Option<u32> {
        Some(self.green? + self.yellowing?)
    }
}
