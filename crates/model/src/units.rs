//! Quantities that carry their unit in the type.

use crate::math;

/// A length in metres.
#[derive(Clone, Copy, PartialEq, PartialOrd, Debug)]
pub struct Metres(pub f64);

impl Metres {
    /// One international foot is 0.3048 m exactly.
    pub const PER_FOOT: f64 = 0.3048;

    /// A length given in feet.
    pub fn from_feet(feet: f64) -> Metres {
        Metres(feet * Metres::PER_FOOT)
    }

    /// This length in feet.
    pub fn feet(self) -> f64 {
        self.0 / Metres::PER_FOOT
    }

    /// A length given in inches (one inch is 0.0254 m exactly).
    pub fn from_inches(inches: f64) -> Metres {
        Metres(inches * 0.0254)
    }

    /// This length in inches.
    pub fn inches(self) -> f64 {
        self.0 / 0.0254
    }
}

/// A frond's angle read as the hour hand of a clock: 12 straight up, 3 and 9 level, 6 straight down.
/// Hours in `(0, 12]`, quarters allowed.
#[derive(Clone, Copy, PartialEq, PartialOrd, Debug)]
pub struct Clock(pub f64);

impl Clock {
    /// A reading, or `None` outside `(0, 12]`.
    pub fn new(hours: f64) -> Option<Clock> {
        (hours > 0.0 && hours <= 12.0).then_some(Clock(hours))
    }

    /// Degrees away from straight up, 0..=180: an hour away from 12 is 30 degrees.
    pub fn degrees_from_vertical(self) -> f64 {
        30.0 * if self.0 > 6.0 { 12.0 - self.0 } else { self.0 }
    }
}

/// A place on the earth, WGS 84, decimal degrees, north and east positive.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Position {
    /// Latitude, -90..=90.
    pub lat: f64,
    /// Longitude, -180..=180.
    pub lon: f64,
}

impl Position {
    /// Angle between two places seen from the middle of the earth, in radians (haversine formula): times the radius it is
    /// the great-circle distance.
    pub fn angle_to(self, other: Position) -> f64 {
        let half = |degrees: f64| math::sin(degrees.to_radians() / 2.0);
        let (north, east) = (half(other.lat - self.lat), half(other.lon - self.lon));
        let level = math::cos(self.lat.to_radians()) * math::cos(other.lat.to_radians());
        let h = (north * north + level * east * east).clamp(0.0, 1.0);
        2.0 * math::atan2(h.sqrt(), (1.0 - h).sqrt())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_clock_reads_degrees() {
        for (hours, degrees) in [
            (12.0, 0.0),
            (3.0, 90.0),
            (9.0, 90.0),
            (8.0, 120.0),
            (4.0, 120.0),
            (6.0, 180.0),
            (8.5, 105.0),
        ] {
            assert_eq!(Clock::new(hours).unwrap().degrees_from_vertical(), degrees);
        }
        assert!(Clock::new(0.0).is_none() && Clock::new(12.25).is_none());
    }

    #[test]
    fn feet_are_exact() {
        assert_eq!(Metres::from_feet(10.0).0, 3.048);
        assert!((Metres(1.0).inches() - 39.370_078_740_157_48).abs() < 1e-12);
    }
}
