//! Overhead wires: how far everything stays from them, and whether that leaves room to work at all.
//!
//! 10 ft up to 50 kV to ground and 4 in more for every 10 kV above [line_min_50kv, line_add_per_10kv]; where nobody has
//! said the voltage and the wires are nearer than the distance of the highest one, the utility is asked before anybody
//! works [line_formula: unknown voltage is refused].

use super::Ask;
use crate::rules::wires_within::distance;
use model::Metres;

/// Highest voltage of the safety rows, kV: beyond its distance an unknown voltage no longer matters.
pub const HIGHEST_KV: f64 = 800.0;

/// How the wires stand to the work.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Line {
    /// Nobody has noted whether there are any.
    NotNoted,
    /// Nearer than everything has to stay away from them.
    Within {
        /// The nearest conductor.
        wires: Metres,
        /// How far everything stays away.
        keep: Metres,
    },
    /// Somebody set a hold for wires; how near they are is not noted.
    Held,
    /// The voltage is unknown and they are nearer than the distance of the highest one.
    VoltageUnknown {
        /// The nearest conductor.
        wires: Metres,
        /// How far everything stays away at the highest voltage.
        most: Metres,
    },
    /// Far enough for the crown, but not for a frond or a pole that falls their way.
    FallsNear {
        /// The nearest conductor.
        wires: Metres,
        /// How far everything stays away.
        keep: Metres,
        /// How far a frond or a pole may come nearer.
        by: Metres,
    },
    /// Far enough.
    Clear {
        /// The nearest conductor.
        wires: Metres,
        /// How far everything stays away.
        keep: Metres,
    },
}

impl Line {
    /// Whether nobody but line-clearance workers may work, or the utility is asked first.
    pub fn refuses(self) -> bool {
        matches!(
            self,
            Line::Within { .. } | Line::Held | Line::VoltageUnknown { .. }
        )
    }
}

/// How the wires stand to the work at a crown.
pub fn line(ask: &Ask) -> Line {
    let keep = distance(ask.line_kv);
    let Some(wires) = ask.wires else {
        return if ask.wires_held {
            Line::Held
        } else {
            Line::NotNoted
        };
    };
    if wires < keep {
        return Line::Within { wires, keep };
    }
    if ask.wires_held {
        return Line::Held;
    }
    let most = distance(Some(HIGHEST_KV));
    if ask.line_kv.is_none() && wires < most {
        return Line::VoltageUnknown { wires, most };
    }
    let by = swings(ask);
    if wires.0 < keep.0 + by.0 {
        return Line::FallsNear { wires, keep, by };
    }
    Line::Clear { wires, keep }
}

/// How far a frond or a pole may come towards the wires: a frond's length, or the longest pole at hand, whichever is
/// more. The distance noted is to the crown.
fn swings(ask: &Ask) -> Metres {
    let poles = super::tools(ask).filter_map(|tool| tool.pole);
    let longest = poles.map(|pole| pole.high).fold(0.0, f64::max);
    Metres(ask.frond.map_or(0.0, |frond| frond.0).max(longest))
}
