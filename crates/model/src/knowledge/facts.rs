//! `species.csv`: one line a fact, each with its sources; it lies over the line of the trait table.
//!
//! A fact `unknown` takes the trait table's figure away (used where that figure cannot be right).

use super::origin::{Origin, SourceIndex};
use super::reader::{Flaw, Reader, each_row, list};
use super::rows::{Genus, range};
use crate::sourced::Sourced;
use crate::species::{Armature, Habit, LeafForm, SelfCleaning, Species};
use crate::units::Metres;
use std::borrow::Cow;

/// The columns of the file.
pub(super) const HEADER: [&str; 5] = ["species", "fact", "value", "sources", "note"];

/// Lays the facts over the species. A species the trait table lacks is added.
pub(super) fn merge(
    text: &str,
    index: &SourceIndex,
    species: &mut Vec<Species>,
    flaws: &mut Vec<Flaw>,
) {
    each_row(
        text,
        "species.csv",
        HEADER,
        flaws,
        |r, [name, fact, value, sources, note]| {
            let at = species
                .binary_search_by(|s| s.name.as_str().cmp(name))
                .unwrap_or_else(|at| {
                    species.insert(at, Species::named(name));
                    at
                });
            let one = &mut species[at];
            let origin = if value == "unknown" {
                None
            } else {
                index.origin(r, sources)
            };
            if value != "unknown" && origin.is_none() {
                return;
            }
            one.detailed |= origin.is_some();
            set(r, one, fact, value, origin.as_ref());
            remark(one, fact, note);
        },
    );
}

/// Puts one fact in its place; `None` for the origin means that the value is unknown.
fn set(r: &mut Reader<'_>, s: &mut Species, fact: &str, value: &str, origin: Option<&Origin>) {
    let known = origin.is_some();
    match fact {
        "common" => s.common = if known { list(value) } else { Vec::new() },
        "habit" => s.habit = origin.and_then(|o| Some(o.of(habit(r, value)?))),
        "crownshaft" => s.crownshaft = origin.and_then(|o| Some(o.of(yes_no(r, value)?))),
        "self_cleaning" => {
            s.self_cleaning = origin.and_then(|o| Some(o.of(self_cleaning(r, value)?)))
        }
        "leaf_form" => s.leaf_form = origin.and_then(|o| Some(o.of(leaf_form(r, value)?))),
        "armature" => s.armature = origin.and_then(|o| Some(o.of(armature(r, value)?))),
        "leaf_length_m" => s.leaf_length = metres(r, value, origin),
        "live_leaves" => {
            s.live_leaves =
                origin.and_then(|o| Some(o.of(r.or_flaw(range(value), "not-a-range", value)?)))
        }
        "leaves_per_year" => {
            s.leaves_per_year =
                origin.and_then(|o| Some(o.of(r.or_flaw(range(value), "not-a-range", value)?)));
        }
        "max_height_m" => s.max_height = metres(r, value, origin),
        "trunk_diameter_m" => s.trunk_diameter = metres(r, value, origin),
        "removal" => s.removal_note = origin.map(|o| o.of(value.to_owned())),
        "fusarium" => s.fusarium = origin.and_then(|o| Some(o.of(yes_no(r, value)?))),
        "lethal_bronzing" => s.lethal_bronzing = origin.and_then(|o| Some(o.of(yes_no(r, value)?))),
        "hardiness_c" => s.hardiness_c = origin.and_then(|o| Some(o.of(r.number(value)?))),
        other => r.flaw("unknown-fact", other),
    }
}

fn metres(r: &mut Reader<'_>, value: &str, origin: Option<&Origin>) -> Option<Sourced<Metres>> {
    origin.and_then(|o| Some(o.of(Metres(r.number(value)?))))
}

/// Facts as the file calls them, and the field of a species that a remark on them belongs to.
const FIELDS: [(&str, &str); 14] = [
    ("common", "common"),
    ("habit", "habit"),
    ("crownshaft", "crownshaft"),
    ("self_cleaning", "self_cleaning"),
    ("leaf_form", "leaf_form"),
    ("leaf_length_m", "leaf_length"),
    ("live_leaves", "live_leaves"),
    ("leaves_per_year", "leaves_per_year"),
    ("max_height_m", "max_height"),
    ("trunk_diameter_m", "trunk_diameter"),
    ("removal", "removal_note"),
    ("fusarium", "fusarium"),
    ("lethal_bronzing", "lethal_bronzing"),
    ("hardiness_c", "hardiness_c"),
];

/// A remark belongs to the value beside it: a new value drops the old remark.
fn remark(s: &mut Species, fact: &str, note: &str) {
    if fact == "armature" {
        s.armature_note = note.to_owned();
        return;
    }
    let Some((_, field)) = FIELDS.iter().find(|(written, _)| *written == fact) else {
        return;
    };
    s.notes.retain(|(f, _)| f != field);
    if !note.is_empty() {
        s.notes.push((*field, Cow::Owned(note.to_owned())));
    }
}

/// Where a species says nothing of leaf form and crownshaft, what is recalled of its genus stands in.
pub(super) fn fill_from_genera(species: &mut [Species], genera: &[Genus]) {
    for s in species {
        let Ok(at) = genera.binary_search_by(|g| g.name.as_str().cmp(s.genus())) else {
            continue;
        };
        let genus = &genera[at];
        let said = "of the genus, from memory";
        if s.leaf_form.is_none() && genus.leaf_form.is_some() {
            s.leaf_form.clone_from(&genus.leaf_form);
            let note = if genus.note.is_empty() {
                Cow::Borrowed(said)
            } else {
                format!("{said}; {}", genus.note).into()
            };
            s.notes.push(("leaf_form", note));
        }
        // A row worked through by hand that is silent about the crownshaft means it: left unknown.
        if !s.detailed && s.crownshaft.is_none() && genus.crownshaft.is_some() {
            s.crownshaft.clone_from(&genus.crownshaft);
            s.notes.push(("crownshaft", Cow::Borrowed(said)));
        }
    }
}

/// A word, or `unknown`.
fn word<T: Copy>(r: &mut Reader<'_>, cell: &str, words: &[(T, &str)]) -> Option<T> {
    if cell == "unknown" {
        return None;
    }
    r.word(words, cell)
}

/// `yes`, `no` or `unknown`.
pub(super) fn yes_no(r: &mut Reader<'_>, cell: &str) -> Option<bool> {
    word(r, cell, &[(true, "yes"), (false, "no")])
}

/// A leaf form or `unknown`.
pub(super) fn leaf_form(r: &mut Reader<'_>, cell: &str) -> Option<LeafForm> {
    use LeafForm::{Bipinnate, Costapalmate, Palmate, Pinnate};
    let words = [
        (Pinnate, "pinnate"),
        (Bipinnate, "bipinnate"),
        (Palmate, "palmate"),
        (Costapalmate, "costapalmate"),
    ];
    word(r, cell, &words)
}

fn habit(r: &mut Reader<'_>, cell: &str) -> Option<Habit> {
    word(
        r,
        cell,
        &[
            (Habit::Solitary, "solitary"),
            (Habit::Clustering, "clustering"),
            (Habit::Either, "either"),
        ],
    )
}

fn self_cleaning(r: &mut Reader<'_>, cell: &str) -> Option<SelfCleaning> {
    word(
        r,
        cell,
        &[
            (SelfCleaning::Yes, "yes"),
            (SelfCleaning::Partly, "partly"),
            (SelfCleaning::No, "no"),
        ],
    )
}

fn armature(r: &mut Reader<'_>, cell: &str) -> Option<Armature> {
    use Armature::{Armed, Spines, Teeth, Unarmed};
    word(
        r,
        cell,
        &[
            (Unarmed, "unarmed"),
            (Armed, "armed"),
            (Teeth, "teeth"),
            (Spines, "spines"),
        ],
    )
}
