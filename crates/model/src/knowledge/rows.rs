//! The rows of the tables other than species.

use crate::climate::Climate;
use crate::sourced::{Basis, SourceKey, Sourced};
use crate::species::{LeafForm, Range};
use crate::units::Position;

/// Where something was read, or that it was recalled.
#[derive(Clone, PartialEq, Debug)]
pub struct Source {
    /// Its key in every table.
    pub key: String,
    /// Other keys of the same work.
    pub also: Vec<String>,
    /// Title, with what of it was seen.
    pub title: String,
    /// Author; empty if not known.
    pub author: String,
    /// Publisher or journal; empty if not known.
    pub publisher: String,
    /// Year as the source gives it; empty if not known.
    pub year: String,
    /// Number, volume, page or digital identifier; empty if not known.
    pub identifier: String,
    /// Whether it was read or only recalled.
    pub how_seen: HowSeen,
}

/// Whether a source was read or only recalled.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum HowSeen {
    /// Read, at least the part named.
    Read,
    /// Recalled, not looked up.
    Memory,
}

/// A second botanical name of a species.
#[derive(Clone, PartialEq, Debug)]
pub struct Synonym {
    /// The name as it may be written.
    pub name: String,
    /// The species it stands for.
    pub accepted: String,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// What is recalled of a whole genus, for species of which nothing better is known.
#[derive(Clone, PartialEq, Debug)]
pub struct Genus {
    /// Its name.
    pub name: String,
    /// Blade shape.
    pub leaf_form: Option<Sourced<LeafForm>>,
    /// Whether its species have a crownshaft.
    pub crownshaft: Option<Sourced<bool>>,
    /// Remark, e.g. that undivided leaves occur.
    pub note: String,
}

/// A rule of pruning as its sources have it.
#[derive(Clone, PartialEq, Debug)]
pub struct RuleRow {
    /// Stable key.
    pub key: String,
    /// The rule in our words.
    pub text: String,
    /// The same in Spanish.
    pub text_es: String,
    /// Its figure as text: a number, a range `30..90`, or words; empty if it has none, `unknown` if nobody gives it.
    pub value: String,
    /// Unit of the figure.
    pub unit: String,
    /// Palms or places it was written for.
    pub applies_to: String,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// A caution and its figure.
#[derive(Clone, PartialEq, Debug)]
pub struct SafetyRow {
    /// Stable key.
    pub key: String,
    /// The caution in our words.
    pub text: String,
    /// The same in Spanish.
    pub text_es: String,
    /// Its figure as text: a number, a range, or words; empty if it has none, `unknown` if nobody gives it.
    pub value: String,
    /// Unit of the figure.
    pub unit: String,
    /// When it holds, and what about it is from memory.
    pub condition: String,
    /// The same in Spanish.
    pub condition_es: String,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

impl RuleRow {
    /// The figure, if it is one plain number.
    pub fn number(&self) -> Option<f64> {
        number(&self.value)
    }

    /// The figure as a range; a plain number has both ends equal.
    pub fn range(&self) -> Option<Range> {
        range(&self.value)
    }
}

impl SafetyRow {
    /// The figure, if it is one plain number.
    pub fn number(&self) -> Option<f64> {
        number(&self.value)
    }
}

/// A place with monthly means.
#[derive(Clone, PartialEq, Debug)]
pub struct Place {
    /// Its name.
    pub name: String,
    /// Where it is.
    pub position: Position,
    /// Height above the sea, m.
    pub elevation_m: Option<f64>,
    /// The means.
    pub climate: Climate,
    /// How the figures were come by.
    pub note: String,
}

/// A finite number in plain notation.
pub(super) fn number(text: &str) -> Option<f64> {
    let plain = text
        .bytes()
        .all(|b| b.is_ascii_digit() || b == b'.' || b == b'-');
    text.parse::<f64>().ok().filter(|x| plain && x.is_finite())
}

/// `12`, `11..18` or `..40`; ends in order.
pub(super) fn range(text: &str) -> Option<Range> {
    let Some((low, high)) = text.split_once("..") else {
        let both = number(text)?;
        return Some(Range::between(both, both));
    };
    let high = number(high)?;
    if low.is_empty() {
        return Some(Range::up_to(high));
    }
    let low = number(low)?;
    (low <= high).then_some(Range::between(low, high))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_ranges_are_read_strictly() {
        assert_eq!(number("-2.2"), Some(-2.2));
        for bad in ["", "1e3", "nan", "inf", "1,5", " 3", "+3", "three"] {
            assert_eq!(number(bad), None, "{bad}");
        }
        assert_eq!(range("11..18"), Some(Range::between(11.0, 18.0)));
        assert_eq!(range("..40"), Some(Range::up_to(40.0)));
        assert_eq!(range("12"), Some(Range::between(12.0, 12.0)));
        for bad in ["18..11", "11..", "..", "1..2..3", "11-18"] {
            assert_eq!(range(bad), None, "{bad}");
        }
    }
}
