//! Whether a blade may go to a palm now.
//!
//! Says: a blade is clean when its last adequate cleaning came after everything it touched; it may go on at the same
//! palm; a blade that was lent counts as not cleaned from the moment it left; one that cut a palm that is infected or
//! held for a disease goes to no other palm until it was adequately cleaned for that.
//! Source: [handsaw_sterile_each], [disease_cut_each] for the cleaning; lending: common practice, no source.

use super::adequacy::{BATH_MINUTES, BATH_PALMS, adequacy_on};
use super::{Adequacy, Cleaned, Ready};
use model::{BladeKind, Knowledge, Moment, PalmId};

/// One thing a blade did, or that was done to it, told plainly.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Did<'a> {
    /// When it ended.
    pub at: Moment,
    /// What.
    pub what: DidWhat<'a>,
}

/// What a blade did.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum DidWhat<'a> {
    /// Cut a palm.
    Cut(PalmId),
    /// Was cleaned; when the bath was mixed, if there was one.
    Cleaned {
        /// How.
        how: Cleaned<'a>,
        /// When its bath was mixed.
        mixed: Option<Moment>,
    },
    /// Went into other hands.
    Lent,
    /// Came back.
    Returned,
}

/// A palm that a blade may carry something away from.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Danger<'a> {
    /// The palm.
    pub palm: PalmId,
    /// Reason code of the hold, or key of the disorder.
    pub reason: &'a str,
    /// Key of the disorder, if one is known or suspected; without it a cleaning has to do against all.
    pub disorder: Option<&'a str>,
}

/// Whether a blade may go to a palm, after what it did up to now. `dids` in the order of time, later ones passed over.
pub fn ready(
    kind: BladeKind,
    dids: &[Did],
    palm: PalmId,
    dangers: &[Danger],
    now: Moment,
    known: &Knowledge,
) -> Ready {
    let end = dids.partition_point(|did| did.at <= now);
    let dids = &dids[..end];
    if let Some(blocked) = blocked(kind, dids, palm, dangers, known) {
        return blocked;
    }
    let enough = |how: &Cleaned| adequacy_on(kind, how, None, known).adequacy;
    let clean = dids.iter().rposition(
        |did| matches!(&did.what, DidWhat::Cleaned { how, .. } if enough(how) == Adequacy::Adequate),
    );
    let since = &dids[clean.map_or(0, |at| at + 1)..];
    let soils = |did: &Did| match did.what {
        DidWhat::Cut(cut) => cut != palm,
        DidWhat::Lent | DidWhat::Returned => true,
        DidWhat::Cleaned { .. } => false,
    };
    let soiled = match (clean, since.iter().rposition(soils)) {
        (Some(at), None) => {
            let cut = since.iter().any(|did| matches!(did.what, DidWhat::Cut(_)));
            let since = dids[at].at;
            return if cut {
                Ready::SamePalm
            } else {
                Ready::Clean { since }
            };
        }
        (None, None) if since.is_empty() => return Ready::NothingKnown,
        // never clean as far as anybody knows: what it cut before, even this palm, does not make it clean
        (None, None) => None,
        (_, at) => at,
    };
    let after = &since[soiled.map_or(0, |at| at + 1)..];
    after
        .iter()
        .rev()
        .find_map(|did| half(kind, did, known))
        .unwrap_or_else(|| {
            let last = since.iter().rev().find_map(|did| match did.what {
                DidWhat::Cut(palm) => Some(palm),
                _ => None,
            });
            // a lent blade is not cleaned, whatever it cut before
            let lent = soiled.is_some_and(|at| !matches!(since[at].what, DidWhat::Cut(_)));
            Ready::NotCleaned {
                last: last.filter(|_| !lent),
            }
        })
}

/// The last cut of a palm of danger that no cleaning since has made good.
fn blocked(
    kind: BladeKind,
    dids: &[Did],
    palm: PalmId,
    dangers: &[Danger],
    known: &Knowledge,
) -> Option<Ready> {
    for (at, did) in dids.iter().enumerate().rev() {
        let DidWhat::Cut(cut) = did.what else {
            continue;
        };
        let open = dangers
            .iter()
            .filter(|danger| danger.palm == cut && cut != palm);
        for danger in open {
            let good = dids[at + 1..].iter().any(|later| match &later.what {
                DidWhat::Cleaned { how, .. } => {
                    let verdict = adequacy_on(kind, how, danger.disorder, known);
                    verdict.adequacy == Adequacy::Adequate
                }
                _ => false,
            });
            if !good {
                return Some(Ready::Blocked {
                    palm: cut,
                    at: did.at,
                    reason: danger.reason.to_owned(),
                });
            }
        }
    }
    None
}

/// What a cleaning that was not enough leaves to say.
fn half(kind: BladeKind, did: &Did, known: &Knowledge) -> Option<Ready> {
    let DidWhat::Cleaned { how, mixed } = &did.what else {
        return None;
    };
    let spent = how.bath_age_min.is_some_and(|age| age > BATH_MINUTES)
        || how.bath_uses.is_some_and(|uses| uses >= BATH_PALMS);
    Some(
        match (adequacy_on(kind, how, None, known).adequacy, mixed) {
            (Adequacy::Short { missing_min: None }, Some(mixed)) if spent => Ready::BathSpent {
                mixed: *mixed,
                day: mixed.day(),
            },
            (Adequacy::Short { missing_min }, _) => Ready::Short { missing_min },
            _ => Ready::UnknownCleaning,
        },
    )
}
