//! Blades as the register has them, told to the rules of cleaning.

mod round;
#[cfg(test)]
mod tests;

pub use round::{Leg, bath_rules, jobs};

use crate::judging;
use crate::office::Office;
use crate::views::case::StemToday;
use care::clean::{
    self, Adequacy, Cleaned, CleaningVerdict, Danger, Did, DidWhat, Ready, adequacy_on,
};
use model::state::{BathRecord, BladeRecord, BladeTouch, Hold, Touch};
use model::{BladeKind, Cleaning, Finding, Knowledge, Moment, PalmId, State};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Holds for which a palm may pass something on to a blade. A nest, a wire or the keeper's own reason is none; a weevil
/// does not travel on blades.
pub const INFECTIOUS: [&str; 6] = [
    "lab-confirmed",
    "wilt-suspect",
    "phytoplasma-suspect",
    "bud-rot-suspect",
    "trunk-rot-suspect",
    "spear",
];

/// What the rules advise a hold for, by the beginning of the code of what they say, and the reason it stands for.
pub(crate) const ADVISED: [(&str, &str); 7] = [
    ("hold-wilt", "wilt-suspect"),
    ("hold-decline", "wilt-suspect"),
    ("hold-phytoplasma", "phytoplasma-suspect"),
    ("hold-bud-rot", "bud-rot-suspect"),
    ("hold-trunk-rot", "trunk-rot-suspect"),
    ("hold-conk", "trunk-rot-suspect"),
    ("hold-spear", "spear"),
];

/// Palms whose plan is asked for advised holds, for each blade: a reading costs time.
const ASKED: usize = 12;

/// One cleaning as the rules are told it: the bath says agent and strength where the cleaning does not, its age at the
/// end of the cleaning, and how many cleanings it had served before.
pub fn told<'a>(state: &'a State, cleaning: &'a Cleaning, at: Moment) -> Cleaned<'a> {
    let bath = cleaning.bath.and_then(|id| state.baths.get(&id));
    let agent = match bath {
        Some(bath) if cleaning.agent.trim().is_empty() => &bath.bath.agent,
        _ => &cleaning.agent,
    };
    Cleaned {
        agent,
        strength_pct: cleaning
            .strength_pct
            .or_else(|| bath.and_then(|bath| bath.bath.strength_pct)),
        contact_min: cleaning.contact_min,
        brushed: cleaning.brushed,
        bath_age_min: bath.map(|bath| age_min(bath, at)),
        bath_uses: bath.map(|bath| uses(bath, at)),
    }
}

/// Minutes since a bath was mixed; 0 before that.
pub fn age_min(bath: &BathRecord, at: Moment) -> f64 {
    (at.0.saturating_sub(bath.mixed.0).max(0) / 1000) as f64 / 60.0
}

/// Cleanings that a bath had served before a moment.
pub fn uses(bath: &BathRecord, at: Moment) -> u32 {
    let before = bath.served.iter().filter(|(end, _)| *end < at).count();
    u32::try_from(before).unwrap_or(u32::MAX)
}

/// Why a bath is to be changed before anything more is laid into it; `None`: it may serve on.
pub fn spent(bath: &BathRecord, now: Moment) -> Option<Finding> {
    let soaked = Cleaned {
        agent: &bath.bath.agent,
        bath_age_min: Some(age_min(bath, now)),
        bath_uses: Some(uses(bath, now)),
        ..Cleaned::default()
    };
    let findings = clean::adequacy(&soaked, None, Knowledge::embedded()).findings;
    let spent = |finding: &Finding| matches!(finding.code, "clean-bath-old" | "clean-bath-used");
    findings.into_iter().find(spent)
}

/// Whether a cleaning of a blade was enough for a disorder (its key), or for all that its agent's sources name.
pub fn verdict(
    state: &State,
    kind: BladeKind,
    cleaning: &Cleaning,
    at: Moment,
    disorder: Option<&str>,
) -> CleaningVerdict<'static> {
    adequacy_on(
        kind,
        &told(state, cleaning, at),
        disorder,
        Knowledge::embedded(),
    )
}

/// What a blade did, as the rules are told it, in the order of time.
pub fn dids<'a>(state: &'a State, blade: &'a BladeRecord) -> Vec<Did<'a>> {
    let what = |touch: &'a BladeTouch| match &touch.what {
        Touch::Cut(cut) => DidWhat::Cut(cut.palm),
        Touch::Cleaned(cleaning) => DidWhat::Cleaned {
            how: told(state, cleaning, touch.at),
            mixed: cleaning
                .bath
                .and_then(|id| Some(state.baths.get(&id)?.mixed)),
        },
        Touch::Lent(_) => DidWhat::Lent,
        Touch::Returned => DidWhat::Returned,
    };
    let all = blade.touches.iter().map(|touch| Did {
        at: touch.at,
        what: what(touch),
    });
    all.collect()
}

/// Whether a blade may go to a palm (`None`: to any) at a moment. Palms it cut that are held for something a blade may
/// carry block it, and so do palms it cut since it was last clean for which the rules advise such a hold.
pub fn ready(office: &Office, blade: &BladeRecord, palm: Option<PalmId>, at: Moment) -> Ready {
    let state = office.state();
    let dids = dids(&state, blade);
    let dangers = dangers(office, &state, blade, &dids, at);
    let dangers: Vec<Danger> = dangers
        .iter()
        .map(|(palm, reason)| Danger {
            palm: *palm,
            reason,
            disorder: None,
        })
        .collect();
    let palm = palm.unwrap_or(PalmId(Uuid::nil()));
    let known = Knowledge::embedded();
    clean::ready(blade.blade.kind, &dids, palm, &dangers, at, known)
}

/// Palms that a blade cut and may carry something away from, each with its reason.
fn dangers(
    office: &Office,
    state: &State,
    blade: &BladeRecord,
    dids: &[Did],
    at: Moment,
) -> BTreeMap<PalmId, String> {
    let mut dangers = BTreeMap::new();
    let known = Knowledge::embedded();
    let mut unclean: Vec<PalmId> = Vec::new();
    let mut clean = false;
    for did in dids.iter().rev().filter(|did| did.at <= at) {
        match &did.what {
            DidWhat::Cleaned { how, .. } => {
                let verdict = adequacy_on(blade.blade.kind, how, None, known);
                clean |= verdict.adequacy == Adequacy::Adequate;
            }
            DidWhat::Cut(palm) => {
                if let Some(reason) = held_for(state, *palm, at) {
                    dangers.entry(*palm).or_insert(reason);
                } else if !clean && !unclean.contains(palm) && unclean.len() < ASKED {
                    unclean.push(*palm);
                }
            }
            DidWhat::Lent | DidWhat::Returned => {}
        }
    }
    for palm in unclean {
        if let Some(reason) = advised_for(office, state, palm) {
            dangers.insert(palm, reason.to_owned());
        }
    }
    dangers
}

/// The reason of a hold in force that a blade may carry away from a palm.
fn held_for(state: &State, palm: PalmId, at: Moment) -> Option<String> {
    let record = state.palm(palm)?;
    let infectious = |hold: &&Hold| INFECTIOUS.contains(&hold.reason.as_str());
    let hold = record.holds_on(at.day()).find(infectious)?;
    Some(hold.reason.clone())
}

/// The reason of a hold that the rules advise for a standing palm today.
fn advised_for(office: &Office, state: &State, palm: PalmId) -> Option<&'static str> {
    let record = state.palm(palm).filter(|record| record.stands())?;
    // nothing was ever seen on it: there is nothing to advise from
    record.last_look()?;
    let reading = office.reading(palm)?;
    let judged = judging::in_brief(office, record, &reading);
    StemToday::each(office, record, &reading, &judged).find_map(|stem| {
        let plan = care::cut_plan(&stem.case());
        plan.holds.iter().find_map(|hold| {
            let reasons = ADVISED.iter();
            let mut own = reasons.filter(|(code, _)| hold.code.starts_with(code));
            own.next().map(|(_, reason)| *reason)
        })
    })
}
