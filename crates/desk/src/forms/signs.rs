//! The signs on the inspection form: seen, not there, or not looked for.
//!
//! Fields: `sign-{key}`, one for each sign: `seen`, `absent`, or empty for not looked for. A sign whose field was not
//! sent stays as the corrected look has it. Keys that no table knows are kept when they come from that look.

use super::Typed;
use super::field::{Fields, text_arg};
use care::SIGNS;
use model::{Finding, Inspection, Knowledge, Severity};
use std::collections::BTreeMap;

/// What the name of a sign's field begins with.
pub const SIGN_FIELD: &str = "sign-";

/// The value of a field whose sign was seen.
pub const SEEN: &str = "seen";

/// The value of a field whose sign was looked for and is not there.
pub const ABSENT: &str = "absent";

/// Reads the signs: those seen and those not there, in the order of the look being corrected, new ones behind.
pub(super) fn noted(
    fields: &mut Fields,
    typed: &Typed,
    before: Option<&Inspection>,
) -> (Vec<String>, Vec<String>) {
    let sent: BTreeMap<&str, &str> = typed.below(SIGN_FIELD).collect();
    for (key, value) in &sent {
        let known = known(key) || before.is_some_and(|look| has(look, key));
        if !(known || value.is_empty()) || !["", SEEN, ABSENT].contains(value) {
            let finding = Finding::new("form-sign-unknown", Severity::Refuse);
            fields.add("signs", finding.with("found", text_arg(key)));
        }
    }
    let list = |value: &str, old: &[String]| {
        let kept = old.iter().map(String::as_str);
        let kept = kept.filter(|key| sent.get(key).is_none_or(|now| *now == value));
        let new = sent
            .iter()
            .filter(|(key, now)| **now == value && !old.iter().any(|o| o.as_str() == **key));
        kept.chain(new.map(|(key, _)| *key))
            .map(str::to_owned)
            .collect()
    };
    let (seen, absent): (&[String], &[String]) =
        before.map_or((&[], &[]), |look| (&look.signs, &look.absent));
    (list(SEEN, seen), list(ABSENT, absent))
}

/// The fields of a look's signs. A sign noted both ways is shown as seen.
pub(super) fn typed_signs(look: &Inspection, typed: &mut Typed) {
    for (keys, value) in [(&look.absent, ABSENT), (&look.signs, SEEN)] {
        for key in keys {
            typed.set(&format!("{SIGN_FIELD}{key}"), value);
        }
    }
}

/// Whether anything was said of a sign.
pub(super) fn any(typed: &Typed) -> bool {
    typed.below(SIGN_FIELD).any(|(_, value)| !value.is_empty())
}

/// Whether a table, or a rule of the cut plan, knows a sign.
pub fn known(key: &str) -> bool {
    Knowledge::embedded().sign(key).is_some() || SIGNS.contains(&key)
}

fn has(look: &Inspection, key: &str) -> bool {
    look.signs.iter().chain(&look.absent).any(|k| k == key)
}

#[cfg(test)]
mod tests {
    use super::super::{About, codes, inspection, typed_inspection};
    use super::*;
    use model::PalmRecord;
    use testkit::{Book, InspectionWith, PalmWith, day, palm};

    fn record() -> PalmRecord {
        let mut book = Book::new(3);
        let id = book.register(palm("Sabal palmetto").tag("S-1"));
        (**book.state().palm(id).unwrap()).clone()
    }

    fn about<'a>(record: &'a PalmRecord, correcting: Option<&'a Inspection>) -> About<'a> {
        About {
            record,
            today: day("2026-06-15"),
            correcting,
        }
    }

    fn form(signs: &[(&str, &str)]) -> Typed {
        let date = [("date", "2026-06-10")];
        let named = signs
            .iter()
            .map(|(key, value)| (format!("{SIGN_FIELD}{key}"), *value));
        Typed::of(
            date.map(|(n, v)| (n.to_owned(), v))
                .into_iter()
                .chain(named),
        )
    }

    #[test]
    fn seen_not_there_and_not_looked_for_are_three_things() {
        let record = record();
        let typed = form(&[("nest", SEEN), ("bats", ABSENT), ("bees", "")]);
        let look = inspection(&typed, about(&record, None)).unwrap();
        assert_eq!(look.signs, ["nest"]);
        assert_eq!(look.absent, ["bats"]);
        let again = typed_inspection(&look);
        assert_eq!(again.get("sign-nest"), SEEN);
        assert_eq!(again.get("sign-bats"), ABSENT);
        assert_eq!(again.get("sign-bees"), "");
    }

    #[test]
    fn a_sign_alone_is_something_noted_and_none_is_not() {
        let record = record();
        assert!(inspection(&form(&[("bats", ABSENT)]), about(&record, None)).is_ok());
        let nothing = inspection(&form(&[("bats", "")]), about(&record, None));
        assert_eq!(codes(nothing), [("", "form-nothing-noted")]);
    }

    #[test]
    fn keys_nobody_knows_are_kept_when_they_were_there() {
        let record = record();
        let mut before = testkit::inspection("2026-06-10").counts(20, 0, 0);
        before.signs = vec!["blue-dots".into(), "nest".into()];
        let corrects = about(&record, Some(&before));
        let look = inspection(&form(&[]), corrects).unwrap();
        assert_eq!(
            look.signs,
            ["blue-dots", "nest"],
            "fields that were not sent"
        );
        let look = inspection(&form(&[("blue-dots", SEEN), ("nest", "")]), corrects).unwrap();
        assert_eq!(look.signs, ["blue-dots"]);
        let look = inspection(&form(&[("blue-dots", ABSENT)]), corrects).unwrap();
        assert_eq!(
            (look.signs, look.absent),
            (vec!["nest".to_owned()], vec!["blue-dots".to_owned()])
        );
        let foreign = inspection(&form(&[("blue-dots", SEEN)]), about(&record, None));
        assert_eq!(codes(foreign), [("signs", "form-sign-unknown")]);
        let nonsense = inspection(&form(&[("nest", "maybe")]), about(&record, None));
        assert_eq!(codes(nonsense)[0], ("signs", "form-sign-unknown"));
    }
}
