//! What there is to do, by site, in pieces that a crew takes whole.

use super::crews::{Crew, has_begun};
use super::wanted::Wanted;
use super::{Ask, Left, MOST_PALMS, Scope, refuse};
use crate::office::Office;
use crate::views::standing::Standings;
use model::{Arg, Day, Finding, Hours, PalmId, PalmRecord, Position, Severity, Site};
use rayon::prelude::*;
use rounds::route::Window;
use rounds::travel::metres;
use rounds::walk::{self, Health, Spot};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// A piece of work is not longer, minutes, unless one palm is.
const PIECE_MIN: f64 = 60.0;

/// A palm to be worked on.
pub struct Visit {
    pub record: Arc<PalmRecord>,
    pub health: Health,
    pub lift: bool,
    pub tasks: Vec<String>,
    /// Minutes there, the way on foot from the palm before (or the gate) included.
    pub minutes: f64,
    /// Litres of loose debris it leaves.
    pub litres: i64,
    /// What leaving it for another day costs, in seconds of the search.
    pub worth: i64,
}

/// Palms of one site that one crew does one after another.
pub struct Piece {
    pub place: usize,
    /// Indices into [`Work::visits`], in the order of the walk.
    pub visits: Vec<usize>,
}

/// A site as the search sees it; where some of its palms need a lift and others do not, there are two of one name.
pub struct Place {
    pub site: String,
    pub gate: Position,
    pub lift: bool,
    /// When work may be done; empty: at any time.
    pub hours: Vec<Hours>,
}

/// All there is to do.
pub struct Work {
    pub visits: Vec<Visit>,
    pub places: Vec<Place>,
    pub pieces: Vec<Piece>,
    pub left: Vec<Left>,
    /// Minutes on foot for each metre.
    walk: f64,
}

/// Gathers the palms of an ask.
pub fn work(
    office: &Office,
    standings: &Standings,
    ask: &Ask,
    crews: &[Crew],
    remarks: &mut Vec<Finding>,
) -> Result<Work, Vec<Finding>> {
    let records = asked(office, ask, crews)?;
    let wanted = Wanted::of(office, ask, crews);
    let found: Vec<Option<Visit>> = records
        .par_iter()
        .map(|record| {
            let standing = standings.get(office, record)?;
            wanted.visit(office, record, &standing)
        })
        .collect();
    // a palm named by tag does not just vanish
    let named = matches!(ask.scope, Scope::Palms(_));
    let idle = records.iter().zip(&found);
    let left = idle
        .filter(|(_, visit)| named && visit.is_none())
        .map(|(record, _)| Left {
            palm: record.id,
            why: Finding::new("round-left-nothing", Severity::Info),
        })
        .collect();
    let visits: Vec<Visit> = found.into_iter().flatten().collect();
    if visits.is_empty() {
        return Err(vec![
            refuse("round-nothing-to-do").with("date", Arg::Date(ask.day)),
        ]);
    }
    if visits.len() > MOST_PALMS {
        return Err(vec![
            refuse("round-many-palms")
                .with("n", Arg::Count(visits.len() as i64))
                .with("most", Arg::Count(MOST_PALMS as i64)),
        ]);
    }
    remarks.push(wanted.minutes_remark());
    let mut work = Work {
        visits,
        places: Vec::new(),
        pieces: Vec::new(),
        left,
        walk: wanted.minutes_a_metre(),
    };
    let state = office.state();
    let mut by_site: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    for (i, visit) in work.visits.iter().enumerate() {
        by_site
            .entry(visit.record.palm.site.clone())
            .or_default()
            .push(i);
    }
    for (site, visits) in by_site {
        work.site(&site, state.work.sites.get(&site), visits, ask.day);
    }
    Ok(work)
}

/// Palms of the scope that are in no other crew's round of that day.
fn asked(office: &Office, ask: &Ask, crews: &[Crew]) -> Result<Vec<Arc<PalmRecord>>, Vec<Finding>> {
    let state = office.state();
    let taken: BTreeSet<PalmId> = state
        .work
        .rounds
        .values()
        .filter(|round| round.plan.day == ask.day)
        .filter(|round| has_begun(round) || crews.iter().all(|crew| crew.name != round.plan.crew))
        .flat_map(|round| round.plan.stops.iter().map(|stop| stop.palm))
        .collect();
    let tags = match &ask.scope {
        Scope::Due => return Ok(free(state.standing(), &taken)),
        Scope::Sites(sites) => {
            let of = state.standing().filter(|r| sites.contains(&r.palm.site));
            return Ok(free(of, &taken));
        }
        Scope::Palms(tags) => tags,
    };
    let (mut found, mut missing) = (Vec::new(), Vec::new());
    for tag in tags {
        match state.by_tag(tag).filter(|record| record.stands()) {
            Some(record) => found.push(record),
            None => missing.push(refuse("round-no-such-palm").with("tag", Arg::Text(tag.clone()))),
        }
    }
    found.dedup_by_key(|record| record.id);
    match missing.is_empty() {
        true => Ok(free(found.into_iter(), &taken)),
        false => Err(missing),
    }
}

fn free<'a>(
    records: impl Iterator<Item = &'a Arc<PalmRecord>>,
    taken: &BTreeSet<PalmId>,
) -> Vec<Arc<PalmRecord>> {
    records
        .filter(|r| !taken.contains(&r.id))
        .cloned()
        .collect()
}

impl Work {
    /// Adds a site: closed sites and sites nobody can find are left out with the reason.
    fn site(&mut self, name: &str, site: Option<&Site>, visits: Vec<usize>, day: Day) {
        let said = || Arg::Text(name.to_owned());
        let closed = site.and_then(|site| {
            let mut spells = site.closed.iter();
            spells.find(|closed| (closed.first..=closed.last).contains(&day))
        });
        if let Some(closed) = closed {
            let why = Finding::new("round-left-closed", Severity::Act)
                .with("site", said())
                .with("until", Arg::Date(closed.last))
                .with("why", Arg::Text(closed.why.clone()));
            return self.leave(&visits, &why);
        }
        let Some(gate) = site
            .and_then(|site| site.gate)
            .or_else(|| self.middle(&visits))
        else {
            let why = Finding::new("round-left-no-place", Severity::Act).with("site", said());
            return self.leave(&visits, &why);
        };
        for lift in [false, true] {
            let own: Vec<usize> = self.walked(gate, &visits, lift);
            if own.is_empty() {
                continue;
            }
            let place = self.places.len();
            self.places.push(Place {
                site: name.to_owned(),
                gate,
                lift,
                hours: site.map_or_else(Vec::new, |site| site.hours.clone()),
            });
            self.pieces(place, gate, own);
        }
    }

    pub fn leave(&mut self, visits: &[usize], why: &Finding) {
        let palms = visits.iter().map(|i| self.visits[*i].record.id);
        self.left.extend(palms.map(|palm| Left {
            palm,
            why: why.clone(),
        }));
    }

    /// The middle of the palms of a site that has no gate.
    fn middle(&self, visits: &[usize]) -> Option<Position> {
        let at: Vec<Position> = visits.iter().filter_map(|i| self.at(*i)).collect();
        let n = at.len() as f64;
        (n > 0.0).then(|| Position {
            lat: at.iter().map(|p| p.lat).sum::<f64>() / n,
            lon: at.iter().map(|p| p.lon).sum::<f64>() / n,
        })
    }

    fn at(&self, visit: usize) -> Option<Position> {
        self.visits[visit].record.palm.position
    }

    /// Those that need a lift or those that need none, in the order of the walk.
    fn walked(&self, gate: Position, visits: &[usize], lift: bool) -> Vec<usize> {
        let own: Vec<usize> = visits
            .iter()
            .copied()
            .filter(|i| self.visits[*i].lift == lift)
            .collect();
        let spots: Vec<Spot> = own
            .iter()
            .map(|i| Spot {
                at: self.at(*i),
                health: self.visits[*i].health,
            })
            .collect();
        walk::order(Some(gate), &spots)
            .order
            .into_iter()
            .map(|i| own[i])
            .collect()
    }

    /// Cuts a walk into pieces, the way on foot counted to each palm.
    fn pieces(&mut self, place: usize, gate: Position, own: Vec<usize>) {
        let mut from = gate;
        let (mut piece, mut length): (Vec<usize>, f64) = (Vec::new(), 0.0);
        for visit in own {
            if let Some(at) = self.at(visit) {
                self.visits[visit].minutes += metres(from, at) * self.walk;
                from = at;
            }
            let minutes = self.visits[visit].minutes;
            if !piece.is_empty() && length + minutes > PIECE_MIN {
                let visits = std::mem::take(&mut piece);
                self.pieces.push(Piece { place, visits });
                length = 0.0;
            }
            piece.push(visit);
            length += minutes;
        }
        self.pieces.push(Piece {
            place,
            visits: piece,
        });
    }

    /// Whole seconds of a visit.
    pub fn seconds(&self, visit: usize) -> i64 {
        (self.visits[visit].minutes * 60.0).round() as i64
    }

    /// Litres of loose debris of a piece.
    pub fn litres(&self, piece: &Piece) -> i64 {
        piece
            .visits
            .iter()
            .map(|visit| self.visits[*visit].litres)
            .sum()
    }

    /// Whole seconds of a piece.
    pub fn service(&self, piece: &Piece) -> i64 {
        piece.visits.iter().map(|visit| self.seconds(*visit)).sum()
    }
}

impl Place {
    /// When work of some seconds may start so that it ends within the hours; setting up belongs to the hours, too.
    pub fn windows(&self, service: i64, set_up: i64) -> Option<Vec<Window>> {
        if self.hours.is_empty() {
            return Some(Vec::new());
        }
        let mut hours: Vec<&Hours> = self.hours.iter().collect();
        hours.sort();
        let windows: Vec<Window> = hours
            .into_iter()
            .map(|h| Window {
                open: i64::from(h.from) + set_up,
                close: i64::from(h.to) - service,
            })
            .filter(|window| window.open <= window.close)
            .collect();
        (!windows.is_empty()).then_some(windows)
    }
}
