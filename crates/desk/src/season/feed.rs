//! The calendar feed: due windows, the visits of the season plan and planned rounds, as iCalendar (RFC 5545).
//!
//! All events are whole days (`VALUE=DATE`), so that no clock and no time zone can move them. `UID`s stay the same from one
//! fetch to the next: a palm's window, a site's visit in a week and a round keep theirs, so a calendar that fetches again
//! changes its events instead of doubling them.

use super::SiteSeason;
use crate::office::Office;
use crate::views::Speaker;
use icalendar::{Calendar, Component, Event, EventStatus, Property};
use jiff::Timestamp;
use model::state::RoundRecord;
use model::{Day, Moment};
use serde_json::{Value, json};

/// What a feed holds.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Parts {
    /// The window of each palm.
    pub windows: bool,
    /// The visits the season plan proposes.
    pub visits: bool,
    /// Rounds that are planned.
    pub rounds: bool,
}

impl Parts {
    /// Everything.
    pub const ALL: Parts = Parts {
        windows: true,
        visits: true,
        rounds: true,
    };

    /// From a word in an address: `windows`, `visits`, `rounds`; anything else is everything.
    pub fn parse(word: &str) -> Parts {
        let only = |part: &str| word == part;
        let any = only("windows") || only("visits") || only("rounds");
        Parts {
            windows: !any || only("windows"),
            visits: !any || only("visits"),
            rounds: !any || only("rounds"),
        }
    }
}

/// Rounds that ended longer ago than this are left out, days.
const PAST_DAYS: i32 = 92;
/// The domain that `UID`s end in: ours alone, and reserved for examples so that it can be nobody else's (RFC 2606).
const DOMAIN: &str = "spearleaf.invalid";

/// The feed, lines ended by CR LF and folded at 75 octets.
pub fn feed(speaker: &Speaker, office: &Office, sites: &[SiteSeason], parts: Parts) -> String {
    let stamp = stamp(office.now());
    let mut calendar = Calendar::empty();
    calendar
        .append_property(("VERSION", "2.0"))
        .append_property(("PRODID", "-//Spearleaf//Season plan//EN"))
        .append_property(("CALSCALE", "GREGORIAN"))
        .append_property(("METHOD", "PUBLISH"))
        .name(&text(&speaker.say("feed-name")));
    // RFC 7986: once a day is often enough
    calendar.append_property(
        Property::new("REFRESH-INTERVAL", "P1D")
            .add_parameter("VALUE", "DURATION")
            .done(),
    );
    for site in sites {
        if parts.visits {
            visits(speaker, site, &stamp, &mut calendar);
        }
        if parts.windows {
            windows(speaker, site, &stamp, &mut calendar);
        }
    }
    if parts.rounds {
        let state = office.state();
        let since = office.today().plus(-PAST_DAYS);
        let rounds = state.work.rounds.values();
        for round in rounds.filter(|round| round.plan.day >= since) {
            let on_site = |site: &SiteSeason| in_round(site, round);
            if sites.is_empty() || sites.iter().any(on_site) {
                calendar.push(self::round(speaker, office, round, &stamp));
            }
        }
    }
    calendar.to_string()
}

/// Whether a round goes to a site.
fn in_round(site: &SiteSeason, round: &RoundRecord) -> bool {
    let stops = || round.plan.stops.iter();
    let planned = site.palms.iter().map(|palm| palm.record.id);
    let left = site.left.iter().map(|left| left.record.id);
    planned
        .chain(left)
        .any(|id| stops().any(|stop| stop.palm == id))
        || stops().next().is_none()
}

fn visits(speaker: &Speaker, site: &SiteSeason, stamp: &str, calendar: &mut Calendar) {
    for visit in &site.best.visits {
        // its Monday: the first week begins anew every day (day 0, 1970-01-01, was a Thursday)
        let week = visit.day.plus(-(visit.day.0 + 3).rem_euclid(7));
        let uid = format!("visit-{}-{week}", plain(&site.site));
        let palms = visit.served.len() as i64;
        let args = [
            ("site", name(speaker, &site.site).into()),
            ("n", palms.into()),
            ("lift", i64::from(visit.lift).into()),
        ];
        let tags: Vec<&str> = visit
            .served
            .iter()
            .filter_map(|s| Some(site.palm_of(s.need)?.record.palm.tag.as_str()))
            .collect();
        let hours = speaker.measure.number(visit.hours, 1);
        let about = speaker.text("feed-visit-about", &[("hours", hours.into())]);
        let mut event = whole_days(visit.day, visit.day.plus(1), &uid, stamp);
        event
            .summary(&text(&speaker.text("feed-visit", &args)))
            .description(&text(&format!("{about}\n{}", tags.join(", "))))
            .status(EventStatus::Tentative);
        calendar.push(event);
    }
}

fn windows(speaker: &Speaker, site: &SiteSeason, stamp: &str, calendar: &mut Calendar) {
    for palm in &site.palms {
        let Some(need) = palm.fronds.map(|at| &site.season.needs[at]) else {
            continue;
        };
        let Some(opens) = rounds::season::opens(need) else {
            continue;
        };
        let record = &palm.record;
        let last = need.now.latest.unwrap_or(opens).max(opens);
        let args = [
            ("tag", record.palm.tag.clone().into()),
            ("site", name(speaker, &record.palm.site).into()),
        ];
        let until = match need.now.latest {
            Some(latest) => {
                let date = speaker.measure.date(latest);
                speaker.text("feed-window-until", &[("date", date.into())])
            }
            None => speaker.say("feed-window-open"),
        };
        let uid = format!("window-{}", record.id.0);
        let mut event = whole_days(opens, last.plus(1), &uid, stamp);
        event
            .summary(&text(&speaker.text("feed-window", &args)))
            .description(&text(&format!("{}\n{until}", record.palm.species)))
            // a window keeps nobody busy
            .add_property("TRANSP", "TRANSPARENT");
        calendar.push(event);
    }
}

fn round(speaker: &Speaker, office: &Office, round: &RoundRecord, stamp: &str) -> Event {
    let plan = &round.plan;
    let state = office.state();
    let args = [
        ("crew", plan.crew.clone().into()),
        ("n", (plan.stops.len() as i64).into()),
    ];
    let mut lines = Vec::new();
    if let (Some(leave), Some(back)) = (plan.leave, plan.back) {
        let args = [("leave", clock(leave).into()), ("back", clock(back).into())];
        lines.push(speaker.text("feed-round-hours", &args));
    }
    for stop in &plan.stops {
        let tag = state.palm(stop.palm).map(|record| record.palm.tag.clone());
        let start = stop
            .start
            .map(|s| format!("{} ", clock(s)))
            .unwrap_or_default();
        lines.extend(tag.map(|tag| format!("{start}{tag}")));
    }
    lines.extend(Some(plan.notes.clone()).filter(|notes| !notes.is_empty()));
    let uid = format!("round-{}", round.id.0);
    let mut event = whole_days(plan.day, plan.day.plus(1), &uid, stamp);
    event
        .summary(&text(&speaker.text("feed-round", &args)))
        .description(&text(&lines.join("\n")))
        .status(EventStatus::Confirmed);
    event
}

/// From a day to the day before another.
fn whole_days(from: Day, to: Day, uid: &str, stamp: &str) -> Event {
    let date = |key: &str, day: Day| {
        let (year, month, day) = day.ymd();
        Property::new(key, format!("{year:04}{month:02}{day:02}"))
            .add_parameter("VALUE", "DATE")
            .done()
    };
    let mut event = Event::with_uid(&format!("{uid}@{DOMAIN}"));
    event
        .add_property("DTSTAMP", stamp)
        .append_property(date("DTSTART", from))
        .append_property(date("DTEND", to));
    event
}

/// A moment as RFC 5545 writes it in UTC, e.g. `20260302T093000Z`.
fn stamp(now: Moment) -> String {
    let stamp = Timestamp::from_millisecond(now.0).unwrap_or(Timestamp::UNIX_EPOCH);
    stamp.strftime("%Y%m%dT%H%M%SZ").to_string()
}

/// Text without what no calendar may hold: line ends become line feeds, other control characters go.
fn text(words: &str) -> String {
    let words = words.replace("\r\n", "\n").replace('\r', "\n");
    let keeps = |c: &char| *c == '\n' || *c == '\t' || !c.is_control();
    words.chars().filter(keeps).collect()
}

/// A name of letters and figures alone that no other name becomes: what is neither is written as its code.
fn plain(name: &str) -> String {
    let one = |c: char| match c {
        'a'..='z' | 'A'..='Z' | '0'..='9' => c.to_string(),
        other => format!("_{:x}_", u32::from(other)),
    };
    name.chars().map(one).collect()
}

fn name(speaker: &Speaker, site: &str) -> String {
    match site {
        "" => speaker.say("season-no-site"),
        site => site.to_owned(),
    }
}

/// `07:30` out of seconds after midnight.
fn clock(seconds: u32) -> String {
    format!("{:02}:{:02}", seconds / 3600, seconds / 60 % 60)
}

/// The season as an object for machines.
pub fn json(site: &SiteSeason) -> Value {
    let plan = &site.best;
    let tag = |need: usize| site.palm_of(need).map(|p| p.record.palm.tag.clone());
    let visits: Vec<Value> = plan
        .visits
        .iter()
        .map(|visit| {
            let served: Vec<Value> = visit
                .served
                .iter()
                .map(|s| {
                    let what = if site.stalks(s.need) { "stalks" } else { "fronds" };
                    json!({"tag": tag(s.need), "what": what, "fronds": s.fronds, "late_days": s.late})
                })
                .collect();
            json!({
                "day": visit.day.to_string(), "lift": visit.lift, "hours": visit.hours, "debris_m3": visit.m3,
                "days": visit.days, "served": served,
            })
        })
        .collect();
    let late: Vec<Value> = plan
        .late
        .iter()
        .map(|late| {
            json!({
                "tag": tag(late.need), "latest": late.latest.to_string(),
                "served": late.served.map(|day| day.to_string()), "days": late.days, "fronds": late.fronds,
                "why": late.why.key(),
            })
        })
        .collect();
    let left: Vec<Value> = site
        .left
        .iter()
        .map(|left| json!({"tag": left.record.palm.tag, "why": left.why.code}))
        .collect();
    let closed: Vec<String> = (site.season.weeks.starts.iter().zip(&site.season.weeks.days))
        .filter(|(_, day)| day.is_none())
        .map(|(start, _)| start.to_string())
        .collect();
    json!({
        "kind": "season", "site": site.site, "weeks": site.season.weeks.count(), "visits": visits, "late": late,
        "left": left, "nothing_due": site.nothing_due, "closed_weeks": closed,
        "money": {
            "trips": plan.money.trips, "lift": plan.money.lift, "crew": plan.money.crew, "debris": plan.money.debris,
        },
        "days_late": plan.days_late, "days_waiting": plan.days_waiting,
        "weighed": plan.weighed, "at_least": {"days_late": plan.at_least.0, "weighed": plan.at_least.1},
        "proven": plan.proven,
    })
}
