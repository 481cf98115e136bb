//! The table files as text.

/// The text of every table. [`Tables::embedded`] is what the program was built with; tests seed faults into copies.
#[derive(Clone, Copy, Debug)]
pub struct Tables<'a> {
    /// `palmtraits.csv`: one line a species, figures of descriptions.
    pub palmtraits: &'a str,
    /// `species.csv`: one line a fact, for the species worked through by hand.
    pub species: &'a str,
    /// `synonyms.csv`: other botanical names.
    pub synonyms: &'a str,
    /// `genera.csv`: leaf form and crownshaft of whole genera, from memory.
    pub genera: &'a str,
    /// `pruning_rules.csv`.
    pub rules: &'a str,
    /// `safety.csv`.
    pub safety: &'a str,
    /// `signs.csv`: what can be looked for on a palm.
    pub signs: &'a str,
    /// `disorders.csv`: what ails palms.
    pub disorders: &'a str,
    /// `disorder_signs.csv`: which disorder shows which sign.
    pub disorder_signs: &'a str,
    /// `weights.csv`: the assumed numbers of the judgement.
    pub weights: &'a str,
    /// `disagreements.csv`: what those who should know do not agree on.
    pub disagreements: &'a str,
    /// `cleaners.csv`: what sources say of cleaning blades.
    pub cleaners: &'a str,
    /// `transplant.csv`: what sources say of moving palms.
    pub transplant: &'a str,
    /// `soils.csv`: the water soils hold.
    pub soils: &'a str,
    /// `landscape_factors.csv`: how much water palms take against short grass.
    pub factors: &'a str,
    /// `water_figures.csv`: figures of watering.
    pub water_figures: &'a str,
    /// `products.csv`: what palms are fed with.
    pub products: &'a str,
    /// `fertiliser.csv`: how much, how often, how long until it shows.
    pub feeding: &'a str,
    /// `tools.csv`: what palms are cut with and from.
    pub tools: &'a str,
    /// `effort.csv`: what work takes.
    pub effort: &'a str,
    /// `debris.csv`: what it leaves behind.
    pub debris: &'a str,
    /// `climate_normals.csv`.
    pub climate: &'a str,
    /// `sources.csv`.
    pub sources: &'a str,
}

impl Tables<'static> {
    /// The tables compiled in.
    pub fn embedded() -> Tables<'static> {
        Tables {
            palmtraits: include_str!("../../../../knowledge/palmtraits.csv"),
            species: include_str!("../../../../knowledge/species.csv"),
            synonyms: include_str!("../../../../knowledge/synonyms.csv"),
            genera: include_str!("../../../../knowledge/genera.csv"),
            rules: include_str!("../../../../knowledge/pruning_rules.csv"),
            safety: include_str!("../../../../knowledge/safety.csv"),
            signs: include_str!("../../../../knowledge/signs.csv"),
            disorders: include_str!("../../../../knowledge/disorders.csv"),
            disorder_signs: include_str!("../../../../knowledge/disorder_signs.csv"),
            weights: include_str!("../../../../knowledge/weights.csv"),
            disagreements: include_str!("../../../../knowledge/disagreements.csv"),
            cleaners: include_str!("../../../../knowledge/cleaners.csv"),
            transplant: include_str!("../../../../knowledge/transplant.csv"),
            soils: include_str!("../../../../knowledge/soils.csv"),
            factors: include_str!("../../../../knowledge/landscape_factors.csv"),
            water_figures: include_str!("../../../../knowledge/water_figures.csv"),
            products: include_str!("../../../../knowledge/products.csv"),
            feeding: include_str!("../../../../knowledge/fertiliser.csv"),
            tools: include_str!("../../../../knowledge/tools.csv"),
            effort: include_str!("../../../../knowledge/effort.csv"),
            debris: include_str!("../../../../knowledge/debris.csv"),
            climate: include_str!("../../../../knowledge/climate_normals.csv"),
            sources: include_str!("../../../../knowledge/sources.csv"),
        }
    }
}
