//! When a site may be worked, as people and files write it: hours of the day, closed days, parts of the year without
//! feeding.
//!
//! In a cell of a file several stand behind each other with `;` between; in the words of an owner a `;` is written `\;`
//! and a `\` is written `\\`.
//!
//! | what | as it is written |
//! |---|---|
//! | hours | `06:30-11:00`, `14:00-24:00`; seconds may follow the minutes |
//! | closed days | `2026-12-24/2026-12-26 why`, a single day `2026-12-24 why` (the interval as in ISO 8601) |
//! | no feeding | `06-01/09-30 N+P whose rule` (month and day; `N`, `P`, `K`, joined by `+`, or `all`) |

use model::{Closed, Day, Hours, NoFeeding};

/// Seconds of a day.
pub const DAY: u32 = 86_400;
/// More windows a day, closed spells or rules than this are not kept for one site.
pub const MOST: usize = 24;
/// Nutrients that local rules bar.
pub const NUTRIENTS: [&str; 3] = ["N", "P", "K"];

/// A time of day: `06:30`, `24:00`; with seconds only where there are some.
pub fn write_clock(seconds: u32) -> String {
    let (hour, minute, second) = (seconds / 3_600, seconds / 60 % 60, seconds % 60);
    if second == 0 {
        format!("{hour:02}:{minute:02}")
    } else {
        format!("{hour:02}:{minute:02}:{second:02}")
    }
}

/// A time of day in seconds after midnight: `6:30`, `06:30:15`, a bare hour `6`; at most `24:00`. With `am`, `a.m.`, `pm`
/// or `p.m.` behind it the hour is 1 to 12.
pub fn read_clock(text: &str) -> Option<u32> {
    let text = text.trim().to_lowercase();
    let (digits, half) = match text.find(|c: char| c.is_alphabetic()) {
        Some(at) => {
            let half: String = text[at..].chars().filter(|c| c.is_alphabetic()).collect();
            (text[..at].trim_end(), Some(half))
        }
        None => (text.as_str(), None),
    };
    let mut parts = digits.split(':').map(two_digits);
    let (hour, minute, second) = (parts.next()??, parts.next(), parts.next());
    let (minute, second) = (minute.unwrap_or(Some(0))?, second.unwrap_or(Some(0))?);
    if parts.next().is_some() || minute > 59 || second > 59 {
        return None;
    }
    let hour = match half.as_deref() {
        None => hour,
        Some("am") if (1..=12).contains(&hour) => hour % 12,
        Some("pm") if (1..=12).contains(&hour) => hour % 12 + 12,
        Some(_) => return None,
    };
    Some(hour * 3_600 + minute * 60 + second).filter(|seconds| *seconds <= DAY)
}

fn two_digits(text: &str) -> Option<u32> {
    let plain = (1..=2).contains(&text.len()) && text.bytes().all(|b| b.is_ascii_digit());
    if plain { text.parse().ok() } else { None }
}

/// Hours in one cell.
pub fn write_hours(hours: &[Hours]) -> String {
    let one = |h: &Hours| format!("{}-{}", write_clock(h.from), write_clock(h.to));
    hours.iter().map(one).collect::<Vec<_>>().join(";")
}

/// Hours out of one cell, in the order of the day; the part that cannot be read, or that ends before it begins, comes
/// back as the error.
pub fn read_hours(cell: &str) -> Result<Vec<Hours>, String> {
    let one = |part: &str| {
        let (from, to) = part.split_once(['-', '–'])?;
        let (from, to) = (read_clock(from)?, read_clock(to)?);
        (from < to).then_some(Hours { from, to })
    };
    let mut hours = each(cell, one)?;
    hours.sort();
    Ok(hours)
}

/// The first two windows of a day that overlap; one may begin at the very second in which another ends.
pub fn overlap(hours: &[Hours]) -> Option<(Hours, Hours)> {
    let mut hours = hours.to_vec();
    hours.sort();
    let pairs = hours.iter().zip(hours.iter().skip(1));
    let mut over = pairs.filter(|(first, next)| next.from < first.to);
    over.next().map(|(first, next)| (*first, *next))
}

/// Closed days in one cell.
pub fn write_closed(closed: &[Closed]) -> String {
    let one = |c: &Closed| {
        let days = if c.first == c.last {
            c.first.to_string()
        } else {
            format!("{}/{}", c.first, c.last)
        };
        format!("{days} {}", mask(&c.why)).trim_end().to_owned()
    };
    closed.iter().map(one).collect::<Vec<_>>().join(";")
}

/// Closed days out of one cell, earliest first; the part that cannot be read, or that ends before it begins, comes back
/// as the error.
pub fn read_closed(cell: &str) -> Result<Vec<Closed>, String> {
    let one = |part: &str| {
        let (days, why) = part.split_once(' ').unwrap_or((part, ""));
        let (first, last) = days.split_once('/').unwrap_or((days, days));
        let (first, last) = (Day::parse(first)?, Day::parse(last)?);
        let why = why.trim().to_owned();
        (first <= last).then_some(Closed { first, last, why })
    };
    let mut closed = each(cell, one)?;
    closed.sort();
    Ok(closed)
}

/// Rules against feeding in one cell.
pub fn write_rules(rules: &[NoFeeding]) -> String {
    let day = |(month, day): (u8, u8)| format!("{month:02}-{day:02}");
    let one = |r: &NoFeeding| {
        let barred = match r.nutrients.is_empty() {
            true => "all".to_owned(),
            false => r.nutrients.join("+"),
        };
        let text = format!("{}/{} {barred} {}", day(r.from), day(r.to), mask(&r.rule));
        text.trim_end().to_owned()
    };
    rules.iter().map(one).collect::<Vec<_>>().join(";")
}

/// Rules against feeding out of one cell; the part that cannot be read comes back as the error.
pub fn read_rules(cell: &str) -> Result<Vec<NoFeeding>, String> {
    let day = |text: &str| {
        let (month, day) = text.split_once('-')?;
        day_of_year(month.parse().ok()?, day.parse().ok()?)
    };
    let one = |part: &str| {
        let mut words = part.splitn(3, ' ');
        let (from, to) = words.next()?.split_once('/')?;
        Some(NoFeeding {
            from: day(from)?,
            to: day(to)?,
            nutrients: nutrients(words.next()?)?,
            rule: words.next().unwrap_or("").trim().to_owned(),
        })
    };
    each(cell, one)
}

/// Month and day of the month, if some year has that day.
pub fn day_of_year(month: u8, day: u8) -> Option<(u8, u8)> {
    // a leap year has them all
    let known = Day::from_ymd(2024, i8::try_from(month).ok()?, i8::try_from(day).ok()?);
    known.map(|_| (month, day))
}

fn nutrients(text: &str) -> Option<Vec<String>> {
    if text.eq_ignore_ascii_case("all") {
        return Some(Vec::new());
    }
    let mut named: Vec<String> = Vec::new();
    for part in text.split('+') {
        let known = NUTRIENTS.iter().find(|n| part.eq_ignore_ascii_case(n))?;
        if !named.iter().any(|n| n == known) {
            named.push((*known).to_owned());
        }
    }
    Some(named)
}

/// The parts of a cell, each read; the first that cannot be is the error.
fn each<T>(cell: &str, one: impl Fn(&str) -> Option<T>) -> Result<Vec<T>, String> {
    let parts = split(cell).into_iter();
    let full = parts.filter(|part| !part.trim().is_empty());
    full.map(|part| one(part.trim()).ok_or_else(|| part.trim().to_owned()))
        .collect()
}

fn mask(text: &str) -> String {
    text.trim().replace('\\', "\\\\").replace(';', "\\;")
}

/// Splits at every `;` that is not masked, and takes the masks off.
fn split(cell: &str) -> Vec<String> {
    let mut parts = vec![String::new()];
    let mut masked = false;
    for c in cell.chars() {
        let last = parts.len() - 1;
        match c {
            _ if masked => {
                parts[last].push(c);
                masked = false;
            }
            '\\' => masked = true,
            ';' => parts.push(String::new()),
            _ => parts[last].push(c),
        }
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_time_of_day_is_read_as_people_write_it() {
        for (text, hours) in [
            ("6", 6.0),
            ("06:30", 6.5),
            ("6:30 am", 6.5),
            ("6:30 p.m.", 18.5),
            ("12 am", 0.0),
            ("12:15 PM", 12.25),
            ("24:00", 24.0),
            ("00:00", 0.0),
        ] {
            assert_eq!(read_clock(text), Some((hours * 3_600.0) as u32), "{text}");
        }
        for text in [
            "", "25:00", "24:01", "6:60", "6:5:4:3", "noon", "13 pm", "-6", "6.5", "006",
        ] {
            assert_eq!(read_clock(text), None, "{text}");
        }
        assert_eq!(write_clock(23_415), "06:30:15");
    }

    #[test]
    fn windows_may_touch_but_not_overlap() {
        let hours = |text| read_hours(text).unwrap();
        assert_eq!(overlap(&hours("06:00-12:00;12:00-14:00")), None);
        let (first, next) = overlap(&hours("13:00-18:00;06:00-13:30")).unwrap();
        assert_eq!(write_hours(&[first, next]), "06:00-13:30;13:00-18:00");
        assert_eq!(
            read_hours("06:00-12:00;14:00-13:00"),
            Err("14:00-13:00".to_owned())
        );
        assert_eq!(read_hours(" ; "), Ok(vec![]));
    }

    #[test]
    fn closed_days_and_rules_are_read_and_nonsense_is_named() {
        let closed = read_closed("2026-12-24/2026-12-26 Feast\\; no engines;2026-05-01").unwrap();
        assert_eq!(closed[0].why, "");
        assert_eq!(closed[1].why, "Feast; no engines");
        assert_eq!(
            read_closed("2026-12-26/2026-12-24 x"),
            Err("2026-12-26/2026-12-24 x".to_owned())
        );
        let rules = read_rules("06-01/09-30 n+P Parish;12-15/01-15 all").unwrap();
        assert_eq!((rules[0].from, rules[0].to), ((6, 1), (9, 30)));
        assert_eq!(rules[0].nutrients, ["N", "P"]);
        assert!(rules[1].nutrients.is_empty() && rules[1].rule.is_empty());
        for bad in [
            "06-01/09-31 N x",
            "06-01/09-30",
            "06-01/09-30 Mg x",
            "summer",
        ] {
            assert_eq!(read_rules(bad), Err(bad.to_owned()));
        }
        assert_eq!(day_of_year(2, 29), Some((2, 29)));
        assert_eq!(day_of_year(2, 30), None);
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_back(
            hours in proptest::collection::vec((0..DAY, 1..DAY), 0..4),
            closed in proptest::collection::vec((0i32..40_000, 0i32..90, "[a-z;\\\\ ñ,]{0,12}"), 0..4),
            rules in proptest::collection::vec((1u8..=12, 1u8..=28, 0usize..4, "[a-z;\\\\ ñ,]{0,12}"), 0..4),
        ) {
            let mut hours: Vec<Hours> = hours
                .into_iter()
                .map(|(from, long)| Hours { from, to: (from + long).min(DAY) })
                .collect();
            hours.sort();
            prop_assert_eq!(read_hours(&write_hours(&hours)), Ok(hours));
            let mut closed: Vec<Closed> = closed
                .into_iter()
                .map(|(day, long, why)| Closed {
                    first: Day(day),
                    last: Day(day + long),
                    why: why.trim().to_owned(),
                })
                .collect();
            closed.sort();
            prop_assert_eq!(read_closed(&write_closed(&closed)), Ok(closed));
            let named = [&[][..], &["N"], &["P"], &["N", "P"]];
            let rules: Vec<NoFeeding> = rules
                .into_iter()
                .map(|(month, day, n, rule)| NoFeeding {
                    from: (month, day),
                    to: (day.min(12), month),
                    nutrients: named[n].iter().map(|n| (*n).to_owned()).collect(),
                    rule: rule.trim().to_owned(),
                })
                .collect();
            prop_assert_eq!(read_rules(&write_rules(&rules)), Ok(rules));
        }
    }
}
