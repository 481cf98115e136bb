//! What palms are cut with and from: `tools.csv`.

use super::Knowledge;
use super::ills::Texts;
use super::origin::SourceIndex;
use super::reader::{Flaw, each_row};
use crate::sourced::{Basis, SourceKey};
use crate::span::Span;
use crate::units::Metres;

pub(super) const TOOLS: &str = "tools.csv";

pub(super) const HEADER: [&str; 12] = [
    "key",
    "name",
    "name_es",
    "edge",
    "held",
    "pole_low_m",
    "pole_high_m",
    "opening_cm",
    "top_m",
    "text",
    "text_es",
    "sources",
];

/// What parts the petiole.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Edge {
    /// Two blades that close on it.
    Shears,
    /// Teeth.
    Teeth,
    /// One blade drawn or struck through it.
    Drawn,
    /// Nothing: it only brings people up.
    None,
}

impl Edge {
    /// All with their file words.
    pub const ALL: [(Edge, &'static str); 4] = [
        (Edge::Shears, "shears"),
        (Edge::Teeth, "teeth"),
        (Edge::Drawn, "drawn"),
        (Edge::None, "none"),
    ];
}

/// How it gets to the petiole.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Grip {
    /// In the hand.
    Hand,
    /// On a pole held from the ground.
    Pole,
    /// A machine that lifts people.
    Machine,
    /// A ladder.
    Ladder,
}

impl Grip {
    /// All with their file words.
    pub const ALL: [(Grip, &'static str); 4] = [
        (Grip::Hand, "hand"),
        (Grip::Pole, "pole"),
        (Grip::Machine, "machine"),
        (Grip::Ladder, "ladder"),
    ];
}

/// A tool.
#[derive(Clone, PartialEq, Debug)]
pub struct ToolRow {
    /// Stable key, as the kit of a crew and the kinds of blades write it.
    pub key: String,
    /// Name.
    pub name: Texts,
    /// What parts the petiole.
    pub edge: Edge,
    /// How it gets there.
    pub grip: Grip,
    /// From the hands to the blade, metres, shortest and longest; `None` without a pole.
    pub pole: Option<Span>,
    /// The widest petiole it takes; `None`: any.
    pub opening: Option<Metres>,
    /// The highest it may be used above the feet; `None`: as high as the hands reach.
    pub top: Option<Metres>,
    /// In our words.
    pub text: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

impl Knowledge {
    /// The tool with this key.
    pub fn tool(&self, key: &str) -> Option<&ToolRow> {
        self.tools.iter().find(|row| row.key == key)
    }
}

/// Reads `tools.csv`.
pub(super) fn tools(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<ToolRow> {
    let mut rows = Vec::new();
    each_row(text, TOOLS, HEADER, flaws, |r, c: [&str; 12]| {
        let Some(o) = index.origin(r, c[11]) else {
            return;
        };
        let (edge, grip) = (r.word(&Edge::ALL, c[3]), r.word(&Grip::ALL, c[4]));
        let (Some(edge), Some(grip)) = (edge, grip) else {
            return;
        };
        let (low, high) = (r.number(c[5]), r.number(c[6]));
        rows.push(ToolRow {
            key: c[0].to_owned(),
            name: Texts::of(c[1], c[2]),
            edge,
            grip,
            pole: low.zip(high).map(|(low, high)| Span::between(low, high)),
            opening: r.number(c[7]).map(|cm| Metres(cm / 100.0)),
            top: r.number(c[8]).map(Metres),
            text: Texts::of(c[9], c[10]),
            basis: o.basis,
            sources: o.sources,
        });
    });
    rows
}
