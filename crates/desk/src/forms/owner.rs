//! The forms of private links: give one, revoke one.
//!
//! Fields of giving: `link_owner`, `link_until`; of revoking: `link` (the entry that gave it).

use super::field::Fields;
use super::save::{entry_id, record, standing, whole};
use super::thread::thread;
use super::{Stop, Trouble, Typed};
use crate::office::Office;
use crate::owner;
use model::{Arg, Body, Day, Finding, OwnerLink, PalmId, Severity};

/// A link that was just given. Its secret exists here and in the owner's hands, nowhere else.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Given {
    /// Now: the secret, to be shown this once, and for whom.
    Now {
        /// The secret.
        secret: String,
        /// For whom.
        owner: String,
    },
    /// By an earlier sending of the same form: nobody knows the secret any more.
    Before,
}

/// Checks the form; `secret_hash` is what the ledger is to keep.
pub fn owner_link(
    typed: &Typed,
    secret_hash: String,
    today: Day,
) -> Result<OwnerLink, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let owner = fields.text("link_owner");
    if owner.is_empty() {
        fields.refuse("link_owner", "form-owner-nobody");
    }
    let until = fields.day("link_until");
    if until.is_some_and(|until| until < today) {
        let finding = Finding::new("form-owner-over", Severity::Refuse);
        fields.add("link_until", finding.with("today", Arg::Date(today)));
    }
    fields.or(OwnerLink {
        secret_hash,
        until,
        owner,
    })
}

/// Gives a link to a palm's sheet. A form sent twice gives one link, and its secret is told once.
pub fn save_link(office: &Office, palm: PalmId, typed: &Typed) -> Result<Given, Stop> {
    standing(&office.state(), palm)?;
    let id = entry_id(typed.get("id"));
    let history = office.history(palm)?;
    if id.is_some_and(|id| !thread(&history, id).is_empty()) {
        return Ok(Given::Before);
    }
    let secret = owner::fresh_secret();
    let link = owner_link(typed, owner::hash(&secret), office.today())?;
    let owner = link.owner.clone();
    record(office, Body::LinkGiven { palm, link }, id, None)?;
    Ok(Given::Now { secret, owner })
}

/// Revokes the link named in `link`; one that is revoked already stays revoked. `why` is written into the ledger.
pub fn save_revoked(office: &Office, palm: PalmId, typed: &Typed, why: String) -> Result<(), Stop> {
    let state = office.state();
    let own = standing(&state, palm)?;
    let Some(entry) = entry_id(typed.get("link")) else {
        return Err(whole("form-corrects-nothing"));
    };
    let Some(link) = own.links.iter().find(|link| link.entry == entry) else {
        return Ok(());
    };
    let id = entry_id(typed.get("id"));
    record(office, Body::Withdrawn { why }, id, Some(link.entry))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    fn check(pairs: &[(&str, &str)]) -> Result<OwnerLink, Vec<Trouble>> {
        owner_link(
            &Typed::of(pairs.to_vec()),
            "ab".to_owned(),
            day("2026-05-01"),
        )
    }

    #[test]
    fn a_link_is_for_somebody_and_may_end() {
        let link = check(&[("link_owner", " Ana "), ("link_until", "2026-05-01")]).unwrap();
        assert_eq!(
            (link.owner.as_str(), link.until),
            ("Ana", Some(day("2026-05-01")))
        );
        assert_eq!(check(&[("link_owner", "Ana")]).unwrap().until, None);
        assert_eq!(codes(check(&[])), [("link_owner", "form-owner-nobody")]);
        assert_eq!(
            codes(check(&[("link_owner", "A"), ("link_until", "2026-04-30")])),
            [("link_until", "form-owner-over")]
        );
        assert_eq!(
            codes(check(&[("link_owner", "A"), ("link_until", "soon")])),
            [("link_until", "form-date-not-read")]
        );
    }
}
