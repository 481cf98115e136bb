//! What comes next: rounds that are planned, visits that the season proposes, looks at moved palms.

use super::palms::Sorted;
use super::{AHEAD_WEEKS, Scene};
use crate::season::SiteSeason;
use crate::season::prices::SeasonPrices;
use crate::views::season::{self, site_name};
use model::{Day, Finding};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// Rows of the list; what is later is counted.
pub const MOST_NEXT: usize = 8;
/// Tags that one row names.
const MOST_TAGS: usize = 6;

/// Something to come.
#[derive(Clone, PartialEq, Debug)]
pub struct NextRow {
    /// `round`, `visit`, `look`.
    pub kind: &'static str,
    /// The same in words: planned, proposed.
    pub kind_words: String,
    /// The day.
    pub day: Day,
    /// The day in words.
    pub date: String,
    /// Sites in words.
    pub site: String,
    /// What.
    pub what: String,
}

/// The list, soonest first, and what is beside it.
pub(super) fn of(
    scene: &Scene,
    seasons: &[Arc<Vec<SiteSeason>>],
    palms: &Sorted,
) -> (Vec<NextRow>, Vec<String>) {
    let (visits, mut notes) = visits(scene, seasons);
    let mut rows = rounds(scene);
    rows.extend(visits);
    rows.extend(looks(scene, palms));
    rows.sort_by(|a, b| (a.day, a.kind, &a.site).cmp(&(b.day, b.kind, &b.site)));
    let more = rows.len().saturating_sub(MOST_NEXT);
    rows.truncate(MOST_NEXT);
    if more > 0 {
        notes.insert(0, scene.n("summary-next-more", more));
    }
    (rows, notes)
}

fn row(scene: &Scene, kind: &'static str, day: Day, site: String, what: String) -> NextRow {
    NextRow {
        kind,
        kind_words: scene.say(&format!("summary-next-{kind}")),
        day,
        date: scene.date(day),
        site,
        what,
    }
}

/// Rounds from today on that nobody has finished, with the palms of this owner that are on them.
fn rounds(scene: &Scene) -> Vec<NextRow> {
    let last = scene.today.plus(AHEAD_WEEKS as i32 * 7);
    let mut rows = Vec::new();
    for round in scene.state.work.rounds.values() {
        let plan = &round.plan;
        if round.finished.is_some() || !(scene.today..=last).contains(&plan.day) {
            continue;
        }
        let ours = plan.stops.iter().filter_map(|stop| {
            let palm = &scene.state.palm(stop.palm)?.palm;
            scene.sites.contains(&palm.site).then_some(&palm.site)
        });
        let ours: Vec<&String> = ours.collect();
        if ours.is_empty() {
            continue;
        }
        let sites: BTreeSet<&str> = ours.iter().map(|site| site.as_str()).collect();
        let sites: Vec<String> = sites
            .into_iter()
            .map(|site| site_name(scene.speaker, site))
            .collect();
        let crew = match plan.crew.trim() {
            "" => scene.say("summary-not-noted"),
            crew => crew.to_owned(),
        };
        let args = [
            ("palms", scene.n("summary-palms", ours.len()).into()),
            ("crew", crew.into()),
        ];
        let what = scene.speaker.text("summary-next-round-what", &args);
        rows.push(row(scene, "round", plan.day, sites.join(", "), what));
    }
    rows
}

/// Visits of the season; sites without one, and palms that are not planned for with the reason.
fn visits(scene: &Scene, seasons: &[Arc<Vec<SiteSeason>>]) -> (Vec<NextRow>, Vec<String>) {
    let (mut rows, mut notes) = (Vec::new(), Vec::new());
    let prices = SeasonPrices::of(scene.state);
    for sites in seasons {
        let view = season::view(scene.speaker, sites, &prices, AHEAD_WEEKS, None);
        for site in view.sites {
            let visits = site.visits.into_iter();
            let before = rows.len();
            rows.extend(visits.map(|v| row(scene, "visit", v.day, site.name.clone(), v.what)));
            if rows.len() == before {
                let args = [
                    ("site", site.name.into()),
                    ("weeks", (AHEAD_WEEKS as i64).into()),
                ];
                notes.push(scene.speaker.text("summary-next-no-visit", &args));
            }
        }
    }
    notes.extend(left(scene, seasons));
    (rows, notes)
}

/// How many palms the season does not plan for, by reason.
fn left(scene: &Scene, seasons: &[Arc<Vec<SiteSeason>>]) -> Vec<String> {
    let mut all: BTreeMap<&str, (&Finding, usize)> = BTreeMap::new();
    for site in seasons.iter().flat_map(|sites| sites.iter()) {
        for palm in &site.left {
            all.entry(palm.why.code).or_insert((&palm.why, 0)).1 += 1;
        }
    }
    let said = all.into_iter().map(|(code, (why, n))| {
        let own = code.replace("season-", "summary-");
        match scene.speaker.words().has(&own) {
            true => scene.n(&own, n),
            // a reason that is new to the season says itself
            false => scene.speaker.measure.finding(why),
        }
    });
    said.collect()
}

/// The next look at each palm on its way, those of one site and day together.
fn looks(scene: &Scene, palms: &Sorted) -> Vec<NextRow> {
    let mut days: BTreeMap<(Day, &str), Vec<&str>> = BTreeMap::new();
    for seen in &palms.all {
        let palm = &seen.record.palm;
        if let Some(next) = seen.moved.as_ref().and_then(|moved| moved.calendar.next) {
            days.entry((next, &palm.site)).or_default().push(&palm.tag);
        }
    }
    let look = |((day, site), tags): ((Day, &str), Vec<&str>)| {
        let more = tags.len().saturating_sub(MOST_TAGS);
        let named = tags.iter().take(MOST_TAGS).copied().collect::<Vec<_>>();
        let args = [
            ("tags", named.join(", ").into()),
            ("more", (more as i64).into()),
        ];
        let code = match day < scene.today {
            true => "summary-next-look-late",
            false => "summary-next-look-what",
        };
        let what = scene.speaker.text(code, &args);
        row(scene, "look", day, site_name(scene.speaker, site), what)
    };
    days.into_iter().map(look).collect()
}
