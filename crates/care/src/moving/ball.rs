//! The root ball: what is said of its size, and the size to plan with.

use super::Dig;
use model::Metres;
use model::knowledge::{MovePalm, MoveTopic, TransplantRow};
use model::species::Range;

/// A trunk from here on counts as unusually tall, m (assumed: the source says "unusually tall or large").
pub const TALL: Metres = Metres(12.0);

/// One figure of a source.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Claim<'k> {
    /// The row.
    pub row: &'k TransplantRow,
    /// The figure in metres.
    pub size: Range,
}

/// The root ball.
#[derive(Clone, PartialEq, Debug)]
pub struct Ball<'k> {
    /// What is said of its radius, from the trunk's surface outward.
    pub radius: Vec<Claim<'k>>,
    /// What is said of its depth.
    pub depth: Vec<Claim<'k>>,
    /// Remarks on roots, and on whether a young one may be dug.
    pub remarks: Vec<&'k TransplantRow>,
    /// The radius to plan with: the keeper's, else the largest that is said.
    pub plan_radius: Option<Metres>,
    /// The depth to plan with, likewise.
    pub plan_depth: Option<Metres>,
    /// The figures for radius or for depth differ.
    pub conflict: bool,
    /// The keeper's own figure is smaller than what every source asks for.
    pub below_all: bool,
    /// Volume of the cylinder, trunk included, m³; `None` while the trunk's diameter is not known.
    pub volume_m3: Option<f64>,
}

/// The root ball of a palm that is to be dug.
pub fn ball<'k>(dig: &Dig<'k>) -> Ball<'k> {
    let radius = claims(dig, MoveTopic::BallRadius);
    let depth = claims(dig, MoveTopic::BallDepth);
    let plan_radius = dig.radius.or(largest(&radius));
    let plan_depth = dig.depth.or(largest(&depth));
    let below = |own: Option<Metres>, claims: &[Claim]| {
        own.is_some_and(|own| !claims.is_empty() && claims.iter().all(|c| own.0 < least(c)))
    };
    Ball {
        conflict: differ(&radius) || differ(&depth),
        below_all: below(dig.radius, &radius) || below(dig.depth, &depth),
        remarks: remarks(dig),
        volume_m3: volume(dig.diameter, plan_radius, plan_depth),
        radius,
        depth,
        plan_radius,
        plan_depth,
    }
}

/// A cylinder round the trunk, its edge `radius` out from the trunk's surface.
fn volume(diameter: Option<Metres>, radius: Option<Metres>, depth: Option<Metres>) -> Option<f64> {
    let out = diameter?.0 / 2.0 + radius?.0;
    Some(core::f64::consts::PI * out * out * depth?.0)
}

/// Rows that name the species, else those for palms in general; a palm of several stems or an unusually tall one gets
/// the row for those as well.
fn claims<'k>(dig: &Dig<'k>, topic: MoveTopic) -> Vec<Claim<'k>> {
    let rows = |wanted: &dyn Fn(&TransplantRow) -> bool| -> Vec<Claim<'k>> {
        dig.knowledge
            .moving(topic)
            .filter(|row| wanted(row))
            .filter_map(claim)
            .collect()
    };
    let mut own = rows(&|row| row.names(dig.name()));
    let large = dig.stems > 1 || dig.trunk_height.is_some_and(|h| h.0 >= TALL.0);
    if own.is_empty() && !large {
        own = rows(&|row| row.palm == MovePalm::Single);
    }
    if large {
        own.extend(rows(&|row| row.palm == MovePalm::Several));
    }
    own
}

fn claim(row: &TransplantRow) -> Option<Claim<'_>> {
    let figure = row.figure?;
    let metres = |cm: f64| cm / 100.0;
    Some(Claim {
        row,
        size: Range {
            low: figure.low.map(metres),
            high: metres(figure.high),
        },
    })
}

fn least(claim: &Claim) -> f64 {
    claim.size.low.unwrap_or(claim.size.high)
}

fn largest(claims: &[Claim]) -> Option<Metres> {
    let sizes = claims.iter().map(|c| c.size.high);
    sizes.max_by(f64::total_cmp).map(Metres)
}

fn differ(claims: &[Claim]) -> bool {
    claims.iter().any(|c| c.size != claims[0].size)
}

fn remarks<'k>(dig: &Dig<'k>) -> Vec<&'k TransplantRow> {
    [MoveTopic::Young, MoveTopic::Roots, MoveTopic::TopRoots]
        .into_iter()
        .flat_map(|topic| dig.knowledge.moving(topic))
        .filter(|row| row.names(dig.name()))
        .collect()
}
