//! Finding a species by the name a keeper wrote.

use super::rows::Synonym;
use crate::species::Species;

/// What a written name turned out to be.
#[derive(Clone, PartialEq, Debug)]
pub enum Named<'a> {
    /// The accepted botanical name of this species (an author or a cultivar behind it does not matter).
    Exact(&'a Species),
    /// Another name of this species: a botanical synonym, or an English name that belongs to it alone.
    Synonym(&'a Species),
    /// Not a known name, or an English name that several share: the accepted names nearest to it, best first, at
    /// most three.
    Near(Vec<&'a str>),
    /// Nothing like it is known.
    Unknown,
}

impl<'a> Named<'a> {
    /// The species, if the name resolved to one.
    pub fn species(&self) -> Option<&'a Species> {
        match self {
            Named::Exact(s) | Named::Synonym(s) => Some(s),
            Named::Near(_) | Named::Unknown => None,
        }
    }
}

#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
enum Kind {
    Accepted,
    Synonym,
    Common,
}

/// All names in folded form, sorted, each with its kind and the index of its species.
#[derive(Debug, Default)]
pub(super) struct Names {
    names: Vec<(String, Kind, usize)>,
}

const OFFERED: usize = 3;

impl Names {
    /// Indexes accepted names, synonyms and English names. `species` is sorted by name.
    pub fn of(species: &[Species], synonyms: &[Synonym]) -> Names {
        let mut names = Vec::with_capacity(species.len() + 400);
        for (i, s) in species.iter().enumerate() {
            names.push((fold(&s.name), Kind::Accepted, i));
            names.extend(s.common.iter().map(|c| (fold(c), Kind::Common, i)));
        }
        for synonym in synonyms {
            if let Ok(i) = species.binary_search_by(|s| s.name.cmp(&synonym.accepted)) {
                names.push((fold(&synonym.name), Kind::Synonym, i));
            }
        }
        names.sort_unstable();
        Names { names }
    }

    /// Resolves a written name. `species` is the slice the index was made of.
    pub fn find<'a>(&self, species: &'a [Species], written: &str) -> Named<'a> {
        let folded = fold(written);
        for candidate in readings(&folded) {
            if let Some(found) = self.exact(species, &candidate) {
                return found;
            }
        }
        let near = self.near(species, &folded);
        if near.is_empty() {
            Named::Unknown
        } else {
            Named::Near(near)
        }
    }

    fn exact<'a>(&self, species: &'a [Species], folded: &str) -> Option<Named<'a>> {
        let from = self
            .names
            .partition_point(|(name, _, _)| name.as_str() < folded);
        let hits: Vec<_> = self.names[from..]
            .iter()
            .take_while(|(name, _, _)| name == folded)
            .collect();
        let (_, kind, first) = hits.first()?;
        if *kind == Kind::Accepted {
            return Some(Named::Exact(&species[*first]));
        }
        if hits.iter().all(|(_, _, i)| i == first) {
            return Some(Named::Synonym(&species[*first]));
        }
        Some(Named::Near(
            hits.iter()
                .take(OFFERED)
                .map(|(_, _, i)| species[*i].name.as_str())
                .collect(),
        ))
    }

    /// Accepted names behind the names nearest to `folded`: a genus alone offers its species, an initial its
    /// epithets, anything else what is few edits away.
    fn near<'a>(&self, species: &'a [Species], folded: &str) -> Vec<&'a str> {
        let mut ranked: Vec<(usize, bool, usize)> = Vec::new();
        let allowed = (folded.chars().count() / 5).clamp(1, 4);
        let wanted = Letters::of(folded);
        for (name, _, i) in &self.names {
            let rank = if abbreviates(folded, name) {
                0
            } else if wanted.distance_at_least(&Letters::of(name)) > allowed {
                continue;
            } else {
                strsim::osa_distance(folded, name)
            };
            if rank <= allowed {
                ranked.push((rank, !species[*i].detailed, *i));
            }
        }
        ranked.sort_unstable();
        let mut offered: Vec<&str> = Vec::new();
        for (_, _, i) in ranked {
            let name = species[i].name.as_str();
            if offered.len() < OFFERED && !offered.contains(&name) {
                offered.push(name);
            }
        }
        offered
    }
}

/// Lower case, single spaces, letters and digits only; hybrid signs stand alone as `x`.
fn fold(written: &str) -> String {
    let mut out = String::with_capacity(written.len());
    for c in written.chars() {
        let c = if c == '×' { 'x' } else { c };
        if c.is_ascii_alphanumeric() {
            out.push(c.to_ascii_lowercase());
        } else if c.is_alphanumeric() {
            out.extend(c.to_lowercase());
        } else if matches!(c, '\'' | '’' | '`') {
            // An apostrophe inside a word joins it; a cultivar's quotes vanish.
        } else if !out.ends_with(' ') && !out.is_empty() {
            out.push(' ');
        }
    }
    out.truncate(out.trim_end().len());
    out
}

/// The ways a folded name may be meant, most literal first: as it stands; without author or cultivar behind genus and
/// epithet; an English name without its plural; with the word palm.
fn readings(folded: &str) -> Vec<String> {
    let mut out = vec![folded.to_owned()];
    let words: Vec<&str> = folded.split(' ').collect();
    let hybrid = words.contains(&"x");
    if words.len() > 2 && !hybrid && !words.contains(&"palm") && !words.contains(&"palms") {
        out.push(words[..2].join(" "));
    }
    if let Some(singular) = folded.strip_suffix('s') {
        out.push(singular.to_owned());
    }
    out.push(format!("{folded} palm"));
    out
}

/// Whether `short` is a genus alone (`phoenix`, `phoenix sp`) or an initial with an epithet (`w robusta`) of `name`.
fn abbreviates(short: &str, name: &str) -> bool {
    let Some((genus, epithet)) = name.split_once(' ') else {
        return false;
    };
    match short.split_once(' ') {
        None => short == genus,
        Some((first, "sp" | "spp" | "species")) => first == genus,
        Some((first, rest)) => {
            rest == epithet && first.chars().count() == 1 && genus.starts_with(first)
        }
    }
}

/// How often each letter occurs: a quick floor under the edit distance of two names.
struct Letters([i16; 27]);

impl Letters {
    fn of(name: &str) -> Letters {
        let mut counts = [0; 27];
        for b in name.bytes() {
            counts[if b.is_ascii_lowercase() {
                usize::from(b - b'a')
            } else {
                26
            }] += 1;
        }
        Letters(counts)
    }

    /// One edit changes at most two counts by one, so half the difference (rounded up) is a lower bound.
    fn distance_at_least(&self, other: &Letters) -> usize {
        let sum: u16 = self
            .0
            .iter()
            .zip(&other.0)
            .map(|(a, b)| a.abs_diff(*b))
            .sum();
        usize::from(sum.div_ceil(2))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_folded() {
        assert_eq!(
            fold("  Phoenix\u{a0}DACTYLIFERA  'Medjool' "),
            "phoenix dactylifera medjool"
        );
        assert_eq!(fold("Butia × nabonnandii"), "butia x nabonnandii");
        assert_eq!(fold("cabbage-tree palm"), "cabbage tree palm");
    }

    #[test]
    fn the_quick_floor_never_exceeds_the_distance() {
        for (a, b) in [
            ("robusta", "robsuta"),
            ("regia", "reggia"),
            ("palmetto", "minor"),
            ("abc", ""),
            ("ab", "cd"),
        ] {
            assert!(
                Letters::of(a).distance_at_least(&Letters::of(b)) <= strsim::osa_distance(a, b),
                "{a} {b}"
            );
        }
    }
}
