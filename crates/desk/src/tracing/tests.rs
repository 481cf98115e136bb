use super::reckon;
use model::Day;
use model::knowledge::DayRange;

#[test]
fn dates_to_look() {
    let day = |text: &str| Day::parse(text).unwrap();
    let range = DayRange {
        min: Some(10),
        max: Some(40),
    };
    let (until, looks) = reckon::watch(
        day("2026-01-01"),
        day("2026-01-05"),
        range,
        day("2026-01-02"),
        14,
        6,
    );
    assert_eq!(until, Some(day("2026-02-14")));
    let said: Vec<String> = looks.iter().map(ToString::to_string).collect();
    assert_eq!(
        said,
        ["2026-01-11", "2026-01-25", "2026-02-08", "2026-02-14"]
    );
    let over = reckon::watch(
        day("2026-01-01"),
        day("2026-01-05"),
        range,
        day("2026-03-01"),
        14,
        6,
    );
    assert_eq!(over, (Some(day("2026-02-14")), vec![]));
}
