//! `palmtraits.csv`: figures of species descriptions for nearly every palm there is.
//!
//! Source of every cell: PalmTraits 1.0 [palmtraits-1.0]. The figures are maxima of descriptions, mostly of wild
//! plants: `leaves_max` is not a target (for *Phoenix* it is two to three times too low).

use super::reader::{Flaw, Reader, each_row};
use crate::sourced::{Basis, SourceKey, Sourced};
use crate::species::{Armature, Growth, Habit, Occurs, Range, Species};
use crate::units::Metres;
use std::borrow::Cow;

/// Key of the one source of the table.
pub(super) const SOURCE: &str = "palmtraits-1.0";

/// The columns of the file.
pub(super) const HEADER: [&str; 13] = [
    "species",
    "climbing",
    "acaulescent",
    "erect",
    "solitary",
    "stem_armed",
    "leaves_armed",
    "stem_height_max_m",
    "stem_diameter_max_cm",
    "leaves_max",
    "blade_max_m",
    "rachis_max_m",
    "petiole_max_m",
];

/// The species, sorted by name.
pub(super) fn read(text: &str, flaws: &mut Vec<Flaw>) -> Vec<Species> {
    let mut species = Vec::with_capacity(2_600);
    each_row(text, "palmtraits.csv", HEADER, flaws, |r, cells| {
        species.push(row(r, cells))
    });
    species.sort_by(|a: &Species, b| a.name.cmp(&b.name));
    species
}

fn row(r: &mut Reader<'_>, cells: [&str; 13]) -> Species {
    let [
        name,
        climbing,
        acaulescent,
        erect,
        solitary,
        stem_armed,
        leaves_armed,
        height,
        diameter,
        leaves,
        blade,
        rachis,
        petiole,
    ] = cells;
    let armed = code(r, leaves_armed).map(|c| {
        if c == 0 {
            Armature::Unarmed
        } else {
            Armature::Armed
        }
    });
    let growth = Growth {
        climbing: code(r, climbing).map(|c| OCCURS[c]),
        acaulescent: code(r, acaulescent).map(|c| OCCURS[c]),
        erect: code(r, erect).map(|c| OCCURS[c]),
        stem_armed: code(r, stem_armed).map(|c| c == 1),
    };
    let blade = r.number(blade);
    let mut notes = Vec::new();
    if blade.is_some() {
        notes.push((
            "leaf_length",
            Cow::Borrowed("longest blade described; the petiole may not be in it"),
        ));
    }
    Species {
        name: name.to_owned(),
        habit: code(r, solitary).map(|c| published(HABITS[c])),
        armature: armed.map(published),
        leaf_length: blade.map(metres),
        live_leaves: r.number(leaves).map(|n| published(Range::up_to(n))),
        max_height: r.number(height).map(metres),
        // A stem of no thickness is a plant without one: nothing is known of its trunk.
        trunk_diameter: r
            .number(diameter)
            .filter(|d| *d > 0.0)
            .map(|cm| metres(cm / 100.0)),
        rachis_length: r.number(rachis).map(metres),
        petiole_length: r.number(petiole).map(metres),
        growth: Some(published(growth)),
        notes,
        ..Species::default()
    }
}

// The table's codes: 0 no, 1 yes, 2 both occur; for the stem 0 clustered, 1 solitary.
const HABITS: [Habit; 3] = [Habit::Clustering, Habit::Solitary, Habit::Either];
const OCCURS: [Occurs; 3] = [Occurs::Never, Occurs::Always, Occurs::Sometimes];

fn code(r: &mut Reader<'_>, cell: &str) -> Option<usize> {
    match cell {
        "" => None,
        "0" => Some(0),
        "1" => Some(1),
        "2" => Some(2),
        other => {
            r.flaw("not-a-code", other);
            None
        }
    }
}

fn metres(m: f64) -> Sourced<Metres> {
    published(Metres(m))
}

fn published<T>(value: T) -> Sourced<T> {
    Sourced {
        value,
        basis: Basis::Published,
        sources: vec![SourceKey::fixed(SOURCE)],
    }
}
