//! Palms to watch because of where they stand and what they are: for disorders that do not travel on blades.

use super::reckon::{self, Hosts};
use super::{Ask, Exposure, HostWord, Nearby, Stand};
use model::knowledge::DayRange;
use model::{Metres, Position};

/// Mean radius of the earth, m (IUGG: 6371008.8).
const EARTH_M: f64 = 6_371_008.8;

/// Great-circle distance on a sphere of the mean radius.
pub fn distance(a: Position, b: Position) -> Metres {
    Metres(EARTH_M * a.angle_to(b))
}

/// Hosts, and palms that may be hosts, within the radius of a case, nearest first; behind them those whose distance
/// nobody knows but that share a site with a case.
pub fn nearby(
    palms: &[Stand],
    cases: &[u32],
    hosts: &mut Hosts,
    ask: &Ask,
    range: DayRange,
) -> Vec<Nearby> {
    let today = ask.as_of.day();
    let (until, looks) = reckon::watch(
        today,
        today,
        DayRange { min: None, ..range },
        today,
        ask.look_every,
        Exposure::MOST_LOOKS,
    );
    let mut out: Vec<Nearby> = Vec::new();
    for (number, palm) in palms.iter().enumerate() {
        let host = hosts.of(&palm.species);
        let own = cases.contains(&(number as u32));
        if own || host == HostWord::No {
            continue;
        }
        let cases = || cases.iter().map(|case| &palms[*case as usize]);
        let apart = cases().filter_map(|case| Some(distance(case.position?, palm.position?)));
        let distance = apart.min_by(|a, b| a.0.total_cmp(&b.0));
        let near = match distance {
            Some(distance) => distance.0 <= ask.radius.0,
            None => !palm.site.is_empty() && cases().any(|case| case.site == palm.site),
        };
        if near {
            out.push(Nearby {
                palm: palm.clone(),
                distance,
                host,
                watch_until: until,
                looks: looks.clone(),
            });
        }
    }
    let rank = |near: &Nearby| near.distance.map_or(f64::INFINITY, |d| d.0);
    out.sort_by(|a, b| {
        rank(a)
            .total_cmp(&rank(b))
            .then_with(|| a.palm.tag.cmp(&b.palm.tag))
    });
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn distances_on_the_sphere() {
        // one degree of a great circle is 2 pi r / 360 = 111,195.08 m for r = 6371008.8 m (IUGG mean radius)
        let at = |lat, lon| Position { lat, lon };
        assert!((distance(at(10.0, 20.0), at(11.0, 20.0)).0 - 111_195.08).abs() < 0.01);
        assert!((distance(at(0.0, 0.0), at(0.0, 1.0)).0 - 111_195.08).abs() < 0.01);
        // a degree of longitude at 60 degrees is half of that (55,597.54 m) along the parallel, a little less along the
        // great circle: 2 r asin(cos 60° sin 0.5°) = 55,597.01 m
        assert!((distance(at(60.0, 0.0), at(60.0, 1.0)).0 - 55_597.01).abs() < 0.01);
        assert!(distance(at(27.18, -80.24), at(27.18, -80.24)).0.abs() < 1e-9);
    }
}
