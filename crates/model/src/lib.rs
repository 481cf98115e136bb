//! The nouns of palm keeping: days, units, species, palms, inspections, findings, entries.
//!
//! Pure: no IO, no clock, no randomness, no language. Everything here compiles for a browser as it stands.

pub mod blade;
pub mod climate;
pub mod day;
pub mod entry;
pub mod finding;
pub mod knowledge;
pub mod math;
pub mod palm;
pub mod sourced;
pub mod span;
pub mod species;
pub mod state;
pub mod tending;
pub mod units;
pub mod work;

pub use blade::{Bath, Blade, BladeId, BladeKind, Cleaning, CutMade, TakenOff};
pub use climate::Climate;
pub use day::{Day, Moment};
pub use entry::{Body, Entry, EntryId};
pub use finding::{Arg, Finding, Severity};
pub use knowledge::Knowledge;
pub use palm::{Inspection, Palm, PalmId, Removed, Spear};
pub use sourced::{Basis, SourceKey, Sourced};
pub use span::Span;
pub use species::Species;
pub use state::{PalmRecord, State};
pub use tending::{Feeding, LeavesAtMove, Move, OwnerLink, Tending, Watering};
pub use units::{Clock, Metres, Position};
pub use work::{
    Closed, CrewWords, Hours, NoFeeding, Prices, RoundNote, RoundPlan, RoundStep, RoundStop, Site,
    WeatherDay,
};
