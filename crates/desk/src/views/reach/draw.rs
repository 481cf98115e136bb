//! The drawing from above: trunk, fronds as they are drawn on the palm's page, places to stand with the sectors in which
//! they may be, the circle kept free. The reader stands at the foot of the paper. All lengths in units of the drawing.

use crate::reaching::Reached;
use crate::views::said::Speaker;
use crown::PictureFrond;
use model::{Metres, math};

/// Width and height.
pub const SIZE: f64 = 640.0;
const MIDDLE: f64 = SIZE / 2.0;
/// Half the width less the room for words.
const ROOM: f64 = MIDDLE - 26.0;
/// Frond and trunk of unknown size, metres (assumed, for drawing only).
const FROND_M: f64 = 3.0;
const TRUNK_M: f64 = 0.3;

/// The drawing.
#[derive(Clone, PartialEq, Debug)]
pub struct Above {
    /// Radius of the circle kept free; `None` unknown.
    pub keep_out: Option<i32>,
    /// Radius of the trunk.
    pub trunk: i32,
    /// Fronds, those that stay first.
    pub fronds: Vec<Frond>,
    /// Places.
    pub places: Vec<Spot>,
    /// Length of the bar, and what it stands for.
    pub bar: (i32, String),
}

/// A frond from above.
#[derive(Clone, PartialEq, Debug)]
pub struct Frond {
    /// Its line: SVG path.
    pub line: String,
    /// `stays`, `goes`.
    pub key: &'static str,
    /// Where it is cut, if it goes.
    pub cut: Option<(i32, i32)>,
}

/// A place to stand.
#[derive(Clone, PartialEq, Debug)]
pub struct Spot {
    /// Its number.
    pub n: usize,
    /// Where its number stands.
    pub at: (i32, i32),
    /// The sector in which it may be: SVG path.
    pub sector: String,
}

fn at(out: f64, degrees: f64) -> (f64, f64) {
    let angle = degrees.to_radians();
    (
        MIDDLE + out * math::cos(angle),
        MIDDLE + out * math::sin(angle),
    )
}

fn whole((x, y): (f64, f64)) -> (i32, i32) {
    (x.round() as i32, y.round() as i32)
}

/// Draws a stem; `None` where there is no frond to draw.
pub fn above(speaker: &Speaker, reached: &Reached) -> Option<Above> {
    if reached.fronds.is_empty() {
        return None;
    }
    let frond = reached.frond.map_or(FROND_M, |frond| frond.0);
    let places = &reached.reach.places;
    let farthest = places.iter().map(|place| place.out_m).fold(0.0, f64::max);
    let keep_out = reached.reach.keep_out.map(|radius| radius.0);
    let widest = keep_out.unwrap_or(frond * 1.1).max(farthest * 1.15);
    let scale = ROOM / widest;
    let trunk = reached.trunk.map_or(TRUNK_M, |thick| thick.0) / 2.0 * scale;
    let mut fronds: Vec<Frond> = reached
        .fronds
        .iter()
        .map(|f| line(f, trunk, frond * scale))
        .collect();
    fronds.sort_by_key(|f| f.key == "goes");
    let spots = places.iter().enumerate().map(|(i, place)| {
        let out = place.out_m * scale;
        Spot {
            n: i + 1,
            at: whole(at(out, place.degrees)),
            sector: sector(trunk.max(8.0), out, place.from, place.to),
        }
    });
    Some(Above {
        keep_out: keep_out.map(|radius| (radius * scale).round() as i32),
        trunk: trunk.max(5.0).round() as i32,
        fronds,
        places: spots.collect(),
        bar: bar(speaker, scale),
    })
}

/// A frond as far out as its lean lets it reach; the drawn crown's own leans.
fn line(frond: &PictureFrond, trunk: f64, length: f64) -> Frond {
    let out = length * math::sin(frond.lean_degrees.to_radians()).max(0.12);
    let foot = whole(at(trunk, frond.azimuth_degrees));
    let tip = whole(at(trunk + out, frond.azimuth_degrees));
    let goes = frond.cut;
    Frond {
        line: format!("M{} {}L{} {}", foot.0, foot.1, tip.0, tip.1),
        key: if goes { "goes" } else { "stays" },
        cut: goes.then_some(whole(at(trunk + 10.0, frond.azimuth_degrees))),
    }
}

/// A ring's part from one direction to another, the degrees growing; a single direction is drawn as a narrow part.
fn sector(inner: f64, outer: f64, from: f64, to: f64) -> String {
    let wide = (to - from).rem_euclid(360.0).max(4.0);
    let middle = from + (to - from).rem_euclid(360.0) / 2.0;
    let (from, to) = (middle - wide / 2.0, middle + wide / 2.0);
    let large = i32::from(wide > 180.0);
    let corner = |out: f64, degrees: f64| {
        let (x, y) = whole(at(out, degrees));
        format!("{x} {y}")
    };
    format!(
        "M{}L{}A{outer:.0} {outer:.0} 0 {large} 1 {}L{}A{inner:.0} {inner:.0} 0 {large} 0 {}Z",
        corner(inner, from),
        corner(outer, from),
        corner(outer, to),
        corner(inner, to),
        corner(inner, from),
    )
}

fn bar(speaker: &Speaker, scale: f64) -> (i32, String) {
    let us = speaker.measure.units == crate::measure::Units::UsCustomary;
    let metres = if us { Metres::from_feet(3.0).0 } else { 1.0 };
    (
        (metres * scale).round() as i32,
        speaker.measure.length(Metres(metres)),
    )
}
