//! Positions on a plane, for maps.

use model::{Position, math};
use rounds::travel::EARTH_RADIUS_M;
use std::fmt::Display;

/// East and north of a middle on a plane that touches the earth there, metres: good to a millimetre over grounds of a few
/// hundred metres, good enough for a map of a few hundred kilometres.
pub fn plane(middle: Position, at: Position) -> (f64, f64) {
    let east = (at.lon - middle.lon).to_radians() * math::cos(middle.lat.to_radians());
    let north = (at.lat - middle.lat).to_radians();
    (east * EARTH_RADIUS_M, north * EARTH_RADIUS_M)
}

/// A line through points of a drawing, as an SVG path.
pub fn path<T: Display>(points: impl IntoIterator<Item = (T, T)>) -> String {
    let mut line = String::new();
    for (n, (x, y)) in points.into_iter().enumerate() {
        line.push_str(&format!("{}{x} {y}", if n == 0 { "M" } else { "L" }));
    }
    line
}
