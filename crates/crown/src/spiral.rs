//! Counting fronds on spirals: mark a frond, find it later by spiral and rank.
//!
//! Fronds stand on eight parallel spirals. On spiral `s` (1..=8, numbered so that frond s is its youngest) the k-th
//! frond from the top is frond number `s + 8 (k - 1)`, counted from the youngest open frond as 1
//! [oilpalm-field-handbook]. A frond marked as number m and found later as number n has n - m newer fronds above it.

/// Spirals of the count [oilpalm-field-handbook].
pub const SPIRALS: u32 = 8;

/// Number of the `rank`-th frond (from 1, youngest) on spiral `spiral` (1..=8), or `None` outside.
pub fn frond_number(spiral: u32, rank: u32) -> Option<u32> {
    let inside = (1..=SPIRALS).contains(&spiral) && (1..=100).contains(&rank);
    inside.then(|| spiral + SPIRALS * (rank - 1))
}

/// New fronds since a frond was marked as number `marked`, found again on `spiral` at `rank`.
/// `None` if the place is outside the count or the frond would have moved up.
pub fn new_since(marked: u32, spiral: u32, rank: u32) -> Option<u32> {
    frond_number(spiral, rank)?.checked_sub(marked)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The two worked examples of the oil palm field handbook, section 6 [oilpalm-field-handbook].
    #[test]
    fn spiral_counts_match_the_field_handbook() {
        assert_eq!(frond_number(4, 3), Some(20));
        assert_eq!(new_since(1, 4, 3), Some(19));
        assert_eq!(frond_number(1, 6), Some(41));
        assert_eq!(
            (frond_number(0, 1), frond_number(9, 1), frond_number(1, 0)),
            (None, None, None)
        );
        assert_eq!(new_since(30, 4, 3), None);
    }
}
