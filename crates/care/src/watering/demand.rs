//! How much of what the air takes from grass the palm takes: factors and their conflict, the ground under its crown, the
//! share of its crown that is there.

use super::{WaterCase, figure};
use crate::Settled;
use core::f64::consts::PI;
use model::knowledge::{FactorKind, FactorRow};
use model::{Span, math};

/// What becomes of a factor.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Use {
    /// Used.
    Used,
    /// For tubs only.
    Container,
    /// For another air than here.
    OtherAir,
    /// Its figure is not known.
    NoFigure,
    /// A row for the species stands in its place.
    Narrower,
}

impl Use {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Use::Used => "used",
            Use::Container => "container",
            Use::OtherAir => "other-air",
            Use::NoFigure => "no-figure",
            Use::Narrower => "narrower",
        }
    }
}

/// A factor and what becomes of it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FactorUse<'k> {
    /// The row.
    pub row: &'k FactorRow,
    /// What becomes of it.
    pub used: Use,
}

/// All factors that speak of this palm, with what becomes of each.
pub(super) fn factors<'k>(case: &WaterCase<'_, 'k>) -> Vec<FactorUse<'k>> {
    let name = case.species.map_or("", |s| s.name.as_str());
    let own_crop = case
        .knowledge
        .factors
        .iter()
        .any(|row| row.species.as_deref() == Some(name) && row.kind == FactorKind::Crop);
    let moist = moist_air(case);
    case.knowledge
        .factors
        .iter()
        .filter(|row| row.species.as_deref().is_none_or(|own| own == name))
        .map(|row| FactorUse {
            row,
            used: fate(row, own_crop, moist, case.coastal),
        })
        .collect()
}

fn fate(row: &FactorRow, own_crop: bool, moist: Option<bool>, coastal: Option<bool>) -> Use {
    if row.kind == FactorKind::Container {
        return Use::Container;
    }
    if row.factor.is_none() {
        return Use::NoFigure;
    }
    if row.kind == FactorKind::Crop && row.species.is_none() && own_crop {
        return Use::Narrower;
    }
    let here = match row.air.as_str() {
        "dry" => moist != Some(true),
        "moist" => moist != Some(false),
        "coast" => coastal != Some(false),
        "inland" => coastal != Some(true),
        "desert" => false,
        _ => true,
    };
    if here { Use::Used } else { Use::OtherAir }
}

/// Whether the air is moist, by the mean humidity of the days that have it; `None`: not measured.
fn moist_air(case: &WaterCase) -> Option<bool> {
    let known: Vec<f64> = case.weather.values().filter_map(|w| w.humidity).collect();
    let mean = known.iter().sum::<f64>() / known.len() as f64;
    (!known.is_empty()).then(|| mean >= figure(case.knowledge, "moist-air").low)
}

/// The stretch of the factors that are used.
pub(super) fn used(factors: &[FactorUse]) -> Span {
    let used = factors.iter().filter(|f| f.used == Use::Used);
    used.filter_map(|f| f.row.factor)
        .reduce(Span::hull)
        .unwrap_or(Span::of(1.0))
}

/// Ground under the crown, m²: as measured across, else by the length of a frond.
pub fn crown_area(case: &WaterCase) -> Option<Span> {
    let radius = crown_radius(case)?;
    Some(radius.map(|r| PI * r * r))
}

/// From the trunk to the edge of the crown, m.
pub(super) fn crown_radius(case: &WaterCase) -> Option<Span> {
    if let Some(across) = case.crown_across {
        return Some(Span::of(across.0 / 2.0));
    }
    let frond = case.species?.leaf_length.as_ref()?.value;
    Some(figure(case.knowledge, "crown-reach").scaled(frond.0))
}

/// Share of a full crown's need that the crown as it stands has. A crown that nobody counted may be full or, after a
/// move, anything.
pub(super) fn crown_draws(case: &WaterCase) -> Span {
    let share = match (case.crown_share, case.settled) {
        (Some(share), _) => share.clamp(0.0, 1.0),
        (None, Settled::NotYet { .. }) => Span::between(0.0, 1.0),
        (None, _) => Span::of(1.0),
    };
    let power = figure(case.knowledge, "leaf-power");
    Span {
        low: math::pow(share.low, power.high),
        high: math::pow(share.high, power.low),
    }
}
