//! `/palm/{tag}/water`: what to give today and in the coming days, how that tapers, and what was given.

use super::super::said::Speaker;
use super::list::tap;
use super::reckoned::{self, FactorLine, Gap, StepLine};
use crate::office::Office;
use crate::watering::{self, Watered};
use care::watering::{Due, Rhythm};
use model::Day;
use model::Span;

/// Past days that are shown.
const PAST_DAYS: usize = 14;

/// Today or a coming day.
#[derive(Clone, PartialEq, Debug)]
pub struct AheadRow {
    /// The day.
    pub date: String,
    /// What the air is reckoned to take.
    pub reference: String,
    /// What the palm may need.
    pub need: String,
    /// What to give; a dash on a day off.
    pub give: Option<String>,
}

/// How it goes on as roots grow.
#[derive(Clone, PartialEq, Debug)]
pub struct TaperRow {
    /// From this day on.
    pub from: String,
    /// How far the roots are.
    pub roots: String,
    /// How often and how much.
    pub rhythm: String,
}

/// A past day.
#[derive(Clone, PartialEq, Debug)]
pub struct PastRow {
    /// The day.
    pub date: String,
    /// What the air took, and how it was reckoned.
    pub reference: String,
    /// How it was reckoned: `full`, `part`, `temperatures`, `last-days`, `climate`, `anywhere`.
    pub how: &'static str,
    /// Rain.
    pub rain: String,
    /// What was given.
    pub given: String,
    /// What may have run down by its end.
    pub run_down: String,
}

/// A watering that was noted.
#[derive(Clone, PartialEq, Debug)]
pub struct LogRow {
    /// Its entry, to correct or take back.
    pub entry: String,
    /// The day.
    pub date: String,
    /// How much.
    pub amount: String,
    /// Free words.
    pub notes: String,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct WaterPage {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// How it stands, and in words.
    pub state: (&'static str, String),
    /// What to give today.
    pub give: Option<String>,
    /// When it is due.
    pub next: String,
    /// How often at the longest and how much.
    pub rhythm: String,
    /// How long a soaking lasts.
    pub lasts: Option<String>,
    /// That even so it runs short for a part of the day.
    pub short: Option<String>,
    /// When it was last watered.
    pub last: String,
    /// What one tap notes, and its words.
    pub tap: (Option<String>, String),
    /// Today and the coming days.
    pub ahead: Vec<AheadRow>,
    /// As roots grow.
    pub taper: Vec<TaperRow>,
    /// What is not known.
    pub gaps: Vec<Gap>,
    /// How it was reckoned.
    pub steps: Vec<StepLine>,
    /// Who says what of its share.
    pub factors: Vec<FactorLine>,
    /// That the factors contradict each other, with what becomes of that.
    pub conflict: Option<String>,
    /// The last days, newest first.
    pub past: Vec<PastRow>,
    /// Waterings, newest first.
    pub log: Vec<LogRow>,
    /// What comes before the plan.
    pub minds: Vec<String>,
}

/// The page; `None` if no palm with this tag stands.
pub fn page(speaker: &Speaker, office: &Office, tag: &str) -> Option<WaterPage> {
    let state = office.state();
    let record = state.by_tag(tag)?;
    let watered = watering::of(office, record)?;
    let palm = &record.palm;
    let key = watered.state().key();
    Some(WaterPage {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        state: (key, speaker.say(&format!("watering-state-{key}"))),
        give: give_today(speaker, &watered),
        next: next(speaker, &watered),
        rhythm: rhythm(speaker, &watered),
        lasts: lasts(speaker, &watered),
        short: watered
            .plan
            .rhythm
            .filter(|r| r.short)
            .map(|_| speaker.say("water-short")),
        last: last(speaker, &watered),
        tap: tap(speaker, &watered),
        ahead: ahead(speaker, &watered),
        taper: taper(speaker, &watered),
        gaps: reckoned::gaps(speaker, &watered),
        steps: reckoned::steps(speaker, &watered),
        factors: reckoned::factors(speaker, &watered),
        conflict: reckoned::conflict(speaker, &watered),
        past: past(speaker, &watered),
        log: log(speaker, &watered),
        minds: ["water-mind-soil", "water-mind-rules", "water-mind-tub"]
            .map(|code| speaker.say(code))
            .to_vec(),
    })
}

/// What to give today, in words; nothing on a day off.
pub(super) fn give_today(speaker: &Speaker, watered: &Watered) -> Option<String> {
    Some(give(speaker, watered.today_give()?))
}

/// What to give when somebody comes on a day, in words; `None`: nobody can tell.
pub fn give_on(speaker: &Speaker, watered: &Watered, day: Day) -> Option<String> {
    let by_then = watered.plan.ahead.iter().filter(|own| own.day <= day);
    let planned = by_then.filter_map(|own| own.give).next_back();
    let usual = watered
        .plan
        .rhythm
        .map(|usual| (usual.goes, usual.litres()));
    planned.or(usual).map(|own| give(speaker, own))
}

fn give(speaker: &Speaker, (goes, litres): (i32, f64)) -> String {
    if goes < 2 {
        return speaker.measure.water(litres);
    }
    let each = litres / f64::from(goes);
    let args = [
        ("n", i64::from(goes).into()),
        ("each", speaker.measure.water(each).into()),
    ];
    speaker.text("water-goes", &args)
}

/// When it is due, in words.
pub(super) fn next(speaker: &Speaker, watered: &Watered) -> String {
    let m = &speaker.measure;
    match watered.plan.due {
        Due::NothingNoted => speaker.text(
            "water-nothing-noted",
            &[("days", i64::from(watering::look_back()).into())],
        ),
        Due::Unknown => speaker.say("water-unknown"),
        Due::Since { day, .. } if day == watered.today => speaker.say("water-due-today"),
        Due::Since { day, .. } => {
            let days = f64::from(watered.today.since(day));
            let args = [
                ("date", m.date(day).into()),
                ("ago", m.duration(days).into()),
            ];
            speaker.text("water-due-since", &args)
        }
        Due::Next(Some(day)) => {
            let days = f64::from(day.since(watered.today));
            let args = [
                ("date", m.date(day).into()),
                ("in", m.duration(days).into()),
            ];
            speaker.text("water-next", &args)
        }
        Due::Next(None) => speaker.say("water-next-none"),
    }
}

/// How often at the longest and how much, in words.
pub(super) fn rhythm(speaker: &Speaker, watered: &Watered) -> String {
    match watered.plan.rhythm {
        Some(rhythm) => rhythm_words(speaker, rhythm),
        None => speaker.say("water-rhythm-unknown"),
    }
}

fn rhythm_words(speaker: &Speaker, rhythm: Rhythm) -> String {
    let args = [
        ("days", i64::from(rhythm.every_days).into()),
        ("goes", i64::from(rhythm.goes).into()),
        ("water", speaker.measure.water(rhythm.litres_each).into()),
    ];
    let code = if rhythm.goes > 1 {
        "water-rhythm-goes"
    } else {
        "water-rhythm"
    };
    speaker.text(code, &args)
}

/// When it was last watered and with how much, in words.
pub(super) fn last(speaker: &Speaker, watered: &Watered) -> String {
    let Some(last) = watered.last() else {
        return speaker.say("water-last-none");
    };
    let days = f64::from(watered.today.since(last.day));
    let amount = amount(speaker, last.litres);
    let args = [
        ("date", speaker.measure.date(last.day).into()),
        ("ago", speaker.measure.duration(days).into()),
        ("amount", amount.into()),
    ];
    let code = if last.day == watered.today {
        "water-last-today"
    } else {
        "water-last"
    };
    speaker.text(code, &args)
}

fn amount(speaker: &Speaker, litres: Option<f64>) -> String {
    litres.map_or_else(
        || speaker.say("water-amount-unknown"),
        |litres| speaker.measure.water(litres),
    )
}

fn lasts(speaker: &Speaker, watered: &Watered) -> Option<String> {
    let lasts = watered.plan.lasts_days?;
    let args = [
        ("low", reckoned::days(speaker, lasts.low).into()),
        ("high", reckoned::days(speaker, lasts.high).into()),
    ];
    Some(speaker.text("water-lasts", &args))
}

fn ahead(speaker: &Speaker, watered: &Watered) -> Vec<AheadRow> {
    let m = &speaker.measure;
    let days = watered.plan.ahead.iter();
    days.map(|day| AheadRow {
        date: m.date(day.day),
        reference: m.water_height(day.reference.mm.low, day.reference.mm.high),
        need: litres(speaker, day.need_l),
        give: day.give.map(|own| give(speaker, own)),
    })
    .collect()
}

fn litres(speaker: &Speaker, need: Option<Span>) -> String {
    need.map_or_else(
        || speaker.say("common-unknown"),
        |need| speaker.measure.water_range(need.low, need.high),
    )
}

fn taper(speaker: &Speaker, watered: &Watered) -> Vec<TaperRow> {
    let steps = watered.plan.taper.iter();
    steps
        .map(|step| TaperRow {
            from: speaker.measure.date(step.day),
            roots: speaker.say(&format!("water-roots-{}", step.kind.key())),
            rhythm: rhythm_words(speaker, step.rhythm),
        })
        .collect()
}

fn past(speaker: &Speaker, watered: &Watered) -> Vec<PastRow> {
    let m = &speaker.measure;
    let days = watered.plan.past.iter().rev().take(PAST_DAYS);
    days.map(|day| {
        let given = match day.waterings {
            (0, _) => String::new(),
            (_, litres) if litres > 0.0 => m.water(litres),
            _ => speaker.say("water-amount-unknown"),
        };
        PastRow {
            date: m.date(day.day),
            reference: m.water_height(day.reference.mm.low, day.reference.mm.high),
            how: day.reference.how.key(),
            rain: m.water_height(day.rain_mm.low, day.rain_mm.high),
            given,
            run_down: day.run_down_l.map(|l| m.water(l)).unwrap_or_default(),
        }
    })
    .collect()
}

fn log(speaker: &Speaker, watered: &Watered) -> Vec<LogRow> {
    let given = watered.given.iter();
    given
        .map(|own| LogRow {
            entry: own.entry.clone(),
            date: speaker.measure.date(own.day),
            amount: amount(speaker, own.litres),
            notes: own.notes.clone(),
        })
        .collect()
}
