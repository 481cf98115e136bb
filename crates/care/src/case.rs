//! What the rules are told: one stem of one palm on one day.

use crate::judge::Judgement;
use model::state::Hold;
use model::{Day, Inspection, Knowledge, Palm, Species};

/// What is going on around the palm.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Grounds {
    /// Palm weevils fly here.
    pub weevil_area: bool,
    /// A storm is forecast or the storm season's watch is on.
    pub storm_expected: bool,
    /// Day of the last freeze that may have burnt fronds, if one is still in play.
    pub freeze_on: Option<Day>,
    /// Voltage to ground of the nearest line in kV, told by the utility; `None` is unknown.
    pub line_kv: Option<f64>,
}

/// All that a cut plan needs of one stem.
#[derive(Clone, Copy)]
pub struct CutCase<'a> {
    /// The palm.
    pub palm: &'a Palm,
    /// Its species row, if its name resolves.
    pub species: Option<&'a Species>,
    /// The stem, from 1.
    pub stem: u16,
    /// This stem's inspections, oldest first.
    pub inspections: &'a [Inspection],
    /// This stem's reading, as of `today`.
    pub reading: &'a crown::Reading,
    /// Probability of each explanation for the whole palm, ordered as [`crown::Explanation::ALL`].
    pub palm_probabilities: [f64; 4],
    /// Holds set by people and not lifted; those past their last day are not looked at.
    pub holds: &'a [Hold],
    /// Today.
    pub today: Day,
    /// Day of the next visit after this one. `None`: nothing planned, so nothing live can be allowed.
    pub next_visit: Option<Day>,
    /// What ails the palm by the signs of the last look, if it was judged.
    pub judgement: Option<&'a Judgement>,
    /// What is going on around the palm.
    pub grounds: Grounds,
    /// Rules, cautions and their sources.
    pub knowledge: &'a Knowledge,
}

/// Whether a moved palm has its roots and its pace back.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Settled {
    /// Never moved as far as is known.
    NeverMoved,
    /// Moved, and established again.
    Established,
    /// Moved and not established; taken as established on this day at the latest (assumed: 540 days).
    NotYet {
        /// The move.
        moved_on: Day,
        /// The latest day.
        assumed_by: Day,
    },
}

/// What the rules look at in a crown: taken from the reading in one place, made by hand in tests.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CrownFacts {
    /// Wholly green fronds on the stem today.
    pub green: u32,
    /// Partly dead fronds today.
    pub yellowing: u32,
    /// Wholly dead fronds still on, today.
    pub brown: u32,
    /// Days since green and yellowing were both counted; `None`: never.
    pub counted_days_ago: Option<i32>,
    /// Live fronds hanging below the level line (clock 9 and 3).
    pub below_level: u32,
    /// Probability of each explanation, the stem's or the palm's, whichever is worse for cutting.
    pub probabilities: [f64; 4],
    /// Fronds grown back by the next visit (median); `None`: no next visit known.
    pub regrowth: Option<u32>,
    /// Fronds made in the year from today (median).
    pub fronds_per_year: f64,
    /// Live fronds of this stem's full, fed crown (median).
    pub full_crown: f64,
    /// Roots and pace after a move.
    pub settled: Settled,
}

impl CrownFacts {
    /// Live fronds: green and yellowing.
    pub fn live(&self) -> u32 {
        self.green + self.yellowing
    }
}
