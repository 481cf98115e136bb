//! The embedded knowledge tables: species, names, rules, cautions, climates and the sources of it all.
//!
//! The files under `knowledge/` of the repository are compiled in, so there is nothing to find or to lose at run
//! time. Parsing happens once, at first use. What a table does not say stays absent here.

mod check;
mod cleaners;
mod effort;
mod facts;
mod ills;
mod ills_load;
mod load;
mod names;
mod origin;
mod places;
mod reader;
mod rows;
mod supply;
mod tables;
mod tools;
mod traits;
mod transplant;

pub use check::check;
pub use effort::EffortRow;
pub use ills::{
    CleanerRow, Course, DayRange, DisagreementRow, DisorderRow, Family, HoldKind, Host, HostKind,
    Part, SignLink, SignRow, Spread, Strength, Texts, WeightRow, Works,
};
pub use names::Named;
pub use reader::Flaw;
pub use rows::{Genus, HowSeen, Place, RuleRow, SafetyRow, Source, Synonym};
pub use supply::{
    FactorKind, FactorRow, FeedKind, FeedRow, FeedSize, ProductRow, SoilRow, WaterFigure,
};
pub use tables::Tables;
pub use tools::{Edge, Grip, ToolRow};
pub use transplant::{MovePalm, MoveSay, MoveTopic, MoveWhen, TransplantRow};

use crate::species::Species;
use crate::units::Position;
use names::Names;
use std::collections::BTreeMap;
use std::sync::OnceLock;

/// All tables, parsed once.
#[derive(Debug, Default)]
pub struct Knowledge {
    /// Species, by name order.
    pub species: Vec<Species>,
    /// Other botanical names, by name order.
    pub synonyms: Vec<Synonym>,
    /// What is recalled of whole genera, by name order.
    pub genera: Vec<Genus>,
    /// Pruning rules, in the order of the file.
    pub rules: Vec<RuleRow>,
    /// Cautions and their figures, in the order of the file.
    pub safety: Vec<SafetyRow>,
    /// Signs to look for, in the order of the file.
    pub signs: Vec<SignRow>,
    /// What ails palms, or looks as if it did, in the order of the file.
    pub disorders: Vec<DisorderRow>,
    /// Which disorder shows which sign, in the order of the file.
    pub sign_links: Vec<SignLink>,
    /// The assumed numbers of the judgement, in the order of the file.
    pub weights: Vec<WeightRow>,
    /// What those who should know do not agree on, in the order of the file.
    pub disagreements: Vec<DisagreementRow>,
    /// What sources say of cleaning blades, in the order of the file.
    pub cleaners: Vec<CleanerRow>,
    /// What sources say of moving palms, in the order of the file.
    pub transplant: Vec<TransplantRow>,
    /// Soils and the water they hold, in the order of the file.
    pub soils: Vec<SoilRow>,
    /// How much of what short grass would take palms take, in the order of the file.
    pub factors: Vec<FactorRow>,
    /// Figures of watering, in the order of the file.
    pub water_figures: Vec<WaterFigure>,
    /// Products to feed with, in the order of the file.
    pub products: Vec<ProductRow>,
    /// What sources say of feeding, in the order of the file.
    pub feeding: Vec<FeedRow>,
    /// What palms are cut with and from, in the order of the file.
    pub tools: Vec<ToolRow>,
    /// What work takes, in the order of the file.
    pub effort: Vec<EffortRow>,
    /// What it leaves behind, in the order of the file.
    pub debris: Vec<EffortRow>,
    /// Places with monthly means, in the order of the file.
    pub places: Vec<Place>,
    /// Sources, in the order of the file.
    pub sources: Vec<Source>,
    source_at: BTreeMap<String, usize>,
    rule_at: BTreeMap<String, usize>,
    safety_at: BTreeMap<String, usize>,
    ills_at: ills_load::At,
    names: Names,
}

impl Knowledge {
    /// The tables compiled into this program.
    pub fn embedded() -> &'static Knowledge {
        static EMBEDDED: OnceLock<Knowledge> = OnceLock::new();
        EMBEDDED.get_or_init(|| Knowledge::from_tables(&Tables::embedded()).0)
    }

    /// Reads tables; what cannot be read is left out and reported. [`check`] says what else is wrong with them.
    pub fn from_tables(tables: &Tables) -> (Knowledge, Vec<Flaw>) {
        load::load(tables)
    }

    /// Looks a name up as a keeper writes it: any case, any spacing, with or without an author or a cultivar behind
    /// it, botanical or English. Never guesses: a name that is not known is answered with the nearest ones.
    pub fn species_named(&self, name: &str) -> Named<'_> {
        self.names.find(&self.species, name)
    }

    /// All species of a genus, by name order.
    pub fn relatives(&self, genus: &str) -> Vec<&Species> {
        let wanted = genus.trim();
        self.species
            .iter()
            .filter(|s| s.genus().eq_ignore_ascii_case(wanted))
            .collect()
    }

    /// The source with this key, or with this key among its other keys.
    pub fn source(&self, key: &str) -> Option<&Source> {
        self.source_at.get(key).map(|&i| &self.sources[i])
    }

    /// The pruning rule with this key.
    pub fn rule(&self, key: &str) -> Option<&RuleRow> {
        self.rule_at.get(key).map(|&i| &self.rules[i])
    }

    /// The caution with this key.
    pub fn safety(&self, key: &str) -> Option<&SafetyRow> {
        self.safety_at.get(key).map(|&i| &self.safety[i])
    }

    /// The nearest place with monthly means, and how far it is in kilometres along the earth's surface (sphere of
    /// 6,371 km). `None` if the position is not one. Whether that is near enough is for the caller to say.
    pub fn climate_near(&self, lat: f64, lon: f64) -> Option<(&Place, f64)> {
        if !(lat.abs() <= 90.0 && lon.abs() <= 180.0) {
            return None;
        }
        let here = Position { lat, lon };
        self.places
            .iter()
            .map(|place| (place, distance_km(here, place.position)))
            .min_by(|a, b| a.1.total_cmp(&b.1))
    }
}

/// Great-circle distance on a sphere of 6,371 km radius.
fn distance_km(a: Position, b: Position) -> f64 {
    6_371.0 * a.angle_to(b)
}

#[cfg(test)]
mod tests {
    use super::distance_km;
    use crate::units::Position;

    #[test]
    fn a_degree_of_latitude_is_about_111_km() {
        // One degree of a great circle of 6,371 km radius: 2 pi 6371 / 360 = 111.195 km.
        let at = |lat, lon| Position { lat, lon };
        assert!((distance_km(at(10.0, 20.0), at(11.0, 20.0)) - 111.195).abs() < 1e-3);
        assert!((distance_km(at(0.0, 0.0), at(0.0, 180.0)) - 20_015.087).abs() < 1e-2);
    }
}
