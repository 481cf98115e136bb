//! Notes checked against the state before they become entries.
//!
//! Only what would be nonsense in the ledger is refused here; finer questions (was the count really that low?) are
//! asked by forms and imports, where a person can answer them.

mod blade;
mod work;

use super::Note;
use model::state::Fold;
use model::{Arg, Body, Clock, Day, EntryId, Finding, Inspection, Palm, PalmId, Severity, State};
use std::collections::BTreeMap;
use std::sync::Arc;

/// No crown holds and no crew takes off more fronds than this.
const MOST_FRONDS: u32 = 1000;
/// No clump is managed stem by stem beyond this.
const MOST_STEMS: u16 = 1000;
/// No palm and no wire above it is higher, m (the tallest palms known are about 60 m).
const HIGHEST: f64 = 120.0;
/// Longest tag, characters.
const LONGEST_TAG: usize = 64;

/// Notes in their order, each checked against the state and the notes before it.
pub(super) struct Check<'a> {
    fold: &'a Fold,
    state: Arc<State>,
    latest: Day,
    batch: BTreeMap<EntryId, Kind>,
    palms: BTreeMap<PalmId, Seen>,
    tags: BTreeMap<String, Option<PalmId>>,
    blades: blade::Seen,
}

#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Registration,
    Blade,
    Bath,
    Hold,
    Round,
    Other,
}

/// A palm as the notes before leave it.
#[derive(Clone)]
struct Seen {
    tag: String,
    stems: u16,
}

impl<'a> Check<'a> {
    /// A check against what is known; days after `latest` are in the future.
    pub fn new(fold: &'a Fold, latest: Day) -> Check<'a> {
        let (batch, palms, tags) = Default::default();
        Check {
            fold,
            state: fold.state(),
            latest,
            batch,
            palms,
            tags,
            blades: blade::Seen::default(),
        }
    }

    /// What is wrong with notes, in their order.
    pub fn all(mut self, notes: &[&(EntryId, Note)]) -> Vec<Finding> {
        notes
            .iter()
            .flat_map(|(id, note)| self.note(*id, note))
            .collect()
    }

    fn note(&mut self, id: EntryId, note: &Note) -> Vec<Finding> {
        let mut wrong = Vec::new();
        self.correction(note, &mut wrong);
        match &note.body {
            Body::PalmRegistered(palm) => {
                let own = note
                    .replaces
                    .map_or(PalmId(id.0), |first| self.fold.palm_named(PalmId(first.0)));
                self.describe(own, palm, &mut wrong);
            }
            Body::PalmChanged { palm, to } => {
                if self.known(*palm, &mut wrong).is_some() {
                    self.describe(self.fold.palm_named(*palm), to, &mut wrong);
                }
            }
            Body::PalmRemoved { palm, .. } => {
                if let Some(seen) = self.known(*palm, &mut wrong) {
                    self.tags.insert(seen.tag, None);
                }
            }
            Body::Inspected { palm, inspection } => {
                if let Some(seen) = self.known(*palm, &mut wrong) {
                    look(inspection, &seen, self.latest, &mut wrong);
                }
            }
            Body::HoldSet { palm, reason, .. } => {
                if self.known(*palm, &mut wrong).is_some() && reason.trim().is_empty() {
                    wrong.push(refuse("hold-without-reason"));
                }
            }
            Body::HoldLifted { hold, .. } => {
                if !self.fold.holds(*hold) && self.batch.get(hold) != Some(&Kind::Hold) {
                    wrong.push(refuse("hold-unknown"));
                }
            }
            Body::Noted { palm, .. } => drop(self.known(*palm, &mut wrong)),
            Body::BladeRegistered(_)
            | Body::BladeChanged { .. }
            | Body::BladeRetired { .. }
            | Body::BladeLent { .. }
            | Body::BladeReturned { .. }
            | Body::CutMade(_)
            | Body::BathMixed(_)
            | Body::Cleaned(_) => self.blade(id, note, &mut wrong),
            Body::Tended { .. }
            | Body::LinkGiven { .. }
            | Body::SiteDescribed(_)
            | Body::CrewDescribed(_)
            | Body::PricesSet(_)
            | Body::WeatherNoted(_)
            | Body::RoundPlanned(_)
            | Body::RoundNoted(_) => self.work(note, &mut wrong),
            Body::Withdrawn { .. } | Body::Unknown { .. } => {}
        }
        self.batch.insert(id, kind(&note.body));
        wrong
    }

    /// A correction names an entry that is there, and a registration stands in only for a registration.
    fn correction(&self, note: &Note, wrong: &mut Vec<Finding>) {
        let withdrawal = matches!(note.body, Body::Withdrawn { .. });
        let Some(target) = note.replaces else {
            if withdrawal {
                wrong.push(refuse("withdrawal-of-nothing"));
            }
            return;
        };
        let (palm, blade) = match self.batch.get(&target) {
            Some(kind) => (*kind == Kind::Registration, *kind == Kind::Blade),
            None if self.fold.knows(target) => (
                self.fold.registers(target),
                self.fold.registers_blade(target),
            ),
            None => return wrong.push(refuse("entry-unknown")),
        };
        let own = kind(&note.body);
        let same = (palm, blade) == (own == Kind::Registration, own == Kind::Blade);
        if !withdrawal && !same {
            wrong.push(refuse("correction-of-another-kind"));
        }
    }

    /// A palm by any of its ids, as the notes before leave it.
    fn known(&self, palm: PalmId, wrong: &mut Vec<Finding>) -> Option<Seen> {
        let palm = self.fold.palm_named(palm);
        let seen = self.palms.get(&palm).cloned().or_else(|| {
            let record = self.state.palm(palm)?;
            Some(Seen {
                tag: record.palm.tag.clone(),
                stems: record.palm.stems,
            })
        });
        if seen.is_none() {
            wrong.push(refuse("palm-unknown").with("palm", Arg::Text(palm.0.to_string())));
        }
        seen
    }

    /// A palm's description; from here on it is the palm's.
    fn describe(&mut self, palm: PalmId, to: &Palm, wrong: &mut Vec<Finding>) {
        description(to, self.latest, wrong);
        if self.carrier(&to.tag).is_some_and(|carrier| carrier != palm) {
            wrong.push(refuse("tag-taken").with("tag", Arg::Text(to.tag.clone())));
        }
        let removed = self.state.palm(palm).is_some_and(|record| !record.stands());
        let before = match self.palms.get(&palm) {
            Some(seen) => Some(seen.tag.clone()),
            None => self.state.palm(palm).map(|record| record.palm.tag.clone()),
        };
        if let Some(before) = before.filter(|tag| self.carrier(tag) == Some(palm)) {
            self.tags.insert(before, None);
        }
        if !removed {
            self.tags.insert(to.tag.clone(), Some(palm));
        }
        self.palms.insert(
            palm,
            Seen {
                tag: to.tag.clone(),
                stems: to.stems,
            },
        );
    }

    fn carrier(&self, tag: &str) -> Option<PalmId> {
        match self.tags.get(tag) {
            Some(noted) => *noted,
            None => self.state.by_tag(tag).map(|record| record.id),
        }
    }
}

fn kind(body: &Body) -> Kind {
    match body {
        Body::PalmRegistered(_) => Kind::Registration,
        Body::HoldSet { .. } => Kind::Hold,
        Body::BladeRegistered(_) => Kind::Blade,
        Body::BathMixed(_) => Kind::Bath,
        Body::RoundPlanned(_) => Kind::Round,
        _ => Kind::Other,
    }
}

fn refuse(code: &'static str) -> Finding {
    Finding::new(code, Severity::Refuse)
}

fn description(palm: &Palm, latest: Day, wrong: &mut Vec<Finding>) {
    let tag = || Arg::Text(palm.tag.clone());
    tag_of(&palm.tag, wrong);
    if !(1..=MOST_STEMS).contains(&palm.stems) {
        let (found, limit) = (Arg::Count(palm.stems.into()), Arg::Count(MOST_STEMS.into()));
        wrong.push(
            refuse("stems-absurd")
                .with("tag", tag())
                .with("found", found)
                .with("limit", limit),
        );
    }
    for day in [palm.planted_on, palm.moved_on, palm.last_cleaned_on]
        .into_iter()
        .flatten()
    {
        date(day, latest, &palm.tag, wrong);
    }
    let fronds = f64::from(MOST_FRONDS);
    let positive = |figure: Option<f64>| figure.is_none_or(|f| f > 0.0 && f <= fronds);
    let height =
        |metres: Option<model::Metres>| metres.is_none_or(|m| (0.0..=HIGHEST).contains(&m.0));
    let place = palm
        .position
        .is_none_or(|p| p.lat.abs() <= 90.0 && p.lon.abs() <= 180.0);
    let sound = positive(palm.full_crown) && positive(palm.fronds_per_year);
    if !(sound && height(palm.trunk_height) && height(palm.wires) && place) {
        wrong.push(refuse("figure-out-of-range").with("tag", tag()));
    }
}

/// The mark on a palm or a blade.
fn tag_of(tag: &str, wrong: &mut Vec<Finding>) {
    if tag.trim() != tag || tag.is_empty() || tag.chars().count() > LONGEST_TAG {
        let limit = Arg::Count(LONGEST_TAG as i64);
        let malformed = refuse("tag-malformed").with("tag", Arg::Text(tag.to_owned()));
        wrong.push(malformed.with("limit", limit));
    }
}

fn look(look: &Inspection, palm: &Seen, latest: Day, wrong: &mut Vec<Finding>) {
    let on = |code| {
        let (tag, stem) = (Arg::Text(palm.tag.clone()), Arg::Count(look.stem.into()));
        refuse(code)
            .with("tag", tag)
            .with("stem", stem)
            .with("date", Arg::Date(look.date))
    };
    if look.stem == 0 || look.stem > palm.stems {
        wrong.push(on("stem-out-of-range"));
    }
    date(look.date, latest, &palm.tag, wrong);
    let removed = [
        look.removed.green,
        look.removed.yellowing,
        look.removed.brown,
    ];
    let counted = [look.green, look.yellowing, look.brown];
    for count in removed
        .into_iter()
        .chain(counted)
        .chain([look.new_leaves])
        .flatten()
    {
        if count > MOST_FRONDS {
            let (found, limit) = (Arg::Count(count.into()), Arg::Count(MOST_FRONDS.into()));
            wrong.push(on("count-absurd").with("found", found).with("limit", limit));
        }
    }
    let more = |pair: (Option<u32>, Option<u32>)| matches!(pair, (Some(off), Some(on)) if off > on);
    if removed.into_iter().zip(counted).any(more) {
        wrong.push(on("more-off-than-on"));
    }
    if [look.clock_left, look.clock_right]
        .into_iter()
        .flatten()
        .any(|clock| Clock::new(clock.0).is_none())
    {
        wrong.push(on("clock-impossible"));
    }
}

/// Neither in the future nor before anybody kept palms by the book.
fn date(day: Day, latest: Day, tag: &str, wrong: &mut Vec<Finding>) {
    let on = |code| {
        refuse(code)
            .with("tag", Arg::Text(tag.to_owned()))
            .with("date", Arg::Date(day))
    };
    if day > latest {
        wrong.push(on("date-in-future").with("today", Arg::Date(latest)));
    }
    if day.ymd().0 < 1800 {
        wrong.push(on("date-too-early"));
    }
}
