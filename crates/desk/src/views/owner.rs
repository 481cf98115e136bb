//! The owner's sheet: what was done, the crown now and to come, what to expect and when to call, water, feed, and what
//! nobody may do to the palm.
//!
//! It is for a person who neither keeps palms nor sees the register: no address leads from it, the keeper's free words
//! (notes, why somebody cut) stay out, and every figure is said with its range.

mod done;
mod drawn;
mod expect;
mod feed;
mod links;
mod mind;
#[cfg(test)]
mod tests;
mod water;

pub use done::Done;
pub use drawn::{AHEAD_WEEKS, CrownPicture};
pub use expect::StemView;
pub(super) use expect::held;
pub use links::{LinkRow, links};
pub(super) use mind::{dirty, rule};

pub(super) use done::cut_parts;

use super::case::StemToday;
use super::palms;
use super::said::{Said, Speaker};
use super::standing::Standing;
use crate::judging;
use crate::moved::{self, Moved};
use crate::office::Office;
use model::{Basis, PalmRecord, SourceKey};
use std::sync::Arc;

/// Stems that are drawn; of more, those that stand worst.
pub const MOST_STEMS: usize = 3;

/// A statement with how it is known.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Point {
    /// The words.
    pub text: String,
    /// How it is known, where that must be said.
    pub mark: Option<String>,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

impl Point {
    /// Words that are ours and need no source.
    pub(super) fn own(text: String) -> Point {
        Point {
            text,
            ..Point::default()
        }
    }

    pub(super) fn of(speaker: &Speaker, text: &str, basis: Basis, sources: &[SourceKey]) -> Point {
        Point {
            text: text.to_owned(),
            mark: speaker.basis(basis),
            sources: sources.to_vec(),
        }
    }

    pub(super) fn said(speaker: &Speaker, said: &Said) -> Point {
        let own = speaker.say("basis-own");
        Point {
            text: said.text.clone(),
            // what is worked out from the palm itself needs no mark on its own sheet
            mark: said.basis.clone().filter(|basis| *basis != own),
            sources: said
                .sources
                .iter()
                .map(|s| SourceKey::new(&s.key))
                .collect(),
        }
    }
}

/// Water or feed: what, a small table, what to mind.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Part {
    /// In one or two sentences.
    pub lead: Vec<String>,
    /// Heads of the table.
    pub heads: Vec<String>,
    /// Its rows; empty: no table.
    pub rows: Vec<Vec<String>>,
    /// What to mind.
    pub points: Vec<Point>,
}

/// The sheet.
#[derive(Clone, PartialEq, Debug)]
pub struct OwnerView {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// English trade names.
    pub common: String,
    /// Site.
    pub site: String,
    /// Title of the sheet.
    pub title: String,
    /// "As of 4 May 2026".
    pub as_of: String,
    /// How it stands: a key for tests and style, and words.
    pub stand: (&'static str, String),
    /// What needs a person now; empty: nothing.
    pub urgent: Vec<Point>,
    /// What was done, newest first.
    pub done: Vec<Done>,
    /// Since when that list runs, in words.
    pub done_since: String,
    /// Its stems, drawn and told.
    pub stems: Vec<StemView>,
    /// More stems than are drawn, in words.
    pub more_stems: Option<String>,
    /// What the pictures show and suppose.
    pub picture_note: String,
    /// What the promise rests on.
    pub rests_on: String,
    /// Always: when to call, whatever the count.
    pub call_at_once: String,
    /// What comes next.
    pub next: Vec<String>,
    /// What is usual and no fault.
    pub usual: Vec<Point>,
    /// Water.
    pub water: Part,
    /// Feed.
    pub feed: Part,
    /// What nobody may do.
    pub never: Vec<Point>,
    /// What the level line is, in words.
    pub level: String,
    /// Cautions for whoever works on it.
    pub cautions: Vec<Point>,
}

/// The sheet of a palm; `None` if it has no reading (it is not in the register).
pub fn view(speaker: &Speaker, office: &Office, record: &Arc<PalmRecord>) -> Option<OwnerView> {
    let reading = office.reading(record.id)?;
    let judged = judging::of_record(office, record, &reading);
    let stems: Vec<StemToday> =
        StemToday::each(office, record, &reading, &judged.judgement).collect();
    let standing = Standing::of(office, record, &reading, &judged.judgement);
    let scene = Scene {
        speaker,
        office,
        record,
        moved: moved::of(office, record),
        stems,
        standing,
    };
    Some(scene.view())
}

/// All that a sheet is made from.
struct Scene<'a> {
    speaker: &'a Speaker,
    office: &'a Office,
    record: &'a Arc<PalmRecord>,
    moved: Option<Moved>,
    stems: Vec<StemToday<'a>>,
    standing: Standing,
}

impl Scene<'_> {
    fn say(&self, code: &str) -> String {
        self.speaker.say(code)
    }

    /// The move, while the palm is on its way to being established.
    fn under_way(&self) -> Option<&Moved> {
        self.moved.as_ref().filter(|m| !m.established())
    }

    fn view(&self) -> OwnerView {
        let (speaker, palm) = (self.speaker, &self.record.palm);
        let shown = self.shown();
        let more = self.stems.len() - shown.len();
        let species = self.office.species(palm);
        let urgent = expect::urgent(self);
        let tag = [("tag", palm.tag.clone().into())];
        let day = [("date", speaker.measure.date(self.office.today()).into())];
        OwnerView {
            tag: palm.tag.clone(),
            species: palm.species.clone(),
            common: species.map(|s| s.common.join(", ")).unwrap_or_default(),
            site: palm.site.clone(),
            title: speaker.text("owner-title", &tag),
            as_of: speaker.text("owner-as-of", &day),
            stand: expect::stand(self, &urgent),
            rests_on: expect::rests_on(self, &urgent),
            urgent,
            done: done::of(self),
            done_since: done::since(self),
            stems: shown.iter().map(|stem| expect::stem(self, stem)).collect(),
            more_stems: (more > 0)
                .then(|| speaker.text("owner-more-stems", &[("n", (more as i64).into())])),
            picture_note: self.say("owner-picture-note"),
            call_at_once: self.say("owner-call-at-once"),
            next: self.next(),
            usual: mind::usual(self),
            water: water::part(self),
            feed: feed::part(self),
            never: mind::never(self),
            level: self.say("owner-level"),
            cautions: mind::cautions(self),
        }
    }

    /// The stems that are drawn, in their order.
    fn shown(&self) -> Vec<&StemToday<'_>> {
        let mut worst: Vec<&StemToday> = self.stems.iter().collect();
        let odd = |stem: &StemToday| {
            let loss = stem.reading().loss();
            loss.and_then(|l| l.tail_probability).unwrap_or(1.0)
        };
        worst.sort_by(|a, b| odd(a).total_cmp(&odd(b)));
        worst.truncate(MOST_STEMS);
        worst.sort_by_key(|stem| stem.case().stem);
        worst
    }

    fn next(&self) -> Vec<String> {
        let mut next = Vec::new();
        if let Some(moved) = self.under_way() {
            next.push(super::moved::next_look(self.speaker, moved));
        }
        if self.standing.holds.is_empty() {
            let due = palms::due(self.speaker, &self.standing, self.office.today());
            let take = [("n", i64::from(self.standing.take.brown).into())];
            next.push(format!("{} {due}", self.say("owner-next-cut")));
            next.push(self.speaker.text("owner-next-take", &take));
        } else {
            next.push(self.say("owner-next-held"));
        }
        next
    }
}
