//! Factors on the disorders from species, season, move, frost and storm.

use super::answer::Evidence;
use super::tables::{MOVED, THE_MOVE, Tables};
use super::weights::Weights;
use model::Day;
use model::knowledge::{DisorderRow, Family, HostKind};

/// Within so many degrees of the equator there are no seasons (as in the crown model, assumed).
const TROPICS: f64 = 15.0;

/// Kinds of factors, in the order of [`Factors::by_kind`].
pub(super) const KINDS: usize = 5;

/// One factor for each disorder, by kind: host, season, move, frost, storm.
pub(super) struct Factors {
    pub by_kind: [Vec<f64>; KINDS],
}

impl Factors {
    pub fn of(tables: &Tables, evidence: &Evidence) -> Factors {
        let all = |factor: &dyn Fn(usize) -> f64| (0..tables.troubles.len()).map(factor).collect();
        let season = season(evidence);
        let moved = Moved::of(evidence);
        let w = &tables.weights;
        let frost = since(evidence, evidence.frost_on);
        let frost = frost.map(|days| fading(days, w.frost_fresh_days, w.frost_gone_days));
        let storm = since(evidence, evidence.storm_on);
        let storm = storm.map(|days| fading(days, w.storm_fresh_days, w.storm_gone_days));
        let of_season = |k: usize| season.map_or(1.0, |s| tables.circumstances[k].season[s]);
        Factors {
            by_kind: [
                all(&|k| host(tables.troubles[k], evidence, w)),
                all(&of_season),
                all(&|k| moved.factor(tables.troubles[k], tables.circumstances[k].after[0], w)),
                all(&|k| weather(tables, k, tables.circumstances[k].after[1], frost)),
                all(&|k| weather(tables, k, tables.circumstances[k].after[2], storm)),
            ],
        }
    }

    /// Product of all kinds but one.
    pub fn without(&self, kind: Option<usize>, trouble: usize) -> f64 {
        (0..KINDS)
            .filter(|k| Some(*k) != kind)
            .map(|k| self.by_kind[k][trouble])
            .product()
    }

    /// Whether a kind says anything.
    pub fn speaks(&self, kind: usize) -> bool {
        self.by_kind[kind].iter().any(|f| *f != 1.0)
    }
}

/// The botanical name to go by: of the row, else as written.
fn name<'a>(evidence: &Evidence<'a>) -> &'a str {
    let written = evidence.species_name.trim();
    evidence.species.map_or(written, |row| row.name.as_str())
}

fn genus(name: &str) -> &str {
    name.split_whitespace().next().unwrap_or("")
}

/// Species before genus before all palms; then relatives, unknown palms, and those that are no hosts.
fn host(trouble: &DisorderRow, evidence: &Evidence, w: &Weights) -> f64 {
    let name = name(evidence);
    let own = genus(name);
    let kind = |wanted: &str| {
        trouble
            .hosts
            .iter()
            .find(|h| h.name.eq_ignore_ascii_case(wanted))
    };
    let listed = [name, own, "*"].into_iter().filter(|n| !n.is_empty());
    if let Some(host) = listed.into_iter().find_map(kind) {
        return match host.kind {
            HostKind::Prone => w.host_prone,
            HostKind::Known => w.host_known,
            HostKind::Reported => w.host_reported,
        };
    }
    let related = !own.is_empty()
        && trouble
            .hosts
            .iter()
            .any(|h| genus(&h.name).eq_ignore_ascii_case(own));
    match (evidence.species.is_some(), related) {
        (true, true) => w.host_relative,
        (true, false) => w.host_none,
        (false, _) => w.host_unknown,
    }
}

/// Winter, spring, summer, autumn as the northern half of the world counts them; `None`: unknown, or no seasons there.
fn season(evidence: &Evidence) -> Option<usize> {
    let latitude = evidence.latitude.unwrap_or(45.0);
    if latitude.abs() <= TROPICS {
        return None;
    }
    let month = evidence.on?.ymd().1;
    let month = if latitude < 0.0 {
        (month + 5) % 12 + 1
    } else {
        month
    };
    Some(usize::from((month % 12 / 3).unsigned_abs()))
}

/// Days since a day that has come; `None`: unknown.
fn since(evidence: &Evidence, day: Option<Day>) -> Option<f64> {
    let days = evidence.on?.since(day?);
    (days >= 0).then(|| f64::from(days))
}

/// 1 up to `fresh` days, falling to 0 at `gone`.
fn fading(days: f64, fresh: f64, gone: f64) -> f64 {
    between(days, (fresh, 1.0), (gone, 0.0))
}

/// On the line from one point to the other; level beyond both.
fn between(x: f64, from: (f64, f64), to: (f64, f64)) -> f64 {
    if x <= from.0 {
        from.1
    } else if x >= to.0 {
        to.1
    } else {
        from.1 + (to.1 - from.1) * (x - from.0) / (to.0 - from.0)
    }
}

/// The move or the planting, whichever was later.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) enum Moved {
    /// Never, as far as is told.
    Never,
    /// Once; nobody knows how long ago.
    Undated,
    /// Within about a year, as a sign says.
    Lately,
    /// So many days ago.
    Days(f64),
}

impl Moved {
    pub fn of(evidence: &Evidence) -> Moved {
        let days = [evidence.moved_on, evidence.planted_on]
            .into_iter()
            .flatten();
        let told = |keys: &[String]| keys.iter().any(|key| key == MOVED);
        let lately = told(evidence.seen) && !told(evidence.absent);
        let Some(on) = evidence.on else {
            return match days.count() {
                0 if lately => Moved::Lately,
                0 => Moved::Never,
                _ => Moved::Undated,
            };
        };
        // a move still to come has moved nothing yet
        match days.filter(|day| *day <= on).max() {
            Some(day) => Moved::Days(f64::from(on.since(day))),
            None if lately => Moved::Lately,
            None => Moved::Never,
        }
    }

    /// Whether the shedding after a move is what the counts show anyway.
    pub fn recently(self, w: &Weights) -> bool {
        match self {
            Moved::Lately => true,
            Moved::Days(days) => days < w.move_established_days,
            Moved::Never | Moved::Undated => false,
        }
    }

    /// How much of the move is left, 0..=1.
    fn left(self, w: &Weights) -> f64 {
        match self {
            Moved::Never => 0.0,
            Moved::Lately => 1.0,
            Moved::Undated => w.move_undated,
            Moved::Days(days) if days <= w.move_established_days => between(
                days,
                (w.move_fresh_days, 1.0),
                (w.move_established_days, w.move_established),
            ),
            Moved::Days(days) => between(
                days,
                (w.move_established_days, w.move_established),
                (w.move_settled_days, 0.0),
            ),
        }
    }

    fn factor(self, trouble: &DisorderRow, after: Option<f64>, w: &Weights) -> f64 {
        if trouble.key == THE_MOVE {
            return after.unwrap_or(1.0) * self.left(w);
        }
        let drawn = after.map_or(1.0, |f| 1.0 + (f - 1.0) * self.left(w));
        drawn
            * if trouble.family == Family::Nutrient {
                self.hunger(trouble, w)
            } else {
                1.0
            }
    }

    /// Hunger takes its time to show after a move.
    fn hunger(self, trouble: &DisorderRow, w: &Weights) -> f64 {
        let Moved::Days(days) = self else {
            return 1.0;
        };
        let known = |days: Option<u32>| days.map(f64::from);
        let from = known(trouble.latency.min).unwrap_or(w.hunger_latency_days);
        let to = known(trouble.latency.max).unwrap_or(from + w.hunger_rise_days);
        between(days, (from, w.hunger_just_moved), (to.max(from + 1.0), 1.0))
    }
}

/// `left`: how much of the last such weather still counts; `None`: unknown, which is not "there was none".
fn weather(tables: &Tables, k: usize, after: Option<f64>, left: Option<f64>) -> f64 {
    let (Some(factor), Some(left)) = (after, left) else {
        return 1.0;
    };
    let without = if tables.troubles[k].family == Family::Surroundings {
        tables.weights.weather_long_ago
    } else {
        1.0
    };
    without + (factor - without) * left
}
