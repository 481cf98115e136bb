//! Rows to notes for the ledger, checked against the register.

use super::inspections::InspectionRow;
use super::moves::MoveRow;
use super::refusal::Fault;
use crate::office::Note;
use model::{Body, CrewWords, Moment, Palm, PalmId, Site, State, Tending, WeatherDay};
use std::collections::BTreeSet;
use std::sync::Arc;

/// What becomes of a good row.
pub enum Fate {
    /// It is to be recorded.
    New(Box<Note>),
    /// The register says the same already; nothing to do.
    Already,
}

/// Makes notes of rows. Reading the same file twice records once: a row that says what the register says is passed over,
/// one that contradicts it is refused.
pub struct Importing {
    state: Arc<State>,
    palms: Vec<PalmId>,
    sites: BTreeSet<String>,
    now: Moment,
    by: String,
}

/// Noon UTC: the day of an inspection stays the same day in nearly every time zone.
const NOON: i64 = 12 * 3_600_000;

impl Importing {
    /// An import into a register by somebody.
    pub fn new(state: Arc<State>, now: Moment, by: &str) -> Importing {
        let palms = state.tags().values().copied().collect();
        let stand = state.standing().map(|record| record.palm.site.clone());
        let sites = stand.chain(state.work.sites.keys().cloned()).collect();
        Importing {
            state,
            palms,
            sites,
            now,
            by: by.to_owned(),
        }
    }

    /// The register's palms, in the order in which [`InspectionRow::palm`] counts them.
    pub fn known(&self) -> super::Known {
        super::Known::of(
            self.palms
                .iter()
                .filter_map(|id| self.state.palm(*id))
                .map(|r| &r.palm),
        )
    }

    /// A palm to be registered.
    pub fn palm(&self, palm: Palm) -> Result<Fate, Fault> {
        match self.state.by_tag(&palm.tag) {
            None => Ok(self.note(self.now, Body::PalmRegistered(palm))),
            Some(record) if record.palm == palm => Ok(Fate::Already),
            Some(_) => Err(Fault::cell("intake-tag-registered", "tag", &palm.tag)),
        }
    }

    /// An inspection to be recorded, at noon of its day.
    pub fn inspection(&self, row: InspectionRow) -> Result<Fate, Fault> {
        let InspectionRow {
            palm,
            inspection,
            tag,
        } = row;
        let known = self
            .palms
            .get(palm as usize)
            .and_then(|id| self.state.palm(*id));
        let Some(record) = known else {
            return Err(Fault::cell("intake-unknown-palm", "tag", &tag));
        };
        let same_day = record
            .inspections
            .iter()
            .find(|i| i.stem == inspection.stem && i.date == inspection.date);
        match same_day {
            Some(before) if *before == inspection => Ok(Fate::Already),
            Some(before) => Err(Fault::cell(
                "intake-day-registered",
                "date",
                &before.date.to_string(),
            )),
            None => {
                let at = Moment(Moment::at_midnight(inspection.date).0 + NOON);
                Ok(self.note(
                    at,
                    Body::Inspected {
                        palm: record.id,
                        inspection,
                    },
                ))
            }
        }
    }

    /// A move to be recorded, at noon of the day of digging.
    pub fn moved(&self, row: MoveRow) -> Result<Fate, Fault> {
        let known = self.palms.get(row.palm as usize);
        let Some(record) = known.and_then(|id| self.state.palm(*id)) else {
            return Err(Fault::cell("intake-unknown-palm", "tag", &row.tag));
        };
        let same_day = record.tended.iter().find_map(|tended| match &tended.what {
            Tending::Moved(moved) if moved.dug_on == row.moved.dug_on => Some(moved),
            _ => None,
        });
        match same_day {
            Some(before) if *before == row.moved => Ok(Fate::Already),
            Some(before) => Err(Fault::cell(
                "moves-registered",
                "dug_on",
                &before.dug_on.to_string(),
            )),
            None => {
                let at = Moment(Moment::at_midnight(row.moved.dug_on).0 + NOON);
                let (palm, what) = (record.id, Tending::Moved(row.moved));
                Ok(self.note(at, Body::Tended { palm, what }))
            }
        }
    }

    /// A site to be described.
    pub fn site(&self, site: Site) -> Result<Fate, Fault> {
        match self.state.work.sites.get(&site.name) {
            None => Ok(self.note(self.now, Body::SiteDescribed(site))),
            Some(before) if *before == site => Ok(Fate::Already),
            Some(_) => Err(Fault::cell("sites-described", "site", &site.name)),
        }
    }

    /// A crew to be described.
    pub fn crew(&self, crew: CrewWords) -> Result<Fate, Fault> {
        match self.state.work.crews.get(&crew.name) {
            None => Ok(self.note(self.now, Body::CrewDescribed(crew))),
            Some(before) if *before == crew => Ok(Fate::Already),
            Some(_) => Err(Fault::cell("sites-crew-described", "crew", &crew.name)),
        }
    }

    /// Weather of a day. A day that is there already with other figures takes its place: stations mend theirs.
    pub fn weather(&self, day: WeatherDay) -> Result<Fate, Fault> {
        let site = &day.site;
        if !site.is_empty() && !self.sites.contains(site) {
            return Err(Fault::cell("weather-unknown-site", "site", site));
        }
        let days = self.state.work.weather.get(site);
        if days.and_then(|days| days.get(&day.day)) == Some(&day) {
            return Ok(Fate::Already);
        }
        Ok(self.note(self.now, Body::WeatherNoted(day)))
    }

    fn note(&self, at: Moment, body: Body) -> Fate {
        Fate::New(Box::new(Note {
            id: None,
            at,
            by: self.by.clone(),
            body,
            replaces: None,
        }))
    }
}
