//! Which blades and palms of the register get a label, in the order in which people count.

use super::Label;
use crate::{Error, Leaf, order};
use model::State;
use std::collections::BTreeSet;

/// What to print; what is empty does not choose.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Choice {
    /// Blades of this kit; palms of this site.
    pub group: String,
    /// These tags only.
    pub tags: Vec<String>,
}

impl Choice {
    fn takes(&self, tag: &str, group: &str) -> bool {
        (self.group.is_empty() || self.group == group)
            && (self.tags.is_empty() || self.tags.iter().any(|t| t == tag))
    }

    fn known(&self, knows: impl Fn(&str) -> bool) -> Result<(), Error> {
        match self.tags.iter().find(|tag| !knows(tag)) {
            Some(tag) => Err(Error::NoSuch(tag.clone())),
            None => Ok(()),
        }
    }
}

/// Labels of blades in service. A tag that none of them carries is refused.
pub fn blade_labels(leaf: &Leaf, state: &State, choice: &Choice) -> Result<Vec<Label>, Error> {
    choice.known(|tag| state.blade_by_tag(tag).is_some())?;
    let blades = state.serving().map(|record| &record.blade);
    let chosen = blades.filter(|blade| choice.takes(&blade.tag, &blade.kit));
    Ok(counted(
        chosen.map(|blade| Label::blade(leaf, blade)).collect(),
    ))
}

/// Labels of standing palms. A tag that none of them carries is refused.
pub fn palm_labels(state: &State, choice: &Choice) -> Result<Vec<Label>, Error> {
    choice.known(|tag| state.by_tag(tag).is_some())?;
    let palms = state.standing().map(|record| &record.palm);
    let chosen = palms.filter(|palm| choice.takes(&palm.tag, &palm.site));
    Ok(counted(chosen.map(Label::palm).collect()))
}

/// What there is to choose from.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Groups {
    /// Blades in service.
    pub blades: usize,
    /// Their kits.
    pub kits: Vec<String>,
    /// Standing palms.
    pub palms: usize,
    /// Their sites.
    pub sites: Vec<String>,
}

/// What there is to choose from.
pub fn groups(state: &State) -> Groups {
    let named = |names: BTreeSet<&str>| -> Vec<String> {
        let named = names.into_iter().filter(|name| !name.is_empty());
        named.map(str::to_owned).collect()
    };
    Groups {
        blades: state.serving().count(),
        kits: named(state.serving().map(|r| r.blade.kit.as_str()).collect()),
        palms: state.standing().count(),
        sites: named(state.standing().map(|r| r.palm.site.as_str()).collect()),
    }
}

/// S-2 before S-10.
fn counted(mut labels: Vec<Label>) -> Vec<Label> {
    labels.sort_by_cached_key(|label| order::counted(&label.tag));
    labels
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Size;
    use crate::testing::leaf;
    use desk::words::Lang;
    use testkit::{Book, PalmWith, palm};

    #[test]
    fn palms_come_in_the_order_in_which_people_count() {
        let mut book = Book::new(1);
        for (tag, site) in [
            ("P-10", "North"),
            ("P-9", "North"),
            ("Q-1", "South"),
            ("P-9b", "North"),
        ] {
            book.register(palm("Sabal palmetto").tag(tag).site(site));
        }
        let state = State::fold(book.entries().to_vec());
        let tags = |choice: &Choice| -> Vec<String> {
            let labels = palm_labels(&state, choice).unwrap();
            labels.into_iter().map(|l| l.tag).collect()
        };
        assert_eq!(tags(&Choice::default()), ["P-9", "P-9b", "P-10", "Q-1"]);
        let south = Choice {
            group: "South".into(),
            ..Choice::default()
        };
        assert_eq!(tags(&south), ["Q-1"]);
        let one = Choice {
            tags: vec!["P-10".into()],
            ..Choice::default()
        };
        assert_eq!(tags(&one), ["P-10"]);
    }

    #[test]
    fn a_tag_that_nobody_carries_is_refused() {
        let none = Choice {
            tags: vec!["X".into()],
            ..Choice::default()
        };
        let refused = Err(Error::NoSuch("X".to_owned()));
        let leaf = leaf(Lang::En, Size::A4);
        assert_eq!(palm_labels(&State::default(), &none), refused);
        assert_eq!(blade_labels(&leaf, &State::default(), &none), refused);
    }
}
