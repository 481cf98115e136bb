//! Moves go out as they came in, and reading a file twice records once.

extern crate spearleaf_desk as desk;

use desk::export;
use desk::forms::{FileKind, preview, take};
use desk::office::Office;
use desk::world::World;
use ledger::{Ledger, Memory};
use std::sync::Arc;
use testkit::{Book, PalmWith, day, ids, palm};

const FILE: &str = "\
tag,dug_on,planted_on,from,ball_radius_m,ball_depth_m,leaves,fronds_taken,deeper_m,bracing,soil,notes,crane
A1,2026-03-02,2026-03-04,a grove,0.61,0.6,tied,6,-0.1,four props,sand,came by night,hired
A2,2026-04-01,,,,,,,,,,,
";

fn office() -> Office {
    let mut book = Book::new(1);
    for tag in ["A1", "A2"] {
        book.register(palm("Sabal palmetto").tag(tag));
    }
    let ledger = Memory::new();
    ledger.append(book.entries()).unwrap();
    let world = World {
        now: testkit::clock("2026-06-15"),
        as_of: Some(day("2026-06-15")),
        new_id: ids(7),
        device: "test".into(),
    };
    Office::open(Arc::new(ledger), world).unwrap()
}

fn out(office: &Office) -> String {
    let mut bytes = Vec::new();
    export::moves(&office.state(), &mut bytes).unwrap();
    String::from_utf8(bytes).unwrap()
}

#[test]
fn what_goes_in_comes_out_and_a_second_reading_changes_nothing() {
    let office = office();
    let empty = out(&office);
    assert_eq!(empty.lines().count(), 1, "a form to fill in: {empty}");
    let first = preview(&office, FILE.as_bytes(), "");
    assert_eq!((first.kind, first.taken()), (Some(FileKind::Moves), 2));
    assert_eq!(take(&office, &first).unwrap(), 2);
    assert_eq!(out(&office), FILE);
    let moved_on = office.state().by_tag("A2").unwrap().palm.moved_on;
    assert_eq!(moved_on, Some(day("2026-04-01")));
    let again = preview(&office, FILE.as_bytes(), "");
    assert_eq!((again.taken(), again.already), (0, 2));
    let other = FILE.replace("0.61", "0.75");
    let other = preview(&office, other.as_bytes(), "");
    let codes: Vec<&str> = other.refusals.iter().map(|r| r.finding.code).collect();
    assert_eq!(codes, ["moves-registered"]);
}
