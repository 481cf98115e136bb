//! Where the roots are and what water they can reach: the ball, later the ground around it.

use super::demand::crown_radius;
use super::{WaterCase, figure};
use crate::Settled;
use crate::water::adjusted_fraction;
use core::f64::consts::PI;
use model::knowledge::SoilRow;
use model::{Day, Span};

/// How far the roots have come.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum ZoneKind {
    /// Still in the ball.
    Ball,
    /// On their way out.
    Growing,
    /// Under all of the crown.
    Whole,
}

impl ZoneKind {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            ZoneKind::Ball => "ball",
            ZoneKind::Growing => "growing",
            ZoneKind::Whole => "whole",
        }
    }
}

/// Where the roots are and what they can reach.
#[derive(Clone, PartialEq, Debug)]
pub struct Zone {
    /// How far they have come.
    pub kind: ZoneKind,
    /// Ground above them, m²; `None`: not known.
    pub area_m2: Option<Span>,
    /// Their depth, m.
    pub depth_m: Span,
    /// Share of the soil's volume that is water they can take.
    pub held: Span,
    /// Share of that which may run down before want sets in.
    pub fraction: Span,
    /// All the water they can take, litres.
    pub total_l: Option<Span>,
    /// What they take without want, litres.
    pub ready_l: Option<Span>,
    /// How far the roots have come from the ball to the whole, 0 to 1.
    pub progress: Span,
}

/// Soils that count, and whether the site's stands for the ball's.
pub(super) struct Soils<'k> {
    rows: Vec<&'k SoilRow>,
    pub site_for_ball: bool,
}

impl Soils<'_> {
    pub fn is_unknown(&self) -> bool {
        self.rows.is_empty()
    }
}

/// The soil of the ball and, once roots leave it or where there is no ball, of the site.
pub(super) fn soils<'k>(case: &WaterCase<'_, 'k>) -> Soils<'k> {
    let moving = matches!(case.settled, Settled::NotYet { .. });
    let of = |key: &str| case.knowledge.soil(key.trim());
    let ball = case.moved.and_then(|m| of(&m.soil)).filter(|_| moving);
    let site = of(case.site_soil);
    let mut rows: Vec<&SoilRow> = ball.into_iter().collect();
    if ball.is_none() || progress(case, case.today).high > 0.0 {
        rows.extend(site.filter(|row| ball.is_none_or(|own| own.key != row.key)));
    }
    Soils {
        site_for_ball: moving && ball.is_none() && site.is_some(),
        rows,
    }
}

/// Whether the size of the ball counts and is not known.
pub(super) fn ball_unknown(case: &WaterCase) -> bool {
    let known = case
        .moved
        .is_some_and(|m| m.ball_radius.is_some() && m.ball_depth.is_some());
    matches!(case.settled, Settled::NotYet { .. }) && !known
}

/// How far the roots have come on a day: at the slowest they start late, at the fastest at once; both arrive together.
pub(super) fn progress(case: &WaterCase, day: Day) -> Span {
    let Settled::NotYet {
        moved_on,
        assumed_by,
    } = case.settled
    else {
        return Span::of(1.0);
    };
    let start = figure(case.knowledge, "roots-start");
    let (days, whole) = (
        f64::from(day.since(moved_on)),
        f64::from(assumed_by.since(moved_on)),
    );
    let share = |from: f64| ((days - from) / (whole - from)).clamp(0.0, 1.0);
    Span::between(share(start.high), share(start.low))
}

/// On a day, where the air takes so much through the crown (mm).
pub(super) fn on(case: &WaterCase, day: Day, need_mm: Span) -> Zone {
    let known = soils(case);
    let every: Vec<&SoilRow> = if known.is_unknown() {
        case.knowledge.soils.iter().collect()
    } else {
        known.rows
    };
    let hull = |of: fn(&SoilRow) -> Span| {
        let all = every.iter().map(|row| of(row));
        all.reduce(Span::hull).unwrap_or(Span::of(0.0))
    };
    let (held, shift) = (hull(|row| row.held), hull(|row| row.fraction_pct));
    let progress = progress(case, day);
    let (area_m2, depth_m) = room(case, progress);
    let fraction = fraction(case, need_mm, shift);
    let total_l = area_m2.map(|area| area.times(depth_m).times(held).scaled(1000.0));
    Zone {
        kind: match progress {
            p if p.low >= 1.0 => ZoneKind::Whole,
            p if p.low <= 0.0 => ZoneKind::Ball,
            _ => ZoneKind::Growing,
        },
        area_m2,
        depth_m,
        held,
        fraction,
        ready_l: total_l.map(|total| total.times(fraction)),
        total_l,
        progress,
    }
}

/// Area and depth: between those of the ball and those of the whole.
fn room(case: &WaterCase, progress: Span) -> (Option<Span>, Span) {
    let deep = Span::of(root_depth(case).low);
    let wide = crown_radius(case);
    if progress.low >= 1.0 {
        return (wide.map(disk), deep);
    }
    let (radius, depth) = ball(case);
    let grown = |from: Span, to: Span| Span {
        low: from.low + progress.low * (to.low - from.low).max(0.0),
        high: from.high + progress.high * (to.high - from.high).max(0.0),
    };
    let radius = wide.map_or(radius, |wide| grown(radius, wide));
    (Some(disk(radius)), grown(depth, deep))
}

fn disk(radius: Span) -> Span {
    radius.map(|r| PI * r * r)
}

/// Radius from the middle of the trunk, and depth.
fn ball(case: &WaterCase) -> (Span, Span) {
    let fact = |key| figure(case.knowledge, key);
    let radius = case.moved.and_then(|m| m.ball_radius);
    let depth = case.moved.and_then(|m| m.ball_depth);
    let out = radius.map_or(fact("ball-radius-unknown"), |m| Span::of(m.0));
    let trunk = case.species.and_then(|s| s.trunk_diameter.as_ref());
    let trunk = trunk.map_or(Span::of(0.0), |largest| {
        fact("trunk-of-largest").scaled(largest.value.0 / 2.0)
    });
    let depth = depth.map_or(fact("ball-depth-unknown"), |m| Span::of(m.0));
    (out.plus(trunk), depth)
}

fn is_date(case: &WaterCase) -> bool {
    case.species
        .is_some_and(|s| s.name == "Phoenix dactylifera")
}

fn root_depth(case: &WaterCase) -> Span {
    let key = if is_date(case) {
        "root-depth-date"
    } else {
        "root-depth-palm"
    };
    figure(case.knowledge, key)
}

/// Table 22, shifted by the soil, adjusted to the day's need. Less may run down where more is needed.
fn fraction(case: &WaterCase, need_mm: Span, shift_pct: Span) -> Span {
    let key = if is_date(case) {
        "depletion-date"
    } else {
        "depletion-palm"
    };
    let table = figure(case.knowledge, key);
    let at = |fraction: f64, pct: f64, need: f64| {
        adjusted_fraction(fraction * (1.0 + pct / 100.0), need)
    };
    Span::between(
        at(table.low, shift_pct.low, need_mm.high),
        at(table.high, shift_pct.high, need_mm.low),
    )
}
