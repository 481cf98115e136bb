//! What palms are given: `soils.csv`, `landscape_factors.csv`, `water_figures.csv`, `products.csv`, `fertiliser.csv`.

use super::Knowledge;
use super::ills::Texts;
use super::origin::SourceIndex;
use super::reader::{Flaw, Reader, each_row};
use crate::sourced::{Basis, SourceKey, Sourced};
use crate::span::Span;

pub(super) const SOILS: &str = "soils.csv";
pub(super) const FACTORS: &str = "landscape_factors.csv";
pub(super) const FIGURES: &str = "water_figures.csv";
pub(super) const PRODUCTS: &str = "products.csv";
pub(super) const FEEDING: &str = "fertiliser.csv";

pub(super) const SOILS_HEADER: [&str; 12] = [
    "key",
    "name",
    "name_es",
    "fc_low",
    "fc_high",
    "wp_low",
    "wp_high",
    "held_low",
    "held_high",
    "fraction_low_pct",
    "fraction_high_pct",
    "sources",
];
pub(super) const FACTORS_HEADER: [&str; 9] = [
    "key", "species", "kind", "air", "low", "high", "text", "text_es", "sources",
];
pub(super) const FIGURES_HEADER: [&str; 6] = ["key", "low", "high", "unit", "sources", "note"];
pub(super) const PRODUCTS_HEADER: [&str; 12] = [
    "key",
    "name",
    "name_es",
    "n",
    "p2o5",
    "k2o",
    "mg",
    "slow_nkmg",
    "soluble_micro",
    "text",
    "text_es",
    "sources",
];
pub(super) const FEEDING_HEADER: [&str; 14] = [
    "key",
    "kind",
    "against",
    "product",
    "low",
    "high",
    "unit",
    "times",
    "every_low",
    "every_high",
    "size",
    "text",
    "text_es",
    "sources",
];

/// A soil and the water it holds, shares of its volume.
#[derive(Clone, PartialEq, Debug)]
pub struct SoilRow {
    /// Stable key, as moves and sites write it.
    pub key: String,
    /// Name.
    pub name: Texts,
    /// At field capacity.
    pub capacity: Span,
    /// At the wilting point.
    pub wilting: Span,
    /// Between the two: what roots can take.
    pub held: Span,
    /// By how many per cent the fraction that may run down differs from the table's.
    pub fraction_pct: Span,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// What a factor was made for.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum FactorKind {
    /// A crop without want.
    Crop,
    /// Plants of a garden in acceptable looks.
    Landscape,
    /// Plants in tubs: not for the ground.
    Container,
}

impl FactorKind {
    /// All with their file words.
    pub const ALL: [(FactorKind, &'static str); 3] = [
        (FactorKind::Crop, "crop"),
        (FactorKind::Landscape, "landscape"),
        (FactorKind::Container, "container"),
    ];
}

/// How much of what short grass would take a palm takes, by one source.
#[derive(Clone, PartialEq, Debug)]
pub struct FactorRow {
    /// Stable key.
    pub key: String,
    /// The species; `None`: palms or trees in general.
    pub species: Option<String>,
    /// What it was made for.
    pub kind: FactorKind,
    /// Where it holds: `any`, `dry`, `moist`, `desert`, `coast`, `inland`.
    pub air: String,
    /// The factor; `None` unknown.
    pub factor: Option<Span>,
    /// In our words.
    pub text: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// A figure of watering.
#[derive(Clone, PartialEq, Debug)]
pub struct WaterFigure {
    /// Stable key.
    pub key: String,
    /// The figure.
    pub span: Span,
    /// Its unit.
    pub unit: String,
    /// What it is.
    pub note: String,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// A product to feed with.
#[derive(Clone, PartialEq, Debug)]
pub struct ProductRow {
    /// Stable key.
    pub key: String,
    /// Name.
    pub name: Texts,
    /// Per cent of nitrogen, phosphorus as P2O5, potassium as K2O, magnesium; `None` unknown.
    pub analysis: [Option<f64>; 4],
    /// Whether nitrogen, potassium and magnesium all give off slowly; `None` unknown or none in it.
    pub slow: Option<bool>,
    /// Whether its trace elements dissolve in water; `None` unknown or none in it.
    pub soluble_micro: Option<bool>,
    /// In our words.
    pub text: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// What a row of `fertiliser.csv` is.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum FeedKind {
    /// How much of a product, how often.
    Rate,
    /// Where the want comes from.
    Cause,
    /// How long until the crown answers, days.
    Answer,
    /// After a move, days after planting.
    Move,
    /// What comes before every rate.
    Rule,
}

impl FeedKind {
    /// All with their file words.
    pub const ALL: [(FeedKind, &'static str); 5] = [
        (FeedKind::Rate, "rate"),
        (FeedKind::Cause, "cause"),
        (FeedKind::Answer, "answer"),
        (FeedKind::Move, "move"),
        (FeedKind::Rule, "rule"),
    ];
}

/// Which palms a rate is for.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum FeedSize {
    /// All.
    Any,
    /// Small ones.
    Small,
    /// Large ones.
    Large,
}

impl FeedSize {
    /// All with their file words.
    pub const ALL: [(FeedSize, &'static str); 3] = [
        (FeedSize::Any, "any"),
        (FeedSize::Small, "small"),
        (FeedSize::Large, "large"),
    ];
}

/// A statement on feeding.
#[derive(Clone, PartialEq, Debug)]
pub struct FeedRow {
    /// Stable key.
    pub key: String,
    /// What it is.
    pub kind: FeedKind,
    /// `maintenance`, a key of the disorders, or `*`.
    pub against: String,
    /// Key of the product; empty where it speaks of none.
    pub product: String,
    /// Its figure; `None` unknown or none.
    pub figure: Option<Span>,
    /// Its unit: `g/m2`, `g` a palm, `d`.
    pub unit: String,
    /// Applications a year.
    pub times: Option<f64>,
    /// Fewest days between two of them.
    pub every_low: Option<f64>,
    /// Most days between two of them.
    pub every_high: Option<f64>,
    /// Which palms.
    pub size: FeedSize,
    /// In our words.
    pub text: Texts,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

impl Knowledge {
    /// The soil with this key.
    pub fn soil(&self, key: &str) -> Option<&SoilRow> {
        self.soils.iter().find(|row| row.key == key)
    }

    /// The product with this key.
    pub fn product(&self, key: &str) -> Option<&ProductRow> {
        self.products.iter().find(|row| row.key == key)
    }

    /// A figure of watering, with where it comes from. The tables are checked to hold those that are asked for.
    pub fn water_figure(&self, key: &str) -> Option<Sourced<Span>> {
        let row = self.water_figures.iter().find(|row| row.key == key)?;
        Some(Sourced {
            value: row.span,
            basis: row.basis,
            sources: row.sources.clone(),
        })
    }

    /// Statements of a kind on feeding against something, in the order of the file.
    pub fn feeding_of<'k>(
        &'k self,
        kind: FeedKind,
        against: &'k str,
    ) -> impl Iterator<Item = &'k FeedRow> {
        self.feeding
            .iter()
            .filter(move |row| row.kind == kind && row.against == against)
    }
}

fn span(r: &mut Reader<'_>, low: &str, high: &str) -> Option<Span> {
    let (low, high) = (r.number(low), r.number(high));
    Some(Span::between(low?, high?))
}

fn yes_no(r: &mut Reader<'_>, cell: &str) -> Option<bool> {
    match cell {
        "yes" => Some(true),
        "no" => Some(false),
        "" | "unknown" => None,
        other => r.or_flaw(None, "not-yes-or-no", other),
    }
}

/// Reads `soils.csv`.
pub(super) fn soils(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<SoilRow> {
    let mut rows = Vec::new();
    each_row(text, SOILS, SOILS_HEADER, flaws, |r, c: [&str; 12]| {
        let Some(o) = index.origin(r, c[11]) else {
            return;
        };
        let four = [3, 5, 7, 9].map(|at| span(r, c[at], c[at + 1]));
        let [
            Some(capacity),
            Some(wilting),
            Some(held),
            Some(fraction_pct),
        ] = four
        else {
            return r.flaw("no-figure", c[0]);
        };
        rows.push(SoilRow {
            key: c[0].to_owned(),
            name: Texts::of(c[1], c[2]),
            capacity,
            wilting,
            held,
            fraction_pct,
            basis: o.basis,
            sources: o.sources,
        });
    });
    rows
}

/// Reads `landscape_factors.csv`.
pub(super) fn factors(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<FactorRow> {
    let mut rows = Vec::new();
    each_row(text, FACTORS, FACTORS_HEADER, flaws, |r, c: [&str; 9]| {
        let Some(o) = index.origin(r, c[8]) else {
            return;
        };
        let Some(kind) = r.word(&FactorKind::ALL, c[2]) else {
            return;
        };
        rows.push(FactorRow {
            key: c[0].to_owned(),
            species: (c[1] != "*").then(|| c[1].to_owned()),
            kind,
            air: c[3].to_owned(),
            factor: span(r, c[4], c[5]),
            text: Texts::of(c[6], c[7]),
            basis: o.basis,
            sources: o.sources,
        });
    });
    rows
}

/// Reads `water_figures.csv`.
pub(super) fn figures(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<WaterFigure> {
    let mut rows = Vec::new();
    each_row(text, FIGURES, FIGURES_HEADER, flaws, |r, c: [&str; 6]| {
        let Some(o) = index.origin(r, c[4]) else {
            return;
        };
        let Some(span) = span(r, c[1], c[2]) else {
            return r.flaw("no-figure", c[0]);
        };
        rows.push(WaterFigure {
            key: c[0].to_owned(),
            span,
            unit: c[3].to_owned(),
            note: c[5].to_owned(),
            basis: o.basis,
            sources: o.sources,
        });
    });
    rows
}

/// Reads `products.csv`.
pub(super) fn products(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<ProductRow> {
    let mut rows = Vec::new();
    each_row(
        text,
        PRODUCTS,
        PRODUCTS_HEADER,
        flaws,
        |r, c: [&str; 12]| {
            let Some(o) = index.origin(r, c[11]) else {
                return;
            };
            rows.push(ProductRow {
                key: c[0].to_owned(),
                name: Texts::of(c[1], c[2]),
                analysis: [3, 4, 5, 6].map(|at| r.number(c[at])),
                slow: yes_no(r, c[7]),
                soluble_micro: yes_no(r, c[8]),
                text: Texts::of(c[9], c[10]),
                basis: o.basis,
                sources: o.sources,
            });
        },
    );
    rows
}

/// Reads `fertiliser.csv`.
pub(super) fn feeding(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<FeedRow> {
    let mut rows = Vec::new();
    each_row(text, FEEDING, FEEDING_HEADER, flaws, |r, c: [&str; 14]| {
        let Some(o) = index.origin(r, c[13]) else {
            return;
        };
        let kind = r.word(&FeedKind::ALL, c[1]);
        let size = r.word(&FeedSize::ALL, c[10]);
        let (Some(kind), Some(size)) = (kind, size) else {
            return;
        };
        rows.push(FeedRow {
            key: c[0].to_owned(),
            kind,
            against: c[2].to_owned(),
            product: c[3].to_owned(),
            figure: span(r, c[4], c[5]),
            unit: c[6].to_owned(),
            times: r.number(c[7]),
            every_low: r.number(c[8]),
            every_high: r.number(c[9]),
            size,
            text: Texts::of(c[11], c[12]),
            basis: o.basis,
            sources: o.sources,
        });
    });
    rows
}
