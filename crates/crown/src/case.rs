//! One stem's crown as the world tells it.

use crate::prior::Prior;
use model::{Climate, Day, Inspection, Palm};

/// All that the reading needs of one stem.
#[derive(Clone, PartialEq, Debug)]
pub struct StemCase {
    /// Beliefs before the counts.
    pub prior: Prior,
    /// Climate of the place, if known.
    pub climate: Option<Climate>,
    /// Latitude in degrees, if known; without it the northern season is taken.
    pub latitude: Option<f64>,
    /// Day of the move, if it was moved.
    pub moved_on: Option<Day>,
    /// Day all dead fronds were last taken off.
    pub last_cleaned_on: Option<Day>,
    /// This stem's inspections, oldest first, one a day.
    pub inspections: Vec<Inspection>,
}

impl StemCase {
    /// The case of one stem of a palm. `inspections` may hold other stems and any order.
    pub fn of(
        palm: &Palm,
        stem: u16,
        inspections: &[Inspection],
        prior: Prior,
        climate: Option<&Climate>,
    ) -> StemCase {
        let mut own: Vec<Inspection> = inspections
            .iter()
            .filter(|i| i.stem == stem)
            .cloned()
            .collect();
        own.sort_by_key(|i| i.date);
        StemCase {
            prior,
            climate: climate.cloned(),
            latitude: palm.position.map(|p| p.lat),
            moved_on: palm.moved_on,
            last_cleaned_on: palm.last_cleaned_on,
            inspections: own,
        }
    }
}
