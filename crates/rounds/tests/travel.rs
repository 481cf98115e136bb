//! Distances against a library of geodesics: Karney C. F. F., Algorithms for geodesics, Journal of Geodesy 87, 2013,
//! doi:10.1007/s00190-012-0578-z, as the crate `geographiclib-rs` has them.

use geographiclib_rs::{Geodesic, InverseGeodesic};
use model::Position;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use spearleaf_rounds::travel::{EARTH_RADIUS_M, matrix, metres};

fn inverse(earth: &Geodesic, a: Position, b: Position) -> f64 {
    earth.inverse(a.lat, a.lon, b.lat, b.lon)
}

#[test]
fn metres_agree_with_the_library_on_a_sphere_and_nearly_on_the_ellipsoid() {
    let sphere = Geodesic::new(EARTH_RADIUS_M, 0.0);
    let ellipsoid = Geodesic::wgs84();
    let mut lots = ChaCha8Rng::seed_from_u64(5);
    let mut worst = (0.0f64, 0.0f64);
    for i in 0..5_000 {
        let a = Position {
            lat: lots.random_range(-90.0..90.0),
            lon: lots.random_range(-180.0..180.0),
        };
        // half of them far away, half within a degree
        let b = if i % 2 == 0 {
            Position {
                lat: lots.random_range(-90.0..90.0),
                lon: lots.random_range(-180.0..180.0),
            }
        } else {
            let lat: f64 = a.lat + lots.random_range(-1.0..1.0);
            Position {
                lat: lat.clamp(-90.0, 90.0),
                lon: (a.lon + lots.random_range(-1.0..1.0)).clamp(-180.0, 180.0),
            }
        };
        let ours = metres(a, b);
        let round: f64 = inverse(&sphere, a, b);
        assert!(
            (ours - round).abs() < 1e-3 + 1e-9 * round,
            "{a:?} {b:?}: {ours} and {round}"
        );
        let flat: f64 = inverse(&ellipsoid, a, b);
        worst.0 = worst.0.max((ours - round).abs());
        worst.1 = worst.1.max((ours / flat - 1.0).abs());
    }
    assert!(
        worst.1 < 0.006,
        "at most 0.6 % from the ellipsoid, was {worst:?}"
    );
    assert!(
        worst.1 > 0.003,
        "the ellipsoid is told apart from the sphere, {worst:?}"
    );
}

#[test]
fn the_same_place_is_no_way_and_the_antipode_is_half_the_earth() {
    let a = Position {
        lat: 28.3,
        lon: -16.4,
    };
    assert_eq!(metres(a, a), 0.0);
    let b = Position {
        lat: -28.3,
        lon: 163.6,
    };
    assert!((metres(a, b) - std::f64::consts::PI * EARTH_RADIUS_M).abs() < 0.5);
}

#[test]
fn the_matrix_is_rows_of_rounded_metres_and_seconds() {
    let at = [(0.0, 0.0), (0.01, 0.02), (-0.03, 0.005)].map(|(lat, lon)| Position { lat, lon });
    let travel = matrix(&at, 1.25, 30.0);
    assert_eq!(
        (travel.places, travel.distance.len(), travel.seconds.len()),
        (3, 9, 9)
    );
    for (i, &from) in at.iter().enumerate() {
        for (j, &to) in at.iter().enumerate() {
            let road = 1.25 * metres(from, to);
            assert_eq!(travel.distance[3 * i + j], road.round() as i64);
            assert_eq!(
                travel.seconds[3 * i + j],
                (road / (30.0 / 3.6)).round() as i64
            );
        }
    }
}
