//! The palm form: register a palm or change its description.
//!
//! Fields: `tag`, `species`, `site`, `stems`, `planted_on`, `moved_on`, `last_cleaned_on`, `trunk_height`,
//! `crown_across`, `lat`, `lon`, `over`, `wires`, `full_crown`, `fronds_per_year`, `notes`. Empty is unknown. Lengths in the reader's units.

use super::field::{Fields, text_arg};
use super::length::{decimal, write_length};
use super::{Trouble, Typed};
use crate::measure::Units;
use crate::watering::{CROWN_ACROSS, WIDEST_CROWN, crown_across};
use model::{Arg, Day, Finding, Metres, Palm, PalmRecord, Position, Severity, State};
use std::collections::BTreeMap;
use std::hash::{DefaultHasher, Hash, Hasher};

/// No palm is taller (the tallest measured wax palms are near 60 m; from memory); beyond it is a slip.
const MOST_HEIGHT: Metres = Metres(80.0);
/// A wire further off than this is none.
const MOST_WIRES: Metres = Metres(10_000.0);
/// More stems than this are not counted one by one (assumed).
const MOST_STEMS: u32 = 200;

/// What the form is checked against.
pub struct Register<'a> {
    /// The register.
    pub state: &'a State,
    /// The palm being changed; `None` when a new one is registered.
    pub changing: Option<&'a PalmRecord>,
    /// Nothing on record is later than this.
    pub today: Day,
    /// The reader's units.
    pub units: Units,
    /// The nearest known botanical names to an unknown one, best first; `None` if the name is known.
    pub nearest: &'a dyn Fn(&str) -> Option<Vec<String>>,
}

/// Checks a palm form. Columns of an imported row that the form does not show are kept on change.
pub fn palm(typed: &Typed, register: &Register) -> Result<Palm, Vec<Trouble>> {
    let typed = with_pasted_position(typed, "lat", "lon");
    let mut fields = Fields::of(&typed);
    let before = register.changing.map(|record| &record.palm);
    let palm = Palm {
        tag: fields.text("tag"),
        species: fields.text("species"),
        site: fields.text("site"),
        stems: fields
            .count("stems", MOST_STEMS)
            .map_or(1, |stems| stems as u16),
        planted_on: fields.past_day("planted_on", register.today),
        moved_on: fields.past_day("moved_on", register.today),
        last_cleaned_on: fields.past_day("last_cleaned_on", register.today),
        trunk_height: length(
            &mut fields,
            "trunk_height",
            register,
            before.and_then(|b| b.trunk_height),
            MOST_HEIGHT,
        ),
        position: position(&mut fields, "lat", "lon"),
        over: fields.text("over"),
        wires: length(
            &mut fields,
            "wires",
            register,
            before.and_then(|b| b.wires),
            MOST_WIRES,
        ),
        full_crown: fields.number("full_crown", 1.0..=1000.0),
        fronds_per_year: fields.number("fronds_per_year", 0.1..=1000.0),
        notes: fields.text("notes"),
        extra: extra(&mut fields, register),
    };
    check_tag(&mut fields, &palm.tag, register);
    check_species(&mut fields, &palm.species, register);
    check_stems(&mut fields, palm.stems, register);
    check_meanwhile(&mut fields, &palm, register);
    fields.or(palm)
}

/// A mark of a description, for the hidden field `seen`: it tells whether a palm was changed while its form was open
/// (or lay in a pocket without signal).
pub fn seen_mark(palm: &Palm) -> String {
    let mut hasher = DefaultHasher::new();
    format!("{palm:?}").hash(&mut hasher);
    format!("{:016x}", hasher.finish())
}

/// The form filled with a palm's description.
pub fn typed_palm(palm: &Palm, units: Units) -> Typed {
    let day = |day: Option<Day>| day.map_or(String::new(), |d| d.to_string());
    let length = |length: Option<Metres>| length.map_or(String::new(), |m| write_length(m, units));
    let number = |number: Option<f64>| number.map_or(String::new(), |n| n.to_string());
    Typed::of([
        ("tag", palm.tag.clone()),
        ("species", palm.species.clone()),
        ("site", palm.site.clone()),
        ("stems", palm.stems.to_string()),
        ("planted_on", day(palm.planted_on)),
        ("moved_on", day(palm.moved_on)),
        ("last_cleaned_on", day(palm.last_cleaned_on)),
        ("trunk_height", length(palm.trunk_height)),
        ("crown_across", length(crown_across(palm))),
        ("lat", number(palm.position.map(|p| p.lat))),
        ("lon", number(palm.position.map(|p| p.lon))),
        ("over", palm.over.clone()),
        ("wires", length(palm.wires)),
        ("full_crown", number(palm.full_crown)),
        ("fronds_per_year", number(palm.fronds_per_year)),
        ("notes", palm.notes.clone()),
    ])
}

/// A length; text left as the form showed it keeps the stored value, so that feet and metres do not drift.
fn length(
    fields: &mut Fields,
    name: &'static str,
    register: &Register,
    before: Option<Metres>,
    most: Metres,
) -> Option<Metres> {
    let read = fields.length(name, register.units, most);
    before
        .filter(|b| fields.some(name) == Some(write_length(*b, register.units).as_str()))
        .or(read)
}

/// Columns that the form does not show are kept; across the crown is shown, and kept where `palms.csv` has it.
fn extra(fields: &mut Fields, register: &Register) -> BTreeMap<String, String> {
    let before = register.changing.map(|record| &record.palm);
    let mut extra = before.map(|b| b.extra.clone()).unwrap_or_default();
    let was = before.and_then(crown_across);
    let across = length(fields, "crown_across", register, was, WIDEST_CROWN);
    match across {
        Some(across) if across.0 <= 0.0 => fields.refuse("crown_across", "form-crown-no-size"),
        Some(across) if Some(across) == was => {}
        Some(across) => {
            let text = format!("{:.2}", across.0);
            let text = text.trim_end_matches('0').trim_end_matches('.').to_owned();
            extra.insert(CROWN_ACROSS.to_owned(), text);
        }
        None => drop(extra.remove(CROWN_ACROSS)),
    }
    extra
}

/// A pair pasted from a map into the first field ("27.95, -82.46") counts as both.
pub(super) fn with_pasted_position(typed: &Typed, lat: &str, lon: &str) -> Typed {
    let mut typed = typed.clone();
    let pasted = typed.get(lat).to_owned();
    let pair: Vec<&str> = pasted
        .split([',', ';', ' '])
        .filter(|part| !part.is_empty())
        .collect();
    if let [north, east] = pair.as_slice()
        && typed.get(lon).is_empty()
        && north.contains('.')
        && decimal(north).is_some()
        && decimal(east).is_some()
    {
        typed.set(lat, *north);
        typed.set(lon, *east);
    }
    typed
}

/// Degrees in two fields; one without the other is refused.
pub(super) fn position(
    fields: &mut Fields,
    lat: &'static str,
    lon: &'static str,
) -> Option<Position> {
    let north = fields.number(lat, -90.0..=90.0);
    let east = fields.number(lon, -180.0..=180.0);
    match (fields.some(lat), fields.some(lon)) {
        (Some(_), None) => fields.refuse(lon, "form-position-half"),
        (None, Some(_)) => fields.refuse(lat, "form-position-half"),
        _ => {}
    }
    Some(Position {
        lat: north?,
        lon: east?,
    })
}

fn check_tag(fields: &mut Fields, tag: &str, register: &Register) {
    if tag.is_empty() {
        return fields.refuse("tag", "form-tag-missing");
    }
    // "." and ".." would be swallowed by the address line of a browser
    if tag.chars().count() > 64 || tag.chars().any(char::is_control) || tag == "." || tag == ".." {
        return fields.refuse("tag", "form-tag-unfit");
    }
    let own = register.changing.map(|record| record.id);
    if register
        .state
        .by_tag(tag)
        .is_some_and(|taken| Some(taken.id) != own)
    {
        fields.add(
            "tag",
            Finding::new("form-tag-taken", Severity::Refuse).with("tag", text_arg(tag)),
        );
    }
}

fn check_species(fields: &mut Fields, species: &str, register: &Register) {
    if species.is_empty() {
        return fields.refuse("species", "form-species-missing");
    }
    // a name that was on the register before need not be confirmed again
    if register
        .changing
        .is_some_and(|record| record.palm.species == species)
    {
        return;
    }
    let Some(nearest) = (register.nearest)(species) else {
        return;
    };
    let finding = match nearest.is_empty() {
        true => Finding::new("form-species-unknown", Severity::Caution),
        false => Finding::new("form-species-nearest", Severity::Caution)
            .with("nearest", Arg::Text(nearest.join(", "))),
    };
    fields.ask("species", finding.with("found", text_arg(species)));
}

fn check_stems(fields: &mut Fields, stems: u16, register: &Register) {
    if stems == 0 {
        return fields.refuse("stems", "form-stems-none");
    }
    let looked_at = register
        .changing
        .and_then(|record| record.inspections.iter().map(|i| i.stem).max());
    if let Some(stem) = looked_at.filter(|stem| *stem > stems) {
        let finding = Finding::new("form-stems-fewer", Severity::Caution);
        fields.ask("stems", finding.with("stem", Arg::Count(i64::from(stem))));
    }
}

/// What others wrote since the form was opened is not overwritten without a word.
fn check_meanwhile(fields: &mut Fields, palm: &Palm, register: &Register) {
    let (Some(seen), Some(record)) = (fields.some("seen"), register.changing) else {
        return;
    };
    if seen != seen_mark(&record.palm) && *palm != record.palm {
        fields.ask(
            "tag",
            Finding::new("form-changed-meanwhile", Severity::Caution),
        );
    }
}

#[cfg(test)]
mod tests;
