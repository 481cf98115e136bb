//! Weather goes out as it came in; a second reading changes nothing, other figures take a day's place.

extern crate spearleaf_desk as desk;

use desk::export;
use desk::forms::{FileKind, preview, take};
use desk::office::Office;
use desk::world::World;
use ledger::{Ledger, Memory};
use std::sync::Arc;
use testkit::{Book, PalmWith, day, ids, palm};

const FILE: &str = "\
date,site,tmin_c,tmax_c,humidity_pct,wind_ms,radiation_mj,sunshine_h,rain_mm
2026-06-10,,22.4,31,71,1.8,,9.5,0
2026-06-11,,23,32.5,,,,,14.2
2026-06-10,North yard,21,30,,,22.1,,
";

fn office() -> Office {
    let mut book = Book::new(1);
    book.register(palm("Sabal palmetto").tag("A1").site("North yard"));
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
    export::weather(&office.state(), &mut bytes).unwrap();
    String::from_utf8(bytes).unwrap()
}

#[test]
fn what_goes_in_comes_out_and_a_second_reading_changes_nothing() {
    let office = office();
    assert_eq!(out(&office).lines().count(), 1, "a form to fill in");
    let first = preview(&office, FILE.as_bytes(), "");
    assert_eq!((first.kind, first.taken()), (Some(FileKind::Weather), 3));
    assert_eq!(take(&office, &first).unwrap(), 3);
    assert_eq!(out(&office), FILE);
    let again = preview(&office, FILE.as_bytes(), "");
    assert_eq!((again.taken(), again.already), (0, 3));
}

#[test]
fn figures_that_the_station_mended_take_the_days_place() {
    let office = office();
    take(&office, &preview(&office, FILE.as_bytes(), "")).unwrap();
    let mended = FILE.replace("14.2", "12.1");
    let mended = preview(&office, mended.as_bytes(), "");
    assert_eq!((mended.taken(), mended.already), (1, 2));
    take(&office, &mended).unwrap();
    assert_eq!(out(&office), FILE.replace("14.2", "12.1"));
}

#[test]
fn a_site_nobody_has_is_refused_where_it_stands() {
    let office = office();
    let file = FILE.replace("North yard", "Nort yard");
    let found = preview(&office, file.as_bytes(), "");
    let said: Vec<(u64, &str, &str)> = found
        .refusals
        .iter()
        .map(|r| (r.line, r.column.as_str(), r.finding.code))
        .collect();
    assert_eq!(said, [(4, "site", "weather-unknown-site")]);
    assert_eq!(found.taken(), 2);
}
