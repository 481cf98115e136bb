//! The owners, and the sites where none is named.

use super::Who;
use crate::office::Office;
use crate::views::said::Speaker;
use crate::views::season::site_name;
use std::collections::BTreeMap;

/// An owner, or a site without one.
#[derive(Clone, PartialEq, Debug)]
pub struct OwnerRow {
    /// Whose summary it opens.
    pub who: Who,
    /// Name in words.
    pub name: String,
    /// Sites in words; empty for a site.
    pub sites: String,
    /// How many palms stand there, in words.
    pub palms: String,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct OwnersView {
    /// One sentence.
    pub summary: String,
    /// Owners by name.
    pub owners: Vec<OwnerRow>,
    /// Sites without an owner by name, palms without a site last.
    pub sites: Vec<OwnerRow>,
}

/// All owners and all sites without an owner.
pub fn list(speaker: &Speaker, office: &Office) -> OwnersView {
    let state = office.state();
    let mut palms: BTreeMap<&str, i64> = BTreeMap::new();
    for name in state.work.sites.keys() {
        palms.insert(name, 0);
    }
    for record in state.standing() {
        *palms.entry(&record.palm.site).or_default() += 1;
    }
    let mut owners: BTreeMap<&str, (Vec<String>, i64)> = BTreeMap::new();
    let mut sites = Vec::new();
    for (name, n) in &palms {
        let owner = state.work.sites.get(*name).map(|site| site.owner.trim());
        match owner.filter(|owner| !owner.is_empty()) {
            Some(owner) => {
                let own = owners.entry(owner).or_default();
                own.0.push(site_name(speaker, name));
                own.1 += n;
            }
            None => sites.push(OwnerRow {
                who: Who::Site((*name).to_owned()),
                name: site_name(speaker, name),
                sites: String::new(),
                palms: words(speaker, *n),
            }),
        }
    }
    sites.sort_by_key(|row| (row.who == Who::Site(String::new()), row.name.clone()));
    let counts = [
        ("owners", (owners.len() as i64).into()),
        ("sites", (sites.len() as i64).into()),
    ];
    OwnersView {
        summary: speaker.text("owners-summary", &counts),
        owners: owners
            .into_iter()
            .map(|(name, (sites, n))| OwnerRow {
                who: Who::Owner(name.to_owned()),
                name: name.to_owned(),
                sites: sites.join(", "),
                palms: words(speaker, n),
            })
            .collect(),
        sites,
    }
}

fn words(speaker: &Speaker, palms: i64) -> String {
    let text = speaker.measure.count(palms);
    speaker.text(
        "summary-palms",
        &[("n", palms.into()), ("text", text.into())],
    )
}
