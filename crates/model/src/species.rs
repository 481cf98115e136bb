//! What is known of a species.

use crate::sourced::Sourced;
use crate::units::Metres;
use std::borrow::Cow;

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

/// How often a trait is met within a species.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Occurs {
    /// Not in this species.
    Never,
    /// In some plants of it.
    Sometimes,
    /// In all of it.
    Always,
}

/// How a species grows. Absent means unknown.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Growth {
    /// Climbs with the help of other plants.
    pub climbing: Option<Occurs>,
    /// No stem shows above ground.
    pub acaulescent: Option<Occurs>,
    /// The stem stands upright.
    pub erect: Option<Occurs>,
    /// Spines on the stem.
    pub stem_armed: Option<bool>,
}

/// What is sharp where hands go: on the petiole, at the leaf base or in the sheath.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Armature {
    /// Nothing sharp.
    Unarmed,
    /// Something sharp; the source does not say what. Handle as spines.
    Armed,
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

impl Range {
    /// A range with both ends known.
    pub fn between(low: f64, high: f64) -> Range {
        Range {
            low: Some(low),
            high,
        }
    }

    /// Only a maximum is known.
    pub fn up_to(high: f64) -> Range {
        Range { low: None, high }
    }
}

/// One species as the knowledge tables have it. Absent means unknown.
#[derive(Clone, PartialEq, Debug, Default)]
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
    /// What is sharp where hands go.
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
    /// Coldest survived, degrees Celsius. What a plant lived through, not what leaves it undamaged.
    pub hardiness_c: Option<Sourced<f64>>,
    /// Longest recorded rachis (the blade's midrib).
    pub rachis_length: Option<Sourced<Metres>>,
    /// Longest recorded petiole; zero where the leaf has none.
    pub petiole_length: Option<Sourced<Metres>>,
    /// How it grows.
    pub growth: Option<Sourced<Growth>>,
    /// One of the hand-made rows rather than a line of the trait table alone.
    pub detailed: bool,
    /// Remarks on single fields: name of the field as above, and the remark in words (e.g. `leaf_length`,
    /// "longest blade, petiole not counted").
    pub notes: Vec<(&'static str, Cow<'static, str>)>,
}

impl Species {
    /// A species of which nothing but the name is known.
    pub fn named(name: &str) -> Species {
        Species {
            name: name.to_owned(),
            ..Species::default()
        }
    }

    /// The remark on a field, if there is one.
    pub fn note(&self, field: &str) -> Option<&str> {
        self.notes
            .iter()
            .find(|(f, _)| *f == field)
            .map(|(_, text)| text.as_ref())
    }

    /// First word of the name.
    pub fn genus(&self) -> &str {
        self.name.split(' ').next().unwrap_or("")
    }

    /// The value of an optional sourced field, e.g. `known(&s.crownshaft)`.
    pub fn known<T: Copy>(field: &Option<Sourced<T>>) -> Option<T> {
        field.as_ref().map(|s| s.value)
    }
}
