//! What of a trace is drawn: chains on lanes, palms on a plan.

use super::lanes::{self, Event, Lanes, Leap, What};
use super::plot::{self, Plot, Stand};
use crate::office::Office;
use crate::tracing::{Exposure, Step, TraceAnswer};
use crate::views::blades;
use crate::views::blades::log::adequacy_key;
use crate::views::said::Speaker;
use model::state::{BladeRecord, Touch};
use model::{BladeId, Moment};
use std::collections::BTreeMap;

/// Blades in the drawing by number; the same tag twice is two lanes only where the register knows two blades.
#[derive(Default)]
struct Picture {
    lanes: Vec<(String, Option<BladeId>)>,
    cuts: BTreeMap<(usize, Moment), (String, &'static str)>,
    leaps: Vec<Leap>,
}

/// Chains on the lanes of the blades they run along; nothing without a chain.
pub fn lanes(speaker: &Speaker, office: &Office, answer: &TraceAnswer) -> Option<Lanes> {
    let mut picture = Picture::default();
    let cases: Vec<&str> = answer.cases.iter().map(|c| c.palm.tag.as_str()).collect();
    for one in &answer.exposed {
        picture.add(
            one,
            &cases,
            if one.certain { "certain" } else { "possible" },
        );
    }
    for one in &answer.sources {
        picture.add(one, &cases, "source");
    }
    if picture.lanes.is_empty() {
        return None;
    }
    let state = office.state();
    let mut events: Vec<Event> = Vec::new();
    for ((lane, at), (tag, key)) in &picture.cuts {
        let (lane, at, tag, key) = (*lane, *at, tag.clone(), *key);
        events.push(Event {
            lane,
            at,
            what: What::Cut { tag, key },
        });
    }
    let mut names = Vec::new();
    for (number, (tag, id)) in picture.lanes.iter().enumerate() {
        let record = id.and_then(|id| state.blade(id));
        names.push((
            tag.clone(),
            record.map_or_else(String::new, |r| blades::kind(speaker, r)),
        ));
        if let Some(record) = record {
            events.extend(picture.cleanings(speaker, office, number, record));
        }
    }
    Some(lanes::lay(speaker, &names, &events, &picture.leaps))
}

impl Picture {
    fn add(&mut self, one: &Exposure, cases: &[&str], key: &'static str) {
        let mut last: Option<(usize, Moment)> = None;
        for step in &one.way.chain {
            let lane = self.lane(step);
            for (at, tag) in [(step.left, &step.from), (step.reached, &step.to)] {
                let own = if cases.contains(&tag.as_str()) {
                    "case"
                } else {
                    key
                };
                let cut = self
                    .cuts
                    .entry((lane, at))
                    .or_insert_with(|| (tag.clone(), own));
                // a palm in the certain set stays certain, whichever chain runs over it
                if own == "case" || own == "certain" && cut.1 != "case" {
                    cut.1 = own;
                }
            }
            let (from, to) = ((lane, step.left), (lane, step.reached));
            if let Some(before) = last.filter(|before| *before != from) {
                self.leap(before, from, one.certain);
            }
            self.leap(from, to, one.certain);
            last = Some(to);
        }
    }

    fn lane(&mut self, step: &Step) -> usize {
        let key = (step.blade.clone(), step.blade_id);
        self.lanes
            .iter()
            .position(|lane| *lane == key)
            .unwrap_or_else(|| {
                self.lanes.push(key);
                self.lanes.len() - 1
            })
    }

    /// Several chains share their beginnings: each line is drawn once, solid if any of them is certain.
    fn leap(&mut self, from: (usize, Moment), to: (usize, Moment), certain: bool) {
        match self
            .leaps
            .iter_mut()
            .find(|leap| leap.from == from && leap.to == to)
        {
            Some(leap) => leap.certain |= certain,
            None => self.leaps.push(Leap { from, to, certain }),
        }
    }

    /// The cleanings of a blade while chains ran along it, and the first one after: it may have ended them.
    fn cleanings(
        &self,
        speaker: &Speaker,
        office: &Office,
        lane: usize,
        record: &BladeRecord,
    ) -> Vec<Event> {
        let mut times = self
            .cuts
            .keys()
            .filter(|(l, _)| *l == lane)
            .map(|(_, at)| *at);
        let first = times.next().unwrap_or(Moment(i64::MAX));
        let last = times.next_back().unwrap_or(first);
        let mut out = Vec::new();
        for touch in record.touches.iter().filter(|touch| touch.at > first) {
            let Touch::Cleaned(cleaning) = &touch.what else {
                continue;
            };
            let key = adequacy_key(blades::adequacy(office, cleaning, touch.at));
            let word = speaker.say(&format!("trace-mark-{key}"));
            let at = touch.at;
            out.push(Event {
                lane,
                at,
                what: What::Clean { key, word },
            });
            if touch.at > last {
                break;
            }
        }
        out
    }
}

/// Where the palms stand, as far as their positions are known: on the grounds of the case, because palms on grounds
/// miles away would shrink these to a dot.
pub fn plot(speaker: &Speaker, answer: &TraceAnswer) -> Option<Plot> {
    let mut stands: BTreeMap<String, Stand> = BTreeMap::new();
    let same = |site: &str| answer.cases.iter().any(|case| case.palm.site == site);
    let mut put = |palm: &crate::tracing::Stand, key: &'static str| {
        if let Some(position) = palm.position.filter(|_| same(&palm.site)) {
            let stand = Stand {
                tag: palm.tag.clone(),
                position,
                key,
            };
            stands.entry(palm.tag.clone()).or_insert(stand);
        }
    };
    answer.cases.iter().for_each(|case| put(&case.palm, "case"));
    for one in &answer.exposed {
        put(&one.palm, if one.certain { "certain" } else { "possible" });
    }
    answer
        .sources
        .iter()
        .for_each(|one| put(&one.palm, "source"));
    answer.nearby.iter().for_each(|one| put(&one.palm, "near"));
    let stands: Vec<Stand> = stands.into_values().collect();
    plot::lay(speaker, &stands)
}
