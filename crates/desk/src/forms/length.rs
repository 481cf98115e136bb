//! Lengths and decimal numbers as people type them.
//!
//! A bare number is in the reader's unit (metres or feet); a unit written behind it wins: `3.8 m`, `380 cm`,
//! `12 ft 6 in`, `12' 6"`, `150 in`. A decimal comma is taken as a decimal point.

use crate::measure::Units;
use model::Metres;

/// Reads a length; `None` if it cannot be read.
pub fn read_length(text: &str, units: Units) -> Option<Metres> {
    let parts = split(text)?;
    match parts.as_slice() {
        [(number, "")] => Some(bare(*number, units)),
        [(feet, foot), (inches, inch)] if is_foot(foot) && (is_inch(inch) || inch.is_empty()) => {
            (*inches < 12.0)
                .then(|| Metres(Metres::from_feet(*feet).0 + Metres::from_inches(*inches).0))
        }
        [(number, unit)] => with_unit(*number, unit),
        _ => None,
    }
}

/// A length as a form shows it for editing, in the reader's unit without the unit's name: `3.81`, `12.5`.
/// Two decimals; a form that comes back with this very text keeps the value it was made from.
pub fn write_length(length: Metres, units: Units) -> String {
    let number = match units {
        Units::Metric => length.0,
        Units::UsCustomary => length.feet(),
    };
    let text = format!("{number:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A plain decimal number, with point or comma; no exponent, no thousands marks.
pub(super) fn decimal(text: &str) -> Option<f64> {
    let text = text.trim().replace(',', ".");
    let digits = text.strip_prefix('-').unwrap_or(&text);
    let plain = digits.bytes().any(|b| b.is_ascii_digit())
        && digits.bytes().all(|b| b.is_ascii_digit() || b == b'.');
    if plain { text.parse().ok() } else { None }
}

fn bare(number: f64, units: Units) -> Metres {
    match units {
        Units::Metric => Metres(number),
        Units::UsCustomary => Metres::from_feet(number),
    }
}

fn with_unit(number: f64, unit: &str) -> Option<Metres> {
    match unit {
        "m" => Some(Metres(number)),
        "cm" => Some(Metres(number / 100.0)),
        _ if is_foot(unit) => Some(Metres::from_feet(number)),
        _ if is_inch(unit) => Some(Metres::from_inches(number)),
        _ => None,
    }
}

fn is_foot(unit: &str) -> bool {
    matches!(
        unit,
        "ft" | "ft." | "'" | "′" | "’" | "foot" | "feet" | "pie" | "pies"
    )
}

fn is_inch(unit: &str) -> bool {
    matches!(
        unit,
        "in" | "in."
            | "\""
            | "″"
            | "”"
            | "''"
            | "inch"
            | "inches"
            | "pulg"
            | "pulg."
            | "pulgada"
            | "pulgadas"
    )
}

/// Splits `12 ft 6 in` into numbers and the units behind them.
fn split(text: &str) -> Option<Vec<(f64, &str)>> {
    let mut rest = text.trim();
    let mut parts = Vec::new();
    while !rest.is_empty() {
        let end = rest
            .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-')))
            .unwrap_or(rest.len());
        let number = decimal(&rest[..end])?;
        let after = rest[end..].trim_start();
        let stop = after
            .find(|c: char| c.is_ascii_digit())
            .unwrap_or(after.len());
        parts.push((number, after[..stop].trim()));
        rest = &after[stop..];
    }
    Some(parts)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, units: Units, metres: Option<f64>) {
        let read = read_length(text, units).map(|m| (m.0 * 10_000.0).round() / 10_000.0);
        assert_eq!(read, metres, "{text}");
    }

    /// One foot is 0.3048 m and one inch 0.0254 m exactly (international yard and pound agreement, 1959).
    #[test]
    fn lengths_are_read_as_people_write_them() {
        check("3.8", Units::Metric, Some(3.8));
        check("3,8", Units::Metric, Some(3.8));
        check("3.8 m", Units::UsCustomary, Some(3.8));
        check("380cm", Units::UsCustomary, Some(3.8));
        check("12.5", Units::UsCustomary, Some(3.81));
        check("12 ft 6 in", Units::Metric, Some(3.81));
        check("12' 6\"", Units::Metric, Some(3.81));
        check("12'6", Units::Metric, Some(3.81));
        check("12’ 6”", Units::UsCustomary, Some(3.81));
        check("150 in", Units::Metric, Some(3.81));
        check("12 pies", Units::Metric, Some(3.6576));
        check("0", Units::UsCustomary, Some(0.0));
    }

    #[test]
    fn nonsense_is_not_a_length() {
        for text in [
            "tall",
            "12 13",
            "12 ft 14 in",
            "6 in 12 ft",
            "1e3",
            "--3",
            "3 km",
            "m",
            "12 ft 6 in 3",
            "1.2.3",
        ] {
            check(text, Units::UsCustomary, None);
        }
    }

    #[test]
    fn a_length_is_written_for_editing_without_its_unit() {
        assert_eq!(write_length(Metres(3.81), Units::Metric), "3.81");
        assert_eq!(write_length(Metres(3.81), Units::UsCustomary), "12.5");
        assert_eq!(write_length(Metres(10.0), Units::Metric), "10");
        assert_eq!(write_length(Metres(10.0), Units::UsCustomary), "32.81");
    }
}
