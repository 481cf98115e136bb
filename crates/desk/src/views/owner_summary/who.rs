//! Whose palms a summary is about.

use model::State;
use std::collections::BTreeSet;

/// Whose palms: an owner's, or those of one site.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Who {
    /// Of all sites with this owner.
    Owner(String),
    /// Of one site; empty: palms without a site.
    Site(String),
}

impl Who {
    /// The sites it is about, by name; `None` if nobody knows such an owner or site.
    pub(super) fn sites(&self, state: &State) -> Option<BTreeSet<String>> {
        let sites: BTreeSet<String> = match self {
            Who::Owner(owner) => state
                .work
                .sites
                .values()
                .filter(|site| !owner.trim().is_empty() && site.owner.trim() == owner.trim())
                .map(|site| site.name.clone())
                .collect(),
            Who::Site(name) => {
                let known = state.work.sites.contains_key(name)
                    || state.standing().any(|record| record.palm.site == *name);
                known.then(|| name.clone()).into_iter().collect()
            }
        };
        (!sites.is_empty()).then_some(sites)
    }
}
