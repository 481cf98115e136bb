//! What a blade carries, as far as a sweep has come.

/// A touch that fouled a blade.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(crate) struct Mark {
    /// Its number in the log.
    pub touch: u32,
    /// The palm it cut.
    pub palm: u32,
    /// Steps of that palm from a case.
    pub steps: u32,
}

/// No touch: numbers of touches stay below it (a log of 2^32 touches would take 40 GB).
pub(crate) const NONE: u32 = u32::MAX;

const NO_MARK: Mark = Mark {
    touch: NONE,
    palm: NONE,
    steps: NONE,
};

/// The best mark on a blade, and the best that another palm left: a palm is not exposed by itself.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(crate) struct Marks {
    best: Mark,
    other: Mark,
}

impl Marks {
    /// A blade that carries nothing.
    pub const CLEAN: Marks = Marks {
        best: NO_MARK,
        other: NO_MARK,
    };

    /// Whether it carries something.
    pub fn any(&self) -> bool {
        self.best.touch != NONE
    }

    /// One more mark. Fewer steps from a case are better; of equals the later one in the sweep, which is told later.
    pub fn add(&mut self, mark: Mark) {
        if mark.palm == self.best.palm {
            self.best = mark;
        } else if mark.steps <= self.best.steps {
            self.other = self.best;
            self.best = mark;
        } else if mark.steps <= self.other.steps {
            self.other = mark;
        }
    }

    /// The marks of both, those of `later` told later.
    pub fn and(mut self, later: &Marks) -> Marks {
        for mark in [later.other, later.best] {
            if mark.touch != NONE {
                self.add(mark);
            }
        }
        self
    }

    /// The best mark that a palm other than this one left.
    pub fn by_another(&self, palm: u32) -> Option<Mark> {
        let mark = if self.best.palm == palm {
            self.other
        } else {
            self.best
        };
        (mark.touch != NONE).then_some(mark)
    }
}
