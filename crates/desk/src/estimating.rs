//! What work takes, what it leaves behind and what it costs: for palms, a site or all that is due.
//!
//! Minutes and debris are [`rounds::estimate`]'s; what crews logged sets the pace ([`times`]); money is exact
//! ([`money`]). Nothing is recorded. `docs/estimate.md` has the exact meaning.

mod gather;
pub mod money;
mod times;

pub(crate) use gather::{at_palm, reach};
pub use money::{Charge, PRICES, Price, PriceList};

use crate::office::Office;
use crate::views::standing::Standings;
use model::{Day, Finding, Knowledge, Severity, State};
use rounds::estimate::{Figures, Spread, Taught, Visit, Work, learn, total, visit};
use rust_decimal::Decimal;
use std::collections::BTreeMap;

/// What is to be estimated.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Ask {
    /// These palms, by tag, due or not.
    pub palms: Vec<String>,
    /// Palms of these sites that are due. Both empty: all that are due.
    pub sites: Vec<String>,
    /// Which crew; empty: any.
    pub crew: String,
}

/// One palm of an estimate.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmPart {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// What is done there.
    pub work: Work,
    /// What that takes.
    pub visit: Visit,
}

/// What was found.
#[derive(Clone, PartialEq, Debug)]
pub struct Estimate {
    /// For which day.
    pub day: Day,
    /// For which crew; empty: any.
    pub crew: String,
    /// Palms that are cut, in the order of the walk, site by site.
    pub palms: Vec<PalmPart>,
    /// Palms that were asked for and are not cut: tag and why.
    pub left: Vec<(String, Finding)>,
    /// Minutes of the crew at the palms.
    pub minutes: Spread,
    /// Loose debris, m³.
    pub debris_m3: Spread,
    /// Debris, kg.
    pub mass_kg: Spread,
    /// What is charged for.
    pub charges: Vec<Charge>,
    /// Sum without tax: seldom less, as a rule, seldom more.
    pub net: [Decimal; 3],
    /// Tax on it; `None`: none was set.
    pub tax: Option<[Decimal; 3]>,
    /// Sum with tax.
    pub gross: [Decimal; 3],
    /// Prices.
    pub list: PriceList,
    /// The figures behind the minutes, with the pace of the crew.
    pub figures: Figures,
    /// What logged times teach.
    pub taught: Option<Taught>,
    /// Logged times that could not be used, because nobody noted what came off.
    pub unused_times: usize,
}

/// The tables' figures with the keeper's own in their place.
pub fn told_figures(state: &State) -> Figures {
    let own = state.work.prices.as_ref().map(|prices| &prices.figures);
    Figures::of(Knowledge::embedded(), own.unwrap_or(&BTreeMap::new()))
}

/// Whether there is another blade while one soaks.
pub(crate) fn spare_blade(state: &State) -> bool {
    state.serving().count() > 1
}

/// The figures as told, and what logged times teach.
pub fn figures(office: &Office) -> (Figures, Option<Taught>, usize) {
    let state = office.state();
    let figures = told_figures(&state);
    let (times, unused) = times::logged(&state, &figures);
    let taught = learn(&figures, &times);
    (figures, taught, unused)
}

/// The same at the pace of a crew; an empty name stands for any crew.
pub fn figures_of(office: &Office, crew: &str) -> Figures {
    let (figures, taught, _) = figures(office);
    match taught {
        Some(taught) => figures.at_pace(taught.of(crew)),
        None => figures,
    }
}

/// Estimates. Refused where the ask names what is not there, or nothing is to be cut.
pub fn estimate(
    office: &Office,
    standings: &Standings,
    ask: &Ask,
) -> Result<Estimate, Vec<Finding>> {
    let state = office.state();
    if !ask.crew.is_empty() && !state.work.crews.contains_key(&ask.crew) {
        return Err(vec![
            refuse("estimate-no-such-crew").with("crew", model::Arg::Text(ask.crew.clone())),
        ]);
    }
    let (figures, taught, unused_times) = figures(office);
    let figures = match &taught {
        Some(taught) => figures.at_pace(taught.of(&ask.crew)),
        None => figures,
    };
    let (works, left) = gather::works(office, standings, ask)?;
    if works.is_empty() && left.is_empty() {
        return Err(vec![refuse("estimate-nothing")]);
    }
    let palms: Vec<PalmPart> = works
        .into_iter()
        .map(|(record, work)| PalmPart {
            tag: record.palm.tag.clone(),
            species: record.palm.species.clone(),
            site: record.palm.site.clone(),
            visit: visit(&figures, &work),
            work,
        })
        .collect();
    let sum = |of: fn(&Visit) -> Spread| {
        palms
            .iter()
            .map(|palm| of(&palm.visit))
            .fold(Spread::default(), Spread::plus)
    };
    let list = PriceList::of(state.work.prices.as_ref(), Knowledge::embedded());
    let amounts = money::amounts(&figures, &palms);
    let (charges, net) = money::charges(&list, &amounts);
    let tax = list.tax_on(&net);
    let gross = std::array::from_fn(|i| net[i] + tax.map_or(Decimal::ZERO, |tax| tax[i]));
    Ok(Estimate {
        day: office.today(),
        crew: ask.crew.clone(),
        left,
        minutes: total(&figures, palms.iter().map(|palm| palm.visit.minutes)),
        debris_m3: sum(|visit| visit.debris_m3),
        mass_kg: sum(|visit| visit.mass_kg),
        charges,
        net,
        tax,
        gross,
        list,
        figures,
        taught,
        unused_times,
        palms,
    })
}

impl Estimate {
    /// Sites with the number of their palms, in the order of the names.
    pub fn sites(&self) -> BTreeMap<&str, usize> {
        let mut sites = BTreeMap::new();
        for palm in &self.palms {
            *sites.entry(palm.site.as_str()).or_default() += 1;
        }
        sites
    }

    /// Fronds and stalks that come off.
    pub fn pieces(&self) -> (u32, u32) {
        self.palms.iter().fold((0, 0), |(fronds, stalks), palm| {
            let work = &palm.work;
            (fronds + work.dead + work.green, stalks + work.stalks)
        })
    }

    /// Figures that nobody gave: keys of figures used that are assumed, wholly or in part.
    pub fn assumed(&self) -> Vec<&str> {
        let used: std::collections::BTreeSet<&str> = self
            .palms
            .iter()
            .flat_map(|palm| palm.visit.lines.iter())
            .flat_map(|line| line.figures.iter().copied())
            .collect();
        let debris = ["debris.frond-dead", "debris.frond-green", "debris.loose"];
        let guessed = |key: &&str| {
            self.figures.get(key).is_some_and(|figure| {
                figure.basis != model::Basis::Keeper && figure.given.len() < 3
            })
        };
        used.into_iter().chain(debris).filter(guessed).collect()
    }
}

fn refuse(code: &'static str) -> Finding {
    Finding::new(code, Severity::Refuse)
}
