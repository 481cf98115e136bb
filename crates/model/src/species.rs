//! What is known of a species.

use crate::sourced::Sourced;
use crate::units::Metres;

/// Solitary or clustering.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Habit {
    /// One stem.
    Solitary,
    /// Several stems from one base.
    Clustering,
    /// Both occur.
    Either,
}

/// Whether dead fronds drop by themselves.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum SelfCleaning {
    /// They drop within days.
    Yes,
    /// Some drop, some hang.
    Partly,
    /// They hang until cut.
    No,
}

/// Shape of the blade.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LeafForm {
    /// Feather.
    Pinnate,
    /// Twice feathered (fishtail).
    Bipinnate,
    /// Fan.
    Palmate,
    /// Fan with a midrib running into the blade.
    Costapalmate,
}

impl LeafForm {
    /// Fan palm (palmate or costapalmate) rather than feather palm.
    pub fn is_fan(self) -> bool {
        matches!(self, LeafForm::Palmate | LeafForm::Costapalmate)
    }
}

/// What is on the petiole.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Armature {
    /// Nothing sharp.
    Unarmed,
    /// Teeth along the margin.
    Teeth,
    /// Spines.
    Spines,
}

/// A closed range of a positive quantity; a single figure has both ends equal.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Range {
    /// Lower end; `None` where the source gives only a maximum.
    pub low: Option<f64>,
    /// Upper end.
    pub high: f64,
}

/// One species as the knowledge tables have it. Absent means unknown.
#[derive(Clone, PartialEq, Debug)]
pub struct Species {
    /// Botanical name, genus and epithet, as the World Checklist spells it.
    pub name: String,
    /// English trade names.
    pub common: Vec<String>,
    /// Other botanical names that resolve to this one.
    pub synonyms: Vec<String>,
    /// Solitary or clustering.
    pub habit: Option<Sourced<Habit>>,
    /// A smooth green shaft of leaf sheaths below the crown.
    pub crownshaft: Option<Sourced<bool>>,
    /// Whether dead fronds drop by themselves.
    pub self_cleaning: Option<Sourced<SelfCleaning>>,
    /// Blade shape.
    pub leaf_form: Option<Sourced<LeafForm>>,
    /// What is on the petiole, and the source's words for it.
    pub armature: Option<Sourced<Armature>>,
    /// The armature in words, e.g. "spines, 5-8 cm".
    pub armature_note: String,
    /// Whole leaf (or, where the source says so, blade) length.
    pub leaf_length: Option<Sourced<Metres>>,
    /// Live fronds in a full, fed crown. `low: None` marks a description's maximum.
    pub live_leaves: Option<Sourced<Range>>,
    /// Fronds produced a year at the reference place.
    pub leaves_per_year: Option<Sourced<Range>>,
    /// Tallest recorded.
    pub max_height: Option<Sourced<Metres>>,
    /// Thickest recorded trunk, m.
    pub trunk_diameter: Option<Sourced<Metres>>,
    /// How to get past the armature, in words.
    pub removal_note: Option<Sourced<String>>,
    /// Susceptible to Fusarium wilt.
    pub fusarium: Option<Sourced<bool>>,
    /// Susceptible to lethal bronzing.
    pub lethal_bronzing: Option<Sourced<bool>>,
    /// Coldest survived, degrees Celsius.
    pub hardiness_c: Option<Sourced<f64>>,
}

impl Species {
    /// First word of the name.
    pub fn genus(&self) -> &str {
        self.name.split(' ').next().unwrap_or("")
    }

    /// The value of an optional sourced field, e.g. `known(&s.crownshaft)`.
    pub fn known<T: Copy>(field: &Option<Sourced<T>>) -> Option<T> {
        field.as_ref().map(|s| s.value)
    }
}
