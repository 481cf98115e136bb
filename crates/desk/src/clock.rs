//! Moments as people on the spot read and type them: in the machine's own time zone (UTC if it does not say).

use crate::measure::Measure;
use crate::office::Office;
use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use model::{Day, Moment};

/// Now, on the keeper's day. Where the day is fixed from outside (`--as-of`) the hour is the true one, so that what is
/// recorded one after the other keeps its order and timers run.
pub fn now(office: &Office) -> Moment {
    let now = office.now();
    let off = office.today().since(local_day(now));
    Moment(now.0 + i64::from(off) * 86_400_000)
}

/// The day on the wall calendar here.
pub fn local_day(moment: Moment) -> Day {
    let date = civil(moment).date();
    Day::from_ymd(date.year(), date.month(), date.day()).unwrap_or(moment.day())
}

/// `2026-05-04T14:05`, as a field of date and time wants it.
pub fn typed(moment: Moment) -> String {
    civil(moment).strftime("%Y-%m-%dT%H:%M").to_string()
}

/// From such a field (seconds may follow), or with a zone of its own (RFC 3339). Where clocks are put back the first of
/// two such hours is meant; one that is skipped is taken as the hour after.
pub fn read(text: &str) -> Option<Moment> {
    Moment::parse(text).or_else(|| {
        let civil: DateTime = text.parse().ok()?;
        let stamp = TimeZone::system().to_timestamp(civil).ok()?;
        Some(Moment(stamp.as_millisecond()))
    })
}

/// The hour on the wall clock: `14:05`.
pub fn hour(moment: Moment) -> String {
    civil(moment).strftime("%H:%M").to_string()
}

/// Date and hour in words: "4 May 2026, 14:05".
pub fn says(measure: &Measure, moment: Moment) -> String {
    format!("{}, {}", measure.date(local_day(moment)), hour(moment))
}

/// The hour alone where it was on this day, else date and hour.
pub fn says_on(measure: &Measure, moment: Moment, today: Day) -> String {
    if local_day(moment) == today {
        hour(moment)
    } else {
        says(measure, moment)
    }
}

fn civil(moment: Moment) -> DateTime {
    let stamp = Timestamp::from_millisecond(moment.0).unwrap_or(Timestamp::UNIX_EPOCH);
    TimeZone::system().to_datetime(stamp)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Units;
    use crate::words::{Lang, Words};

    #[test]
    fn what_a_field_shows_is_read_back_to_the_minute() {
        let moment = Moment::parse("2026-05-04T14:05:30Z").unwrap();
        let back = read(&typed(moment)).unwrap();
        assert_eq!(moment.0 - back.0, 30_000);
        assert_eq!(
            read("2026-05-04T14:05:00+02:00"),
            Moment::parse("2026-05-04T12:05:00Z")
        );
        assert_eq!(read("yesterday"), None);
        assert_eq!(read("2026-13-04T14:05"), None);
    }

    #[test]
    fn an_hour_of_today_needs_no_date() {
        let measure = Measure::new(Units::Metric, Words::new(Lang::En));
        let moment = Moment::parse("2026-05-04T14:05:30Z").unwrap();
        let day = local_day(moment);
        assert_eq!(says_on(&measure, moment, day), hour(moment));
        assert!(says_on(&measure, moment, day.plus(1)).contains(" May 2026, "));
    }
}
