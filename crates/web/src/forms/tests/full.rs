//! A ledger that reads but does not write: a full disk.

use super::*;
use ledger::{Added, ChainHash, Error, Head, Kept, Ledger, Record, Verdict};
use model::{Entry, EntryId};
use std::sync::atomic::{AtomicBool, Ordering};

/// The memory engine with a disk that may be full.
#[derive(Default)]
pub struct Disk {
    inner: Memory,
    full: AtomicBool,
}

impl Disk {
    fn set_full(&self, full: bool) {
        self.full.store(full, Ordering::SeqCst);
    }
}

impl Ledger for Disk {
    fn append(&self, entries: &[Entry]) -> Result<Vec<Added>, Error> {
        if self.full.load(Ordering::SeqCst) {
            return Err(Error::Engine("disk full".into()));
        }
        self.inner.append(entries)
    }
    fn read(&self, after: u64, limit: usize) -> Result<Vec<Kept>, Error> {
        self.inner.read(after, limit)
    }
    fn records(&self, after: u64, limit: usize) -> Result<Vec<(u64, ChainHash, Record)>, Error> {
        self.inner.records(after, limit)
    }
    fn find(&self, ids: &[EntryId]) -> Result<Vec<Kept>, Error> {
        self.inner.find(ids)
    }
    fn head(&self) -> Result<Head, Error> {
        self.inner.head()
    }
    fn verify(&self) -> Result<Verdict, Error> {
        self.inner.verify()
    }
    fn meta(&self, name: &str) -> Result<Option<String>, Error> {
        self.inner.meta(name)
    }
    fn set_meta(&self, name: &str, value: &str) -> Result<(), Error> {
        self.inner.set_meta(name, value)
    }
}

#[tokio::test]
async fn nothing_typed_is_lost_when_the_ledger_cannot_write() {
    let disk = Arc::new(Disk::default());
    let desk = Desk::over(disk.clone(), TODAY);
    disk.set_full(true);
    let id = id_in(&desk.get("/palm/A1/inspect").await.text);
    let look = [
        ("id", id.as_str()),
        ("stem", "1"),
        ("date", TODAY),
        ("green", "17"),
    ];
    let palm = [
        ("tag", "Q9"),
        ("species", "Sabal palmetto"),
        ("stems", "1"),
        ("site", "By the pool"),
    ];
    let hold = [("reason", "nest"), ("note", "two eggs")];
    for (at, sent, kept) in [
        ("/palm/A1/inspect", &look[..], "value=\"17\""),
        ("/palms/new", &palm, "value=\"By the pool\""),
        ("/palm/A1/holds", &hold, "value=\"two eggs\""),
        ("/palm/A1/remove", &[("why", "felled")], "value=\"felled\""),
    ] {
        let answer = desk.post(at, sent).await;
        assert_eq!(answer.status, StatusCode::SERVICE_UNAVAILABLE, "{at}");
        for said in ["It could not be saved just now.", kept] {
            assert!(answer.text.contains(said), "{at}: {said}");
        }
    }
    disk.set_full(false);
    assert_eq!(desk.post("/palm/A1/inspect", &look).await.to, "/palm/A1");
    assert_eq!(desk.record("A1").last_look().unwrap().green, Some(17));
}
