//! An entry and what corrected it; and a form sent twice.
//!
//! A form carries the id of the entry it will become. Sent again as it was, nothing is recorded; sent again with
//! other values (the person went back and changed something), the later values are a correction of the earlier.

use model::{Body, Entry, EntryId};
use std::collections::BTreeSet;

/// What a form with this id and body is, against the entries about its palm.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Resent {
    /// Not seen before: record it.
    First,
    /// These very values are recorded already: nothing to do.
    Done,
    /// The id is taken with other values: record them as a correction of this entry.
    Corrects(EntryId),
}

/// Judges a form by the entries about its palm.
pub(super) fn resent(history: &[Entry], id: EntryId, body: &Body) -> Resent {
    let thread = thread(history, id);
    match thread.last() {
        None => Resent::First,
        Some(_) if thread.iter().any(|entry| entry.body == *body) => Resent::Done,
        Some(last) => Resent::Corrects(last.id),
    }
}

/// The entry with this id and those that correct it, directly or through others, in the order of writing.
/// Empty if there is no such entry.
pub(super) fn thread(history: &[Entry], id: EntryId) -> Vec<&Entry> {
    let mut ids = BTreeSet::from([id]);
    // a correction may stand before what it corrects where clocks disagree: go on until nothing is added
    while history
        .iter()
        .any(|e| e.replaces.is_some_and(|r| ids.contains(&r)) && ids.insert(e.id))
    {}
    let mut thread: Vec<&Entry> = history.iter().filter(|e| ids.contains(&e.id)).collect();
    if !thread.iter().any(|e| e.id == id) {
        thread.clear();
    }
    thread.sort_by_key(|e| (e.id != id, e.written_at, e.id));
    thread
}

#[cfg(test)]
mod tests {
    use super::*;
    use model::{Moment, PalmId};
    use uuid::Uuid;

    fn id(n: u128) -> EntryId {
        EntryId(Uuid::from_u128(n))
    }

    fn noted(text: &str) -> Body {
        Body::Noted {
            palm: PalmId(Uuid::nil()),
            text: text.into(),
        }
    }

    fn entry(n: u128, text: &str, replaces: Option<u128>) -> Entry {
        let at = Moment(n as i64);
        let (by, device) = (String::new(), String::new());
        Entry {
            id: id(n),
            at,
            written_at: at,
            by,
            device,
            body: noted(text),
            replaces: replaces.map(id),
        }
    }

    #[test]
    fn the_same_form_twice_is_one_entry_and_a_changed_form_is_a_correction() {
        let history = [
            entry(1, "a", None),
            entry(2, "b", Some(1)),
            entry(3, "other", None),
            entry(4, "d", Some(2)),
        ];
        assert_eq!(resent(&history, id(9), &noted("a")), Resent::First);
        assert_eq!(
            resent(&history, id(1), &noted("a")),
            Resent::Done,
            "a late copy of the first sending"
        );
        assert_eq!(
            resent(&history, id(1), &noted("b")),
            Resent::Done,
            "the changed form sent twice"
        );
        assert_eq!(
            resent(&history, id(1), &noted("c")),
            Resent::Corrects(id(4))
        );
        assert_eq!(
            resent(&history, id(3), &noted("a")),
            Resent::Corrects(id(3))
        );
    }

    #[test]
    fn a_thread_is_found_in_any_order() {
        let mut history = [
            entry(1, "a", None),
            entry(2, "b", Some(1)),
            entry(4, "d", Some(2)),
            entry(5, "e", None),
        ];
        let ids = |history: &[Entry]| {
            thread(history, id(1))
                .iter()
                .map(|e| e.id)
                .collect::<Vec<_>>()
        };
        assert_eq!(ids(&history), [id(1), id(2), id(4)]);
        history.reverse();
        assert_eq!(ids(&history), [id(1), id(2), id(4)]);
        assert!(thread(&history, id(9)).is_empty());
    }
}
