//! The owner's summary: one sheet over all palms of an owner, or of a site where no owner is named.
//!
//! Counts say what was recorded and nothing else; what nobody noted is said to be unknown. Like the owner's sheet of one
//! palm it is for a person who does not see the register: the keeper's free words stay out. Money is in no record, and
//! so in no sentence.

mod done;
mod glance;
mod list;
mod mind;
mod next;
mod palms;
mod period;
#[cfg(test)]
mod tests;
mod who;
mod work;

pub use done::{DoneRow, MOST_DONE};
pub use glance::Count;
pub use list::{OwnerRow, OwnersView, list};
pub use next::{MOST_NEXT, NextRow};
pub use palms::{MOST_DRAWN, MOST_NAMED, PalmCard, PalmLine};
pub use period::{Period, USUAL_DAYS};
pub use who::Who;

use super::owner::Point;
use super::said::Speaker;
use super::season::site_name;
use super::standing::Standings;
use crate::office::Office;
use crate::season::{Ask, Seasons};
use model::{Day, PalmRecord, State};
use std::collections::BTreeSet;
use std::sync::Arc;

/// Weeks ahead that are told.
pub const AHEAD_WEEKS: usize = 26;

/// The summary.
#[derive(Clone, PartialEq, Debug)]
pub struct SummaryView {
    /// Whose palms.
    pub title: String,
    /// Their sites in words; empty for one site.
    pub sites: String,
    several: bool,
    /// "As of 4 May 2026".
    pub as_of: String,
    /// The days that are told, in words.
    pub period: String,
    /// The counts, in their order.
    pub counts: Vec<Count>,
    /// What the counts leave open, in words.
    pub count_notes: Vec<String>,
    /// Palms that need the owner's attention, drawn, the worst first.
    pub cards: Vec<PalmCard>,
    /// More of them, a line each.
    pub lines: Vec<PalmLine>,
    /// How many more there are, in words.
    pub more_palms: Option<String>,
    /// All others: as they should be, waiting for a visit, not seen.
    pub others: Vec<String>,
    /// What was done, newest first.
    pub done: Vec<DoneRow>,
    /// What is not in that list, and what was done too often to be listed.
    pub done_notes: Vec<String>,
    /// What comes next, soonest first.
    pub next: Vec<NextRow>,
    /// More of it, sites without a visit, palms that are not planned for.
    pub next_notes: Vec<String>,
    /// When to call, whatever the count.
    pub call_at_once: String,
    /// What the owner must mind.
    pub mind: Vec<Point>,
    /// What the level line is, in words.
    pub level: String,
}

impl SummaryView {
    /// Whether it is about several sites, so that rows have to say which.
    pub fn sites_differ(&self) -> bool {
        self.several
    }
}

/// The summary; `None` if no palm stands on such a site, nor any site of such an owner is described.
pub fn view(
    speaker: &Speaker,
    office: &Office,
    standings: &Standings,
    seasons: &Seasons,
    who: &Who,
    period: Period,
) -> Option<SummaryView> {
    let state = office.state();
    let scene = Scene {
        speaker,
        office,
        sites: who.sites(&state)?,
        state: &state,
        today: office.today(),
        period,
    };
    Some(scene.view(standings, seasons, who))
}

/// All that a summary is made from.
struct Scene<'a> {
    speaker: &'a Speaker,
    office: &'a Office,
    state: &'a State,
    sites: BTreeSet<String>,
    today: Day,
    period: Period,
}

impl Scene<'_> {
    fn say(&self, code: &str) -> String {
        self.speaker.say(code)
    }

    fn date(&self, day: Day) -> String {
        self.speaker.measure.date(day)
    }

    /// Words about so many of something.
    fn n(&self, code: &str, n: usize) -> String {
        let text = self.speaker.measure.count(n as i64);
        self.speaker
            .text(code, &[("n", (n as i64).into()), ("text", text.into())])
    }

    /// Its palms, those that left the register included.
    fn all(&self) -> impl Iterator<Item = &Arc<PalmRecord>> {
        let ours = |record: &&Arc<PalmRecord>| self.sites.contains(&record.palm.site);
        self.state.palms.values().filter(ours)
    }

    /// Its palms that stand, by tag.
    fn standing(&self) -> Vec<&Arc<PalmRecord>> {
        let mut all: Vec<_> = self.all().filter(|record| record.stands()).collect();
        all.sort_by(|a, b| a.palm.tag.cmp(&b.palm.tag));
        all
    }

    fn view(&self, standings: &Standings, seasons: &Seasons, who: &Who) -> SummaryView {
        let speaker = self.speaker;
        let works = work::all(self);
        let standing = self.standing();
        let palms = palms::sorted(self, standings, &standing);
        let seasons: Vec<_> = self
            .sites
            .iter()
            .map(|site| {
                let ask = Ask {
                    site: Some(site.clone()),
                    ..Ask::all(AHEAD_WEEKS)
                };
                seasons.get(self.office, standings, &ask)
            })
            .collect();
        let (next, next_notes) = next::of(self, &seasons, &palms);
        let (done, done_notes) = done::of(self, &works);
        let told = [
            ("from", self.date(self.period.from).into()),
            ("until", self.date(self.period.until).into()),
        ];
        let as_of = [("date", self.date(self.today).into())];
        let drawn = palms::drawn(self, &palms);
        SummaryView {
            title: self.title(who),
            sites: self.sites_words(who),
            several: self.sites.len() > 1,
            as_of: speaker.text("owner-as-of", &as_of),
            period: speaker.text("summary-period", &told),
            counts: glance::counts(self, &works, &palms, standing.len()),
            count_notes: glance::notes(self, &works),
            cards: drawn.cards,
            lines: drawn.lines,
            more_palms: drawn.more,
            others: palms::others(self, &palms),
            done,
            done_notes,
            next,
            next_notes,
            call_at_once: self.say("owner-call-at-once"),
            mind: mind::points(self, &standing),
            level: self.say("owner-level"),
        }
    }

    fn title(&self, who: &Who) -> String {
        match who {
            Who::Owner(name) => self
                .speaker
                .text("summary-title-owner", &[("owner", name.clone().into())]),
            Who::Site(name) if name.is_empty() => self.say("summary-title-no-site"),
            Who::Site(name) => self
                .speaker
                .text("summary-title-site", &[("site", name.clone().into())]),
        }
    }

    fn sites_words(&self, who: &Who) -> String {
        match who {
            Who::Owner(_) => {
                let names: Vec<String> = self
                    .sites
                    .iter()
                    .map(|site| site_name(self.speaker, site))
                    .collect();
                names.join(", ")
            }
            Who::Site(_) => String::new(),
        }
    }
}
