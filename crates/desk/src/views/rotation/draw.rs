//! The lanes of a rotation: one for the crew, one for each set; all lengths in units of the drawing.

use super::clock;
use crate::rotating::{Made, letter};
use crate::views::said::Speaker;

/// Height of a lane. The style sheet repeats it.
pub const LANE: i32 = 56;
/// Height above the first lane, for the hours. The style sheet repeats it.
pub const TOP: i32 = 30;
/// More cuts than this are not drawn.
const DRAWN: usize = 40;
/// Room that the number of a palm wants.
const NUMBER: f64 = 26.0;
/// Room that a letter wants.
const LETTER: f64 = 9.0;

/// The drawing.
#[derive(Clone, PartialEq, Debug)]
pub struct Drawing {
    /// Width.
    pub width: i32,
    /// Height.
    pub height: i32,
    /// Names of the lanes from the top: the crew, then the sets.
    pub lanes: Vec<String>,
    /// Lines of the hours: where, and in words.
    pub hours: Vec<(i32, String)>,
    /// What stands on the lanes.
    pub blocks: Vec<Block>,
    /// How many cuts are drawn, where it is not all of them.
    pub only: Option<usize>,
}

/// Something on a lane.
#[derive(Clone, PartialEq, Debug)]
pub struct Block {
    /// `cut`, `soak`, `hands` (brushed, rinsed, or waiting for the bath), `wait`.
    pub key: &'static str,
    /// Left end.
    pub x: i32,
    /// Top of the lane.
    pub y: i32,
    /// Width, at least 1.
    pub width: i32,
    /// Words on it; empty where they do not fit.
    pub label: String,
}

struct Pen {
    scale: f64,
    blocks: Vec<Block>,
}

impl Pen {
    fn x(&self, minutes: f64) -> i32 {
        (minutes * self.scale).round() as i32
    }

    fn block(&mut self, key: &'static str, lane: usize, from: f64, to: f64, label: String) {
        let (x, end) = (self.x(from), self.x(to));
        if end <= x {
            return;
        }
        self.blocks.push(Block {
            key,
            x,
            y: TOP + LANE * lane as i32,
            width: end - x,
            label,
        });
    }
}

/// Draws the first cuts of a round, with the cleanings that begin among them.
pub fn drawing(speaker: &Speaker, made: &Made) -> Drawing {
    let drawn = &made.plan.turns[..made.plan.turns.len().min(DRAWN)];
    let shortest = drawn.iter().map(|t| t.end - t.start).fold(60.0, f64::min);
    let soaks = speaker.say("rotation-soaks");
    let word = LETTER * (soaks.chars().count() + 1) as f64;
    let scale = (NUMBER / shortest.max(0.5)).max(word / made.kit.soak_min.max(0.5));
    let mut pen = Pen {
        scale: scale.clamp(4.0, 14.0),
        blocks: Vec::new(),
    };
    let mut end: f64 = 0.0;
    for (turn, soak) in drawn.iter().zip(made.soaks()) {
        let lane = turn.set + 1;
        if turn.waited > 0.0 {
            let mut minutes = speaker.measure.number(turn.waited, 1);
            if turn.waited * pen.scale < LETTER * (minutes.len() + 1) as f64 {
                minutes.clear();
            }
            pen.block("wait", 0, turn.start - turn.waited, turn.start, minutes);
        }
        pen.block(
            "cut",
            lane,
            turn.start,
            turn.end,
            (turn.job + 1).to_string(),
        );
        end = end.max(turn.end);
        let Some(soak) = soak else { continue };
        pen.block("hands", lane, soak.from, soak.into_bath, String::new());
        let room = f64::from(pen.x(soak.out_of_bath) - pen.x(soak.into_bath));
        // rounding may take a unit
        let word = if room + 1.0 >= word { &*soaks } else { "" };
        pen.block(
            "soak",
            lane,
            soak.into_bath,
            soak.out_of_bath,
            word.to_owned(),
        );
        pen.block("hands", lane, soak.out_of_bath, soak.ready, String::new());
        end = end.max(soak.ready);
    }
    let sets = drawn.iter().map(|turn| turn.set + 1).max().unwrap_or(1);
    let set = |n| speaker.text("rotation-set", &[("set", letter(n).into())]);
    let mut lanes = vec![speaker.say("rotation-crew")];
    lanes.extend((0..sets).map(set));
    Drawing {
        // the last hour's words stand right of its line
        width: pen.x(end) + 40,
        height: TOP + LANE * lanes.len() as i32,
        hours: hours(&pen, end),
        only: (drawn.len() < made.plan.turns.len()).then_some(drawn.len()),
        blocks: pen.blocks,
        lanes,
    }
}

/// Every ten minutes, or every five where there is room.
fn hours(pen: &Pen, end: f64) -> Vec<(i32, String)> {
    let step = if pen.scale >= 10.0 { 5 } else { 10 };
    let minutes = (0..=end.ceil() as i32).step_by(step).map(f64::from);
    minutes.map(|m| (pen.x(m), clock(m))).collect()
}
