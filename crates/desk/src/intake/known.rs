//! The palms that inspections may speak of.

use model::{Day, Palm};
use std::collections::HashMap;

/// What must be known of a palm to check its inspections.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct KnownPalm {
    /// Its place in the order the palms were added.
    pub index: u32,
    /// Number of stems.
    pub stems: u16,
    /// Day it was planted.
    pub planted_on: Option<Day>,
    /// Day it was moved.
    pub moved_on: Option<Day>,
}

/// Palms by tag.
#[derive(Clone, Debug, Default)]
pub struct Known {
    by_tag: HashMap<String, KnownPalm>,
}

impl Known {
    /// Palms in the order of the iterator.
    pub fn of<'a>(palms: impl IntoIterator<Item = &'a Palm>) -> Known {
        let mut known = Known::default();
        for palm in palms {
            known.add(palm);
        }
        known
    }

    /// One more palm.
    pub fn add(&mut self, palm: &Palm) {
        let index = self.by_tag.len() as u32;
        let (stems, planted_on, moved_on) = (palm.stems, palm.planted_on, palm.moved_on);
        self.by_tag.insert(
            palm.tag.clone(),
            KnownPalm {
                index,
                stems,
                planted_on,
                moved_on,
            },
        );
    }

    /// The palm with this tag.
    pub fn get(&self, tag: &str) -> Option<KnownPalm> {
        self.by_tag.get(tag).copied()
    }

    /// The tag most like this one, if one is close.
    pub fn nearest(&self, tag: &str) -> Option<&str> {
        let near =
            |t: &&String| strsim::damerau_levenshtein(&t.to_lowercase(), &tag.to_lowercase());
        let close = self
            .by_tag
            .keys()
            .map(|t| (near(&t), t))
            .filter(|(d, _)| *d <= 2);
        close.min().map(|(_, t)| t.as_str())
    }
}
