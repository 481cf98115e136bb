//! Which class of the walk a palm belongs to.

use crate::blades::INFECTIOUS;
use crate::views::standing::Standing;
use model::{Day, PalmRecord};
use rounds::walk::Health;

/// The reason of a hold that a laboratory has settled.
pub const LAB_CONFIRMED: &str = "lab-confirmed";

/// A look older than this says nothing of today (assumed: two looks a year).
const OLD: i32 = 365;

/// How a palm's health counts for the order of a walk.
pub fn health_of(record: &PalmRecord, standing: Option<&Standing>, today: Day) -> Health {
    let holds: Vec<&str> = record
        .holds_on(today)
        .map(|hold| hold.reason.as_str())
        .collect();
    if holds.contains(&LAB_CONFIRMED) {
        return Health::Confirmed;
    }
    let advised = standing.is_some_and(|s| !s.holds.is_empty());
    if advised || holds.iter().any(|hold| INFECTIOUS.contains(hold)) {
        return Health::Suspect;
    }
    match record.last_look() {
        Some(look) if today.since(look.date) <= OLD => Health::Healthy,
        _ => Health::Unknown,
    }
}
