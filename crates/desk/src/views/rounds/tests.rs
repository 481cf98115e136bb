use super::*;
use crate::measure::{Measure, Units};
use crate::words::{Lang, Words};

fn speaker(units: Units) -> Speaker {
    Speaker::new(Measure::new(units, Words::new(Lang::En)))
}

#[test]
fn times_and_ways_are_written_as_people_say_them() {
    assert_eq!(
        (hour(7 * 3600 + 300), hour(25 * 3600)),
        ("07:05".into(), "01:00".into())
    );
    assert_eq!(minutes(44.6), "45\u{a0}min");
    assert_eq!(minutes(185.0), "3\u{a0}h\u{a0}05");
    // an international mile is 1609.344 m (1959 agreement on the yard)
    assert_eq!(way(&speaker(Units::Metric), 16_093.44), "16.1\u{a0}km");
    assert_eq!(way(&speaker(Units::UsCustomary), 16_093.44), "10\u{a0}mi");
}
