use super::*;
use crate::leaf::Size;
use crate::testing::{codes_on, leaf};
use desk::office::Office;
use desk::views::owner;
use desk::words::Lang;
use desk::world::World;
use std::sync::Arc;
use testkit::{clock, day, ids};

const TODAY: &str = "2026-03-02";

/// What a QR reader from outside the project reads off the printed sheet is the owner's address, and without an address
/// there is no code.
#[test]
fn the_code_on_the_sheet_reads_back_as_the_private_link() {
    let world = World {
        now: clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: ids(5),
        device: "test".into(),
    };
    let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
    office.record(desk::demo::notes(day(TODAY))).unwrap();
    let link = format!("https://palms.example/o/{}", desk::demo::OWNER_SECRET);
    let leaf = leaf(Lang::Es, Size::Letter);
    let state = office.state();
    let palm = state.by_tag("Q-01").unwrap();
    let view = owner::view(&Speaker::new(leaf.measure), &office, palm).unwrap();
    let read = |link| {
        let document = press::set(TEMPLATE, &sheet(&leaf, &view, link)).unwrap();
        codes_on(&document)
    };
    assert_eq!(read(Some(link.as_str())), [link.as_str()]);
    assert!(read(None).is_empty());
}
