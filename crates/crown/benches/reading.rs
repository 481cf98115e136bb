//! One palm with four inspections at 1,024 draws per explanation: reading, and reading with the four forecasts that
//! `assess` writes. Run with `cargo bench -p spearleaf-crown`.

use crown::{Cut, Prior, Sampler, StemCase, read};
use model::{Climate, Day, Inspection, Knowledge, Palm};
use std::hint::black_box;

fn main() {
    divan::main();
}

/// A palm with four looks a quarter apart; `which` picks the story.
fn case(which: &str) -> (StemCase, Day) {
    let knowledge = Knowledge::embedded();
    let palm = Palm {
        species: "Sabal palmetto".into(),
        stems: 1,
        ..Palm::default()
    };
    let species = match knowledge.species_named(&palm.species) {
        model::knowledge::Named::Exact(s) => s,
        _ => panic!("the species is in the table"),
    };
    let prior = Prior::of(&palm, Some(species), &[]);
    let today = Day::from_ymd(2026, 6, 1).expect("a date");
    // green, yellowing, brown, brown taken off; the first count is not compared
    let counts: [[u32; 4]; 4] = match which {
        "ageing" => [[22, 0, 2, 2], [22, 0, 2, 2], [23, 1, 3, 3], [22, 0, 3, 3]],
        "hungry" => [[9, 3, 4, 4], [8, 3, 2, 2], [9, 4, 3, 3], [8, 3, 3, 3]],
        "declining" => [[22, 0, 2, 2], [21, 1, 3, 3], [14, 3, 5, 5], [6, 3, 9, 0]],
        _ => [[22, 1, 2, 2], [19, 3, 4, 4], [18, 1, 2, 2], [19, 0, 0, 0]],
    };
    let inspections: Vec<Inspection> = counts
        .iter()
        .enumerate()
        .map(|(i, [green, yellowing, brown, off])| {
            let mut look = Inspection::blank(1, today.plus(91 * i as i32 - 300));
            (look.green, look.yellowing, look.brown) =
                (Some(*green), Some(*yellowing), Some(*brown));
            look.removed.brown = Some(*off);
            look
        })
        .collect();
    let climate: Option<&Climate> = knowledge
        .climate_near(27.9, -82.5)
        .map(|(place, _)| &place.climate);
    let mut case = StemCase::of(&palm, 1, &inspections, prior, climate);
    if which == "moved" {
        case.moved_on = Some(today.plus(-310));
    }
    (case, today)
}

#[divan::bench(args = ["ageing", "hungry", "declining", "moved"])]
fn reading(bencher: divan::Bencher, which: &str) {
    let (case, today) = case(which);
    let mut sampler = Sampler::new(1024);
    bencher.bench_local(|| black_box(read(&case, today, &mut sampler).effective_draws));
}

#[divan::bench(args = ["ageing", "hungry", "declining", "moved"])]
fn reading_and_forecasts(bencher: divan::Bencher, which: &str) {
    let (case, today) = case(which);
    let mut sampler = Sampler::new(1024);
    let days = [28, 56, 182, 364].map(|d| today.plus(d));
    bencher.bench_local(|| {
        let reading = read(&case, today, &mut sampler);
        black_box((
            reading.forecasts(Cut::NONE, &days),
            reading.tripwire(today.plus(56)),
        ))
    });
}
