//! What hangs on the hook: ball, trunk and crown as ranges, and what is not known.

use super::{Ball, Dig, Ground};
use model::Metres;
use model::knowledge::{MoveTopic, MoveWhen, TransplantRow};
use model::species::Range;

/// A mass as a range, with the rows its figures come from.
#[derive(Clone, PartialEq, Debug)]
pub struct Mass<'k> {
    /// Least, kg.
    pub low: f64,
    /// Most, kg.
    pub high: f64,
    /// Rows behind it.
    pub rows: Vec<&'k TransplantRow>,
}

/// What hangs on the hook.
#[derive(Clone, PartialEq, Debug)]
pub struct Load<'k> {
    /// Root ball; the trunk's foot in it counts as soil.
    pub ball: Option<Mass<'k>>,
    /// Trunk above ground.
    pub trunk: Option<Mass<'k>>,
    /// Fronds.
    pub crown: Option<Mass<'k>>,
    /// Sum of what is known, kg; `None` if nothing is.
    pub total: Option<(f64, f64)>,
    /// Codes of what is missing: the sum is then too small.
    pub missing: Vec<&'static str>,
}

/// All codes of [`Load::missing`].
pub const MISSING: [&str; 6] = [
    "load-no-diameter",
    "load-no-height",
    "load-several-trunks",
    "load-no-fronds",
    "load-no-frond-length",
    "load-ground-unknown",
];

/// The load of a palm with its ball.
pub fn load<'k>(dig: &Dig<'k>, ball: &Ball) -> Load<'k> {
    let mut missing = Vec::new();
    let ball = earth(dig, ball, &mut missing);
    let trunk = trunk(dig, &mut missing);
    let crown = crown(dig, &mut missing);
    let parts: Vec<&Mass> = [&ball, &trunk, &crown].into_iter().flatten().collect();
    let total = (!parts.is_empty()).then(|| {
        let sum = |of: fn(&Mass) -> f64| parts.iter().map(|part| of(part)).sum();
        (sum(|part| part.low), sum(|part| part.high))
    });
    Load {
        ball,
        trunk,
        crown,
        total,
        missing,
    }
}

fn earth<'k>(dig: &Dig<'k>, ball: &Ball, missing: &mut Vec<&'static str>) -> Option<Mass<'k>> {
    let Some(volume) = ball.volume_m3 else {
        missing.push("load-no-diameter");
        return None;
    };
    if dig.ground == Ground::Unknown {
        missing.push("load-ground-unknown");
    }
    let fits = |row: &TransplantRow| match dig.ground {
        Ground::Unknown => true,
        Ground::Earth => row.when == MoveWhen::Earth,
        Ground::Sand => row.when == MoveWhen::Sand,
    };
    times(dig, MoveTopic::SoilDensity, fits, volume)
}

fn trunk<'k>(dig: &Dig<'k>, missing: &mut Vec<&'static str>) -> Option<Mass<'k>> {
    if dig.stems > 1 {
        missing.push("load-several-trunks");
        return None;
    }
    let Some(Metres(height)) = dig.trunk_height else {
        missing.push("load-no-height");
        return None;
    };
    let half = dig.diameter?.0 / 2.0;
    let volume = core::f64::consts::PI * half * half * height;
    times(dig, MoveTopic::TrunkDensity, |_| true, volume)
}

fn crown<'k>(dig: &Dig<'k>, missing: &mut Vec<&'static str>) -> Option<Mass<'k>> {
    let Some(fronds) = dig.fronds else {
        missing.push("load-no-fronds");
        return None;
    };
    let Some(length) = frond_length(dig) else {
        missing.push("load-no-frond-length");
        return None;
    };
    let metres = f64::from(fronds) * length;
    times(dig, MoveTopic::FrondMass, |_| true, metres)
}

/// The longest frond that descriptions of the species give, m.
fn frond_length(dig: &Dig) -> Option<f64> {
    let species = dig.species?;
    let whole = species.leaf_length.as_ref().map(|l| l.value.0);
    let parts = || {
        let rachis = species.rachis_length.as_ref()?.value.0;
        Some(rachis + species.petiole_length.as_ref().map_or(0.0, |p| p.value.0))
    };
    whole.or_else(parts)
}

/// The widest range that the rows give, times an amount.
fn times<'k>(
    dig: &Dig<'k>,
    topic: MoveTopic,
    fits: impl Fn(&TransplantRow) -> bool,
    amount: f64,
) -> Option<Mass<'k>> {
    let rows: Vec<&TransplantRow> = dig.knowledge.moving(topic).filter(|r| fits(r)).collect();
    let figures: Vec<Range> = rows.iter().filter_map(|row| row.figure).collect();
    let lows = figures.iter().map(|f| f.low.unwrap_or(f.high));
    let highs = figures.iter().map(|f| f.high);
    Some(Mass {
        low: lows.min_by(f64::total_cmp)? * amount,
        high: highs.max_by(f64::total_cmp)? * amount,
        rows,
    })
}
