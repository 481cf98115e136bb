//! How often and how much.

use super::zone::{self, Zone, ZoneKind};
use super::{Need, WaterCase, figure, reference};
use crate::Settled;
use model::{Day, Span};

/// Weeks from today in which the plan is told anew.
const STEPS_WEEKS: [i32; 5] = [0, 4, 8, 16, 26];

/// Nothing is said of longer than this, days.
const LONGEST_DAYS: f64 = 365.0;

/// A rhythm on the safe side: the greatest need, the least water in reach.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Rhythm {
    /// Days from one watering day to the next, at least 1.
    pub every_days: i32,
    /// Waterings on such a day.
    pub goes: i32,
    /// Litres at each.
    pub litres_each: f64,
    /// Even so often the ball cannot hold what a full crown may draw: the palm runs short for a part of the day.
    pub short: bool,
}

impl Rhythm {
    /// Litres on a day of watering.
    pub fn litres(&self) -> f64 {
        self.litres_each * f64::from(self.goes)
    }

    /// Litres a day on the mean.
    pub fn litres_a_day(&self) -> f64 {
        self.litres() / f64::from(self.every_days)
    }
}

/// The rhythm of a coming week.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Step {
    /// From this day on.
    pub day: Day,
    /// How far the roots are.
    pub kind: ZoneKind,
    /// The rhythm.
    pub rhythm: Rhythm,
}

/// Days from a soaking until want sets in, at worst and at best.
pub(super) fn lasts(zone: &Zone, need_l: Option<Span>) -> Option<Span> {
    let (ready, need) = (zone.ready_l?, need_l?);
    let days = |ready: f64, need: f64| (ready / need).min(LONGEST_DAYS);
    (need.high > 0.0).then(|| Span {
        low: days(ready.low, need.high),
        high: days(ready.high, need.low),
    })
}

/// The safe rhythm; `None` where the need in litres is not known, or there is none.
pub(super) fn of(case: &WaterCase, zone: &Zone, need_l: Option<Span>) -> Option<Rhythm> {
    let (ready, total, need) = (zone.ready_l?, zone.total_l?, need_l?);
    if need.high <= 0.0 {
        return None;
    }
    let worst = ready.low / need.high;
    if worst >= 1.0 {
        let every_days = worst.floor().min(LONGEST_DAYS) as i32;
        return Some(Rhythm {
            every_days,
            goes: 1,
            litres_each: need.high * f64::from(every_days),
            short: false,
        });
    }
    let most = figure(case.knowledge, "goes-most").high as i32;
    let wanted = (1.0 / worst.max(0.01)).ceil() as i32;
    let goes = wanted.clamp(1, most);
    // what does not fit into the ball drains away beside the roots
    let litres_each = (need.high / f64::from(goes)).min(total.high);
    Some(Rhythm {
        every_days: 1,
        goes,
        litres_each,
        short: wanted > most,
    })
}

/// The rhythm in coming weeks, as roots grow and the season goes on; a single step for a palm that has its roots.
pub(super) fn taper(case: &WaterCase, need: &Need) -> Vec<Step> {
    let growing = matches!(case.settled, Settled::NotYet { .. });
    let last = match case.settled {
        Settled::NotYet { assumed_by, .. } => Some(assumed_by),
        _ => None,
    };
    let weeks = STEPS_WEEKS.iter().map(|weeks| case.today.plus(7 * weeks));
    let days = weeks.take(if growing { STEPS_WEEKS.len() } else { 1 });
    let days = days
        .filter(|day| last.is_none_or(|last| *day < last || *day == case.today))
        .chain(last.filter(|day| *day > case.today));
    days.filter_map(|day| {
        let reference = reference::on(case, day).mm;
        let zone = zone::on(case, day, need.mm(reference));
        Some(Step {
            day,
            kind: zone.kind,
            rhythm: of(case, &zone, need.litres(reference))?,
        })
    })
    .collect()
}
