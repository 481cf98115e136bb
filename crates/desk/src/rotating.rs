//! Blade sets in rotation, as the page and the command line tell it: the round, the soak, the schedule as rows, and the
//! answer in a sentence. `care::rotation` does the reckoning; `docs/blades.md` has the model.

mod say;
mod soak;
#[cfg(test)]
mod tests;

pub use say::{letter, sentence, span};
pub use soak::{Needed, needed, too_short};

use crate::intake::RoundRow;
use care::rotation::{Job, Kit, Rotation, Soak, fewest_sets, rotation};

/// One cut of a round, with the name of its palm.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundCut {
    /// The palm's tag, or its number in the round.
    pub tag: String,
    /// What the engine is told of it.
    pub job: Job,
}

/// So many palms that take the same time, numbered from 1; the blade must be clean before each.
pub fn alike(palms: usize, minutes: f64) -> Vec<RoundCut> {
    let cut = |n: usize| RoundCut {
        tag: n.to_string(),
        job: Job {
            minutes,
            needs_clean: true,
        },
    };
    (1..=palms).map(cut).collect()
}

/// A row of a file as the next cut of a round. Where the file does not say, the blade must be clean unless the cut before
/// was at the same palm.
pub fn next_cut(before: Option<&RoundCut>, row: RoundRow) -> RoundCut {
    let other = before.is_none_or(|cut| cut.tag != row.tag);
    RoundCut {
        job: Job {
            minutes: row.minutes,
            needs_clean: row.needs_clean.unwrap_or(other),
        },
        tag: row.tag,
    }
}

/// What a number of sets means for the round.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Choice {
    /// Blade sets.
    pub sets: usize,
    /// Minutes waited in all.
    pub waiting_min: f64,
    /// Minutes to the end of the last cut.
    pub makespan_min: f64,
}

/// The answer for a round.
#[derive(Clone, PartialEq, Debug)]
pub struct Made {
    /// The round.
    pub cuts: Vec<RoundCut>,
    /// With what.
    pub kit: Kit,
    /// The schedule.
    pub plan: Rotation,
    /// The fewest sets with which nobody waits.
    pub fewest: usize,
    /// Other numbers of sets beside it, the smallest first; the asked one and the fewest are among them.
    pub choices: Vec<Choice>,
}

/// Reckons a round. `None` as [`care::rotation::rotation`] says.
pub fn made(cuts: Vec<RoundCut>, kit: Kit) -> Option<Made> {
    let jobs: Vec<Job> = cuts.iter().map(|cut| cut.job).collect();
    let plan = rotation(&jobs, &kit)?;
    let fewest = fewest_sets(&jobs, &kit)?;
    let mut sets = vec![1, 2, 3, 4, fewest.saturating_sub(1), fewest];
    sets.retain(|n| (1..=fewest).contains(n));
    sets.push(kit.sets);
    sets.sort_unstable();
    sets.dedup();
    let choice = |sets: usize| {
        let plan = rotation(&jobs, &Kit { sets, ..kit })?;
        Some(Choice {
            sets,
            waiting_min: plan.waiting_min,
            makespan_min: plan.makespan_min,
        })
    };
    let choices = sets.into_iter().filter_map(choice).collect();
    Some(Made {
        cuts,
        kit,
        plan,
        fewest,
        choices,
    })
}

impl Made {
    /// What a number of sets means, if it is among the choices.
    pub fn choice(&self, sets: usize) -> Option<&Choice> {
        self.choices.iter().find(|choice| choice.sets == sets)
    }

    /// For each cut the cleaning that its set goes to right after it; `None` where the set in hand goes on.
    pub fn soaks(&self) -> Vec<Option<&Soak>> {
        let mut soaks = self.plan.soaks.iter();
        let last = self.cuts.len().saturating_sub(1);
        // a set that has cut is laid down when the next cut wants a clean one, or when the round is over
        let laid_down = |n: usize| n == last || self.cuts[n + 1].job.needs_clean;
        let cuts = 0..self.cuts.len();
        cuts.map(|n| laid_down(n).then(|| soaks.next()).flatten())
            .collect()
    }
}

/// Columns of `rotation.csv`.
pub const ROTATION_COLUMNS: [&str; 11] = [
    "cut",
    "tag",
    "set",
    "waited_min",
    "start_min",
    "end_min",
    "laid_down_min",
    "into_bath_min",
    "out_of_bath_min",
    "ready_min",
    "bath",
];

/// The schedule as rows of `rotation.csv`, one a cut in its order.
pub fn rotation_rows(made: &Made) -> Vec<[String; 11]> {
    let rows = made.plan.turns.iter().zip(made.soaks());
    rows.map(|(turn, soak)| {
        let of = |part: fn(&Soak) -> f64| soak.map_or_else(String::new, |s| figure(part(s)));
        [
            (turn.job + 1).to_string(),
            made.cuts[turn.job].tag.clone(),
            letter(turn.set),
            figure(turn.waited),
            figure(turn.start),
            figure(turn.end),
            of(|s| s.from),
            of(|s| s.into_bath),
            of(|s| s.out_of_bath),
            of(|s| s.ready),
            soak.map_or_else(String::new, |s| (s.bath + 1).to_string()),
        ]
    })
    .collect()
}

/// Minutes to the thousandth, without needless zeros.
pub fn figure(minutes: f64) -> String {
    ((minutes * 1000.0).round() / 1000.0).to_string()
}
