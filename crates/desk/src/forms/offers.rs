//! What a blade may be cleaned with: baths in use, and the mixes that the cleaner table knows.

use care::clean::{Cleaned, needed_min};
use model::knowledge::CleanerRow;
use model::state::BathRecord;
use model::{EntryId, Knowledge, Moment, State};

/// One choice.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Offer {
    /// Its value in the form: `bath:<id>` or `mix:<key of a row>`.
    pub value: String,
    /// Key of the agent.
    pub agent: String,
    /// Percent by volume of product in the bath.
    pub strength_pct: Option<f64>,
    /// The bath, if it is one.
    pub bath: Option<EntryId>,
    /// Minutes of contact that are enough by the strictest source; `None`: nobody can say, or no time would do.
    pub minutes: Option<f64>,
    /// It can be enough for all that its sources name.
    pub sound: bool,
    /// The row it goes by; a bath of the keeper's own making has none.
    pub row: Option<&'static CleanerRow>,
}

/// Baths mixed at most this long ago are offered, ms: a day.
const DAY: i64 = 86_400_000;

/// Everything that may be chosen: baths in use first.
pub fn offers(state: &State, now: Moment) -> Vec<Offer> {
    let mixes = mixes();
    let baths = baths_in_use(state, now).into_iter().map(|bath| {
        let made_so = |mix: &&Offer| {
            mix.agent == bath.bath.agent && mix.strength_pct == bath.bath.strength_pct
        };
        let made = mixes.iter().find(made_so);
        Offer {
            value: format!("bath:{}", bath.id.0),
            agent: bath.bath.agent.clone(),
            strength_pct: bath.bath.strength_pct,
            bath: Some(bath.id),
            minutes: made.and_then(|mix| mix.minutes),
            sound: made.is_some_and(|mix| mix.sound),
            row: made.and_then(|mix| mix.row),
        }
    });
    baths
        .collect::<Vec<_>>()
        .into_iter()
        .chain(mixes.clone())
        .collect()
}

/// Baths mixed within a day, mixed last first; of each agent and kit the last one.
pub fn baths_in_use(state: &State, now: Moment) -> Vec<&BathRecord> {
    let age = |bath: &&BathRecord| (0..DAY).contains(&(now.0 - bath.mixed.0));
    let mut recent: Vec<&BathRecord> = state.baths.values().map(|b| &**b).filter(age).collect();
    recent.sort_by_key(|bath| std::cmp::Reverse((bath.mixed, bath.id)));
    let mut seen = Vec::new();
    recent.retain(|bath| {
        let key = (&bath.bath.agent, &bath.bath.kit);
        let new = !seen.contains(&key);
        seen.push(key);
        new
    });
    recent
}

/// The mixes of the table, one an agent and strength: those that can be enough first.
pub fn mixes() -> Vec<Offer> {
    let mut mixes: Vec<Offer> = Vec::new();
    for row in &Knowledge::embedded().cleaners {
        let same = |mix: &Offer| mix.agent == row.agent && mix.strength_pct == row.strength_pct;
        if !mixes.iter().any(same) {
            mixes.push(mix(row));
        }
    }
    mixes.sort_by_key(|mix| !mix.sound);
    mixes
}

/// A mix as the rules measure it: brushed first, in a fresh bath.
fn mix(row: &'static CleanerRow) -> Offer {
    let cleaned = Cleaned {
        agent: &row.agent,
        strength_pct: row.strength_pct,
        brushed: Some(true),
        ..Cleaned::default()
    };
    let minutes = needed_min(&cleaned, None, Knowledge::embedded());
    Offer {
        value: format!("mix:{}", row.key),
        agent: row.agent.clone(),
        strength_pct: row.strength_pct,
        bath: None,
        minutes,
        sound: minutes.is_some(),
        row: Some(row),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_mix_is_offered_once_and_the_sound_ones_first() {
        let mixes = mixes();
        assert!(mixes.len() > 3, "the cleaner table is empty");
        let mut keys: Vec<_> = mixes
            .iter()
            .map(|m| (&m.agent, m.strength_pct.map(f64::to_bits)))
            .collect();
        let all = keys.len();
        keys.sort();
        keys.dedup();
        assert_eq!(keys.len(), all);
        assert!(mixes.is_sorted_by_key(|mix| !mix.sound));
        assert!(mixes[0].sound && mixes[0].minutes.is_some());
    }

    /// PP-215 as recalled in the table: one part bleach to three parts water, ten minutes; others say five to ten. The
    /// strictest counts. One part to nine, for a stated half hour, is against germs in general only.
    #[test]
    fn a_mix_soaks_as_long_as_the_strictest_source_says() {
        let of = |agent: &str, pct| {
            let all = mixes();
            let mut found = all
                .iter()
                .filter(|m| m.agent == agent && m.strength_pct == pct);
            found.next().map(|mix| (mix.sound, mix.minutes))
        };
        assert_eq!(of("bleach", Some(25.0)), Some((true, Some(10.0))));
        assert_eq!(of("bleach", Some(10.0)), Some((false, None)));
        assert_eq!(of("new-blade", None), Some((true, Some(0.0))));
    }
}
