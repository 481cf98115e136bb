//! Builders, fixed clock, seeded ids, for tests only.
//!
//! ```
//! use testkit::*;
//! let mut book = Book::new(7);
//! let palm = book.register(palm("Sabal palmetto").tag("A1").site("North yard"));
//! book.on("2026-03-02").inspect(palm, inspection("2026-03-02").counts(30, 2, 1));
//! assert_eq!(book.state().by_tag("A1").unwrap().inspections.len(), 1);
//! ```

mod book;
mod builders;

pub use book::Book;
pub use builders::{InspectionWith, PalmWith, inspection, palm};

use model::{Day, Moment};
use std::sync::atomic::{AtomicU64, Ordering};
use uuid::Uuid;

/// A day from its ISO text. Panics on anything else: tests know their days.
pub fn day(text: &str) -> Day {
    Day::parse(text).unwrap_or_else(|| panic!("not a day: {text}"))
}

/// Noon UTC of a day given as ISO text.
pub fn noon(text: &str) -> Moment {
    Moment(Moment::at_midnight(day(text)).0 + 12 * 3_600_000)
}

/// A clock that stands still at noon UTC of a day; fits `desk::World::now`.
pub fn clock(text: &str) -> Box<dyn Fn() -> Moment + Send + Sync> {
    let now = noon(text);
    Box::new(move || now)
}

/// Ids that are the same in every run: the n-th id of a seed. Fits `desk::World::new_id`.
pub fn ids(seed: u64) -> Box<dyn Fn() -> Uuid + Send + Sync> {
    let next = AtomicU64::new(0);
    Box::new(move || id(seed, next.fetch_add(1, Ordering::Relaxed)))
}

/// The n-th id of a seed, in the shape of a UUID v7; later ones are greater.
pub fn id(seed: u64, n: u64) -> Uuid {
    let mut tail = [0; 10];
    tail[..2].copy_from_slice(&(n as u16).to_be_bytes());
    tail[2..].copy_from_slice(&seed.to_be_bytes());
    uuid::Builder::from_unix_timestamp_millis(1_700_000_000_000 + n, &tail).into_uuid()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn ids_are_distinct_ordered_and_repeatable() {
        let make = ids(3);
        let some: Vec<Uuid> = (0..5000).map(|_| make()).collect();
        assert!(some.windows(2).all(|pair| pair[0] < pair[1]));
        assert_eq!(some[4], id(3, 4));
        let other: BTreeSet<Uuid> = (0..5000).map(|n| id(4, n)).collect();
        assert!(some.iter().all(|id| !other.contains(id)));
        assert_eq!(some[0].get_version_num(), 7);
    }
}
