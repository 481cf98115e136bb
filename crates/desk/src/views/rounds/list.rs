//! `/rounds`: what is planned, and what was.

use super::super::said::Speaker;
use super::when;
use crate::office::Office;
use model::Day;
use model::state::{Outcome, RoundRecord, State};
use std::collections::BTreeSet;

/// So many earlier rounds are shown.
const EARLIER: usize = 30;

/// A round in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundRow {
    /// Its name, as its address carries it.
    pub id: String,
    /// Day and hours.
    pub when: String,
    /// Crew, palms, sites.
    pub what: String,
    /// How it stands: `planned`, `under-way`, `finished`, `open` (its day is over, nobody closed it).
    pub state: &'static str,
    /// The same in words.
    pub state_words: String,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundsView {
    /// How many are ahead.
    pub lead: String,
    /// From today on, soonest first.
    pub ahead: Vec<RoundRow>,
    /// Earlier ones, latest first.
    pub earlier: Vec<RoundRow>,
}

/// The list of rounds.
pub fn list(speaker: &Speaker, office: &Office) -> RoundsView {
    let (state, today) = (office.state(), office.today());
    let (ahead, earlier): (Vec<_>, Vec<_>) = in_order(&state)
        .into_iter()
        .partition(|round| round.plan.day >= today);
    RoundsView {
        lead: speaker.text("rounds-lead", &[("n", (ahead.len() as i64).into())]),
        ahead: ahead
            .into_iter()
            .map(|r| row(speaker, &state, r, today))
            .collect(),
        earlier: earlier
            .into_iter()
            .rev()
            .take(EARLIER)
            .map(|r| row(speaker, &state, r, today))
            .collect(),
    }
}

/// The rounds of today, the earliest first.
pub fn of_today(speaker: &Speaker, office: &Office) -> Vec<RoundRow> {
    let (state, today) = (office.state(), office.today());
    let rounds = in_order(&state).into_iter();
    rounds
        .filter(|round| round.plan.day == today)
        .map(|round| row(speaker, &state, round, today))
        .collect()
}

/// All rounds, the earliest first.
fn in_order(state: &State) -> Vec<&RoundRecord> {
    let mut rounds: Vec<&RoundRecord> = state.work.rounds.values().collect();
    rounds.sort_by_key(|r| (r.plan.day, r.plan.leave, r.plan.crew.clone()));
    rounds
}

fn row(speaker: &Speaker, state: &State, round: &RoundRecord, today: Day) -> RoundRow {
    let plan = &round.plan;
    let sites: BTreeSet<&str> = plan
        .stops
        .iter()
        .filter_map(|stop| Some(state.palm(stop.palm)?.palm.site.as_str()))
        .filter(|site| !site.is_empty())
        .collect();
    let what = [
        ("crew", plan.crew.clone().into()),
        ("palms", (plan.stops.len() as i64).into()),
        ("sites", Vec::from_iter(sites).join(", ").into()),
    ];
    let (key, state_words) = standing(speaker, round, today);
    RoundRow {
        id: round.id.0.to_string(),
        when: when(speaker, plan.day, plan.leave, plan.back),
        what: speaker.text("rounds-row", &what),
        state: key,
        state_words,
    }
}

/// How a round stands, as a key and in words.
pub(super) fn standing(
    speaker: &Speaker,
    round: &RoundRecord,
    today: Day,
) -> (&'static str, String) {
    let (done, skipped) = counts(round);
    let key = if round.finished.is_some() {
        "finished"
    } else if round.plan.day < today {
        "open"
    } else if round.started.is_some() || done + skipped > 0 {
        "under-way"
    } else {
        "planned"
    };
    let figures = [
        ("done", done.into()),
        ("skipped", skipped.into()),
        ("of", (round.plan.stops.len() as i64).into()),
    ];
    (key, speaker.text(&format!("rounds-state-{key}"), &figures))
}

/// Palms of the plan that were done, and those left out.
pub(super) fn counts(round: &RoundRecord) -> (i64, i64) {
    let outcomes = round
        .plan
        .stops
        .iter()
        .filter_map(|stop| round.outcomes.get(&stop.palm));
    outcomes.fold((0, 0), |(done, skipped), outcome| match outcome {
        Outcome::Done { .. } => (done + 1, skipped),
        Outcome::Skipped { .. } => (done, skipped + 1),
    })
}
