//! When to come back: the visits of every site over a season, from the windows of its palms.
//!
//! Windows come from the standings ([`crate::views::standing`]), closed days from the site, minutes, debris and prices
//! from the estimate ([`crate::estimating`]); the choice is made by [`rounds::season`]. `docs/season.md` has the exact
//! meaning. Nothing is recorded here.

pub mod feed;
mod gather;
pub mod prices;

use crate::office::Office;
use crate::views::standing::Standings;
use model::{Day, Finding, PalmRecord, Site, State};
use rayon::prelude::*;
pub use rounds::season::Effort;
use rounds::season::{self, Answers, Kind, Plan, Season};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

/// Shortest and longest season, weeks.
pub const WEEKS: (usize, usize) = (26, 52);
/// At most so many palms of one site are planned together; of more, those due first.
pub const MOST_PALMS: usize = 600;

/// A palm of a site's season.
#[derive(Clone, Debug)]
pub struct PalmSeason {
    /// The palm.
    pub record: Arc<PalmRecord>,
    /// Its place among the needs of the season: dead fronds.
    pub fronds: Option<usize>,
    /// The same for stalks.
    pub stalks: Option<usize>,
    /// Whether its forecast is so wide that its limit may be passed before it is worth a visit.
    pub unsure: bool,
}

/// A palm that is not planned for, and why.
#[derive(Clone, Debug)]
pub struct Left {
    /// The palm.
    pub record: Arc<PalmRecord>,
    /// Why.
    pub why: Finding,
}

/// One site over one season.
#[derive(Clone, Debug)]
pub struct SiteSeason {
    /// Its name as palms write it; empty: palms without a site.
    pub site: String,
    /// What is said of it, if anything.
    pub described: Option<Site>,
    /// Palms that want a visit within the season or stand ready for one.
    pub palms: Vec<PalmSeason>,
    /// Palms that nothing is due for.
    pub nothing_due: usize,
    /// Palms that cannot be planned for.
    pub left: Vec<Left>,
    /// The season as it was planned.
    pub season: Season,
    /// The plan.
    pub best: Plan,
}

impl SiteSeason {
    /// The palm of a need.
    pub fn palm_of(&self, need: usize) -> Option<&PalmSeason> {
        let mine = |p: &&PalmSeason| p.fronds == Some(need) || p.stalks == Some(need);
        self.palms.iter().find(mine)
    }

    /// Whether a need is for stalks.
    pub fn stalks(&self, need: usize) -> bool {
        self.season.needs[need].kind == Kind::Stalks
    }

    /// What a visit fewer and one more would do. Takes a while.
    pub fn what_if(&self, effort: Effort) -> Answers {
        season::beside(&self.season, self.best.clone(), effort)
    }
}

/// What is asked for.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Ask {
    /// So many weeks; brought into [`WEEKS`].
    pub weeks: usize,
    /// One site by name; `None`: all.
    pub site: Option<String>,
    /// Work for the proof of one site.
    pub effort: Effort,
}

impl Ask {
    /// All sites over so many weeks.
    pub fn all(weeks: usize) -> Ask {
        Ask {
            weeks,
            site: None,
            effort: Effort(120),
        }
    }
}

/// The seasons of the sites asked for, by name, palms without a site last. Reads palms that were not read today.
pub fn sites(office: &Office, standings: &Standings, ask: &Ask) -> Vec<SiteSeason> {
    let state = office.state();
    let mut by_site: BTreeMap<&str, Vec<&Arc<PalmRecord>>> = BTreeMap::new();
    for record in state.standing() {
        let wanted = ask
            .site
            .as_ref()
            .is_none_or(|site| *site == record.palm.site);
        if wanted {
            by_site.entry(&record.palm.site).or_default().push(record);
        }
    }
    let outlay = gather::Outlay::of(office);
    let mut out: Vec<SiteSeason> = by_site
        .into_par_iter()
        .map(|(site, palms)| gather::site(office, standings, &outlay, site, &palms, ask))
        .collect();
    out.sort_by_key(|s| (s.site.is_empty(), s.site.clone()));
    out
}

/// Seasons that were planned, kept until the register, the day or the question changes.
#[derive(Default)]
pub struct Seasons {
    kept: Mutex<Vec<Kept>>,
}

struct Kept {
    state: Arc<State>,
    today: Day,
    ask: Ask,
    sites: Arc<Vec<SiteSeason>>,
}

/// So many questions are remembered.
const REMEMBERED: usize = 8;

impl Seasons {
    /// As [`sites`], from memory where nothing has changed.
    pub fn get(&self, office: &Office, standings: &Standings, ask: &Ask) -> Arc<Vec<SiteSeason>> {
        let (state, today) = (office.state(), office.today());
        let same = |k: &&Kept| Arc::ptr_eq(&k.state, &state) && k.today == today && k.ask == *ask;
        let lock = || self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(known) = lock().iter().find(same) {
            return known.sites.clone();
        }
        let sites = Arc::new(sites(office, standings, ask));
        let mut kept = lock();
        kept.retain(|k| Arc::ptr_eq(&k.state, &state) && k.today == today);
        if kept.len() == REMEMBERED {
            kept.remove(0);
        }
        let (ask, found) = (ask.clone(), sites.clone());
        kept.push(Kept {
            state,
            today,
            ask,
            sites: found,
        });
        sites
    }
}
