//! The register: search, filters, one page of palms.

use super::paging::Paging;
use super::said::Speaker;
use super::standing::{Standing, Standings};
use super::{needs, today};
use crate::office::Office;
use crown::Explanation;
use model::{Day, PalmRecord, State};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Palms on one page.
pub const PER_PAGE: usize = 50;
/// "Due soon" reaches so many days ahead.
const SOON_DAYS: i32 = 28;
/// More sites or species than this are not offered as a list.
const MOST_CHOICES: usize = 200;

/// When a visit is due, as a filter.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Due {
    /// More hangs already than should.
    Late,
    /// Worth a visit today.
    Now,
    /// Within four weeks.
    Soon,
    /// Later, or not within two years.
    Later,
}

impl Due {
    /// All, most urgent first.
    pub const ALL: [Due; 4] = [Due::Late, Due::Now, Due::Soon, Due::Later];

    /// The word in addresses.
    pub fn key(self) -> &'static str {
        match self {
            Due::Late => "late",
            Due::Now => "now",
            Due::Soon => "soon",
            Due::Later => "later",
        }
    }

    /// From that word.
    pub fn parse(key: &str) -> Option<Due> {
        Due::ALL.into_iter().find(|d| d.key() == key)
    }

    /// When a palm is due.
    pub fn of(standing: &Standing, today: Day) -> Due {
        match (standing.due.earliest, standing.due.latest) {
            (_, Some(latest)) if latest <= today => Due::Late,
            (Some(earliest), _) if earliest <= today => Due::Now,
            (Some(earliest), _) if earliest <= today.plus(SOON_DAYS) => Due::Soon,
            _ => Due::Later,
        }
    }
}

/// What is looked for. Empty text and `None` do not filter.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Search {
    /// Part of a tag, a species or a site, any case.
    pub text: String,
    /// Exactly this site.
    pub site: String,
    /// Exactly this species, as written.
    pub species: String,
    /// Most probable explanation.
    pub explanation: Option<Explanation>,
    /// When a visit is due.
    pub due: Option<Due>,
    /// Page, from 1.
    pub page: usize,
}

/// One palm in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// Date of the last look, or that there was none.
    pub last_look: String,
    /// Key of the most probable explanation; nothing without a look or a reading.
    pub key: Option<&'static str>,
    /// The explanation and its probability in words.
    pub explanation: String,
    /// When a visit is due, in words.
    pub due: String,
    /// The worst need, in one line.
    pub need: Option<String>,
}

/// A value to choose, with how many palms have it.
#[derive(Clone, PartialEq, Debug)]
pub struct Choice {
    /// The value.
    pub value: String,
    /// Palms that have it.
    pub count: usize,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmsView {
    /// "50 of 100,000 palms".
    pub summary: String,
    /// Palms on this page.
    pub rows: Vec<PalmRow>,
    /// Pages.
    pub paging: Paging,
    /// Sites to choose.
    pub sites: Vec<Choice>,
    /// Species to choose.
    pub species: Vec<Choice>,
    /// Palms not read yet, in words, where the filter depends on readings.
    pub pending: Option<String>,
}

/// The page asked for. Computes standings only for the palms it lists; filters use what is known already.
pub fn view(
    speaker: &Speaker,
    office: &Office,
    standings: &Standings,
    search: &Search,
) -> PalmsView {
    let (state, today) = (office.state(), office.today());
    let (found, paging) = find(&state, standings, search, today);
    let rows = found.iter().map(|record| {
        let standing = standings.get(office, record);
        row(speaker, office, record, standing.as_deref())
    });
    let rows = rows.collect();
    let counts = [
        ("n", (paging.total as i64).into()),
        (
            "total",
            speaker.measure.count(state.tags().len() as i64).into(),
        ),
    ];
    let filters_readings = search.explanation.is_some() || search.due.is_some();
    PalmsView {
        summary: speaker.text("palms-summary", &counts),
        rows,
        paging,
        sites: choices(&state, |r| &r.palm.site),
        species: choices(&state, |r| &r.palm.species),
        pending: filters_readings
            .then(|| today::pending(speaker, standings.missing(office)))
            .flatten(),
    }
}

/// The palms on the page asked for, by tag. Computes nothing: filters use the standings that are known already.
pub fn find<'s>(
    state: &'s State,
    standings: &Standings,
    search: &Search,
    today: Day,
) -> (Vec<&'s Arc<PalmRecord>>, Paging) {
    let text = search.text.trim().to_lowercase();
    let all: Vec<_> = in_order(state)
        .filter(|r| holds_text(r, &text) && matches(state, r, standings, search, today))
        .collect();
    let paging = Paging::of(all.len(), PER_PAGE, search.page);
    (all[paging.range()].to_vec(), paging)
}

/// Standing palms by tag.
fn in_order(state: &State) -> impl Iterator<Item = &Arc<PalmRecord>> {
    state.tags().values().filter_map(|id| state.palm(*id))
}

fn matches(
    state: &State,
    record: &Arc<PalmRecord>,
    standings: &Standings,
    search: &Search,
    today: Day,
) -> bool {
    let palm = &record.palm;
    if !(search.site.is_empty() || palm.site == search.site)
        || !(search.species.is_empty() || palm.species == search.species)
    {
        return false;
    }
    if search.explanation.is_none() && search.due.is_none() {
        return true;
    }
    let Some(standing) = standings.peek(state, record, today) else {
        return false;
    };
    search
        .explanation
        .is_none_or(|e| standing.explanation == Some(e))
        && search.due.is_none_or(|d| Due::of(&standing, today) == d)
}

/// Whether a palm's tag, species or site holds a text, which is in lower case.
fn holds_text(record: &PalmRecord, wanted: &str) -> bool {
    let palm = &record.palm;
    wanted.is_empty()
        || [&palm.tag, &palm.species, &palm.site]
            .iter()
            .any(|text| holds(text, wanted))
}

fn holds(text: &str, wanted: &str) -> bool {
    if !text.is_ascii() {
        return text.to_lowercase().contains(wanted);
    }
    // a register has a hundred thousand of these: no copy for each
    let (text, wanted) = (text.as_bytes(), wanted.as_bytes());
    text.windows(wanted.len())
        .any(|part| part.eq_ignore_ascii_case(wanted))
}

fn choices(state: &State, value: impl Fn(&PalmRecord) -> &str) -> Vec<Choice> {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for record in state.standing() {
        *counts.entry(value(record)).or_default() += 1;
    }
    counts.remove("");
    if counts.len() > MOST_CHOICES {
        return Vec::new();
    }
    counts
        .into_iter()
        .map(|(value, count)| Choice {
            value: value.to_owned(),
            count,
        })
        .collect()
}

fn row(
    speaker: &Speaker,
    office: &Office,
    record: &PalmRecord,
    standing: Option<&Standing>,
) -> PalmRow {
    let last = record
        .last_look()
        .map(|look| speaker.measure.date(look.date));
    let explanation = standing.and_then(|s| s.explanation.map(|e| (e, s.probability(e))));
    PalmRow {
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        site: record.palm.site.clone(),
        last_look: last.unwrap_or_else(|| speaker.say("palms-no-look")),
        key: explanation.map(|(e, _)| e.key()),
        explanation: explanation.map_or_else(
            || speaker.say("palms-no-reading"),
            |(e, p)| explained(speaker, e, p),
        ),
        due: standing.map_or_else(String::new, |s| due(speaker, s, office.today())),
        need: needs::of(office, record, standing)
            .first()
            .map(|n| speaker.measure.finding(&n.finding)),
    }
}

fn explained(speaker: &Speaker, explanation: Explanation, p: f64) -> String {
    let name = speaker.say(&format!("explanation-{}", explanation.key()));
    speaker.text(
        "palms-explained",
        &[
            ("name", name.into()),
            ("p", speaker.measure.percent(p).into()),
        ],
    )
}

/// When a visit is due, in words.
pub fn due(speaker: &Speaker, standing: &Standing, today: Day) -> String {
    let date = |day: Option<Day>| day.map(|d| speaker.measure.date(d)).unwrap_or_default();
    let args = [
        ("earliest", date(standing.due.earliest).into()),
        ("latest", date(standing.due.latest).into()),
        ("n", i64::from(standing.take.brown).into()),
    ];
    let code = match Due::of(standing, today) {
        Due::Late => "due-late",
        Due::Now if standing.due.latest.is_none() => "due-now-open",
        Due::Now => "due-now",
        Due::Soon => "due-soon",
        Due::Later if standing.due.earliest.is_none() => "due-none",
        Due::Later => "due-later",
    };
    speaker.text(code, &args)
}
