//! Sites, crews, prices, weather and rounds.

use crate::day::Day;
use crate::entry::EntryId;
use crate::palm::PalmId;
use crate::units::Position;
use std::collections::BTreeMap;

/// A stretch of the day in seconds after local midnight, both ends included.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Hours {
    /// From.
    pub from: u32,
    /// To, not before `from`; at most 86,400.
    pub to: u32,
}

/// Days on which a site is closed, both ends included.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Closed {
    /// First day.
    pub first: Day,
    /// Last day.
    pub last: Day,
    /// Why, in the owner's words.
    pub why: String,
}

/// A part of every year in which a local rule bars feeding.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct NoFeeding {
    /// First day, month and day of the month.
    pub from: (u8, u8),
    /// Last day; before `from` it runs over the turn of the year.
    pub to: (u8, u8),
    /// What is barred: `N`, `P`, both, or all when empty.
    pub nutrients: Vec<String>,
    /// Whose rule it is.
    pub rule: String,
}

/// The grounds of a site and how it may be worked. The entry written for the latest moment holds, whole. `None` is unknown.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Site {
    /// Its name, as palms write it.
    pub name: String,
    /// Whose it is.
    pub owner: String,
    /// Its gate: where a crew comes in.
    pub gate: Option<Position>,
    /// Hours in which work may be done; empty: any.
    pub hours: Vec<Hours>,
    /// Days on which nobody may come.
    pub closed: Vec<Closed>,
    /// Soil: a key of the soil table, or empty.
    pub soil: String,
    /// Near the coast (for the sun from temperatures).
    pub coastal: Option<bool>,
    /// Palm weevils fly here.
    pub weevil_area: Option<bool>,
    /// Voltage to ground of the line nearby in kV, told by the utility.
    pub line_kv: Option<f64>,
    /// Local rules against feeding.
    pub no_feeding: Vec<NoFeeding>,
    /// So many dead fronds on a palm are worth a visit; `None`: the keeper's usual figure.
    pub tidy: Option<u32>,
    /// More dead fronds than this shall not hang on a palm; `None`: the keeper's usual figure.
    pub limit: Option<u32>,
    /// Free words: gate code, dog, where to park.
    pub notes: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}

/// A crew with its vehicle.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct CrewWords {
    /// Its name.
    pub name: String,
    /// How many people.
    pub people: Option<u32>,
    /// Where it starts.
    pub from: Option<Position>,
    /// Where it ends; `None`: where it starts.
    pub to: Option<Position>,
    /// Its hours; `None`: the keeper's usual ones.
    pub hours: Option<Hours>,
    /// What it is trained or licensed for, stable words.
    pub skills: Vec<String>,
    /// What it carries: keys of the tool table.
    pub kit: Vec<String>,
    /// Room for debris, cubic metres loose.
    pub room_m3: Option<f64>,
    /// No longer works.
    pub gone: bool,
    /// Free words.
    pub notes: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}

/// The keeper's price list and own figures; the entry for the latest moment holds, whole.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Prices {
    /// ISO 4217 code.
    pub currency: String,
    /// Digits after the point of that currency.
    pub digits: u8,
    /// Prices by key, in the smallest unit of the currency.
    pub prices: BTreeMap<String, i64>,
    /// The keeper's own figures in place of assumed ones, by key of the effort table.
    pub figures: BTreeMap<String, f64>,
    /// Tax, per cent.
    pub tax_pct: Option<f64>,
    /// Free words for quotes.
    pub notes: String,
}

/// Weather of one day at a site. `None` is not measured.
#[derive(Clone, PartialEq, Debug)]
pub struct WeatherDay {
    /// Site; empty: every site without its own.
    pub site: String,
    /// Day.
    pub day: Day,
    /// Lowest air temperature, °C.
    pub t_min: Option<f64>,
    /// Highest air temperature, °C.
    pub t_max: Option<f64>,
    /// Mean relative humidity, per cent.
    pub humidity: Option<f64>,
    /// Wind at 2 m, m/s.
    pub wind: Option<f64>,
    /// Global radiation, MJ/m² and day.
    pub radiation: Option<f64>,
    /// Hours of bright sunshine.
    pub sunshine: Option<f64>,
    /// Rain, mm.
    pub rain: Option<f64>,
}

impl WeatherDay {
    /// A day of which nothing is measured; an empty site: every site without its own.
    pub fn blank(site: &str, day: Day) -> WeatherDay {
        WeatherDay {
            site: site.to_owned(),
            day,
            t_min: None,
            t_max: None,
            humidity: None,
            wind: None,
            radiation: None,
            sunshine: None,
            rain: None,
        }
    }
}

/// One palm of a round.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundStop {
    /// Which palm.
    pub palm: PalmId,
    /// Planned start, seconds after local midnight.
    pub start: Option<u32>,
    /// Planned minutes.
    pub minutes: Option<f64>,
    /// What is to be done there that day: stable words, e.g. `cut`, `look`, `water`.
    pub tasks: Vec<String>,
}

impl RoundStop {
    /// Whether a task is to be done there.
    pub fn has(&self, task: &str) -> bool {
        self.tasks.iter().any(|own| own == task)
    }
}

/// A round: one crew, one day, palms in order. Planning it anew replaces the entry; the round keeps its name.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundPlan {
    /// The day.
    pub day: Day,
    /// The crew's name.
    pub crew: String,
    /// Departure, seconds after local midnight.
    pub leave: Option<u32>,
    /// Return, seconds after local midnight.
    pub back: Option<u32>,
    /// Metres to drive.
    pub metres: Option<f64>,
    /// Palms in order.
    pub stops: Vec<RoundStop>,
    /// Free words to the crew.
    pub notes: String,
}

impl RoundPlan {
    /// An empty round of nobody.
    pub fn on(day: Day) -> RoundPlan {
        RoundPlan {
            day,
            crew: String::new(),
            leave: None,
            back: None,
            metres: None,
            stops: Vec::new(),
            notes: String::new(),
        }
    }
}

/// What happened on a round.
#[derive(Clone, PartialEq, Debug)]
pub enum RoundStep {
    /// The crew set out.
    Started,
    /// A palm was done.
    Done {
        /// Which.
        palm: PalmId,
        /// Minutes it took.
        minutes: Option<f64>,
        /// Free words.
        note: String,
    },
    /// A palm was left out.
    Skipped {
        /// Which.
        palm: PalmId,
        /// Why: a stable word or free words.
        why: String,
    },
    /// The crew is back.
    Finished,
}

/// What happened on which round.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundNote {
    /// The round: the entry that planned it.
    pub round: EntryId,
    /// What happened.
    pub step: RoundStep,
}

impl RoundNote {
    /// The palm it speaks of, if it speaks of one.
    pub fn palm(&self) -> Option<PalmId> {
        match &self.step {
            RoundStep::Done { palm, .. } | RoundStep::Skipped { palm, .. } => Some(*palm),
            RoundStep::Started | RoundStep::Finished => None,
        }
    }
}
