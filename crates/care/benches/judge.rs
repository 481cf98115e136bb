//! Judgements a second on one core, with and without next looks, and the plain enumeration of the tests beside them.
//! Run with `cargo bench -p spearleaf-care`. Aim: 10,000 judgements a second (100 µs each).

extern crate spearleaf_care as care;
#[path = "../tests/judge_oracle/mod.rs"]
mod judge_oracle;

use care::judge::{Evidence, Judge, Rows};
use divan::Bencher;
use divan::counter::ItemsCount;
use judge_oracle::Oracle;
use model::{Day, Knowledge};
use std::hint::black_box;

fn main() {
    divan::main();
}

/// What was told: nothing, a few signs, a thorough look with counts.
const TOLD: [&str; 3] = ["nothing", "few", "thorough"];

fn keys(keys: &[&str]) -> Vec<String> {
    keys.iter().map(|k| (*k).to_owned()).collect()
}

fn with<T>(told: &str, then: impl FnOnce(&Evidence) -> T) -> T {
    let (seen, absent) = match told {
        "few" => (keys(&["starts-oldest", "translucent-flecks"]), Vec::new()),
        "thorough" => (
            keys(&[
                "starts-oldest",
                "one-sided-browning",
                "stalk-stripe",
                "leaflet-tips-dead",
                "thin-crown",
            ]),
            keys(&[
                "spear-pulls-out",
                "conk-lower-trunk",
                "starts-youngest",
                "fruit-drops-all",
            ]),
        ),
        _ => (Vec::new(), Vec::new()),
    };
    let on = Day::from_ymd(2026, 6, 15).expect("a date");
    let evidence = Evidence {
        species: Knowledge::embedded()
            .species_named("Phoenix canariensis")
            .species(),
        species_name: "Phoenix canariensis",
        seen: &seen,
        absent: &absent,
        on: Some(on),
        moved_on: Some(on.plus(-200)),
        counts: (told == "thorough").then_some([0.1, 0.2, 0.5, 1.0]),
        ..Evidence::default()
    };
    then(&evidence)
}

#[divan::bench(args = TOLD)]
fn judge(bencher: Bencher, told: &str) {
    with(told, |evidence| {
        bencher
            .counter(ItemsCount::new(1u32))
            .bench_local(|| black_box(Judge::embedded().judge(black_box(evidence))));
    });
}

#[divan::bench(args = TOLD)]
fn judge_only(bencher: Bencher, told: &str) {
    with(told, |evidence| {
        bencher
            .counter(ItemsCount::new(1u32))
            .bench_local(|| black_box(Judge::embedded().judge_only(black_box(evidence))));
    });
}

/// The plain enumeration gives probabilities only: no next look, no reasons.
#[divan::bench(args = TOLD, sample_count = 20, sample_size = 1)]
fn plain_enumeration(bencher: Bencher, told: &str) {
    let oracle = Oracle::of(Rows::of(Knowledge::embedded()));
    with(told, |evidence| {
        bencher.counter(ItemsCount::new(1u32)).bench_local(|| {
            black_box(
                oracle
                    .judge(black_box(evidence), None)
                    .probability("k-deficiency"),
            )
        });
    });
}

/// Making a judge from the tables, once a program.
#[divan::bench(sample_count = 20, sample_size = 1)]
fn make() -> Judge {
    Judge::new(black_box(Knowledge::embedded()))
}
