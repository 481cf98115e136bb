//! The form of a crew: how many, from where, when, what it can do and what it carries.
//!
//! Fields: `crew_name` (a new crew only), `people`, `from_lat`, `from_lon`, `to_lat`, `to_lon`, row `hours_1`, ticks
//! `skill-` and `kit-` with a word behind, `skills_more` and `kit_more` (words with commas between), `room` in the
//! reader's units, `gone`, `notes`. Empty is unknown.

use super::field::Fields;
use super::palm::{position, with_pasted_position};
use super::rows;
use super::site::new_name;
use super::{Trouble, Typed};
use crate::measure::{CUBIC_METRES_PER_YARD, Units};
use model::{CrewWords, Finding, Knowledge, Severity};
use std::hash::{DefaultHasher, Hash, Hasher};

/// What a crew may be trained or licensed for, and what palms may ask of it: working from a lift, climbing without
/// spikes, spraying under a licence, rigging and crane work.
pub const SKILLS: [&str; 4] = ["lift", "climb", "spray", "rigging"];
/// More people are no crew.
const MOST_PEOPLE: u32 = 1000;
/// More room than this no vehicle has, m³; as in the office.
const MOST_ROOM: f64 = 1000.0;

/// What a crew may carry: keys of the tool table.
pub fn kit_words() -> impl Iterator<Item = &'static str> {
    Knowledge::embedded()
        .tools
        .iter()
        .map(|row| row.key.as_str())
}

/// What the form is checked against.
pub struct AtCrew<'a> {
    /// The name of the crew that is described; `None`: a new one, the form names it.
    pub name: Option<&'a str>,
    /// How it is described so far.
    pub before: Option<&'a CrewWords>,
    /// Whether a crew of this name is described already.
    pub taken: &'a dyn Fn(&str) -> bool,
    /// The reader's units.
    pub units: Units,
}

/// Checks the form. Columns of an imported row that the form does not show are kept.
pub fn crew(typed: &Typed, at: &AtCrew) -> Result<CrewWords, Vec<Trouble>> {
    let typed = with_pasted_position(typed, "from_lat", "from_lon");
    let typed = with_pasted_position(&typed, "to_lat", "to_lon");
    let mut fields = Fields::of(&typed);
    let name = match at.name {
        Some(name) => name.to_owned(),
        None => new_name(&mut fields, "crew_name", at.taken),
    };
    let people = fields.count("people", MOST_PEOPLE);
    if people == Some(0) {
        fields.refuse("people", "form-crew-nobody");
    }
    let hours = rows::hours(&mut fields, &typed, &rows::HOURS[..1]);
    let crew = CrewWords {
        name,
        people,
        from: position(&mut fields, "from_lat", "from_lon"),
        to: position(&mut fields, "to_lat", "to_lon"),
        hours: hours.into_iter().next(),
        skills: chosen(&typed, "skill-", SKILLS.into_iter(), "skills_more"),
        kit: chosen(&typed, "kit-", kit_words(), "kit_more"),
        room_m3: room(&mut fields, at),
        gone: !typed.get("gone").is_empty(),
        notes: fields.text("notes"),
        extra: at.before.map(|b| b.extra.clone()).unwrap_or_default(),
    };
    if let (Some(seen), Some(before)) = (fields.some("seen"), at.before)
        && seen != crew_mark(before)
        && crew != *before
    {
        fields.ask(
            "people",
            Finding::new("form-described-meanwhile", Severity::Caution),
        );
    }
    fields.or(crew)
}

/// Ticked words in their order, then others that were typed, each once.
fn chosen(
    typed: &Typed,
    ticks: &str,
    known: impl Iterator<Item = &'static str>,
    more: &str,
) -> Vec<String> {
    let mut named: Vec<&str> = known
        .filter(|word| !typed.get(&format!("{ticks}{word}")).is_empty())
        .collect();
    named.extend(typed.get(more).split([',', ';', '\n']).map(str::trim));
    let mut words: Vec<String> = Vec::new();
    for word in named.into_iter().filter(|word| !word.is_empty()) {
        if !words.iter().any(|known| known == word) {
            words.push(word.to_owned());
        }
    }
    words
}

/// Room for debris; text left as the form showed it keeps the stored value, so that yards and metres do not drift.
fn room(fields: &mut Fields, at: &AtCrew) -> Option<f64> {
    let unit = unit(at.units);
    let read = fields.number("room", 0.0..=(MOST_ROOM / unit).floor());
    let before = at.before.and_then(|b| b.room_m3);
    before
        .filter(|m3| fields.some("room") == Some(write_room(*m3, at.units).as_str()))
        .or(read.map(|number| number * unit))
}

fn unit(units: Units) -> f64 {
    match units {
        Units::Metric => 1.0,
        Units::UsCustomary => CUBIC_METRES_PER_YARD,
    }
}

fn write_room(m3: f64, units: Units) -> String {
    let text = format!("{:.2}", m3 / unit(units));
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A mark of a description, for the hidden field `seen`.
fn crew_mark(crew: &CrewWords) -> String {
    let mut hasher = DefaultHasher::new();
    format!("{crew:?}").hash(&mut hasher);
    format!("{:016x}", hasher.finish())
}

/// What the form shows of a crew.
pub fn typed_crew(crew: &CrewWords, units: Units) -> Typed {
    let number = |number: Option<f64>| number.map_or(String::new(), |n| n.to_string());
    let mut typed = Typed::of([
        ("crew_name", crew.name.clone()),
        (
            "people",
            crew.people.map_or(String::new(), |n| n.to_string()),
        ),
        ("from_lat", number(crew.from.map(|p| p.lat))),
        ("from_lon", number(crew.from.map(|p| p.lon))),
        ("to_lat", number(crew.to.map(|p| p.lat))),
        ("to_lon", number(crew.to.map(|p| p.lon))),
        (
            "room",
            crew.room_m3
                .map_or(String::new(), |m3| write_room(m3, units)),
        ),
        ("gone", if crew.gone { "yes" } else { "" }.to_owned()),
        ("notes", crew.notes.clone()),
        ("seen", crew_mark(crew)),
    ]);
    rows::type_hours(&mut typed, crew.hours.as_slice());
    tick(&mut typed, "skill-", &SKILLS, "skills_more", &crew.skills);
    let kit: Vec<&str> = kit_words().collect();
    tick(&mut typed, "kit-", &kit, "kit_more", &crew.kit);
    typed
}

fn tick(typed: &mut Typed, ticks: &str, known: &[&str], more: &str, words: &[String]) {
    let (own, others): (Vec<&str>, Vec<&str>) = words
        .iter()
        .map(String::as_str)
        .partition(|word| known.contains(word));
    for word in own {
        typed.set(&format!("{ticks}{word}"), "yes");
    }
    typed.set(more, others.join(", "));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;
    use model::{Hours, Position};

    fn check(pairs: &[(&str, &str)], units: Units) -> Result<CrewWords, Vec<Trouble>> {
        let at = AtCrew {
            name: None,
            before: None,
            taken: &|name| name == "A",
            units,
        };
        crew(&Typed::of(pairs.to_vec()), &at)
    }

    #[test]
    fn what_the_form_shows_is_read_back() {
        let before = CrewWords {
            name: "B".into(),
            people: Some(3),
            from: Some(Position {
                lat: 25.5,
                lon: -80.25,
            }),
            to: Some(Position {
                lat: 25.75,
                lon: -80.5,
            }),
            hours: Some(Hours {
                from: 21_600,
                to: 52_200,
            }),
            skills: vec!["lift".into(), "spray".into(), "first aid".into()],
            kit: vec!["pole-saw".into(), "cones".into()],
            room_m3: Some(14.0),
            gone: true,
            notes: "till May".into(),
            extra: [("plate".to_owned(), "QM 12".to_owned())].into(),
        };
        for units in [Units::Metric, Units::UsCustomary] {
            let at = AtCrew {
                name: Some("B"),
                before: Some(&before),
                taken: &|_| true,
                units,
            };
            assert_eq!(crew(&typed_crew(&before, units), &at), Ok(before.clone()));
        }
    }

    #[test]
    fn room_is_read_in_the_readers_units() {
        let of = |units| {
            check(&[("crew_name", "B"), ("room", "10")], units)
                .unwrap()
                .room_m3
        };
        assert_eq!(of(Units::Metric), Some(10.0));
        // a yard is 0.9144 m exactly (international yard and pound agreement of 1959), cubed 0.764554857984 m³
        assert!((of(Units::UsCustomary).unwrap() - 7.645_548_579_84).abs() < 1e-9);
    }

    #[test]
    fn what_cannot_be_is_said_at_its_field() {
        let wrong = |pairs: &[(&str, &str)]| codes(check(pairs, Units::Metric));
        assert_eq!(wrong(&[]), [("crew_name", "form-name-missing")]);
        assert_eq!(
            wrong(&[("crew_name", "A")]),
            [("crew_name", "form-name-taken")]
        );
        assert_eq!(
            wrong(&[("crew_name", "B"), ("people", "0")]),
            [("people", "form-crew-nobody")]
        );
        assert_eq!(
            wrong(&[("crew_name", "B"), ("room", "5000")]),
            [("room", "form-number-out-of-range")]
        );
        assert_eq!(
            wrong(&[("crew_name", "B"), ("to_lon", "5")]),
            [("to_lat", "form-position-half")]
        );
        let pasted = check(
            &[("crew_name", "B"), ("from_lat", "25.5, -80.5")],
            Units::Metric,
        );
        assert_eq!(
            pasted.unwrap().from,
            Some(Position {
                lat: 25.5,
                lon: -80.5
            })
        );
    }
}
