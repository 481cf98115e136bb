//! Hunger: a nutrient shortage takes the share K of a frond's life, and fronds die slowly.
//!
//! K 0.2 to 0.65 (assumed; half a crown is the common Florida state [ufifas-pinellas-2014]); 30 to 90 days from first
//! dead tissue to wholly dead [broschat-gilman-2013]. The crown otherwise moves as a settled one.
//! What would change it: measured crowns before and after feeding, by element.

use super::{OWN, Params, between};
use crate::lanes::Lanes;

/// Range of K.
pub const SHORTFALL: (f64, f64) = (0.20, 0.65);

pub(crate) fn parameters(u: &impl Fn(usize) -> Lanes, p: &mut Params) {
    p.shortfall = between(&u(OWN), SHORTFALL);
}
