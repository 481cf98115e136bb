//! Calendar days and moments.

use core::fmt;
use jiff::civil::Date;

/// A calendar day, counted from 1970-01-01 (day 0). Cheap to copy, ordered, no time zone.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Day(pub i32);

impl Day {
    /// The day of a civil date, or `None` if there is no such date (30 February).
    pub fn from_ymd(year: i16, month: i8, day: i8) -> Option<Day> {
        Date::new(year, month, day).ok().map(Day::from_date)
    }

    /// Reads `YYYY-MM-DD` (ISO 8601, extended form, nothing around it).
    pub fn parse(text: &str) -> Option<Day> {
        let shape = text.len() == 10
            && text.bytes().enumerate().all(|(i, b)| {
                if i == 4 || i == 7 {
                    b == b'-'
                } else {
                    b.is_ascii_digit()
                }
            });
        if !shape {
            return None;
        }
        text.parse::<Date>().ok().map(Day::from_date)
    }

    fn from_date(date: Date) -> Day {
        let epoch = Date::constant(1970, 1, 1);
        Day((date - epoch).get_days())
    }

    fn date(self) -> Date {
        Date::constant(1970, 1, 1)
            .saturating_add(jiff::Span::new().days(i64::from(self.0).clamp(-700_000, 2_900_000)))
    }

    /// Year, month (1..=12), day of month (1..=31).
    pub fn ymd(self) -> (i16, i8, i8) {
        let date = self.date();
        (date.year(), date.month(), date.day())
    }

    /// Day of the year, 1 for 1 January.
    pub fn of_year(self) -> i16 {
        self.date().day_of_year()
    }

    /// This day moved by a number of days (negative: earlier).
    pub fn plus(self, days: i32) -> Day {
        Day(self.0.saturating_add(days))
    }

    /// Days from `earlier` to this day (negative if it is later).
    pub fn since(self, earlier: Day) -> i32 {
        self.0 - earlier.0
    }
}

impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (y, m, d) = self.ymd();
        write!(f, "{y:04}-{m:02}-{d:02}")
    }
}

/// A moment: milliseconds since 1970-01-01T00:00:00Z.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Moment(pub i64);

impl Moment {
    /// Midnight UTC of a day.
    pub fn at_midnight(day: Day) -> Moment {
        Moment(i64::from(day.0) * 86_400_000)
    }

    /// The UTC day of this moment.
    pub fn day(self) -> Day {
        Day(self.0.div_euclid(86_400_000) as i32)
    }

    /// Reads a date and time with offset (RFC 3339), to the millisecond.
    pub fn parse(text: &str) -> Option<Moment> {
        text.parse::<jiff::Timestamp>()
            .ok()
            .map(|stamp| Moment(stamp.as_millisecond()))
    }
}

/// RFC 3339 in UTC, e.g. `2026-03-02T09:30:00Z`. Years -9999 to 9999; beyond that, the nearest end.
impl fmt::Display for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (first, last) = (
            jiff::Timestamp::MIN.as_millisecond(),
            jiff::Timestamp::MAX.as_millisecond(),
        );
        let stamp = jiff::Timestamp::from_millisecond(self.0.clamp(first + 1000, last - 1000))
            .map_err(|_| fmt::Error)?;
        write!(f, "{stamp}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_parse_print_and_count() {
        let day = Day::parse("2026-03-02").unwrap();
        assert_eq!(day.to_string(), "2026-03-02");
        assert_eq!(day.ymd(), (2026, 3, 2));
        assert_eq!(day.of_year(), 61);
        assert_eq!(Day::parse("2026-03-01").unwrap(), day.plus(-1));
        assert_eq!(Day(0).to_string(), "1970-01-01");
        for bad in [
            "2026-02-30",
            "2026-3-2",
            "02/03/2026",
            "2026-03-02T00:00",
            "",
            "20260302",
            "+026-03-02",
        ] {
            assert_eq!(Day::parse(bad), None, "{bad}");
        }
    }

    #[test]
    fn moments_know_their_day() {
        assert_eq!(Moment(-1).day(), Day(-1));
        assert_eq!(Moment::at_midnight(Day(5)).day(), Day(5));
    }

    #[test]
    fn moments_print_and_parse() {
        let moment = Moment::parse("2026-03-02T09:30:00.250+01:00").unwrap();
        assert_eq!(moment.to_string(), "2026-03-02T08:30:00.25Z");
        assert_eq!(Moment::parse(&moment.to_string()), Some(moment));
        assert_eq!(Moment::parse("2026-03-02"), None);
        assert!(Moment(i64::MAX).to_string().starts_with("9999-"));
    }
}
