//! What a trace answers.

use model::knowledge::DayRange;
use model::{BladeId, Day, Finding, Metres, Moment, PalmId, Position, SourceKey};

/// A palm as people name it.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Stand {
    /// Identity in the register; `None` from a file.
    pub id: Option<PalmId>,
    /// Tag.
    pub tag: String,
    /// Botanical name as written; empty if not known.
    pub species: String,
    /// Grounds; empty if not known.
    pub site: String,
    /// Where it stands.
    pub position: Option<Position>,
}

/// Whether a palm is a host of the disorder.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Default)]
pub enum HostWord {
    /// A known, ordinary host.
    Yes,
    /// Hit more than others.
    Prone,
    /// By experiment or seldom.
    Reported,
    /// Not among the known hosts: exposed, but passes nothing on.
    No,
    /// Species, disorder or hosts not known: passes on in the possible set only.
    #[default]
    Unknown,
}

impl HostWord {
    /// All with their file words.
    pub const ALL: [(HostWord, &'static str); 5] = [
        (HostWord::Yes, "yes"),
        (HostWord::Prone, "prone"),
        (HostWord::Reported, "reported"),
        (HostWord::No, "no"),
        (HostWord::Unknown, "unknown"),
    ];

    /// The word used in files.
    pub fn word(self) -> &'static str {
        HostWord::ALL[self as usize].1
    }
}

/// Whether the disorder is known to travel on blades.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Travel {
    /// It is.
    OnBlades,
    /// It spreads otherwise: said first, and [`TraceAnswer::nearby`] is the list to watch.
    NotOnBlades,
    /// How it spreads is not known.
    Unknown,
    /// The disorder is not named.
    NotNamed,
}

/// The latency that was reckoned with, in days.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct LatencyTold {
    /// Shortest and longest; `None` unknown. An unknown shortest is reckoned as 0 in the possible set, and the certain
    /// set stops at the first generation.
    pub range: DayRange,
    /// Whether the keeper gave either end.
    pub by_keeper: bool,
    /// Sources of the ends that come from the tables.
    pub sources: Vec<SourceKey>,
}

/// A case palm with the times that were reckoned with.
#[derive(Clone, PartialEq, Debug)]
pub struct CaseTold {
    /// The palm.
    pub palm: Stand,
    /// The day it was seen to be sick.
    pub seen_sick: Day,
    /// Surely infectious from here on.
    pub surely_from: Moment,
    /// Possibly infectious from here on; `None`: from the beginning of the log.
    pub possibly_from: Option<Moment>,
    /// It was exposed not before this; `None`: nobody knows.
    pub exposed_from: Option<Moment>,
    /// It was exposed not after this.
    pub exposed_until: Moment,
    /// How often it was cut according to the log.
    pub cuts: usize,
}

/// How much a log holds.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct LogSpan {
    /// Cuts.
    pub cuts: usize,
    /// Cleanings.
    pub cleanings: usize,
    /// Blades.
    pub blades: usize,
    /// Palms.
    pub palms: usize,
    /// The first thing in it.
    pub first: Option<Moment>,
    /// The last.
    pub last: Option<Moment>,
}

/// Why a cleaning between two cuts does not end the chain.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Passed {
    /// Too short or too weak; minutes missing if that is known.
    Short(Option<f64>),
    /// Nobody can say. Minutes missing by the strictest source, where another calls it enough.
    Unknown(Option<f64>),
    /// It was enough, but within the same second as a cut: nobody knows which came first. Possible set only.
    OrderOpen,
}

/// A cleaning that did not stop the chain.
#[derive(Clone, PartialEq, Debug)]
pub struct Between {
    /// When.
    pub at: Moment,
    /// The agent as written; empty if not noted.
    pub agent: String,
    /// Percent by volume in the bath.
    pub strength_pct: Option<f64>,
    /// Minutes of contact.
    pub contact_min: Option<f64>,
    /// Why it did not stop it.
    pub passed: Passed,
}

/// One passage of a blade from palm to palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Step {
    /// Tag of the blade.
    pub blade: String,
    /// Identity in the register; `None` from a file.
    pub blade_id: Option<BladeId>,
    /// Tag of the palm it came from.
    pub from: String,
    /// When it had cut there.
    pub left: Moment,
    /// Tag of the palm it went to.
    pub to: String,
    /// When it had cut there.
    pub reached: Moment,
    /// Cleanings in between, none of which ends the chain; the last ones, at most [`Step::MOST_BETWEEN`].
    pub between: Vec<Between>,
    /// Tags of the palms it cut in between, in the order of the cuts, each once; at most [`Step::MOST_BETWEEN`].
    pub cut_between: Vec<String>,
    /// How many cuts it made in between.
    pub cuts_between: usize,
}

impl Step {
    /// Palms and cleanings named one by one.
    pub const MOST_BETWEEN: usize = 50;
}

/// One way from a case to a palm, or from a candidate source to a case.
#[derive(Clone, PartialEq, Debug)]
pub struct Way {
    /// Passages of a blade, at least 1: as many as `chain` is long.
    pub generation: u32,
    /// Forward: when the palm was first exposed. Backward: when it was last cut by the blade that leads to the case.
    pub when: Moment,
    /// In the order of time: forward from the case to the palm, backward from the palm to the case.
    pub chain: Vec<Step>,
}

/// A palm that a chain of blades joins to a case.
#[derive(Clone, PartialEq, Debug)]
pub struct Exposure {
    /// The palm.
    pub palm: Stand,
    /// Whether it is a host.
    pub host: HostWord,
    /// In the certain set: the chain holds whatever the doubtful cleanings were worth.
    pub certain: bool,
    /// The way to show: of the certain set if there is one, else of the possible set.
    pub way: Way,
    /// The first possible contact (backward: the last), where it is another than `way`.
    pub possible: Option<Way>,
    /// Forward: the last exposure in the possible set. Backward: the earliest cut that may have passed it on.
    pub last: Moment,
    /// How many of its cuts were exposures in the possible set (backward: may have passed it on).
    pub times: u32,
    /// Forward: last day on which a first sign is to be expected; `None`: nobody knows the longest time, and always
    /// backward.
    pub watch_until: Option<Day>,
    /// Forward: when to look at it, from the day of the trace on, at most [`Exposure::MOST_LOOKS`]; empty once the watch
    /// is over, and always backward.
    pub looks: Vec<Day>,
}

impl Exposure {
    /// Dates given ahead.
    pub const MOST_LOOKS: usize = 6;

    /// First contact in the possible set: never later (backward: never earlier) than that of `way`.
    pub fn first(&self) -> &Way {
        self.possible.as_ref().unwrap_or(&self.way)
    }
}

/// A palm to watch because of where it stands and what it is.
#[derive(Clone, PartialEq, Debug)]
pub struct Nearby {
    /// The palm.
    pub palm: Stand,
    /// How far from the nearest case; `None` if a position is missing.
    pub distance: Option<Metres>,
    /// Whether it is a host.
    pub host: HostWord,
    /// Last day on which a first sign is to be expected; `None` unknown.
    pub watch_until: Option<Day>,
    /// When to look at it.
    pub looks: Vec<Day>,
}

/// A trace.
#[derive(Clone, PartialEq, Debug)]
pub struct TraceAnswer {
    /// As of when: a late entry may change it.
    pub as_of: Moment,
    /// Key of the disorder, if it is named.
    pub disorder: Option<String>,
    /// To be said before anything else if it is not [`Travel::OnBlades`].
    pub travel: Travel,
    /// What was reckoned with.
    pub latency: LatencyTold,
    /// The cases.
    pub cases: Vec<CaseTold>,
    /// What the log holds up to `as_of`.
    pub log: LogSpan,
    /// Exposed palms: by generation of the way shown, then time, then tag.
    pub exposed: Vec<Exposure>,
    /// Palms from which a case may have it: certain ones first, then the latest first, then by tag.
    pub sources: Vec<Exposure>,
    /// Palms to watch by distance and host; only where blades are not known to carry it, nearest first.
    pub nearby: Vec<Nearby>,
    /// What is wrong with the log, and what must be known of the trace; codes in `tracing.ftl`.
    pub findings: Vec<Finding>,
}
