//! `cleaners.csv`: what sources say of cleaning blades.

use super::Knowledge;
use super::ills::{CleanerRow, Texts, Works};
use super::origin::SourceIndex;
use super::reader::{Flaw, Reader, each_row, list};

/// File name.
pub(super) const TABLE: &str = "cleaners.csv";

/// First line.
pub(super) const HEADER: [&str; 16] = [
    "key",
    "agent",
    "name",
    "name_es",
    "mix",
    "mix_es",
    "strength_pct",
    "contact_min",
    "contact_max",
    "against",
    "works",
    "with_soil",
    "indirect",
    "caution",
    "caution_es",
    "sources",
];

/// Words in `against` that are no disorder of the tables: kinds of germs, and germs of trials on other plants.
pub(super) const GERMS: [&str; 11] = [
    "general",
    "fungi",
    "bacteria",
    "nematodes",
    "insects",
    "weeds",
    "phytophthora",
    "nursery-pathogens",
    "erwinia-amylovora",
    "fusarium-cubense",
    "fusarium-vasinfectum",
];

impl CleanerRow {
    /// Keys of the disorders of palms it is stated for.
    pub fn disorders(&self) -> impl Iterator<Item = &str> {
        let words = self.against.iter().map(String::as_str);
        words.filter(|word| !GERMS.contains(word))
    }

    /// Whether it is stated for germs in general, or for fungi: every disorder known to travel on blades is a fungus.
    pub fn is_general(&self) -> bool {
        self.against
            .iter()
            .any(|word| word == "general" || word == "fungi")
    }
}

impl Knowledge {
    /// What sources say of an agent, by its key, in the order of the file.
    pub fn cleaners_of<'k>(&'k self, agent: &'k str) -> impl Iterator<Item = &'k CleanerRow> {
        self.cleaners.iter().filter(move |row| row.agent == agent)
    }

    /// The key of an agent, from its key or its name in either language, in any case; `None`: no agent of the table.
    pub fn cleaner_named(&self, written: &str) -> Option<&str> {
        let written = written.trim();
        let same = |text: &str| text.to_lowercase() == written.to_lowercase();
        let row = self
            .cleaners
            .iter()
            .find(|row| same(&row.agent) || same(&row.name.en) || same(&row.name.es));
        row.map(|row| row.agent.as_str())
    }

    /// One row for each agent, the first of each, in the order of the file.
    pub fn cleaner_agents(&self) -> Vec<&CleanerRow> {
        let mut agents: Vec<&CleanerRow> = Vec::new();
        for row in &self.cleaners {
            if !agents.iter().any(|other| other.agent == row.agent) {
                agents.push(row);
            }
        }
        agents
    }
}

/// Reads the table.
pub(super) fn cleaners(text: &str, index: &SourceIndex, flaws: &mut Vec<Flaw>) -> Vec<CleanerRow> {
    let mut rows = Vec::new();
    each_row(text, TABLE, HEADER, flaws, |r, cells: [&str; 16]| {
        rows.extend(row(r, cells, index));
    });
    rows
}

fn row(r: &mut Reader<'_>, cells: [&str; 16], index: &SourceIndex) -> Option<CleanerRow> {
    let [
        key,
        agent,
        name,
        name_es,
        mix,
        mix_es,
        strength,
        low,
        high,
        against,
        works,
        soil,
        indirect,
        caution,
        caution_es,
        sources,
    ] = cells;
    let o = index.origin(r, sources)?;
    let works = r.word(&Works::ALL, works)?;
    let indirect = yes_no(r, indirect)?;
    Some(CleanerRow {
        key: key.to_owned(),
        agent: agent.to_owned(),
        name: Texts::of(name, name_es),
        mix: Texts::of(mix, mix_es),
        strength_pct: r.number(strength),
        contact_min: r.number(low),
        contact_max: r.number(high),
        against: list(against),
        works,
        with_soil: match soil {
            "" | "unknown" => None,
            said => yes_no(r, said),
        },
        indirect,
        caution: Texts::of(caution, caution_es),
        basis: o.basis,
        sources: o.sources,
    })
}

fn yes_no(r: &mut Reader<'_>, cell: &str) -> Option<bool> {
    match cell {
        "yes" => Some(true),
        "no" => Some(false),
        other => r.or_flaw(None, "not-yes-or-no", other),
    }
}
