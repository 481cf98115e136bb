//! What a reading answers: plain values, no behaviour beyond reading them.

use model::Day;

/// Why fronds are lost.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Explanation {
    /// Fed and settled: one death per birth.
    Ageing,
    /// Shedding and slow growth after a move.
    Move,
    /// A frond's life cut short by a nutrient shortage.
    Hunger,
    /// A decline to death.
    Decline,
}

impl Explanation {
    /// All, in the order of the columns of `readings.csv`.
    pub const ALL: [Explanation; 4] = [
        Explanation::Ageing,
        Explanation::Move,
        Explanation::Hunger,
        Explanation::Decline,
    ];

    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Explanation::Ageing => "ageing",
            Explanation::Move => "move",
            Explanation::Hunger => "hunger",
            Explanation::Decline => "decline",
        }
    }

    /// Index into arrays ordered as [`Explanation::ALL`].
    pub fn index(self) -> usize {
        self as usize
    }
}

/// Five quantiles of a distribution.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Quantiles {
    /// 5 %.
    pub q05: f64,
    /// 25 %.
    pub q25: f64,
    /// 50 %.
    pub q50: f64,
    /// 75 %.
    pub q75: f64,
    /// 95 %.
    pub q95: f64,
}

/// Fronds taken off on the day of the reading.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Cut {
    /// Wholly green fronds, oldest first.
    pub green: u32,
    /// Partly dead fronds.
    pub yellowing: u32,
    /// Wholly dead fronds.
    pub brown: u32,
}

impl Cut {
    /// Nothing taken.
    pub const NONE: Cut = Cut {
        green: 0,
        yellowing: 0,
        brown: 0,
    };

    /// Live fronds taken: green and yellowing.
    pub fn live(self) -> u32 {
        self.green + self.yellowing
    }
}

/// What would be counted on a day: quantiles of the count, counting noise included.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Forecast {
    /// Live fronds (green and yellowing).
    pub live: Quantiles,
    /// Wholly green fronds.
    pub green: Quantiles,
    /// Partly dead fronds.
    pub yellowing: Quantiles,
    /// Wholly dead fronds still on.
    pub brown_on: Quantiles,
    /// Fronds that died since the last inspection, hanging or fallen.
    pub lost: Quantiles,
}

/// The loss between the last two looks (or since the last cleaning) against what explanations would make.
#[derive(Clone, PartialEq, Debug)]
pub struct LossReading {
    /// Start of the interval.
    pub since: Day,
    /// End of the interval: the last inspection.
    pub until: Day,
    /// Fronds lost as far as the counts tell; `None` if they cannot tell.
    pub lost: Option<f64>,
    /// 5 % and 95 % of the count each explanation makes, ordered as [`Explanation::ALL`]; `None` where it does not apply.
    pub expected: [Option<(f64, f64)>; 4],
    /// 5 % and 95 % of what ageing and move together make.
    pub ordinary: (f64, f64),
    /// Probability that ageing and move together make at least what was seen.
    pub tail_probability: Option<f64>,
}

/// When to call: `count` or more further losses by `by` would happen in less than 1 of 20 ordinary cases.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Tripwire {
    /// Smallest count reached with less than 5 % probability by ageing and move together.
    pub count: u32,
    /// The date.
    pub by: Day,
}

/// What losses are to be expected by a day, counted from the last inspection (or from today where nobody has looked).
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct ExpectedLoss {
    /// From.
    pub since: Day,
    /// To.
    pub by: Day,
    /// Four of five such palms lose at least so many ... (10 %).
    pub low: u32,
    /// The middle (50 %).
    pub median: u32,
    /// ... and at most so many (90 %).
    pub high: u32,
    /// As in [`Tripwire::count`]: reached with less than 5 % probability.
    pub call_from: u32,
}

/// How long a crown needs after a cut, days from the cut; `None` in a quantile means not within ten years.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Recovery {
    /// Days until live fronds hang down to the level line again (5, 50, 95 %).
    pub to_level: [Option<f64>; 3],
    /// Days until a full crown again (5, 50, 95 %).
    pub to_full: [Option<f64>; 3],
    /// Frond-months of leaf lost against the uncut crown over the next two years (5, 50, 95 %).
    pub frond_months_lost: [f64; 3],
}

/// When a visit is worth it.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct DueWindow {
    /// First day on which at least the tidy number of dead fronds hang, in the median; `None` beyond two years.
    pub earliest: Option<Day>,
    /// Last day before the limit is passed, in the upper quarter (75 %); `None` beyond two years.
    pub latest: Option<Day>,
}

/// Colour of a drawn frond, as on the palm.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tint {
    /// Wholly green.
    Green,
    /// Partly dead.
    Yellowing,
    /// Wholly dead, still on.
    Brown,
}

/// One frond to draw.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct PictureFrond {
    /// Rank from the spear: 1 is the youngest open frond.
    pub rank: u32,
    /// Degrees from straight up, 0..=180.
    pub lean_degrees: f64,
    /// Degrees round the trunk, 0..360, successive fronds 137.5 degrees apart.
    pub azimuth_degrees: f64,
    /// Colour.
    pub tint: Tint,
    /// Taken off by the cut in question (drawn as a mark, only at day 0).
    pub cut: bool,
}

/// The median crown of a day, ready to draw, youngest first.
#[derive(Clone, PartialEq, Debug)]
pub struct Picture {
    /// The day.
    pub day: Day,
    /// Fronds, youngest first; brown ones last.
    pub fronds: Vec<PictureFrond>,
    /// Lean of the oldest frond of a full crown, degrees.
    pub theta_end_degrees: f64,
    /// Whether theta_end was fitted to clock readings (else assumed).
    pub theta_from_clock: bool,
}
