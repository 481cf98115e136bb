//! One cell to one value. An empty cell is unknown: `Ok(None)`.

use super::refusal::Fault;
use super::table::Col;
use model::{Arg, Clock, Day};

/// Highest count of fronds that is believed.
pub const MOST_FRONDS: u32 = 1000;

/// Free text may be this long, in characters.
pub const MOST_TEXT: usize = 10_000;

/// A date, ISO 8601, not before 1800.
pub fn date(col: Col, cell: &str) -> Result<Option<Day>, Fault> {
    if cell.is_empty() {
        return Ok(None);
    }
    let day = Day::parse(cell).ok_or_else(|| bad_date(col, cell))?;
    if day.ymd().0 < 1800 {
        return Err(Fault::cell("intake-date-too-old", col.name, cell));
    }
    Ok(Some(day))
}

fn bad_date(col: Col, cell: &str) -> Fault {
    match offer_dates(cell) {
        offer if offer.is_empty() => Fault::cell("intake-bad-date", col.name, cell),
        offer => {
            Fault::cell("intake-bad-date-offer", col.name, cell).with("offer", Arg::Text(offer))
        }
    }
}

/// What a date written another way may have meant: both readings where day and month cannot be told apart.
fn offer_dates(cell: &str) -> String {
    let parts: Vec<i16> = cell
        .split(['/', '.', '-', ' '])
        .map_while(|p| p.parse().ok())
        .collect();
    let [a, b, c] = parts[..] else {
        return String::new();
    };
    let full = |y: i16| if y < 100 { 2000 + y } else { y };
    let (year, one, two) = if a > 31 { (a, b, c) } else { (full(c), b, a) };
    let make = |m: i16, d: i16| Day::from_ymd(year, i8::try_from(m).ok()?, i8::try_from(d).ok()?);
    let mut days: Vec<String> = [make(one, two), make(two, one)]
        .into_iter()
        .flatten()
        .map(|d| d.to_string())
        .collect();
    days.dedup();
    days.join(" / ")
}

/// A count of fronds: a whole number from 0 to [`MOST_FRONDS`].
pub fn count(col: Col, cell: &str) -> Result<Option<u32>, Fault> {
    whole(col, cell, MOST_FRONDS)
}

/// A whole number from 0 to `most`.
pub fn whole(col: Col, cell: &str, most: u32) -> Result<Option<u32>, Fault> {
    if cell.is_empty() {
        return Ok(None);
    }
    let digits = cell.strip_prefix(['-', '\u{2212}']).unwrap_or(cell);
    let is_whole = !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit());
    if !is_whole {
        return Err(Fault::cell("intake-not-whole", col.name, cell));
    }
    if digits.len() < cell.len() {
        return Err(Fault::cell("intake-negative", col.name, cell));
    }
    match digits.parse::<u32>() {
        Ok(n) if n <= most => Ok(Some(n)),
        _ => Err(Fault::cell("intake-too-many", col.name, cell)
            .with("limit", Arg::Count(i64::from(most)))),
    }
}

/// A number between `low` and `high`, decimal point, no units.
pub fn number(col: Col, cell: &str, low: f64, high: f64) -> Result<Option<f64>, Fault> {
    if cell.is_empty() {
        return Ok(None);
    }
    let plain = cell
        .bytes()
        .all(|b| b.is_ascii_digit() || b"+-.eE".contains(&b));
    let value = cell.parse::<f64>().ok().filter(|v| plain && v.is_finite());
    let Some(value) = value else {
        let code = if cell.contains(',') && cell.replace(',', "").parse::<f64>().is_ok() {
            "intake-decimal-comma"
        } else {
            "intake-not-number"
        };
        return Err(Fault::cell(code, col.name, cell));
    };
    if !(low..=high).contains(&value) {
        return Err(Fault::cell("intake-out-of-range", col.name, cell)
            .with("low", Arg::Number(low))
            .with("high", Arg::Number(high)));
    }
    Ok(Some(value))
}

/// Which half of the dial a clock reading must be on.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Side {
    /// 6 through 9 to 12.
    Left,
    /// 12 through 3 to 6.
    Right,
}

/// A clock reading in hours, quarters allowed, on its side of the dial.
pub fn clock(col: Col, cell: &str, side: Side) -> Result<Option<Clock>, Fault> {
    if cell.is_empty() {
        return Ok(None);
    }
    let hours = cell.parse::<f64>().ok().filter(|h| h.is_finite());
    let reading = hours
        .and_then(Clock::new)
        .filter(|c| c.0 * 4.0 == (c.0 * 4.0).trunc());
    let Some(reading) = reading else {
        return Err(Fault::cell("intake-bad-clock", col.name, cell));
    };
    let fits = match side {
        Side::Left => reading.0 >= 6.0,
        Side::Right => reading.0 <= 6.0 || reading.0 == 12.0,
    };
    if fits {
        Ok(Some(reading))
    } else {
        Err(Fault::cell("intake-clock-side", col.name, cell))
    }
}

/// Free text, not too long.
pub fn text(col: Col, cell: &str) -> Result<String, Fault> {
    if cell.chars().nth(MOST_TEXT).is_some() {
        return Err(Fault::cell("intake-text-too-long", col.name, cell)
            .with("limit", Arg::Count(MOST_TEXT as i64)));
    }
    Ok(cell.to_owned())
}

/// A tag: one line of at most 64 characters, not empty.
pub fn tag(col: Col, cell: &str) -> Result<String, Fault> {
    if cell.is_empty() {
        return Err(Fault::cell("intake-no-tag", col.name, cell));
    }
    if cell.chars().nth(64).is_some() || cell.chars().any(char::is_control) {
        return Err(Fault::cell("intake-bad-tag", col.name, cell));
    }
    Ok(cell.to_owned())
}
