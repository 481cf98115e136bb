//! Fronds on paper: which shape, where, in which order, in which colour.

use super::frond::{Leaf, Pose, leaf};
use crown::{Picture, PictureFrond, Tint};
use model::math;
use model::species::LeafForm;
use std::collections::BTreeMap;

/// Degrees of lean from one shape to the next; the rest is made up by turning the shape.
const LEAN_STEP: f64 = 7.0;
/// How far across the paper a frond reaches, in the four turns that are drawn. Fronds pointing at the eye are turned a
/// little aside: end on, a frond shows nothing.
const TURNS: [f64; 4] = [0.30, 0.56, 0.78, 0.94];

/// More cut marks than this would cover the crown; then only every second, third ... frond to go carries one.
const MOST_MARKS: usize = 12;

/// A frond's shape, drawn once.
#[derive(Clone, PartialEq, Debug)]
pub struct Shape {
    /// Its name in the page.
    pub id: String,
    /// Its paths.
    pub leaf: Leaf,
}

/// A frond placed in a crown.
#[derive(Clone, PartialEq, Debug)]
pub struct Placed {
    /// Name of its shape.
    pub shape: String,
    /// SVG transform.
    pub transform: String,
    /// Colour as on the palm.
    pub tint: Tint,
    /// Behind the stem.
    pub behind: bool,
    /// It is to go.
    pub going: bool,
    /// Where the cut is marked: SVG transform of the mark. Of many fronds to go only some carry one.
    pub cut: Option<String>,
}

/// A crown ready to draw, the farthest frond first.
#[derive(Clone, PartialEq, Debug)]
pub struct Crown {
    /// Fronds in drawing order.
    pub fronds: Vec<Placed>,
    /// Green, yellowing and brown fronds drawn (those to be cut included).
    pub counts: [usize; 3],
    /// Fronds to go.
    pub cut: usize,
}

/// The shapes met so far.
pub struct Shelf {
    form: LeafForm,
    shapes: BTreeMap<(i32, usize, bool), Leaf>,
}

impl Shelf {
    /// An empty shelf for fronds of a form.
    pub fn new(form: LeafForm) -> Shelf {
        Shelf {
            form,
            shapes: BTreeMap::new(),
        }
    }

    /// All shapes met.
    pub fn shapes(self) -> Vec<Shape> {
        self.shapes
            .into_iter()
            .map(|(key, leaf)| Shape {
                id: name(key),
                leaf,
            })
            .collect()
    }

    /// Places the fronds of a picture.
    pub fn place(&mut self, picture: &Picture) -> Crown {
        let going = picture.fronds.iter().filter(|f| f.cut).count();
        let every = going.div_ceil(MOST_MARKS).max(1);
        let mut met = 0;
        let mut fronds: Vec<_> = Vec::with_capacity(picture.fronds.len());
        for frond in &picture.fronds {
            met += usize::from(frond.cut);
            fronds.push((depth(frond), self.put(frond, frond.cut && met % every == 0)));
        }
        // what is nearer, and among equals what is younger, lies on top
        fronds.sort_by(|a, b| a.0.total_cmp(&b.0));
        let tinted = |tint| picture.fronds.iter().filter(|f| f.tint == tint).count();
        Crown {
            fronds: fronds.into_iter().map(|(_, placed)| placed).collect(),
            counts: [
                tinted(Tint::Green),
                tinted(Tint::Yellowing),
                tinted(Tint::Brown),
            ],
            cut: going,
        }
    }

    fn put(&mut self, frond: &PictureFrond, marked: bool) -> Placed {
        let azimuth = frond.azimuth_degrees.to_radians();
        let (across, towards) = (math::cos(azimuth), math::sin(azimuth));
        let bin = (frond.lean_degrees / LEAN_STEP).round() as i32;
        let turn = (0..3)
            .find(|&i| across.abs() < (TURNS[i] + TURNS[i + 1]) / 2.0)
            .unwrap_or(3);
        let key = (bin, turn, frond.tint == Tint::Brown);
        let pose = pose(key);
        let form = self.form;
        let shape = self.shapes.entry(key).or_insert_with(|| leaf(form, &pose));
        let transform = transform(frond, across);
        let cut = marked.then(|| format!("{transform}{}", shape.stubs[frond.rank as usize % 4]));
        Placed {
            shape: name(key),
            transform,
            tint: frond.tint,
            behind: towards < 0.0,
            going: frond.cut,
            cut,
        }
    }
}

fn name((bin, turn, limp): (i32, usize, bool)) -> String {
    format!("{}{bin}-{turn}", if limp { "d" } else { "f" })
}

fn pose((bin, turn, limp): (i32, usize, bool)) -> Pose {
    let across = TURNS[turn];
    Pose {
        lean: f64::from(bin) * LEAN_STEP,
        turn: (across, (1.0 - across * across).sqrt()),
        limp,
    }
}

/// Small differences between fronds, the same every time: no two fronds of a palm are alike, but none moves by itself.
fn quirk(rank: u32, salt: u32) -> f64 {
    let mixed = rank
        .wrapping_mul(2_654_435_761)
        .wrapping_add(salt.wrapping_mul(40_503))
        >> 16;
    f64::from(mixed % 1000) / 500.0 - 1.0
}

fn transform(frond: &PictureFrond, across: f64) -> String {
    let rest = frond.lean_degrees - (frond.lean_degrees / LEAN_STEP).round() * LEAN_STEP;
    let turn = (rest + 1.5 * quirk(frond.rank, 1)).round();
    let size = 0.95 + 0.05 * quirk(frond.rank, 2);
    let flip = if across < 0.0 { -size } else { size };
    format!("scale({flip:.2} {size:.2})rotate({turn})")
}

fn depth(frond: &PictureFrond) -> f64 {
    math::sin(frond.azimuth_degrees.to_radians()) * math::sin(frond.lean_degrees.to_radians())
        - f64::from(frond.rank) * 1e-4
}
