//! The small forms on a palm: set a hold, lift it, take the palm off the register.
//!
//! Fields of setting: `reason`, `until`, `note`; of lifting: `note`; of removal: `why`.

use super::field::Fields;
use super::{Trouble, Typed};
use model::{Arg, Body, Day, EntryId, Finding, PalmId, Severity};

/// Reasons a keeper may choose from, by stable code.
pub const HOLD_REASONS: [&str; 12] = [
    "keeper",
    "nest",
    "bees",
    "wilt-suspect",
    "phytoplasma-suspect",
    "bud-rot-suspect",
    "trunk-rot-suspect",
    "conk",
    "weevil-suspect",
    "spear",
    "wires",
    "lab-confirmed",
];

/// Checks the form that sets a hold.
pub fn hold(typed: &Typed, palm: PalmId, today: Day) -> Result<Body, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let reason = fields.text("reason");
    if !HOLD_REASONS.contains(&reason.as_str()) {
        fields.refuse("reason", "form-hold-reason-missing");
    }
    let until = fields.day("until");
    if until.is_some_and(|until| until < today) {
        fields.add(
            "until",
            Finding::new("form-hold-already-over", Severity::Refuse)
                .with("today", Arg::Date(today)),
        );
    }
    let note = fields.text("note");
    if reason == "keeper" && note.is_empty() {
        fields.refuse("note", "form-hold-note-missing");
    }
    fields.or(Body::HoldSet {
        palm,
        reason,
        until,
        note,
    })
}

/// Checks the form that lifts a hold: it says why.
pub fn lift(typed: &Typed, hold: EntryId) -> Result<Body, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let note = fields.text("note");
    if note.is_empty() {
        fields.refuse("note", "form-lift-note-missing");
    }
    fields.or(Body::HoldLifted { hold, note })
}

/// Checks the form that takes a palm off the register: it says why.
pub fn remove(typed: &Typed, palm: PalmId) -> Result<Body, Vec<Trouble>> {
    Ok(Body::PalmRemoved {
        palm,
        why: why(typed)?,
    })
}

/// The reason without which nothing is taken off or back.
pub(super) fn why(typed: &Typed) -> Result<String, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let why = fields.text("why");
    if why.is_empty() {
        fields.refuse("why", "form-why-missing");
    }
    fields.or(why)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;
    use uuid::Uuid;

    const PALM: PalmId = PalmId(Uuid::nil());

    fn set(pairs: &[(&str, &str)]) -> Result<Body, Vec<Trouble>> {
        hold(
            &Typed::of(pairs.to_vec()),
            PALM,
            Day::parse("2026-05-01").unwrap(),
        )
    }

    #[test]
    fn a_hold_has_a_reason_and_may_have_an_end() {
        let body = set(&[("reason", "nest"), ("until", "2026-08-01"), ("note", "")]);
        let until = Day::parse("2026-08-01");
        assert_eq!(
            body,
            Ok(Body::HoldSet {
                palm: PALM,
                reason: "nest".into(),
                until,
                note: String::new()
            })
        );
        assert_eq!(codes(set(&[])), [("reason", "form-hold-reason-missing")]);
        assert_eq!(
            codes(set(&[("reason", "bored")])),
            [("reason", "form-hold-reason-missing")]
        );
        assert_eq!(
            codes(set(&[("reason", "nest"), ("until", "2026-04-30")])),
            [("until", "form-hold-already-over")]
        );
        assert_eq!(
            codes(set(&[("reason", "keeper")])),
            [("note", "form-hold-note-missing")]
        );
    }

    #[test]
    fn lifting_and_removing_say_why() {
        let hold = EntryId(Uuid::nil());
        assert_eq!(
            codes(lift(&Typed::default(), hold)),
            [("note", "form-lift-note-missing")]
        );
        assert_eq!(
            codes(remove(&Typed::default(), PALM)),
            [("why", "form-why-missing")]
        );
        let typed = Typed::of([("note", "flown"), ("why", "felled")]);
        assert_eq!(
            lift(&typed, hold),
            Ok(Body::HoldLifted {
                hold,
                note: "flown".into()
            })
        );
        assert_eq!(
            remove(&typed, PALM),
            Ok(Body::PalmRemoved {
                palm: PALM,
                why: "felled".into()
            })
        );
    }
}
