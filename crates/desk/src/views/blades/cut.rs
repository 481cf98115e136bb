//! The cutting log: which blade, which palm, and whether the one may go to the other.

use super::{BladeRow, badge, row};
use crate::clock;
use crate::forms::{held_at, is_clean};
use crate::office::Office;
use crate::views::history::hold_reason;
use crate::views::said::{Said, Speaker};
use care::clean::Ready;
use model::Moment;
use model::state::{BladeRecord, PalmRecord};
use std::collections::BTreeSet;

/// Palms offered in the tag field at most: a longer list hangs a phone.
const OFFERED: usize = 2000;

/// What the page of the cutting log shows.
#[derive(Clone, PartialEq, Debug)]
pub struct CutView {
    /// The blade that was picked.
    pub blade: Option<BladeRow>,
    /// The palm that was picked.
    pub palm: Option<PalmBrief>,
    /// Blades to pick from, those of a kit together; lent ones last.
    pub choices: Vec<BladeRow>,
    /// Tags of standing palms with their species.
    pub palms: Vec<(String, String)>,
    /// Whether that blade may go to that palm, if both were picked.
    pub verdict: Option<Verdict>,
    /// People who cut before, for the field.
    pub crews: Vec<String>,
    /// Now, as a field of date and hour wants it.
    pub now_typed: String,
    /// Now, milliseconds since 1970, for the script.
    pub now_ms: i64,
    /// An address of the picked palm that leads nowhere.
    pub no_palm: Option<String>,
    /// A tag of a blade that leads nowhere.
    pub no_blade: Option<String>,
}

/// A palm in a line.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmBrief {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// Stems.
    pub stems: u16,
}

/// Whether a blade may go to a palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Verdict {
    /// Key of the badge, or `held`: nobody cuts this palm.
    pub key: &'static str,
    /// In a word.
    pub headline: String,
    /// In a sentence, with what to do.
    pub says: String,
    /// Whether it passes without a reason.
    pub clean: bool,
    /// What speaks of the blade's last cleaning, with sources.
    pub because: Vec<Said>,
}

/// The page for a blade and a palm by their tags; either may be empty.
pub fn view(speaker: &Speaker, office: &Office, blade: &str, palm: &str) -> CutView {
    let (state, now) = (office.state(), clock::now(office));
    let at_palm = state.by_tag(palm);
    let tool = state.blade_by_tag(blade);
    let id = at_palm.map(|record| record.id);
    let mut choices: Vec<&BladeRecord> = state.serving().map(|b| &**b).collect();
    choices.sort_by_key(|b| (b.lent.is_some(), b.blade.kit.clone(), b.blade.tag.clone()));
    let palms = state.tags().iter().filter_map(|(tag, id)| {
        let record = state.palm(*id)?;
        Some((tag.clone(), record.palm.species.clone()))
    });
    CutView {
        blade: tool.map(|b| row(speaker, office, b, id, now)),
        palm: at_palm.map(|record| brief(record)),
        choices: choices
            .into_iter()
            .map(|b| row(speaker, office, b, id, now))
            .collect(),
        palms: palms.take(OFFERED).collect(),
        verdict: verdict(
            speaker,
            office,
            tool.map(|b| &**b),
            at_palm.map(|p| &**p),
            now,
        ),
        crews: crews(office),
        now_typed: clock::typed(now),
        now_ms: now.0,
        no_palm: (at_palm.is_none() && !palm.is_empty()).then(|| palm.to_owned()),
        no_blade: (tool.is_none() && !blade.is_empty()).then(|| blade.to_owned()),
    }
}

fn brief(record: &PalmRecord) -> PalmBrief {
    PalmBrief {
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        site: record.palm.site.clone(),
        stems: record.palm.stems,
    }
}

/// A hold on the palm comes before anything about the blade.
fn verdict(
    speaker: &Speaker,
    office: &Office,
    blade: Option<&BladeRecord>,
    palm: Option<&PalmRecord>,
    now: Moment,
) -> Option<Verdict> {
    let palm = palm?;
    if let Some(reason) = held_at(palm, now) {
        let reason = badge::lower(&hold_reason(speaker, &reason));
        let says = speaker.text("cutting-held-says", &[("reason", reason.into())]);
        return Some(Verdict {
            key: "held",
            headline: speaker.say("cutting-held"),
            says,
            clean: false,
            because: Vec::new(),
        });
    }
    let blade = blade?;
    if let Some(lent) = &blade.lent {
        return Some(Verdict {
            key: "lent",
            headline: speaker.text("blade-is-lent", &[("to", lent.to.clone().into())]),
            says: speaker.say("cutting-lent-says"),
            clean: false,
            because: Vec::new(),
        });
    }
    let ready = super::ready_for(office, blade, Some(palm.id), now);
    Some(Verdict {
        key: badge::key(&ready),
        headline: headline(speaker, &ready),
        says: badge::sentence(speaker, office, &ready, now),
        clean: is_clean(&ready),
        because: super::because(speaker, office, blade),
    })
}

fn headline(speaker: &Speaker, ready: &Ready) -> String {
    speaker.say(&format!("cutting-verdict-{}", badge::key(ready)))
}

/// People who cut before.
fn crews(office: &Office) -> Vec<String> {
    let state = office.state();
    let mut names = BTreeSet::new();
    for blade in state.blades.values() {
        names.insert(blade.blade.holder.clone());
        for touch in blade.touches.iter().rev().take(50) {
            if let model::state::Touch::Cut(cut) = &touch.what {
                names.insert(cut.crew.clone());
            }
        }
    }
    names.remove("");
    names.into_iter().collect()
}
