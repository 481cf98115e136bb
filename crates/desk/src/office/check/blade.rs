//! Blades, cuts, baths and cleanings. Clocks that jump and cuts that overlap are recorded, and become findings of the
//! state: what was done must not be lost over when it was done.

use super::{Check, Kind, MOST_FRONDS, Note, date, refuse, tag_of};
use model::{Arg, Blade, BladeId, Body, Cleaning, CutMade, EntryId, Finding};
use std::collections::BTreeMap;

/// No blade soaks longer than this, minutes (a week).
const LONGEST_CONTACT: f64 = 10_080.0;

/// Blades as the notes before leave them.
#[derive(Default)]
pub(super) struct Seen {
    blades: BTreeMap<BladeId, String>,
    tags: BTreeMap<String, Option<BladeId>>,
}

impl Check<'_> {
    /// What is wrong with a note about a blade or a bath.
    pub(super) fn blade(&mut self, id: EntryId, note: &Note, wrong: &mut Vec<Finding>) {
        match &note.body {
            Body::BladeRegistered(blade) => {
                let own = BladeId(note.replaces.unwrap_or(id).0);
                self.blade_is(self.fold.blade_named(own), blade, wrong);
            }
            Body::BladeChanged { blade, to } => {
                let Some(_) = self.known_blade(*blade, wrong) else {
                    return;
                };
                self.blade_is(self.fold.blade_named(*blade), to, wrong);
            }
            Body::BladeRetired { blade, .. } => {
                if let Some(tag) = self.known_blade(*blade, wrong) {
                    self.blades.tags.insert(tag, None);
                }
            }
            Body::BladeLent { blade, .. } | Body::BladeReturned { blade } => {
                drop(self.known_blade(*blade, wrong));
            }
            Body::CutMade(cut) => self.cut(cut, note, wrong),
            Body::BathMixed(bath) => {
                date(note.at.day(), self.latest, &bath.agent, wrong);
                figures(bath.strength_pct, None, &bath.agent, wrong);
            }
            Body::Cleaned(cleaning) => self.cleaning(cleaning, note, wrong),
            _ => {}
        }
    }

    fn cut(&self, cut: &CutMade, note: &Note, wrong: &mut Vec<Finding>) {
        let palm = self.known(cut.palm, wrong);
        drop(self.known_blade(cut.blade, wrong));
        let Some(palm) = palm else { return };
        date(note.at.day(), self.latest, &palm.tag, wrong);
        let on = |code| {
            refuse(code)
                .with("tag", Arg::Text(palm.tag.clone()))
                .with("stem", Arg::Count(cut.stem.into()))
                .with("date", Arg::Date(note.at.day()))
        };
        if cut.stem == 0 || cut.stem > palm.stems {
            wrong.push(on("stem-out-of-range"));
        }
        let off = [
            cut.off.green,
            cut.off.yellowing,
            cut.off.brown,
            cut.off.stalks,
        ];
        for count in off.into_iter().flatten().filter(|n| *n > MOST_FRONDS) {
            let (found, limit) = (Arg::Count(count.into()), Arg::Count(MOST_FRONDS.into()));
            wrong.push(on("count-absurd").with("found", found).with("limit", limit));
        }
    }

    fn cleaning(&self, cleaning: &Cleaning, note: &Note, wrong: &mut Vec<Finding>) {
        let Some(tag) = self.known_blade(cleaning.blade, wrong) else {
            return;
        };
        date(note.at.day(), self.latest, &tag, wrong);
        figures(cleaning.strength_pct, cleaning.contact_min, &tag, wrong);
        if let Some(bath) = cleaning.bath {
            let known = self.fold.mixes_bath(bath) || self.batch.get(&bath) == Some(&Kind::Bath);
            if !known {
                let unknown = refuse("bath-unknown").with("blade", Arg::Text(tag));
                wrong.push(unknown.with("date", Arg::Date(note.at.day())));
            }
        }
    }

    /// The tag of a blade by any of its ids, as the notes before leave it.
    fn known_blade(&self, blade: BladeId, wrong: &mut Vec<Finding>) -> Option<String> {
        let blade = self.fold.blade_named(blade);
        let noted = self.blades.blades.get(&blade).cloned();
        let tag = noted.or_else(|| Some(self.state.blade(blade)?.blade.tag.clone()));
        if tag.is_none() {
            wrong.push(refuse("blade-unknown").with("blade", Arg::Text(blade.0.to_string())));
        }
        tag
    }

    /// A blade's description; from here on it is the blade's.
    fn blade_is(&mut self, blade: BladeId, to: &Blade, wrong: &mut Vec<Finding>) {
        tag_of(&to.tag, wrong);
        let carrier = |tag: &str| match self.blades.tags.get(tag) {
            Some(noted) => *noted,
            None => self.state.blade_by_tag(tag).map(|record| record.id),
        };
        if carrier(&to.tag).is_some_and(|carrier| carrier != blade) {
            wrong.push(refuse("blade-tag-taken").with("tag", Arg::Text(to.tag.clone())));
        }
        let record = self.state.blade(blade);
        let before = match self.blades.blades.get(&blade) {
            Some(tag) => Some(tag.clone()),
            None => record.map(|record| record.blade.tag.clone()),
        };
        let before = before.filter(|tag| carrier(tag) == Some(blade));
        let retired = record.is_some_and(|record| !record.serves());
        let tags = &mut self.blades.tags;
        tags.extend(before.map(|tag| (tag, None)));
        if !retired {
            tags.insert(to.tag.clone(), Some(blade));
        }
        self.blades.blades.insert(blade, to.tag.clone());
    }
}

/// Percent and minutes that can be.
fn figures(strength: Option<f64>, minutes: Option<f64>, tag: &str, wrong: &mut Vec<Finding>) {
    let sound = strength.is_none_or(|pct| (0.0..=100.0).contains(&pct))
        && minutes.is_none_or(|min| (0.0..=LONGEST_CONTACT).contains(&min));
    if !sound {
        let limit = Arg::Count(LONGEST_CONTACT as i64);
        let impossible = refuse("cleaning-impossible").with("tag", Arg::Text(tag.to_owned()));
        wrong.push(impossible.with("limit", limit));
    }
}
