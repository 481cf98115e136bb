//! Sites and crews go out as they came in, and reading a file twice records once.

extern crate spearleaf_desk as desk;

use desk::demo;
use desk::export;
use desk::forms::{FileKind, preview, take};
use desk::office::Office;
use desk::world::World;
use ledger::Memory;
use model::State;
use std::sync::Arc;
use testkit::{day, ids};

const SITES: &str = "\
site,owner,lat,lon,hours,closed,soil,coastal,weevil_area,line_kv,no_feeding,tidy,limit,notes,zone
B,,,,,,,,,,,,,,
North yard,ours,25.5,-80.25,06:00-11:00;14:00-24:00,\"2026-05-01;2026-12-24/2026-12-26 Feast\\; no engines, please\",loam,yes,no,7.6,06-01/09-30 N+P Parish;12-15/01-15 all,2,6,dog,4
";
const CREWS: &str = "\
crew,people,from_lat,from_lon,to_lat,to_lon,hours,skills,kit,room_m3,gone,notes,plate
A,3,25.5,-80.25,25.75,-80.5,06:00-14:30,lift;rigging,pole-saw;cones,14.5,,leads,QM 12
B,,,,,,,,,,yes,,
";

fn office() -> Office {
    let world = World {
        now: testkit::clock("2026-06-15"),
        as_of: Some(day("2026-06-15")),
        new_id: ids(7),
        device: "test".into(),
    };
    Office::open(Arc::new(Memory::new()), world).unwrap()
}

type Write = fn(&State, &mut Vec<u8>) -> u64;

fn out(office: &Office, write: Write) -> String {
    let mut bytes = Vec::new();
    write(&office.state(), &mut bytes);
    String::from_utf8(bytes).unwrap()
}

#[test]
fn what_goes_in_comes_out_and_a_second_reading_changes_nothing() {
    let office = office();
    let sites: Write = |state, out| export::sites(state, out).unwrap();
    let crews: Write = |state, out| export::crews(state, out).unwrap();
    for (file, kind, write, code) in [
        (SITES, FileKind::Sites, sites, "sites-described"),
        (CREWS, FileKind::Crews, crews, "sites-crew-described"),
    ] {
        assert_eq!(out(&office, write).lines().count(), 1, "a form to fill in");
        let first = preview(&office, file.as_bytes(), "");
        assert!(first.refusals.is_empty(), "{:?}", first.refusals);
        assert_eq!((first.kind, first.taken()), (Some(kind), 2));
        assert_eq!(take(&office, &first).unwrap(), 2);
        assert_eq!(out(&office, write), file);
        let again = preview(&office, file.as_bytes(), "");
        assert_eq!((again.taken(), again.already), (0, 2));
        let other = file.replace(",dog,", ",two dogs,").replace("leads", "led");
        let other = preview(&office, other.as_bytes(), "");
        let codes: Vec<&str> = other.refusals.iter().map(|r| r.finding.code).collect();
        assert_eq!((codes, other.already), (vec![code], 1));
    }
}

/// The demo's sites and crews, out of one folder and into another.
#[test]
fn the_demo_goes_through_files_whole() {
    let (from, to) = (office(), office());
    from.record(demo::notes(day("2026-06-15"))).unwrap();
    for write in [
        (|state, out| export::sites(state, out).unwrap()) as Write,
        |state, out| export::crews(state, out).unwrap(),
    ] {
        let file = out(&from, write);
        let seen = preview(&to, file.as_bytes(), "");
        assert_eq!((seen.taken(), seen.refusals.len()), (3, 0), "{file}");
        assert!(seen.remarks.is_empty(), "{:?}", seen.remarks);
        take(&to, &seen).unwrap();
    }
    assert_eq!(from.state().work.sites, to.state().work.sites);
    assert_eq!(from.state().work.crews, to.state().work.crews);
}
