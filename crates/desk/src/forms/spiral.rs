//! The spiral counter of the inspection form: a marked frond found again by spiral and place.
//!
//! Fields: `marked` (its number when it was marked; empty is 1, the youngest open frond), `spiral`, `place`.

use super::field::Fields;
use super::{Trouble, Typed};
use model::{Arg, Finding, Severity};

/// Places along a spiral that the form offers.
pub const PLACES: u32 = 25;

/// New fronds since the marked one, from the typed place.
pub fn new_by_spiral(typed: &Typed) -> Result<u32, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let marked = fields
        .count("marked", crown::spiral::SPIRALS * PLACES)
        .unwrap_or(1);
    let spiral = fields.count("spiral", crown::spiral::SPIRALS);
    let place = fields.count("place", PLACES);
    for (name, value) in [("spiral", spiral), ("place", place)] {
        if matches!(value, Some(0)) || fields.some(name).is_none() {
            fields.refuse(name, "form-spiral-missing");
        }
    }
    let mut new = 0;
    if let (Some(spiral @ 1..), Some(place @ 1..)) = (spiral, place) {
        match crown::spiral::new_since(marked, spiral, place) {
            Some(since) => new = since,
            None => {
                let finding = Finding::new("form-spiral-moved-up", Severity::Refuse);
                fields.add(
                    "place",
                    finding.with("marked", Arg::Count(i64::from(marked))),
                );
            }
        }
    }
    fields.or(new)
}

/// Numbers of the fronds: a row a spiral, a column a place, for a page that must count without the network.
pub fn spiral_numbers() -> Vec<Vec<u32>> {
    let row = |spiral| {
        (1..=PLACES)
            .filter_map(|place| crown::spiral::frond_number(spiral, place))
            .collect()
    };
    (1..=crown::spiral::SPIRALS).map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;

    fn check(marked: &str, spiral: &str, place: &str) -> Result<u32, Vec<Trouble>> {
        new_by_spiral(&Typed::of([
            ("marked", marked),
            ("spiral", spiral),
            ("place", place),
        ]))
    }

    /// Worked examples of the oil palm field handbook [oilpalm-field-handbook]: the third frond of spiral 4 is number
    /// 20, 19 new since frond 1; the sixth of spiral 1 is number 41.
    #[test]
    fn a_marked_frond_is_found_by_spiral_and_place() {
        assert_eq!(check("", "4", "3"), Ok(19));
        assert_eq!(check("1", "1", "6"), Ok(40));
        assert_eq!(spiral_numbers()[3][2], 20);
        assert_eq!(
            codes(check("30", "4", "3")),
            [("place", "form-spiral-moved-up")]
        );
        assert_eq!(
            codes(check("", "", "0")),
            [
                ("spiral", "form-spiral-missing"),
                ("place", "form-spiral-missing")
            ]
        );
        assert_eq!(
            codes(check("", "9", "1")),
            [("spiral", "form-count-too-large")]
        );
    }
}
