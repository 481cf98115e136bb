//! `/feeding`, and `/palm/{tag}/feeding`: what to feed, how much, how often, what bars it, and whether the crown answered.

mod line;
mod list;
mod log;
#[cfg(test)]
mod tests;

pub use line::{DoseLine, FeedLine, Statement, json};
pub use list::{FeedGroup, FeedingList, ListRow, RowLine, list};
pub use log::LogLine;

use super::said::{Cited, Said, Speaker};
use crate::feeding::{self, Fed, known_shortages};
use crate::office::Office;
use care::feeding::{Analysis, barred_finding, bars};
use model::knowledge::{FeedRow, ProductRow};

/// A product to choose.
#[derive(Clone, PartialEq, Debug)]
pub struct ProductLine {
    /// Its key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// What is in it, in words.
    pub contents: String,
    /// Whether it gives off slowly or dissolves, in words.
    pub ways: Vec<String>,
    /// What to know of it.
    pub text: String,
    /// A rule in force today bars it.
    pub barred: bool,
    /// How it is known, where that must be said.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct FeedingPage {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// Local rules in force today.
    pub barred: Vec<Said>,
    /// That nobody has entered the rules of the site.
    pub rules_unknown: Option<String>,
    /// What comes before every rate.
    pub rules: Vec<Statement>,
    /// Ground under the crown, in words.
    pub ground: String,
    /// The shortages, then maintenance.
    pub lines: Vec<FeedLine>,
    /// Shortages that may be asked for besides: key and name.
    pub others: Vec<(&'static str, String)>,
    /// All shortages of the tables: key and name.
    pub all: Vec<(&'static str, String)>,
    /// Products.
    pub products: Vec<ProductLine>,
    /// Products that no rule in force bars, in words; empty while nothing is barred.
    pub free: Vec<String>,
    /// Feedings, newest first.
    pub log: Vec<LogLine>,
}

/// The page; `against` is a shortage asked for besides those thought possible. `None` if no palm with this tag stands.
pub fn page(speaker: &Speaker, office: &Office, tag: &str, against: &str) -> Option<FeedingPage> {
    let state = office.state();
    let record = state.by_tag(tag)?;
    let asked: Vec<&'static str> = known_shortages().filter(|key| *key == against).collect();
    let fed = feeding::of(office, record, &asked)?;
    let plan = fed.plan();
    let palm = &record.palm;
    let names: Vec<(&'static str, String)> = known_shortages()
        .map(|key| (key, line::name(speaker, key)))
        .collect();
    let planned = |key: &str| fed.shortages.iter().any(|own| own.key == key);
    let others = names.iter().filter(|(key, _)| !planned(key));
    Some(FeedingPage {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        barred: plan
            .barred
            .iter()
            .map(|rule| speaker.finding(&barred_finding(rule, fed.today)))
            .collect(),
        rules_unknown: plan
            .rules_unknown
            .then(|| speaker.text("feed-rules-unknown", &[("site", palm.site.clone().into())])),
        rules: plan
            .rules
            .iter()
            .map(|row| Statement::of(speaker, row))
            .collect(),
        ground: ground(speaker, &fed),
        lines: plan
            .lines
            .iter()
            .map(|own| line::view(speaker, &fed, own))
            .collect(),
        others: others.cloned().collect(),
        all: names.clone(),
        products: products(speaker, &plan.barred),
        free: free(speaker, &plan.barred),
        log: log::view(speaker, &fed),
    })
}

fn ground(speaker: &Speaker, fed: &Fed) -> String {
    match fed.crown_m2 {
        Some(span) => {
            let area = speaker.measure.area_range(span.low, span.high);
            speaker.text("feed-ground", &[("area", area.into())])
        }
        None => speaker.say("feed-ground-unknown"),
    }
}

fn is_barred(row: &ProductRow, rules: &[model::NoFeeding]) -> bool {
    let own = Analysis::of_row(row);
    rules.iter().any(|rule| bars(rule, Some(&own)))
}

fn products(speaker: &Speaker, rules: &[model::NoFeeding]) -> Vec<ProductLine> {
    let rows = speaker.knowledge.products.iter();
    rows.map(|row| ProductLine {
        key: row.key.clone(),
        name: speaker.texts(&row.name).to_owned(),
        contents: line::contents(speaker, row),
        ways: line::ways(speaker, row),
        text: speaker.texts(&row.text).to_owned(),
        barred: is_barred(row, rules),
        basis: speaker.basis(row.basis),
        sources: speaker.cite(&row.sources),
    })
    .collect()
}

/// What may still be given while a rule is in force.
fn free(speaker: &Speaker, rules: &[model::NoFeeding]) -> Vec<String> {
    if rules.is_empty() {
        return Vec::new();
    }
    let rows = speaker.knowledge.products.iter();
    rows.filter(|row| !is_barred(row, rules))
        .map(|row| speaker.texts(&row.name).to_owned())
        .collect()
}

impl Statement {
    fn of(speaker: &Speaker, row: &FeedRow) -> Statement {
        Statement {
            text: speaker.texts(&row.text).to_owned(),
            basis: speaker.basis(row.basis),
            sources: speaker.cite(&row.sources),
        }
    }
}
