//! Watering: what a palm needs in a day, what its roots can reach, how long it lasts, what to give and when.
//!
//! Pure. The engine is [`crate::water`] (FAO-56); the tables are `soils.csv`, `landscape_factors.csv` and
//! `water_figures.csv`. Every quantity is a stretch ([`Span`]) until the very end, because soil, ball and factor are
//! seldom known to the digit; what is not known at all widens it and is named in [`Plan::missing`].
//! `docs/watering.md` says how it is meant.

mod balance;
mod demand;
mod reference;
mod rhythm;
mod zone;

pub use balance::{Ahead, Due, Past};
pub use demand::{FactorUse, Use};
pub use reference::{How, Reference, StandIn};
pub use rhythm::{Rhythm, Step};
pub use zone::{Zone, ZoneKind};

use crate::Settled;
use model::{Climate, Day, Knowledge, Metres, Move, Palm, Span, Species, WeatherDay};
use std::collections::BTreeMap;

/// Days ahead that are planned.
pub const AHEAD_DAYS: i32 = 7;

/// One palm, and what is known of its ground and its weather.
#[derive(Clone, Copy)]
pub struct WaterCase<'a, 'k> {
    /// The palm.
    pub palm: &'a Palm,
    /// Its species row, if its name resolves.
    pub species: Option<&'a Species>,
    /// Its latest move, if one was noted.
    pub moved: Option<&'a Move>,
    /// Whether it has its roots back.
    pub settled: Settled,
    /// Live fronds as a share of its full crown; `None`: nobody has counted.
    pub crown_share: Option<Span>,
    /// Across its crown as measured; `None`: reckoned from the length of its fronds.
    pub crown_across: Option<Metres>,
    /// Soil of the site: a key of the soil table, or empty.
    pub site_soil: &'a str,
    /// Latitude in degrees, north positive.
    pub latitude: Option<f64>,
    /// Height above the sea, m.
    pub elevation_m: Option<f64>,
    /// Near the coast.
    pub coastal: Option<bool>,
    /// Weather of past days.
    pub weather: &'a BTreeMap<Day, WeatherDay>,
    /// Monthly means of the nearest known place.
    pub climate: Option<&'a Climate>,
    /// Waterings: day and litres, `None` where the amount was not noted; in the order of time.
    pub waterings: &'a [(Day, Option<f64>)],
    /// Today.
    pub today: Day,
    /// The tables.
    pub knowledge: &'k Knowledge,
}

/// Something that is not known; the plan is wider for it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Missing {
    /// Neither the ball's soil nor the site's.
    Soil,
    /// The ball's own soil: the site's is taken.
    SoilOfBall,
    /// The ball's radius or depth.
    Ball,
    /// Nobody knows how long its fronds are: litres a day cannot be told.
    Crown,
    /// Fronds were not counted.
    Counts,
    /// Where it stands: what the air takes could be anything.
    Place,
    /// So many of the last days have no weather; the climate's means stand in, or nothing does.
    Weather(i32),
    /// So many waterings have no amount.
    Amounts(i32),
}

/// The plan.
#[derive(Clone, PartialEq, Debug)]
pub struct Plan<'k> {
    /// What the air takes from short grass today.
    pub reference: Reference,
    /// What is said of the palm's share of it.
    pub factors: Vec<FactorUse<'k>>,
    /// The factors that are used.
    pub factor: Span,
    /// Ground under the crown, m²; `None`: not known.
    pub crown_m2: Option<Span>,
    /// Share of a full crown's need that the crown as it stands has.
    pub crown_draws: Span,
    /// What it needs today, litres; `None`: not known.
    pub need_l: Option<Span>,
    /// What it needs today, mm over the ground under its crown.
    pub need_mm: Span,
    /// Where its roots are and what they hold.
    pub zone: Zone,
    /// Days from a soaking until want sets in: at worst and at best.
    pub lasts_days: Option<Span>,
    /// How often and how much, to be on the safe side.
    pub rhythm: Option<Rhythm>,
    /// The same in the weeks to come, as roots grow.
    pub taper: Vec<Step>,
    /// Whether it is due.
    pub due: Due,
    /// The last days, oldest first.
    pub past: Vec<Past>,
    /// Today and the coming days.
    pub ahead: Vec<Ahead>,
    /// What is not known.
    pub missing: Vec<Missing>,
}

/// Plans the watering of a palm.
pub fn plan<'k>(case: &WaterCase<'_, 'k>) -> Plan<'k> {
    let day = case.today;
    let reference = reference::on(case, day);
    let factors = demand::factors(case);
    let factor = demand::used(&factors);
    let crown_m2 = demand::crown_area(case);
    let crown_draws = demand::crown_draws(case);
    let need = Need {
        factor,
        crown_m2,
        crown_draws,
    };
    let zone = zone::on(case, day, need.mm(reference.mm));
    let rhythm = rhythm::of(case, &zone, need.litres(reference.mm));
    let (past, due) = balance::past(case, &need, &zone, rhythm);
    Plan {
        lasts_days: rhythm::lasts(&zone, need.litres(reference.mm)),
        taper: rhythm::taper(case, &need),
        ahead: balance::ahead(case, &need, &zone, rhythm, &due),
        missing: missing(case, crown_m2),
        need_l: need.litres(reference.mm),
        need_mm: need.mm(reference.mm),
        reference,
        factors,
        factor,
        crown_m2,
        crown_draws,
        zone,
        rhythm,
        due,
        past,
    }
}

/// From what the air takes to what the palm needs.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(crate) struct Need {
    factor: Span,
    crown_m2: Option<Span>,
    crown_draws: Span,
}

impl Need {
    /// Over the ground under the crown.
    fn mm(&self, reference: Span) -> Span {
        reference.times(self.factor).times(self.crown_draws)
    }

    /// A millimetre on a square metre is a litre.
    fn litres(&self, reference: Span) -> Option<Span> {
        Some(self.mm(reference).times(self.crown_m2?))
    }
}

/// A figure of the tables; the check of the tables and a test hold that those asked for are there.
pub(crate) fn figure(knowledge: &Knowledge, key: &str) -> Span {
    let found = knowledge.water_figure(key).map(|figure| figure.value);
    debug_assert!(found.is_some(), "no figure {key}");
    found.unwrap_or(Span::of(0.0))
}

fn missing(case: &WaterCase, crown: Option<Span>) -> Vec<Missing> {
    let back = figure(case.knowledge, "look-back").high as i32;
    let since = case.today.plus(-back);
    let no_amount = case
        .waterings
        .iter()
        .filter(|(day, litres)| *day >= since && *day <= case.today && litres.is_none())
        .count();
    let no_weather = reference::days_without_weather(case);
    let (soil, ball) = (zone::soils(case), zone::ball_unknown(case));
    [
        soil.is_unknown().then_some(Missing::Soil),
        soil.site_for_ball.then_some(Missing::SoilOfBall),
        ball.then_some(Missing::Ball),
        crown.is_none().then_some(Missing::Crown),
        case.crown_share.is_none().then_some(Missing::Counts),
        case.latitude.is_none().then_some(Missing::Place),
        (no_weather > 0).then_some(Missing::Weather(no_weather)),
        (no_amount > 0).then_some(Missing::Amounts(no_amount as i32)),
    ]
    .into_iter()
    .flatten()
    .collect()
}
