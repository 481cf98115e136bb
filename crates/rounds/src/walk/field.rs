//! How far it is between the palms of a site.

use crate::travel::{EARTH_RADIUS_M, metres};
use model::{Position, math};

/// Up to so many palms all lengths are kept in a table.
const TABLE_UP_TO: usize = 1_500;

/// Palms as nodes `0..n`, the gate as node `n`, the end as node `n + 1`. The way to the end is nothing, and so is the way
/// from the gate where there is none.
pub struct Field {
    places: Vec<Position>,
    gate: Option<Position>,
    /// Points on the unit sphere, the gate's last.
    points: Vec<[f64; 3]>,
    table: Vec<f64>,
}

impl Field {
    pub fn new(gate: Option<Position>, places: Vec<Position>) -> Field {
        let points = places.iter().chain(&gate).map(|at| on_sphere(*at));
        let mut field = Field {
            points: points.collect(),
            gate,
            places,
            table: Vec::new(),
        };
        if field.len() <= TABLE_UP_TO {
            let side = field.len() + 2;
            let pairs = (0..side).flat_map(|a| (0..side).map(move |b| (a, b)));
            field.table = pairs.map(|(a, b)| field.reckoned(a, b)).collect();
        }
        field
    }

    /// Palms.
    pub fn len(&self) -> usize {
        self.places.len()
    }

    pub fn gate(&self) -> usize {
        self.len()
    }

    pub fn end(&self) -> usize {
        self.len() + 1
    }

    /// Metres from node to node.
    #[inline]
    pub fn length(&self, a: usize, b: usize) -> f64 {
        if self.table.is_empty() {
            self.reckoned(a, b)
        } else {
            self.table[a * (self.places.len() + 2) + b]
        }
    }

    /// Great-circle distance from the chord between two points of the sphere.
    fn reckoned(&self, a: usize, b: usize) -> f64 {
        let (Some(p), Some(q)) = (self.points.get(a), self.points.get(b)) else {
            return 0.0;
        };
        let square: f64 = p.iter().zip(q).map(|(x, y)| (x - y) * (x - y)).sum();
        let quarter = (square / 4.0).min(1.0);
        if quarter < 1e-9 {
            // within 400 m the arc is the chord to one part in 10⁹
            return EARTH_RADIUS_M * square.sqrt();
        }
        2.0 * EARTH_RADIUS_M * math::atan2(quarter.sqrt(), (1.0 - quarter).sqrt())
    }

    /// Metres of a way through palms, from the gate if there is one.
    pub fn metres(&self, way: &[usize]) -> f64 {
        let stops = way.iter().map(|node| self.places[*node]);
        let stops: Vec<Position> = self.gate.into_iter().chain(stops).collect();
        stops.windows(2).map(|leg| metres(leg[0], leg[1])).sum()
    }
}

fn on_sphere(at: Position) -> [f64; 3] {
    let (lat, lon) = (at.lat.to_radians(), at.lon.to_radians());
    let level = math::cos(lat);
    [
        level * math::cos(lon),
        level * math::sin(lon),
        math::sin(lat),
    ]
}
