//! Cut plans and answers to asked-for cuts, from files alone.

use super::yard::{Yard, stem_cases};
use crate::judging::Told;
use care::judge::Judge;
use care::{AskedAnswer, CutCase, CutPlan, Grounds};
use crown::{Cut, PalmReading, Sampler, read_palm};
use model::{Day, Inspection, Knowledge};

/// The visit the plans are for.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Visit {
    /// The day of the visit.
    pub on: Day,
    /// The visit after it, if one is planned.
    pub next: Option<Day>,
    /// What is going on around.
    pub grounds: Grounds,
}

/// The cut plan of every stem of one palm.
pub fn plans(yard: &Yard, index: usize, visit: &Visit, sampler: &mut Sampler) -> Vec<CutPlan> {
    with_cases(yard, index, visit, sampler, |case| care::cut_plan(&case))
}

/// The answer to "take `cut` off this stem"; `None`: the palm has no such stem.
pub fn asked_for(
    yard: &Yard,
    index: usize,
    stem: u16,
    visit: &Visit,
    cut: impl Fn(&CutCase) -> Cut,
    sampler: &mut Sampler,
) -> Option<AskedAnswer> {
    let answers = with_cases(yard, index, visit, sampler, |case| {
        (case.stem == stem).then(|| care::asked(&case, cut(&case)))
    });
    answers.into_iter().flatten().next()
}

fn with_cases<T>(
    yard: &Yard,
    index: usize,
    visit: &Visit,
    sampler: &mut Sampler,
    mut say: impl FnMut(CutCase) -> T,
) -> Vec<T> {
    let palm = yard.palm(index);
    let kind = yard.kind(index);
    let inspections = yard.inspections(index);
    let cases = stem_cases(palm, kind, &inspections, yard.climate(index));
    let read = read_palm(&cases, visit.on, sampler);
    let species = kind.species.map(|row| row.name.as_str());
    // the judge keeps to the tables of the program
    let species = species.and_then(|name| Knowledge::embedded().species_named(name).species());
    let told = Told::of_looks(palm, species, &inspections, &read, visit.on);
    let judgement = Judge::embedded().judge_only(&told.evidence());
    let PalmReading {
        stems,
        probabilities,
    } = read;
    let mut out = Vec::new();
    for (stem, reading) in &stems {
        let own: Vec<Inspection> = inspections
            .iter()
            .filter(|i| i.stem == *stem)
            .cloned()
            .collect();
        out.push(say(CutCase {
            palm,
            species: kind.species,
            stem: *stem,
            inspections: &own,
            reading,
            palm_probabilities: probabilities,
            holds: &[],
            today: visit.on,
            next_visit: visit.next,
            judgement: Some(&judgement),
            grounds: visit.grounds,
            knowledge: yard.knowledge(),
        }));
    }
    out
}
