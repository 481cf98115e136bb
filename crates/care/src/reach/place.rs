//! Where to stand with a pole: out from under the fall of each frond, and so that the pole passes no frond that stays.
//!
//! The crown is taken as it is drawn. For every frond to go and every direction round the trunk the pole is laid from the
//! cut to the hands and measured against the midribs of the fronds that stay; then the fewest places are looked for from
//! which all fronds are cut that can be.

use super::{Ask, Pole};
use crown::PictureFrond;
use model::{Metres, math};

/// Directions round the trunk are looked at in steps of so many degrees.
pub const STEP_DEGREES: u32 = 5;
const STEPS: usize = 360 / STEP_DEGREES as usize;
/// A pole passes a midrib at no less than this, metres: about a blade's width (assumed).
const CLEAR_M: f64 = 0.2;
/// The last stretch before the cut, metres, where the blade is led between petioles by eye (assumed).
const BY_EYE_M: f64 = 0.5;
/// Half the width of a frond as a share of its length: a feather, a fan (assumed).
const HALF_WIDTH: (f64, f64) = (0.15, 0.3);
/// Hands stay so far from the edge of a falling frond, metres (assumed).
const ASIDE_M: f64 = 1.0;
/// From the lowest petiole to the spear's foot, metres (assumed).
const HEART_M: f64 = 0.4;
/// Half the thickness of a trunk of unknown thickness, metres (assumed).
const TRUNK_M: f64 = 0.15;
/// Frond of unknown length, metres (assumed).
const FROND_M: f64 = 3.0;
/// No frond leans more than this, degrees from straight up.
const MOST_LEAN: f64 = 175.0;

/// Somewhere to stand. Directions are azimuths of the drawn fronds ([`PictureFrond::azimuth_degrees`]): the real crown is
/// turned otherwise.
#[derive(Clone, PartialEq, Debug)]
pub struct Place {
    /// Direction from the trunk.
    pub degrees: f64,
    /// From here, degrees growing and over 360 ...
    pub from: f64,
    /// ... to here every direction does as well.
    pub to: f64,
    /// From the trunk's middle to the hands, metres, the farthest of its fronds.
    pub out_m: f64,
    /// Ranks of the fronds cut from here.
    pub ranks: Vec<u32>,
}

/// How far to the side of a falling frond the hands stay: half its width and an arm's length.
pub fn aside(frond: Option<Metres>, fan: Option<bool>) -> Metres {
    let half = match fan {
        Some(true) => HALF_WIDTH.1,
        _ => HALF_WIDTH.0,
    };
    Metres(half * frond.map_or(FROND_M, |frond| frond.0) + ASIDE_M)
}

/// Places in the order of their directions, and the ranks of fronds that no place does for.
pub(super) fn places(ask: &Ask, pole: Pole) -> (Vec<Place>, Vec<u32>) {
    let scene = Scene::of(ask, pole);
    let going: Vec<&PictureFrond> = ask.fronds.iter().filter(|f| f.cut).collect();
    let free: Vec<Vec<bool>> = going.iter().map(|f| scene.free(f)).collect();
    let blocked = going
        .iter()
        .zip(&free)
        .filter(|(_, free)| !free.contains(&true))
        .map(|(frond, _)| frond.rank)
        .collect();
    let mut places: Vec<Place> = cover(&free)
        .into_iter()
        .map(|(step, served)| {
            let all = |at: usize| served.iter().all(|&i| free[i][at]);
            let (from, to) = run(step, all);
            let degrees = |step: usize| (step % STEPS) as f64 * f64::from(STEP_DEGREES);
            let out = |&i: &usize| scene.out(going[i], degrees(step));
            Place {
                degrees: degrees(step),
                from: degrees(from),
                to: degrees(to),
                out_m: served.iter().filter_map(out).fold(0.0, f64::max),
                ranks: served.iter().map(|&i| going[i].rank).collect(),
            }
        })
        .collect();
    places.sort_by(|a, b| a.degrees.total_cmp(&b.degrees));
    (places, blocked)
}

/// Steps that serve every row with a free one, each with the rows it serves: the step that serves most of those left,
/// again and again; among equals the middle of the widest run.
pub(super) fn cover(free: &[Vec<bool>]) -> Vec<(usize, Vec<usize>)> {
    let mut left: Vec<usize> = (0..free.len())
        .filter(|&i| free[i].contains(&true))
        .collect();
    let mut chosen = Vec::new();
    while !left.is_empty() {
        let count = |at: usize| left.iter().filter(|&&i| free[i][at]).count();
        let most = (0..STEPS).map(count).max().unwrap_or(0);
        let step = middle_of_widest(|at| count(at) == most, &left, free);
        let served: Vec<usize> = left.iter().copied().filter(|&i| free[i][step]).collect();
        left.retain(|i| !served.contains(i));
        chosen.push((step, served));
    }
    chosen
}

/// Of the steps that serve most: the middle of the widest run in which the same rows are served throughout.
fn middle_of_widest(best: impl Fn(usize) -> bool, left: &[usize], free: &[Vec<bool>]) -> usize {
    let served = |at: usize| left.iter().map(move |&i| free[i][at]);
    let mut widest: Option<(usize, usize)> = None;
    for step in (0..STEPS).filter(|&at| best(at)) {
        let same = |at: usize| served(at).eq(served(step));
        let (from, to) = run(step, same);
        if widest.is_none_or(|(wide, _)| to - from > wide) {
            widest = Some((to - from, (from + (to - from) / 2) % STEPS));
        }
    }
    widest.map_or(0, |(_, middle)| middle)
}

/// The run of steps round `step` for which something holds: first and last, the last not below the first and at most a
/// turn later.
fn run(step: usize, holds: impl Fn(usize) -> bool) -> (usize, usize) {
    let back = (1..STEPS)
        .take_while(|k| holds((step + STEPS - k) % STEPS))
        .count();
    let on = (1..STEPS - back)
        .take_while(|k| holds((step + k) % STEPS))
        .count();
    let from = (step + STEPS - back) % STEPS;
    (from, from + back + on)
}

/// A point: two on the level from the trunk's middle, one up from the crown's base; metres.
type Point = [f64; 3];

/// The crown in space.
struct Scene {
    trunk: f64,
    cut_at: f64,
    rise: f64,
    out: f64,
    aside: f64,
    staying: Vec<Vec<Point>>,
}

impl Scene {
    fn of(ask: &Ask, pole: Pole) -> Scene {
        let frond = ask.frond.map_or(FROND_M, |frond| frond.0);
        let trunk = ask.trunk.map_or(TRUNK_M, |thick| thick.0 / 2.0);
        let stub = ask
            .stub
            .map_or(0.0, |stub| (stub.low.0 + stub.high.0) / 2.0);
        let oldest = ask.fronds.iter().map(|f| f.rank).max().unwrap_or(1);
        let staying = ask.fronds.iter().filter(|f| !f.cut);
        Scene {
            trunk,
            cut_at: trunk + stub,
            rise: pole.length.0 * math::sin(pole.degrees.to_radians()),
            out: pole.out.0,
            aside: aside(ask.frond, ask.fan).0,
            staying: staying
                .map(|f| {
                    midrib(
                        f,
                        frond,
                        trunk,
                        HEART_M * (1.0 - f64::from(f.rank) / f64::from(oldest)),
                    )
                })
                .collect(),
        }
    }

    /// For each direction whether a frond can be cut from there.
    fn free(&self, frond: &PictureFrond) -> Vec<bool> {
        (0..STEPS)
            .map(|step| self.does(frond, step as f64 * f64::from(STEP_DEGREES)))
            .collect()
    }

    /// From the trunk's middle to the hands, for a frond cut from a direction; `None`: no such place.
    fn out(&self, frond: &PictureFrond, degrees: f64) -> Option<f64> {
        let off = (degrees - frond.azimuth_degrees).to_radians();
        let side = self.cut_at * math::sin(off);
        let rest = self.out * self.out - side * side;
        let out = self.cut_at * math::cos(off) + rest.max(0.0).sqrt();
        (rest >= 0.0 && out > self.trunk).then_some(out)
    }

    fn does(&self, frond: &PictureFrond, degrees: f64) -> bool {
        let Some(out) = self.out(frond, degrees) else {
            return false;
        };
        let off = (degrees - frond.azimuth_degrees).to_radians();
        // on the frond's side of the trunk its whole width and an arm's length beside it stay free
        if math::cos(off) > 1e-9 && (out * math::sin(off)).abs() < self.aside {
            return false;
        }
        let cut = level(self.cut_at, frond.azimuth_degrees, 0.0);
        let hands = level(out, degrees, -self.rise);
        if from_axis(cut, hands) < self.trunk {
            return false;
        }
        let length = (self.out * self.out + self.rise * self.rise).sqrt();
        let start = along(cut, hands, (BY_EYE_M / length).min(1.0));
        self.staying.iter().all(|rib| {
            rib.windows(2)
                .all(|part| apart((start, hands), (part[0], part[1])) >= CLEAR_M)
        })
    }
}

/// A point at a distance from the trunk's middle in a direction.
fn level(out: f64, degrees: f64, up: f64) -> Point {
    let angle = degrees.to_radians();
    [out * math::cos(angle), out * math::sin(angle), up]
}

/// The midrib of a frond in four straight parts: less than its lean at the foot, more at the tip (assumed).
fn midrib(frond: &PictureFrond, length: f64, trunk: f64, foot: f64) -> Vec<Point> {
    const PARTS: u32 = 4;
    let (mut out, mut up) = (trunk, foot);
    let mut points = vec![level(out, frond.azimuth_degrees, up)];
    for part in 0..PARTS {
        let share = (f64::from(part) + 0.5) / f64::from(PARTS);
        let lean = (frond.lean_degrees * (0.7 + 0.6 * share))
            .min(MOST_LEAN)
            .to_radians();
        out += length / f64::from(PARTS) * math::sin(lean);
        up += length / f64::from(PARTS) * math::cos(lean);
        points.push(level(out, frond.azimuth_degrees, up));
    }
    points
}

fn along(a: Point, b: Point, share: f64) -> Point {
    core::array::from_fn(|i| a[i] + share * (b[i] - a[i]))
}

fn minus(a: Point, b: Point) -> Point {
    core::array::from_fn(|i| a[i] - b[i])
}

fn dot(a: Point, b: Point) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// Nearest distance on the level from the trunk's middle to a stretch.
fn from_axis(a: Point, b: Point) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    let long = dx * dx + dy * dy;
    let share = if long > 0.0 {
        (-(a[0] * dx + a[1] * dy) / long).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let (x, y) = (a[0] + share * dx, a[1] + share * dy);
    (x * x + y * y).sqrt()
}

/// Nearest distance between two straight stretches.
pub(super) fn apart((a, b): (Point, Point), (c, d): (Point, Point)) -> f64 {
    let (u, v, w) = (minus(b, a), minus(d, c), minus(a, c));
    let (uu, uv, vv) = (dot(u, u), dot(u, v), dot(v, v));
    let (uw, vw) = (dot(u, w), dot(v, w));
    let across = uu * vv - uv * uv;
    // first along the one as if both went on for ever, then back to the nearest point of each stretch
    let first = if across > 1e-12 {
        ((uv * vw - vv * uw) / across).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let on_second = share(vw + uv * first, vv);
    let on_first = share(uv * on_second - uw, uu);
    let gap = minus(along(a, b, on_first), along(c, d, on_second));
    dot(gap, gap).sqrt()
}

fn share(part: f64, whole: f64) -> f64 {
    if whole > 0.0 {
        (part / whole).clamp(0.0, 1.0)
    } else {
        0.0
    }
}
