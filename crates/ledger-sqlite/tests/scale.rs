//! A large register: 100,000 palms with six looks each. Run by hand:
//! `cargo test --release -p spearleaf-ledger-sqlite --test scale -- --ignored --nocapture`

use ledger::{Ledger, Verdict};
use model::state::Fold;
use model::{Body, Entry, PalmId};
use spearleaf_ledger_sqlite::{FILE, Sqlite};
use std::time::Instant;
use testkit::{Book, InspectionWith, PalmWith, inspection, palm};

const PALMS: usize = 100_000;
const LOOKS: usize = 6;

fn entries() -> Vec<Entry> {
    let mut book = Book::new(1);
    let described = |n: usize| {
        palm("Sabal palmetto")
            .tag(&format!("P{n:06}"))
            .site(&format!("Site {}", n % 40))
    };
    let palms: Vec<PalmId> = (0..PALMS)
        .map(|n| book.register(described(n).at(27.9, -82.4)))
        .collect();
    for round in 1..=LOOKS {
        for (n, id) in palms.iter().enumerate() {
            let look = inspection(&format!("2026-{round:02}-01")).counts(25 + (n % 9) as u32, 2, 1);
            book.write(
                Body::Inspected {
                    palm: *id,
                    inspection: look,
                },
                None,
            );
        }
    }
    book.entries().to_vec()
}

/// Resident memory in MiB, where the system tells (Linux).
fn resident() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let kb: u64 = status
        .lines()
        .find_map(|l| l.strip_prefix("VmRSS:"))?
        .trim()
        .strip_suffix(" kB")?
        .parse()
        .ok()?;
    Some(kb / 1024)
}

#[test]
#[ignore = "takes a minute; run by hand"]
fn a_hundred_thousand_palms() {
    let folder = tempfile::tempdir().unwrap();
    let ledger = Sqlite::open(folder.path()).unwrap();
    let all = entries();
    let start = Instant::now();
    for batch in all.chunks(50_000) {
        ledger.append(batch).unwrap();
    }
    let size = std::fs::metadata(folder.path().join(FILE)).unwrap().len() >> 20;
    println!(
        "append {} entries: {:.1?}, {size} MiB",
        all.len(),
        start.elapsed()
    );
    drop(all);

    let before = resident();
    let start = Instant::now();
    let mut fold = Fold::default();
    let mut seq = 0;
    loop {
        let page = ledger.read(seq, 20_000).unwrap();
        let Some(last) = page.last() else { break };
        seq = last.seq;
        fold.apply(page.into_iter().map(|kept| kept.entry));
    }
    println!(
        "read and fold: {:.1?}, memory {before:?} to {:?} MiB",
        start.elapsed(),
        resident()
    );
    let state = fold.state();
    assert_eq!(
        (state.palms.len(), state.tags().len(), state.noticed().len()),
        (PALMS, PALMS, 0)
    );

    let palm = state.by_tag("P050000").unwrap().id;
    let mut more = Book::new(2);
    let mut held = Vec::new();
    let start = Instant::now();
    for n in 0..20 {
        more.inspect(
            palm,
            inspection("2026-08-01").with(|look| look.date = look.date.plus(n)),
        );
        fold.apply(more.entries().last().cloned());
        // A snapshot taken each time, as the office does: the next entry must copy the index of palms.
        held.push(fold.state());
        assert_eq!(
            held[n as usize].palm(palm).unwrap().inspections.len(),
            LOOKS + 1 + n as usize
        );
    }
    println!("one more entry: {:.1?}", start.elapsed() / 20);
    drop((state, held));

    let start = Instant::now();
    assert!(matches!(ledger.verify().unwrap(), Verdict::Whole(_)));
    println!("verify: {:.1?}", start.elapsed());
    let start = Instant::now();
    ledger.backup(&folder.path().join("backup")).unwrap();
    println!("backup: {:.1?}", start.elapsed());
}
