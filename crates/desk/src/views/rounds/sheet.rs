//! The sheet of a round for the crew that has no phone, or no net: the order, and a card for each palm that is cut.

use super::super::case::StemToday;
use super::super::cutting::{self, CuttingView, Line};
use super::super::drawing::{Look, draw, svg_with_cuts};
use super::super::said::{Said, Speaker};
use super::builder::tasks;
use super::round::{cleaning_points, water};
use super::{hour, when};
use crate::judging;
use crate::office::Office;
use care::CutPlan;
use crown::Cut;
use model::{Day, EntryId, PalmRecord, RoundStop};
use std::sync::Arc;

/// A palm in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct SheetRow {
    /// Its place in the order, from 1.
    pub n: usize,
    /// Planned start.
    pub start: String,
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// What is to be done.
    pub tasks: String,
    /// The blade must be cleaned before it.
    pub clean: bool,
    /// It is held: nothing is cut.
    pub held: bool,
}

/// A stem to be cut.
#[derive(Clone, PartialEq, Debug)]
pub struct Card {
    /// Its place in the order, from 1.
    pub n: usize,
    /// Tag.
    pub tag: String,
    /// The stem, where the palm has several.
    pub stem: Option<u16>,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// The crown today, the fronds that come off marked: an SVG picture.
    pub svg: String,
    /// The same for who cannot see it.
    pub says: String,
    /// What comes off.
    pub take: String,
    /// What stays whatever is asked.
    pub stay: String,
    /// Stub, tool, stand.
    pub how: Vec<Line>,
    /// What holds it; then nothing is cut.
    pub holds: Vec<Said>,
    /// The blade must be cleaned before it.
    pub clean: bool,
}

/// A caution and the palms it is about.
#[derive(Clone, PartialEq, Debug)]
pub struct Warned {
    /// The caution.
    pub said: Said,
    /// Tags.
    pub tags: Vec<String>,
}

/// The sheet.
#[derive(Clone, PartialEq, Debug)]
pub struct CrewSheet {
    /// Whose round.
    pub title: String,
    /// Day and hours.
    pub when: String,
    /// Words to the crew.
    pub notes: String,
    /// Palms in order.
    pub rows: Vec<SheetRow>,
    /// Stems to be cut, in order.
    pub cards: Vec<Card>,
    /// Cautions, in the order in which palms call for them.
    pub cautions: Vec<Warned>,
    /// The page of the round, without the address of the program: begins with `/`.
    pub path: String,
}

/// The sheet of a round as of today; `None`: no such round.
pub fn sheet(speaker: &Speaker, office: &Office, round: EntryId) -> Option<CrewSheet> {
    let state = office.state();
    let plan = &state.work.rounds.get(&round)?.plan;
    let clean = cleaning_points(office, &plan.stops);
    let mut sheet = CrewSheet {
        title: speaker.text("round-title", &[("crew", plan.crew.clone().into())]),
        when: when(speaker, plan.day, plan.leave, plan.back),
        notes: plan.notes.clone(),
        rows: Vec::new(),
        cards: Vec::new(),
        cautions: Vec::new(),
        path: format!("/round/{}", round.0),
    };
    for (n, (stop, clean)) in plan.stops.iter().zip(clean).enumerate() {
        if let Some(record) = state.palm(stop.palm) {
            sheet.add(speaker, office, plan.day, n + 1, stop, record, clean);
        }
    }
    Some(sheet)
}

impl CrewSheet {
    #[allow(clippy::too_many_arguments)]
    fn add(
        &mut self,
        speaker: &Speaker,
        office: &Office,
        day: Day,
        n: usize,
        stop: &RoundStop,
        record: &Arc<PalmRecord>,
        clean: bool,
    ) {
        let palm = &record.palm;
        let cut = stop.has("cut");
        let water = water(speaker, office, stop, record, day).map(|water| format!(" ({water})"));
        let before = self.cards.len();
        if cut {
            self.cards(speaker, office, n, record, clean);
        }
        self.rows.push(SheetRow {
            n,
            start: stop.start.map_or_else(String::new, hour),
            tag: palm.tag.clone(),
            species: palm.species.clone(),
            site: palm.site.clone(),
            tasks: tasks(speaker, &stop.tasks) + &water.unwrap_or_default(),
            clean,
            held: self.cards[before..]
                .iter()
                .any(|card| !card.holds.is_empty()),
        });
    }

    fn cards(
        &mut self,
        speaker: &Speaker,
        office: &Office,
        n: usize,
        record: &PalmRecord,
        clean: bool,
    ) {
        let Some(reading) = office.reading(record.id) else {
            return;
        };
        let judged = judging::in_brief(office, record, &reading);
        for at in StemToday::each(office, record, &reading, &judged) {
            let plan = care::cut_plan(&at.case());
            let view = cutting::view(speaker, &plan);
            // a stem on which nothing is done needs no card, one that is held does
            if view.any || !view.holds.is_empty() {
                let several = (reading.stems.len() > 1).then_some(plan.stem);
                self.cards
                    .push(card(speaker, n, record, several, &at, &plan, &view, clean));
            }
            self.warn(&record.palm.tag, view.cautions);
        }
    }

    fn warn(&mut self, tag: &str, cautions: Vec<Said>) {
        for said in cautions {
            let known = self
                .cautions
                .iter_mut()
                .find(|warned| warned.said.text == said.text);
            match known {
                Some(warned) if warned.tags.iter().any(|other| other == tag) => {}
                Some(warned) => warned.tags.push(tag.to_owned()),
                None => self.cautions.push(Warned {
                    said,
                    tags: vec![tag.to_owned()],
                }),
            }
        }
    }
}

#[allow(clippy::too_many_arguments)]
fn card(
    speaker: &Speaker,
    n: usize,
    record: &PalmRecord,
    stem: Option<u16>,
    at: &StemToday,
    plan: &CutPlan,
    view: &CuttingView,
    clean: bool,
) -> Card {
    let cut = if plan.holds.is_empty() {
        plan.may_take
    } else {
        Cut::NONE
    };
    let spear = at.looks().iter().rev().find_map(|look| look.spear);
    let look = Look::of(at.species(), record.palm.trunk_height, spear);
    let picture = at.reading().picture(cut, at.today());
    let drawing = draw(&look, &[&picture]);
    let palm = &record.palm;
    let title = speaker.text("crown-title", &[("tag", palm.tag.clone().into())]);
    let says = format!("{title}. {}", view.take);
    Card {
        n,
        tag: palm.tag.clone(),
        stem,
        species: palm.species.clone(),
        site: palm.site.clone(),
        svg: svg_with_cuts(
            &drawing,
            &drawing.crowns[0],
            &format!("n{n}s{}", stem.unwrap_or(1)),
            &says,
        ),
        says,
        take: view.take.clone(),
        stay: view.stay.clone(),
        how: view.how.clone(),
        holds: view.holds.clone(),
        clean,
    }
}
