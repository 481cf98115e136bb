//! One frond: how its midrib bends, and its blade by form.

use super::path::Pen;
use super::space::{Frame, V3};
use super::{fan, feather};
use model::math;
use model::species::LeafForm;

/// Length of a frond in paper units.
pub const LENGTH: f64 = 800.0;

const STEPS: usize = 60;

/// Where on a frond the cut is marked, from its base: near it, and staggered.
const STUBS: [f64; 4] = [0.14, 0.19, 0.24, 0.29];

/// How a frond is seen.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pose {
    /// Degrees from straight up, of the frond as a whole.
    pub lean: f64,
    /// Cosine (across the paper) and sine (towards the eye) of its azimuth.
    pub turn: (f64, f64),
    /// Dead: everything hangs.
    pub limp: bool,
}

/// The paths of one frond.
#[derive(Clone, PartialEq, Debug)]
pub struct Leaf {
    /// Filled: leaflets or segments.
    pub blade: String,
    /// Stroked: petiole and midrib.
    pub rib: String,
    /// Stroked finely: pleats or side ribs; may be empty.
    pub veins: String,
    /// Where a cut goes through the petiole: SVG transforms of a mark drawn across it. Several, farther and farther
    /// out: marks of neighbouring fronds would hide each other.
    pub stubs: [String; 4],
}

/// The midrib: points and frames from base to tip.
pub struct Midrib {
    at: Vec<(V3, Frame)>,
}

impl Midrib {
    /// A midrib of `length` that leans by the pose's angle at its middle and bends by `bend` degrees from end to end.
    pub fn bent(pose: &Pose, length: f64, bend: f64) -> Midrib {
        let step = length / STEPS as f64;
        let mut p = V3::default();
        let mut at = Vec::with_capacity(STEPS + 1);
        for i in 0..=STEPS {
            let s = i as f64 / STEPS as f64;
            let lean = (pose.lean + bend * (math::pow(s, 1.4) - 0.42)).clamp(0.0, 178.0);
            let frame = Frame::new(lean.to_radians(), pose.turn);
            at.push((p, frame));
            p = p + frame.along * step;
        }
        Midrib { at }
    }

    /// Point and frame at a share of the length, 0 at the base.
    pub fn at(&self, s: f64) -> (V3, Frame) {
        self.at[((s.clamp(0.0, 1.0) * STEPS as f64).round() as usize).min(STEPS)]
    }

    /// Where a cut goes through, as SVG transforms.
    pub fn stubs(&self) -> [String; 4] {
        STUBS.map(|share| {
            let (V3(x, y, _), frame) = self.at(share);
            let angle = math::atan2(frame.along.1, frame.along.0).to_degrees();
            format!("translate({x:.0} {y:.0})rotate({angle:.0})")
        })
    }

    /// The line from base to a share of the length.
    pub fn stroke(&self, to: f64) -> String {
        let mut pen = Pen::default();
        pen.start(self.at(0.0).0);
        for i in 1..=8 {
            let (a, b) = (to * (f64::from(i) - 0.5) / 8.0, to * f64::from(i) / 8.0);
            pen.curve(self.at(a).0, self.at(b).0);
        }
        pen.done()
    }
}

/// How much a frond of this lean bends from end to end: upright ones are stiff, hanging ones have nowhere to go.
pub fn bend(pose: &Pose, most: f64) -> f64 {
    if pose.limp {
        return 20.0;
    }
    most * (0.42 + 0.58 * math::sin(pose.lean.clamp(0.0, 125.0).to_radians()))
}

/// Draws a frond.
pub fn leaf(form: LeafForm, pose: &Pose) -> Leaf {
    match form {
        LeafForm::Pinnate => feather::pinnate(pose),
        LeafForm::Bipinnate => feather::bipinnate(pose),
        LeafForm::Palmate => fan::palmate(pose),
        LeafForm::Costapalmate => fan::costapalmate(pose),
    }
}
