//! What a visit takes: minutes and debris; and what logged times teach.
//!
//! Minutes are clock minutes of a crew at a palm. Every figure is a row of `effort.csv` or `debris.csv`, or the keeper's
//! own in its place. Figures and results are stretches ([`Spread`]): one time in ten below `low`, one in ten above
//! `high`. Within a palm the parts are taken to run high or low together; over many palms what the crew has in common
//! stays and what differs from palm to palm evens out ([`total`]). `docs/estimate.md` has the exact meaning.

mod figures;
mod learn;
mod take;

pub use figures::{Figure, Figures};
pub use learn::{Logged, Pace, Taught, between, learn, shrink};
pub use take::visit;

/// The standard normal's nine in ten (one-sided): 1.2815515655446004.
pub const TENTH: f64 = 1.281_551_565_544_600_4;

/// A stretch with its middle; `low` not above `mid`, `mid` not above `high`, none below zero.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Spread {
    /// Seldom less: one time in ten.
    pub low: f64,
    /// As a rule.
    pub mid: f64,
    /// Seldom more: one time in ten.
    pub high: f64,
}

impl Spread {
    /// A figure that is known.
    pub fn of(value: f64) -> Spread {
        Spread {
            low: value,
            mid: value,
            high: value,
        }
    }

    /// Both together, running high or low together.
    pub fn plus(self, other: Spread) -> Spread {
        Spread {
            low: self.low + other.low,
            mid: self.mid + other.mid,
            high: self.high + other.high,
        }
    }

    /// So many times; the factor is not below zero.
    pub fn scaled(self, factor: f64) -> Spread {
        Spread {
            low: self.low * factor,
            mid: self.mid * factor,
            high: self.high * factor,
        }
    }

    /// The product, running high or low together.
    pub fn times(self, other: Spread) -> Spread {
        Spread {
            low: self.low * other.low,
            mid: self.mid * other.mid,
            high: self.high * other.high,
        }
    }

    /// The quotient; what is divided by is above zero.
    pub fn over(self, other: Spread) -> Spread {
        Spread {
            low: self.low / other.high,
            mid: self.mid / other.mid,
            high: self.high / other.low,
        }
    }
}

/// What is done at a palm.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Task {
    /// Looked over and written down.
    Look,
    /// Fronds or stalks taken off.
    Cut,
    /// Watered.
    Water,
    /// Fed.
    Feed,
}

impl Task {
    /// All with the words that rounds use.
    pub const ALL: [(Task, &'static str); 4] = [
        (Task::Look, "look"),
        (Task::Cut, "cut"),
        (Task::Water, "water"),
        (Task::Feed, "feed"),
    ];

    /// The task of a word, if it is one of these.
    pub fn of(word: &str) -> Option<Task> {
        let found = Task::ALL.iter().find(|(_, own)| *own == word);
        found.map(|(task, _)| *task)
    }
}

/// From where the fronds are reached.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Default)]
pub enum Reach {
    /// From the ground by hand.
    #[default]
    Hand,
    /// From the ground with a pole.
    Pole,
    /// From a lift.
    Lift,
}

impl Reach {
    /// All with stable words.
    pub const ALL: [(Reach, &'static str); 3] = [
        (Reach::Hand, "hand"),
        (Reach::Pole, "pole"),
        (Reach::Lift, "lift"),
    ];
}

/// The work at one palm.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Work {
    /// What is done.
    pub tasks: Vec<Task>,
    /// Dead fronds that come off.
    pub dead: u32,
    /// Green and yellowing fronds that come off.
    pub green: u32,
    /// Flower and fruit stalks that come off.
    pub stalks: u32,
    /// From where.
    pub from: Reach,
    /// Height of the cuts above ground, m; `None` unknown: as if at 3 m.
    pub height_m: Option<f64>,
    /// Length of a frond with its stalk, m; `None` unknown.
    pub frond_m: Option<f64>,
    /// Spines or teeth on the petioles.
    pub armed: bool,
    /// Blades are cleaned before this palm.
    pub clean: bool,
    /// A second set of blades is in hand, so that nobody waits for the bath.
    pub spare_blade: bool,
    /// Minutes a blade lies in the bath; `None`: the table's.
    pub contact_min: Option<f64>,
    /// Way on foot to the palm, m; `None`: not counted.
    pub walk_m: Option<f64>,
    /// People of the crew; `None`: the table's.
    pub people: Option<u32>,
    /// Debris is loaded and taken away.
    pub haul: bool,
}

/// One part of a visit.
#[derive(Clone, PartialEq, Debug)]
pub struct Line {
    /// What: a key of `effort.csv`, or `fronds`, `stalks`, `beside` (done while another cuts) or `pace` (what logged
    /// times teach).
    pub key: &'static str,
    /// How many of what it takes: fronds, stalks, metres, cubic metres; one where nothing is counted.
    pub count: f64,
    /// Minutes; only `beside` and `pace` may be below zero.
    pub minutes: Spread,
    /// Figures it rests on: keys of [`Figures`].
    pub figures: Vec<&'static str>,
}

/// What a visit takes and leaves behind.
#[derive(Clone, PartialEq, Debug)]
pub struct Visit {
    /// Minutes of the crew at the palm, the way on foot to it included.
    pub minutes: Spread,
    /// Its parts; their middles add up to the middle.
    pub lines: Vec<Line>,
    /// Debris, cubic metres loose.
    pub debris_m3: Spread,
    /// Debris, kg.
    pub mass_kg: Spread,
}

/// Many visits of one crew together: middles add up; of each stretch the part that the crew has in common adds up, the
/// part of its own evens out as independent parts do.
pub fn total(figures: &Figures, parts: impl IntoIterator<Item = Spread>) -> Spread {
    let common = figures.common_share();
    let mut sum = Spread::default();
    let (mut below, mut above) = ([0.0; 2], [0.0; 2]);
    for part in parts {
        sum = sum.plus(part);
        let (down, up) = (part.mid - part.low, part.high - part.mid);
        below = [below[0] + down, below[1] + down * down];
        above = [above[0] + up, above[1] + up * up];
    }
    let width = |[all, squares]: [f64; 2]| (common * all * all + (1.0 - common) * squares).sqrt();
    Spread {
        low: (sum.mid - width(below)).max(0.0),
        mid: sum.mid,
        high: sum.mid + width(above),
    }
}
