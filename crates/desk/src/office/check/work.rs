//! Tending, owner links, sites, crews, prices, weather and rounds.

use super::{Check, Kind, MOST_FRONDS, Note, date, refuse};
use crate::timetable::{DAY, day_of_year, overlap, write_hours};
use model::{
    Arg, Body, Closed, CrewWords, Finding, Hours, Metres, Move, NoFeeding, Position, Prices,
    RoundNote, RoundPlan, RoundStep, Site, Tending, WeatherDay,
};

/// Nothing on a round takes longer, minutes (a day).
const LONGEST_STOP: f64 = 1440.0;
/// Highest voltage to ground of a line in service, kV (765 kV and 1,200 kV between phases are the highest built).
const MOST_KV: f64 = 1200.0;
/// No root ball, no planting depth is larger, m.
const LARGEST_BALL: f64 = 10.0;

impl Check<'_> {
    /// What is wrong with a note about the work around the palms.
    pub(super) fn work(&self, note: &Note, wrong: &mut Vec<Finding>) {
        match &note.body {
            Body::Tended { palm, what } => {
                let Some(seen) = self.known(*palm, wrong) else {
                    return;
                };
                date(note.at.day(), self.latest, &seen.tag, wrong);
                self.tending(what, &seen.tag, wrong);
            }
            Body::LinkGiven { palm, link } => {
                drop(self.known(*palm, wrong));
                let hash = &link.secret_hash;
                if hash.is_empty() || !hash.bytes().all(|b| b.is_ascii_hexdigit()) {
                    wrong.push(refuse("link-malformed"));
                }
            }
            Body::SiteDescribed(to) => site(to, wrong),
            Body::CrewDescribed(to) => crew(to, wrong),
            Body::PricesSet(to) => prices(to, wrong),
            Body::WeatherNoted(day) => {
                date(day.day, self.latest, &day.site, wrong);
                weather(day, wrong);
            }
            Body::RoundPlanned(plan) => self.plan(plan, wrong),
            Body::RoundNoted(step) => {
                date(note.at.day(), self.latest, "", wrong);
                self.step(step, wrong);
            }
            _ => {}
        }
    }

    fn tending(&self, what: &Tending, tag: &str, wrong: &mut Vec<Finding>) {
        let sound = match what {
            Tending::Moved(moved) => {
                for day in [Some(moved.dug_on), moved.planted_on].into_iter().flatten() {
                    date(day, self.latest, tag, wrong);
                }
                if moved.planted_on.is_some_and(|day| day < moved.dug_on) {
                    wrong.push(
                        refuse("planted-before-dug")
                            .with("tag", Arg::Text(tag.to_owned()))
                            .with("date", Arg::Date(moved.dug_on)),
                    );
                }
                move_sound(moved)
            }
            Tending::Watered(water) => water.litres.is_none_or(|l| (0.0..=100_000.0).contains(&l)),
            Tending::Fed(fed) => {
                fed.grams.is_none_or(|g| (0.0..=1_000_000.0).contains(&g))
                    && fed.area_m2.is_none_or(|a| a > 0.0 && a <= 10_000.0)
            }
        };
        if !sound {
            wrong.push(refuse("figure-out-of-range").with("tag", Arg::Text(tag.to_owned())));
        }
    }

    fn plan(&self, plan: &RoundPlan, wrong: &mut Vec<Finding>) {
        for (at, stop) in plan.stops.iter().enumerate() {
            let seen = self.known(stop.palm, wrong);
            let twice = plan.stops[..at]
                .iter()
                .any(|other| self.fold.palm_named(other.palm) == self.fold.palm_named(stop.palm));
            if let Some(seen) = seen.filter(|_| twice) {
                wrong.push(refuse("round-palm-twice").with("tag", Arg::Text(seen.tag)));
            }
        }
        let times = plan.stops.iter().map(|stop| stop.start);
        let times_sound = times
            .chain([plan.leave, plan.back])
            .flatten()
            .all(|seconds| seconds <= 2 * DAY);
        let minutes_sound = plan.stops.iter().all(|stop| minutes_sound(stop.minutes));
        let metres_sound = plan.metres.is_none_or(|m| (0.0..=1e7).contains(&m));
        if !(times_sound && minutes_sound && metres_sound) {
            wrong.push(refuse("round-figure").with("date", Arg::Date(plan.day)));
        }
    }

    fn step(&self, note: &RoundNote, wrong: &mut Vec<Finding>) {
        let planned =
            self.fold.plans_round(note.round) || self.batch.get(&note.round) == Some(&Kind::Round);
        if !planned {
            wrong.push(refuse("round-unknown"));
        }
        let seen = note.palm().and_then(|palm| self.known(palm, wrong));
        let tag = || Arg::Text(seen.as_ref().map_or(String::new(), |seen| seen.tag.clone()));
        match &note.step {
            RoundStep::Done { minutes, .. } if !minutes_sound(*minutes) => {
                wrong.push(refuse("figure-out-of-range").with("tag", tag()));
            }
            RoundStep::Skipped { why, .. } if why.trim().is_empty() => {
                wrong.push(refuse("skipped-without-reason").with("tag", tag()));
            }
            _ => {}
        }
    }
}

fn move_sound(moved: &Move) -> bool {
    let size = |m: Option<Metres>| m.is_none_or(|m| m.0 > 0.0 && m.0 <= LARGEST_BALL);
    let taken = moved.fronds_taken.is_none_or(|n| n <= MOST_FRONDS);
    let deeper = moved.deeper.is_none_or(|m| m.0.abs() <= LARGEST_BALL);
    size(moved.ball_radius) && size(moved.ball_depth) && taken && deeper
}

fn minutes_sound(minutes: Option<f64>) -> bool {
    minutes.is_none_or(|m| (0.0..=LONGEST_STOP).contains(&m))
}

fn site(site: &Site, wrong: &mut Vec<Finding>) {
    name("site", &site.name, wrong);
    let kv = site.line_kv.is_none_or(|kv| (0.0..=MOST_KV).contains(&kv));
    let counts = [site.tidy, site.limit]
        .into_iter()
        .flatten()
        .all(|n| n <= MOST_FRONDS);
    let days = site
        .closed
        .iter()
        .all(|Closed { first, last, .. }| first <= last);
    let rules = site
        .no_feeding
        .iter()
        .all(|NoFeeding { from, to, .. }| some_day(*from) && some_day(*to));
    let hours = site.hours.iter().all(|hours| hours_sound(*hours));
    if !(kv && counts && days && rules && hours && place(site.gate)) {
        wrong.push(refuse("site-figure").with("site", Arg::Text(site.name.clone())));
    }
    if let Some((first, next)) = overlap(&site.hours) {
        let [first, next] = [first, next].map(|hours| Arg::Text(write_hours(&[hours])));
        let found = refuse("site-hours-overlap").with("site", Arg::Text(site.name.clone()));
        wrong.push(found.with("first", first).with("next", next));
    }
    if let (Some(tidy), Some(limit)) = (site.tidy, site.limit)
        && tidy > limit
    {
        wrong.push(refuse("site-tidy-beyond-limit").with("site", Arg::Text(site.name.clone())));
    }
}

fn crew(crew: &CrewWords, wrong: &mut Vec<Finding>) {
    name("crew", &crew.name, wrong);
    let people = crew.people.is_none_or(|n| (1..=1000).contains(&n));
    let room = crew.room_m3.is_none_or(|m3| (0.0..=1000.0).contains(&m3));
    let hours = crew.hours.is_none_or(hours_sound);
    if !(people && room && hours && place(crew.from) && place(crew.to)) {
        wrong.push(refuse("crew-figure").with("crew", Arg::Text(crew.name.clone())));
    }
}

fn prices(prices: &Prices, wrong: &mut Vec<Finding>) {
    let currency =
        prices.currency.len() == 3 && prices.currency.bytes().all(|b| b.is_ascii_uppercase());
    let digits = prices.digits <= 4;
    let tax = prices
        .tax_pct
        .is_none_or(|pct| (0.0..=100.0).contains(&pct));
    if !(currency && digits && tax) {
        wrong.push(refuse("prices-currency").with("currency", Arg::Text(prices.currency.clone())));
    }
    let below = prices
        .prices
        .iter()
        .filter(|(_, price)| **price < 0)
        .map(|(key, _)| key);
    let absurd = prices
        .figures
        .iter()
        .filter(|(_, figure)| !(figure.is_finite() && **figure >= 0.0))
        .map(|(key, _)| key);
    for key in below.chain(absurd) {
        wrong.push(refuse("prices-figure").with("key", Arg::Text(key.clone())));
    }
}

fn weather(day: &WeatherDay, wrong: &mut Vec<Finding>) {
    let within =
        |figure: Option<f64>, low: f64, high: f64| figure.is_none_or(|f| (low..=high).contains(&f));
    let sound = within(day.t_min, -60.0, 60.0)
        && within(day.t_max, -60.0, 60.0)
        && within(day.humidity, 0.0, 100.0)
        && within(day.wind, 0.0, 100.0)
        && within(day.radiation, 0.0, 50.0)
        && within(day.sunshine, 0.0, 24.0)
        && within(day.rain, 0.0, 2000.0)
        && !matches!((day.t_min, day.t_max), (Some(min), Some(max)) if min > max);
    if !sound {
        wrong.push(refuse("weather-figure").with("date", Arg::Date(day.day)));
    }
}

fn name(what: &'static str, name: &str, wrong: &mut Vec<Finding>) {
    if name.trim() != name || name.is_empty() {
        let code = if what == "site" {
            "site-nameless"
        } else {
            "crew-nameless"
        };
        wrong.push(refuse(code).with(what, Arg::Text(name.to_owned())));
    }
}

fn hours_sound(hours: Hours) -> bool {
    hours.from <= hours.to && hours.to <= DAY
}

fn some_day((month, day): (u8, u8)) -> bool {
    day_of_year(month, day).is_some()
}

fn place(position: Option<Position>) -> bool {
    position.is_none_or(|p| p.lat.abs() <= 90.0 && p.lon.abs() <= 180.0)
}
