//! Which palms, and what is done at each.

use super::{Ask, refuse, spare_blade};
use crate::health::health_of;
use crate::office::Office;
use crate::views::standing::{Standing, Standings};
use model::species::{Armature, Species};
use model::{Arg, Finding, Knowledge, PalmRecord, Severity, State};
use rounds::estimate::{Reach, Task, Work};
use rounds::travel::metres;
use rounds::walk::{self, Spot};
use std::collections::BTreeMap;
use std::sync::Arc;

type Works = Vec<(Arc<PalmRecord>, Work)>;
type Left = Vec<(String, Finding)>;
/// Palms that stand together, each with where it stands.
type OfSite = Vec<(Arc<PalmRecord>, Arc<Standing>)>;

/// The palms of an ask with their work, in the order of the walk, site by site; and those that are not cut.
pub(super) fn works(
    office: &Office,
    standings: &Standings,
    ask: &Ask,
) -> Result<(Works, Left), Vec<Finding>> {
    let state = office.state();
    let named = !ask.palms.is_empty();
    let mut by_site: BTreeMap<String, OfSite> = BTreeMap::new();
    let mut left = Vec::new();
    for record in asked(&state, ask)? {
        let Some(standing) = standings.get(office, &record) else {
            continue;
        };
        let due = standing
            .due
            .earliest
            .is_some_and(|day| day <= office.today());
        if !(named || due) {
            continue;
        }
        match why_not(&standing) {
            Some(why) => left.push((record.palm.tag.clone(), why)),
            None => {
                let site = by_site.entry(record.palm.site.clone()).or_default();
                site.push((record, standing));
            }
        }
    }
    let crew = state.work.crews.get(&ask.crew);
    let people = crew.and_then(|crew| crew.people);
    let spare = spare_blade(&state);
    let mut works = Vec::new();
    for (site, palms) in by_site {
        let gate = state.work.sites.get(&site).and_then(|site| site.gate);
        let spots: Vec<Spot> = palms
            .iter()
            .map(|(record, standing)| Spot {
                at: record.palm.position,
                health: health_of(record, Some(standing), office.today()),
            })
            .collect();
        let mut from = gate;
        for at in walk::order(gate, &spots).order {
            let (record, standing) = &palms[at];
            let here = record.palm.position;
            let walk_m = from.zip(here).map(|(a, b)| metres(a, b));
            from = here.or(from);
            let work = Work {
                dead: standing.take.brown,
                green: standing.take.green + standing.take.yellowing,
                from: reach(record, standing.lift),
                spare_blade: spare,
                walk_m,
                people,
                ..at_palm(record)
            };
            works.push((record.clone(), work));
        }
    }
    Ok((works, left))
}

fn why_not(standing: &Standing) -> Option<Finding> {
    if let Some(hold) = standing.holds.first() {
        return Some(hold.clone());
    }
    let nothing = standing.take.live() + standing.take.brown == 0;
    nothing.then(|| Finding::new("estimate-nothing-off", Severity::Info))
}

/// What a cut at a palm is like, whatever comes off.
pub(crate) fn at_palm(record: &PalmRecord) -> Work {
    let species = species(record);
    let armed = species
        .and_then(|s| s.armature.as_ref())
        .is_some_and(|a| a.value != Armature::Unarmed);
    Work {
        tasks: vec![Task::Cut],
        from: reach(record, false),
        height_m: record.palm.trunk_height.map(|height| height.0),
        frond_m: species.and_then(frond),
        armed,
        clean: true,
        spare_blade: true,
        haul: true,
        ..Work::default()
    }
}

/// From where a palm is cut: by its height, where no cut plan asks for a lift; a palm of unknown height as if by pole.
pub(crate) fn reach(record: &PalmRecord, lift: bool) -> Reach {
    match record.palm.trunk_height {
        _ if lift => Reach::Lift,
        None => Reach::Pole,
        Some(height) if height <= care::reach::HAND_REACH => Reach::Hand,
        Some(height) if height <= care::reach::pole_top(Knowledge::embedded()) => Reach::Pole,
        Some(_) => Reach::Lift,
    }
}

fn species(record: &PalmRecord) -> Option<&'static Species> {
    let named = Knowledge::embedded().species_named(&record.palm.species);
    named.species()
}

/// Length of a frond as the tables have it, m: of the leaf, or of its parts.
fn frond(species: &Species) -> Option<f64> {
    let whole = species.leaf_length.as_ref().map(|l| l.value.0);
    let parts = || {
        let rachis = species.rachis_length.as_ref()?.value.0;
        Some(rachis + species.petiole_length.as_ref().map_or(0.0, |p| p.value.0))
    };
    whole.or_else(parts).filter(|length| *length > 0.0)
}

fn asked(state: &State, ask: &Ask) -> Result<Vec<Arc<PalmRecord>>, Vec<Finding>> {
    let mut found: Vec<Arc<PalmRecord>> = Vec::new();
    let mut missing = Vec::new();
    for tag in &ask.palms {
        match state.by_tag(tag).filter(|record| record.stands()) {
            Some(record) if found.iter().any(|f| f.id == record.id) => {}
            Some(record) => found.push(record.clone()),
            None => {
                missing.push(refuse("estimate-no-such-palm").with("tag", Arg::Text(tag.clone())))
            }
        }
    }
    for site in &ask.sites {
        let of = state.standing().filter(|record| record.palm.site == *site);
        let before = found.len();
        found.extend(of.cloned());
        if found.len() == before {
            missing.push(refuse("estimate-no-such-site").with("site", Arg::Text(site.clone())));
        }
    }
    if ask.palms.is_empty() && ask.sites.is_empty() {
        found.extend(state.standing().cloned());
    }
    match missing.is_empty() {
        true => Ok(found),
        false => Err(missing),
    }
}
