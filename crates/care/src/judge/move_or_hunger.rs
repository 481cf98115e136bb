//! The keeper's central question: is it the move, or is it hungry? Both explanations side by side.

use super::Judge;
use super::answer::{Call, Evidence, MoveOrHunger, Side, Swing};
use super::next::Kept;
use super::speak::speaks;
use super::tables::{THE_MOVE, Tables};
use super::told::Told;
use super::weigh::Weighed;
use model::knowledge::Family;

/// An explanation below this is not a call.
const CALLED: f64 = 0.5;
/// So many signs that would change the call are named.
const SWINGS: usize = 6;
/// A sign whose answer is not expected to move the difference by more than this is not named.
const LEAST_SWING: f64 = 0.005;

/// Weighs the move against hunger.
pub fn move_or_hunger(judge: &Judge, evidence: &Evidence) -> MoveOrHunger {
    let tables = &judge.tables;
    let told = Told::of(tables, evidence);
    let weighed = Weighed::of(tables, evidence, &told);
    let the_move = with(tables, |k| tables.troubles[k].key == THE_MOVE);
    let hunger = with(tables, |k| tables.troubles[k].family == Family::Nutrient);
    let mut spoken = speaks(tables, &told, &weighed, &[&the_move, &hunger]);
    let mut side = |sets: &[usize]| {
        let (for_it, against) = spoken.remove(0);
        Side {
            probability: weighed.share(sets),
            for_it,
            against,
        }
    };
    let (moved, hungry) = (side(&the_move), side(&hunger));
    let now = [moved.probability, hungry.probability];
    MoveOrHunger {
        call: call(now),
        changes: swings(
            tables,
            &told,
            &Kept::of(&weighed),
            now,
            [&the_move, &hunger],
        ),
        which_hunger: which_hunger(tables, &weighed),
        moved,
        hungry,
    }
}

fn with(tables: &Tables, wanted: impl Fn(usize) -> bool) -> Vec<usize> {
    let wanted: Vec<bool> = (0..tables.sets.n).map(wanted).collect();
    tables.sets.with_any(&wanted)
}

fn call([moved, hungry]: [f64; 2]) -> Call {
    match (moved >= CALLED, hungry >= CALLED) {
        (true, true) => Call::Both,
        (true, false) => Call::Move,
        (false, true) => Call::Hunger,
        (false, false) => Call::Neither,
    }
}

/// The shortages, most probable first.
fn which_hunger(tables: &Tables, weighed: &Weighed) -> Vec<(&'static str, f64)> {
    let of = tables.troubles.iter().enumerate();
    let of = of.filter(|(_, trouble)| trouble.family == Family::Nutrient);
    let mut rated: Vec<(&'static str, f64)> = of
        .map(|(k, trouble)| (trouble.key.as_str(), weighed.share(&tables.sets.with[k])))
        .collect();
    rated.sort_by(|a, b| b.1.total_cmp(&a.1));
    rated
}

/// Signs not yet looked for whose answer is expected to move the two probabilities most against each other.
fn swings(
    tables: &Tables,
    told: &Told,
    kept: &Kept,
    now: [f64; 2],
    events: [&[usize]; 2],
) -> Vec<Swing> {
    let marks = events.map(|event| {
        let mut marks = vec![false; tables.sets.len()];
        event.iter().for_each(|set| marks[*set] = true);
        marks
    });
    let marks = [marks[0].as_slice(), marks[1].as_slice()];
    let open = (0..tables.signs.len()).filter(|sign| !told.answered[*sign]);
    let mut all: Vec<Swing> = open
        .map(|sign| {
            let [there, not] =
                [true, false].map(|seen| kept.events_after(tables, sign, seen, marks));
            let chance = kept.chance(tables, sign);
            let moved = |then: [f64; 2]| ((then[0] - then[1]) - (now[0] - now[1])).abs();
            Swing {
                sign: tables.signs[sign].key.as_str(),
                chance,
                swing: chance * moved(there) + (1.0 - chance) * moved(not),
                if_there: (there[0], there[1]),
                if_not: (not[0], not[1]),
                changes_call: call(there) != call(now) || call(not) != call(now),
            }
        })
        .filter(|swing| swing.swing >= LEAST_SWING)
        .collect();
    all.sort_by(|a, b| b.swing.total_cmp(&a.swing));
    all.truncate(SWINGS);
    all
}
