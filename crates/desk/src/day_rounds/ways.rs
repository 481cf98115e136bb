//! From crews, places and pieces of work to the problem that is searched.

use super::crews::Crew;
use super::gather::{Piece, Work};
use crate::intake::TravelTable;
use model::{Finding, Position, Severity};
use rounds::route::{self, Job, Problem, Travel, Window};
use rounds::travel;

/// A road is so many times as long as the great circle (assumed).
pub const ROAD_FACTOR: f64 = 1.3;
/// Speed between places with a trailer (assumed).
pub const KM_PER_HOUR: f64 = 35.0;
/// Minutes from the arrival at a site to the first palm: parking, cordon, unloading; with a lift its unloading, too
/// (assumed).
const SET_UP_MIN: [i64; 2] = [5, 15];
/// Sending one more crew out is worth it from so many seconds saved on (assumed: half an hour).
const CREW_OUT: i64 = 1_800;
/// The bit of [`Job::needs`] for a lift.
const LIFT: u64 = 1;

/// How long it is between the crews' places and the sites. Places of the search: two for each crew (start and end), then
/// the sites.
pub struct Ways {
    travel: Travel,
    crews: usize,
}

/// Ways from the keeper's table where it has them, reckoned where not.
pub fn between(
    crews: &[Crew],
    work: &Work,
    table: Option<&TravelTable>,
    remarks: &mut Vec<Finding>,
) -> Ways {
    let mut named: Vec<(&str, Position)> = Vec::new();
    for crew in crews {
        named.push((&crew.name, crew.from));
        named.push((&crew.name, crew.to));
    }
    named.extend(
        work.places
            .iter()
            .map(|place| (place.site.as_str(), place.gate)),
    );
    let positions: Vec<Position> = named.iter().map(|(_, at)| *at).collect();
    let mut ways = Ways {
        travel: travel::matrix(&positions, ROAD_FACTOR, KM_PER_HOUR),
        crews: crews.len(),
    };
    let mut reckoned = table.is_none();
    for (i, (from, _)) in named.iter().enumerate() {
        for (k, (to, _)) in named.iter().enumerate() {
            let cell = i * named.len() + k;
            if from != to
                && let Some(table) = table
            {
                match table.way(from, to) {
                    Some((metres, seconds)) => {
                        ways.travel.distance[cell] = metres;
                        ways.travel.seconds[cell] = seconds;
                    }
                    None => reckoned = true,
                }
            }
        }
    }
    if reckoned {
        remarks.push(Finding::new("round-remark-reckoned", Severity::Info));
    }
    ways.set_up(work);
    ways
}

impl Ways {
    /// The place of a crew's start; its end is the next one.
    fn start(crew: usize) -> usize {
        2 * crew
    }

    /// The place of a site.
    fn site(&self, place: usize) -> usize {
        2 * self.crews + place
    }

    /// Coming to a site from elsewhere takes setting up, too; from its other half only what the lift adds.
    fn set_up(&mut self, work: &Work) {
        let places = self.travel.places;
        for from in 0..places {
            for (k, place) in work.places.iter().enumerate() {
                let to = self.site(k);
                let other_half =
                    from >= self.site(0) && work.places[from - self.site(0)].site == place.site;
                let full = set_up(place.lift);
                let more = match (from == to, other_half) {
                    (true, _) => 0,
                    (false, true) => (full - set_up(false)).max(0),
                    (false, false) => full,
                };
                self.travel.seconds[from * places + to] += more;
            }
        }
    }

    /// The problem of the day.
    pub fn problem(&self, crews: &[Crew], work: &Work) -> Problem {
        Problem {
            travel: self.travel.clone(),
            jobs: work
                .pieces
                .iter()
                .map(|piece| self.job(work, piece))
                .collect(),
            crews: crews
                .iter()
                .enumerate()
                .map(|(i, crew)| one(i, crew))
                .collect(),
        }
    }

    fn job(&self, work: &Work, piece: &Piece) -> Job {
        let place = &work.places[piece.place];
        let service = work.service(piece);
        // hours too short for this piece: a window that no crew can reach, so that the reason is said to be the hours
        let never = || {
            vec![Window {
                open: route::LONGEST - 1,
                close: route::LONGEST - 1,
            }]
        };
        Job {
            place: self.site(piece.place),
            service,
            windows: place
                .windows(service, set_up(place.lift))
                .unwrap_or_else(never),
            load: vec![work.litres(piece)],
            needs: if place.lift { LIFT } else { 0 },
            worth: Some(piece.visits.iter().map(|v| work.visits[*v].worth).sum()),
        }
    }
}

/// Seconds from the arrival at a site to the first palm.
pub fn set_up(lift: bool) -> i64 {
    60 * SET_UP_MIN[usize::from(lift)]
}

fn one(i: usize, crew: &Crew) -> route::Crew {
    route::Crew {
        from: Ways::start(i),
        to: Ways::start(i) + 1,
        hours: crew.hours,
        room: vec![crew.room],
        skills: if crew.lift { LIFT } else { 0 },
        fixed: CREW_OUT,
        per_distance: 0,
        per_second: 1,
    }
}
