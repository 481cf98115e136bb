//! `transplant.csv`: what sources say of moving palms.

use super::Knowledge;
use super::ills::Texts;
use super::origin::SourceIndex;
use super::reader::{Flaw, Reader, each_row};
use crate::sourced::{Basis, SourceKey};
use crate::species::Range;

/// File name.
pub(super) const TABLE: &str = "transplant.csv";

/// First line.
pub(super) const HEADER: [&str; 11] = [
    "key", "palm", "what", "say", "when", "low", "high", "unit", "text", "text_es", "sources",
];

/// What a row speaks of.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum MoveTopic {
    /// Radius of the root ball from the trunk's surface, cm.
    BallRadius,
    /// Depth of the root ball, cm.
    BallDepth,
    /// Share of cut roots that grew on, per cent.
    Roots,
    /// Share of the new roots in the uppermost 30 cm, per cent.
    TopRoots,
    /// Whether a young palm may be dug at all.
    Young,
    /// What to do with the fronds at digging.
    Leaves,
    /// Tying and untying.
    Untie,
    /// Share of palms alive in a trial, per cent.
    Survival,
    /// Days after which kept fronds were dead.
    Kept,
    /// Days to a full crown.
    FullAgain,
    /// How deep to plant; of a trial, the share alive, per cent.
    Depth,
    /// Time of the year.
    Season,
    /// Props.
    Brace,
    /// Lifting and digging.
    Lift,
    /// Water around the move.
    Water,
    /// Weight of a cubic metre of soil, kg/m³.
    SoilDensity,
    /// Weight of a cubic metre of trunk, kg/m³.
    TrunkDensity,
    /// Weight of a metre of frond, kg/m.
    FrondMass,
    /// Share of the crown that browns after a move, per cent.
    ShedShare,
    /// Fronds lost in the first month.
    ShedMonth,
    /// Days in which a trunk's new colour fades.
    TrunkColour,
    /// Day after digging on which to look.
    Look,
}

impl MoveTopic {
    /// All with their file words.
    pub const ALL: [(MoveTopic, &'static str); 22] = [
        (MoveTopic::BallRadius, "ball-radius"),
        (MoveTopic::BallDepth, "ball-depth"),
        (MoveTopic::Roots, "roots"),
        (MoveTopic::TopRoots, "top-roots"),
        (MoveTopic::Young, "young"),
        (MoveTopic::Leaves, "leaves"),
        (MoveTopic::Untie, "untie"),
        (MoveTopic::Survival, "survival"),
        (MoveTopic::Kept, "kept"),
        (MoveTopic::FullAgain, "full-again"),
        (MoveTopic::Depth, "depth"),
        (MoveTopic::Season, "season"),
        (MoveTopic::Brace, "brace"),
        (MoveTopic::Lift, "lift"),
        (MoveTopic::Water, "water"),
        (MoveTopic::SoilDensity, "soil-density"),
        (MoveTopic::TrunkDensity, "trunk-density"),
        (MoveTopic::FrondMass, "frond-mass"),
        (MoveTopic::ShedShare, "shed-share"),
        (MoveTopic::ShedMonth, "shed-month"),
        (MoveTopic::TrunkColour, "trunk-colour"),
        (MoveTopic::Look, "look"),
    ];

    /// The file word.
    pub fn word(self) -> &'static str {
        let own = MoveTopic::ALL.iter().find(|(topic, _)| *topic == self);
        own.map_or("", |(_, word)| word)
    }
}

/// What a row advises.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum MoveSay {
    /// A fact, no advice.
    Nothing,
    /// Fronds: take them.
    Take,
    /// Fronds: leave them.
    Leave,
    /// Fronds: untie them, or do not tie.
    Untie,
    /// Nobody knows.
    Unknown,
    /// A caution.
    Caution,
    /// Somebody must see to it before work starts.
    Act,
}

impl MoveSay {
    /// All with their file words.
    pub const ALL: [(MoveSay, &'static str); 7] = [
        (MoveSay::Nothing, ""),
        (MoveSay::Take, "take"),
        (MoveSay::Leave, "leave"),
        (MoveSay::Untie, "untie"),
        (MoveSay::Unknown, "unknown"),
        (MoveSay::Caution, "caution"),
        (MoveSay::Act, "act"),
    ];
}

/// Under which circumstance a row holds.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum MoveWhen {
    /// Always.
    Always,
    /// Root ball and backfill stay moist.
    Moist,
    /// They cannot be kept moist.
    Dry,
    /// Extreme heat.
    Hot,
    /// The ball is of earth.
    Earth,
    /// The ball is of sand.
    Sand,
}

impl MoveWhen {
    /// All with their file words.
    pub const ALL: [(MoveWhen, &'static str); 6] = [
        (MoveWhen::Always, ""),
        (MoveWhen::Moist, "moist"),
        (MoveWhen::Dry, "dry"),
        (MoveWhen::Hot, "hot"),
        (MoveWhen::Earth, "earth"),
        (MoveWhen::Sand, "sand"),
    ];
}

/// Which palms a row speaks of.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum MovePalm {
    /// All.
    Any,
    /// Palms with one stem of which nothing better is known.
    Single,
    /// Palms with several stems, or very tall or large ones.
    Several,
    /// A species or a genus by name.
    Named(String),
}

/// One statement of a source on moving palms.
#[derive(Clone, PartialEq, Debug)]
pub struct TransplantRow {
    /// Stable key.
    pub key: String,
    /// Which palms.
    pub palm: MovePalm,
    /// What of.
    pub what: MoveTopic,
    /// What it advises.
    pub say: MoveSay,
    /// When it holds.
    pub when: MoveWhen,
    /// Its figure in the unit of its topic; `None` where it has none or nobody gives it.
    pub figure: Option<Range>,
    /// Set where a figure belongs here and nobody gives it.
    pub unknown: bool,
    /// In our words.
    pub text: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

impl TransplantRow {
    /// Whether it names this species, or its genus where it names no species.
    pub fn names(&self, species: &str) -> bool {
        let MovePalm::Named(own) = &self.palm else {
            return false;
        };
        let genus = species.split(' ').next().unwrap_or("");
        own == species || own == genus
    }
}

impl Knowledge {
    /// What is said of a topic, in the order of the file.
    pub fn moving(&self, what: MoveTopic) -> impl Iterator<Item = &TransplantRow> {
        self.transplant.iter().filter(move |row| row.what == what)
    }
}

/// Reads the table.
pub(super) fn read(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<TransplantRow> {
    let mut rows = Vec::new();
    each_row(text, TABLE, HEADER, flaws, |r, cells: [&str; 11]| {
        rows.extend(row(r, cells, index));
    });
    rows
}

fn row(r: &mut Reader<'_>, cells: [&str; 11], index: &SourceIndex) -> Option<TransplantRow> {
    let [
        key,
        palm,
        what,
        say,
        when,
        low,
        high,
        _,
        text,
        text_es,
        sources,
    ] = cells;
    let o = index.origin(r, sources)?;
    let (low_figure, high_figure) = (r.number(low), r.number(high));
    Some(TransplantRow {
        key: key.to_owned(),
        palm: match palm {
            "*" => MovePalm::Any,
            "*single" => MovePalm::Single,
            "*several" => MovePalm::Several,
            name => MovePalm::Named(name.to_owned()),
        },
        what: r.word(&MoveTopic::ALL, what)?,
        say: r.word(&MoveSay::ALL, say)?,
        when: r.word(&MoveWhen::ALL, when)?,
        figure: high_figure.map(|high| Range {
            low: low_figure,
            high,
        }),
        unknown: high == "unknown",
        text: Texts::of(text, text_es),
        basis: o.basis,
        sources: o.sources,
    })
}
