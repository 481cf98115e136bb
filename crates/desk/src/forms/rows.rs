//! Fields that stand several times on a form: windows of the day, closed days, rules against feeding.
//!
//! A row has a name (`hours_1`), its parts are fields behind it (`hours_1-from`); what is wrong with any part is said at
//! the row. Rows that were left empty are passed over.

use super::Typed;
use super::field::{Fields, text_arg};
use crate::timetable::{DAY, day_of_year, overlap, read_clock, write_clock, write_hours};
use model::{Arg, Closed, Day, Finding, Hours, NoFeeding, Severity};

macro_rules! rows {
    ($name:literal) => {
        rows!($name, "1" "2" "3" "4" "5" "6" "7" "8" "9" "10" "11" "12"
            "13" "14" "15" "16" "17" "18" "19" "20" "21" "22" "23" "24")
    };
    ($name:literal, $($n:literal)*) => { [$(concat!($name, "_", $n)),*] };
}

/// Rows of hours.
pub const HOURS: [&str; crate::timetable::MOST] = rows!("hours");
/// Rows of closed days.
pub const CLOSED: [&str; crate::timetable::MOST] = rows!("closed");
/// Rows of rules against feeding.
pub const FEEDING: [&str; crate::timetable::MOST] = rows!("feeding");

/// The rows to draw: those up to the last that has anything in it, and one more to fill in.
pub fn rows_shown<'r>(typed: &Typed, rows: &'r [&'static str]) -> &'r [&'static str] {
    let filled = rows.iter().rposition(|row| {
        let parts = format!("{row}-");
        typed.below(&parts).any(|(_, text)| !text.is_empty())
    });
    let shown = filled.map_or(1, |last| last + 2);
    &rows[..shown.min(rows.len())]
}

fn part<'t>(typed: &'t Typed, row: &str, part: &str) -> &'t str {
    typed.get(&format!("{row}-{part}"))
}

fn wrong(fields: &mut Fields, row: &'static str, code: &'static str, found: &str) {
    let finding = Finding::new(code, Severity::Refuse).with("found", text_arg(found));
    fields.add(row, finding);
}

/// Windows of the day, in its order; `-from`, `-to`. Midnight at the end is the end of the day.
pub(super) fn hours(fields: &mut Fields, typed: &Typed, rows: &[&'static str]) -> Vec<Hours> {
    let mut all: Vec<Hours> = Vec::new();
    for row in rows {
        let (from, to) = (part(typed, row, "from"), part(typed, row, "to"));
        if from.is_empty() && to.is_empty() {
            continue;
        }
        if from.is_empty() || to.is_empty() {
            fields.refuse(row, "form-hours-half");
            continue;
        }
        let (begins, ends) = (read_clock(from), read_clock(to));
        let Some((begins, ends)) = begins.zip(ends) else {
            let bad = if begins.is_none() { from } else { to };
            wrong(fields, row, "form-hours-not-read", bad);
            continue;
        };
        let ends = if ends == 0 { DAY } else { ends };
        if begins >= ends {
            fields.refuse(row, "form-hours-backwards");
            continue;
        }
        let own = Hours {
            from: begins,
            to: ends,
        };
        let mut before = all.iter();
        match before.find(|other| overlap(&[**other, own]).is_some()) {
            Some(other) => wrong(fields, row, "form-hours-overlap", &write_hours(&[*other])),
            None => all.push(own),
        }
    }
    all.sort();
    all
}

/// Closed days, earliest first; `-first`, `-last` (empty: one day), `-why`.
pub(super) fn closed(fields: &mut Fields, typed: &Typed) -> Vec<Closed> {
    let mut all = Vec::new();
    for row in CLOSED {
        let (first, last) = (part(typed, row, "first"), part(typed, row, "last"));
        let why = part(typed, row, "why");
        if first.is_empty() && last.is_empty() && why.is_empty() {
            continue;
        }
        if first.is_empty() {
            fields.refuse(row, "form-closed-no-day");
            continue;
        }
        let last = if last.is_empty() { first } else { last };
        match (Day::parse(first), Day::parse(last)) {
            (None, _) => wrong(fields, row, "form-date-not-read", first),
            (_, None) => wrong(fields, row, "form-date-not-read", last),
            (Some(first), Some(last)) if last < first => {
                let finding = Finding::new("form-closed-backwards", Severity::Refuse);
                fields.add(row, finding.with("first", Arg::Date(first)));
            }
            (Some(first), Some(last)) => all.push(Closed {
                first,
                last,
                why: why.to_owned(),
            }),
        }
    }
    all.sort();
    all
}

/// Rules against feeding; `-from_month`, `-from_day`, `-to_month`, `-to_day`, ticks `-N`, `-P`, `-K` (none: all), `-rule`.
pub(super) fn feeding(fields: &mut Fields, typed: &Typed) -> Vec<NoFeeding> {
    let mut all = Vec::new();
    for row in FEEDING {
        let days = ["from_month", "from_day", "to_month", "to_day"].map(|p| part(typed, row, p));
        let rule = part(typed, row, "rule").to_owned();
        let nutrients: Vec<String> = crate::timetable::NUTRIENTS
            .iter()
            .filter(|n| !part(typed, row, n).is_empty())
            .map(|n| (*n).to_owned())
            .collect();
        if days.iter().all(|d| d.is_empty()) && rule.is_empty() && nutrients.is_empty() {
            continue;
        }
        if days.iter().any(|d| d.is_empty()) {
            fields.refuse(row, "form-feeding-half");
            continue;
        }
        let [from_month, from_day, to_month, to_day] = days;
        let day = |month: &str, day: &str| day_of_year(month.parse().ok()?, day.parse().ok()?);
        let (from, to) = (day(from_month, from_day), day(to_month, to_day));
        match from.zip(to) {
            Some((from, to)) => all.push(NoFeeding {
                from,
                to,
                nutrients,
                rule,
            }),
            None => {
                let bad = match from {
                    None => format!("{from_month}-{from_day}"),
                    Some(_) => format!("{to_month}-{to_day}"),
                };
                wrong(fields, row, "form-feeding-no-day", &bad);
            }
        }
    }
    all
}

/// Writes windows of the day into a form.
pub(super) fn type_hours(typed: &mut Typed, hours: &[Hours]) {
    for (row, hours) in HOURS.iter().zip(hours) {
        // a field for a time of day knows no 24:00
        let to = if hours.to == DAY { 0 } else { hours.to };
        typed.set(&format!("{row}-from"), write_clock(hours.from));
        typed.set(&format!("{row}-to"), write_clock(to));
    }
}

/// Writes closed days into a form.
pub(super) fn type_closed(typed: &mut Typed, closed: &[Closed]) {
    for (row, closed) in CLOSED.iter().zip(closed) {
        typed.set(&format!("{row}-first"), closed.first.to_string());
        typed.set(&format!("{row}-last"), closed.last.to_string());
        typed.set(&format!("{row}-why"), closed.why.clone());
    }
}

/// Writes rules against feeding into a form.
pub(super) fn type_feeding(typed: &mut Typed, rules: &[NoFeeding]) {
    for (row, rule) in FEEDING.iter().zip(rules) {
        let days = [
            ("from_month", rule.from.0),
            ("from_day", rule.from.1),
            ("to_month", rule.to.0),
            ("to_day", rule.to.1),
        ];
        for (part, number) in days {
            typed.set(&format!("{row}-{part}"), number.to_string());
        }
        for nutrient in &rule.nutrients {
            typed.set(&format!("{row}-{nutrient}"), "yes");
        }
        typed.set(&format!("{row}-rule"), rule.rule.clone());
    }
}
