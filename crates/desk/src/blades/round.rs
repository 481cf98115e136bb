//! The cuts of a round as the rotation of blade sets is told them.

use crate::office::Office;
use care::rotation::{Job, Kit};
use model::{PalmId, Species};

/// One palm of a round.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Leg {
    /// The palm.
    pub palm: PalmId,
    /// Minutes of cutting.
    pub minutes: f64,
}

/// The cuts of a round in their order. A blade must be clean before another palm if that palm or the one before may take
/// a wilt that travels on blades: its species is known to, or nothing says that it does not ([handsaw_sterile_each], read
/// strictly).
pub fn jobs(office: &Office, legs: &[Leg]) -> Vec<Job> {
    let mut jobs = Vec::with_capacity(legs.len());
    let mut before: Option<(PalmId, bool)> = None;
    for leg in legs {
        let takes = may_take_wilt(office, leg.palm);
        let needs_clean = before.is_none_or(|(palm, took)| palm != leg.palm && (took || takes));
        jobs.push(Job {
            minutes: leg.minutes,
            needs_clean,
        });
        before = Some((leg.palm, takes));
    }
    jobs
}

/// Blade sets with what is the same everywhere: a bath is changed after ten palms or two hours [bath_change]; brushing
/// and rinsing take a minute each (assumed).
pub fn bath_rules(sets: usize, soak_min: f64) -> Kit {
    Kit {
        sets,
        brush_min: 1.0,
        soak_min,
        rinse_min: 1.0,
        bath_holds: None,
        bath_serves: Some(10),
        bath_lasts_min: Some(120.0),
    }
}

fn may_take_wilt(office: &Office, palm: PalmId) -> bool {
    let state = office.state();
    let species = state.palm(palm).and_then(|r| office.species(&r.palm));
    species.and_then(|species| Species::known(&species.fusarium)) != Some(false)
}
