//! What the palms of a site want over a season.

use super::prices::SeasonPrices;
use super::{Ask, Left, MOST_PALMS, PalmSeason, SiteSeason, WEEKS};
use crate::estimating::{at_palm, figures_of, reach, spare_blade};
use crate::office::Office;
use crate::views::standing::{Standing, Standings};
use crown::{DueWindow, Rhythm};
use model::{Arg, Day, Finding, PalmRecord, Position, Severity};
use rayon::prelude::*;
use rounds::estimate::{Figures, Reach, Work, visit};
use rounds::season::{Kind, Need, Plan, Season, Tariff, Weeks, best, weeks};
use std::sync::Arc;

/// Where the limit may be passed before a visit is worth it the window is left open for so many days (assumed).
const UNSURE_DAYS: i32 = 27;
/// Days after the last month of bloom in which stalks still come off (assumed).
const AFTER_BLOOM: i32 = 28;

/// What work takes and costs, the same on all sites.
pub struct Outlay {
    figures: Figures,
    spare_blade: bool,
    tariff: Tariff,
}

impl Outlay {
    /// From the tables, the keeper's figures and prices, and the pace of all crews.
    pub fn of(office: &Office) -> Outlay {
        let state = office.state();
        Outlay {
            figures: figures_of(office, ""),
            spare_blade: spare_blade(&state),
            tariff: SeasonPrices::of(&state).tariff,
        }
    }

    /// Minutes at a palm and loose debris, as a rule.
    fn at(&self, work: Work) -> (f64, f64) {
        let visit = visit(
            &self.figures,
            &Work {
                spare_blade: self.spare_blade,
                ..work
            },
        );
        (visit.minutes.mid, visit.debris_m3.mid)
    }
}

/// Plans one site.
pub fn site(
    office: &Office,
    standings: &Standings,
    outlay: &Outlay,
    name: &str,
    palms: &[&Arc<PalmRecord>],
    ask: &Ask,
) -> SiteSeason {
    let state = office.state();
    let described = state.work.sites.get(name).cloned();
    let count = ask.weeks.clamp(WEEKS.0, WEEKS.1);
    let shut = described.as_ref().map_or(&[][..], |site| &site.closed);
    let closed = |day: Day| shut.iter().any(|c| (c.first..=c.last).contains(&day));
    let weeks = weeks(office.today().plus(1), count, closed);
    let gate = described.as_ref().and_then(|site| site.gate);
    let at = gate.or_else(|| palms.iter().find_map(|record| record.palm.position));
    let mut out = SiteSeason {
        site: name.to_owned(),
        palms: Vec::new(),
        nothing_due: 0,
        left: Vec::new(),
        best: Plan::default(),
        season: Season {
            storm: at.and_then(|at| storm_opens(at, office.today(), weeks.end)),
            weeks,
            needs: Vec::new(),
            tariff: outlay.tariff,
        },
        described,
    };
    let seen: Vec<(&Arc<PalmRecord>, Wish)> = palms
        .par_iter()
        .map(|record| {
            (
                *record,
                wish(office, standings, outlay, record, &out.season),
            )
        })
        .collect();
    out.add(seen);
    out.best = best(&out.season, ask.effort);
    out
}

/// What a palm wants.
enum Wish {
    Needs {
        fronds: Box<Need>,
        stalks: Option<Box<Need>>,
        unsure: bool,
    },
    Nothing,
    Left(Finding),
}

impl SiteSeason {
    fn add(&mut self, mut seen: Vec<(&Arc<PalmRecord>, Wish)>) {
        // due first: those are kept where there are too many
        seen.sort_by_key(|(record, wish)| {
            let due = match wish {
                Wish::Needs { fronds, .. } => fronds.now.earliest,
                _ => None,
            };
            (due.is_none(), due, record.palm.tag.clone())
        });
        for (record, wish) in seen {
            let record = record.clone();
            match wish {
                Wish::Nothing => self.nothing_due += 1,
                Wish::Left(why) => self.left.push(Left { record, why }),
                Wish::Needs { .. } if self.palms.len() == MOST_PALMS => {
                    let why = Finding::new("season-left-many", Severity::Act)
                        .with("most", Arg::Count(MOST_PALMS as i64));
                    self.left.push(Left { record, why });
                }
                Wish::Needs {
                    fronds,
                    stalks,
                    unsure,
                } => {
                    let at = self.season.needs.len();
                    self.season.needs.push(*fronds);
                    let stalks = stalks.map(|need| {
                        self.season.needs.push(*need);
                        at + 1
                    });
                    self.palms.push(PalmSeason {
                        record,
                        fronds: Some(at),
                        stalks,
                        unsure,
                    });
                }
            }
        }
    }
}

fn wish(
    office: &Office,
    standings: &Standings,
    outlay: &Outlay,
    record: &Arc<PalmRecord>,
    season: &Season,
) -> Wish {
    let standing = standings.get(office, record);
    let Some((standing, rhythm)) = standing
        .as_ref()
        .and_then(|standing| Some((standing, standing.rhythm.as_deref()?)))
    else {
        return Wish::Left(Finding::new("season-left-unread", Severity::Act));
    };
    if standing.explanation.is_none() {
        return Wish::Left(Finding::new("season-left-unseen", Severity::Act));
    }
    let not_before = match held(record, standing, office.today()) {
        Held::No => None,
        Held::Until(day) => Some(day.plus(1)),
        Held::Open => {
            let why = Finding::new("season-left-held", Severity::Act);
            return Wish::Left(why);
        }
    };
    let (now, unsure) = sure(rhythm.now());
    if now.earliest.is_none_or(|day| day >= season.weeks.end) {
        return Wish::Nothing;
    }
    let from = reach(record, standing.high);
    let lift = from == Reach::Lift;
    let bare = Work {
        from,
        ..at_palm(record)
    };
    let (minutes, _) = outlay.at(bare.clone());
    let (with_one, m3_each) = outlay.at(Work {
        dead: 1,
        ..bare.clone()
    });
    let fronds = Need {
        now,
        not_before,
        after: after(rhythm, &season.weeks),
        hanging: hanging(rhythm, &season.weeks),
        minutes,
        minutes_each: with_one - minutes,
        m3_each,
        ..blank(Kind::Fronds, lift)
    };
    let stalks = bloom(record, office.today(), season.weeks.end).map(|now| {
        let (with_stalks, _) = outlay.at(Work {
            stalks: outlay.figures.mid("stalks-palm").round() as u32,
            ..bare
        });
        Need {
            now,
            not_before,
            minutes: with_stalks - minutes,
            missed: missed(&season.tariff, with_stalks),
            ..blank(Kind::Stalks, lift)
        }
    });
    Wish::Needs {
        fronds: Box::new(fronds),
        stalks: stalks.map(Box::new),
        unsure,
    }
}

fn blank(kind: Kind, lift: bool) -> Need {
    Need {
        kind,
        lift,
        now: DueWindow {
            earliest: None,
            latest: None,
        },
        after: Vec::new(),
        not_before: None,
        minutes: 0.0,
        minutes_each: 0.0,
        m3_each: 0.0,
        hanging: Vec::new(),
        missed: 0,
    }
}

enum Held {
    No,
    Until(Day),
    Open,
}

/// Whether and how long nobody may cut. A hold that the register has no last day for is open, and so is one that follows
/// from what was seen.
fn held(record: &PalmRecord, standing: &Standing, today: Day) -> Held {
    if standing.holds.is_empty() {
        return Held::No;
    }
    let set: Vec<Option<Day>> = record.holds_on(today).map(|hold| hold.until).collect();
    if set.len() < standing.holds.len() {
        return Held::Open;
    }
    let last = set.into_iter().collect::<Option<Vec<Day>>>();
    let last = last.and_then(|days| days.into_iter().max());
    last.map_or(Held::Open, Held::Until)
}

/// A window that opens after its limit is left open for a while: the forecast is too wide to say more.
fn sure(window: DueWindow) -> (DueWindow, bool) {
    let Some(earliest) = window.earliest else {
        return (window, false);
    };
    let unsure = window.latest.is_some_and(|latest| latest < earliest);
    let latest = match window.latest {
        Some(latest) if unsure => Some(latest.max(earliest.plus(UNSURE_DAYS))),
        latest => latest,
    };
    (DueWindow { latest, ..window }, unsure)
}

fn after(rhythm: &Rhythm, weeks: &Weeks) -> Vec<DueWindow> {
    let visited = weeks.days.iter().zip(&weeks.starts);
    visited
        .map(|(day, start)| sure(rhythm.after(day.unwrap_or(*start))).0)
        .collect()
}

fn hanging(rhythm: &Rhythm, weeks: &Weeks) -> Vec<f64> {
    let days: Vec<Day> = weeks
        .days
        .iter()
        .zip(&weeks.starts)
        .map(|(day, start)| day.unwrap_or(*start))
        .chain([weeks.end])
        .collect();
    let from = core::iter::once(None).chain(days[..days.len() - 1].iter().copied().map(Some));
    from.flat_map(|from| days.iter().map(move |on| (from, *on)))
        .map(|(from, on)| rhythm.hanging(from, on))
        .collect()
}

/// The end of bloom of date and fan palms, when one visit takes the stalks too [phoenix_area_flowering]; elsewhere than
/// there, and half a year later in the south, the months are assumed.
fn bloom(record: &PalmRecord, today: Day, end: Day) -> Option<DueWindow> {
    let last_month = match record.palm.species.split(' ').next() {
        Some("Phoenix") => 5,
        Some("Washingtonia") => 6,
        _ => return None,
    };
    let south = record.palm.position.is_some_and(|at| at.lat < 0.0);
    let month = if south { last_month + 6 } else { last_month };
    let (year, ..) = today.ymd();
    [year, year + 1].into_iter().find_map(|year| {
        let from = Day::from_ymd(year, month, 1)?;
        let to = Day::from_ymd(year, month + 1, 1)?.plus(AFTER_BLOOM - 1);
        (to >= today && from < end).then_some(DueWindow {
            earliest: Some(from.max(today)),
            latest: Some(to),
        })
    })
}

/// What stalks left on cost: coming to the palm for them alone, and a tenth of a trip (assumed).
fn missed(tariff: &Tariff, minutes: f64) -> i64 {
    (minutes / 60.0 * tariff.crew_hour as f64).round() as i64 + tariff.trip / 10
}

/// The next 1 June before the end, where storms of the Atlantic come (US National Hurricane Center: 1 June to 30 November,
/// from memory; the box from 7 to 46 degrees north and 10 to 100 west is assumed). Elsewhere no storm season is known.
fn storm_opens(at: Position, today: Day, end: Day) -> Option<Day> {
    if !((7.0..=46.0).contains(&at.lat) && (-100.0..=-10.0).contains(&at.lon)) {
        return None;
    }
    let (year, ..) = today.ymd();
    let opens = [year, year + 1]
        .into_iter()
        .filter_map(|y| Day::from_ymd(y, 6, 1));
    opens.into_iter().find(|day| (today..end).contains(day))
}
