//! What the fold knows of tending, sites, crews and rounds.

use crate::day::{Day, Moment};
use crate::entry::EntryId;
use crate::palm::PalmId;
use crate::tending::{OwnerLink, Tending};
use crate::work::{CrewWords, Prices, RoundPlan, Site, WeatherDay};
use std::collections::BTreeMap;

/// Something done for a palm, and when.
#[derive(Clone, PartialEq, Debug)]
pub struct Tended {
    /// When.
    pub at: Moment,
    /// The entry that says so now.
    pub entry: EntryId,
    /// What.
    pub what: Tending,
}

/// A link that was given and not revoked.
#[derive(Clone, PartialEq, Debug)]
pub struct LinkRecord {
    /// The entry that gave it: withdraw it to revoke the link.
    pub entry: EntryId,
    /// Since when.
    pub given: Moment,
    /// What it is.
    pub link: OwnerLink,
}

/// How a palm of a round came off.
#[derive(Clone, PartialEq, Debug)]
pub enum Outcome {
    /// Done.
    Done {
        /// When.
        at: Moment,
        /// Minutes it took, if noted.
        minutes: Option<f64>,
        /// Free words.
        note: String,
    },
    /// Left out.
    Skipped {
        /// When.
        at: Moment,
        /// Why.
        why: String,
    },
}

/// A round and how it went.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundRecord {
    /// Its name: the entry that planned it first.
    pub id: EntryId,
    /// The entry that says how it is planned now: what a new plan names in `replaces`.
    pub entry: EntryId,
    /// When it was planned.
    pub planned: Moment,
    /// The plan.
    pub plan: RoundPlan,
    /// When the crew set out.
    pub started: Option<Moment>,
    /// When it was back.
    pub finished: Option<Moment>,
    /// How each palm came off; the latest word counts.
    pub outcomes: BTreeMap<PalmId, Outcome>,
}

/// Sites, crews, prices, weather and rounds as the entries make them.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Work {
    /// Described sites by name. A site that only palms name is not here.
    pub sites: BTreeMap<String, Site>,
    /// Crews by name, gone ones included.
    pub crews: BTreeMap<String, CrewWords>,
    /// The price list, if one was set.
    pub prices: Option<Prices>,
    /// Weather by site and day.
    pub weather: BTreeMap<String, BTreeMap<Day, WeatherDay>>,
    /// Rounds planned and not called off, by name.
    pub rounds: BTreeMap<EntryId, RoundRecord>,
}

impl Work {
    /// Weather of a site on a day: its own, or that of the sites without their own.
    pub fn weather(&self, site: &str, day: Day) -> Option<&WeatherDay> {
        [site, ""]
            .iter()
            .find_map(|name| self.weather.get(*name)?.get(&day))
    }
}
