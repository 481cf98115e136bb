//! The trunk, the crownshaft, the ground and the spear.

use super::path::Pen;
use super::space::V3;
use super::{Look, PAPER};
use model::{Metres, Spear};

/// The spear's path and how it stands.
#[derive(Clone, PartialEq, Debug)]
pub struct Spine {
    /// Filled path, upright.
    pub path: String,
    /// Degrees it is turned out of the vertical.
    pub turn: i32,
    /// Drawn as missing: it came out when pulled.
    pub gone: bool,
}

/// What carries the crown.
#[derive(Clone, PartialEq, Debug)]
pub struct Stem {
    /// Outline of the trunk.
    pub trunk: String,
    /// Rings or leaf bases on it, stroked.
    pub marks: String,
    /// Whether the marks are old leaf bases (else rings).
    pub boots: bool,
    /// Outline of the crownshaft, if the palm has one.
    pub shaft: Option<String>,
    /// Height of the ground line, if it is in the picture.
    pub ground: Option<i32>,
    /// The spear.
    pub spear: Spine,
}

/// Draws what carries the crown.
pub fn draw(look: &Look) -> Stem {
    let scale = super::frond::LENGTH / look.frond.map_or(3.0, |m| m.0.max(0.3));
    let half = look
        .thick
        .map_or(48.0, |m| (m.0 * scale / 2.0).clamp(26.0, 95.0));
    let top = if look.crownshaft { 250.0 } else { 10.0 };
    let foot = look
        .trunk
        .map(|Metres(m)| top + m * scale)
        .filter(|&y| y < PAPER.2 - 60.0);
    // hanging fronds must not end in the ground: a shorter trunk is drawn this long, its label says how long it is
    let foot = foot.map(|y| y.max(PAPER.2 - 140.0));
    let bottom = foot.unwrap_or(PAPER.2);
    Stem {
        trunk: trunk(half, top, bottom, foot.is_some()),
        marks: if look.boots {
            boots(half, top, bottom)
        } else {
            rings(half, top, bottom)
        },
        boots: look.boots,
        shaft: look.crownshaft.then(|| shaft(half, top)),
        ground: foot.map(|y| y as i32),
        spear: spear(look.spear),
    }
}

fn trunk(half: f64, top: f64, bottom: f64, on_ground: bool) -> String {
    let mut pen = Pen::default();
    let foot = half * if on_ground { 1.35 } else { 1.0 };
    let near = bottom - (bottom - top).min(90.0);
    pen.start(V3(-half, top, 0.0));
    pen.line(V3(-half * 0.96, near, 0.0));
    pen.curve(V3(-half, bottom - 20.0, 0.0), V3(-foot, bottom, 0.0));
    pen.curve(V3(0.0, bottom + 14.0, 0.0), V3(foot, bottom, 0.0));
    pen.curve(V3(half, bottom - 20.0, 0.0), V3(half * 0.96, near, 0.0));
    pen.line(V3(half, top, 0.0));
    pen.close();
    pen.done()
}

fn rings(half: f64, top: f64, bottom: f64) -> String {
    let mut pen = Pen::default();
    let mut y = top + 26.0;
    let mut i = 0;
    while y < bottom - 12.0 {
        pen.start(V3(-half, y, 0.0));
        pen.curve(V3(0.0, y + 13.0, 0.0), V3(half, y - 2.0, 0.0));
        y += 30.0 + f64::from(i * 7 % 5) * 2.0;
        i += 1;
    }
    pen.done()
}

/// Old leaf bases: a lattice of crossing spirals.
fn boots(half: f64, top: f64, bottom: f64) -> String {
    let mut pen = Pen::default();
    let cell = (half * 0.62).max(26.0);
    let mut y = top - 2.0 * half;
    while y < bottom {
        for (from, to) in [(-half, half), (half, -half)] {
            let (a, b) = (V3(from, y, 0.0), V3(to, y + 1.7 * half, 0.0));
            let (a, b) = (clip(a, b, top), clip(b, a, bottom));
            pen.start(a);
            pen.curve((a + b) * 0.5 + V3(0.0, 6.0, 0.0), b);
        }
        y += cell;
    }
    pen.done()
}

/// `p` moved along the line to `q` until it is level with `y`, if it lies beyond it.
fn clip(p: V3, q: V3, y: f64) -> V3 {
    let beyond = (p.1 - y) * (q.1 - y) < 0.0;
    if beyond {
        p + (q - p) * ((y - p.1) / (q.1 - p.1))
    } else {
        p
    }
}

fn shaft(half: f64, top: f64) -> String {
    let mut pen = Pen::default();
    let (slim, full) = (half * 0.55, half * 1.22);
    pen.start(V3(-slim, -30.0, 0.0));
    pen.curve(V3(-full * 0.8, top * 0.45, 0.0), V3(-full, top * 0.8, 0.0));
    pen.curve(V3(-full, top + 4.0, 0.0), V3(-half * 1.02, top + 10.0, 0.0));
    pen.curve(V3(0.0, top + 26.0, 0.0), V3(half * 1.02, top + 10.0, 0.0));
    pen.curve(V3(full, top + 4.0, 0.0), V3(full, top * 0.8, 0.0));
    pen.curve(V3(full * 0.8, top * 0.45, 0.0), V3(slim, -30.0, 0.0));
    pen.close();
    pen.done()
}

fn spear(state: Option<Spear>) -> Spine {
    let mut pen = Pen::default();
    pen.blade(
        V3(0.0, 10.0, 0.0),
        V3(0.0, -330.0, 0.0),
        V3(4.0, -700.0, 0.0),
        V3(22.0, 0.0, 0.0),
    );
    let turn = match state {
        None | Some(Spear::Firm | Spear::Pulled) => 0,
        Some(Spear::Leaning) => 34,
        Some(Spear::Down) => 118,
    };
    Spine {
        path: pen.done(),
        turn,
        gone: state == Some(Spear::Pulled),
    }
}
