//! What is asked of a trace.

use model::knowledge::{DayRange, DisorderRow};
use model::{Arg, Day, Finding, Knowledge, Metres, Moment, Severity};

/// Which way through time.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Direction {
    /// Whom the case may have reached.
    Forward,
    /// Where the case may have it from.
    Backward,
    /// Both.
    #[default]
    Both,
}

/// A palm that was found infected.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct CaseAsk {
    /// Its tag.
    pub tag: String,
    /// The day on which it was seen to be sick; `None`: the day of the trace.
    pub seen_sick: Option<Day>,
    /// The day from which the keeper takes it to have been infectious; `None`: worked out from the latency.
    pub infectious_from: Option<Day>,
}

/// A trace to be made.
#[derive(Clone, PartialEq, Debug)]
pub struct Ask<'k> {
    /// The palms that were found infected, at least one.
    pub cases: Vec<CaseAsk>,
    /// The disorder; `None` if it is not named: every palm counts as a host that nobody knows.
    pub disorder: Option<&'k DisorderRow>,
    /// Days from exposure to the first sign as the keeper has it; an end that is `None` is taken from the disorder.
    pub latency: DayRange,
    /// Which way.
    pub direction: Direction,
    /// The log counts up to here; the trace is made as of then.
    pub as_of: Moment,
    /// Days between two looks at a watched palm.
    pub look_every: u32,
    /// How far from a case palms are watched where blades do not carry it.
    pub radius: Metres,
}

impl<'k> Ask<'k> {
    /// Looks every four weeks: assumed.
    pub const LOOK_EVERY: u32 = 28;
    /// Palms within 100 m are watched: assumed.
    pub const RADIUS: Metres = Metres(100.0);

    /// A trace of one palm both ways, with the assumed interval and radius.
    pub fn of(tag: &str, disorder: Option<&'k DisorderRow>, as_of: Moment) -> Ask<'k> {
        Ask {
            cases: vec![CaseAsk {
                tag: tag.to_owned(),
                seen_sick: None,
                infectious_from: None,
            }],
            disorder,
            latency: DayRange::default(),
            direction: Direction::Both,
            as_of,
            look_every: Ask::LOOK_EVERY,
            radius: Ask::RADIUS,
        }
    }
}

/// The disorder with a key; refused with the keys that are known.
pub fn disorder(key: &str) -> Result<&'static DisorderRow, Finding> {
    let known = &Knowledge::embedded().disorders;
    known.iter().find(|row| row.key == key).ok_or_else(|| {
        let keys: Vec<&str> = known.iter().map(|row| row.key.as_str()).collect();
        Finding::new("tracing-no-such-disorder", Severity::Refuse)
            .with("found", Arg::Text(key.to_owned()))
            .with("known", Arg::Text(keys.join(", ")))
    })
}
