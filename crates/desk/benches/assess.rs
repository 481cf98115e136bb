//! 1,000 and 10,000 palms with four looks each through what `spearleaf assess` does (reading, four forecasts,
//! tripwire), on one core and on all: seconds a thousand palms, and the ratios. Run with `cargo bench -p spearleaf-desk`.

use crown::Sampler;
use desk::assess::{Ask, Gather, Yard, answer, each};
use model::{Day, Inspection, Knowledge, Palm};
use spearleaf_desk as desk;
use std::convert::Infallible;
use std::time::Instant;

const SPECIES: [(&str, u32); 6] = [
    ("Sabal palmetto", 22),
    ("Phoenix canariensis", 140),
    ("Roystonea regia", 15),
    ("Cocos nucifera", 28),
    ("Syagrus romanzoffiana", 20),
    ("Washingtonia robusta", 28),
];

/// Invented palms: most in order, every seventh hungry, every fifth moved.
fn yard(count: u32, today: Day) -> Yard<'static> {
    let mut gather = Gather::new(Knowledge::embedded());
    for n in 0..count {
        let (species, full) = SPECIES[n as usize % SPECIES.len()];
        let moved_on = (n % 5 == 0).then(|| today.plus(-((n % 300) as i32) - 40));
        let palm = Palm {
            tag: format!("P{n}"),
            species: species.into(),
            stems: 1,
            moved_on,
            ..Palm::default()
        };
        gather.palm(palm);
        for look in 0..4 {
            let hungry = n % 7 == 0;
            let mut seen = Inspection::blank(1, today.plus(-300 + 91 * look));
            let live = if hungry { full / 2 } else { full } + (n + look as u32) % 3;
            seen.yellowing = Some(if hungry {
                live / 6 + 1
            } else {
                (n + look as u32) % 7 / 6
            });
            seen.green = Some(live - seen.yellowing.unwrap_or(0));
            seen.brown = Some(2 + (n * 3 + look as u32) % 3);
            seen.removed.brown = seen.brown;
            gather.inspection(n, seen);
        }
    }
    gather.done()
}

/// Seconds for the whole yard on a pool of this many threads.
fn seconds(yard: &Yard, ask: &Ask, threads: usize) -> f64 {
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads)
        .build()
        .expect("a pool of threads");
    let start = Instant::now();
    let mut needing = 0;
    pool.install(|| {
        let work = |index: usize, sampler: &mut Sampler| answer(yard, index, ask, sampler);
        each(yard.len(), work, |a| {
            needing += usize::from(a.needs_a_person());
            Ok::<(), Infallible>(())
        })
    })
    .unwrap_or_else(|never| match never {});
    assert!(needing > 0, "some of these palms need a person");
    start.elapsed().as_secs_f64()
}

fn main() {
    let today = Day::from_ymd(2026, 6, 1).expect("a date");
    let ask = Ask::of(today, &Ask::WEEKS);
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let mut per_palm = Vec::new();
    for count in [1_000, 10_000] {
        let yard = yard(count, today);
        let one = seconds(&yard, &ask, 1);
        let all = seconds(&yard, &ask, cores);
        let each = 1e3 * one / f64::from(count);
        println!(
            "{count} palms: {one:.2} s on one core ({each:.3} ms a palm), {all:.2} s on {cores}: {:.2} times as fast",
            one / all
        );
        per_palm.push(each);
    }
    println!(
        "a palm of 10,000 takes {:.2} times a palm of 1,000",
        per_palm[1] / per_palm[0]
    );
}
