//! Blades, what they cut, and how they were cleaned.

use crate::entry::EntryId;
use crate::palm::PalmId;
use std::collections::BTreeMap;
use uuid::Uuid;

/// Identity of a blade: the id of the entry that registered it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct BladeId(pub Uuid);

/// What kind of tool carries the blade. Trade words.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Default)]
pub enum BladeKind {
    /// Not said.
    #[default]
    Unknown,
    /// A hand saw.
    HandSaw,
    /// A saw on a pole.
    PoleSaw,
    /// Loppers or hand shears.
    Loppers,
    /// Loppers on a pole.
    PoleLoppers,
    /// A harvesting sickle or chisel on a pole.
    PoleSickle,
    /// A chain saw: its chain and bar cannot be cleaned by a wipe.
    ChainSaw,
    /// A reciprocating saw.
    ReciprocatingSaw,
    /// A knife or machete.
    Knife,
}

impl BladeKind {
    /// All with their file words.
    pub const ALL: [(BladeKind, &'static str); 9] = [
        (BladeKind::Unknown, "unknown"),
        (BladeKind::HandSaw, "hand-saw"),
        (BladeKind::PoleSaw, "pole-saw"),
        (BladeKind::Loppers, "loppers"),
        (BladeKind::PoleLoppers, "pole-loppers"),
        (BladeKind::PoleSickle, "pole-sickle"),
        (BladeKind::ChainSaw, "chain-saw"),
        (BladeKind::ReciprocatingSaw, "reciprocating-saw"),
        (BladeKind::Knife, "knife"),
    ];

    /// The word used in files.
    pub fn word(self) -> &'static str {
        BladeKind::ALL
            .iter()
            .find(|(kind, _)| *kind == self)
            .map_or("", |(_, word)| word)
    }

    /// From the word used in files.
    pub fn parse(word: &str) -> Option<BladeKind> {
        let found = BladeKind::ALL.iter().find(|(_, own)| *own == word);
        found.map(|(kind, _)| *kind)
    }
}

/// A registered blade, as the keeper describes it.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Blade {
    /// The mark on the blade; unique among blades not retired.
    pub tag: String,
    /// What carries it.
    pub kind: BladeKind,
    /// The kit it belongs to; empty if none.
    pub kit: String,
    /// Who holds it; empty if nobody in particular.
    pub holder: String,
    /// Free words.
    pub notes: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}

/// What a cut took off; `None` is not noted.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct TakenOff {
    /// Wholly green fronds.
    pub green: Option<u32>,
    /// Partly dead fronds.
    pub yellowing: Option<u32>,
    /// Dead fronds.
    pub brown: Option<u32>,
    /// Flower and fruit stalks.
    pub stalks: Option<u32>,
}

/// One blade at work on one stem. The entry's `at` is its end.
#[derive(Clone, PartialEq, Debug)]
pub struct CutMade {
    /// The palm.
    pub palm: PalmId,
    /// The stem, from 1.
    pub stem: u16,
    /// The blade.
    pub blade: BladeId,
    /// When it began, if it was noted.
    pub started: Option<crate::day::Moment>,
    /// What came off.
    pub off: TakenOff,
    /// Who cut; empty if not noted.
    pub crew: String,
    /// Why it was cut although the blade was not clean for this palm; empty if it was.
    pub despite: String,
    /// Free words.
    pub notes: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}

/// A bath mixed to soak blades in. The entry's `at` is when it was mixed.
#[derive(Clone, PartialEq, Debug)]
pub struct Bath {
    /// The agent: a key of the cleaner table, or the keeper's own word.
    pub agent: String,
    /// Strength, percent by volume of product in the bath; `None` unknown.
    pub strength_pct: Option<f64>,
    /// The kit it goes with; empty if none.
    pub kit: String,
}

/// One cleaning of one blade. The entry's `at` is its end.
#[derive(Clone, PartialEq, Debug)]
pub struct Cleaning {
    /// The blade.
    pub blade: BladeId,
    /// The agent: a key of the cleaner table, or the keeper's own word; empty if not noted.
    pub agent: String,
    /// Strength, percent by volume of product in the bath; `None` unknown.
    pub strength_pct: Option<f64>,
    /// Minutes of contact; `None` unknown.
    pub contact_min: Option<f64>,
    /// Whether soil, sap and fibre were brushed off first; `None` unknown.
    pub brushed: Option<bool>,
    /// The entry that mixed the bath, if one was used.
    pub bath: Option<EntryId>,
    /// Who cleaned; empty if not noted.
    pub by: String,
    /// Columns of an imported file that this version does not know.
    pub extra: BTreeMap<String, String>,
}
