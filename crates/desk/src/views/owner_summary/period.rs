//! The days a summary tells of.

use model::{Arg, Day, Finding, Severity};

/// Days of a summary where none are named: 26 weeks.
pub const USUAL_DAYS: i32 = 182;

/// From one day to another, both included.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Period {
    /// First day.
    pub from: Day,
    /// Last day, not after today.
    pub until: Day,
}

impl Period {
    /// The 26 weeks up to today.
    pub fn usual(today: Day) -> Period {
        Period {
            from: today.plus(-USUAL_DAYS),
            until: today,
        }
    }

    /// From two days as typed (`2026-05-04`); an empty one is the usual one. Errors carry the field, `from` or `until`,
    /// and what is wrong with it.
    pub fn read(
        from: &str,
        until: &str,
        today: Day,
    ) -> Result<Period, Vec<(&'static str, Finding)>> {
        let (last, first) = (typed("until", until), typed("from", from));
        let wrong: Vec<_> = [&last, &first]
            .into_iter()
            .filter_map(|day| day.as_ref().err().cloned())
            .collect();
        let (Ok(last), Ok(first)) = (last, first) else {
            return Err(wrong);
        };
        Period::of(first, last, today)
    }

    /// From two days; `None` is the usual one.
    pub fn of(
        from: Option<Day>,
        until: Option<Day>,
        today: Day,
    ) -> Result<Period, Vec<(&'static str, Finding)>> {
        let until = until.unwrap_or(today);
        let from = from.unwrap_or(until.plus(-USUAL_DAYS));
        let refuse = |code| Finding::new(code, Severity::Refuse);
        if until > today {
            let found = refuse("summary-future").with("today", Arg::Date(today));
            return Err(vec![("until", found)]);
        }
        if from > until {
            let found = refuse("summary-backwards").with("until", Arg::Date(until));
            return Err(vec![("from", found)]);
        }
        Ok(Period { from, until })
    }

    /// Whether a day falls into it.
    pub fn holds(self, day: Day) -> bool {
        (self.from..=self.until).contains(&day)
    }
}

fn typed(field: &'static str, text: &str) -> Result<Option<Day>, (&'static str, Finding)> {
    match text.trim() {
        "" => Ok(None),
        text => match Day::parse(text) {
            Some(day) => Ok(Some(day)),
            None => {
                let found = Arg::Text(text.to_owned());
                let finding = Finding::new("summary-no-day", Severity::Refuse);
                Err((field, finding.with("found", found)))
            }
        },
    }
}
