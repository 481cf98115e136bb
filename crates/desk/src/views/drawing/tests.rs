use super::*;
use crown::{PictureFrond, Tint};
use model::Day;
use std::collections::BTreeSet;

fn frond(rank: u32, lean_degrees: f64, azimuth_degrees: f64, tint: Tint) -> PictureFrond {
    PictureFrond {
        rank,
        lean_degrees,
        azimuth_degrees,
        tint,
        cut: false,
    }
}

fn picture(fronds: Vec<PictureFrond>) -> Picture {
    Picture {
        day: Day(0),
        fronds,
        theta_end_degrees: 150.0,
        theta_from_clock: false,
    }
}

fn round_crown(count: u32) -> Picture {
    let lean = |i: u32| 150.0 * f64::from(i) / f64::from(count);
    picture(
        (1..=count)
            .map(|i| frond(i, lean(i), f64::from(i) * 137.5 % 360.0, Tint::Green))
            .collect(),
    )
}

/// Whole numbers of a path, in order.
fn numbers(path: &str) -> Vec<f64> {
    let spaced: String = path
        .chars()
        .map(|c| {
            if c == '-' || c.is_ascii_digit() || c == '.' {
                c
            } else {
                ' '
            }
        })
        .collect();
    spaced
        .split_whitespace()
        .map(|n| n.parse().unwrap_or_else(|_| panic!("{n} in {path}")))
        .collect()
}

/// All points a path goes through (not the ones its curves are pulled by).
fn points(path: &str) -> Vec<(f64, f64)> {
    let mut points = Vec::new();
    for piece in path.split('M').filter(|p| !p.is_empty()) {
        let mut at = (0.0, 0.0);
        let mut rest = piece;
        let mut kind = 'M';
        loop {
            let end = rest.find(['q', 'l', 'z']).unwrap_or(rest.len());
            let n = numbers(&rest[..end]);
            at = match kind {
                'M' => (n[0], n[1]),
                _ => (at.0 + n[n.len() - 2], at.1 + n[n.len() - 1]),
            };
            points.push(at);
            kind = rest[end..].chars().next().unwrap_or('z');
            if kind == 'z' {
                break;
            }
            rest = &rest[end + 1..];
        }
    }
    points
}

#[test]
fn every_frond_of_the_picture_is_drawn_once() {
    let mut p = round_crown(30);
    p.fronds.push(frond(31, 160.0, 10.0, Tint::Brown));
    p.fronds.push(frond(32, 165.0, 200.0, Tint::Brown));
    p.fronds[31].cut = true;
    let drawing = draw(&Look::default(), &[&p]);
    let crown = &drawing.crowns[0];
    assert_eq!(crown.fronds.len(), 32);
    assert_eq!(crown.counts, [30, 0, 2]);
    assert_eq!(
        (
            crown.cut,
            crown
                .fronds
                .iter()
                .filter(|f| f.going && f.cut.is_some())
                .count()
        ),
        (1, 1)
    );
    let shelf: BTreeSet<&str> = drawing.shapes.iter().map(|s| s.id.as_str()).collect();
    assert_eq!(shelf.len(), drawing.shapes.len(), "a shape is named twice");
    assert!(
        crown
            .fronds
            .iter()
            .all(|f| shelf.contains(f.shape.as_str()))
    );
    assert!(drawing.shapes.len() < 32, "shapes are shared");
}

#[test]
fn a_frond_leans_on_paper_as_on_the_clock() {
    // seen square on (azimuth 0) the line from base to tip stands at the frond's clock angle, bending included
    for (lean, tip_is) in [(14.0, "up"), (91.0, "level"), (147.0, "down")] {
        let drawing = draw(
            &Look::default(),
            &[&picture(vec![frond(5, lean, 0.0, Tint::Green)])],
        );
        let (x, y) = *points(&drawing.shapes[0].leaf.rib).last().unwrap();
        let degrees = model::math::atan2(x, -y).to_degrees();
        let across = degrees - lean;
        assert!(
            across.abs() < 24.0,
            "{tip_is}: leans {lean}, drawn {degrees}"
        );
        assert!(x > 0.0);
    }
}

#[test]
fn fronds_to_the_left_are_mirrored_and_the_far_half_lies_behind() {
    for (azimuth, mirrored, behind) in [
        (20.0, false, false),
        (160.0, true, false),
        (200.0, true, true),
        (340.0, false, true),
    ] {
        let drawing = draw(
            &Look::default(),
            &[&picture(vec![frond(3, 80.0, azimuth, Tint::Green)])],
        );
        let placed = &drawing.crowns[0].fronds[0];
        assert_eq!(
            placed.transform.starts_with("scale(-"),
            mirrored,
            "{azimuth}"
        );
        assert_eq!(placed.behind, behind, "{azimuth}");
    }
}

#[test]
fn all_forms_stay_on_the_paper() {
    let forms = [
        LeafForm::Pinnate,
        LeafForm::Bipinnate,
        LeafForm::Palmate,
        LeafForm::Costapalmate,
    ];
    for form in forms {
        let look = Look {
            form: Some(form),
            ..Look::default()
        };
        for shape in draw(&look, &[&round_crown(40)]).shapes {
            let blade = points(&shape.leaf.blade);
            assert!(
                blade.len() > 100,
                "{form:?}: a blade of {} points",
                blade.len()
            );
            for (x, y) in blade {
                let on_paper = x.abs() < PAPER.0 && y > -PAPER.1 && y < PAPER.2 + 100.0;
                assert!(on_paper, "{form:?} {}: {x} {y}", shape.id);
            }
        }
    }
}

#[test]
fn many_cuts_are_marked_on_some_fronds_and_all_are_counted() {
    let mut p = round_crown(60);
    p.fronds.iter_mut().skip(10).for_each(|f| f.cut = true);
    let crown = &draw(&Look::default(), &[&p]).crowns[0];
    let marks = crown.fronds.iter().filter(|f| f.cut.is_some()).count();
    assert_eq!(
        (crown.cut, crown.fronds.iter().filter(|f| f.going).count()),
        (50, 50)
    );
    assert!((6..=12).contains(&marks), "{marks}");
}

#[test]
fn a_year_of_crowns_is_light_enough_for_a_phone() {
    let year: Vec<Picture> = (30..44).map(round_crown).collect();
    let drawing = draw(&Look::default(), &year.iter().collect::<Vec<_>>());
    let bytes: usize = drawing
        .shapes
        .iter()
        .map(|s| s.leaf.blade.len() + s.leaf.rib.len())
        .sum();
    assert!(bytes < 400_000, "{bytes} bytes of shapes");
}

#[test]
fn the_spear_stands_as_it_was_found() {
    let turn = |spear| {
        draw(
            &Look {
                spear,
                ..Look::default()
            },
            &[],
        )
        .stem
        .spear
    };
    assert_eq!(turn(Some(Spear::Firm)).turn, 0);
    assert!(turn(Some(Spear::Leaning)).turn > 15);
    assert!(turn(Some(Spear::Down)).turn > 90);
    assert!(turn(Some(Spear::Pulled)).gone);
    assert_eq!(turn(None).turn, 0);
}

#[test]
fn a_short_trunk_ends_on_the_ground_and_an_unknown_one_leaves_the_paper() {
    let ground = |trunk| {
        draw(
            &Look {
                trunk,
                ..Look::default()
            },
            &[],
        )
        .stem
        .ground
    };
    assert!(ground(Some(Metres(1.0))).is_some());
    assert_eq!(ground(Some(Metres(12.0))), None);
    assert_eq!(ground(None), None);
}
