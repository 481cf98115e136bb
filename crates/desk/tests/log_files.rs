//! Files of blades, cuts and cleanings: what goes in comes out, bad rows are refused or noticed, nothing is lost.

use desk::export;
use desk::intake::{BladeReader, CleaningReader, CutReader, Logging, Refusal, Row};
use desk::office::{Note, Office};
use desk::world::World;
use model::{BladeKind, Body, Finding, Moment};
use spearleaf_desk as desk;
use std::sync::Arc;
use testkit::{PalmWith, day, palm};

fn office() -> Office {
    let world = World {
        now: testkit::clock("2026-06-01"),
        as_of: Some(day("2026-06-01")),
        new_id: testkit::ids(5),
        device: "test".to_owned(),
    };
    let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
    for (tag, stems) in [("A-1", 1), ("A-2", 1), ("B-1", 3)] {
        let body = Body::PalmRegistered(palm("Sabal palmetto").tag(tag).stems(stems));
        let note = Note {
            id: None,
            at: Moment::parse("2026-01-01T12:00:00Z").unwrap(),
            by: "Tester".into(),
            body,
            replaces: None,
        };
        office.record(vec![note]).unwrap();
    }
    office
}

/// What came of a file: entries, codes of oddities, rows already there, codes of refusals with line and column.
#[derive(Debug, Default, PartialEq)]
struct Came {
    entries: usize,
    odd: Vec<&'static str>,
    already: i64,
    refused: Vec<(u64, String, &'static str)>,
    remarks: Vec<&'static str>,
}

fn takes<'a, T>(
    office: &Office,
    rows: impl Iterator<Item = Result<Row<T>, Refusal>>,
    mut log: Logging<'a>,
    mut keep: impl FnMut(&mut Logging<'a>, T) -> Result<(), desk::intake::Fault>,
) -> Came {
    let mut came = Came::default();
    for row in rows {
        match row {
            Ok(row) => {
                came.remarks.extend(row.remarks.iter().map(|f| f.code));
                keep(&mut log, row.value).expect("a row of these tests is taken");
            }
            Err(bad) => came.refused.push((bad.line, bad.column, bad.finding.code)),
        }
    }
    let (notes, odd, already) = log.done();
    came.odd = odd.iter().map(|f: &Finding| f.code).collect();
    came.already = already;
    came.entries = office.record(notes).expect("the office takes it").len();
    came
}

fn logging(office: &Office) -> Logging<'_> {
    Logging::new(office.state(), "import", || office.new_id())
}

fn blades(office: &Office, file: &str) -> Came {
    let rows = BladeReader::open(file.as_bytes()).unwrap();
    let now = office.now();
    takes(office, rows, logging(office), |log, row| {
        log.blade(row, now)
    })
}

fn cuts(office: &Office, file: &str) -> Came {
    let known = logging(office).known();
    let rows = CutReader::open(file.as_bytes(), &known).unwrap();
    let rows = rows.not_after(office.today());
    takes(office, rows, logging(office), Logging::cut)
}

fn cleanings(office: &Office, file: &str) -> Came {
    let rows = CleaningReader::open(file.as_bytes()).unwrap();
    let rows = rows.not_after(office.today());
    takes(office, rows, logging(office), Logging::cleaning)
}

const BLADES: &str = "\
tag,kind,kit,holder,notes,Rack
S-1,hand-saw,Crate A,Ana,,left
S-2,,,,\"new, sharp\",
";

const CUTS: &str = "\
time,started,blade,tag,stem,off_green,off_yellowing,off_brown,off_stalks,who,despite,notes,Wind
2026-05-04T09:20:00-04:00,2026-05-04T09:10:00-04:00,S-1,A-1,,,2,5,1,Ana,,tidy,calm
2026-05-04T13:40:00Z,,S-2,B-1,3,,,,,,storm coming,,
";

const CLEANINGS: &str = "\
time,blade,agent,strength_pct,contact_min,brushed,bath_mixed,who,Rain
2026-05-04T13:32:00Z,S-1,bleach,25,10,yes,2026-05-04T12:00:00Z,Ana,no
2026-05-04T13:50:00Z,S-1,bleach,25,10,yes,2026-05-04T12:00:00Z,Ana,
2026-05-04T14:00:00Z,S-2,,,,,,,
";

fn out(
    office: &Office,
    write: fn(&model::State, &mut Vec<u8>) -> Result<u64, export::Error>,
) -> String {
    let mut text = Vec::new();
    write(&office.state(), &mut text).unwrap();
    String::from_utf8(text).unwrap()
}

#[test]
fn what_goes_in_comes_out_and_goes_in_again_as_nothing_new() {
    let first = office();
    assert_eq!(blades(&first, BLADES).entries, 2);
    assert_eq!(cuts(&first, CUTS).entries, 2);
    // three cleanings and one bath
    assert_eq!(cleanings(&first, CLEANINGS).entries, 4);
    let state = first.state();
    assert_eq!(
        state.blade_by_tag("S-1").unwrap().blade.kind,
        BladeKind::HandSaw
    );
    assert_eq!(state.baths.len(), 1);
    assert_eq!(
        state.by_tag("B-1").unwrap().cuts[0].cut.despite,
        "storm coming"
    );
    let codes: Vec<_> = state.noticed().iter().map(|n| n.finding.code).collect();
    assert_eq!(codes, ["cleaning-without-agent"]);

    let written = [
        out(&first, |s, o| export::blades(s, o)),
        out(&first, |s, o| export::cuts(s, o)),
        out(&first, |s, o| export::cleanings(s, o)),
    ];
    let second = office();
    for (n, office) in [(&first, 0), (&second, 1)].map(|(office, n)| (n, office)) {
        let came = [
            blades(office, &written[0]),
            cuts(office, &written[1]),
            cleanings(office, &written[2]),
        ];
        let entries: Vec<usize> = came.iter().map(|c| c.entries).collect();
        let already: Vec<i64> = came.iter().map(|c| c.already).collect();
        match n {
            0 => assert_eq!((entries, already), (vec![0, 0, 0], vec![2, 2, 3])),
            _ => assert_eq!((entries, already), (vec![2, 2, 4], vec![0, 0, 0])),
        }
        assert!(came.iter().all(|c| c.refused.is_empty()), "{came:?}");
    }
    let again = [
        out(&second, |s, o| export::blades(s, o)),
        out(&second, |s, o| export::cuts(s, o)),
        out(&second, |s, o| export::cleanings(s, o)),
    ];
    assert_eq!(again, written, "unknown columns included");
    assert!(written[1].lines().next().unwrap().ends_with("notes,Wind"));
}

/// The columns of `touches.csv`: time, blade, what, tag, agent, strength_pct, contact_min, who.
#[test]
fn touches_are_cuts_and_cleanings_in_the_order_of_time() {
    let office = office();
    blades(&office, BLADES);
    cuts(&office, CUTS);
    cleanings(&office, CLEANINGS);
    let expected = "\
time,blade,what,tag,agent,strength_pct,contact_min,who
2026-05-04T13:20:00Z,S-1,cut,A-1,,,,Ana
2026-05-04T13:32:00Z,S-1,clean,,bleach,25,10,Ana
2026-05-04T13:40:00Z,S-2,cut,B-1,,,,
2026-05-04T13:50:00Z,S-1,clean,,bleach,25,10,Ana
2026-05-04T14:00:00Z,S-2,clean,,,,,
";
    assert_eq!(out(&office, |s, o| export::touches(s, o)), expected);
}

#[test]
fn a_blade_nobody_registered_is_registered_and_a_palm_nobody_registered_is_refused() {
    let office = office();
    let came = cuts(
        &office,
        "time,blade,tag,stem\n\
         2026-05-04T13:00:00Z,X-9,A-1,\n\
         2026-05-04T13:10:00Z,X-9,A-3,\n\
         2026-05-04T13:20:00Z,X-9,Q-77,\n\
         2026-05-04T13:30:00Z,X-9,B-1,\n\
         2026-05-04T13:40:00Z,X-9,B-1,4\n\
         2026-05-04T13:50:00Z,X-9,A-2,1\n",
    );
    assert_eq!((came.entries, came.odd), (3, vec!["log-blade-was-unknown"]));
    let refused: Vec<_> = came
        .refused
        .iter()
        .map(|(l, c, f)| (*l, c.as_str(), *f))
        .collect();
    assert_eq!(
        refused,
        [
            (3, "tag", "intake-unknown-palm-near"),
            (4, "tag", "intake-unknown-palm"),
            (5, "stem", "intake-which-stem"),
            (6, "stem", "intake-no-such-stem"),
        ]
    );
    let state = office.state();
    let blade = state.blade_by_tag("X-9").unwrap();
    assert_eq!(
        (blade.blade.kind, blade.touches.len()),
        (BladeKind::Unknown, 2)
    );
}

#[test]
fn times_need_their_zone_and_lie_not_ahead() {
    let office = office();
    for (time, code) in [
        ("", "log-no-time"),
        ("2026-05-04", "log-bad-time"),
        ("04/05/2026 9:20", "log-bad-time"),
        ("2026-05-04T09:20:00", "log-no-zone"),
        ("2026-06-03T12:00:00Z", "intake-date-in-future"),
        ("1492-05-04T09:20:00Z", "intake-date-too-old"),
    ] {
        let came = cleanings(&office, &format!("time,blade\n{time},S-1\n"));
        let codes: Vec<_> = came
            .refused
            .iter()
            .map(|(_, c, f)| (c.as_str(), *f))
            .collect();
        assert_eq!(codes, [("time", code)], "{time}");
        assert_eq!(came.entries, 0);
    }
    for (row, code) in [
        ("2026-05-04T09:20:00Z,,,,", "log-no-blade"),
        ("2026-05-04T09:20:00Z,S-1,125,,", "intake-out-of-range"),
        ("2026-05-04T09:20:00Z,S-1,,-1,", "intake-out-of-range"),
        ("2026-05-04T09:20:00Z,S-1,,,perhaps", "log-yes-or-no"),
    ] {
        let file = format!("time,blade,strength_pct,contact_min,brushed\n{row}\n");
        let came = cleanings(&office, &file);
        assert_eq!(came.refused.len(), 1, "{row}");
        assert_eq!(came.refused[0].2, code, "{row}");
    }
    let came = blades(&office, "tag,kind\nS-1,axe\nS-2,hand-saw\nS-2,knife\n");
    let codes: Vec<_> = came.refused.iter().map(|(l, _, f)| (*l, *f)).collect();
    assert_eq!(codes, [(2, "log-bad-kind"), (4, "intake-doubled-tag")]);
    assert_eq!(came.entries, 1);
}

#[test]
fn doubled_rows_count_once_and_overlaps_are_noticed() {
    let office = office();
    let came = cuts(
        &office,
        "time,started,blade,tag\n\
         2026-05-04T13:20:00Z,2026-05-04T13:00:00Z,S-1,A-1\n\
         2026-05-04T13:20:00Z,2026-05-04T13:00:00Z,S-1,A-1\n\
         2026-05-04T13:30:00Z,2026-05-04T13:10:00Z,S-1,A-2\n\
         2026-05-04T14:00:00Z,2026-05-04T14:30:00Z,S-1,A-2\n",
    );
    assert_eq!((came.entries, came.already), (4, 1));
    assert_eq!(came.remarks, ["log-row-twice"]);
    let state = office.state();
    let mut codes: Vec<_> = state.noticed().iter().map(|n| n.finding.code).collect();
    codes.sort_unstable();
    assert_eq!(codes, ["cut-ends-before-it-starts", "cuts-overlap"]);
    assert_eq!(state.blade_by_tag("S-1").unwrap().touches.len(), 3);
}
