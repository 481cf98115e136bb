//! What every engine must do. An engine's test calls [`run`] with a maker of empty ledgers.

use crate::{Added, ChainHash, Error, Head, Ledger, Verdict};
use model::{Body, Entry, EntryId, Moment};
use uuid::Uuid;

/// Runs the whole suite; panics at the first promise an engine breaks.
pub fn run(fresh: &dyn Fn() -> Box<dyn Ledger>) {
    starts_empty(&*fresh());
    keeps_in_order_of_arrival(&*fresh());
    reads_in_pages(&*fresh());
    takes_the_same_entry_once(&*fresh());
    refuses_other_content(&*fresh());
    refuses_a_whole_batch(&*fresh());
    refuses_what_does_not_read_back(&*fresh());
    keeps_what_it_does_not_know(&*fresh());
    chains_alike(&*fresh(), &*fresh());
    keeps_meta(&*fresh());
    survives_many_writers(&*fresh());
}

/// A small entry; different `n` give different ids and content.
pub fn entry(n: u64) -> Entry {
    Entry {
        id: EntryId(Uuid::from_u64_pair(
            0x0190_0000_0000_7000,
            0x8000_0000_0000_0000 | n,
        )),
        at: Moment(1_700_000_000_000 + n as i64),
        written_at: Moment(1_700_000_000_500 + n as i64),
        by: "Keeper".into(),
        device: "test".into(),
        body: Body::Withdrawn {
            why: format!("number {n}, \"quoted\", ñ, \u{1F334}"),
        },
        replaces: n
            .is_multiple_of(3)
            .then(|| EntryId(Uuid::from_u128(u128::from(n)))),
    }
}

fn entries(numbers: std::ops::Range<u64>) -> Vec<Entry> {
    numbers.map(entry).collect()
}

fn seqs(ledger: &dyn Ledger) -> Vec<u64> {
    ledger
        .read(0, usize::MAX)
        .expect("read")
        .iter()
        .map(|kept| kept.seq)
        .collect()
}

fn assert_whole(ledger: &dyn Ledger) {
    let head = ledger.head().expect("head");
    assert_eq!(ledger.verify().expect("verify"), Verdict::Whole(head));
}

fn starts_empty(ledger: &dyn Ledger) {
    assert_eq!(
        ledger.head().expect("head"),
        Head {
            seq: 0,
            hash: ChainHash::ORIGIN
        }
    );
    assert_eq!(ledger.read(0, 10).expect("read"), []);
    assert_eq!(ledger.append(&[]).expect("an empty batch"), []);
    assert_whole(ledger);
}

fn keeps_in_order_of_arrival(ledger: &dyn Ledger) {
    let batch = [entry(5), entry(2), entry(9)];
    let added = ledger.append(&batch).expect("append");
    assert_eq!(added, [Added::New(1), Added::New(2), Added::New(3)]);
    let kept = ledger.read(0, 10).expect("read");
    assert_eq!(kept.iter().map(|k| k.seq).collect::<Vec<_>>(), [1, 2, 3]);
    assert!(kept.iter().map(|k| &k.entry).eq(&batch));
    let head = ledger.head().expect("head");
    assert_eq!((head.seq, head.hash), (3, kept[2].hash));
    let found = ledger
        .find(&[entry(9).id, entry(1).id, entry(5).id])
        .expect("find");
    assert_eq!(found.iter().map(|k| k.seq).collect::<Vec<_>>(), [3, 1]);
    assert_whole(ledger);
}

fn reads_in_pages(ledger: &dyn Ledger) {
    ledger.append(&entries(0..25)).expect("append");
    let mut seen = Vec::new();
    loop {
        let page = ledger.read(seen.len() as u64, 10).expect("page");
        if page.is_empty() {
            break;
        }
        assert!(page.len() <= 10);
        seen.extend(page.into_iter().map(|kept| kept.entry));
    }
    assert_eq!(seen, entries(0..25));
    assert_eq!(ledger.read(25, 10).expect("past the end"), []);
    assert_eq!(ledger.read(u64::MAX, 10).expect("far past the end"), []);
    assert_eq!(ledger.read(0, 0).expect("nothing asked"), []);
    let records = ledger.records(3, 2).expect("records");
    assert_eq!(
        records
            .iter()
            .map(|r| (r.0, r.2.to_entry()))
            .collect::<Vec<_>>(),
        [(4, entry(3)), (5, entry(4))]
    );
}

fn takes_the_same_entry_once(ledger: &dyn Ledger) {
    ledger.append(&[entry(1)]).expect("first");
    let head = ledger.head().expect("head");
    assert_eq!(
        ledger.append(&[entry(1)]).expect("again"),
        [Added::Already(1)]
    );
    assert_eq!(
        ledger.head().expect("head"),
        head,
        "sending twice does nothing"
    );
    let mixed = ledger
        .append(&[entry(1), entry(2), entry(2)])
        .expect("mixed");
    assert_eq!(mixed, [Added::Already(1), Added::New(2), Added::Already(2)]);
    assert_eq!(seqs(ledger), [1, 2]);
}

fn refuses_other_content(ledger: &dyn Ledger) {
    ledger.append(&[entry(1)]).expect("first");
    let others = [
        Entry {
            by: "Somebody".into(),
            ..entry(1)
        },
        Entry {
            at: Moment(0),
            ..entry(1)
        },
        Entry {
            written_at: Moment(0),
            ..entry(1)
        },
        Entry {
            device: "other".into(),
            ..entry(1)
        },
        Entry {
            replaces: Some(entry(7).id),
            ..entry(1)
        },
        Entry {
            body: Body::Withdrawn { why: String::new() },
            ..entry(1)
        },
    ];
    for other in others {
        let refused = ledger
            .append(std::slice::from_ref(&other))
            .expect_err("must be refused");
        assert!(
            matches!(refused, Error::Differs(id) if id == other.id),
            "{refused}"
        );
    }
    assert_eq!(ledger.read(0, 9).expect("read")[0].entry, entry(1));
    assert_eq!(seqs(ledger), [1]);
}

fn refuses_a_whole_batch(ledger: &dyn Ledger) {
    ledger.append(&[entry(1)]).expect("first");
    let head = ledger.head().expect("head");
    let clash = Entry {
        by: "Somebody".into(),
        ..entry(1)
    };
    ledger
        .append(&[entry(2), clash, entry(3)])
        .expect_err("must be refused");
    assert_eq!(ledger.head().expect("head"), head);
    assert_eq!(ledger.find(&[entry(2).id, entry(3).id]).expect("find"), []);
    let both = [
        entry(4),
        Entry {
            by: "Somebody".into(),
            ..entry(4)
        },
    ];
    ledger
        .append(&both)
        .expect_err("a batch that contradicts itself must be refused");
    assert_eq!(ledger.append(&[entry(2)]).expect("later"), [Added::New(2)]);
    assert_whole(ledger);
}

fn refuses_what_does_not_read_back(ledger: &dyn Ledger) {
    let unknown = |json: &str| Body::Unknown {
        kind: "later".into(),
        version: 1,
        json: json.into(),
    };
    let nan = model::Palm {
        full_crown: Some(f64::NAN),
        ..model::Palm::default()
    };
    for body in [
        unknown("{not json"),
        unknown(""),
        unknown("{} {}"),
        Body::PalmRegistered(nan),
    ] {
        let refused = ledger
            .append(&[Entry { body, ..entry(1) }])
            .expect_err("must be refused");
        assert!(matches!(refused, Error::Content { .. }), "{refused}");
    }
    assert!(seqs(ledger).is_empty());
}

fn keeps_what_it_does_not_know(ledger: &dyn Ledger) {
    let json =
        r#"{ "z": 1.0, "a": [1e400, 123456789012345678901234567890, "é"],  "deep": {"b": null} }"#;
    let body = Body::Unknown {
        kind: "lab-sample".into(),
        version: 7,
        json: json.into(),
    };
    let newer = Body::Unknown {
        kind: "inspection".into(),
        version: 2,
        json: r#"{"palm":"?"}"#.into(),
    };
    let batch = [
        Entry { body, ..entry(1) },
        Entry {
            body: newer,
            ..entry(2)
        },
    ];
    ledger.append(&batch).expect("append");
    let kept = ledger.read(0, 9).expect("read");
    assert!(kept.iter().map(|k| &k.entry).eq(&batch));
    assert_eq!(ledger.records(0, 1).expect("records")[0].2.body, json);
    assert_eq!(
        ledger.append(&batch).expect("again"),
        [Added::Already(1), Added::Already(2)]
    );
    assert_whole(ledger);
}

fn chains_alike(one: &dyn Ledger, other: &dyn Ledger) {
    one.append(&entries(0..20)).expect("in one batch");
    for n in 0..20 {
        other.append(&[entry(n)]).expect("one by one");
    }
    assert_eq!(
        one.head().expect("head"),
        other.head().expect("head"),
        "the chain depends on entries, not on batches"
    );
    // Written down once and for all: a ledger that computes another hash cannot read what earlier versions wrote.
    // The same value came out of a separate program in Python (blake3 1.0.11) from the layout in `ChainHash::next`.
    let known = "d76a70af5b58af0f7222caf5a9d1005481a5eb94f33f170c716dd61a52652a3d";
    assert_eq!(one.head().expect("head").hash.to_string(), known);
}

fn keeps_meta(ledger: &dyn Ledger) {
    assert_eq!(ledger.meta("language").expect("meta"), None);
    ledger.set_meta("language", "en").expect("set");
    ledger.set_meta("language", "es").expect("set again");
    assert_eq!(
        ledger.meta("language").expect("meta").as_deref(),
        Some("es")
    );
    assert_whole(ledger);
}

fn survives_many_writers(ledger: &dyn Ledger) {
    std::thread::scope(|scope| {
        for writer in 0..4 {
            scope.spawn(move || {
                for n in 0..10 {
                    // Every entry is handed in by two writers.
                    let number = (writer / 2) * 100 + n;
                    ledger
                        .append(&[entry(number)])
                        .expect("append beside others");
                }
            });
        }
    });
    assert_eq!(seqs(ledger), (1..=20).collect::<Vec<_>>());
    assert_whole(ledger);
}
