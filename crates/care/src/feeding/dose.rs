//! How much of what.

use super::FeedCase;
use model::Span;
use model::knowledge::{FeedKind, FeedRow, FeedSize, ProductRow};

/// A palm with a trunk shorter than this is small, m (assumed: the source says small and large).
const SMALL_TRUNK_M: f64 = 3.0;

/// A rate at work on a palm.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Dose<'k> {
    /// The rate.
    pub row: &'k FeedRow,
    /// The product.
    pub product: Option<&'k ProductRow>,
    /// Grams in all at one application; `None`: the ground under the crown, or the rate, is not known.
    pub grams: Option<Span>,
}

/// The doses against something, in the order of the table.
pub fn doses<'k>(case: &FeedCase<'_, 'k>, against: &str) -> Vec<Dose<'k>> {
    let fits = |size: FeedSize| match (size, case.palm.trunk_height) {
        (FeedSize::Any, _) | (_, None) => true,
        (FeedSize::Small, Some(height)) => height.0 < SMALL_TRUNK_M,
        (FeedSize::Large, Some(height)) => height.0 >= SMALL_TRUNK_M,
    };
    case.knowledge
        .feeding
        .iter()
        .filter(|row| row.kind == FeedKind::Rate && row.against == against && fits(row.size))
        .map(|row| Dose {
            product: case.knowledge.product(&row.product),
            grams: grams(row, case.crown_m2),
            row,
        })
        .collect()
}

fn grams(row: &FeedRow, crown_m2: Option<Span>) -> Option<Span> {
    let figure = row.figure?;
    match row.unit.as_str() {
        "g/m2" => Some(figure.times(crown_m2?)),
        "g" => Some(figure),
        _ => None,
    }
}
