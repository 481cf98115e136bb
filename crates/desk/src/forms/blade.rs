//! The blade forms: register or change one, lend it, take it back, retire it.
//!
//! Fields of a blade: `tag`, `kind`, `kit`, `holder`, `notes`; of lending: `to`; of retiring: `why`.

use super::field::{Fields, count_arg, text_arg};
use super::{Trouble, Typed};
use model::{Blade, BladeKind, Finding, Severity};

/// Longest tag, characters; as for palms.
const LONGEST_TAG: u32 = 64;

/// What is on the rack already.
pub struct Rack<'a> {
    /// The blade that the form changes, as it stands.
    pub changing: Option<&'a Blade>,
    /// Whether another blade in use carries this tag.
    pub taken: &'a dyn Fn(&str) -> bool,
}

/// Checks the form of a blade.
pub fn blade(typed: &Typed, rack: &Rack) -> Result<Blade, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let tag = fields.text("tag");
    if tag.is_empty() {
        fields.refuse("tag", "form-blade-tag-missing");
    } else if tag.chars().count() > LONGEST_TAG as usize {
        fields.add(
            "tag",
            Finding::new("form-blade-tag-long", Severity::Refuse)
                .with("most", count_arg(LONGEST_TAG)),
        );
    } else if (rack.taken)(&tag) {
        fields.add(
            "tag",
            Finding::new("form-blade-tag-taken", Severity::Refuse).with("tag", text_arg(&tag)),
        );
    }
    let kind = kind_of(&fields.text("kind"));
    if kind.is_none() {
        fields.refuse("kind", "form-blade-kind-unknown");
    }
    let blade = Blade {
        tag,
        kind: kind.unwrap_or_default(),
        kit: fields.text("kit"),
        holder: fields.text("holder"),
        notes: fields.text("notes"),
        extra: rack.changing.map(|b| b.extra.clone()).unwrap_or_default(),
    };
    fields.or(blade)
}

/// What the form shows of a blade.
pub fn typed_blade(blade: &Blade) -> Typed {
    Typed::of([
        ("tag", blade.tag.as_str()),
        ("kind", kind_word(blade.kind)),
        ("kit", &blade.kit),
        ("holder", &blade.holder),
        ("notes", &blade.notes),
    ])
}

/// The file word of a kind.
pub fn kind_word(kind: BladeKind) -> &'static str {
    let mut all = BladeKind::ALL.iter();
    all.find(|(k, _)| *k == kind).map_or("unknown", |(_, w)| w)
}

/// A kind by its file word; nothing typed is "not said".
fn kind_of(word: &str) -> Option<BladeKind> {
    if word.is_empty() {
        return Some(BladeKind::Unknown);
    }
    let mut all = BladeKind::ALL.iter();
    all.find(|(_, w)| *w == word).map(|(k, _)| *k)
}

/// Checks to whom a blade is lent. A blade that is not clean goes out only after a word: `clean` says how it stands.
pub(super) fn lent_to(typed: &Typed, clean: bool) -> Result<String, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let to = fields.text("to");
    if to.is_empty() {
        fields.refuse("to", "form-blade-to-missing");
    }
    if !clean {
        fields.ask(
            "to",
            Finding::new("form-blade-lent-not-clean", Severity::Caution).by_practice(),
        );
    }
    fields.or(to)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;

    fn check(pairs: &[(&str, &str)]) -> Result<Blade, Vec<Trouble>> {
        let rack = Rack {
            changing: None,
            taken: &|tag| tag == "H-1",
        };
        blade(&Typed::of(pairs.to_vec()), &rack)
    }

    #[test]
    fn a_blade_has_a_tag_of_its_own_and_a_kind_of_the_trade() {
        let known = check(&[("tag", " H-2 "), ("kind", "pole-saw"), ("kit", "A")]).unwrap();
        assert_eq!(
            (known.tag.as_str(), known.kind),
            ("H-2", BladeKind::PoleSaw)
        );
        assert_eq!(check(&[("tag", "H-2")]).unwrap().kind, BladeKind::Unknown);
        assert_eq!(codes(check(&[])), [("tag", "form-blade-tag-missing")]);
        assert_eq!(
            codes(check(&[("tag", "H-1")])),
            [("tag", "form-blade-tag-taken")]
        );
        let long = "x".repeat(65);
        assert_eq!(
            codes(check(&[("tag", &long)])),
            [("tag", "form-blade-tag-long")]
        );
        let odd = check(&[("tag", "H-2"), ("kind", "laser")]);
        assert_eq!(codes(odd), [("kind", "form-blade-kind-unknown")]);
    }

    #[test]
    fn what_the_form_shows_is_read_back() {
        for (kind, _) in BladeKind::ALL {
            let before = Blade {
                tag: "P-4".into(),
                kind,
                kit: "North".into(),
                holder: "Ines".into(),
                notes: "short".into(),
                extra: [("colour".to_owned(), "red".to_owned())].into(),
            };
            let rack = Rack {
                changing: Some(&before),
                taken: &|_| false,
            };
            assert_eq!(blade(&typed_blade(&before), &rack), Ok(before.clone()));
        }
    }

    #[test]
    fn a_blade_that_is_not_clean_is_lent_only_after_a_word() {
        let to = |pairs: &[(&str, &str)], clean| lent_to(&Typed::of(pairs.to_vec()), clean);
        assert_eq!(to(&[("to", "Crew B")], true), Ok("Crew B".to_owned()));
        assert_eq!(codes(to(&[], true)), [("to", "form-blade-to-missing")]);
        assert_eq!(
            codes(to(&[("to", "Crew B")], false)),
            [("to", "form-blade-lent-not-clean")]
        );
        let said = [
            ("to", "Crew B"),
            ("confirm-form-blade-lent-not-clean", "yes"),
        ];
        assert!(to(&said, false).is_ok());
    }
}
