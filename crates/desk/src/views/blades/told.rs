//! What the rules of cleaning say of blades on the rack.

use crate::office::Office;
use crate::views::said::{Said, Speaker};
use care::clean::{Adequacy, Ready};
use model::state::{BathRecord, BladeRecord};
use model::{Cleaning, Moment, PalmId};

/// Whether a blade may go to a palm (to any, if none is named) at a moment.
pub fn ready_for(
    _office: &Office,
    _blade: &BladeRecord,
    _palm: Option<PalmId>,
    _at: Moment,
) -> Ready {
    Ready::NothingKnown
}

/// Whether a cleaning was enough.
pub fn adequacy(_office: &Office, _cleaning: &Cleaning, _at: Moment) -> Adequacy {
    Adequacy::Unknown
}

/// Whether a cleaning was enough, in one word.
pub fn is_adequate(office: &Office, cleaning: &Cleaning, at: Moment) -> bool {
    adequacy(office, cleaning, at) == Adequacy::Adequate
}

/// What speaks of a blade's last cleaning, with sources.
pub fn because(_speaker: &Speaker, _office: &Office, _blade: &BladeRecord) -> Vec<Said> {
    Vec::new()
}

/// Why a bath is to be changed now; nothing if it may serve on.
pub fn change_now(_speaker: &Speaker, _bath: &BathRecord, _now: Moment) -> Option<Said> {
    None
}
