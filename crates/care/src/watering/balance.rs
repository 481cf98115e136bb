//! The balance of water day by day: since the last watering, and ahead.
//!
//! Two accounts run side by side. The dry one takes the greatest need, the least water in reach and the least rain: it
//! says when a palm is due. The other reckons how much it may take to fill what may have run down: it says how much.

use super::reference::{self, Reference};
use super::rhythm::Rhythm;
use super::zone::Zone;
use super::{AHEAD_DAYS, Need, WaterCase, figure};
use crate::water::Store;
use model::{Day, Span};

/// Whether a palm is due for water.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Due {
    /// Nothing was noted in the days looked back on: nobody knows how dry it is.
    NothingNoted,
    /// Its need in litres is not known.
    Unknown,
    /// Due since this day.
    Since {
        /// The first day on which want may set in.
        day: Day,
        /// What fills it up again.
        litres: f64,
    },
    /// Next due on this day, or not within the days planned.
    Next(Option<Day>),
}

/// A day that is past.
#[derive(Clone, PartialEq, Debug)]
pub struct Past {
    /// The day.
    pub day: Day,
    /// What the air took.
    pub reference: Reference,
    /// What it may have needed, litres.
    pub need_l: Option<Span>,
    /// Rain, mm.
    pub rain_mm: Span,
    /// Waterings: how many, and litres where they were noted.
    pub waterings: (usize, f64),
    /// At its end so much may have run down, litres (the dry account).
    pub run_down_l: Option<f64>,
}

/// Today or a day to come.
#[derive(Clone, PartialEq, Debug)]
pub struct Ahead {
    /// The day.
    pub day: Day,
    /// What the air is reckoned to take.
    pub reference: Reference,
    /// What it may need, litres.
    pub need_l: Option<Span>,
    /// What to give: waterings and litres in all; nothing on a day off.
    pub give: Option<(i32, f64)>,
}

/// The dry account.
struct Dry {
    store: Store,
    area_m2: f64,
    run_down: f64,
}

impl Dry {
    /// Starts with everything run down: nobody knows better.
    fn of(zone: &Zone) -> Option<Dry> {
        let (total, ready) = (zone.total_l?.low, zone.ready_l?.low);
        Some(Dry {
            store: Store {
                total_mm: total,
                ready_mm: ready,
            },
            area_m2: zone.area_m2?.low,
            run_down: total,
        })
    }

    /// Water that reaches roots.
    fn receive(&mut self, litres: f64) {
        self.run_down = (self.run_down - litres).max(0.0);
    }

    fn wants(&self, need: f64) -> bool {
        self.run_down + need > self.store.ready_mm
    }

    fn end(&mut self, need: f64) {
        self.run_down = self.store.day(self.run_down, need, 0.0).1;
    }
}

/// The days since the look back began, and whether the palm is due today.
pub(super) fn past(
    case: &WaterCase,
    need: &Need,
    zone: &Zone,
    rhythm: Option<Rhythm>,
) -> (Vec<Past>, Due) {
    let back = figure(case.knowledge, "look-back").high as i32;
    let mut dry = Dry::of(zone);
    let mut owed = 0.0;
    let mut since: Option<Day> = None;
    let mut noted = false;
    let mut days = Vec::new();
    for day in (-back..=0).map(|ago| case.today.plus(ago)) {
        let reference = reference::on(case, day);
        let need_l = need.litres(reference.mm);
        let rain_mm = reference::rain(case, day);
        let on_day = || case.waterings.iter().filter(|(own, _)| *own == day);
        let litres: f64 = on_day().filter_map(|(_, litres)| *litres).sum();
        let count = on_day().count();
        noted |= count > 0;
        if let (Some(dry), Some(need_l)) = (&mut dry, need_l) {
            let reaches = rain_reaches(case, rain_mm.low, reference.mm) * dry.area_m2;
            dry.receive(litres + reaches);
            owed = (owed - litres - reaches).max(0.0);
            // a day on which it was watered, or rain filled it up, is done
            let filled = litres > 0.0 || dry.run_down <= 0.0;
            if filled || !dry.wants(need_l.high) {
                since = None;
            } else if since.is_none() {
                since = Some(day);
            }
            if day < case.today {
                dry.end(need_l.high);
                owed += need_l.high;
            }
        }
        days.push(Past {
            day,
            reference,
            need_l,
            rain_mm,
            waterings: (count, litres),
            run_down_l: dry.as_ref().map(|dry| dry.run_down),
        });
    }
    // today is planned, not past
    days.pop();
    let due = match (rhythm, zone.total_l) {
        (Some(rhythm), Some(total)) if noted => match since {
            Some(day) => {
                let today = need.litres(reference::on(case, case.today).mm);
                let full = owed.min(total.high) + today.map_or(0.0, |n| n.high);
                let most = total.high * f64::from(rhythm.goes);
                let litres = full.max(rhythm.litres()).min(most.max(rhythm.litres()));
                Due::Since { day, litres }
            }
            None => Due::Next(None),
        },
        (Some(_), Some(_)) => Due::NothingNoted,
        _ => Due::Unknown,
    };
    let due = match (due, dry) {
        (Due::Next(_), Some(dry)) => Due::Next(next(case, need, dry)),
        (due, _) => due,
    };
    (days, due)
}

/// Rain that reaches roots, mm: a little of it only wets leaves and the top of the ground.
fn rain_reaches(case: &WaterCase, mm: f64, reference: Span) -> f64 {
    let least = figure(case.knowledge, "rain-least").high * reference.high;
    if mm < least { 0.0 } else { mm }
}

/// The first coming day on which it would want water.
fn next(case: &WaterCase, need: &Need, mut dry: Dry) -> Option<Day> {
    (0..=60).map(|n| case.today.plus(n)).find(|day| {
        let need = need.litres(reference::on(case, *day).mm);
        let need = need.map_or(0.0, |n| n.high);
        // today it may have been watered already
        if *day > case.today && dry.wants(need) {
            return true;
        }
        dry.end(need);
        false
    })
}

/// Today and the coming days: what to give on which, if the plan is kept.
pub(super) fn ahead(
    case: &WaterCase,
    need: &Need,
    zone: &Zone,
    rhythm: Option<Rhythm>,
    due: &Due,
) -> Vec<Ahead> {
    let mut next = match due {
        Due::Since { .. } | Due::NothingNoted => Some(case.today),
        Due::Next(day) => *day,
        Due::Unknown => None,
    };
    let mut days = Vec::new();
    for day in (0..AHEAD_DAYS).map(|n| case.today.plus(n)) {
        let reference = reference::on(case, day);
        let need_l = need.litres(reference.mm);
        let here = next.is_some_and(|next| next <= day);
        let give = rhythm.filter(|_| here).map(|rhythm| {
            next = Some(day.plus(rhythm.every_days));
            let litres = match due {
                Due::Since { litres, .. } if day == case.today => *litres,
                // nobody knows how dry it is: all that roots can reach, and no less than the day wants
                Due::NothingNoted if day == case.today => {
                    let total = zone.total_l.map_or(0.0, |t| t.high);
                    total.max(rhythm.litres())
                }
                _ => rhythm.litres(),
            };
            (rhythm.goes, litres)
        });
        days.push(Ahead {
            day,
            reference,
            need_l,
            give,
        });
    }
    days
}
