//! What the rules of cleaning say of blades on the rack.

use crate::blades;
use crate::office::Office;
use crate::views::said::{Said, Speaker};
use care::clean::{Adequacy, CleaningVerdict, Ready};
use model::state::{BathRecord, BladeRecord, Touch};
use model::{Cleaning, Moment, PalmId};

/// Whether a blade may go to a palm (to any, if none is named) at a moment.
pub fn ready_for(office: &Office, blade: &BladeRecord, palm: Option<PalmId>, at: Moment) -> Ready {
    blades::ready(office, blade, palm, at)
}

/// Whether a cleaning was enough for all that its agent's sources name.
pub fn adequacy(office: &Office, cleaning: &Cleaning, at: Moment) -> Adequacy {
    verdict(office, cleaning, at).adequacy
}

fn verdict(office: &Office, cleaning: &Cleaning, at: Moment) -> CleaningVerdict<'static> {
    let state = office.state();
    let kind = state.blade(cleaning.blade).map(|blade| blade.blade.kind);
    blades::verdict(&state, kind.unwrap_or_default(), cleaning, at, None)
}

/// Whether a cleaning was enough, in one word.
pub fn is_adequate(office: &Office, cleaning: &Cleaning, at: Moment) -> bool {
    adequacy(office, cleaning, at) == Adequacy::Adequate
}

/// What speaks of a blade's last cleaning, with sources.
pub fn because(speaker: &Speaker, office: &Office, blade: &BladeRecord) -> Vec<Said> {
    let last = blade
        .touches
        .iter()
        .rev()
        .find_map(|touch| match &touch.what {
            Touch::Cleaned(cleaning) => Some((cleaning, touch.at)),
            _ => None,
        });
    last.map_or_else(Vec::new, |(cleaning, at)| {
        speaker.findings(&verdict(office, cleaning, at).findings)
    })
}

/// Why a bath is to be changed now; nothing if it may serve on.
pub fn change_now(speaker: &Speaker, bath: &BathRecord, now: Moment) -> Option<Said> {
    blades::spent(bath, now).map(|finding| speaker.finding(&finding))
}
