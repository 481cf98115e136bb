//! The weeks of a season and the day of each on which a visit would fall.

use model::Day;

/// The weeks of a season, in order.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Weeks {
    /// First day of each week (a Monday, but for the first, which begins today).
    pub starts: Vec<Day>,
    /// The day a visit in that week falls on: its first working day that is not closed; `None`: the week is closed.
    pub days: Vec<Option<Day>>,
    /// The day after the season.
    pub end: Day,
}

impl Weeks {
    /// How many weeks.
    pub fn count(&self) -> usize {
        self.days.len()
    }

    /// How many of them can be visited in.
    pub fn open(&self) -> usize {
        self.days.iter().flatten().count()
    }

    /// The week a day falls in.
    pub fn week_of(&self, day: Day) -> Option<usize> {
        let after = self.starts.partition_point(|start| *start <= day);
        (day < self.end).then(|| after.checked_sub(1)).flatten()
    }
}

/// `count` weeks from `today` on, Monday to Sunday; the first is what is left of this week. Work is done Monday to Friday,
/// where `closed` does not say otherwise.
pub fn weeks(today: Day, count: usize, closed: impl Fn(Day) -> bool) -> Weeks {
    // day 0, 1970-01-01, was a Thursday
    let weekday = |day: Day| (day.0 + 3).rem_euclid(7);
    let monday = today.plus(-weekday(today));
    let starts: Vec<Day> = (0..count as i32)
        .map(|k| monday.plus(7 * k).max(today))
        .collect();
    let end = monday.plus(7 * count as i32);
    let visit = |(k, start): (usize, &Day)| {
        let next = starts.get(k + 1).copied().unwrap_or(end);
        let days = (0..next.since(*start)).map(|d| start.plus(d));
        days.into_iter()
            .find(|day| weekday(*day) < 5 && !closed(*day))
    };
    let days = starts.iter().enumerate().map(visit).collect();
    Weeks { starts, days, end }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    /// Weekdays of the dates checked against a printed calendar (ISO 8601 weeks): 2 March 2026 is the Monday of week 10.
    #[test]
    fn a_visit_falls_on_the_first_open_working_day() {
        let closed =
            |d: Day| d == day("2026-03-09") || (day("2026-03-16")..=day("2026-03-20")).contains(&d);
        let weeks = weeks(day("2026-03-05"), 4, closed);
        let shown: Vec<String> = weeks
            .days
            .iter()
            .map(|d| d.map_or("closed".to_owned(), |d| d.to_string()))
            .collect();
        assert_eq!(shown, ["2026-03-05", "2026-03-10", "closed", "2026-03-23"]);
        assert_eq!(weeks.end, day("2026-03-30"));
        assert_eq!(weeks.week_of(day("2026-03-04")), None);
        assert_eq!(weeks.week_of(day("2026-03-05")), Some(0));
        assert_eq!(weeks.week_of(day("2026-03-29")), Some(3));
        assert_eq!(weeks.week_of(day("2026-03-30")), None);
        // from a Saturday on this week is over
        assert_eq!(super::weeks(day("2026-03-07"), 1, |_| false).open(), 0);
    }
}
