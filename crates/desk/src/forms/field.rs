//! One typed field at a time: empty is unknown, nonsense is a trouble at the field.

use super::{Trouble, Troubles, Typed, length};
use crate::measure::Units;
use model::{Arg, Clock, Day, Finding, Metres, Severity};
use std::ops::RangeInclusive;

/// Reads the fields of one form, gathering troubles on the way.
pub(super) struct Fields<'a> {
    typed: &'a Typed,
    troubles: Troubles,
}

impl<'a> Fields<'a> {
    pub(super) fn of(typed: &'a Typed) -> Fields<'a> {
        Fields {
            typed,
            troubles: Troubles::default(),
        }
    }

    /// Free words.
    pub(super) fn text(&self, name: &str) -> String {
        self.typed.get(name).to_owned()
    }

    /// A whole number of things, none or more.
    pub(super) fn count(&mut self, name: &'static str, most: u32) -> Option<u32> {
        let text = self.some(name)?;
        match text.parse::<u32>() {
            Ok(count) if count <= most => Some(count),
            Ok(_) => self.bad(
                Finding::new("form-count-too-large", Severity::Refuse)
                    .with("most", count_arg(most)),
                name,
            ),
            Err(_) => self.bad(
                Finding::new("form-count-not-whole", Severity::Refuse)
                    .with("found", text_arg(text)),
                name,
            ),
        }
    }

    /// A plain number within bounds; a decimal comma is taken as a decimal point.
    pub(super) fn number(
        &mut self,
        name: &'static str,
        within: RangeInclusive<f64>,
    ) -> Option<f64> {
        let text = self.some(name)?;
        match length::decimal(text) {
            Some(number) if within.contains(&number) => Some(number),
            Some(_) => self.bad(bounds("form-number-out-of-range", &within), name),
            None => self.bad(
                Finding::new("form-number-not-read", Severity::Refuse)
                    .with("found", text_arg(text)),
                name,
            ),
        }
    }

    /// A length in the reader's units, or in the unit written behind it.
    pub(super) fn length(
        &mut self,
        name: &'static str,
        units: Units,
        most: Metres,
    ) -> Option<Metres> {
        let text = self.some(name)?;
        match length::read_length(text, units) {
            Some(length) if length.0 >= 0.0 && length <= most => Some(length),
            Some(_) => self.bad(
                Finding::new("form-length-out-of-range", Severity::Refuse)
                    .with("most", Arg::Length(most)),
                name,
            ),
            None => self.bad(
                Finding::new("form-length-not-read", Severity::Refuse)
                    .with("found", text_arg(text)),
                name,
            ),
        }
    }

    /// A day that is not in the future.
    pub(super) fn past_day(&mut self, name: &'static str, today: Day) -> Option<Day> {
        let day = self.day(name)?;
        if day > today {
            return self.bad(
                Finding::new("form-date-in-future", Severity::Refuse)
                    .with("today", Arg::Date(today)),
                name,
            );
        }
        Some(day)
    }

    /// A day from 1800 on.
    pub(super) fn day(&mut self, name: &'static str) -> Option<Day> {
        let text = self.some(name)?;
        match Day::parse(text) {
            Some(day) if day.ymd().0 >= 1800 => Some(day),
            Some(_) => self.bad(Finding::new("form-date-too-old", Severity::Refuse), name),
            None => self.bad(
                Finding::new("form-date-not-read", Severity::Refuse).with("found", text_arg(text)),
                name,
            ),
        }
    }

    /// A clock reading in quarter hours on one half of the dial (`right`: 12 through 3 to 6; else 6 to 12).
    pub(super) fn clock(&mut self, name: &'static str, right: bool) -> Option<Clock> {
        let text = self.some(name)?;
        let hours = length::decimal(text)
            .filter(|h| (h * 4.0).fract() == 0.0)
            .and_then(Clock::new);
        let code = if right {
            "form-clock-right"
        } else {
            "form-clock-left"
        };
        match hours {
            Some(clock) if on_side(clock, right) => Some(clock),
            _ => self.bad(
                Finding::new(code, Severity::Refuse).with("found", text_arg(text)),
                name,
            ),
        }
    }

    /// The typed text of a field, if there is any.
    pub(super) fn some(&self, name: &str) -> Option<&'a str> {
        Some(self.typed.get(name)).filter(|text| !text.is_empty())
    }

    pub(super) fn refuse(&mut self, name: &'static str, code: &'static str) {
        self.troubles.refuse(name, code);
    }

    pub(super) fn add(&mut self, name: &'static str, finding: Finding) {
        self.troubles.add(name, finding);
    }

    pub(super) fn ask(&mut self, name: &'static str, finding: Finding) {
        self.troubles.ask(self.typed, name, finding);
    }

    pub(super) fn or<T>(self, value: T) -> Result<T, Vec<Trouble>> {
        self.troubles.or(value)
    }

    fn bad<T>(&mut self, finding: Finding, name: &'static str) -> Option<T> {
        self.troubles.add(name, finding);
        None
    }
}

fn on_side(clock: Clock, right: bool) -> bool {
    if right {
        clock.0 <= 6.0 || clock.0 == 12.0
    } else {
        clock.0 >= 6.0
    }
}

fn bounds(code: &'static str, within: &RangeInclusive<f64>) -> Finding {
    Finding::new(code, Severity::Refuse)
        .with("least", Arg::Number(*within.start()))
        .with("most", Arg::Number(*within.end()))
}

pub(super) fn count_arg(count: u32) -> Arg {
    Arg::Count(i64::from(count))
}

/// Typed text for a message, cut short so that a pasted page does not come back whole.
pub(super) fn text_arg(text: &str) -> Arg {
    Arg::Text(text.chars().take(40).collect())
}
