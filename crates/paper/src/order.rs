//! The order in which people count: S-2 before S-10.

/// A key to sort tags by: text and numbers in turn, then the tag itself. A number too long for a machine word is text.
pub(crate) fn counted(tag: &str) -> (Vec<(u64, String)>, String) {
    let mut pieces: Vec<(u64, String)> = Vec::new();
    let mut rest = tag;
    while let Some(first) = rest.chars().next() {
        let digit = first.is_ascii_digit();
        let end = rest
            .find(|c: char| c.is_ascii_digit() != digit)
            .unwrap_or(rest.len());
        let (piece, after) = rest.split_at(end);
        pieces.push(match piece.parse() {
            Ok(number) if digit => (number, String::new()),
            _ => (0, piece.to_owned()),
        });
        rest = after;
    }
    (pieces, tag.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_count() {
        let mut tags = ["P-10", "P-9b", "Q-1", "P-9", "P", "99999999999999999999999"];
        tags.sort_by_key(|tag| counted(tag));
        assert_eq!(
            tags,
            ["99999999999999999999999", "P", "P-9", "P-9b", "P-10", "Q-1"]
        );
    }
}
