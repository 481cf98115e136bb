//! A process killed while it writes loses nothing that it was told is kept.
//!
//! The test runs itself as a child that appends and prints each acknowledged entry; SIGKILL gives it no chance to
//! tidy up. (What a power cut does to a disk no test here can show; that is what `synchronous=FULL` is for.)

use ledger::conformance::entry;
use ledger::{Ledger, Verdict};
use spearleaf_ledger_sqlite::{Sqlite, verify};
use std::io::{BufRead, BufReader, Write};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

const FOLDER: &str = "SPEARLEAF_TEST_KILL_FOLDER";
const FROM: &str = "SPEARLEAF_TEST_KILL_FROM";
const ROUNDS: u64 = 50;

/// The child: not a test by itself.
#[test]
#[ignore = "run by the test below as a child process"]
fn child_that_writes_until_killed() {
    let (Ok(folder), Ok(from)) = (std::env::var(FOLDER), std::env::var(FROM)) else {
        return;
    };
    let ledger = Sqlite::open(Path::new(&folder)).unwrap();
    let mut n: u64 = from.parse().unwrap();
    let mut out = std::io::stdout();
    loop {
        let size = 1 + n % 4;
        ledger
            .append(&(n..n + size).map(entry).collect::<Vec<_>>())
            .unwrap();
        let done: String = (n..n + size).map(|n| format!("kept {n}\n")).collect();
        // One write, so that no line is cut in two.
        out.write_all(done.as_bytes()).unwrap();
        out.flush().unwrap();
        n += size;
    }
}

/// One round: numbers the child said were kept before it was killed.
fn round(folder: &Path, from: u64, patience: Duration) -> Vec<u64> {
    let mut child = Command::new(std::env::current_exe().unwrap())
        .args([
            "--exact",
            "child_that_writes_until_killed",
            "--ignored",
            "--nocapture",
        ])
        .env(FOLDER, folder)
        .env(FROM, from.to_string())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap())
        .lines()
        .map_while(Result::ok);
    let number = |line: String| line.strip_prefix("kept ").and_then(|n| n.parse().ok());
    // The harness prints before the first entry; from then on the child is in the middle of writing.
    let first = lines.by_ref().find_map(number);
    std::thread::sleep(patience);
    child.kill().unwrap();
    let kept = first.into_iter().chain(lines.filter_map(number)).collect();
    child.wait().unwrap();
    kept
}

#[test]
fn fifty_kills_lose_nothing_that_was_acknowledged() {
    let folder = tempfile::tempdir().unwrap();
    let (mut from, mut acknowledged) = (0, Vec::new());
    for n in 0..ROUNDS {
        // Spread over the time of several appends, the same in every run.
        let kept = round(
            folder.path(),
            from,
            Duration::from_micros(n * 7919 % 31_000),
        );
        assert!(!kept.is_empty(), "round {n}: the child wrote nothing");
        acknowledged.extend(&kept);
        let Verdict::Whole(head) = verify(folder.path()).unwrap() else {
            panic!("round {n}: not whole")
        };
        let ledger = Sqlite::open(folder.path()).unwrap();
        assert_eq!(ledger.head().unwrap(), head);
        let entries: Vec<_> = acknowledged.iter().map(|n| entry(*n)).collect();
        let ids: Vec<_> = entries.iter().map(|e| e.id).collect();
        let found: Vec<_> = ledger
            .find(&ids)
            .unwrap()
            .into_iter()
            .map(|kept| kept.entry)
            .collect();
        assert!(
            found == entries,
            "round {n}: an acknowledged entry is missing"
        );
        // Batches are kept whole: the file ends where a batch ends, at or after the last acknowledged one.
        from = head.seq;
        assert!(from > *kept.last().unwrap());
        assert_eq!(batch_end(from), from, "round {n}: half a batch");
    }
    assert!(acknowledged.len() as u64 >= ROUNDS);
}

/// The first number at or after `n` at which a batch of the child can end.
fn batch_end(n: u64) -> u64 {
    let mut end = 0;
    while end < n {
        end += 1 + end % 4;
    }
    end
}
