//! `/watering`: palms that want water today, this week, later.

use super::super::said::Speaker;
use super::plan;
use crate::office::Office;
use crate::watering::{self, State, Watered, look_back};
use care::Settled;
use care::watering::{Due, Missing};
use model::Span;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// A palm in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct WaterRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// How it stands: `due`, `nothing-noted`, `soon`, `later`, `unknown`.
    pub state: &'static str,
    /// The same in a word or two.
    pub state_words: String,
    /// What to give today, in words.
    pub give: Option<String>,
    /// Litres that one tap notes, with their unit as a form reads them.
    pub tap: Option<String>,
    /// The words of that tap.
    pub tap_words: String,
    /// When it is due, in words.
    pub next: String,
    /// How often at the longest and how much, in words.
    pub rhythm: String,
    /// When it was last watered, in words.
    pub last: String,
}

/// Palms that stand alike.
#[derive(Clone, PartialEq, Debug)]
pub struct Group {
    /// `today`, `week`, `later`, `unknown`.
    pub key: &'static str,
    /// Heading.
    pub title: String,
    /// The palms.
    pub rows: Vec<WaterRow>,
}

/// A site to narrow the list to.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteLink {
    /// Its name.
    pub name: String,
    /// How many of its palms want water today, in words.
    pub today: String,
    /// It is the one shown.
    pub here: bool,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct WateringView {
    /// How many palms today and this week.
    pub summary: String,
    /// Water for today in all.
    pub total: Option<String>,
    /// Sites, if there is more than one.
    pub sites: Vec<SiteLink>,
    /// Palms by how they stand; groups without palms are left out.
    pub groups: Vec<Group>,
    /// More palms than are shown, in words.
    pub more: Option<String>,
    /// Sites without weather of their own lately, in words.
    pub weather: Vec<String>,
    /// Which palms stand here.
    pub what: String,
}

/// The page, of one site or of all (`site` empty).
pub fn view(speaker: &Speaker, office: &Office, site: &str) -> WateringView {
    let (all, more) = watering::all(office);
    let shown: Vec<&Watered> = all
        .iter()
        .filter(|w| site.is_empty() || w.record.palm.site == site)
        .collect();
    let count = |of: fn(State) -> bool| shown.iter().filter(|w| of(w.state())).count() as i64;
    let today = count(State::is_today);
    let counts = [
        ("today", today.into()),
        ("week", count(|s| s == State::Soon).into()),
        ("all", (shown.len() as i64).into()),
    ];
    let litres: f64 = shown
        .iter()
        .filter_map(|w| w.today_give())
        .map(|(_, l)| l)
        .sum();
    let total = [("water", speaker.measure.water(litres).into())];
    let days = [("days", i64::from(look_back()).into())];
    WateringView {
        summary: speaker.text("watering-summary", &counts),
        total: (litres > 0.0).then(|| speaker.text("watering-total", &total)),
        sites: sites(speaker, &all, site),
        groups: groups(speaker, &shown),
        more: (more > 0).then(|| speaker.text("watering-more", &[("n", (more as i64).into())])),
        weather: without_weather(speaker, &shown),
        what: speaker.text("watering-what", &days),
    }
}

fn sites(speaker: &Speaker, all: &[Watered], here: &str) -> Vec<SiteLink> {
    let mut today: BTreeMap<&str, i64> = BTreeMap::new();
    for w in all {
        *today.entry(&w.record.palm.site).or_default() += i64::from(w.state().is_today());
    }
    if today.len() < 2 {
        return Vec::new();
    }
    let named = today.into_iter().filter(|(name, _)| !name.is_empty());
    named
        .map(|(name, n)| SiteLink {
            name: name.to_owned(),
            today: speaker.text("watering-site-today", &[("n", n.into())]),
            here: name == here,
        })
        .collect()
}

fn groups(speaker: &Speaker, shown: &[&Watered]) -> Vec<Group> {
    let of = |key: &'static str, states: &[State]| {
        let own = shown.iter().filter(|w| states.contains(&w.state()));
        let rows: Vec<WaterRow> = own.map(|w| row(speaker, w)).collect();
        (!rows.is_empty()).then(|| Group {
            key,
            title: speaker.say(&format!("watering-group-{key}")),
            rows,
        })
    };
    [
        of("today", &[State::Due, State::NothingNoted]),
        of("week", &[State::Soon]),
        of("later", &[State::Later]),
        of("unknown", &[State::Unknown]),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn row(speaker: &Speaker, watered: &Watered) -> WaterRow {
    let palm = &watered.record.palm;
    let state = watered.state();
    let (tap, tap_words) = tap(speaker, watered);
    WaterRow {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        state: state.key(),
        state_words: speaker.say(&format!("watering-state-{}", state.key())),
        give: plan::give_today(speaker, watered),
        tap,
        tap_words,
        next: plan::next(speaker, watered),
        rhythm: plan::rhythm(speaker, watered),
        last: plan::last(speaker, watered),
    }
}

/// What one tap notes: the litres of today, else those of one watering, else a watering without an amount.
pub(super) fn tap(speaker: &Speaker, watered: &Watered) -> (Option<String>, String) {
    let rhythm = watered.plan.rhythm.map(|r| r.litres());
    let litres = watered.today_give().map(|(_, litres)| litres).or(rhythm);
    match litres {
        Some(litres) => {
            let words = [("water", speaker.measure.litres(litres).into())];
            (
                Some(format!("{litres:.1} L")),
                speaker.text("water-tap", &words),
            )
        }
        None => (None, speaker.say("water-tap-plain")),
    }
}

/// Sites whose palms have no weather for a part of the last days, each once.
fn without_weather(speaker: &Speaker, shown: &[&Watered]) -> Vec<String> {
    let mut sites: BTreeMap<(&str, bool), i32> = BTreeMap::new();
    for w in shown {
        for missing in &w.plan.missing {
            if let Missing::Weather(days) = missing {
                let at = (w.record.palm.site.as_str(), w.place.is_some());
                sites.insert(at, *days);
            }
        }
    }
    let line = |((site, climate), days): ((&str, bool), i32)| {
        let code = if climate {
            "watering-no-weather"
        } else {
            "watering-no-weather-no-climate"
        };
        let site = if site.is_empty() {
            speaker.say("watering-no-site")
        } else {
            site.to_owned()
        };
        speaker.text(
            code,
            &[("site", site.into()), ("n", i64::from(days).into())],
        )
    };
    sites.into_iter().map(line).collect()
}

/// A palm's plan for a program: plain figures in litres and millimetres, dates as ISO 8601.
pub fn json(watered: &Watered) -> Value {
    let (palm, plan) = (&watered.record.palm, &watered.plan);
    let span = |span: Span| json!([span.low, span.high]);
    let since = match plan.due {
        Due::Since { day, .. } => Some(day.to_string()),
        _ => None,
    };
    let give = watered.today_give();
    let rhythm = plan.rhythm.map(|r| {
        json!({
            "every_days": r.every_days, "times": r.goes, "litres_each": r.litres_each, "short": r.short,
        })
    });
    let missing: Vec<&str> = plan.missing.iter().map(super::reckoned::key).collect();
    json!({
        "tag": palm.tag, "species": palm.species, "site": palm.site,
        "state": watered.state().key(),
        "due_since": since,
        "next": watered.next().map(|d| d.to_string()),
        "today_litres": give.map(|(_, litres)| litres), "today_times": give.map(|(goes, _)| goes),
        "reference_mm": span(plan.reference.mm), "reference_by": plan.reference.how.key(),
        "factor": span(plan.factor),
        "need_litres": plan.need_l.map(span), "lasts_days": plan.lasts_days.map(span),
        "reach_litres": plan.zone.total_l.map(span), "roots": plan.zone.kind.key(),
        "rhythm": rhythm,
        "last": watered.last().map(|g| json!({"date": g.day.to_string(), "litres": g.litres})),
        "established": !matches!(watered.settled, Settled::NotYet { .. }),
        "not_known": missing,
    })
}
