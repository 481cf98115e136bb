//! The map of a proposal: sites and crews where they are, lines as the crow flies.

use super::super::plane::{path, plane};
use super::super::said::Speaker;
use crate::day_rounds::{Proposal, Proposed};
use crate::office::Office;
use model::{Metres, Position};
use std::collections::BTreeMap;

/// Width and height of the drawing, and the room left for names at its edges.
const WIDTH: f64 = 640.0;
const HEIGHT: f64 = 420.0;
const EDGE: f64 = 56.0;
/// The least ground that is shown, metres: a single site is no dot on nothing.
const LEAST: f64 = 400.0;

/// Something with a place and a name.
#[derive(Clone, PartialEq, Debug)]
pub struct Dot {
    /// From the left.
    pub x: f64,
    /// From the top.
    pub y: f64,
    /// Its name.
    pub name: String,
    /// Whether a crew starts here, else it is a site.
    pub start: bool,
}

/// The way of a round.
#[derive(Clone, PartialEq, Debug)]
pub struct Track {
    /// Which round of the proposal.
    pub round: usize,
    /// Where it leads, as an SVG path.
    pub path: String,
}

/// The map.
#[derive(Clone, PartialEq, Debug)]
pub struct MapView {
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
    /// Sites and starts.
    pub dots: Vec<Dot>,
    /// Ways.
    pub tracks: Vec<Track>,
    /// Length of the scale in the drawing.
    pub scale: f64,
    /// What it stands for.
    pub scale_words: String,
}

/// Metres east and north of a middle: as good as a map of a few hundred kilometres needs.
struct Plane {
    middle: Position,
    metres: f64,
    centre: (f64, f64),
}

/// The map of a proposal; nothing where no place is known.
pub fn map(speaker: &Speaker, office: &Office, proposal: &Proposal) -> Option<MapView> {
    let mut sites: BTreeMap<String, Position> = BTreeMap::new();
    let mut starts: Vec<(String, Position)> = Vec::new();
    for round in &proposal.rounds {
        // crews of one yard share a mark
        match starts.iter_mut().find(|(_, at)| *at == round.from) {
            Some((crews, _)) => *crews = format!("{crews}, {}", round.plan.crew),
            None => starts.push((round.plan.crew.clone(), round.from)),
        }
        for (site, at) in visited(office, round) {
            sites.entry(site).or_insert(at);
        }
    }
    let here = sites.values().chain(starts.iter().map(|(_, at)| at));
    let plane = Plane::over(&here.copied().collect::<Vec<_>>())?;
    let dot = |name: &str, at: Position, start: bool| {
        let (x, y) = plane.point(at);
        let name = name.to_owned();
        Dot { x, y, name, start }
    };
    let all = sites.iter().map(|(name, at)| dot(name, *at, false));
    let dots = all
        .chain(starts.iter().map(|(names, at)| dot(names, *at, true)))
        .collect();
    let tracks = proposal
        .rounds
        .iter()
        .enumerate()
        .map(|(round, own)| Track {
            round,
            path: plane.path(office, own),
        })
        .collect();
    let (metres, scale_words) = plane.scale(speaker);
    Some(MapView {
        width: WIDTH,
        height: HEIGHT,
        dots,
        tracks,
        scale: metres / plane.metres,
        scale_words,
    })
}

/// Sites of a round in the order of the first visit, each where its gate or its first palm is.
fn visited(office: &Office, round: &Proposed) -> Vec<(String, Position)> {
    let state = office.state();
    let mut seen: Vec<(String, Position)> = Vec::new();
    for stop in &round.stops {
        let gate = state.work.sites.get(&stop.site).and_then(|site| site.gate);
        let last = seen.last().is_some_and(|(site, _)| *site == stop.site);
        if let Some(at) = gate.or(stop.at).filter(|_| !last) {
            seen.push((stop.site.clone(), at));
        }
    }
    seen
}

impl Plane {
    fn over(all: &[Position]) -> Option<Plane> {
        let first = all.first()?;
        let range = |of: fn(&Position) -> f64| {
            let low = all.iter().map(of).fold(f64::INFINITY, f64::min);
            let high = all.iter().map(of).fold(f64::NEG_INFINITY, f64::max);
            (low, high)
        };
        let ((south, north), (west, east)) = (range(|p| p.lat), range(|p| p.lon));
        let middle = Position {
            lat: f64::midpoint(south, north),
            lon: f64::midpoint(west, east),
        };
        let corner = plane(
            middle,
            Position {
                lat: north,
                lon: east,
            },
        );
        let (wide, high) = ((2.0 * corner.0).max(LEAST), (2.0 * corner.1).max(LEAST));
        let metres = (wide / (WIDTH - 2.0 * EDGE)).max(high / (HEIGHT - 2.0 * EDGE));
        let centre = (WIDTH / 2.0, HEIGHT / 2.0);
        first.lat.is_finite().then_some(Plane {
            middle,
            metres,
            centre,
        })
    }

    fn point(&self, at: Position) -> (f64, f64) {
        let (east, north) = plane(self.middle, at);
        let round = |x: f64| (x * 10.0).round() / 10.0;
        (
            round(self.centre.0 + east / self.metres),
            round(self.centre.1 - north / self.metres),
        )
    }

    fn path(&self, office: &Office, round: &Proposed) -> String {
        let between = visited(office, round).into_iter().map(|(_, at)| at);
        let stations = std::iter::once(round.from).chain(between).chain([round.to]);
        path(stations.map(|at| self.point(at)))
    }

    /// A round length of about a fifth of the drawing, in metres, and its words.
    fn scale(&self, speaker: &Speaker) -> (f64, String) {
        use crate::measure::Units;
        let most = WIDTH / 4.0 * self.metres;
        let unit = match speaker.measure.units {
            Units::Metric if most < 1000.0 => 1.0,
            Units::Metric => 1000.0,
            Units::UsCustomary if most < 1609.344 => Metres::PER_FOOT,
            Units::UsCustomary => 1609.344,
        };
        let steps = [1.0, 2.0, 5.0];
        let lengths = [1.0, 10.0, 100.0, 1000.0]
            .into_iter()
            .flat_map(|ten| steps.map(|s| s * ten));
        let length = lengths.rev().find(|n| n * unit <= most).unwrap_or(1.0);
        let words = match unit >= 1000.0 {
            true => super::way(speaker, length * unit),
            false => speaker.measure.length(Metres(length * unit)),
        };
        (length * unit, words)
    }
}
