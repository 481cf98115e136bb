//! Feather fronds: leaflets along a midrib; twice feathered ones carry small fronds with wedges.

use super::frond::{LENGTH, Leaf, Midrib, Pose, bend};
use super::path::Pen;
use super::space::{Frame, V3, hang};
use model::math;

const LEAFLETS: usize = 30;
const PINNAE: usize = 9;
const WEDGES: usize = 6;

/// A feather frond.
pub fn pinnate(pose: &Pose) -> Leaf {
    let rib = Midrib::bent(pose, LENGTH, bend(pose, 78.0));
    let mut pen = Pen::default();
    for i in 0..LEAFLETS {
        let s = 0.13 + 0.86 * (i as f64 + 0.5) / LEAFLETS as f64;
        for sign in [-1.0, 1.0] {
            leaflet(&mut pen, &rib, s, sign, pose.limp);
        }
    }
    let (base, frame) = rib.at(0.96);
    pen.blade(
        base,
        base + frame.along * 40.0,
        base + frame.along * 90.0,
        frame.ray(1.57, 1.0, 0.0) * 8.0,
    );
    Leaf {
        blade: pen.done(),
        rib: rib.stroke(1.0),
        veins: String::new(),
        stubs: rib.stubs(),
    }
}

fn leaflet(pen: &mut Pen, rib: &Midrib, s: f64, sign: f64, limp: bool) {
    let (base, frame) = rib.at(s);
    // short at both ends, longest a third of the way out
    let length =
        LENGTH * 0.31 * math::pow(math::sin((0.10 + 0.88 * s) * std::f64::consts::PI), 0.6);
    let angle = (70.0 - 42.0 * s - if limp { 14.0 } else { 0.0 }).to_radians();
    let out = frame.ray(angle, sign, if limp { -0.5 } else { 0.22 });
    let weight = if limp { 1.1 } else { 0.85 };
    let middle = base + hang(out, weight * 0.3) * (length * 0.5);
    let tip = middle + hang(out, weight) * (length * 0.5);
    pen.blade(
        base,
        middle,
        tip,
        frame.along * if limp { 10.0 } else { 12.0 },
    );
}

/// A fishtail frond.
pub fn bipinnate(pose: &Pose) -> Leaf {
    let rib = Midrib::bent(pose, LENGTH, bend(pose, 60.0));
    let (mut blade, mut veins) = (Pen::default(), Pen::default());
    for i in 0..PINNAE {
        let s = 0.22 + 0.74 * (i as f64 + 0.5) / PINNAE as f64;
        for sign in [-1.0, 1.0] {
            pinna(&mut blade, &mut veins, &rib, s, sign, pose.limp);
        }
    }
    Leaf {
        blade: blade.done(),
        rib: rib.stroke(1.0),
        veins: veins.done(),
        stubs: rib.stubs(),
    }
}

fn pinna(blade: &mut Pen, veins: &mut Pen, rib: &Midrib, s: f64, sign: f64, limp: bool) {
    let (base, frame) = rib.at(s);
    let length =
        LENGTH * 0.32 * math::pow(math::sin((0.12 + 0.80 * s) * std::f64::consts::PI), 0.6);
    let out = frame.ray((66.0 - 26.0 * s).to_radians(), sign, 0.15);
    let weight = if limp { 1.5 } else { 0.45 };
    let along = |q: f64| base + hang(out, weight * q) * (length * q);
    veins.start(base);
    veins.curve(along(0.5), along(1.0));
    for k in 1..=WEDGES {
        let q = k as f64 / WEDGES as f64;
        let side = if k % 2 == 0 { 1.0 } else { -1.0 };
        wedge(
            blade,
            along(q),
            hang(out, weight * q),
            &frame,
            side,
            length * 0.30,
        );
    }
}

/// A leaflet like a fish's tail: narrow at its base, torn at its wide end.
fn wedge(pen: &mut Pen, base: V3, out: V3, frame: &Frame, side: f64, length: f64) {
    let across = (frame.along * side + out * 0.2).unit();
    let end = base + hang(out + across * 0.8, 0.3) * length;
    let wide = (across - out * 0.5).unit() * (length * 0.34);
    pen.start(base);
    pen.line(end - wide);
    pen.line(end - wide * 0.25 + (end - base) * 0.16);
    pen.line(end + wide * 0.2);
    pen.line(end + wide * 0.7 + (end - base) * 0.22);
    pen.line(end + wide);
    pen.close();
}
