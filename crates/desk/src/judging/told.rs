//! What a judgement is told.

use crate::office::Office;
use care::judge::Evidence;
use crown::PalmReading;
use model::{Day, Inspection, Palm, PalmRecord, Spear, Species};
use std::collections::BTreeMap;

/// Looks so many days before the last one still count (assumed): a keeper goes round the stems of a palm on several
/// days, and does not note again what was noted a fortnight ago.
pub const LOOKS_WITHIN_DAYS: i32 = 30;

/// [`Evidence`] that owns what it speaks of.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Told {
    /// The species row, if the name resolves.
    pub species: Option<&'static Species>,
    /// The name as it was written.
    pub species_name: String,
    /// Keys of signs seen.
    pub seen: Vec<String>,
    /// Keys of signs looked for and not there.
    pub absent: Vec<String>,
    /// The day of the look.
    pub on: Option<Day>,
    /// Degrees, north positive.
    pub latitude: Option<f64>,
    /// Day it was dug and moved.
    pub moved_on: Option<Day>,
    /// Day it was planted where it stands.
    pub planted_on: Option<Day>,
    /// Day of the last frost that may have hurt it.
    pub frost_on: Option<Day>,
    /// Day of the last storm that may have hurt it.
    pub storm_on: Option<Day>,
    /// How well each explanation explains the counts; see [`Evidence::counts`].
    pub counts: Option<[f64; 4]>,
}

impl Told {
    /// What the register knows of a palm: signs of the last look and of the looks in the [`LOOKS_WITHIN_DAYS`] before it,
    /// on whatever stem, later ones taking the place of earlier ones; the spear among them; dates, place, and the counts as
    /// its reading has them. Speaks for the day of the last look, for today if there was none. Frosts and storms are not in the register.
    pub fn of_record(office: &Office, record: &PalmRecord, reading: &PalmReading) -> Told {
        let palm = &record.palm;
        let species = office.species(palm);
        Told::of_looks(palm, species, &record.inspections, reading, office.today())
    }

    /// The same from the looks themselves; those after `today` are not looked at.
    pub fn of_looks(
        palm: &Palm,
        species: Option<&'static Species>,
        looks: &[Inspection],
        reading: &PalmReading,
        today: Day,
    ) -> Told {
        let last = looks.iter().map(|look| look.date);
        let last = last.filter(|date| *date <= today).max();
        let (seen, absent) = last.map_or_else(Default::default, |last| {
            signs(looks, last.plus(-LOOKS_WITHIN_DAYS), last)
        });
        Told {
            species,
            species_name: palm.species.clone(),
            seen,
            absent,
            on: Some(last.unwrap_or(today)),
            latitude: palm.position.map(|p| p.lat),
            moved_on: palm.moved_on,
            planted_on: palm.planted_on,
            frost_on: None,
            storm_on: None,
            counts: likelihoods(reading),
        }
    }

    /// As the judge takes it.
    pub fn evidence(&self) -> Evidence<'_> {
        Evidence {
            species: self.species,
            species_name: &self.species_name,
            seen: &self.seen,
            absent: &self.absent,
            on: self.on,
            latitude: self.latitude,
            moved_on: self.moved_on,
            planted_on: self.planted_on,
            frost_on: self.frost_on,
            storm_on: self.storm_on,
            counts: self.counts,
        }
    }
}

/// How well each explanation explains the counts: probability by prior weight. `None` where nothing was ever looked at.
pub fn likelihoods(reading: &PalmReading) -> Option<[f64; 4]> {
    let looked_at = |(_, stem): &(u16, crown::Reading)| stem.last_inspection.is_some();
    if !reading.stems.iter().any(looked_at) {
        return None;
    }
    // moved or not is a matter of the palm, so all stems have the same prior
    let prior = reading.stems.first()?.1.prior_weights;
    let of = |k: usize| {
        if prior[k] > 0.0 {
            reading.probabilities[k] / prior[k]
        } else {
            0.0
        }
    };
    Some([of(0), of(1), of(2), of(3)])
}

/// What a look says of one sign.
#[derive(Clone, Copy)]
struct Mark {
    on: Day,
    seen: bool,
    absent: bool,
}

/// Signs seen and not there between two days, both counted. Of two days the later counts; of two stems on one day the one
/// that has the sign. What one look says both ways stays said both ways: the judge makes a finding of it.
fn signs(looks: &[Inspection], from: Day, until: Day) -> (Vec<String>, Vec<String>) {
    let mut looks: Vec<&Inspection> = looks
        .iter()
        .filter(|look| (from..=until).contains(&look.date))
        .collect();
    looks.sort_by_key(|look| look.date);
    let mut marks: BTreeMap<&str, Mark> = BTreeMap::new();
    for look in looks {
        let seen: Vec<&str> = look
            .signs
            .iter()
            .map(String::as_str)
            .chain(spear(look))
            .collect();
        for key in seen
            .iter()
            .copied()
            .chain(look.absent.iter().map(String::as_str))
        {
            let mark = Mark {
                on: look.date,
                seen: seen.contains(&key),
                absent: look.absent.iter().any(|k| k == key),
            };
            let there = marks.entry(key).or_insert(mark);
            if !(there.on == mark.on && there.seen) {
                *there = mark;
            }
        }
    }
    let keys = |pick: fn(&Mark) -> bool| {
        let picked = marks.iter().filter(|(_, mark)| pick(mark));
        picked.map(|(key, _)| (*key).to_owned()).collect()
    };
    (keys(|m| m.seen), keys(|m| m.absent))
}

/// The state of the spear as a sign; a spear that is down leans.
fn spear(look: &Inspection) -> Option<&'static str> {
    look.spear.map(|spear| match spear {
        Spear::Firm => "spear-firm",
        Spear::Leaning | Spear::Down => "spear-leaning",
        Spear::Pulled => "spear-pulls-out",
    })
}
