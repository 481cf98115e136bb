//! When to come back: visit days of one site over a season.
//!
//! Every palm has a window: it is worth a visit from one day on and late after another; after a visit the next window
//! follows from the forecast. One visit serves any number of palms whose windows are open. Wanted are the visits that make
//! nobody later than can be helped, and among those the cheapest; a palm is never served before its window opens, however
//! few the visits. `docs/season.md` says what is proven and how.

mod chain;
mod prove;
mod search;
mod tell;
#[cfg(test)]
mod tests;
mod weeks;

pub use tell::{Late, Money, Plan, Served, Visit, Why};
pub use weeks::{Weeks, weeks};

use chain::Chain;
use crown::DueWindow;
use search::{Answer, Task};

/// What a palm is served for.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Kind {
    /// Dead fronds: may be late, must not be early, comes again.
    Fronds,
    /// Flower or fruit stalks of one season: within the window or not at all.
    Stalks,
}

/// Something a palm wants over the season.
#[derive(Clone, PartialEq, Debug)]
pub struct Need {
    /// What for.
    pub kind: Kind,
    /// Whether only a lift reaches it.
    pub lift: bool,
    /// The window as the palm stands; nothing due in sight: both `None`.
    pub now: DueWindow,
    /// The next window after a visit in each week of the season; empty: it does not come again.
    pub after: Vec<DueWindow>,
    /// Nobody may cut before this day.
    pub not_before: Option<model::Day>,
    /// Minutes of the crew for each time it is served, whatever hangs.
    pub minutes: f64,
    /// Minutes of the crew for each frond.
    pub minutes_each: f64,
    /// Loose debris for each frond, cubic metres.
    pub m3_each: f64,
    /// Dead fronds hanging: a row for "not served yet" and one for each week it is served in, and in it a figure for each
    /// week and one for the end of the season. `(weeks + 1) × (weeks + 1)` figures; empty: none (stalks).
    pub hanging: Vec<f64>,
    /// For stalks: what it costs to leave them, in the smallest unit of money.
    pub missed: i64,
}

/// The keeper's prices, in the smallest unit of the currency.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Tariff {
    /// Sending a crew to the site once.
    pub trip: i64,
    /// Hiring a lift for a day.
    pub lift_day: i64,
    /// An hour of the crew.
    pub crew_hour: i64,
    /// Carting off and tipping a cubic metre of loose debris.
    pub debris_m3: i64,
    /// A dead frond still hanging when the storm season opens.
    pub storm_frond: i64,
    /// Hours of work on a site in a day.
    pub day_hours: f64,
}

/// One site over one season.
#[derive(Clone, PartialEq, Debug)]
pub struct Season {
    /// The weeks.
    pub weeks: Weeks,
    /// What the palms want.
    pub needs: Vec<Need>,
    /// Prices.
    pub tariff: Tariff,
    /// The day on which the storm season opens, if it does within the season.
    pub storm: Option<model::Day>,
}

/// How much work may be spent on a proof, in millions of elementary steps: [`USUAL_EFFORT`] is about a second.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Effort(pub u32);

/// Enough for most sites.
pub const USUAL_EFFORT: Effort = Effort(400);

/// The plan of a site and what a visit more or fewer would do.
#[derive(Clone, PartialEq, Debug)]
pub struct Answers {
    /// Nobody later than can be helped, and then as cheap as can be.
    pub best: Plan,
    /// With one visit fewer: the least lateness that leaves, and then as cheap as can be. `None` without visits.
    pub fewer: Option<Plan>,
    /// With one visit more: the shortest waiting in open windows it can give. `None` where no week is left for it.
    pub more: Option<Plan>,
}

/// The first day on which a need may be served as the palm stands: worth a visit, and not held.
pub fn opens(need: &Need) -> Option<model::Day> {
    chain::opens(need, 0)
}

/// Plans a site. The same input gives the same plan everywhere.
pub fn plan(season: &Season, effort: Effort) -> Answers {
    beside(season, best(season, effort), effort)
}

/// The best plan alone.
pub fn best(season: &Season, effort: Effort) -> Plan {
    cheapest(season, &chains(season), effort)
}

fn chains(season: &Season) -> Vec<Chain> {
    season.needs.iter().map(|n| Chain::of(season, n)).collect()
}

/// What a visit fewer and one more than in the best plan would do.
pub fn beside(season: &Season, best: Plan, effort: Effort) -> Answers {
    let chains = chains(season);
    let visits = best.visits.len();
    let fewer = visits
        .checked_sub(1)
        .map(|most| fewest(season, &chains, most, effort));
    let more = (visits < season.weeks.open()).then(|| tidiest(season, &chains, visits + 1, effort));
    Answers {
        best,
        fewer,
        more: more.flatten(),
    }
}

/// The cheapest plan that makes nobody later than can be helped.
fn cheapest(season: &Season, chains: &[Chain], effort: Effort) -> Plan {
    let fixed = [season.tariff.trip, season.tariff.lift_day];
    let task = Task::of(season, chains, fixed, Chain::punctual_money);
    let late: i64 = chains.iter().map(|c| c.least_late).sum();
    tell::plan(season, chains, &search::solve(&task, effort), |bound| {
        (late, bound)
    })
}

/// With at most so many visits: the least days late, and then the cheapest. Still nobody early.
fn fewest(season: &Season, chains: &[Chain], most: usize, effort: Effort) -> Plan {
    let fixed = [season.tariff.trip, season.tariff.lift_day];
    let dear = 1
        + (season.tariff.trip + season.tariff.lift_day) * most as i64
        + chains.iter().map(Chain::most_money).sum::<i64>();
    let mut task = Task::of(season, chains, fixed, |chain, from, to| {
        chain.late_then_money(from, to, dear)
    });
    task.most = most;
    let answer: Answer = search::solve(&task, effort);
    tell::plan(season, chains, &answer, |bound| {
        (bound / dear, bound % dear)
    })
}

/// With exactly so many visits, nobody later than can be helped: the fewest palm-days in open windows, and then the
/// cheapest. `None` if there is no such plan.
fn tidiest(season: &Season, chains: &[Chain], visits: usize, effort: Effort) -> Option<Plan> {
    let fixed = [season.tariff.trip, season.tariff.lift_day];
    let dear = 1
        + (season.tariff.trip + season.tariff.lift_day) * visits as i64
        + chains.iter().map(Chain::most_money).sum::<i64>();
    let mut task = Task::of(season, chains, fixed, |chain, from, to| {
        chain.wait_then_money(from, to, dear)
    });
    (task.least, task.most) = (visits, visits);
    let answer = search::solve(&task, effort);
    let late: i64 = chains.iter().map(|c| c.least_late).sum();
    answer
        .feasible()
        .then(|| tell::plan(season, chains, &answer, |bound| (late, bound % dear)))
}
