//! Where the palms of a trace stand: a plan from their positions, with a scale bar; no map tiles.

use crate::views::said::Speaker;
use model::{Metres, Position, math};

/// Width of the plan, its own units.
pub const WIDTH: f64 = 640.0;
const MARGIN: f64 = 70.0;
const MOST_HIGH: f64 = 720.0;
/// Room below for the scale bar.
const BELOW: f64 = 56.0;
/// Metres in a degree of latitude: the mean of the meridian (40,008 km around).
const DEGREE: f64 = 111_133.0;
/// About the size of a letter of a label, for keeping labels apart.
const LETTER: (f64, f64) = (12.5, 24.0);

/// A palm to plot.
#[derive(Clone, PartialEq, Debug)]
pub struct Stand {
    /// Its tag.
    pub tag: String,
    /// Where.
    pub position: Position,
    /// `case`, `certain`, `possible`, `source`, `near` or `passed`.
    pub key: &'static str,
}

/// A palm on the plan.
#[derive(Clone, PartialEq, Debug)]
pub struct Spot {
    /// Its tag.
    pub tag: String,
    /// What it is.
    pub key: &'static str,
    /// From the left.
    pub x: i32,
    /// From the top.
    pub y: i32,
    /// Whether its label has room.
    pub labelled: bool,
}

/// The plan; north is up.
#[derive(Clone, PartialEq, Debug)]
pub struct Plot {
    /// Height.
    pub height: i32,
    /// Palms, the case last so that it lies on top.
    pub spots: Vec<Spot>,
    /// Length of the scale bar.
    pub bar: i32,
    /// What the bar stands for.
    pub bar_words: String,
}

/// Lays palms out; `None` if fewer than two stand apart.
pub fn lay(speaker: &Speaker, stands: &[Stand]) -> Option<Plot> {
    let flat = flat(stands);
    let (low, high) = bounds(&flat)?;
    let (wide, tall) = (high.0 - low.0, high.1 - low.1);
    if wide.max(tall) < 0.5 {
        return None;
    }
    let per_metre =
        ((WIDTH - 2.0 * MARGIN) / wide.max(0.5)).min((MOST_HIGH - 2.0 * MARGIN) / tall.max(0.5));
    let left = (WIDTH - wide * per_metre) / 2.0;
    let mut spots: Vec<Spot> = stands
        .iter()
        .zip(&flat)
        .map(|(stand, (east, north))| Spot {
            tag: stand.tag.clone(),
            key: stand.key,
            x: (left + (east - low.0) * per_metre) as i32,
            y: (MARGIN + (high.1 - north) * per_metre) as i32,
            labelled: false,
        })
        .collect();
    spots.sort_by_key(|spot| rank(spot.key));
    label(&mut spots);
    let (metres, words) = bar(speaker, 160.0 / per_metre);
    Some(Plot {
        height: (tall * per_metre + 2.0 * MARGIN + BELOW) as i32,
        spots,
        bar: (metres * per_metre) as i32,
        bar_words: words,
    })
}

/// Metres east and north of the first palm: a trace is small against the earth.
fn flat(stands: &[Stand]) -> Vec<(f64, f64)> {
    let Some(first) = stands.first().map(|s| s.position) else {
        return Vec::new();
    };
    let narrow = math::cos(first.lat.to_radians());
    let east = |p: Position| (p.lon - first.lon) * DEGREE * narrow;
    stands
        .iter()
        .map(|s| (east(s.position), (s.position.lat - first.lat) * DEGREE))
        .collect()
}

fn bounds(flat: &[(f64, f64)]) -> Option<((f64, f64), (f64, f64))> {
    let first = *flat.first()?;
    Some(flat.iter().fold((first, first), |(low, high), at| {
        (
            (low.0.min(at.0), low.1.min(at.1)),
            (high.0.max(at.0), high.1.max(at.1)),
        )
    }))
}

/// What is drawn later lies on top.
fn rank(key: &str) -> usize {
    ["passed", "near", "possible", "certain", "source", "case"]
        .iter()
        .position(|k| *k == key)
        .unwrap_or(0)
}

/// Labels where they have room; those on top first.
fn label(spots: &mut [Spot]) {
    let mut taken: Vec<(f64, f64, f64)> = Vec::new();
    for spot in spots.iter_mut().rev() {
        if spot.key == "passed" {
            continue;
        }
        let half = spot.tag.chars().count() as f64 * LETTER.0 / 2.0;
        let (x, y) = (f64::from(spot.x), f64::from(spot.y));
        let free = taken
            .iter()
            .all(|(tx, ty, th)| (x - tx).abs() > half + th + 4.0 || (y - ty).abs() > LETTER.1);
        spot.labelled = free;
        if free {
            taken.push((x, y, half));
        }
    }
}

/// A round length of at most `most` metres, in the reader's units.
fn bar(speaker: &Speaker, most: f64) -> (f64, String) {
    use crate::measure::Units;
    let unit = match speaker.measure.units {
        Units::Metric => 1.0,
        Units::UsCustomary => Metres::from_feet(1.0).0,
    };
    let round = [0.1, 1.0, 10.0, 100.0, 1e3, 1e4, 1e5]
        .into_iter()
        .flat_map(|ten| [1.0, 2.0, 5.0].map(|k| k * ten))
        .filter(|n| n * unit <= most)
        .fold(0.1, f64::max);
    let metres = round * unit;
    (metres, speaker.measure.length(Metres(metres)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Measure, Units};
    use crate::words::{Lang, Words};

    fn stand(tag: &str, lat: f64, lon: f64, key: &'static str) -> Stand {
        Stand {
            tag: tag.into(),
            position: Position { lat, lon },
            key,
        }
    }

    fn speaker(units: Units) -> Speaker {
        Speaker::new(Measure::new(units, Words::new(Lang::En)))
    }

    #[test]
    fn north_is_up_east_is_right_and_the_bar_is_true() {
        // on the equator a degree is the same both ways
        let stands = [
            stand("C", 0.0, 0.0, "case"),
            stand("N", 0.001, 0.0, "certain"),
            stand("E", 0.0, 0.001, "possible"),
        ];
        let plot = lay(&speaker(Units::Metric), &stands).unwrap();
        let at = |tag: &str| plot.spots.iter().find(|s| s.tag == tag).unwrap();
        assert!(at("N").y < at("C").y && (at("N").x - at("C").x).abs() <= 1);
        assert!(at("E").x > at("C").x && (at("E").y - at("C").y).abs() <= 1);
        let across = f64::from(at("E").x - at("C").x);
        let metres: f64 = plot
            .bar_words
            .split('\u{a0}')
            .next()
            .unwrap()
            .parse()
            .unwrap();
        assert!((across / 111.133 - f64::from(plot.bar) / metres).abs() < 0.1);
        assert_eq!(plot.spots.last().unwrap().tag, "C", "the case lies on top");
    }

    #[test]
    fn one_place_is_no_plan_and_labels_keep_apart() {
        let metric = speaker(Units::Metric);
        assert_eq!(lay(&metric, &[]), None);
        assert_eq!(
            lay(
                &metric,
                &[stand("A", 1.0, 1.0, "case"), stand("B", 1.0, 1.0, "near")]
            ),
            None
        );
        let near = [
            stand("AAAA", 0.0, 0.0, "case"),
            stand("BBBB", 0.0, 0.000001, "certain"),
            stand("FFFF", 0.001, 0.001, "certain"),
        ];
        let plot = lay(&speaker(Units::UsCustomary), &near).unwrap();
        let labelled: Vec<_> = plot
            .spots
            .iter()
            .filter(|s| s.labelled)
            .map(|s| s.tag.as_str())
            .collect();
        assert_eq!(labelled, ["FFFF", "AAAA"]);
        assert!(plot.bar_words.ends_with("ft"));
    }
}
