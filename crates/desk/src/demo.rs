//! The demo: an invented region with invented grounds, people and palms.
//!
//! Nothing here is real: no place, no person, no palm. The counts come from a small imitation of a crown ([`grow`]), with
//! the slips of counting people make. Every date is relative to "today", so that the demo never grows stale; the same
//! day gives the same demo, id by id. It holds one of each case a keeper meets (see [`Case`]).

mod book;
mod dice;
mod grounds;
mod grow;
mod links;
mod look;
mod moves;
mod prices;
mod roster;
mod rounds;
mod saws;
mod tended;
mod year;

pub use links::SECRET as OWNER_SECRET;
pub use roster::{Case, SITES};

use crate::office::Note;
use model::{Day, EntryId, PalmId, State};

/// The invented region.
pub const REGION: &str = "Quillmere";
/// The invented keeper, who inspects and decides.
pub const KEEPER: &str = "Wenna Sorrel";
/// The invented crew lead, who cuts.
pub const CREW: &str = "Dario Fenlock";

/// Everything recorded in the demo's year, oldest first: grounds and crews, palms, inspections, holds, notes,
/// a correction, blades with their cuts and cleanings, moves, a round worked off and one of today.
///
/// The year ends a few days before `today`.
pub fn notes(today: Day) -> Vec<Note> {
    year::notes(today)
}

/// Whether a register is the demo's: its first palm was registered in it, whatever happened since.
pub fn is_demo(state: &State) -> bool {
    state.palms.contains_key(&PalmId(id(0).0))
}

/// The palms of the demo that show a case.
pub fn palms_with(case: Case) -> Vec<PalmId> {
    let shown = roster::plots()
        .into_iter()
        .enumerate()
        .filter(|(_, plot)| plot.cases.contains(&case));
    shown.map(|(n, _)| PalmId(id(n as u64).0)).collect()
}

/// The n-th id of the demo, a UUID v7 of a fixed moment. Palms come first, in the order of the roster.
fn id(n: u64) -> EntryId {
    let mut random = [0; 10];
    random[..2].copy_from_slice(b"de");
    random[2..].copy_from_slice(&n.to_be_bytes());
    // 2026-01-01T00:00:00Z: any fixed moment will do.
    EntryId(uuid::Builder::from_unix_timestamp_millis(1_767_225_600_000, &random).into_uuid())
}

/// Ids of entries that are not palms: out of reach of the roster's.
fn later_id(n: u64) -> EntryId {
    id(10_000 + n)
}
