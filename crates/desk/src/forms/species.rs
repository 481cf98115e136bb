//! Species names for a field that is being typed into.

use model::Knowledge;

/// Offers are short: a phone shows about this many.
const OFFERED: usize = 12;

/// Accepted names for what has been typed so far: those that begin with it, then those with a word that does
/// (epithet or English name), then, where none does, the nearest. At most twelve; none for fewer than two letters.
pub fn species_like(typed: &str) -> Vec<String> {
    let wanted = typed.trim().to_lowercase();
    if wanted.chars().count() < 2 {
        return Vec::new();
    }
    let all = &Knowledge::embedded().species;
    let begins = |text: &str| text.to_lowercase().starts_with(&wanted);
    let inside = |text: &str| {
        text.to_lowercase()
            .split([' ', '-'])
            .skip(1)
            .any(|word| word.starts_with(&wanted))
    };
    let first = all.iter().filter(|s| begins(&s.name));
    let then = all.iter().filter(|s| {
        !begins(&s.name)
            && (inside(&s.name) || s.common.iter().any(|name| begins(name) || inside(name)))
    });
    let found: Vec<String> = first
        .chain(then)
        .take(OFFERED)
        .map(|s| s.name.clone())
        .collect();
    if found.is_empty() {
        super::nearest(typed).unwrap_or_default()
    } else {
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_offered_as_they_are_typed() {
        assert!(species_like("p").is_empty());
        assert!(species_like("Phoenix c").contains(&"Phoenix canariensis".to_owned()));
        assert!(species_like("palmetto").contains(&"Sabal palmetto".to_owned()));
        assert_eq!(species_like("Sabal palmeto"), ["Sabal palmetto"]);
        assert!(species_like("phoenix").len() <= OFFERED);
    }
}
