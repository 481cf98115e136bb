//! The two doors: the cut plan, and the answer to a cut somebody asks for.

use crate::case::CutCase;
use crate::decide::{self, Decision};
use crate::facts;
use crate::method::method;
use crate::rule::Part;
use crate::sight::Sight;
use crown::{Cut, Forecast, Recovery};
use model::{Finding, Metres};

/// Length of petiole left on the palm, measured from the trunk.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct StubLength {
    /// Shortest.
    pub low: Metres,
    /// Longest.
    pub high: Metres,
}

/// What the cut is made with.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tool {
    /// No blade: the frond comes by hand.
    Hand,
    /// Hand saw or pole saw.
    Saw,
}

/// Where the cutter stands.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stand {
    /// On the ground, without a pole.
    Ground,
    /// On the ground, beside the fall line, with a pole.
    GroundWithPole,
    /// In a lift.
    Lift,
    /// In a lift, from above, working down.
    LiftFromAbove,
    /// Trunk height unknown.
    Unknown,
}

/// How to cut.
#[derive(Clone, PartialEq, Debug)]
pub struct Method {
    /// Stub to leave; `None` where nothing is cut (by hand).
    pub stub: Option<StubLength>,
    /// With what.
    pub tool: Tool,
    /// From where.
    pub stand: Stand,
    /// The method rules that spoke, in registry order.
    pub findings: Vec<Finding>,
}

/// Fronds that stay whatever is asked.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct MustStay {
    /// Wholly green.
    pub green: u32,
    /// Partly dead.
    pub yellowing: u32,
}

/// What may come off one stem today, how, and why.
#[derive(Clone, PartialEq, Debug)]
pub struct CutPlan {
    /// The stem.
    pub stem: u16,
    /// Why nobody cuts today; empty when nothing holds. While it is not empty both cuts are nothing.
    pub holds: Vec<Finding>,
    /// What comes off on the visit: wholly dead fronds.
    pub may_take: Cut,
    /// The most that may come off if the owner asks for more; includes `may_take`.
    pub if_asked: Cut,
    /// What stays whatever is asked.
    pub must_stay: MustStay,
    /// How to cut.
    pub method: Method,
    /// Rules on what comes off and what stays that spoke, in registry order.
    pub findings: Vec<Finding>,
    /// Cautions to read before the work, in registry order.
    pub cautions: Vec<Finding>,
}

/// The answer in a word.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Verdict {
    /// All of it may be done.
    Allowed,
    /// Some of it may be done.
    Partly,
    /// No: it over-trims, a hold stands, or nothing of it may be done.
    Refused,
}

impl Verdict {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Verdict::Allowed => "allowed",
            Verdict::Partly => "partly",
            Verdict::Refused => "refused",
        }
    }
}

/// The answer to "take this off".
#[derive(Clone, PartialEq, Debug)]
pub struct AskedAnswer {
    /// In a word.
    pub verdict: Verdict,
    /// What was asked.
    pub asked: Cut,
    /// The nearest cut that is allowed: the part of the asked cut that may be done.
    pub allowed: Cut,
    /// The reason first, then the rules that stand against it, with their sources.
    pub findings: Vec<Finding>,
    /// Live fronds asked for, in years of growth; `None` when the palm makes none.
    pub years_growth: Option<f64>,
    /// The crown on the day, if the asked cut were made.
    pub after: Forecast,
    /// How long it would need after the asked cut, and what leaf that costs.
    pub recovery: Recovery,
    /// The same after the nearest allowed cut.
    pub recovery_if_allowed: Recovery,
}

/// What may come off this stem today.
pub fn cut_plan(case: &CutCase) -> CutPlan {
    plan_from(case.stem, &facts::sight(case))
}

/// The plan from plain facts.
pub fn plan_from(stem: u16, sight: &Sight) -> CutPlan {
    let spoken = decide::spoken(sight);
    let limit = decide::limit(&spoken);
    let crown = sight.crown;
    let all = Cut {
        green: crown.green,
        yellowing: crown.yellowing,
        brown: crown.brown,
    };
    let if_asked = limit.nearest(all);
    CutPlan {
        stem,
        holds: decide::part(&spoken, Part::Hold),
        may_take: limit.nearest(Cut {
            brown: crown.brown,
            ..Cut::NONE
        }),
        if_asked,
        must_stay: MustStay {
            green: crown.green - if_asked.green,
            yellowing: crown.yellowing - if_asked.yellowing,
        },
        method: method(sight, decide::part(&spoken, Part::Method)),
        findings: decide::part(&spoken, Part::Take),
        cautions: decide::part(&spoken, Part::Caution),
    }
}

/// May this be taken off today, and what does it cost the palm?
pub fn asked(case: &CutCase, cut: Cut) -> AskedAnswer {
    let Decision {
        verdict,
        allowed,
        findings,
        years_growth,
    } = decide::decide(&facts::sight(case), cut);
    AskedAnswer {
        verdict,
        asked: cut,
        allowed,
        findings,
        years_growth,
        after: case.reading.forecast(cut, case.today),
        recovery: case.reading.recovery(cut),
        recovery_if_allowed: case.reading.recovery(allowed),
    }
}

/// "Take `count` live fronds off" as a cut, oldest first: yellowing fronds before green ones, as they hang.
/// What is more than there is becomes green, so that the answer can say so.
pub fn oldest_first(case: &CutCase, count: u32) -> Cut {
    let yellowing = facts::sight(case).crown.yellowing.min(count);
    Cut {
        green: count - yellowing,
        yellowing,
        brown: 0,
    }
}
