//! From a checked form of a site or a crew to the ledger.

use super::save::{Stop, entry_id, record};
use super::{AtCrew, AtSite, Trouble, Typed};
use crate::measure::Units;
use crate::office::Office;
use model::Body;

/// Describes the site of this name, or with `None` the new one that the form names. Returns its name.
pub fn save_site(office: &Office, name: Option<&str>, typed: &Typed) -> Result<String, Stop> {
    let state = office.state();
    let sites = &state.work.sites;
    let taken = |name: &str| sites.contains_key(name) && !sent_before(office, typed);
    let at = AtSite {
        name,
        before: sites.get(name.unwrap_or(typed.get("site_name"))),
        taken: &taken,
    };
    let site = super::site(typed, &at)?;
    let name = site.name.clone();
    if sites.get(&name) != Some(&site) {
        describe(office, Body::SiteDescribed(site), typed)?;
    }
    Ok(name)
}

/// Describes the crew of this name, or with `None` the new one that the form names. Returns its name.
pub fn save_crew(
    office: &Office,
    name: Option<&str>,
    typed: &Typed,
    units: Units,
) -> Result<String, Stop> {
    let state = office.state();
    let crews = &state.work.crews;
    let taken = |name: &str| crews.contains_key(name) && !sent_before(office, typed);
    let at = AtCrew {
        name,
        before: crews.get(name.unwrap_or(typed.get("crew_name"))),
        taken: &taken,
        units,
    };
    let crew = super::crew(typed, &at)?;
    let name = crew.name.clone();
    if crews.get(&name) != Some(&crew) {
        describe(office, Body::CrewDescribed(crew), typed)?;
    }
    Ok(name)
}

/// Whether the entry of this form is in the ledger: the person went back and sent it again.
fn sent_before(office: &Office, typed: &Typed) -> bool {
    entry_id(typed.get("id")).is_some_and(|id| office.has(id))
}

fn otherwise(troubles: &[Trouble]) -> bool {
    troubles
        .iter()
        .any(|trouble| trouble.finding.code == "recorded-otherwise")
}

/// A form sent again as it was is done already; sent again with other values is one more description, under an id of its own.
fn describe(office: &Office, body: Body, typed: &Typed) -> Result<(), Stop> {
    let id = entry_id(typed.get("id"));
    match record(office, body.clone(), id, None) {
        Err(Stop::Troubles(troubles)) if otherwise(&troubles) => record(office, body, None, None),
        done => done,
    }
}
