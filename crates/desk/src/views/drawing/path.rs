//! SVG path data in whole paper units.

use super::space::V3;
use std::fmt::Write;

/// A path being written. Every piece starts at an absolute point; the rest is relative and short.
#[derive(Default)]
pub struct Pen {
    text: String,
    at: (i32, i32),
}

fn whole(p: V3) -> (i32, i32) {
    (p.0.round() as i32, p.1.round() as i32)
}

impl Pen {
    /// Starts a piece.
    pub fn start(&mut self, p: V3) {
        self.at = whole(p);
        let _ = write!(self.text, "M{} {}", self.at.0, self.at.1);
    }

    /// A straight line.
    pub fn line(&mut self, to: V3) {
        let to = whole(to);
        let _ = write!(self.text, "l{} {}", to.0 - self.at.0, to.1 - self.at.1);
        self.at = to;
    }

    /// A curve pulled towards `by`.
    pub fn curve(&mut self, by: V3, to: V3) {
        let (by, to) = (whole(by), whole(to));
        let (x, y) = self.at;
        let _ = write!(
            self.text,
            "q{} {} {} {}",
            by.0 - x,
            by.1 - y,
            to.0 - x,
            to.1 - y
        );
        self.at = to;
    }

    /// Back to where the piece started.
    pub fn close(&mut self) {
        self.text.push('z');
    }

    /// A blade with a pointed tip: from `base` towards `tip`, bulging by `half` to each side, pulled towards `by`.
    pub fn blade(&mut self, base: V3, by: V3, tip: V3, half: V3) {
        self.start(base - half * 0.5);
        self.curve(by - half, tip);
        self.curve(by + half, base + half * 0.5);
        self.close();
    }

    /// The data.
    pub fn done(self) -> String {
        self.text
    }
}
