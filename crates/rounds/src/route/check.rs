//! What a problem must be like before it is searched.

use super::{Plan, Problem, Window, timetable};
use std::fmt;

/// The longest distance or time and the latest clock a problem may have: 500 million of its units (nearly sixteen years,
/// were they seconds).
pub const LONGEST: i64 = 500_000_000;

/// Where in a [`Problem`] something is wrong.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Place {
    /// The tables of travel as a whole.
    Travel,
    /// The way from one place to another.
    Leg {
        /// Index of the place it starts from.
        from: usize,
        /// Index of the place it leads to.
        to: usize,
    },
    /// A job, by its index.
    Job(usize),
    /// A crew, by its index.
    Crew(usize),
    /// The problem as a whole.
    All,
    /// A route of the plan to start from, by its index.
    Start(usize),
}

/// What is wrong there.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Fault {
    /// A table has not `places × places` numbers.
    Shape {
        /// Numbers it has.
        has: usize,
        /// Numbers it should have.
        wants: usize,
    },
    /// A number is below zero.
    Negative,
    /// A number is above [`LONGEST`].
    TooLong,
    /// No such place in the tables of travel.
    NoSuchPlace(usize),
    /// A window that ends before it begins.
    Backwards(Window),
    /// A window that begins before the one in front of it has ended.
    Disorder(Window),
    /// Loads or capacities of another number of kinds than the first crew has.
    Kinds {
        /// Kinds it has.
        has: usize,
        /// Kinds it should have.
        wants: usize,
    },
    /// The costs could grow beyond what a 64-bit number holds.
    TooDear,
    /// A route names a crew or a job that is not there, or one a second time, or cannot be driven.
    NotARoute,
}

/// A problem that cannot be searched: where and what. Its text also says what to do.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Wrong {
    /// Where.
    pub at: Place,
    /// What.
    pub what: Fault,
}

impl fmt::Display for Wrong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.at {
            Place::Travel => write!(f, "travel tables: "),
            Place::Leg { from, to } => write!(f, "travel from place {from} to place {to}: "),
            Place::Job(i) => write!(f, "job {i}: "),
            Place::Crew(i) => write!(f, "crew {i}: "),
            Place::All => write!(f, "the day as a whole: "),
            Place::Start(i) => write!(f, "route {i} of the plan to start from: "),
        }?;
        match self.what {
            Fault::Shape { has, wants } => {
                write!(
                    f,
                    "a table has {has} numbers; give {wants}, one for each pair of places"
                )
            }
            Fault::Negative => write!(f, "a number is below zero; give zero or more"),
            Fault::TooLong => write!(f, "a number is above {LONGEST}; use a larger unit"),
            Fault::NoSuchPlace(place) => {
                write!(
                    f,
                    "place {place} is not in the travel tables; add it there or name another"
                )
            }
            Fault::Backwards(w) => {
                write!(
                    f,
                    "the window {}..{} ends before it begins; swap the two",
                    w.open, w.close
                )
            }
            Fault::Disorder(w) => write!(
                f,
                "the window {}..{} begins before the one in front of it has ended; put windows in order and join those that \
                 touch",
                w.open, w.close
            ),
            Fault::Kinds { has, wants } => {
                write!(
                    f,
                    "{has} kinds of load where the first crew has {wants}; give the same kinds everywhere"
                )
            }
            Fault::TooDear => write!(
                f,
                "costs are too large to add up; use a larger unit of money"
            ),
            Fault::NotARoute => {
                write!(
                    f,
                    "it does not fit this day; leave it out or start without a plan"
                )
            }
        }
    }
}

impl std::error::Error for Wrong {}

pub(super) fn check(problem: &Problem) -> Result<(), Wrong> {
    travel(problem)?;
    let kinds = problem.crews.first().map_or_else(
        || problem.jobs.first().map_or(0, |j| j.load.len()),
        |c| c.room.len(),
    );
    for (i, job) in problem.jobs.iter().enumerate() {
        let at = Place::Job(i);
        place(problem, job.place, at)?;
        number(job.service, at)?;
        load(&job.load, kinds, at)?;
        if job.worth.is_some_and(|w| w < 0) {
            return Err(Wrong {
                at,
                what: Fault::Negative,
            });
        }
        for (k, &w) in job.windows.iter().enumerate() {
            window(w, at)?;
            if k > 0 && w.open <= job.windows[k - 1].close {
                return Err(Wrong {
                    at,
                    what: Fault::Disorder(w),
                });
            }
        }
    }
    for (i, crew) in problem.crews.iter().enumerate() {
        let at = Place::Crew(i);
        place(problem, crew.from, at)?;
        place(problem, crew.to, at)?;
        window(crew.hours, at)?;
        load(&crew.room, kinds, at)?;
        if crew.fixed < 0 || crew.per_distance < 0 || crew.per_second < 0 {
            return Err(Wrong {
                at,
                what: Fault::Negative,
            });
        }
    }
    dear(problem)
}

fn travel(problem: &Problem) -> Result<(), Wrong> {
    let travel = &problem.travel;
    let wants = travel.places.saturating_mul(travel.places);
    for table in [&travel.distance, &travel.seconds] {
        if table.len() != wants {
            let what = Fault::Shape {
                has: table.len(),
                wants,
            };
            return Err(Wrong {
                at: Place::Travel,
                what,
            });
        }
        for (i, &x) in table.iter().enumerate() {
            number(
                x,
                Place::Leg {
                    from: i / travel.places,
                    to: i % travel.places,
                },
            )?;
        }
    }
    Ok(())
}

fn number(x: i64, at: Place) -> Result<(), Wrong> {
    match x {
        ..0 => Err(Wrong {
            at,
            what: Fault::Negative,
        }),
        0..=LONGEST => Ok(()),
        _ => Err(Wrong {
            at,
            what: Fault::TooLong,
        }),
    }
}

fn place(problem: &Problem, place: usize, at: Place) -> Result<(), Wrong> {
    if place < problem.travel.places {
        return Ok(());
    }
    Err(Wrong {
        at,
        what: Fault::NoSuchPlace(place),
    })
}

fn window(w: Window, at: Place) -> Result<(), Wrong> {
    if w.open > w.close {
        return Err(Wrong {
            at,
            what: Fault::Backwards(w),
        });
    }
    if w.open < -LONGEST || w.close > LONGEST {
        return Err(Wrong {
            at,
            what: Fault::TooLong,
        });
    }
    Ok(())
}

fn load(load: &[i64], wants: usize, at: Place) -> Result<(), Wrong> {
    if load.len() != wants {
        let what = Fault::Kinds {
            has: load.len(),
            wants,
        };
        return Err(Wrong { at, what });
    }
    match load
        .iter()
        .find(|&&x| !(0..=i64::MAX / 1_000_000).contains(&x))
    {
        Some(&x) if x < 0 => Err(Wrong {
            at,
            what: Fault::Negative,
        }),
        Some(_) => Err(Wrong {
            at,
            what: Fault::TooLong,
        }),
        None => Ok(()),
    }
}

/// The dearest day there could be must be well within 64 bits.
fn dear(problem: &Problem) -> Result<(), Wrong> {
    let legs = 2 * problem.jobs.len() as i128 + 2;
    let longest = i128::from(problem.travel.distance.iter().copied().max().unwrap_or(0));
    let crews = problem.crews.iter();
    let most: i128 = crews
        .map(|c| {
            i128::from(c.fixed)
                + i128::from(c.per_distance) * longest * legs
                + i128::from(c.per_second) * 2 * i128::from(LONGEST)
        })
        .sum();
    let worth: i128 = problem
        .jobs
        .iter()
        .map(|j| i128::from(j.worth.unwrap_or(0)))
        .sum();
    if most + worth > i128::from(i64::MAX / 4) || problem.jobs.len() > 1_000_000 {
        return Err(Wrong {
            at: Place::All,
            what: Fault::TooDear,
        });
    }
    Ok(())
}

/// Each route of a plan to start from must be one of this day.
pub(super) fn start(problem: &Problem, start: &Plan) -> Result<(), Wrong> {
    let mut crews = vec![false; problem.crews.len()];
    let mut jobs = vec![false; problem.jobs.len()];
    let once =
        |seen: &mut Vec<bool>, i: usize| i < seen.len() && !std::mem::replace(&mut seen[i], true);
    for (i, route) in start.routes.iter().enumerate() {
        let line: Vec<usize> = route.stops.iter().map(|s| s.job).collect();
        let known = once(&mut crews, route.crew) && line.iter().all(|&j| once(&mut jobs, j));
        if !known || timetable(problem, route.crew, &line).is_none() {
            return Err(Wrong {
                at: Place::Start(i),
                what: Fault::NotARoute,
            });
        }
    }
    Ok(())
}
