//! Moving a palm: what to know before it is dug, what it may shed afterwards, when to look, when it has arrived.
//!
//! Pure. Everything said is a row of `transplant.csv` or `safety.csv` with its sources, or a finding; figures that
//! contradict each other stand side by side, and the plan takes the larger. `docs/moving.md` says how it is meant.

pub mod after;
pub mod ball;
pub mod before;
pub mod leaves;
pub mod mass;
pub mod selection;

pub use after::{Calendar, LookDay, LookState, PROMISE_DAYS, calendar, promise, tripped};
pub use ball::{Ball, Claim, ball};
pub use before::{Before, before};
pub use leaves::{LeafAdvice, leaves};
pub use mass::{Load, Mass, load};
pub use selection::{Cleaned, Outlook, Specimen, compare, outlook};

use model::{Knowledge, Metres, Species};

/// What the ball is dug from.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Ground {
    /// Not told.
    #[default]
    Unknown,
    /// Loam, clay and other earth.
    Earth,
    /// Sand.
    Sand,
}

impl Ground {
    /// From a word of the soil table or the keeper's own: what begins with sand or loamy sand is sand.
    pub fn of(soil: &str) -> Ground {
        let word = soil.trim().to_lowercase().replace(['-', '_'], " ");
        if word.is_empty() || word == "unknown" {
            return Ground::Unknown;
        }
        let sandy = ["sand", "loamy sand", "coarse sand", "fine sand", "arena"];
        if sandy.contains(&word.as_str()) {
            Ground::Sand
        } else {
            Ground::Earth
        }
    }
}

/// A palm that is to be dug, and what is known of the day.
#[derive(Clone, Copy, Debug)]
pub struct Dig<'a> {
    /// Its species row, if its name resolves.
    pub species: Option<&'a Species>,
    /// Number of stems, at least 1.
    pub stems: u16,
    /// Ground to the base of the crown.
    pub trunk_height: Option<Metres>,
    /// Across the trunk at the ground as measured; of a clump across all of it.
    pub diameter: Option<Metres>,
    /// Live fronds that will go with it, all stems.
    pub fronds: Option<u32>,
    /// Soil of the ball.
    pub ground: Ground,
    /// Whether ball and backfill can be kept moist.
    pub moist: Option<bool>,
    /// Extreme heat on the days of the move.
    pub hot: bool,
    /// Voltage to ground of the line nearby, kV, told by the utility.
    pub line_kv: Option<f64>,
    /// The keeper's own radius of the ball.
    pub radius: Option<Metres>,
    /// The keeper's own depth of the ball.
    pub depth: Option<Metres>,
    /// The tables.
    pub knowledge: &'a Knowledge,
}

impl<'a> Dig<'a> {
    /// A palm of which only species and stems are known.
    pub fn of(species: Option<&'a Species>, stems: u16, knowledge: &'a Knowledge) -> Dig<'a> {
        Dig {
            species,
            stems,
            trunk_height: None,
            diameter: None,
            fronds: None,
            ground: Ground::Unknown,
            moist: None,
            hot: false,
            line_kv: None,
            radius: None,
            depth: None,
            knowledge,
        }
    }

    /// The accepted name; empty if the name does not resolve.
    pub fn name(&self) -> &'a str {
        self.species.map_or("", |s| s.name.as_str())
    }
}
