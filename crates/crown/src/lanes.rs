//! Many crowns at once: fixed-width rows of numbers that the compiler can work on in parallel.

/// Crowns in a row.
pub(crate) const WIDTH: usize = 64;

/// One number for each crown of a row.
pub(crate) type Lanes = [f64; WIDTH];

/// A row from a function of the lane number.
#[inline(always)]
pub(crate) fn lanes(mut f: impl FnMut(usize) -> f64) -> Lanes {
    let mut out = [0.0; WIDTH];
    for (i, slot) in out.iter_mut().enumerate() {
        *slot = f(i);
    }
    out
}
