//! Points and directions: x to the right, y down the paper, z towards the eye.

use model::math;
use std::ops::{Add, Mul, Sub};

/// A point or a direction.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct V3(pub f64, pub f64, pub f64);

/// Straight down.
pub const DOWN: V3 = V3(0.0, 1.0, 0.0);

impl Add for V3 {
    type Output = V3;
    fn add(self, o: V3) -> V3 {
        V3(self.0 + o.0, self.1 + o.1, self.2 + o.2)
    }
}

impl Sub for V3 {
    type Output = V3;
    fn sub(self, o: V3) -> V3 {
        V3(self.0 - o.0, self.1 - o.1, self.2 - o.2)
    }
}

impl Mul<f64> for V3 {
    type Output = V3;
    fn mul(self, k: f64) -> V3 {
        V3(self.0 * k, self.1 * k, self.2 * k)
    }
}

impl V3 {
    /// The same direction with length 1; the null direction stays as it is.
    pub fn unit(self) -> V3 {
        let length = (self.0 * self.0 + self.1 * self.1 + self.2 * self.2).sqrt();
        if length > 0.0 {
            self * (1.0 / length)
        } else {
            self
        }
    }
}

/// The three directions of a frond at a point: along it, to its side, out of its upper face.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Frame {
    /// Along the midrib, towards the tip.
    pub along: V3,
    /// To the side.
    pub side: V3,
    /// Out of the upper face.
    pub face: V3,
}

impl Frame {
    /// The frame of a midrib that leans by `lean` (radians from straight up) in a plane turned by the cosine and sine
    /// of its azimuth out of the paper.
    pub fn new(lean: f64, turn: (f64, f64)) -> Frame {
        let (s, c) = (math::sin(lean), math::cos(lean));
        Frame {
            along: V3(s * turn.0, -c, s * turn.1),
            side: V3(-turn.1, 0.0, turn.0),
            face: V3(-c * turn.0, -s, -c * turn.1),
        }
    }

    /// A direction in the blade's plane, `angle` radians off the midrib to the side `sign`, lifted by `lift` radians.
    pub fn ray(&self, angle: f64, sign: f64, lift: f64) -> V3 {
        let across = self.side * (sign * math::cos(lift)) + self.face * math::sin(lift);
        self.along * math::cos(angle) + across * math::sin(angle)
    }
}

/// A direction after hanging for a while: `weight` 0 leaves it, more pulls it down.
pub fn hang(direction: V3, weight: f64) -> V3 {
    (direction + DOWN * weight).unit()
}
