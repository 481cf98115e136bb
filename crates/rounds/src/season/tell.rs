//! From the chosen weeks to a plan: who is served when, who is late and why, what it costs.

use super::chain::{Chain, NEVER, hanging, opens, window};
use super::search::{Answer, Mode};
use super::{Kind, Need, Season};
use model::Day;

/// A need served on a visit.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Served {
    /// Index into the needs.
    pub need: usize,
    /// Dead fronds expected to hang then.
    pub fronds: f64,
    /// Days past the limit; 0: in time.
    pub late: i64,
}

/// A visit.
#[derive(Clone, PartialEq, Debug)]
pub struct Visit {
    /// Which week of the season.
    pub week: usize,
    /// The day.
    pub day: Day,
    /// Whether a lift is wanted.
    pub lift: bool,
    /// Who is served.
    pub served: Vec<Served>,
    /// Hours of the crew.
    pub hours: f64,
    /// Of these, hours with the lift.
    pub lift_hours: f64,
    /// Loose debris, cubic metres.
    pub m3: f64,
    /// Days the work takes.
    pub days: i64,
    /// Days with the lift.
    pub lift_days: i64,
}

/// Why somebody is late.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Why {
    /// The limit was passed before anybody could come.
    Overdue,
    /// Nobody may cut before the limit is passed.
    Held,
    /// The site is closed on all days of the window.
    Closed,
    /// No working day falls into the window, or none that leaves the next one to be met.
    Narrow,
    /// There are not enough visits.
    TooFew,
}

impl Why {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Why::Overdue => "overdue",
            Why::Held => "held",
            Why::Closed => "closed",
            Why::Narrow => "narrow",
            Why::TooFew => "too-few",
        }
    }
}

/// A window that is not covered.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Late {
    /// Index into the needs.
    pub need: usize,
    /// Last day of the window.
    pub latest: Day,
    /// When it is served after all; `None`: not in this season.
    pub served: Option<Day>,
    /// Days between: to the visit, or to the end of the season.
    pub days: i64,
    /// Dead fronds expected to hang by then.
    pub fronds: f64,
    /// Why.
    pub why: Why,
}

/// Money of a plan, smallest unit.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Money {
    /// Trips.
    pub trips: i64,
    /// Lift hire.
    pub lift: i64,
    /// Crew hours.
    pub crew: i64,
    /// Debris.
    pub debris: i64,
}

impl Money {
    /// All together.
    pub fn total(self) -> i64 {
        self.trips + self.lift + self.crew + self.debris
    }
}

/// Visits of a site over a season.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Plan {
    /// In order.
    pub visits: Vec<Visit>,
    /// Windows that are not covered, the latest first.
    pub late: Vec<Late>,
    /// Stalks that stay on: indices into the needs.
    pub stalks_left: Vec<usize>,
    /// What is paid.
    pub money: Money,
    /// Days late over all palms.
    pub days_late: i64,
    /// Days over all palms that a window stands open before somebody comes.
    pub days_waiting: i64,
    /// What the choice of weeks was made by: what is paid with one day a visit, what hangs at the end, storm and stalks.
    pub weighed: i64,
    /// No plan that is less late than this many days, and none as late that weighs less: proven.
    pub at_least: (i64, i64),
    /// Whether the plan is as good as can be: `days_late` and `weighed` are what is proven, and no visit takes more than a
    /// day.
    pub proven: bool,
}

/// The plan of an answer; `bound` takes what was proven apart into days late and money.
pub fn plan(
    season: &Season,
    chains: &[Chain],
    answer: &Answer,
    bound: impl Fn(i64) -> (i64, i64),
) -> Plan {
    let ways: Vec<Vec<usize>> = (0..chains.len()).map(|c| way(chains, answer, c)).collect();
    let mut visits: Vec<Visit> = Vec::new();
    for (week, day) in season.weeks.days.iter().enumerate() {
        let Some(day) = day.filter(|_| answer.modes[week + 1] != Mode::Away) else {
            continue;
        };
        // a visit that serves nobody is none
        visits
            .extend(Some(visit(season, chains, &ways, week, day)).filter(|v| !v.served.is_empty()));
    }
    let mut out = Plan {
        money: money(season, &visits),
        late: late(season, chains, &ways),
        stalks_left: stalks_left(season, &ways),
        days_late: legs(chains, &ways).map(|leg| leg.late).sum(),
        days_waiting: legs(chains, &ways).map(|leg| leg.wait).sum(),
        weighed: legs(chains, &ways).map(|leg| leg.money).sum::<i64>() + trips(season, answer),
        at_least: bound(answer.bound),
        proven: answer.proven() && visits.iter().all(|v| v.days <= 1 && v.lift_days <= 1),
        visits,
    };
    out.late.sort_by_key(|late| (-late.days, late.need));
    out
}

fn trips(season: &Season, answer: &Answer) -> i64 {
    let lifts = answer.modes.iter().filter(|m| **m == Mode::Lift).count() as i64;
    let all = answer.modes.iter().filter(|m| **m != Mode::Away).count() as i64;
    all * season.tariff.trip + lifts * season.tariff.lift_day
}

/// The nodes a need passes: its cheapest way, among equals the one that waits least.
fn way(chains: &[Chain], answer: &Answer, c: usize) -> Vec<usize> {
    let (chain, legs) = (&chains[c], &answer.price[answer.group_of[c]]);
    let n = answer.modes.len();
    let least = if chain.lift { Mode::Lift } else { Mode::Visit };
    let passes = |node: &usize| *node == 0 || *node == n - 1 || answer.modes[*node] >= least;
    let mut best = vec![(NEVER, NEVER); n];
    let mut before = vec![0; n];
    best[0] = (0, 0);
    for to in (1..n).filter(passes) {
        for from in (0..to).filter(passes) {
            let Some(leg) = chain.leg(from, to).filter(|_| legs[from * n + to] < NEVER) else {
                continue;
            };
            let then = (best[from].0 + legs[from * n + to], best[from].1 + leg.wait);
            if then < best[to] {
                (best[to], before[to]) = (then, from);
            }
        }
    }
    let mut nodes = vec![n - 1];
    while let Some(node) = nodes.last().copied().filter(|node| *node > 0) {
        nodes.push(before[node]);
    }
    nodes.reverse();
    nodes
}

fn legs<'a>(
    chains: &'a [Chain],
    ways: &'a [Vec<usize>],
) -> impl Iterator<Item = &'a super::chain::Leg> {
    let each = chains.iter().zip(ways);
    each.flat_map(|(chain, way)| way.windows(2).filter_map(|w| chain.leg(w[0], w[1])))
}

fn visit(season: &Season, chains: &[Chain], ways: &[Vec<usize>], week: usize, day: Day) -> Visit {
    let mut out = Visit {
        week,
        day,
        lift: false,
        served: Vec::new(),
        hours: 0.0,
        lift_hours: 0.0,
        m3: 0.0,
        days: 1,
        lift_days: 0,
    };
    for (c, way) in ways.iter().enumerate() {
        let Some(pair) = way.windows(2).find(|pair| pair[1] == week + 1) else {
            continue;
        };
        let need = &season.needs[c];
        let fronds = fronds(season, need, pair[0], week);
        let hours = (need.minutes + fronds * need.minutes_each) / 60.0;
        out.hours += hours;
        out.m3 += fronds * need.m3_each;
        if need.lift {
            (out.lift, out.lift_hours) = (true, out.lift_hours + hours);
        }
        let late = chains[c].leg(pair[0], pair[1]).map_or(0, |leg| leg.late);
        out.served.push(Served {
            need: c,
            fronds,
            late,
        });
    }
    let days = |hours: f64| ((hours / season.tariff.day_hours).ceil() as i64).max(1);
    out.days = days(out.hours);
    out.lift_days = if out.lift { days(out.lift_hours) } else { 0 };
    out
}

/// What comes off: dead fronds, or for stalks one piece of work.
fn fronds(season: &Season, need: &Need, from: usize, week: usize) -> f64 {
    match need.kind {
        Kind::Fronds => hanging(need, season.weeks.count(), from, week),
        Kind::Stalks => 0.0,
    }
}

fn money(season: &Season, visits: &[Visit]) -> Money {
    let tariff = &season.tariff;
    let sum = |of: fn(&Visit) -> f64| visits.iter().map(of).sum::<f64>();
    Money {
        trips: tariff.trip * visits.iter().map(|v| v.days).sum::<i64>(),
        lift: tariff.lift_day * visits.iter().map(|v| v.lift_days).sum::<i64>(),
        crew: (sum(|v| v.hours) * tariff.crew_hour as f64).round() as i64,
        debris: (sum(|v| v.m3) * tariff.debris_m3 as f64).round() as i64,
    }
}

fn late(season: &Season, chains: &[Chain], ways: &[Vec<usize>]) -> Vec<Late> {
    let n = season.weeks.count() + 2;
    let mut out = Vec::new();
    for (c, way) in ways.iter().enumerate() {
        let need = &season.needs[c];
        for pair in way.windows(2) {
            let Some(leg) = chains[c].leg(pair[0], pair[1]).filter(|leg| leg.late > 0) else {
                continue;
            };
            let helped = total(&chains[c], way) > chains[c].least_late;
            let Some(latest) = window(need, pair[0]).latest else {
                continue;
            };
            let served = (pair[1] < n - 1)
                .then(|| season.weeks.days[pair[1] - 1])
                .flatten();
            out.push(Late {
                need: c,
                latest,
                served,
                days: leg.late,
                fronds: hanging(need, season.weeks.count(), pair[0], pair[1] - 1),
                why: why(season, need, pair[0], latest, helped),
            });
        }
    }
    out
}

/// Days late on a way.
fn total(chain: &Chain, way: &[usize]) -> i64 {
    let legs = way.windows(2).filter_map(|w| chain.leg(w[0], w[1]));
    legs.map(|leg| leg.late).sum()
}

/// Why a window is not covered; `helped`: a visit in every open week would leave the need less late.
fn why(season: &Season, need: &Need, from: usize, latest: Day, helped: bool) -> Why {
    let weeks = &season.weeks;
    let first = weeks.starts.first().copied().unwrap_or(weeks.end);
    let Some(opens) = opens(need, from) else {
        return Why::Narrow;
    };
    if need.not_before.is_some_and(|held| held > latest) {
        return Why::Held;
    }
    if from == 0 && latest < first {
        return Why::Overdue;
    }
    let inside = |day: &Day| opens <= *day && *day <= latest;
    if helped && weeks.days.iter().flatten().any(inside) {
        return Why::TooFew;
    }
    // weeks that lie inside the window as a whole and cannot be visited in
    let shut = weeks.starts.iter().zip(&weeks.days);
    let shut = shut
        .filter(|(start, day)| inside(start) && day.is_none())
        .count();
    if shut > 0 { Why::Closed } else { Why::Narrow }
}

fn stalks_left(season: &Season, ways: &[Vec<usize>]) -> Vec<usize> {
    let needs = season.needs.iter().zip(ways).enumerate();
    let left = needs.filter(|(_, (need, way))| {
        need.kind == Kind::Stalks
            && way.len() == 2
            && opens(need, 0).is_some_and(|o| o < season.weeks.end)
    });
    left.map(|(c, _)| c).collect()
}
