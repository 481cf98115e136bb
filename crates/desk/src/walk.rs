//! A walk over the palms of one site: in which order, how far, which blade set at which palm, and where hands and boots
//! are cleaned. `docs/walk.md` has the method.

#[cfg(test)]
mod tests;

use crate::blades::{Leg, bath_rules, jobs};
use crate::forms::mixes;
use crate::health::{Because, because};
use crate::office::Office;
use crate::rotating::{self, Made, Needed, RoundCut};
use crate::views::standing::{Standing, Standings};
use model::{PalmRecord, Position};
use rayon::prelude::*;
use rounds::travel;
use rounds::walk::{Health, Spot, Walk, order};
use std::collections::BTreeSet;
use std::sync::Arc;

/// More palms than this are no walk for one day.
pub const MOST_PALMS: usize = 500;
/// Minutes of cutting at a palm where nobody says (assumed).
pub const CUT_MIN: f64 = 6.0;

/// Which palms of the site.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub enum Which {
    /// All that stand there.
    #[default]
    All,
    /// Those at which something is to be cut by now, and those that want a look: unknown, suspect or confirmed ones.
    Due,
    /// Those with these tags.
    Tags(BTreeSet<String>),
}

/// What is asked.
#[derive(Clone, PartialEq, Debug)]
pub struct Ask {
    /// The grounds, as palms write them.
    pub site: String,
    /// Which palms.
    pub which: Which,
    /// Minutes of cutting at a palm, above 0.
    pub cut_min: f64,
    /// Blade sets, at least 1.
    pub sets: usize,
    /// Minutes of soak; `None`: what the first mix of the table that can be enough asks for.
    pub soak_min: Option<f64>,
}

/// What keeps a walk from being made.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Cannot {
    /// No palm stands there, or none that was asked for.
    Nobody,
    /// No palm of the site carries these tags.
    NoSuch(Vec<String>),
    /// So many palms, more than [`MOST_PALMS`].
    TooMany(usize),
}

/// A palm on the walk.
#[derive(Clone, PartialEq, Debug)]
pub struct Stop {
    /// The palm.
    pub record: Arc<PalmRecord>,
    /// Why it is in its class.
    pub because: Because,
    /// Metres from the stop before, or from the gate to the first; `None`: unknown, or there is nothing to come from.
    pub metres: Option<f64>,
    /// Its cut in the rotation of blade sets; `None`: nothing is cut there today.
    pub cut: Option<usize>,
    /// Gloves, boots and tools are cleaned before it: the stop before was suspect or confirmed.
    pub hands: bool,
}

/// A walk.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteWalk {
    /// The gate, where it is known.
    pub gate: Option<Position>,
    /// Palms in order.
    pub stops: Vec<Stop>,
    /// The way as it was reckoned.
    pub way: Walk,
    /// Blade sets over the stops that are cut; `None`: nothing is cut.
    pub blades: Option<Made>,
    /// Where the minutes of soak come from; `None`: they were told.
    pub needed: Option<Needed>,
}

impl SiteWalk {
    /// Palms of a class.
    pub fn count(&self, health: Health) -> usize {
        let own = |stop: &&Stop| stop.because.health() == health;
        self.stops.iter().filter(own).count()
    }

    /// The letter of the set that cuts at a stop, and whether a clean one is taken up for it.
    pub fn blade(&self, stop: &Stop) -> Option<(String, bool)> {
        let (made, cut) = (self.blades.as_ref()?, stop.cut?);
        let set = rotating::letter(made.plan.turns.get(cut)?.set);
        Some((set, made.cuts.get(cut)?.job.needs_clean))
    }
}

/// A palm with what is known of it.
type Known = (Arc<PalmRecord>, Option<Arc<Standing>>, Because);

/// The walk for a site today.
pub fn walk(office: &Office, standings: &Standings, ask: &Ask) -> Result<SiteWalk, Cannot> {
    let palms = palms(office, standings, ask)?;
    let state = office.state();
    let gate = state.work.sites.get(&ask.site).and_then(|site| site.gate);
    let spot = |(record, _, why): &Known| Spot {
        at: record.palm.position,
        health: why.health(),
    };
    let spots: Vec<Spot> = palms.iter().map(spot).collect();
    let way = order(gate, &spots);
    let order: Vec<&Known> = way.order.iter().map(|&i| &palms[i]).collect();
    let (blades, cuts, needed) = blades(office, ask, &order);
    let stops = stops(office, gate, &order, &cuts);
    Ok(SiteWalk {
        gate,
        stops,
        way,
        blades,
        needed,
    })
}

fn palms(office: &Office, standings: &Standings, ask: &Ask) -> Result<Vec<Known>, Cannot> {
    let (state, today) = (office.state(), office.today());
    let here = state.standing().filter(|r| r.palm.site == ask.site);
    let mut records: Vec<Arc<PalmRecord>> = here.cloned().collect();
    if let Which::Tags(tags) = &ask.which {
        let known = |tag: &&String| records.iter().any(|r| r.palm.tag == **tag);
        let (_, missing): (Vec<&String>, Vec<&String>) = tags.iter().partition(known);
        if !missing.is_empty() {
            return Err(Cannot::NoSuch(missing.into_iter().cloned().collect()));
        }
        records.retain(|r| tags.contains(&r.palm.tag));
    }
    if records.len() > MOST_PALMS {
        return Err(Cannot::TooMany(records.len()));
    }
    records.sort_by(|a, b| a.palm.tag.cmp(&b.palm.tag));
    let know = |record: &Arc<PalmRecord>| {
        let standing = standings.get(office, record);
        let why = because(record, standing.as_deref(), today);
        (record.clone(), standing, why)
    };
    let mut palms: Vec<Known> = records.par_iter().map(know).collect();
    if ask.which == Which::Due {
        palms.retain(|palm| is_cut(office, palm) || palm.2.health() != Health::Healthy);
    }
    match palms.is_empty() {
        true => Err(Cannot::Nobody),
        false => Ok(palms),
    }
}

/// Whether something comes off a palm today: its plan takes something, and nothing holds it.
fn is_cut(office: &Office, (record, standing, _): &Known) -> bool {
    let taken = standing.as_ref().is_some_and(|standing| {
        let take = standing.take;
        standing.holds.is_empty() && take.live() + take.brown > 0
    });
    taken && record.holds_on(office.today()).next().is_none()
}

/// The rotation of blade sets over the palms that are cut, in the order of the walk, with the places of those palms in it.
fn blades(
    office: &Office,
    ask: &Ask,
    order: &[&Known],
) -> (Option<Made>, Vec<usize>, Option<Needed>) {
    let is_cut = |at: &usize| is_cut(office, order[*at]);
    let cuts: Vec<usize> = (0..order.len()).filter(is_cut).collect();
    let leg = |&at: &usize| Leg {
        palm: order[at].0.id,
        minutes: ask.cut_min,
    };
    let legs: Vec<Leg> = cuts.iter().map(leg).collect();
    let mut rows = Vec::with_capacity(cuts.len());
    for (nth, mut job) in jobs(office, &legs).into_iter().enumerate() {
        let at = cuts[nth];
        // what is suspect is cut with a clean blade, and so is what comes after it
        let ill = |at: usize| order[at].2.health() >= Health::Suspect;
        let before = nth.checked_sub(1).map(|before| cuts[before]);
        job.needs_clean |= ill(at) || before.is_some_and(ill);
        rows.push(RoundCut {
            tag: order[at].0.palm.tag.clone(),
            job,
        });
    }
    let needed = soak().filter(|_| ask.soak_min.is_none());
    let minutes = ask.soak_min.or(needed.as_ref().map(|n| n.minutes));
    let made = (!rows.is_empty())
        .then(|| rotating::made(rows, bath_rules(ask.sets, minutes.unwrap_or_default())))
        .flatten();
    (made, cuts, needed)
}

/// The soak of the first mix of the table that can be enough.
fn soak() -> Option<Needed> {
    let mix = mixes().into_iter().next()?;
    rotating::needed(&mix.agent, mix.strength_pct, None).ok()
}

fn stops(office: &Office, gate: Option<Position>, order: &[&Known], cuts: &[usize]) -> Vec<Stop> {
    let mut stops: Vec<Stop> = Vec::with_capacity(order.len());
    let mut before = gate;
    for (at, palm) in order.iter().enumerate() {
        let (record, _, why) = palm;
        let here = record.palm.position;
        let metres = before.zip(here).map(|(a, b)| travel::metres(a, b));
        let ill = |stop: &Stop| stop.because.health() >= Health::Suspect;
        stops.push(Stop {
            record: record.clone(),
            because: *why,
            metres,
            cut: cuts.iter().position(|&cut| cut == at),
            hands: stops.last().is_some_and(ill),
        });
        before = here;
        debug_assert!(stops[at].cut.is_some() == is_cut(office, palm));
    }
    stops
}
