//! The world as the core is told it: a clock and a maker of ids.

use jiff::Timestamp;
use jiff::tz::TimeZone;
use model::{Day, Moment};
use uuid::Uuid;

/// Clock, ids and the name of this device. Tests pass a fixed one.
pub struct World {
    /// Now.
    pub now: Box<dyn Fn() -> Moment + Send + Sync>,
    /// "Today" when it is fixed from outside (`--as-of`); else the day of `now` in the local zone.
    pub as_of: Option<Day>,
    /// A fresh UUID v7.
    pub new_id: Box<dyn Fn() -> Uuid + Send + Sync>,
    /// Name of this device, written into entries.
    pub device: String,
}

impl World {
    /// The machine's clock and fresh ids.
    pub fn here(device: &str, as_of: Option<Day>) -> World {
        World {
            now: Box::new(|| Moment(Timestamp::now().as_millisecond())),
            as_of,
            new_id: Box::new(Uuid::now_v7),
            device: device.to_owned(),
        }
    }

    /// Today: the day that is fixed, or the day on the wall calendar here.
    pub fn today(&self) -> Day {
        self.as_of.unwrap_or_else(|| self.calendar_day())
    }

    /// The day of `now` in the machine's own time zone (UTC if the machine does not say).
    pub fn calendar_day(&self) -> Day {
        day_in(&TimeZone::system(), (self.now)())
    }
}

fn day_in(zone: &TimeZone, moment: Moment) -> Day {
    let local = Timestamp::from_millisecond(moment.0).map(|stamp| zone.to_datetime(stamp).date());
    local
        .ok()
        .and_then(|date| Day::from_ymd(date.year(), date.month(), date.day()))
        .unwrap_or(moment.day())
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::tz::Offset;

    #[test]
    fn the_day_is_the_local_one() {
        let late = Moment::parse("2026-03-02T23:30:00Z").unwrap();
        let day = |hours: i8| day_in(&TimeZone::fixed(Offset::constant(hours)), late).to_string();
        assert_eq!(
            (day(0), day(1), day(-6)),
            (
                "2026-03-02".into(),
                "2026-03-03".into(),
                "2026-03-02".into()
            )
        );
    }

    #[test]
    fn a_fixed_day_is_today() {
        let mut world = World::here("test", Day::parse("2026-03-02"));
        assert_eq!(world.today().to_string(), "2026-03-02");
        world.as_of = None;
        assert_eq!(world.today(), world.calendar_day());
        assert_ne!((world.new_id)(), (world.new_id)());
    }
}
