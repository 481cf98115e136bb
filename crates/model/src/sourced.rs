//! Values that know where they come from.

use core::fmt;
use std::borrow::Cow;

/// How a value is known. Shown wherever the value is shown.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Basis {
    /// Read in the named source.
    Published,
    /// Recalled, not looked up.
    Memory,
    /// No source gives it; chosen by us, adjustable.
    Assumed,
    /// Common practice of the trade, no source.
    Practice,
    /// Told by the keeper for this palm or species; overrides everything else.
    Keeper,
}

/// Key of a row of `knowledge/sources.csv`.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct SourceKey(pub Cow<'static, str>);

impl SourceKey {
    /// A key from its text.
    pub fn new(key: &str) -> SourceKey {
        SourceKey(Cow::Owned(key.to_owned()))
    }

    /// A key written in the code itself; costs nothing.
    pub const fn fixed(key: &'static str) -> SourceKey {
        SourceKey(Cow::Borrowed(key))
    }
}

impl fmt::Display for SourceKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// A value with its basis and its sources. A value nobody knows is an absent `Sourced`, never a sentinel.
#[derive(Clone, PartialEq, Debug)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// How it is known.
    pub basis: Basis,
    /// Rows of the source list, in the order the knowledge row names them.
    pub sources: Vec<SourceKey>,
}

impl<T> Sourced<T> {
    /// An assumed value: no source.
    pub fn assumed(value: T) -> Sourced<T> {
        Sourced {
            value,
            basis: Basis::Assumed,
            sources: Vec::new(),
        }
    }

    /// The keeper's own value.
    pub fn keeper(value: T) -> Sourced<T> {
        Sourced {
            value,
            basis: Basis::Keeper,
            sources: Vec::new(),
        }
    }

    /// The same knowledge about a derived value.
    pub fn map<U>(self, f: impl FnOnce(T) -> U) -> Sourced<U> {
        Sourced {
            value: f(self.value),
            basis: self.basis,
            sources: self.sources,
        }
    }
}
