//! Day rounds: which crew goes to which palms on a day, in which order, at what time.
//!
//! Palms are gathered by site into pieces of work of at most an hour, in the order of health and of the way on foot
//! ([`rounds::walk`]); the search ([`rounds::route`]) gives the pieces to crews. Nothing is written before the keeper
//! keeps a proposal. `docs/rounds.md` has the exact meaning.

mod crews;
mod gather;
mod keep;
mod lay_out;
#[cfg(test)]
mod tests;
mod wanted;
mod ways;

pub use crews::has_lift;
pub use keep::{carried, keep, read, replaced};
pub use ways::{KM_PER_HOUR, ROAD_FACTOR};

use crate::intake::TravelTable;
use crate::office::Office;
use crate::views::standing::Standings;
use model::{Arg, Day, Finding, PalmId, Position, RoundPlan, Severity};
pub use rounds::estimate::Task;
use rounds::route;
use rounds::walk::Health;

/// Palms that one proposal may hold: a search over more takes longer than anybody waits at a gate.
pub const MOST_PALMS: usize = 2_000;

/// What a round is for unless somebody says so: feeding is not, as it wants another load.
pub const USUAL_TASKS: [Task; 3] = [Task::Look, Task::Cut, Task::Water];

/// Which palms.
#[derive(Clone, PartialEq, Debug)]
pub enum Scope {
    /// All that are due on the day.
    Due,
    /// Those of some sites that are due on the day.
    Sites(Vec<String>),
    /// These, by tag: looked at and cut whether due or not, watered and fed when due.
    Palms(Vec<String>),
}

/// A day to plan.
#[derive(Clone, PartialEq, Debug)]
pub struct Ask {
    /// The day.
    pub day: Day,
    /// Crews by name; none: all that work.
    pub crews: Vec<String>,
    /// Which palms.
    pub scope: Scope,
    /// What is done there, in the order in which it is done; see [`USUAL_TASKS`].
    pub tasks: Vec<Task>,
    /// The keeper's own ways between places; where it has none they are reckoned.
    pub travel: Option<TravelTable>,
    /// Seed of the search.
    pub seed: u64,
    /// Rounds of the search.
    pub iterations: u64,
}

/// A palm of a proposed round.
#[derive(Clone, PartialEq, Debug)]
pub struct ProposedStop {
    /// Which.
    pub palm: PalmId,
    /// Its site.
    pub site: String,
    /// Where it stands.
    pub at: Option<Position>,
    /// In which class of health it is taken.
    pub health: Health,
    /// Whether it needs a lift.
    pub lift: bool,
}

/// One crew's day.
#[derive(Clone, PartialEq, Debug)]
pub struct Proposed {
    /// As it would be recorded.
    pub plan: RoundPlan,
    /// The same stops with what the plan does not carry; same length and order.
    pub stops: Vec<ProposedStop>,
    /// Where the crew starts.
    pub from: Position,
    /// Where it ends.
    pub to: Position,
    /// Seconds on the road.
    pub driving: i64,
}

/// A palm in no round, and why.
#[derive(Clone, PartialEq, Debug)]
pub struct Left {
    /// Which.
    pub palm: PalmId,
    /// Why.
    pub why: Finding,
}

/// What could be done with a day.
#[derive(Clone, PartialEq, Debug)]
pub struct Proposal {
    /// The day.
    pub day: Day,
    /// Crews that go out.
    pub rounds: Vec<Proposed>,
    /// Palms left out.
    pub left: Vec<Left>,
    /// What the plan rests on and what could not be used.
    pub remarks: Vec<Finding>,
}

/// Plans a day. `watch` is told how many iterations are done and how many pieces of work have no crew yet; if it answers
/// `false` the best plan so far is taken. The same office, ask and number of iterations give the same proposal.
///
/// Refused where there is nobody to send, nothing to do, or the ask names what is not there.
pub fn propose(
    office: &Office,
    standings: &Standings,
    ask: &Ask,
    watch: &mut dyn FnMut(u64, usize) -> bool,
) -> Result<Proposal, Vec<Finding>> {
    let mut remarks = Vec::new();
    let crews = crews::available(office, ask, &mut remarks)?;
    let work = gather::work(office, standings, ask, &crews, &mut remarks)?;
    let ways = ways::between(&crews, &work, ask.travel.as_ref(), &mut remarks);
    let problem = ways.problem(&crews, &work);
    let mut see = |done: u64, plan: &route::Plan| watch(done, plan.unplaced.len());
    let plan = route::solve(&problem, ask.seed, ask.iterations, &mut see).map_err(|wrong| {
        vec![refuse("round-not-planned").with("why", Arg::Text(wrong.to_string()))]
    })?;
    Ok(lay_out::proposal(
        ask, &crews, work, &problem, &plan, remarks,
    ))
}

fn refuse(code: &'static str) -> Finding {
    Finding::new(code, Severity::Refuse)
}
