//! The form of a watering, and what takes a watering or a feeding back.
//!
//! Fields: `date` (empty: today), `litres` (a bare number is in the reader's unit, litres or US gallons), `water_notes`;
//! `corrects` names the entry it stands in for.

use super::field::{Fields, text_arg};
use super::length::decimal;
use super::save::{BY, entry_id, moment_of, once, record, standing, whole};
use super::thread::thread;
use super::{Stop, Trouble, Typed};
use crate::measure::{LITRES_PER_GALLON, Units};
use crate::office::{Note, Office};
use model::{Arg, Body, Day, Entry, Finding, PalmId, Severity, Tending, Watering};

/// Nobody gives one palm more in a day, litres.
const MOST: f64 = 100_000.0;
/// More than this in a day is asked about, litres (assumed: a slip of the unit is likelier).
const MUCH: f64 = 5_000.0;

/// Reads an amount of water in litres: a bare number is in the reader's unit, a unit written behind it wins
/// (`40`, `40 L`, `10 gal`, `1.5 m3`); `None` if it cannot be read.
pub fn read_litres(text: &str, units: Units) -> Option<f64> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-')));
    let (number, unit) = text.split_at(end.unwrap_or(text.len()));
    let number = decimal(number)?;
    let factor = match unit.trim().to_lowercase().as_str() {
        "" if units == Units::UsCustomary => LITRES_PER_GALLON,
        "" | "l" | "litre" | "litres" | "liter" | "liters" | "litro" | "litros" => 1.0,
        "gal" | "gal." | "gallon" | "gallons" | "galón" | "galones" => LITRES_PER_GALLON,
        "m3" | "m³" => 1000.0,
        _ => return None,
    };
    Some(number * factor)
}

/// Checks the form: the day and the watering.
pub fn watering(typed: &Typed, today: Day, units: Units) -> Result<(Day, Watering), Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let day = fields.past_day("date", today).unwrap_or(today);
    let litres = fields.some("litres").and_then(|text| {
        let Some(litres) = read_litres(text, units) else {
            let finding = Finding::new("form-water-not-read", Severity::Refuse);
            fields.add("litres", finding.with("found", text_arg(text)));
            return None;
        };
        if litres <= 0.0 || litres > MOST {
            fields.refuse("litres", "form-water-out-of-range");
        } else if litres > MUCH {
            let finding = Finding::new("form-water-much", Severity::Caution);
            fields.ask("litres", finding.with("litres", Arg::Count(litres as i64)));
        }
        Some(litres)
    });
    let notes = fields.text("water_notes");
    fields.or((day, Watering { litres, notes }))
}

/// The form as it begins when a watering is corrected.
pub fn typed_watering(day: Day, water: &Watering, units: Units) -> Typed {
    let litres = water.litres.map(|litres| match units {
        Units::Metric => litres,
        Units::UsCustomary => litres / LITRES_PER_GALLON,
    });
    let text = litres.map_or_else(String::new, |n| {
        let text = format!("{n:.1}");
        text.trim_end_matches(".0").to_owned()
    });
    Typed::of([
        ("date", day.to_string()),
        ("litres", text),
        ("water_notes", water.notes.clone()),
    ])
}

/// The watering that a correction form speaks of, as it stands now, with its day.
pub fn watering_of<'e>(history: &'e [Entry], corrects: &str) -> Option<(Day, &'e Watering)> {
    let thread = thread(history, entry_id(corrects)?);
    let last = thread.last()?;
    match &last.body {
        Body::Tended {
            what: Tending::Watered(water),
            ..
        } => Some((last.at.day(), water)),
        _ => None,
    }
}

/// Saves the form of a watering; with `corrects` it takes that watering's place.
pub fn save_watering(
    office: &Office,
    palm: PalmId,
    typed: &Typed,
    units: Units,
) -> Result<(), Stop> {
    drop(standing(&office.state(), palm)?);
    let history = office.history(palm)?;
    let corrects = typed.get("corrects");
    let before = watering_of(&history, corrects);
    if !corrects.is_empty() && before.is_none() {
        return Err(whole("form-corrects-nothing"));
    }
    let (day, mut water) = watering(typed, office.today(), units)?;
    // a form that comes back with the very text it began with keeps the figure it was made from
    if let Some((_, before)) = before
        && typed_watering(day, before, units).get("litres") == typed.get("litres")
    {
        water.litres = before.litres;
    }
    let replaces = entry_id(corrects).and_then(|id| Some(thread(&history, id).last()?.id));
    let note = Note {
        id: None,
        at: moment_of(day, office),
        by: BY.to_owned(),
        body: Body::Tended {
            palm,
            what: Tending::Watered(water),
        },
        replaces,
    };
    once(office, &history, typed, note)
}

/// Takes a watering or a feeding back: it was never given, or to another palm. What is taken back stays so.
pub fn withdraw_tending(office: &Office, palm: PalmId, typed: &Typed) -> Result<(), Stop> {
    let history = office.history(palm)?;
    let last = entry_id(typed.get("corrects")).and_then(|id| thread(&history, id).last().copied());
    match last.map(|entry| (entry.id, &entry.body)) {
        Some((_, Body::Withdrawn { .. })) => Ok(()),
        Some((
            id,
            Body::Tended {
                what: Tending::Watered(_) | Tending::Fed(_),
                ..
            },
        )) => {
            let why = super::hold::why(typed)?;
            record(
                office,
                Body::Withdrawn { why },
                entry_id(typed.get("id")),
                Some(id),
            )
        }
        _ => Err(whole("form-corrects-nothing")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    fn check(pairs: &[(&str, &str)], units: Units) -> Result<(Day, Watering), Vec<Trouble>> {
        watering(&Typed::of(pairs.to_vec()), day("2026-05-01"), units)
    }

    #[test]
    fn water_is_read_in_the_readers_unit_or_the_one_behind_it() {
        // a US liquid gallon is 3.785411784 L: NIST Handbook 44, appendix C (from memory)
        for (text, units, litres) in [
            ("40", Units::Metric, 40.0),
            ("40,5 l", Units::Metric, 40.5),
            ("10", Units::UsCustomary, 37.854_117_84),
            ("10 gal", Units::Metric, 37.854_117_84),
            ("40 L", Units::UsCustomary, 40.0),
            ("1.5 m3", Units::UsCustomary, 1500.0),
        ] {
            let read = read_litres(text, units).unwrap();
            assert!((read - litres).abs() < 1e-9, "{text}: {read}");
        }
        assert_eq!(read_litres("a bucket", Units::Metric), None);
        assert_eq!(read_litres("40 buckets", Units::Metric), None);
    }

    #[test]
    fn what_cannot_be_is_refused_and_what_may_be_meant_is_asked() {
        let wrong = |pairs: &[(&str, &str)]| codes(check(pairs, Units::Metric));
        assert_eq!(
            wrong(&[("date", "2026-06-01")]),
            [("date", "form-date-in-future")]
        );
        assert_eq!(
            wrong(&[("litres", "much")]),
            [("litres", "form-water-not-read")]
        );
        assert_eq!(
            wrong(&[("litres", "0")]),
            [("litres", "form-water-out-of-range")]
        );
        assert_eq!(
            wrong(&[("litres", "6000")]),
            [("litres", "form-water-much")]
        );
        let meant = [("litres", "6000"), ("confirm-form-water-much", "yes")];
        assert_eq!(check(&meant, Units::Metric).unwrap().1.litres, Some(6000.0));
        let (on, water) = check(&[("water_notes", "by the hose")], Units::Metric).unwrap();
        assert_eq!((on, water.litres), (day("2026-05-01"), None));
    }
}
