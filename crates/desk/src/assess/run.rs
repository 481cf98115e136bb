//! All cores, in the order of the file.

use crown::Sampler;
use rayon::prelude::*;
use std::sync::Mutex;

/// Palms read between two writings: enough to keep the cores busy, few enough to hold in memory.
const BATCH: usize = 512;

/// Draws per explanation.
const DRAWS: usize = 1024;

/// Does `work` for the indices below `count` on all cores of the current pool and hands the results to `take` in order.
/// Stops at the first error of `take`.
pub fn each<T: Send, E>(
    count: usize,
    work: impl Fn(usize, &mut Sampler) -> T + Sync,
    take: impl FnMut(T) -> Result<(), E>,
) -> Result<(), E> {
    // one sampler a thread: making one costs more than reading a palm
    let samplers: Vec<Mutex<Sampler>> = (0..rayon::current_num_threads())
        .map(|_| Mutex::new(Sampler::new(DRAWS)))
        .collect();
    let one = |index: usize| {
        let at = rayon::current_thread_index().unwrap_or(0) % samplers.len();
        let mut sampler = samplers[at]
            .lock()
            .unwrap_or_else(|broken| broken.into_inner());
        work(index, &mut sampler)
    };
    in_order(count, one, take)
}

/// The same for work that needs no sampler.
pub fn in_order<T: Send, E>(
    count: usize,
    work: impl Fn(usize) -> T + Sync,
    mut take: impl FnMut(T) -> Result<(), E>,
) -> Result<(), E> {
    let mut from = 0;
    while from < count {
        let to = (from + BATCH).min(count);
        let done: Vec<T> = (from..to).into_par_iter().map(&work).collect();
        done.into_iter().try_for_each(&mut take)?;
        from = to;
    }
    Ok(())
}
