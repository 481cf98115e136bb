//! What a blade may be cleaned with: baths in use, and the mixes that the cleaner table knows.

use model::knowledge::{CleanerRow, Works};
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
    /// Minutes of contact that satisfy every source for this mix.
    pub minutes: Option<f64>,
    /// A source states it to work on palms.
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

/// The mixes of the table, one an agent and strength: those that a source states to work on palms first.
pub fn mixes() -> Vec<Offer> {
    let mut mixes: Vec<Offer> = Vec::new();
    for row in &Knowledge::embedded().cleaners {
        let same =
            |mix: &&mut Offer| mix.agent == row.agent && mix.strength_pct == row.strength_pct;
        match mixes.iter_mut().find(same) {
            Some(mix) => join(mix, row),
            None => mixes.push(Offer {
                value: format!("mix:{}", row.key),
                agent: row.agent.clone(),
                strength_pct: row.strength_pct,
                bath: None,
                minutes: minutes(row),
                sound: sound(row),
                row: Some(row),
            }),
        }
    }
    mixes.sort_by_key(|mix| !mix.sound);
    mixes
}

/// Another row for the same mix: the longest contact of those that count, and the row that asks for it.
fn join(mix: &mut Offer, row: &'static CleanerRow) {
    let better = (sound(row), minutes(row)) > (mix.sound, mix.minutes);
    if better {
        (mix.minutes, mix.row) = (minutes(row), Some(row));
    }
    mix.sound |= sound(row);
}

fn minutes(row: &CleanerRow) -> Option<f64> {
    row.contact_max.or(row.contact_min)
}

fn sound(row: &CleanerRow) -> bool {
    row.works == Works::Yes && !row.indirect
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

    /// PP-215 as recalled in the table: one part bleach to three parts water for ten minutes; other sources say five to
    /// ten. The longest counts.
    #[test]
    fn bleach_one_to_three_soaks_as_long_as_the_strictest_source_says() {
        let mixes = mixes();
        let bleach = mixes
            .iter()
            .find(|m| m.agent == "bleach" && m.strength_pct == Some(25.0));
        assert_eq!(bleach.and_then(|mix| mix.minutes), Some(10.0));
    }
}
