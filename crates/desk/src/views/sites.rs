//! Sites as pages show them: all of them, and one with its palms.

use super::facts::{Fact, fact};
use super::palms::{self, PalmRow, Search};
use super::said::Speaker;
use super::standing::Standings;
use crate::office::Office;
use crate::timetable::write_clock;
use model::{Closed, Day, Hours, Knowledge, NoFeeding, Position, Site};
use std::collections::BTreeMap;

/// A closed spell is told in the list so many days ahead.
const SOON_DAYS: i32 = 30;

/// One site in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteRow {
    /// Name.
    pub name: String,
    /// Whose it is; empty if not said.
    pub owner: String,
    /// How many palms stand there, in words.
    pub palms: String,
    /// When it may be worked, in words; empty if it is not described.
    pub hours: String,
    /// `open`, `soon` (closed within a month), `closed` (today), `bare` (not described).
    pub state: &'static str,
    /// The state in words; empty when open.
    pub state_words: String,
}

/// All sites.
#[derive(Clone, PartialEq, Debug)]
pub struct SitesView {
    /// One sentence.
    pub summary: String,
    /// Sites by name, those that only palms name among them.
    pub rows: Vec<SiteRow>,
}

/// A spell on which nobody may come.
#[derive(Clone, PartialEq, Debug)]
pub struct ClosedRow {
    /// `past`, `now`, `ahead`.
    pub key: &'static str,
    /// From when to when.
    pub days: String,
    /// Why, in the owner's words.
    pub why: String,
}

/// A local rule against feeding.
#[derive(Clone, PartialEq, Debug)]
pub struct RuleRow {
    /// In force today.
    pub now: bool,
    /// What is barred and when.
    pub words: String,
    /// Whose rule it is.
    pub rule: String,
}

/// One site.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteView {
    /// As in the list.
    pub row: SiteRow,
    /// Whether the keeper has described it.
    pub described: bool,
    /// What is known.
    pub facts: Vec<Fact>,
    /// Closed spells, earliest first.
    pub closed: Vec<ClosedRow>,
    /// Rules against feeding.
    pub rules: Vec<RuleRow>,
    /// Free words.
    pub notes: String,
    /// Its first palms.
    pub palms: Vec<PalmRow>,
    /// Whether there are more than that.
    pub more: bool,
}

/// The list.
pub fn view(speaker: &Speaker, office: &Office) -> SitesView {
    let (state, today) = (office.state(), office.today());
    let mut counts: BTreeMap<&str, i64> = BTreeMap::new();
    for name in state.work.sites.keys() {
        counts.insert(name, 0);
    }
    for record in state.standing().filter(|r| !r.palm.site.is_empty()) {
        *counts.entry(&record.palm.site).or_insert(0) += 1;
    }
    let rows: Vec<SiteRow> = counts
        .iter()
        .map(|(name, palms)| row(speaker, name, state.work.sites.get(*name), *palms, today))
        .collect();
    let bare = rows.iter().filter(|row| row.state == "bare").count();
    let args = [
        ("n", (rows.len() as i64).into()),
        ("bare", (bare as i64).into()),
    ];
    SitesView {
        summary: speaker.text("sites-summary", &args),
        rows,
    }
}

/// One site; `None` if nobody described it and no palm stands on it.
pub fn one(
    speaker: &Speaker,
    office: &Office,
    standings: &Standings,
    name: &str,
) -> Option<SiteView> {
    let (state, today) = (office.state(), office.today());
    let site = state.work.sites.get(name);
    let search = Search {
        site: name.to_owned(),
        page: 1,
        ..Search::default()
    };
    let (_, paging) = palms::find(&state, standings, &search, today);
    if site.is_none() && (paging.total == 0 || name.is_empty()) {
        return None;
    }
    let palms = palms::view(speaker, office, standings, &search).rows;
    let blank = Site::default();
    let own = site.unwrap_or(&blank);
    Some(SiteView {
        row: row(speaker, name, site, paging.total as i64, today),
        described: site.is_some(),
        facts: facts(speaker, own),
        closed: own
            .closed
            .iter()
            .map(|c| closed_row(speaker, c, today))
            .collect(),
        rules: own
            .no_feeding
            .iter()
            .map(|r| rule_row(speaker, r, today))
            .collect(),
        notes: own.notes.clone(),
        more: paging.total > palms.len(),
        palms,
    })
}

fn row(speaker: &Speaker, name: &str, site: Option<&Site>, palms: i64, today: Day) -> SiteRow {
    let (state, state_words) = state(speaker, site, today);
    let count = [
        ("n", palms.into()),
        ("text", speaker.measure.count(palms).into()),
    ];
    SiteRow {
        name: name.to_owned(),
        owner: site.map_or(String::new(), |s| s.owner.clone()),
        palms: speaker.text("sites-palms", &count),
        hours: site.map_or(String::new(), |s| match s.hours.as_slice() {
            [] => speaker.say("sites-any-hour"),
            hours => hours_words(speaker, hours),
        }),
        state,
        state_words,
    }
}

fn state(speaker: &Speaker, site: Option<&Site>, today: Day) -> (&'static str, String) {
    let Some(site) = site else {
        return ("bare", speaker.say("sites-bare"));
    };
    let mut spells: Vec<&Closed> = site.closed.iter().filter(|c| c.last >= today).collect();
    spells.sort();
    let Some(next) = spells.first() else {
        return ("open", String::new());
    };
    let (key, words) = match today.since(next.first) {
        days if days >= 0 => ("closed", "sites-closed"),
        days if days >= -SOON_DAYS => ("soon", "sites-soon"),
        _ => return ("open", String::new()),
    };
    let args = [
        ("first", speaker.measure.date(next.first).into()),
        ("last", speaker.measure.date(next.last).into()),
    ];
    (key, speaker.text(words, &args))
}

/// Windows of the day in words.
pub(super) fn hours_words(speaker: &Speaker, hours: &[Hours]) -> String {
    let one = |h: &Hours| {
        let args = [
            ("from", write_clock(h.from).into()),
            ("to", write_clock(h.to).into()),
        ];
        speaker.text("sites-hours", &args)
    };
    hours.iter().map(one).collect::<Vec<_>>().join(", ")
}

/// Degrees, north and east.
pub(super) fn place_words(speaker: &Speaker, place: Position) -> String {
    let m = speaker.measure;
    format!("{}, {}", m.number(place.lat, 5), m.number(place.lon, 5))
}

fn facts(speaker: &Speaker, site: &Site) -> Vec<Fact> {
    let m = speaker.measure;
    let words = |text: &str| (!text.is_empty()).then(|| text.to_owned());
    let answer = |answer: Option<bool>| {
        answer.map(|yes| speaker.say(if yes { "sites-yes" } else { "sites-no" }))
    };
    let hours = (!site.hours.is_empty()).then(|| hours_words(speaker, &site.hours));
    let soil = words(&site.soil).map(|key| {
        let known = Knowledge::embedded().soil(&key).is_some();
        if known {
            speaker.say(&format!("move-soil-{key}"))
        } else {
            key
        }
    });
    let kv = site.line_kv.map(|kv| {
        let kv = m.number(kv, 1);
        speaker.text("sites-kv", &[("kv", kv.into())])
    });
    let mut facts = vec![
        fact(speaker, "sites-fact-owner", words(&site.owner)),
        fact(
            speaker,
            "sites-fact-gate",
            site.gate.map(|p| place_words(speaker, p)),
        ),
        fact(speaker, "sites-fact-hours", hours),
        fact(speaker, "sites-fact-soil", soil),
        fact(speaker, "sites-fact-coastal", answer(site.coastal)),
        fact(speaker, "sites-fact-weevils", answer(site.weevil_area)),
        fact(speaker, "sites-fact-line", kv),
    ];
    // what holds where nothing is said is no unknown
    let usual = |count: Option<u32>| match count {
        Some(count) => m.count(count.into()),
        None => speaker.say("sites-usual"),
    };
    facts.push(fact(speaker, "sites-fact-tidy", Some(usual(site.tidy))));
    facts.push(fact(speaker, "sites-fact-limit", Some(usual(site.limit))));
    facts.extend(site.extra.iter().map(told));
    facts
}

/// A column of an imported file that this version does not know.
pub(super) fn told((name, value): (&String, &String)) -> Fact {
    Fact {
        name: name.clone(),
        value: value.clone(),
        known: true,
        mark: None,
        note: None,
        sources: Vec::new(),
    }
}

fn closed_row(speaker: &Speaker, closed: &Closed, today: Day) -> ClosedRow {
    let key = match (closed.first <= today, closed.last < today) {
        (_, true) => "past",
        (true, false) => "now",
        (false, false) => "ahead",
    };
    let args = [
        ("first", speaker.measure.date(closed.first).into()),
        ("last", speaker.measure.date(closed.last).into()),
    ];
    let words = if closed.first == closed.last {
        "sites-closed-day"
    } else {
        "sites-closed-days"
    };
    ClosedRow {
        key,
        days: speaker.text(words, &args),
        why: closed.why.clone(),
    }
}

fn rule_row(speaker: &Speaker, rule: &NoFeeding, today: Day) -> RuleRow {
    let day = |(month, day): (u8, u8)| {
        let month = speaker.say(&format!("measure-month-{month}"));
        let args = [
            ("day", i64::from(day).to_string().into()),
            ("month", month.into()),
        ];
        speaker.text("sites-day-of-year", &args)
    };
    let what = match rule.nutrients.is_empty() {
        true => speaker.say("sites-all-feeding"),
        false => rule.nutrients.join(", "),
    };
    let args = [
        ("from", day(rule.from).into()),
        ("to", day(rule.to).into()),
        ("what", what.into()),
    ];
    RuleRow {
        now: care::feeding::barred_on(std::slice::from_ref(rule), today)
            .next()
            .is_some(),
        words: speaker.text("sites-rule", &args),
        rule: rule.rule.clone(),
    }
}
