//! Fan fronds: a petiole and a pleated blade whose segments run out into hanging tips.

use super::frond::{LENGTH, Leaf, Midrib, Pose, bend};
use super::path::Pen;
use super::space::{Frame, V3, hang};
use model::math;

const SEGMENTS: i32 = 17;

/// The blade of a fan: how wide it opens, how far it is joined, how its rib runs into it.
struct Fan {
    /// Share of the frond that is petiole.
    petiole: f64,
    /// Half the opening, radians.
    open: f64,
    /// Share of a segment that is joined to its neighbours.
    joined: f64,
    /// How far the midrib runs into the blade, share of the frond.
    costa: f64,
    /// Fold of the two halves towards each other, radians.
    fold: f64,
    /// Bend of the midrib from end to end, degrees.
    bend: f64,
}

/// A fan with all segments from one point.
pub fn palmate(pose: &Pose) -> Leaf {
    fan(
        pose,
        &Fan {
            petiole: 0.50,
            open: 2.05,
            joined: 0.62,
            costa: 0.02,
            fold: 0.22,
            bend: 40.0,
        },
    )
}

/// A fan with a midrib that runs on into the blade and arches it.
pub fn costapalmate(pose: &Pose) -> Leaf {
    fan(
        pose,
        &Fan {
            petiole: 0.44,
            open: 1.75,
            joined: 0.55,
            costa: 0.30,
            fold: 0.45,
            bend: 78.0,
        },
    )
}

fn fan(pose: &Pose, fan: &Fan) -> Leaf {
    let rib = Midrib::bent(pose, LENGTH, bend(pose, fan.bend));
    let (mut blade, mut veins) = (Pen::default(), Pen::default());
    for i in -SEGMENTS..=SEGMENTS {
        segment(
            &mut blade,
            &mut veins,
            &rib,
            fan,
            f64::from(i) / f64::from(SEGMENTS),
            pose.limp,
        );
    }
    Leaf {
        blade: blade.done(),
        rib: rib.stroke(fan.petiole + fan.costa),
        veins: veins.done(),
        stubs: rib.stubs(),
    }
}

/// One segment; `q` runs from -1 (one edge) through 0 (middle) to 1 (other edge).
fn segment(blade: &mut Pen, veins: &mut Pen, rib: &Midrib, fan: &Fan, q: f64, limp: bool) {
    // the middle segments leave the rib last
    let (base, frame) = rib.at(fan.petiole + fan.costa * (1.0 - q.abs()));
    let open = fan.open * if limp { 0.45 } else { 1.0 };
    // what the rib has run already is not run again by the segment; a dead blade is folded up and shrunken
    let run = 0.75 * fan.costa * (1.0 - q.abs());
    let length =
        LENGTH * ((1.0 - fan.petiole) * (1.02 - 0.30 * q * q) - run) * if limp { 0.8 } else { 1.0 };
    let half = 1.15 * open / f64::from(2 * SEGMENTS);
    let weight = if limp { 1.3 } else { 0.12 };
    let out = |turn: f64| direction(&frame, q * open + turn, fan.fold);
    let mid = |turn: f64| base + hang(out(turn), weight * 0.5) * (length * fan.joined);
    let tip = mid(0.0) + hang(out(0.0), weight + 0.5) * (length * (1.0 - fan.joined));
    blade.start(base);
    blade.line(mid(-half));
    blade.curve(mid(-half * 0.4) + out(0.0) * (length * 0.1), tip);
    blade.curve(mid(half * 0.4) + out(0.0) * (length * 0.1), mid(half));
    blade.close();
    veins.start(base);
    veins.line(mid(0.0));
}

fn direction(frame: &Frame, angle: f64, fold: f64) -> V3 {
    let sign = if angle < 0.0 { -1.0 } else { 1.0 };
    frame.ray(angle.abs(), sign, fold * math::cos(angle).max(0.0) + 0.05)
}
