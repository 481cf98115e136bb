//! An office for tests of views.

use crate::office::Office;
use crate::world::World;
use ledger::{Ledger, Memory};
use std::sync::Arc;
use testkit::{Book, day, ids};

/// An office that holds a book, on a day.
pub(crate) fn office_on(book: &Book, today: &str) -> Office {
    let ledger = Memory::new();
    ledger.append(book.entries()).unwrap();
    let world = World {
        now: testkit::clock(today),
        as_of: Some(day(today)),
        new_id: ids(7),
        device: "test".into(),
    };
    Office::open(Arc::new(ledger), world).unwrap()
}
