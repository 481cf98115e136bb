//! What ails palms: the list, one disorder's page, and where those who should know do not agree.

mod disagreements;
mod one;

pub use disagreements::{DisagreementView, about as disagreements_about, all as disagreements};
pub use one::{DisorderView, HostLine, SignLine, view as disorder};

use super::said::Speaker;
use model::knowledge::{DisorderRow, Family, Host, HostKind, Named};

/// The list of disorders.
#[derive(Clone, PartialEq, Debug)]
pub struct DisordersView {
    /// What was asked for: the name of a palm, as it was written.
    pub asked: String,
    /// What that name stands for: the species' name, or the genus alone; nothing if nobody knows it.
    pub host: Option<String>,
    /// Whether something was asked for that nobody knows.
    pub unknown: bool,
    /// Disorders by family; families without any are left out.
    pub families: Vec<FamilyView>,
    /// How many disorders are shown.
    pub shown: usize,
}

/// A family of disorders.
#[derive(Clone, PartialEq, Debug)]
pub struct FamilyView {
    /// Its key.
    pub key: &'static str,
    /// Its name.
    pub name: String,
    /// Its disorders.
    pub rows: Vec<DisorderLine>,
}

/// One disorder in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct DisorderLine {
    /// Its key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// What it is.
    pub about: String,
    /// Whether nobody cuts while it is suspected.
    pub hold: bool,
    /// Whether it gets from palm to palm on blades.
    pub blade: bool,
    /// How the palm that was asked for stands to it: a host that is hit more than others, or one seldom reported.
    pub host: Option<String>,
}

/// The list; `asked` is the name of a palm, or empty for all.
pub fn view(speaker: &Speaker, asked: &str) -> DisordersView {
    let asked = asked.trim();
    let host = host_name(speaker, asked);
    let unknown = !asked.is_empty() && host.is_none();
    let wanted = host.as_deref();
    let families: Vec<FamilyView> = Family::ALL
        .iter()
        .map(|(family, key)| FamilyView {
            key,
            name: speaker.say(&format!("family-{key}")),
            rows: rows(speaker, *family, wanted),
        })
        .filter(|family| !family.rows.is_empty())
        .collect();
    DisordersView {
        asked: asked.to_owned(),
        unknown,
        shown: families.iter().map(|family| family.rows.len()).sum(),
        families,
        host,
    }
}

fn rows(speaker: &Speaker, family: Family, host: Option<&str>) -> Vec<DisorderLine> {
    let own = speaker
        .knowledge
        .disorders
        .iter()
        .filter(|row| row.family == family);
    own.filter_map(|row| {
        let kind = host.map(|name| host_kind(&row.hosts, name));
        if kind == Some(None) {
            return None;
        }
        Some(line(speaker, row, kind.flatten()))
    })
    .collect()
}

fn line(speaker: &Speaker, row: &DisorderRow, kind: Option<HostKind>) -> DisorderLine {
    let host = match kind {
        Some(HostKind::Prone) => Some("host-prone"),
        Some(HostKind::Reported) => Some("host-reported"),
        _ => None,
    };
    DisorderLine {
        key: row.key.clone(),
        name: speaker.texts(&row.name).to_owned(),
        about: speaker.texts(&row.about).to_owned(),
        hold: row.hold.is_some(),
        blade: row.spread.contains(&model::knowledge::Spread::Blade),
        host: host.map(|code| speaker.say(code)),
    }
}

/// The botanical name, or the genus of one that has no row but a genus somebody knows.
fn host_name(speaker: &Speaker, asked: &str) -> Option<String> {
    if asked.is_empty() {
        return None;
    }
    match speaker.knowledge.species_named(asked) {
        Named::Exact(species) | Named::Synonym(species) => Some(species.name.clone()),
        Named::Near(_) | Named::Unknown => {
            let genus = asked.split_whitespace().next()?;
            let relative = speaker.knowledge.relatives(genus).into_iter().next()?;
            Some(relative.genus().to_owned())
        }
    }
}

/// How a palm stands to the hosts of a disorder: by its species before its genus before all palms. `None`: no host.
pub fn host_kind(hosts: &[Host], name: &str) -> Option<HostKind> {
    let genus = name.split_whitespace().next().unwrap_or("");
    let find = |wanted: &str| {
        let found = hosts
            .iter()
            .find(|host| host.name.eq_ignore_ascii_case(wanted));
        found.map(|host| host.kind)
    };
    // of a genus alone any of its species will do
    let of_genus = || {
        let own = |host: &&Host| host.name.split_whitespace().next() == Some(genus);
        (name == genus)
            .then(|| hosts.iter().find(own).map(|host| host.kind))
            .flatten()
    };
    find(name)
        .or_else(|| find(genus))
        .or_else(of_genus)
        .or_else(|| find("*"))
}

/// The file word of a family.
pub fn family_key(family: Family) -> &'static str {
    let all = Family::ALL.iter().find(|(known, _)| *known == family);
    all.map_or("", |(_, key)| *key)
}

#[cfg(test)]
mod tests;
