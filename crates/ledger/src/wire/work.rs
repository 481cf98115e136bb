//! Twins of what the model says of sites, crews, prices, weather and rounds.

use model::{
    Closed, CrewWords, Day, EntryId, Hours, NoFeeding, PalmId, Position, Prices, RoundNote,
    RoundPlan, RoundStep, RoundStop, Site, WeatherDay,
};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use uuid::Uuid;

/// First day, last day, why.
type ClosedV1 = (String, String, String);
/// Seconds after midnight: from, to.
type HoursV1 = (u32, u32);

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct NoFeedingV1 {
    /// Month and day.
    from: (u8, u8),
    to: (u8, u8),
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    nutrients: Vec<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    rule: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct SiteV1 {
    name: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    owner: String,
    /// Latitude and longitude, degrees.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    gate: Option<(f64, f64)>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    hours: Vec<HoursV1>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    closed: Vec<ClosedV1>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    soil: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    coastal: Option<bool>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    weevil_area: Option<bool>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    line_kv: Option<f64>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    no_feeding: Vec<NoFeedingV1>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tidy: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    limit: Option<u32>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl SiteV1 {
    pub fn of(site: &Site) -> SiteV1 {
        let site = site.clone();
        let closed = |c: Closed| (c.first.to_string(), c.last.to_string(), c.why);
        let barred = |rule: NoFeeding| NoFeedingV1 {
            from: rule.from,
            to: rule.to,
            nutrients: rule.nutrients,
            rule: rule.rule,
        };
        SiteV1 {
            name: site.name,
            owner: site.owner,
            gate: site.gate.map(pair),
            hours: site.hours.into_iter().map(|h| (h.from, h.to)).collect(),
            closed: site.closed.into_iter().map(closed).collect(),
            soil: site.soil,
            coastal: site.coastal,
            weevil_area: site.weevil_area,
            line_kv: site.line_kv,
            no_feeding: site.no_feeding.into_iter().map(barred).collect(),
            tidy: site.tidy,
            limit: site.limit,
            notes: site.notes,
            extra: site.extra,
        }
    }

    pub fn site(self) -> Option<Site> {
        let closed = |(first, last, why): ClosedV1| {
            let (first, last) = (Day::parse(&first)?, Day::parse(&last)?);
            Some(Closed { first, last, why })
        };
        let barred = |rule: NoFeedingV1| NoFeeding {
            from: rule.from,
            to: rule.to,
            nutrients: rule.nutrients,
            rule: rule.rule,
        };
        Some(Site {
            name: self.name,
            owner: self.owner,
            gate: self.gate.map(position),
            hours: self.hours.into_iter().map(hours).collect(),
            closed: self.closed.into_iter().map(closed).collect::<Option<_>>()?,
            soil: self.soil,
            coastal: self.coastal,
            weevil_area: self.weevil_area,
            line_kv: self.line_kv,
            no_feeding: self.no_feeding.into_iter().map(barred).collect(),
            tidy: self.tidy,
            limit: self.limit,
            notes: self.notes,
            extra: self.extra,
        })
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CrewV1 {
    name: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    people: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    from: Option<(f64, f64)>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    to: Option<(f64, f64)>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    hours: Option<HoursV1>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    skills: Vec<String>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    kit: Vec<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    room_m3: Option<f64>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    gone: bool,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl CrewV1 {
    pub fn of(crew: &CrewWords) -> CrewV1 {
        let crew = crew.clone();
        CrewV1 {
            name: crew.name,
            people: crew.people,
            from: crew.from.map(pair),
            to: crew.to.map(pair),
            hours: crew.hours.map(|h| (h.from, h.to)),
            skills: crew.skills,
            kit: crew.kit,
            room_m3: crew.room_m3,
            gone: crew.gone,
            notes: crew.notes,
            extra: crew.extra,
        }
    }

    pub fn crew(self) -> CrewWords {
        CrewWords {
            name: self.name,
            people: self.people,
            from: self.from.map(position),
            to: self.to.map(position),
            hours: self.hours.map(hours),
            skills: self.skills,
            kit: self.kit,
            room_m3: self.room_m3,
            gone: self.gone,
            notes: self.notes,
            extra: self.extra,
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PricesV1 {
    currency: String,
    digits: u8,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    prices: BTreeMap<String, i64>,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    figures: BTreeMap<String, f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tax_pct: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
}

impl PricesV1 {
    pub fn of(prices: &Prices) -> PricesV1 {
        let own = prices.clone();
        PricesV1 {
            currency: own.currency,
            digits: own.digits,
            prices: own.prices,
            figures: own.figures,
            tax_pct: own.tax_pct,
            notes: own.notes,
        }
    }

    pub fn prices(self) -> Prices {
        Prices {
            currency: self.currency,
            digits: self.digits,
            prices: self.prices,
            figures: self.figures,
            tax_pct: self.tax_pct,
            notes: self.notes,
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct WeatherV1 {
    #[serde(default, skip_serializing_if = "String::is_empty")]
    site: String,
    day: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    t_min_c: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    t_max_c: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    humidity_pct: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    wind_m_s: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    radiation_mj_m2: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    sunshine_h: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    rain_mm: Option<f64>,
}

impl WeatherV1 {
    pub fn of(day: &WeatherDay) -> WeatherV1 {
        WeatherV1 {
            site: day.site.clone(),
            day: day.day.to_string(),
            t_min_c: day.t_min,
            t_max_c: day.t_max,
            humidity_pct: day.humidity,
            wind_m_s: day.wind,
            radiation_mj_m2: day.radiation,
            sunshine_h: day.sunshine,
            rain_mm: day.rain,
        }
    }

    pub fn weather(self) -> Option<WeatherDay> {
        Some(WeatherDay {
            day: Day::parse(&self.day)?,
            site: self.site,
            t_min: self.t_min_c,
            t_max: self.t_max_c,
            humidity: self.humidity_pct,
            wind: self.wind_m_s,
            radiation: self.radiation_mj_m2,
            sunshine: self.sunshine_h,
            rain: self.rain_mm,
        })
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct StopV1 {
    palm: Uuid,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    start: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    minutes: Option<f64>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    tasks: Vec<String>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RoundPlannedV1 {
    day: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    crew: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    leave: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    back: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    metres: Option<f64>,
    stops: Vec<StopV1>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
}

impl RoundPlannedV1 {
    pub fn of(plan: &RoundPlan) -> RoundPlannedV1 {
        let stop = |stop: &RoundStop| StopV1 {
            palm: stop.palm.0,
            start: stop.start,
            minutes: stop.minutes,
            tasks: stop.tasks.clone(),
        };
        RoundPlannedV1 {
            day: plan.day.to_string(),
            crew: plan.crew.clone(),
            leave: plan.leave,
            back: plan.back,
            metres: plan.metres,
            stops: plan.stops.iter().map(stop).collect(),
            notes: plan.notes.clone(),
        }
    }

    pub fn plan(self) -> Option<RoundPlan> {
        let stop = |stop: StopV1| RoundStop {
            palm: PalmId(stop.palm),
            start: stop.start,
            minutes: stop.minutes,
            tasks: stop.tasks,
        };
        Some(RoundPlan {
            day: Day::parse(&self.day)?,
            crew: self.crew,
            leave: self.leave,
            back: self.back,
            metres: self.metres,
            stops: self.stops.into_iter().map(stop).collect(),
            notes: self.notes,
        })
    }
}

/// One of `started`, `done`, `skipped`, `finished`; the palm with the two in the middle.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RoundNotedV1 {
    round: Uuid,
    step: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    palm: Option<Uuid>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    minutes: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    words: String,
}

impl RoundNotedV1 {
    pub fn of(note: &RoundNote) -> RoundNotedV1 {
        let (step, minutes, words) = match &note.step {
            RoundStep::Started => ("started", None, ""),
            RoundStep::Done { minutes, note, .. } => ("done", *minutes, note.as_str()),
            RoundStep::Skipped { why, .. } => ("skipped", None, why.as_str()),
            RoundStep::Finished => ("finished", None, ""),
        };
        RoundNotedV1 {
            round: note.round.0,
            step: step.to_owned(),
            palm: note.palm().map(|palm| palm.0),
            minutes,
            words: words.to_owned(),
        }
    }

    pub fn note(self) -> Option<RoundNote> {
        let palm = self.palm.map(PalmId);
        // what has no place in the model is not read by halves
        let bare = self.minutes.is_none() && self.words.is_empty();
        let step = match (self.step.as_str(), palm) {
            ("started", None) if bare => RoundStep::Started,
            ("finished", None) if bare => RoundStep::Finished,
            ("done", Some(palm)) => RoundStep::Done {
                palm,
                minutes: self.minutes,
                note: self.words,
            },
            ("skipped", Some(palm)) if self.minutes.is_none() => RoundStep::Skipped {
                palm,
                why: self.words,
            },
            _ => return None,
        };
        let round = EntryId(self.round);
        Some(RoundNote { round, step })
    }
}

fn pair(at: Position) -> (f64, f64) {
    (at.lat, at.lon)
}

fn position((lat, lon): (f64, f64)) -> Position {
    Position { lat, lon }
}

fn hours((from, to): HoursV1) -> Hours {
    Hours { from, to }
}
