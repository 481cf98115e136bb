//! The order of palms against a general solver, every order there is, and what it promises.

use super::*;
use proptest::prelude::*;
use std::collections::BTreeMap;

/// Sites of `cases/walk`, with the gate.
fn sites() -> BTreeMap<String, (Option<Position>, Vec<Spot>)> {
    let text = include_str!("../../../../cases/walk/spots.csv");
    let mut sites: BTreeMap<String, (Option<Position>, Vec<Spot>)> = BTreeMap::new();
    for row in csv::Reader::from_reader(text.as_bytes()).records() {
        let row = row.unwrap();
        let number = |column: usize| row[column].parse().unwrap();
        let at = Some(Position {
            lat: number(2),
            lon: number(3),
        });
        let site = sites.entry(row[0].to_owned()).or_default();
        match Health::ALL.into_iter().find(|h| h.key() == &row[1]) {
            Some(health) => site.1.push(Spot { at, health }),
            None => site.0 = at,
        }
    }
    sites
}

struct Expected {
    case: String,
    metres: f64,
    bound: f64,
    source: String,
}

fn expected() -> Vec<Expected> {
    let text = include_str!("../../../../cases/walk/expected.csv");
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let row = |row: csv::StringRecord| Expected {
        case: row[0].to_owned(),
        metres: row[2].parse().unwrap(),
        bound: row[3].parse().unwrap(),
        source: row[5].to_owned(),
    };
    reader.records().map(|r| row(r.unwrap())).collect()
}

/// Against CP-SAT (OR-Tools), the model of `cases/walk/make.py`: within 2 % on 100 palms, equal where proven.
#[test]
fn within_two_per_cent_of_a_general_solver() {
    let sites = sites();
    let mut seen = (0, 0);
    for expected in expected() {
        assert!(expected.source.contains("CP-SAT"));
        let (gate, spots) = &sites[&expected.case];
        let walk = order(*gate, spots);
        let ratio = walk.metres / expected.metres;
        // the solver worked in whole millimetres
        assert!(walk.metres > expected.bound - 0.1, "{}", expected.case);
        if walk.exact {
            assert!(walk.metres < expected.metres + 0.02, "{}", expected.case);
            seen.0 += 1;
        } else {
            assert_eq!(spots.len(), 100);
            assert!(ratio <= 1.02, "{}: {ratio}", expected.case);
            seen.1 += 1;
        }
    }
    assert_eq!(seen, (8, 8));
}

fn spots(from: &[(i32, i32, usize)]) -> Vec<Spot> {
    let spot = |&(x, y, health): &(i32, i32, usize)| Spot {
        at: Some(at(x, y)),
        health: Health::ALL[health],
    };
    from.iter().map(spot).collect()
}

fn at(x: i32, y: i32) -> Position {
    Position {
        lat: 27.0 + f64::from(y) * 1e-6,
        lon: -82.0 + f64::from(x) * 1e-6,
    }
}

/// The shortest way by trying every order that keeps the classes.
fn by_trying(from: Option<Position>, spots: &[Spot]) -> f64 {
    fn go(here: Option<Position>, left: &[Spot], so_far: f64, best: &mut f64) {
        let Some(class) = left.iter().map(|s| s.health).min() else {
            *best = best.min(so_far);
            return;
        };
        for (i, spot) in left.iter().enumerate().filter(|(_, s)| s.health == class) {
            let step = here.map_or(0.0, |here| 6_371_008.8 * here.angle_to(spot.at.unwrap()));
            let mut rest = left.to_vec();
            rest.remove(i);
            go(spot.at, &rest, so_far + step, best);
        }
    }
    let mut best = f64::INFINITY;
    go(from, spots, 0.0, &mut best);
    best
}

/// Metres of the way found by the search, and of the proven one; the gate is to the south.
fn searched(palms: &[(i32, i32, usize)]) -> (f64, f64) {
    let mut places = spots(palms);
    places.sort_by_key(|s| s.health);
    let sizes = Health::ALL.map(|h| places.iter().filter(|s| s.health == h).count());
    let sizes: Vec<usize> = sizes.into_iter().filter(|n| *n > 0).collect();
    let field = Field::new(
        Some(at(1000, -200)),
        places.iter().filter_map(|s| s.at).collect(),
    );
    let found = field.metres(&search::short(&field, &sizes));
    (found, field.metres(&exact::shortest(&field, &sizes)))
}

fn check_order(walk: &Walk, spots: &[Spot]) {
    let mut all = walk.order.clone();
    all.sort_unstable();
    assert_eq!(all, (0..spots.len()).collect::<Vec<_>>());
    let key = |i: &usize| (spots[*i].health, spots[*i].at.is_none());
    assert!(walk.order.is_sorted_by_key(key));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn few_palms_are_walked_the_shortest_way(
        palms in prop::collection::vec((0..2000, 0..2000, 0usize..4), 1..8),
        gate in prop::option::of((-500..2500, -500..2500)),
    ) {
        let spots = spots(&palms);
        let gate = gate.map(|(x, y)| at(x, y));
        let walk = order(gate, &spots);
        prop_assert!(walk.exact);
        check_order(&walk, &spots);
        prop_assert!((walk.metres - by_trying(gate, &spots)).abs() < 1e-5);
    }

    /// The search knows nothing of the exact way; on few palms the two must meet.
    #[test]
    fn the_search_finds_what_is_proven(
        palms in prop::collection::vec((0..2000, 0..2000, 0usize..4), 2..12),
    ) {
        let (found, proven) = searched(&palms);
        prop_assert!(found >= proven - 1e-5);
        prop_assert!(found <= proven * 1.02 + 1e-5, "{found} m, {proven} m proven");
    }

    #[test]
    fn many_palms_keep_classes_and_come_out_the_same(
        palms in prop::collection::vec((0..4000, 0..4000, 0usize..4), 30..60),
        lost in prop::collection::vec(0usize..30, 0..6),
    ) {
        let mut spots = spots(&palms);
        lost.iter().for_each(|i| spots[*i].at = None);
        let walk = order(Some(at(0, 0)), &spots);
        check_order(&walk, &spots);
        let without = spots.iter().filter(|s| s.at.is_none()).count();
        prop_assert_eq!(walk.unplaced, without);
        prop_assert_eq!(order(Some(at(0, 0)), &spots), walk);
    }
}

/// Sites on which the search once stayed in a way that no single change makes shorter: a class of two has to be shaken,
/// too, and classes side by side have to turn round together.
#[test]
fn the_search_does_not_stay_where_classes_must_turn() {
    let two_classes = [
        (0, 1302, 0),
        (1562, 1257, 1),
        (38, 0, 1),
        (180, 1140, 1),
        (1065, 1258, 0),
    ];
    let four_classes = [
        (333, 0, 0),
        (1380, 74, 2),
        (470, 152, 3),
        (0, 0, 3),
        (0, 1101, 1),
        (795, 686, 1),
        (0, 0, 3),
        (1519, 224, 0),
    ];
    for palms in [&two_classes[..], &four_classes[..]] {
        let (found, proven) = searched(palms);
        assert!(
            (found - proven).abs() < 1e-5,
            "{found} m, {proven} m proven"
        );
    }
}

/// The end of the healthy palms is chosen with the ill one in view: 10 m of healthy palms in a row, the ill one beyond
/// the near end. Class by class the walk would end far from it.
#[test]
fn the_end_of_a_class_is_chosen_with_the_next_in_view() {
    let row = spots(&[(0, 0, 0), (50, 0, 0), (100, 0, 0), (-30, 0, 3)]);
    let walk = order(None, &row);
    assert_eq!(walk.order, [2, 1, 0, 3]);
    assert!(walk.exact);
}

#[test]
fn palms_without_a_position_are_last_of_their_class() {
    let mut yard = spots(&[(0, 0, 2), (10, 0, 0), (20, 0, 0), (30, 0, 0), (40, 0, 2)]);
    yard[1].at = None;
    yard[4].at = Some(Position {
        lat: 95.0,
        lon: 0.0,
    });
    let walk = order(Some(at(40, 0)), &yard);
    assert_eq!(walk.order, [3, 2, 1, 0, 4]);
    assert_eq!((walk.unplaced, walk.exact), (2, true));
    let nowhere = Spot {
        at: None,
        health: Health::Unknown,
    };
    let walk = order(None, &[nowhere, nowhere]);
    assert_eq!((walk.order, walk.metres), (vec![0, 1], 0.0));
    assert_eq!(
        order(None, &[]),
        Walk {
            exact: true,
            ..Walk::default()
        }
    );
}

/// Palms on one spot, palms in one line, and a site of 1,600 that needs no table of lengths.
#[test]
fn odd_sites_are_walked_too() {
    let same = spots(&[(5, 5, 0); 40]);
    assert!(order(None, &same).metres < 1e-6);
    let line: Vec<(i32, i32, usize)> = (0..40).map(|k| (k * 17 % 40 * 100, 0, 0)).collect();
    let walk = order(None, &spots(&line));
    let end_to_end = 6_371_008.8 * at(0, 0).angle_to(at(3900, 0));
    assert!((walk.metres - end_to_end).abs() < 1e-3, "{}", walk.metres);
    let grid: Vec<(i32, i32, usize)> = (0..1600).map(|k| (k % 40 * 90, k / 40 * 100, 0)).collect();
    let walk = order(None, &spots(&grid));
    check_order(&walk, &spots(&grid));
    let shortest = 1599.0 * 6_371_008.8 * at(0, 0).angle_to(at(90, 0));
    assert!(walk.metres < 1.06 * shortest, "{}", walk.metres / shortest);
}
