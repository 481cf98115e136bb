//! Day rounds: which crew goes where, in which order, at what time.
//!
//! All times are whole seconds after local midnight, all costs whole units the caller chooses (seconds, or hundredths of
//! money); a search on whole numbers gives the same bits everywhere.

mod check;
mod lots;
mod plan;
mod ready;
mod search;

pub use check::{Fault, LONGEST, Place, Wrong};
pub use plan::{cost, timetable};

/// Seconds after local midnight.
pub type Clock = i64;

/// A stretch of the day in which work may start: from `open` to `close`, both included.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Window {
    /// First second.
    pub open: Clock,
    /// Last second at which the work may start.
    pub close: Clock,
}

/// Something to be done at a place: one site, or a part of it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Job {
    /// Index of the place in the travel matrix.
    pub place: usize,
    /// Seconds of work.
    pub service: i64,
    /// When the work may start, in the order of time and apart; empty: at any time. Quiet hours are the gaps.
    pub windows: Vec<Window>,
    /// What it takes of each of the crew's capacities (loads, litres of debris); same length as [`Crew::room`].
    pub load: Vec<i64>,
    /// Skills and kit wanted, as bits: each must be in [`Crew::skills`].
    pub needs: u64,
    /// What leaving it out costs; `None`: it must be done if any crew can.
    pub worth: Option<i64>,
}

/// A crew with its vehicle for one day.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Crew {
    /// Where it starts: index of a place.
    pub from: usize,
    /// Where it ends; may be another depot.
    pub to: usize,
    /// Earliest departure and latest return.
    pub hours: Window,
    /// How much of each kind it can take before it is full.
    pub room: Vec<i64>,
    /// Skills and kit, as bits.
    pub skills: u64,
    /// Cost of sending it out at all.
    pub fixed: i64,
    /// Cost of a unit of distance.
    pub per_distance: i64,
    /// Cost of a second between departure and return.
    pub per_second: i64,
}

/// How far and how long it is between places; rows are where from. Need not be symmetric.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Travel {
    /// Number of places.
    pub places: usize,
    /// `places × places` distances, row by row.
    pub distance: Vec<i64>,
    /// `places × places` seconds, row by row.
    pub seconds: Vec<i64>,
}

/// A day to plan.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Problem {
    /// Between places.
    pub travel: Travel,
    /// What is to be done.
    pub jobs: Vec<Job>,
    /// Who can do it.
    pub crews: Vec<Crew>,
}

/// One stop of a route.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Stop {
    /// Index of the job.
    pub job: usize,
    /// Arrival.
    pub arrive: Clock,
    /// Start of the work; later than the arrival where the crew has to wait.
    pub start: Clock,
    /// End of the work.
    pub end: Clock,
}

/// The day of one crew that goes out.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Route {
    /// Index of the crew.
    pub crew: usize,
    /// Departure: as late as can be without coming home later than the earliest possible return.
    pub leave: Clock,
    /// Stops in order; never empty.
    pub stops: Vec<Stop>,
    /// Return.
    pub back: Clock,
    /// Distance driven.
    pub distance: i64,
}

/// Why a job is in no route. The first that applies, asked for the job alone with the whole day free; only the last
/// two speak of the other jobs.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Unplaced {
    /// No crew has all the skills and kit.
    Skills,
    /// No crew with the skills has room for it, even empty.
    Room,
    /// No such crew can be there within its windows and be back in its hours, even alone.
    Hours,
    /// It fits alone, not beside the others.
    Full,
    /// It fits, but costs more than it is worth.
    Worth,
}

/// The plan of a day.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Plan {
    /// Crews that go out, in the order of their index.
    pub routes: Vec<Route>,
    /// Jobs left out, with the reason, in the order of their index.
    pub unplaced: Vec<(usize, Unplaced)>,
    /// Total cost: fixed, distance and seconds of the routes, and the worth of what is left out where it has one.
    pub cost: i64,
}

/// Plans a day: `iterations` rounds of tearing some stops out of the plan and putting them back better, from a plan made
/// stop by stop. The same problem, seed and number of iterations give the same plan everywhere.
///
/// `watch` is told the number of iterations done and the best plan so far, before the first and every few hundred; if it
/// answers `false` the search ends and the best plan is the answer. Required jobs come before all costs; what cannot be
/// placed is listed with the first true reason. [`Wrong`] says what is malformed, where, and what to do.
pub fn solve(
    problem: &Problem,
    seed: u64,
    iterations: u64,
    watch: &mut dyn FnMut(u64, &Plan) -> bool,
) -> Result<Plan, Wrong> {
    check::check(problem)?;
    Ok(search::run(problem, None, seed, iterations, watch))
}

/// As [`solve`], but from a plan of this day, which is made better; the search starts cooler, so that it stays near.
pub fn solve_from(
    problem: &Problem,
    start: &Plan,
    seed: u64,
    iterations: u64,
    watch: &mut dyn FnMut(u64, &Plan) -> bool,
) -> Result<Plan, Wrong> {
    check::check(problem)?;
    check::start(problem, start)?;
    Ok(search::run(problem, Some(start), seed, iterations, watch))
}
