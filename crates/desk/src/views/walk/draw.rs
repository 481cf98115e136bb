//! The map of a walk, from the positions of the palms alone: north up, a line in the order of the stops, a shape for each
//! class. All lengths in units of the drawing.

use crate::views::plane::{path, plane};
use crate::views::said::Speaker;
use crate::walk::SiteWalk;
use model::{Metres, Position};

/// Width of the drawing; its height follows the grounds.
pub const WIDTH: f64 = 720.0;
const LEAST_HEIGHT: f64 = 220.0;
const MOST_HEIGHT: f64 = 900.0;
/// Room left at each side.
const MARGIN: f64 = 44.0;
/// Grounds are drawn no smaller than this, metres.
const LEAST_M: f64 = 12.0;
/// Of more stops than this not every one has its number.
const NUMBERED: usize = 40;

/// The map.
#[derive(Clone, PartialEq, Debug)]
pub struct Map {
    /// Width and height.
    pub size: (i32, i32),
    /// The line of the walk: SVG path.
    pub line: String,
    /// The gate.
    pub gate: Option<(i32, i32)>,
    /// Palms with a place.
    pub marks: Vec<Mark>,
    /// Length of the bar, and what it stands for.
    pub bar: (i32, String),
}

/// A palm on the map.
#[derive(Clone, PartialEq, Debug)]
pub struct Mark {
    /// From the left.
    pub x: i32,
    /// From the top.
    pub y: i32,
    /// `healthy`, `unknown`, `suspect`, `confirmed`.
    pub key: &'static str,
    /// Its number on the walk; of many stops only some have one.
    pub number: Option<usize>,
    /// Its tag.
    pub tag: String,
    /// A clean blade is taken up, or hands and boots are cleaned, before it.
    pub clean: bool,
}

/// Draws a walk; `None` where fewer than two places are known.
pub fn map(speaker: &Speaker, walk: &SiteWalk) -> Option<Map> {
    let placed: Vec<(usize, Position)> = walk
        .stops
        .iter()
        .enumerate()
        .filter_map(|(i, stop)| Some((i, stop.record.palm.position?)))
        .collect();
    let all: Vec<Position> = placed.iter().map(|p| p.1).chain(walk.gate).collect();
    let middle = *all.first().filter(|_| all.len() > 1)?;
    let places: Vec<(f64, f64)> = all.iter().map(|at| plane(middle, *at)).collect();
    let paper = Paper::of(&places);
    let spots: Vec<(i32, i32)> = places.iter().map(|at| paper.spot(*at)).collect();
    let (palms, gate) = spots.split_at(placed.len());
    let mark = |(&(i, _), &(x, y)): (&(usize, Position), &(i32, i32))| {
        let stop = &walk.stops[i];
        let clean = walk.blade(stop).is_some_and(|(_, clean)| clean);
        Mark {
            x,
            y,
            key: stop.because.health().key(),
            number: numbered(i, walk.stops.len()).then_some(i + 1),
            tag: stop.record.palm.tag.clone(),
            clean: clean || stop.hands,
        }
    };
    Some(Map {
        size: (WIDTH as i32, paper.height as i32),
        line: path(gate.iter().chain(palms).copied()),
        gate: gate.first().copied(),
        marks: placed.iter().zip(palms).map(mark).collect(),
        bar: paper.bar(speaker),
    })
}

/// The first, the last and every so many between.
fn numbered(i: usize, of: usize) -> bool {
    let every = of.div_ceil(NUMBERED).max(1);
    i.is_multiple_of(every) || i + 1 == of
}

/// How grounds lie on the paper.
struct Paper {
    west: f64,
    north: f64,
    /// Units a metre.
    scale: f64,
    left: f64,
    top: f64,
    height: f64,
}

impl Paper {
    fn of(places: &[(f64, f64)]) -> Paper {
        let ends = |part: fn(&(f64, f64)) -> f64| {
            let all = places.iter().map(part);
            let low = all.clone().fold(f64::INFINITY, f64::min);
            (low, all.fold(f64::NEG_INFINITY, f64::max))
        };
        let ((west, east), (south, north)) = (ends(|p| p.0), ends(|p| p.1));
        let (wide, high) = ((east - west).max(LEAST_M), (north - south).max(LEAST_M));
        let room = WIDTH - 2.0 * MARGIN;
        let scale = (room / wide).min((MOST_HEIGHT - 2.0 * MARGIN) / high);
        let height = (high * scale + 2.0 * MARGIN).max(LEAST_HEIGHT);
        Paper {
            west,
            north,
            scale,
            left: (WIDTH - (east - west) * scale) / 2.0,
            top: (height - (north - south) * scale) / 2.0,
            height: height.round(),
        }
    }

    fn spot(&self, (east, north): (f64, f64)) -> (i32, i32) {
        let x = self.left + (east - self.west) * self.scale;
        let y = self.top + (self.north - north) * self.scale;
        (x.round() as i32, y.round() as i32)
    }

    /// A round length that takes up to a third of the width.
    fn bar(&self, speaker: &Speaker) -> (i32, String) {
        let us = speaker.measure.units == crate::measure::Units::UsCustomary;
        let unit = if us { Metres::PER_FOOT } else { 1.0 };
        let most = WIDTH / 3.0 / self.scale / unit;
        let rounds = [1.0, 2.0, 5.0].into_iter().cycle().zip(0..);
        let steps = rounds.map(|(digit, n)| digit * [1.0, 10.0, 100.0, 1e3, 1e4, 1e5][n / 3]);
        let fits = steps.take(18).take_while(|length| *length <= most);
        let length = fits.last().unwrap_or(1.0);
        let bar = length * unit * self.scale;
        (
            bar.round() as i32,
            speaker.measure.length(Metres(length * unit)),
        )
    }
}
