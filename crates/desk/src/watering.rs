//! Watering: which palms want water, and the plan of one.
//!
//! `care::watering` reckons; here is what it is told: the palm's last move, its crown as the reading has it, the soil and
//! the coast of its site, the weather that was brought in, else the monthly means of the nearest known place.

use crate::moved::{RECENT_DAYS, last_move};
use crate::office::{Office, place_nearby};
use care::watering::{Due, Plan, WaterCase, plan};
use care::{Settled, progress};
use crown::{Cut, PalmReading};
use model::knowledge::Place;
use model::{
    Day, Knowledge, Metres, Palm, PalmRecord, Position, Site, Span, State as Register, Tending,
    WeatherDay,
};
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::sync::Arc;

/// So many palms are reckoned at once; of more, those moved or watered last.
pub const MOST: usize = 300;
/// "This week": so many days from today on, today not counted.
pub const WEEK_DAYS: i32 = 6;
/// No crown is wider, m.
pub(crate) const WIDEST_CROWN: Metres = Metres(40.0);
/// The column of `palms.csv` that holds how far it is across the crown, m.
pub const CROWN_ACROSS: &str = "crown_across_m";

/// A watering that was noted.
#[derive(Clone, PartialEq, Debug)]
pub struct Given {
    /// The entry that says so now.
    pub entry: String,
    /// The day.
    pub day: Day,
    /// Litres, if noted.
    pub litres: Option<f64>,
    /// Free words.
    pub notes: String,
}

/// A palm and its plan of watering.
#[derive(Clone, Debug)]
pub struct Watered {
    /// The palm.
    pub record: Arc<PalmRecord>,
    /// The plan.
    pub plan: Plan<'static>,
    /// Whether it has its roots back.
    pub settled: Settled,
    /// Waterings, newest first.
    pub given: Vec<Given>,
    /// The place whose monthly means stand in where there is no weather.
    pub place: Option<&'static Place>,
    /// Today.
    pub today: Day,
}

/// How a palm stands with water, the most pressing first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum State {
    /// Want may set in today, or has.
    Due,
    /// Due as far as anybody knows: no watering was noted.
    NothingNoted,
    /// Due this week.
    Soon,
    /// Due later.
    Later,
    /// Its need in litres cannot be told.
    Unknown,
}

impl State {
    /// All, in their order.
    pub const ALL: [State; 5] = [
        State::Due,
        State::NothingNoted,
        State::Soon,
        State::Later,
        State::Unknown,
    ];

    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            State::Due => "due",
            State::NothingNoted => "nothing-noted",
            State::Soon => "soon",
            State::Later => "later",
            State::Unknown => "unknown",
        }
    }

    /// Whether somebody has to go there today.
    pub fn is_today(self) -> bool {
        matches!(self, State::Due | State::NothingNoted)
    }
}

impl Watered {
    /// How it stands.
    pub fn state(&self) -> State {
        match self.plan.due {
            Due::Since { .. } => State::Due,
            Due::NothingNoted => State::NothingNoted,
            Due::Unknown => State::Unknown,
            Due::Next(Some(day)) if day.since(self.today) <= WEEK_DAYS => State::Soon,
            Due::Next(_) => State::Later,
        }
    }

    /// The day on which it is due next; today where it is due already.
    pub fn next(&self) -> Option<Day> {
        match self.plan.due {
            Due::Since { .. } | Due::NothingNoted => Some(self.today),
            Due::Next(day) => day,
            Due::Unknown => None,
        }
    }

    /// Waterings and litres in all that are to be given today.
    pub fn today_give(&self) -> Option<(i32, f64)> {
        self.plan.ahead.first().and_then(|day| day.give)
    }

    /// The last watering.
    pub fn last(&self) -> Option<&Given> {
        self.given.first()
    }
}

/// All palms that are followed, the most pressing first; and how many more there are than are reckoned at once.
///
/// Followed are palms moved lately that are not yet established, and palms for which a watering was noted in the days
/// looked back on. Of any other palm nobody has said that it is watered at all.
pub fn all(office: &Office) -> (Vec<Watered>, usize) {
    let (register, today) = (office.state(), office.today());
    let back = look_back();
    let mut records: Vec<(Day, Arc<PalmRecord>)> = register
        .standing()
        .filter_map(|record| Some((followed_since(record, today, back)?, record.clone())))
        .collect();
    records.sort_by_key(|(day, r)| (core::cmp::Reverse(*day), r.palm.tag.clone()));
    let more = records.len().saturating_sub(MOST);
    records.truncate(MOST);
    let mut watered: Vec<Watered> = records
        .par_iter()
        .filter_map(|(_, record)| of(office, record))
        .filter(|w| {
            let lately = w.last().is_some_and(|own| today.since(own.day) <= back);
            lately || matches!(w.settled, Settled::NotYet { .. })
        })
        .collect();
    watered.sort_by_key(|w| {
        let next = w.next().unwrap_or(today.plus(10_000));
        let palm = &w.record.palm;
        (w.state(), next, palm.site.clone(), palm.tag.clone())
    });
    (watered, more)
}

/// The last day of something for which a palm is followed.
fn followed_since(record: &PalmRecord, today: Day, back: i32) -> Option<Day> {
    let moved = record.palm.moved_on;
    let moved = moved.filter(|day| (0..=RECENT_DAYS).contains(&today.since(*day)));
    let watered = record
        .tended
        .iter()
        .filter(|t| matches!(t.what, Tending::Watered(_)));
    let watered = watered
        .map(|t| t.at.day())
        .filter(|day| (0..=back).contains(&today.since(*day)));
    watered.chain(moved).max()
}

/// The plan of one palm, followed or not; `None` if it is not in the register.
pub fn of(office: &Office, record: &Arc<PalmRecord>) -> Option<Watered> {
    let reading = office.reading(record.id)?;
    Some(from(office, record, &reading))
}

/// The plan of one palm by its reading.
pub(crate) fn from(office: &Office, record: &Arc<PalmRecord>, reading: &PalmReading) -> Watered {
    let (register, today) = (office.state(), office.today());
    let knowledge = Knowledge::embedded();
    let palm = &record.palm;
    let site = register.work.sites.get(&palm.site);
    let place = position(record, site).and_then(place_nearby);
    let settled = settled(reading, record, today);
    let given = given(record, today);
    let mut waterings: Vec<(Day, Option<f64>)> = given.iter().map(|g| (g.day, g.litres)).collect();
    waterings.reverse();
    let weather = weather(&register, &palm.site, today);
    let case = WaterCase {
        palm,
        species: office.species(palm),
        moved: last_move(record),
        settled,
        crown_share: crown_share(record, reading, today),
        crown_across: crown_across(palm),
        site_soil: site.map_or("", |site| site.soil.as_str()),
        latitude: position(record, site).map(|p| p.lat),
        elevation_m: place.and_then(|place| place.elevation_m),
        coastal: site.and_then(|site| site.coastal),
        weather: &weather,
        climate: place.map(|place| &place.climate),
        waterings: &waterings,
        today,
        knowledge,
    };
    Watered {
        plan: plan(&case),
        record: record.clone(),
        settled,
        given,
        place,
        today,
    }
}

/// Where a palm stands: its own position, else the gate of its site.
fn position(record: &PalmRecord, site: Option<&Site>) -> Option<Position> {
    record.palm.position.or_else(|| site?.gate)
}

/// Whether all stems have their roots back.
pub(crate) fn settled(reading: &PalmReading, record: &PalmRecord, today: Day) -> Settled {
    let stems = reading
        .stems
        .iter()
        .filter_map(|(_, own)| progress(own, &record.palm, today));
    let all: Vec<Settled> = stems.map(|p| p.settled).collect();
    let not_yet = all.iter().find(|s| matches!(s, Settled::NotYet { .. }));
    not_yet
        .or(all.first())
        .copied()
        .unwrap_or(Settled::NeverMoved)
}

/// Live fronds of all stems as a share of their full crowns, by the crown's model; `None` until somebody has counted.
fn crown_share(record: &PalmRecord, reading: &PalmReading, today: Day) -> Option<Span> {
    record.inspections.iter().find(|look| look.date <= today)?;
    let (mut low, mut high, mut full) = (0.0, 0.0, 0.0);
    for (_, stem) in &reading.stems {
        let live = stem.forecast(Cut::NONE, today).live;
        low += live.q05;
        high += live.q95;
        full += stem.full_crown.q50;
    }
    (full > 0.0).then(|| Span::between(low / full, high / full).clamp(0.0, 1.0))
}

/// Across the crown, as a column of the keeper's own says.
pub(crate) fn crown_across(palm: &Palm) -> Option<Metres> {
    let text = palm.extra.get(CROWN_ACROSS)?;
    let metres: f64 = text.trim().parse().ok()?;
    (metres > 0.0 && metres <= WIDEST_CROWN.0).then_some(Metres(metres))
}

/// Waterings until today, newest first.
fn given(record: &PalmRecord, today: Day) -> Vec<Given> {
    let all = record.tended.iter().rev();
    all.filter_map(|tended| match &tended.what {
        Tending::Watered(water) => Some(Given {
            entry: tended.entry.0.to_string(),
            day: tended.at.day(),
            litres: water.litres,
            notes: water.notes.clone(),
        }),
        _ => None,
    })
    .filter(|given| given.day <= today)
    .collect()
}

/// Weather of the days looked back on, the site's own before that of all sites.
fn weather(register: &Register, site: &str, today: Day) -> BTreeMap<Day, WeatherDay> {
    (0..=look_back())
        .map(|ago| today.plus(-ago))
        .filter_map(|day| Some((day, register.work.weather(site, day)?.clone())))
        .collect()
}

/// Days that are looked back on.
pub fn look_back() -> i32 {
    let figure = Knowledge::embedded().water_figure("look-back");
    figure.map_or(0, |figure| figure.value.high as i32)
}
