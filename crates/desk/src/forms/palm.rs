//! The palm form: register a palm or change its description.
//!
//! Fields: `tag`, `species`, `site`, `stems`, `planted_on`, `moved_on`, `last_cleaned_on`, `trunk_height`, `lat`,
//! `lon`, `over`, `wires`, `full_crown`, `fronds_per_year`, `notes`. Empty is unknown. Lengths in the reader's units.

use super::field::{Fields, text_arg};
use super::length::{decimal, write_length};
use super::{Trouble, Typed};
use crate::measure::Units;
use model::{Arg, Day, Finding, Metres, Palm, PalmRecord, Position, Severity, State};

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
    let typed = with_pasted_position(typed);
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
        position: position(&mut fields),
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
        extra: before.map(|b| b.extra.clone()).unwrap_or_default(),
    };
    check_tag(&mut fields, &palm.tag, register);
    check_species(&mut fields, &palm.species, register);
    check_stems(&mut fields, palm.stems, register);
    fields.or(palm)
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

/// A pair pasted from a map into the first field ("27.95, -82.46") counts as both.
fn with_pasted_position(typed: &Typed) -> Typed {
    let mut typed = typed.clone();
    let lat = typed.get("lat").to_owned();
    let pair: Vec<&str> = lat
        .split([',', ';', ' '])
        .filter(|part| !part.is_empty())
        .collect();
    if let [north, east] = pair.as_slice()
        && typed.get("lon").is_empty()
        && north.contains('.')
        && decimal(north).is_some()
        && decimal(east).is_some()
    {
        typed.set("lat", *north);
        typed.set("lon", *east);
    }
    typed
}

fn position(fields: &mut Fields) -> Option<Position> {
    let lat = fields.number("lat", -90.0..=90.0);
    let lon = fields.number("lon", -180.0..=180.0);
    match (fields.some("lat"), fields.some("lon")) {
        (Some(_), None) => fields.refuse("lon", "form-position-half"),
        (None, Some(_)) => fields.refuse("lat", "form-position-half"),
        _ => {}
    }
    Some(Position {
        lat: lat?,
        lon: lon?,
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::{codes, confirm_name};
    use std::sync::Arc;
    use testkit::{Book, day};

    fn nearest(name: &str) -> Option<Vec<String>> {
        match name {
            "Sabal palmetto" | "Phoenix roebelenii" => None,
            "Sabal palmeto" => Some(vec!["Sabal palmetto".into()]),
            _ => Some(vec![]),
        }
    }

    fn recorded(palm: Palm) -> (State, Arc<PalmRecord>) {
        let mut book = Book::new(1);
        let id = book.register(palm);
        let state = book.state();
        let record = state.palm(id).unwrap().clone();
        (state, record)
    }

    fn check_in(
        state: &State,
        changing: Option<&PalmRecord>,
        units: Units,
        pairs: &[(&str, &str)],
    ) -> Result<Palm, Vec<Trouble>> {
        let today = day("2026-05-01");
        palm(
            &Typed::of(pairs.to_vec()),
            &Register {
                state,
                changing,
                today,
                units,
                nearest: &nearest,
            },
        )
    }

    fn check(pairs: &[(&str, &str)]) -> Result<Palm, Vec<Trouble>> {
        check_in(&State::default(), None, Units::Metric, pairs)
    }

    const FULL: [(&str, &str); 15] = [
        ("tag", "B-17"),
        ("species", "Phoenix roebelenii"),
        ("site", "North yard"),
        ("stems", "3"),
        ("planted_on", "2020-02-03"),
        ("moved_on", "2026-03-01"),
        ("last_cleaned_on", "2026-04-01"),
        ("trunk_height", "2.5"),
        ("lat", "27.95"),
        ("lon", "-82.46"),
        ("over", "path"),
        ("wires", "6.1"),
        ("full_crown", "50"),
        ("fronds_per_year", "18.5"),
        ("notes", "leans to the south"),
    ];

    #[test]
    fn a_full_form_becomes_a_palm_and_comes_back_as_it_was_typed() {
        let palm = check(&FULL).unwrap();
        assert_eq!(
            (palm.stems, palm.trunk_height, palm.wires),
            (3, Some(Metres(2.5)), Some(Metres(6.1)))
        );
        assert_eq!(
            palm.position,
            Some(Position {
                lat: 27.95,
                lon: -82.46
            })
        );
        assert_eq!(
            (palm.full_crown, palm.fronds_per_year),
            (Some(50.0), Some(18.5))
        );
        assert_eq!(palm.moved_on, Some(day("2026-03-01")));
        assert_eq!(typed_palm(&palm, Units::Metric), Typed::of(FULL));
    }

    #[test]
    fn what_is_not_typed_stays_unknown() {
        let palm = check(&[("tag", "B1"), ("species", "Sabal palmetto")]).unwrap();
        let bare = Palm {
            tag: "B1".into(),
            species: "Sabal palmetto".into(),
            stems: 1,
            ..Palm::default()
        };
        assert_eq!(palm, bare);
    }

    #[test]
    fn each_slip_is_told_at_its_field() {
        let cases = [
            ("tag", "", "tag", "form-tag-missing"),
            ("tag", "..", "tag", "form-tag-unfit"),
            ("species", "", "species", "form-species-missing"),
            (
                "species",
                "Sabal palmeto",
                "species",
                "form-species-nearest",
            ),
            (
                "species",
                "Palmus ignota",
                "species",
                "form-species-unknown",
            ),
            ("stems", "0", "stems", "form-stems-none"),
            ("stems", "two", "stems", "form-count-not-whole"),
            (
                "planted_on",
                "2026-05-02",
                "planted_on",
                "form-date-in-future",
            ),
            ("moved_on", "03/01/2026", "moved_on", "form-date-not-read"),
            (
                "trunk_height",
                "tall",
                "trunk_height",
                "form-length-not-read",
            ),
            (
                "trunk_height",
                "300",
                "trunk_height",
                "form-length-out-of-range",
            ),
            ("wires", "-1", "wires", "form-length-out-of-range"),
            ("lat", "95", "lat", "form-number-out-of-range"),
            ("lon", "", "lon", "form-position-half"),
            ("lat", "", "lat", "form-position-half"),
            ("full_crown", "0", "full_crown", "form-number-out-of-range"),
            (
                "fronds_per_year",
                "many",
                "fronds_per_year",
                "form-number-not-read",
            ),
        ];
        for (name, value, field, code) in cases {
            let mut typed = FULL;
            typed.iter_mut().find(|(n, _)| *n == name).unwrap().1 = value;
            assert_eq!(codes(check(&typed)), [(field, code)], "{name}={value}");
        }
    }

    #[test]
    fn an_unknown_species_is_taken_once_confirmed() {
        let confirm = confirm_name("form-species-nearest");
        let palm = check(&[
            ("tag", "B1"),
            ("species", "Sabal palmeto"),
            (&confirm, "yes"),
        ])
        .unwrap();
        assert_eq!(palm.species, "Sabal palmeto");
    }

    #[test]
    fn a_tag_is_unique_among_palms_that_still_stand() {
        let mut book = Book::new(1);
        let id = book.register(Palm {
            tag: "B-17".into(),
            ..Palm::default()
        });
        let gone = book.register(Palm {
            tag: "B-18".into(),
            ..Palm::default()
        });
        book.remove(gone, "felled");
        let state = book.state();
        let standing = state.palm(id).unwrap().clone();
        assert_eq!(
            codes(check_in(&state, None, Units::Metric, &FULL)),
            [("tag", "form-tag-taken")]
        );
        assert!(
            check_in(&state, Some(&standing), Units::Metric, &FULL).is_ok(),
            "its own tag"
        );
        let mut other = FULL;
        other[0].1 = "B-18";
        assert!(
            check_in(&state, None, Units::Metric, &other).is_ok(),
            "a removed palm's tag is free again"
        );
    }

    #[test]
    fn feet_do_not_drift_when_a_form_is_saved_unchanged() {
        let palm = Palm {
            tag: "B1".into(),
            species: "Sabal palmetto".into(),
            stems: 1,
            trunk_height: Some(Metres(4.0)),
            ..Palm::default()
        };
        let (state, record) = recorded(palm.clone());
        let typed = typed_palm(&palm, Units::UsCustomary);
        assert_eq!(typed.get("trunk_height"), "13.12");
        let register = |typed: &Typed| {
            let (changing, today) = (Some(&*record), day("2026-05-01"));
            let register = Register {
                state: &state,
                changing,
                today,
                units: Units::UsCustomary,
                nearest: &nearest,
            };
            super::palm(typed, &register)
        };
        assert_eq!(register(&typed), Ok(palm));
        let mut changed = typed.clone();
        changed.set("trunk_height", "14 ft");
        assert_eq!(
            register(&changed).unwrap().trunk_height,
            Some(Metres::from_feet(14.0))
        );
    }

    #[test]
    fn a_pair_from_a_map_fills_both_coordinates() {
        let palm = check(&[
            ("tag", "B1"),
            ("species", "Sabal palmetto"),
            ("lat", "27.9506, -82.4572"),
        ])
        .unwrap();
        assert_eq!(
            palm.position,
            Some(Position {
                lat: 27.9506,
                lon: -82.4572
            })
        );
    }

    #[test]
    fn fewer_stems_than_were_looked_at_is_asked() {
        let mut book = Book::new(1);
        let id = book.register(Palm {
            tag: "B-17".into(),
            stems: 5,
            ..Palm::default()
        });
        book.inspect(id, model::Inspection::blank(5, Day(20_000)));
        let state = book.state();
        let record = state.palm(id);
        assert_eq!(
            codes(check_in(&state, record.map(|r| &**r), Units::Metric, &FULL)),
            [("stems", "form-stems-fewer")]
        );
    }
}
