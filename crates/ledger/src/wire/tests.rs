//! Every entry comes back as it was.

mod work;

use super::*;
use crate::ChainHash;
use model::{
    Bath, Blade, BladeId, BladeKind, Body, Cleaning, Clock, CutMade, Day, Inspection, Metres, Palm,
    PalmId, Position, Removed, Spear, TakenOff,
};
use proptest::collection::{btree_map, vec};
use proptest::option::of;
use proptest::prelude::*;
use uuid::Uuid;

fn uuid() -> impl Strategy<Value = Uuid> {
    any::<u128>().prop_map(Uuid::from_u128)
}

fn day() -> impl Strategy<Value = Option<Day>> {
    of((-200_000i32..200_000).prop_map(Day))
}

fn number() -> impl Strategy<Value = Option<f64>> {
    of(prop::num::f64::NORMAL | prop::num::f64::ZERO | prop::num::f64::SUBNORMAL)
}

fn a_palm() -> impl Strategy<Value = Palm> {
    let words = (".*", ".*", ".*", ".*", ".*");
    let days = (day(), day(), day());
    let numbers = (
        number(),
        of((-90.0f64..=90.0, -180.0f64..=180.0)),
        number(),
        number(),
        number(),
    );
    (
        words,
        any::<u16>(),
        days,
        numbers,
        btree_map(".*", ".*", 0..3),
    )
        .prop_map(|(w, stems, d, n, extra)| Palm {
            tag: w.0,
            species: w.1,
            site: w.2,
            stems,
            planted_on: d.0,
            moved_on: d.1,
            last_cleaned_on: d.2,
            trunk_height: n.0.map(Metres),
            position: n.1.map(|(lat, lon)| Position { lat, lon }),
            over: w.3,
            wires: n.2.map(Metres),
            full_crown: n.3,
            fronds_per_year: n.4,
            notes: w.4,
            extra,
        })
}

fn a_look() -> impl Strategy<Value = Inspection> {
    let count = || of(any::<u32>());
    let clock = || of((1u32..=48).prop_map(|quarters| Clock(f64::from(quarters) / 4.0)));
    let spear = of((0usize..4).prop_map(|n| Spear::ALL[n].0));
    let counts = (
        count(),
        count(),
        count(),
        count(),
        count(),
        count(),
        count(),
    );
    let rest = (
        vec(".*", 0..3),
        vec(".*", 0..3),
        ".*",
        btree_map(".*", ".*", 0..3),
    );
    (
        any::<u16>(),
        -200_000i32..200_000,
        counts,
        spear,
        clock(),
        clock(),
        rest,
    )
        .prop_map(
            |(stem, date, c, spear, clock_left, clock_right, (signs, absent, notes, extra))| {
                Inspection {
                    stem,
                    date: Day(date),
                    green: c.0,
                    yellowing: c.1,
                    brown: c.2,
                    new_leaves: c.3,
                    removed: Removed {
                        green: c.4,
                        yellowing: c.5,
                        brown: c.6,
                    },
                    spear,
                    clock_left,
                    clock_right,
                    signs,
                    absent,
                    notes,
                    extra,
                }
            },
        )
}

fn a_blade() -> impl Strategy<Value = Blade> {
    let words = (".*", ".*", ".*", ".*");
    let kind = (0..BladeKind::ALL.len()).prop_map(|n| BladeKind::ALL[n].0);
    (words, kind, btree_map(".*", ".*", 0..3)).prop_map(|(w, kind, extra)| Blade {
        tag: w.0,
        kind,
        kit: w.1,
        holder: w.2,
        notes: w.3,
        extra,
    })
}

// RFC 3339 ends at year 9999.
fn moment() -> impl Strategy<Value = Moment> {
    (-60_000_000_000_000i64..250_000_000_000_000).prop_map(Moment)
}

fn a_cut() -> impl Strategy<Value = CutMade> {
    let count = || of(any::<u32>());
    let ids = (uuid(), any::<u16>(), uuid(), of(moment()));
    let off = (count(), count(), count(), count());
    (ids, off, (".*", ".*", ".*"), btree_map(".*", ".*", 0..3)).prop_map(
        |(ids, off, words, extra)| CutMade {
            extra,
            palm: PalmId(ids.0),
            stem: ids.1,
            blade: BladeId(ids.2),
            started: ids.3,
            off: TakenOff {
                green: off.0,
                yellowing: off.1,
                brown: off.2,
                stalks: off.3,
            },
            crew: words.0,
            despite: words.1,
            notes: words.2,
        },
    )
}

fn a_cleaning() -> impl Strategy<Value = Cleaning> {
    let how = (number(), number(), of(any::<bool>()), of(uuid()));
    (uuid(), ".*", how, ".*", btree_map(".*", ".*", 0..3)).prop_map(
        |(blade, agent, how, by, extra)| Cleaning {
            extra,
            blade: BladeId(blade),
            agent,
            strength_pct: how.0,
            contact_min: how.1,
            brushed: how.2,
            bath: how.3.map(EntryId),
            by,
        },
    )
}

fn a_blades_body() -> impl Strategy<Value = Body> {
    let blade = || uuid().prop_map(BladeId);
    prop_oneof![
        a_blade().prop_map(Body::BladeRegistered),
        (blade(), a_blade()).prop_map(|(blade, to)| Body::BladeChanged { blade, to }),
        (blade(), ".*").prop_map(|(blade, why)| Body::BladeRetired { blade, why }),
        (blade(), ".*").prop_map(|(blade, to)| Body::BladeLent { blade, to }),
        blade().prop_map(|blade| Body::BladeReturned { blade }),
        a_cut().prop_map(Body::CutMade),
        (".*", number(), ".*").prop_map(|(agent, strength_pct, kit)| Body::BathMixed(Bath {
            agent,
            strength_pct,
            kit
        })),
        a_cleaning().prop_map(Body::Cleaned),
    ]
}

fn a_body() -> impl Strategy<Value = Body> {
    let palm = || uuid().prop_map(PalmId);
    prop_oneof![
        a_palm().prop_map(Body::PalmRegistered),
        (palm(), a_palm()).prop_map(|(palm, to)| Body::PalmChanged { palm, to }),
        (palm(), ".*").prop_map(|(palm, why)| Body::PalmRemoved { palm, why }),
        (palm(), a_look()).prop_map(|(palm, inspection)| Body::Inspected { palm, inspection }),
        (palm(), ".*", day(), ".*").prop_map(|(palm, reason, until, note)| Body::HoldSet {
            palm,
            reason,
            until,
            note
        }),
        (uuid(), ".*").prop_map(|(hold, note)| Body::HoldLifted {
            hold: EntryId(hold),
            note
        }),
        (palm(), ".*").prop_map(|(palm, text)| Body::Noted { palm, text }),
        ".*".prop_map(|why| Body::Withdrawn { why }),
        ("x-[a-z]{1,8}", any::<u32>(), ".*").prop_map(|(kind, version, text)| Body::Unknown {
            kind,
            version,
            json: serde_json::to_string(&text).unwrap(),
        }),
    ]
}

fn an_entry() -> impl Strategy<Value = Entry> {
    // On the heap: as values they are larger than a test thread's stack.
    let body = prop_oneof![
        a_body().boxed(),
        a_blades_body().boxed(),
        work::a_work_body().boxed()
    ];
    (uuid(), moment(), moment(), ".*", ".*", body, of(uuid())).prop_map(
        |(id, at, written_at, by, device, body, replaces)| Entry {
            id: EntryId(id),
            at,
            written_at,
            by,
            device,
            body,
            replaces: replaces.map(EntryId),
        },
    )
}

proptest! {
    #[test]
    fn entries_come_back_as_they_were(entry in an_entry()) {
        let record = Record::from_entry(&entry).unwrap();
        prop_assert_eq!(&record.to_entry(), &entry);
        let line = record.to_line(3, ChainHash::ORIGIN).unwrap();
        prop_assert!(!line.contains('\n'));
        prop_assert_eq!(Record::from_line(&line).unwrap(), record);
    }

    #[test]
    fn a_change_anywhere_changes_the_hash(entry in an_entry(), other in an_entry()) {
        let (a, b) = (Record::from_entry(&entry).unwrap(), Record::from_entry(&other).unwrap());
        prop_assume!(a != b);
        prop_assert_ne!(ChainHash::ORIGIN.next(1, &a), ChainHash::ORIGIN.next(1, &b));
        prop_assert_ne!(ChainHash::ORIGIN.next(1, &a), ChainHash::ORIGIN.next(2, &a));
    }
}

fn record(kind: &str, version: u32, body: &str) -> Record {
    let entry = crate::conformance::entry(1);
    Record {
        kind: kind.into(),
        version,
        body: body.into(),
        ..Record::from_entry(&entry).unwrap()
    }
}

#[test]
fn what_is_not_understood_is_kept_as_it_came() {
    for (kind, version, body) in [
        ("lab-sample", 1, r#"{"a":1}"#),
        ("inspection", 3, r#"{"palm":"x","petals":3}"#),
        (
            "inspection",
            2,
            r#"{"palm":"00000000-0000-0000-0000-000000000000","look":{"stem":1,"date":"2026-02-03"}}"#,
        ),
        ("withdrawn", 1, r#"{"why":"x","later":true}"#),
        ("withdrawn", 1, r#"{"why":5}"#),
        ("blade-registered", 1, r#"{"tag":"S1","kind":"lightsaber"}"#),
        (
            "cut",
            1,
            r#"{"palm":"00000000-0000-0000-0000-000000000000","stem":1,"blade":"00000000-0000-0000-0000-000000000000","started":"at nine"}"#,
        ),
        (
            "inspection",
            1,
            r#"{"palm":"00000000-0000-0000-0000-000000000000","look":{"stem":1,"date":"2026-02-30"}}"#,
        ),
        ("withdrawn", 1, "\n[1,\r\n 2]"),
    ] {
        let came = record(kind, version, body);
        let entry = came.to_entry();
        assert!(
            matches!(&entry.body, Body::Unknown { json, .. } if json == body),
            "{kind} {body}"
        );
        assert_eq!(Record::from_entry(&entry).unwrap(), came);
        let line = came.to_line(1, ChainHash::ORIGIN).unwrap();
        assert!(
            Record::from_line(&line).unwrap().says_the_same(&came),
            "{line}"
        );
    }
}

/// An older program must see that it does not understand; what tells nothing new it must go on reading.
#[test]
fn an_inspection_is_of_version_two_only_where_it_tells_what_was_not_there() {
    let look = |absent: &[&str]| Inspection {
        signs: vec!["a".into()],
        absent: absent.iter().map(|s| (*s).to_owned()).collect(),
        ..Inspection::blank(1, Day::parse("2026-03-02").unwrap())
    };
    let palm = PalmId(Uuid::nil());
    for (absent, version, body) in [
        (
            &[][..],
            1,
            r#"{"palm":"00000000-0000-0000-0000-000000000000","look":{"stem":1,"date":"2026-03-02","signs":["a"]}}"#,
        ),
        (
            &["b", "c"],
            2,
            r#"{"palm":"00000000-0000-0000-0000-000000000000","look":{"stem":1,"date":"2026-03-02","signs":["a"]},"absent":["b","c"]}"#,
        ),
    ] {
        let came = record("inspection", version, body);
        let entry = came.to_entry();
        let inspection = look(absent);
        assert_eq!(entry.body, Body::Inspected { palm, inspection });
        assert_eq!(Record::from_entry(&entry).unwrap(), came);
    }
}

/// Written down here, so that a later change of the twins cannot forget what lies in ledgers.
#[test]
fn blades_cuts_and_cleanings_are_read_as_they_were_first_written() {
    let none = "00000000-0000-0000-0000-000000000000";
    let (blade, palm) = (BladeId(Uuid::nil()), PalmId(Uuid::nil()));
    let registered = record(
        "blade-registered",
        1,
        r#"{"tag":"S1","kind":"pole-saw","kit":"A"}"#,
    );
    let expected = Blade {
        tag: "S1".into(),
        kind: BladeKind::PoleSaw,
        kit: "A".into(),
        ..Blade::default()
    };
    assert_eq!(registered.to_entry().body, Body::BladeRegistered(expected));
    let body = format!(
        r#"{{"palm":"{none}","stem":2,"blade":"{none}","started":"2026-03-02T09:30:00Z","off_brown":4,"despite":"storm"}}"#
    );
    let cut = CutMade {
        palm,
        stem: 2,
        blade,
        started: Moment::parse("2026-03-02T09:30:00Z"),
        off: TakenOff {
            brown: Some(4),
            ..TakenOff::default()
        },
        crew: String::new(),
        despite: "storm".into(),
        notes: String::new(),
        extra: Default::default(),
    };
    assert_eq!(record("cut", 1, &body).to_entry().body, Body::CutMade(cut));
    let body = format!(
        r#"{{"blade":"{none}","agent":"bleach","strength_pct":10.0,"contact_min":5.0,"brushed":true}}"#
    );
    let cleaning = Cleaning {
        blade,
        agent: "bleach".into(),
        strength_pct: Some(10.0),
        contact_min: Some(5.0),
        brushed: Some(true),
        bath: None,
        by: String::new(),
        extra: Default::default(),
    };
    let entry = record("cleaning", 1, &body).to_entry();
    assert_eq!(entry.body, Body::Cleaned(cleaning));
    assert_eq!(Record::from_entry(&entry).unwrap().body, body);
}

#[test]
fn spacing_and_order_of_fields_do_not_make_another_entry() {
    let one = record("lab-sample", 1, r#"{"a":1,"b":[2]}"#);
    assert!(one.says_the_same(&record("lab-sample", 1, "{ \"b\": [2],\n \"a\": 1 }")));
    assert!(!one.says_the_same(&record("lab-sample", 1, r#"{"a":1,"b":[3]}"#)));
    assert!(!one.says_the_same(&record("lab-sample", 2, r#"{"a":1,"b":[2]}"#)));
    let spelled = record(
        "withdrawn",
        1,
        r#"{ "why": "number 1, \"quoted\", \u00f1, \ud83c\udf34" }"#,
    );
    assert!(spelled.says_the_same(&Record::from_entry(&crate::conformance::entry(1)).unwrap()));
}

#[test]
fn a_bad_line_says_what_is_wrong() {
    let good = Record::from_entry(&crate::conformance::entry(1))
        .unwrap()
        .to_line(1, ChainHash::ORIGIN)
        .unwrap();
    let moved = good.replace("2023-11-14T22:13:20.001Z", "yesterday");
    assert!(
        Record::from_line(&moved)
            .unwrap_err()
            .to_string()
            .contains("at is not a date and time"),
        "{moved}"
    );
    for bad in ["", "{}", "[]", &good[..good.len() - 1]] {
        assert!(
            Record::from_line(bad)
                .unwrap_err()
                .to_string()
                .starts_with("not an entry: "),
            "{bad}"
        );
    }
}
