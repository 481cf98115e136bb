//! How far and how long it is from place to place, when nobody has given a table.
//!
//! Great circle on a sphere, times a factor for the bends of the road, at one speed. `docs/route.md` says how far off that
//! can be.

use crate::route::Travel;
use model::Position;

/// Mean radius of the earth, metres: R1 = (2a + b) / 3 of WGS 84 (Moritz H., Geodetic Reference System 1980, Bulletin
/// Géodésique 54, 1980, gives 6 371 008.77 for GRS 80; WGS 84 has the same to the decimetre). From memory.
pub const EARTH_RADIUS_M: f64 = 6_371_008.8;

/// Great-circle distance in metres on a sphere of [`EARTH_RADIUS_M`]. Within 0.6 % of the distance on the ellipsoid.
pub fn metres(a: Position, b: Position) -> f64 {
    EARTH_RADIUS_M * a.angle_to(b)
}

/// Travel between every two positions: whole metres of road (great circle × `road_factor`, 1 or more) and whole seconds
/// at `km_per_hour` (above 0). Both are rounded to the nearest; a factor, speed or position that is not a number counts as
/// so long a way that [`crate::route::solve`] refuses it.
pub fn matrix(positions: &[Position], road_factor: f64, km_per_hour: f64) -> Travel {
    let metres_per_second = km_per_hour / 3.6;
    let mut travel = Travel {
        places: positions.len(),
        distance: Vec::with_capacity(positions.len() * positions.len()),
        seconds: Vec::with_capacity(positions.len() * positions.len()),
    };
    for &from in positions {
        for &to in positions {
            let road = metres(from, to) * road_factor;
            travel.distance.push(whole(road));
            travel.seconds.push(whole(road / metres_per_second));
        }
    }
    travel
}

/// The nearest whole number; what is none, below zero or above all sense becomes `i64::MAX`.
fn whole(x: f64) -> i64 {
    if (0.0..9e18).contains(&x) {
        x.round() as i64
    } else {
        i64::MAX
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route::{Crew, Problem, Window, solve};

    fn at(lat: f64, lon: f64) -> Position {
        Position { lat, lon }
    }

    #[test]
    fn road_metres_and_seconds_follow_factor_and_speed() {
        let travel = matrix(&[at(0.0, 0.0), at(0.0, 1.0)], 1.3, 36.0);
        // one degree of a great circle is 2 pi 6371008.8 / 360 = 111195.08 m; 1.3 times that is 144553.6 m, at 10 m/s
        assert_eq!(travel.places, 2);
        assert_eq!(travel.distance, [0, 144_554, 144_554, 0]);
        assert_eq!(travel.seconds, [0, 14_455, 14_455, 0]);
    }

    #[test]
    fn a_speed_of_nothing_is_refused_by_the_search_and_does_not_panic() {
        for (factor, speed) in [(1.0, 0.0), (f64::NAN, 40.0), (1.0, -5.0), (-1.0, 40.0)] {
            let problem = Problem {
                travel: matrix(&[at(0.0, 0.0), at(0.0, 1.0)], factor, speed),
                jobs: vec![],
                crews: vec![Crew {
                    from: 0,
                    to: 0,
                    hours: Window { open: 0, close: 9 },
                    room: vec![],
                    skills: 0,
                    fixed: 0,
                    per_distance: 1,
                    per_second: 0,
                }],
            };
            assert!(
                solve(&problem, 1, 1, &mut |_, _| true).is_err(),
                "{factor} {speed}"
            );
        }
    }
}
