//! How fast a sweep is, beside how fast this machine reads memory in the same run.
//!
//! `cargo bench -p spearleaf-trace` takes 10^5, 10^6 and 10^7 touches; `SPEARLEAF_TOUCHES=100000000` adds more sizes
//! (comma between). Two years, 200 blades, 50,000 palms; a blade stays on a site for a day, is cleaned after about every
//! second palm, and one cleaning in five is short or unknown.

// a bench looks at the clock, prints, and is told its size from outside: the bans are for the crate itself
#![allow(clippy::disallowed_methods, clippy::disallowed_macros)]

use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use spearleaf_trace::{Case, Cleaning, Log, Rules, Set, Touch, What, backward, forward};
use std::hint::black_box;
use std::time::Instant;

const BLADES: u32 = 200;
const PALMS: u32 = 50_000;
const SPAN: i64 = 2 * 365 * 86_400;
const DAY: i64 = 86_400;
/// Bytes of a touch in the log.
const BYTES: f64 = 10.0;
/// Bytes of a touch that the sweep reads where nothing happens.
const READ: f64 = 6.0;

fn main() {
    let mut sizes = vec![100_000, 1_000_000, 10_000_000];
    if let Ok(more) = std::env::var("SPEARLEAF_TOUCHES") {
        sizes.extend(
            more.split(',')
                .map(|n| n.trim().parse::<usize>().expect("a number of touches")),
        );
    }
    println!(
        "{:>11} {:>9} {:>9} {:>8} {:>9} {:>9} {:>7}",
        "touches", "sweep", "reached", "M/s", "GB/s", "memory", "share"
    );
    for size in sizes {
        let log = log(size);
        let memory = bandwidth();
        for (name, dirty) in [("clean", false), ("foul", true)] {
            for back in [false, true] {
                report(&log, name, dirty, back, memory);
            }
        }
    }
}

/// A log of so many touches, in the order of time.
fn log(size: usize) -> Log {
    let mut dice = ChaCha8Rng::seed_from_u64(7);
    let mut log = Log::starting(0, BLADES, PALMS).expect("small numbers");
    log.reserve(size);
    for k in 0..size {
        let at = (k as f64 / size as f64 * SPAN as f64) as i64;
        let blade = dice.random_range(0..BLADES);
        let what = match dice.random_range(0..30) {
            0..=7 => What::Clean(Cleaning::Adequate),
            8 => What::Clean(Cleaning::Short),
            9 => What::Clean(Cleaning::Unknown),
            _ => What::Cut {
                palm: near(blade, at, &mut dice),
            },
        };
        log.push(Touch { at, blade, what }).expect("in order");
    }
    log
}

/// A palm on the site where a blade is on its day.
fn near(blade: u32, at: i64, dice: &mut ChaCha8Rng) -> u32 {
    let day = (at / DAY) as u32;
    let site = (blade.wrapping_mul(2_654_435_761) ^ day.wrapping_mul(40_503)) % (PALMS / 100);
    site * 100 + dice.random_range(0..100)
}

/// Bytes a second that this machine reads: the sum of a buffer larger than its caches, the best of five.
fn bandwidth() -> f64 {
    let buffer = vec![1_u64; 32 << 20];
    let once = || {
        let start = Instant::now();
        black_box(buffer.iter().fold(0_u64, |sum, x| sum.wrapping_add(*x)));
        (buffer.len() * 8) as f64 / start.elapsed().as_secs_f64()
    };
    (0..5).map(|_| once()).fold(0.0, f64::max)
}

fn report(log: &Log, name: &str, dirty: bool, back: bool, memory: f64) {
    // few reached: a disorder that takes half a year to be passed on; many: one that passes at once, all palms carry it
    let latency = if dirty { 0 } else { 180 * DAY };
    let carries = vec![true; PALMS as usize];
    let rules = Rules {
        latency,
        carries: &carries,
        set: Set::Possible,
    };
    let case = Case {
        palm: 4_242,
        from: None,
        until: None,
    };
    let sweep = if back { backward } else { forward };
    let (mut best, mut reached) = (f64::MAX, 0);
    for _ in 0..3 {
        let start = Instant::now();
        reached = black_box(sweep(log, &[case], &rules)).contacts.len();
        best = best.min(start.elapsed().as_secs_f64());
    }
    let rate = log.len() as f64 / best;
    let way = if back { "back" } else { "ahead" };
    println!(
        "{:>11} {:>9} {:>9} {:>8.0} {:>9.2} {:>9.2} {:>7.2}   (all columns: {:.2})",
        log.len(),
        format!("{name} {way}"),
        reached,
        rate / 1e6,
        rate * READ / 1e9,
        memory / 1e9,
        rate * READ / memory,
        rate * BYTES / memory,
    );
}
