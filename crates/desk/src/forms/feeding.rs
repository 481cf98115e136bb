//! The form of a feeding.
//!
//! Fields: `date` (empty: today), `product` (a key of the product table) or `product_own` (the keeper's own words, with
//! the figures on the bag), `mass` (a bare number is in kilograms or pounds), `fed_area` (square metres or square feet),
//! `against` (a key of the disorders; empty: maintenance), `feed_notes`; `corrects` names the entry it stands in for.

use super::field::{Fields, text_arg};
use super::length::decimal;
use super::save::{BY, entry_id, moment_of, once, standing, whole};
use super::thread::thread;
use super::{Stop, Trouble, Typed};
use crate::feeding::{self, Fed};
use crate::measure::{KILOGRAMS_PER_POUND, SQUARE_METRES_PER_FOOT, Units};
use crate::office::{Note, Office};
use model::{Body, Day, Entry, Feeding, Finding, Knowledge, PalmId, Severity, Tending};

/// Nobody feeds one palm more at a time, g.
const MOST_GRAMS: f64 = 1_000_000.0;
/// No palm is fed over a larger ground, m².
const MOST_AREA: f64 = 10_000.0;

/// Reads a mass in grams: a bare number is in kilograms or, for US readers, pounds; a unit written behind it wins
/// (`0.7`, `700 g`, `1.5 lb`, `8 oz`); `None` if it cannot be read.
pub fn read_grams(text: &str, units: Units) -> Option<f64> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-')));
    let (number, unit) = text.split_at(end.unwrap_or(text.len()));
    let pound = KILOGRAMS_PER_POUND * 1000.0;
    let factor = match unit.trim().to_lowercase().as_str() {
        "" if units == Units::UsCustomary => pound,
        "" | "kg" | "kilo" | "kilos" => 1000.0,
        "g" => 1.0,
        "lb" | "lbs" | "lb." | "pound" | "pounds" | "libra" | "libras" => pound,
        "oz" | "oz." | "ounce" | "ounces" | "onza" | "onzas" => pound / 16.0,
        _ => return None,
    };
    Some(decimal(number)? * factor)
}

/// Checks the form: the day and the feeding. `fed` tells what stands against it.
pub fn fed(
    typed: &Typed,
    today: Day,
    units: Units,
    palm: &Fed,
) -> Result<(Day, Feeding), Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let day = fields.past_day("date", today).unwrap_or(today);
    let product = product(&mut fields);
    let grams = fields.some("mass").and_then(|text| {
        let grams = read_grams(text, units);
        match grams {
            Some(grams) if grams > 0.0 && grams <= MOST_GRAMS => {}
            Some(_) => fields.refuse("mass", "form-feed-mass-range"),
            None => {
                let finding = Finding::new("form-feed-mass-not-read", Severity::Refuse);
                fields.add("mass", finding.with("found", text_arg(text)));
            }
        }
        grams
    });
    let area = fields
        .number("fed_area", 0.1..=MOST_AREA)
        .map(|n| match units {
            Units::Metric => n,
            Units::UsCustomary => n * SQUARE_METRES_PER_FOOT,
        });
    let against = fields.text("against");
    if !against.is_empty() && Knowledge::embedded().disorder(&against).is_none() {
        fields.refuse("against", "form-feed-against");
    }
    // what happened is noted, after a word
    for finding in palm.against(day, &product, &against, typed.get("corrects")) {
        let asked = Finding {
            severity: Severity::Caution,
            ..finding
        };
        fields.ask("product", asked);
    }
    let notes = fields.text("feed_notes");
    fields.or((
        day,
        Feeding {
            product,
            grams,
            area_m2: area,
            against,
            notes,
        },
    ))
}

fn product(fields: &mut Fields) -> String {
    let chosen = fields.text("product");
    let own = fields.text("product_own");
    if !chosen.is_empty() && Knowledge::embedded().product(&chosen).is_none() {
        fields.refuse("product", "form-feed-product");
    }
    match (chosen.is_empty(), own.is_empty()) {
        (true, true) => fields.refuse("product", "form-feed-no-product"),
        (false, false) => fields.refuse("product_own", "form-feed-two-products"),
        _ => {}
    }
    if chosen.is_empty() { own } else { chosen }
}

/// The form as it begins when a feeding is corrected.
pub fn typed_fed(day: Day, fed: &Feeding, units: Units) -> Typed {
    let known = Knowledge::embedded().product(&fed.product).is_some();
    let plain = |n: f64| {
        let text = format!("{n:.3}");
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    };
    let mass = fed.grams.map(|grams| match units {
        Units::Metric => plain(grams / 1000.0),
        Units::UsCustomary => plain(grams / 1000.0 / KILOGRAMS_PER_POUND),
    });
    let area = fed.area_m2.map(|m2| match units {
        Units::Metric => plain(m2),
        Units::UsCustomary => plain(m2 / SQUARE_METRES_PER_FOOT),
    });
    let (key, own) = if known {
        (fed.product.clone(), String::new())
    } else {
        (String::new(), fed.product.clone())
    };
    Typed::of([
        ("date", day.to_string()),
        ("product", key),
        ("product_own", own),
        ("mass", mass.unwrap_or_default()),
        ("fed_area", area.unwrap_or_default()),
        ("against", fed.against.clone()),
        ("feed_notes", fed.notes.clone()),
    ])
}

/// The feeding that a correction form speaks of, as it stands now, with its day.
pub fn fed_of<'e>(history: &'e [Entry], corrects: &str) -> Option<(Day, &'e Feeding)> {
    let thread = thread(history, entry_id(corrects)?);
    let last = thread.last()?;
    match &last.body {
        Body::Tended {
            what: Tending::Fed(fed),
            ..
        } => Some((last.at.day(), fed)),
        _ => None,
    }
}

/// Saves the form of a feeding; with `corrects` it takes that feeding's place.
pub fn save_fed(office: &Office, palm: PalmId, typed: &Typed, units: Units) -> Result<(), Stop> {
    let record = standing(&office.state(), palm)?;
    let history = office.history(palm)?;
    let corrects = typed.get("corrects");
    let before = fed_of(&history, corrects);
    if !corrects.is_empty() && before.is_none() {
        return Err(whole("form-corrects-nothing"));
    }
    let known = feeding::of(office, &record, &[]).ok_or(Stop::NoPalm)?;
    // a form sent twice must not be held against itself
    let sent = typed.get("id");
    let resent = known.noted.iter().any(|own| own.entry == sent);
    let mut checked = typed.clone();
    if resent && corrects.is_empty() {
        checked.set("corrects", sent);
    }
    let (day, mut what) = fed(&checked, office.today(), units, &known)?;
    // a form that comes back with the very text it began with keeps the figure it was made from
    if let Some((day, before)) = before {
        let was = typed_fed(day, before, units);
        if was.get("mass") == typed.get("mass") {
            what.grams = before.grams;
        }
        if was.get("fed_area") == typed.get("fed_area") {
            what.area_m2 = before.area_m2;
        }
    }
    let replaces = entry_id(corrects).and_then(|id| Some(thread(&history, id).last()?.id));
    let note = Note {
        id: None,
        at: moment_of(day, office),
        by: BY.to_owned(),
        body: Body::Tended {
            palm,
            what: Tending::Fed(what),
        },
        replaces,
    };
    once(office, &history, typed, note)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mass_is_read_in_the_readers_unit_or_the_one_behind_it() {
        // an avoirdupois pound is 453.59237 g, 16 ounces (NIST Handbook 44, appendix C; from memory)
        for (text, units, grams) in [
            ("0.7", Units::Metric, 700.0),
            ("700 g", Units::UsCustomary, 700.0),
            ("1,5 lb", Units::Metric, 680.388_555),
            ("2", Units::UsCustomary, 907.184_74),
            ("8 oz", Units::Metric, 226.796_185),
        ] {
            let read = read_grams(text, units).unwrap();
            assert!((read - grams).abs() < 1e-9, "{text}: {read}");
        }
        assert_eq!(read_grams("a bag", Units::Metric), None);
    }

    #[test]
    fn a_form_that_comes_back_says_what_was_noted() {
        let feeding = Feeding {
            product: "Yard blend 12-4-8".to_owned(),
            grams: Some(1360.0),
            area_m2: Some(18.6),
            against: "k-deficiency".to_owned(),
            notes: "raked in".to_owned(),
        };
        let typed = typed_fed(Day::parse("2026-05-01").unwrap(), &feeding, Units::Metric);
        assert_eq!(typed.get("product"), "");
        assert_eq!(typed.get("product_own"), "Yard blend 12-4-8");
        assert_eq!((typed.get("mass"), typed.get("fed_area")), ("1.36", "18.6"));
    }
}
