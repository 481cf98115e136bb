//! The page's answer and its drawing, over the schedule of the engine.

use super::draw::{Drawing, LANE, TOP, drawing};
use super::*;
use crate::blades::bath_rules;
use crate::measure::{Measure, Units};
use crate::rotating::alike;
use crate::words::{Lang, Words};

fn speaker() -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(Lang::En)))
}

fn drawn(palms: usize, sets: usize) -> (Made, Drawing) {
    let made = made(alike(palms, 6.0), bath_rules(sets, 10.0)).unwrap();
    let drawing = drawing(&speaker(), &made);
    (made, drawing)
}

/// What is drawn is what the schedule says: as many cuts and soaks, side by side and never over each other on a lane.
#[test]
fn the_lanes_hold_the_schedule() {
    let (made, drawing) = drawn(12, 2);
    let count = |key| drawing.blocks.iter().filter(|b| b.key == key).count();
    assert_eq!((count("cut"), count("soak")), (12, made.plan.soaks.len()));
    let waits = made.plan.turns.iter().filter(|t| t.waited > 0.0).count();
    assert_eq!(count("wait"), waits);
    assert_eq!(drawing.lanes, ["Crew", "Set A", "Set B"]);
    assert_eq!(drawing.height, TOP + 3 * LANE);
    for lane in 0..3 {
        let mut blocks: Vec<_> = drawing
            .blocks
            .iter()
            .filter(|b| b.y == TOP + LANE * lane)
            .collect();
        blocks.sort_by_key(|b| b.x);
        assert!(
            blocks.windows(2).all(|w| w[0].x + w[0].width <= w[1].x),
            "{blocks:?}"
        );
        assert!(blocks.iter().all(|b| b.x + b.width <= drawing.width));
    }
}

#[test]
fn a_long_round_is_drawn_in_part_and_says_so() {
    let (_, drawing) = drawn(60, 3);
    assert_eq!(drawing.only, Some(40));
    assert_eq!(drawing.blocks.iter().filter(|b| b.key == "cut").count(), 40);
    assert!(drawing.blocks.iter().all(|b| b.key != "wait"));
}

#[test]
fn minutes_as_a_clock() {
    let said = [0.0, 9.4, 59.6, 65.0, 600.0].map(clock);
    assert_eq!(said, ["0:00", "0:09", "1:00", "1:05", "10:00"]);
}
