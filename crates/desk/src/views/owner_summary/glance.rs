//! The counts at a glance.

use super::Scene;
use super::palms::Sorted;
use super::work::{Kind, Off, Work};
use model::PalmId;
use std::collections::BTreeSet;

/// One count.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Count {
    /// `palms`, `looked`, `cut`, `fronds`, `moved`, `held`, `call`.
    pub key: &'static str,
    /// How many.
    pub n: usize,
    /// The figure as it is written.
    pub figure: String,
    /// What is counted.
    pub what: String,
}

/// The counts, in their order.
pub(super) fn counts(scene: &Scene, works: &[Work], palms: &Sorted, standing: usize) -> Vec<Count> {
    let all = [
        ("palms", standing),
        ("looked", palms_of(works, Kind::Looked)),
        ("cut", palms_of(works, Kind::Cut)),
        ("fronds", Off::of(works).fronds() as usize),
        ("moved", palms_of(works, Kind::Moved)),
        ("held", palms.held()),
        ("call", palms.to_call()),
    ];
    all.into_iter()
        .map(|(key, n)| Count {
            key,
            n,
            figure: scene.speaker.measure.count(n as i64),
            what: scene.n(&format!("summary-count-{key}"), n),
        })
        .collect()
}

fn palms_of(works: &[Work], kind: Kind) -> usize {
    let palms: BTreeSet<PalmId> = works
        .iter()
        .filter(|work| work.kind == kind)
        .map(|work| work.palm)
        .collect();
    palms.len()
}

/// What the counts leave open: by colour, cuts that nobody counted, palms that have left the register since.
pub(super) fn notes(scene: &Scene, works: &[Work]) -> Vec<String> {
    let mut notes = Vec::new();
    let off = Off::of(works);
    if off.fronds() > 0 || off.parts[3] > 0 {
        let [green, yellowing, brown, stalks] = off.parts.map(i64::from);
        let args = [
            ("green", green.into()),
            ("yellowing", yellowing.into()),
            ("brown", brown.into()),
            ("stalks", stalks.into()),
        ];
        notes.push(scene.speaker.text("summary-off", &args));
    }
    if off.uncounted > 0 {
        notes.push(scene.n("summary-off-uncounted", off.uncounted));
    }
    let gone: BTreeSet<PalmId> = works
        .iter()
        .filter(|work| !work.stands)
        .map(|work| work.palm)
        .collect();
    if !gone.is_empty() {
        notes.push(scene.n("summary-gone", gone.len()));
    }
    notes
}
