//! Private links that the demo's keeper gave to owners: one that is open, one past its day.

use super::book::Book;
use super::roster::plots;
use super::{KEEPER, id};
use crate::owner::hash;
use model::{Body, Day, OwnerLink, PalmId};

/// The secret of the open link. A true one is random and written nowhere; this one is for looking at the demo.
pub const SECRET: &str = "demquietquartzpaperbasin23456789";

/// Tag, secret, for whom, days ago on which it was given, last day from today (below zero: over).
const LINKS: [(&str, &str, &str, i32, Option<i32>); 2] = [
    ("Q-01", SECRET, "Orla Venn, for the courtyard", 20, None),
    (
        "L-16",
        "demsecretpaperthatisnotkept23456",
        "Tamsin Ferro",
        90,
        Some(-12),
    ),
];

/// Writes the links.
pub(super) fn write(today: Day, book: &mut Book) {
    for (tag, secret, owner, ago, until) in LINKS {
        let Some(n) = plots().iter().position(|plot| plot.tag == tag) else {
            continue;
        };
        let body = Body::LinkGiven {
            palm: PalmId(id(n as u64).0),
            link: OwnerLink {
                secret_hash: hash(secret),
                until: until.map(|days| today.plus(days)),
                owner: owner.to_owned(),
            },
        };
        book.write(today.plus(-ago), 15, KEEPER, body, None);
    }
}
