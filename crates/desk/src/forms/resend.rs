//! A form sent twice.
//!
//! A form carries the id of the entry it will become. Sent again as it was, nothing is recorded; sent again with
//! other values (the person went back and changed something), the later values are a correction of the earlier.

use model::{Body, Entry, EntryId};
use std::collections::BTreeSet;

/// What a form with this id and body is, against the entries about its palm.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Resent {
    /// Not seen before: record it.
    First,
    /// These very values are recorded already: nothing to do.
    Done,
    /// The id is taken with other values: record them as a correction of this entry.
    Corrects(EntryId),
}

/// Judges a form by the entries about its palm, oldest first.
pub fn resent(history: &[Entry], id: EntryId, body: &Body) -> Resent {
    if !history.iter().any(|entry| entry.id == id) {
        return Resent::First;
    }
    let mut chain = BTreeSet::from([id]);
    let mut last = id;
    for entry in history {
        if entry.replaces.is_some_and(|replaced| chain.contains(&replaced)) {
            chain.insert(entry.id);
            last = entry.id;
        }
    }
    let done = history.iter().any(|entry| chain.contains(&entry.id) && entry.body == *body);
    if done { Resent::Done } else { Resent::Corrects(last) }
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
        Body::Noted { palm: PalmId(Uuid::nil()), text: text.into() }
    }

    fn entry(n: u128, text: &str, replaces: Option<u128>) -> Entry {
        let at = Moment(0);
        let (by, device) = (String::new(), String::new());
        Entry { id: id(n), at, written_at: at, by, device, body: noted(text), replaces: replaces.map(id) }
    }

    #[test]
    fn the_same_form_twice_is_one_entry_and_a_changed_form_is_a_correction() {
        let history = [entry(1, "a", None), entry(2, "b", Some(1)), entry(3, "other", None)];
        assert_eq!(resent(&history, id(9), &noted("a")), Resent::First);
        assert_eq!(resent(&history, id(1), &noted("a")), Resent::Done, "a late copy of the first sending");
        assert_eq!(resent(&history, id(1), &noted("b")), Resent::Done, "the changed form sent twice");
        assert_eq!(resent(&history, id(1), &noted("c")), Resent::Corrects(id(2)));
        assert_eq!(resent(&history, id(3), &noted("a")), Resent::Corrects(id(3)));
    }
}
