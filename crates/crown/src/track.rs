//! A row of crowns through time: from the first thing known of a stem to the day of the reading and beyond.

use crate::answer::Explanation;
use crate::case::StemCase;
use crate::explain::{Params, STAYS, Window, decline, moved, settled};
use crate::lanes::{Lanes, WIDTH, lanes};
use crate::life::{LifeTable, table};
use crate::season::Season;
use model::{Day, Inspection, math};

/// State of a row of crowns.
#[derive(Clone)]
pub(crate) struct Crown {
    /// Age ceiling, mean lives.
    pub age: Lanes,
    /// Live fronds.
    pub live: Lanes,
    /// Wholly dead fronds still on.
    pub brown: Lanes,
    /// Born since the last look.
    pub born: Lanes,
    /// Died since the last look (or cleaning).
    pub lost: Lanes,
    /// Live fronds at the move.
    pub at_move: Lanes,
}

impl Crown {
    /// The crown at the start of the track.
    pub(crate) fn start(p: &Params) -> Crown {
        let life = table();
        let live = lanes(|i| p.life[i] * life.live(p.start_age[i]));
        let zero = [0.0; WIDTH];
        Crown {
            age: p.start_age,
            live,
            brown: zero,
            born: zero,
            lost: zero,
            at_move: live,
        }
    }

    /// Takes fronds off: live ones oldest first, dead ones down to `brown_left`.
    pub(crate) fn cut(&mut self, p: &Params, live: f64, brown_left: impl Fn(f64) -> f64) {
        if live > 0.0 {
            moved::take_oldest(table(), p, self, &[live; WIDTH]);
        }
        self.brown = lanes(|i| brown_left(self.brown[i]).max(0.0));
    }
}

/// A stretch of time handed to an explanation.
#[derive(Clone, Copy)]
pub(crate) struct Span {
    /// Its start: days since the move for `move`, days of the case otherwise.
    pub from: f64,
    /// Mean of w over it.
    pub pace: f64,
}

/// Something that happens to a stem on a day of the case.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(crate) enum Event {
    /// All dead fronds are taken off.
    Cleaned,
    /// The palm is moved.
    Moved,
    /// A look; index into the inspections.
    Looked(usize),
}

/// The days that matter in a case, for all explanations. Days of the case are days since the reading's day.
pub(crate) struct Timeline {
    pub season: Season,
    pub as_of: Day,
    /// Day of the move in days of the case, if it counts.
    pub moved: Option<f64>,
    /// First look, or today.
    pub window: Window,
    /// Events in order, each with its day (at most 0).
    pub events: Vec<(f64, Event)>,
    /// Number of looks at or before `as_of`.
    pub looks: usize,
}

impl Timeline {
    pub(crate) fn of(case: &StemCase, as_of: Day, season: Season) -> Timeline {
        let day = |d: Day| f64::from(d.since(as_of));
        let looks = case
            .inspections
            .iter()
            .take_while(|i| i.date <= as_of)
            .count();
        let mut events: Vec<(f64, Event)> = case.inspections[..looks]
            .iter()
            .enumerate()
            .map(|(k, i)| (day(i.date), Event::Looked(k)))
            .collect();
        let first = events.first().map_or(0.0, |e| e.0);
        if let Some(cleaned) = case.last_cleaned_on.filter(|d| *d <= as_of) {
            events.push((day(cleaned), Event::Cleaned));
        }
        let moved = case
            .moved_on
            .filter(|m| *m <= as_of && as_of.since(*m) <= moved::COUNTS_FOR_DAYS)
            .map(day);
        if let Some(m) = moved {
            events.push((m, Event::Moved));
        }
        // a cleaning on the day of a look came after the count, a move before it
        events.sort_by(|a, b| a.0.total_cmp(&b.0).then(rank(a.1).cmp(&rank(b.1))));
        Timeline {
            season,
            as_of,
            moved,
            window: Window { first, today: 0.0 },
            events,
            looks,
        }
    }

    /// Where an explanation's track starts.
    fn start(&self, kind: Explanation) -> f64 {
        let known = self
            .events
            .iter()
            .filter(|(_, e)| kind == Explanation::Move || *e != Event::Moved)
            .map(|(t, _)| *t)
            .fold(self.window.first, f64::min);
        if kind == Explanation::Decline {
            known.min(self.window.first - decline::ONSET_BEFORE_FIRST)
        } else {
            known
        }
    }

    /// Mean of w between two days of the case.
    pub(crate) fn pace(&self, from: f64, to: f64) -> f64 {
        let origin = f64::from(self.as_of.0);
        self.season.between_days(origin + from, origin + to) / (to - from)
    }

    /// Mean of w over the `days` after a day of the case.
    pub(crate) fn pace_after(&self, from: f64, days: f64) -> f64 {
        self.pace(from, from + days)
    }
}

fn rank(event: Event) -> u8 {
    match event {
        Event::Moved => 0,
        Event::Looked(_) => 1,
        Event::Cleaned => 2,
    }
}

/// What a run hands to its caller at each look, before anything is taken off.
pub(crate) trait Watch {
    /// Look number `k` finds the crown so; `cleaned_known` says whether its dead fronds can be compared with a count.
    /// Answers whether the run goes on.
    fn look(&mut self, k: usize, t: f64, crown: &Crown, brown_known: bool) -> bool;
}

/// Runs a row of crowns from the start of the track to the day of the reading, or until the watch has seen enough.
pub(crate) fn run(
    kind: Explanation,
    line: &Timeline,
    case: &StemCase,
    p: &Params,
    watch: &mut impl Watch,
) -> Crown {
    let mut crown = Crown::start(p);
    let mut now = line.start(kind);
    let mut brown_known = false;
    for &(t, event) in &line.events {
        if event == Event::Moved && kind != Explanation::Move {
            continue;
        }
        advance(kind, line, p, &mut crown, now, t);
        now = t;
        match event {
            Event::Moved => crown.at_move = crown.live,
            Event::Cleaned => {
                crown.brown = [0.0; WIDTH];
                crown.lost = [0.0; WIDTH];
                brown_known = true;
            }
            Event::Looked(k) => {
                if !watch.look(k, t, &crown, brown_known) {
                    return crown;
                }
                after_look(&case.inspections[k], p, &mut crown);
                brown_known |= case.inspections[k].brown.is_some();
            }
        }
    }
    advance(kind, line, p, &mut crown, now, 0.0);
    crown
}

/// What was taken off after the count; a counted number of dead fronds replaces the computed one.
fn after_look(look: &Inspection, p: &Params, crown: &mut Crown) {
    let taken = look.removed.green.unwrap_or(0) + look.removed.yellowing.unwrap_or(0);
    let brown_taken = f64::from(look.removed.brown.unwrap_or(0));
    let counted = look.brown.map(f64::from);
    crown.cut(p, f64::from(taken), |computed| {
        counted.unwrap_or(computed) - brown_taken
    });
    crown.born = [0.0; WIDTH];
    crown.lost = [0.0; WIDTH];
}

/// Moves a row of crowns between two days of the case, in steps as short as the explanation needs.
pub(crate) fn advance(
    kind: Explanation,
    line: &Timeline,
    p: &Params,
    crown: &mut Crown,
    from: f64,
    to: f64,
) {
    let mut now = from;
    while now < to {
        let next = next_node(kind, line, p, now).min(to);
        step(kind, line, p, crown, now, next - now, line.pace(now, next));
        now = next;
    }
}

/// Where the next step must end at the latest.
fn next_node(kind: Explanation, line: &Timeline, p: &Params, now: f64) -> f64 {
    match (kind, line.moved) {
        (Explanation::Move, Some(moved)) if now >= moved => moved::NODES
            .iter()
            .map(|n| moved + n)
            .find(|t| *t > now + 1e-9)
            .unwrap_or(f64::MAX),
        (Explanation::Decline, _) => match decline::bounds(p) {
            (first, _) if now < first => first,
            (_, last) if now >= last => f64::MAX,
            _ => now + decline::STEP,
        },
        _ => f64::MAX,
    }
}

fn step(
    kind: Explanation,
    line: &Timeline,
    p: &Params,
    crown: &mut Crown,
    from: f64,
    days: f64,
    pace: f64,
) {
    let dt = [days; WIDTH];
    let (born, died) = births_and_deaths(table(), kind, line, p, crown, Span { from, pace }, &dt);
    for i in 0..WIDTH {
        crown.born[i] += born[i];
        crown.lost[i] += died[i];
    }
    hang(p, crown, &died, days);
}

/// Dead fronds fall at a constant rate: exact for deaths spread evenly over the step.
#[inline(always)]
fn hang(p: &Params, crown: &mut Crown, died: &Lanes, days: f64) {
    if p.fall_rates[0] == 0.0 {
        for i in 0..WIDTH {
            crown.brown[i] += died[i];
        }
        return;
    }
    let classes: [(f64, f64); STAYS] = std::array::from_fn(|k| {
        let x = (p.fall_rates[k] * days).max(1e-9);
        let stay = math::exp_quick(-x);
        (stay, (1.0 - stay) / x)
    });
    for i in 0..WIDTH {
        let (stay, spread) = classes[usize::from(p.stay[i]) % STAYS];
        crown.brown[i] = crown.brown[i] * stay + died[i] * spread;
    }
}

/// One step of `dt` days each; leaves the counters and the dead fronds alone.
#[inline(always)]
fn births_and_deaths(
    life: &LifeTable,
    kind: Explanation,
    line: &Timeline,
    p: &Params,
    crown: &mut Crown,
    span: Span,
    dt: &Lanes,
) -> (Lanes, Lanes) {
    match (kind, line.moved) {
        (Explanation::Move, Some(moved)) if span.from >= moved => moved::advance(
            life,
            p,
            crown,
            Span {
                from: span.from - moved,
                ..span
            },
            dt,
        ),
        (Explanation::Decline, _) => decline::advance(life, p, crown, span, dt),
        _ => {
            let clock = lanes(|i| p.rate[i] * span.pace * dt[i]);
            let died = settled::advance(life, p, crown, &clock);
            (clock, died)
        }
    }
}

/// Fronds yellowing now: those that die within the next y days (on a moved or declining palm, within a fed frond's few
/// days if they age in their turn).
pub(crate) fn yellowing(
    kind: Explanation,
    line: &Timeline,
    p: &Params,
    crown: &Crown,
    t: f64,
) -> Lanes {
    let pace = line.pace_after(t, p.yellow_days.iter().sum::<f64>() / WIDTH as f64);
    let days = &p.yellow_days;
    let died = match (kind, line.moved) {
        (Explanation::Move, Some(moved)) if t >= moved => moved::yellowing(
            table(),
            p,
            crown,
            Span {
                from: t - moved,
                pace,
            },
            days,
        ),
        (Explanation::Decline, _) => {
            decline::yellowing(table(), p, crown, Span { from: t, pace }, days)
        }
        _ => settled::deaths(table(), p, crown, &lanes(|i| p.rate[i] * pace * days[i])),
    };
    lanes(|i| died[i].clamp(0.0, crown.live[i].max(0.0)))
}
