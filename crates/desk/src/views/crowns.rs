//! The drawn crown through a year, under three cuts.

use super::drawing::{Crown, Drawing, Look, Placed, draw};
use super::said::Speaker;
use crown::{Cut, Picture, Reading, Tint};
use model::Day;
use serde_json::{Value, json};

/// Weeks ahead that are drawn.
pub const WEEKS: [u32; 14] = [0, 4, 8, 12, 16, 20, 24, 28, 32, 36, 40, 44, 48, 52];

/// Which cut the drawing supposes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Mode {
    /// What the cut plan takes.
    Plan,
    /// What was asked for.
    Asked,
    /// Nothing.
    Uncut,
}

impl Mode {
    /// All, in the order of the switch.
    pub const ALL: [Mode; 3] = [Mode::Plan, Mode::Asked, Mode::Uncut];

    /// The word in addresses and the page.
    pub fn key(self) -> &'static str {
        match self {
            Mode::Plan => "plan",
            Mode::Asked => "asked",
            Mode::Uncut => "uncut",
        }
    }

    /// From that word.
    pub fn parse(key: &str) -> Option<Mode> {
        Mode::ALL.into_iter().find(|m| m.key() == key)
    }
}

/// One cut and its year of crowns.
#[derive(Clone, PartialEq, Debug)]
pub struct ModeFrames {
    /// Which.
    pub mode: Mode,
    /// Its name on the switch.
    pub name: String,
    /// One frame for each of [`WEEKS`].
    pub frames: Vec<Frame>,
}

/// One drawn day.
#[derive(Clone, PartialEq, Debug)]
pub struct Frame {
    /// Place of its crown in the drawing.
    pub crown: usize,
    /// When: "now", "in 8 weeks, 27 Apr 2026".
    pub when: String,
    /// How many fronds of which colour, in words.
    pub counts: String,
}

/// The drawing with its frames.
#[derive(Clone, PartialEq, Debug)]
pub struct CrownFrames {
    /// Shapes, stem, crowns.
    pub drawing: Drawing,
    /// The cuts on the switch; "as asked" only if something was asked.
    pub modes: Vec<ModeFrames>,
    /// Short name for those who do not see it.
    pub title: String,
    /// Whether the spread of the crown was fitted to clock readings, or assumed, in words.
    pub spread: String,
    /// "trunk 6.1 m", or that its height is unknown.
    pub trunk: String,
}

/// Draws a stem's year under each cut.
pub fn view(
    speaker: &Speaker,
    tag: &str,
    reading: &Reading,
    look: &Look,
    cuts: &[(Mode, Cut)],
) -> CrownFrames {
    let days: Vec<Day> = WEEKS
        .iter()
        .map(|w| reading.as_of.plus(7 * *w as i32))
        .collect();
    let pictures: Vec<Picture> = cuts
        .iter()
        .flat_map(|(_, cut)| reading.pictures(*cut, &days))
        .collect();
    let drawing = draw(look, &pictures.iter().collect::<Vec<_>>());
    let modes = cuts.iter().enumerate().map(|(k, (mode, _))| ModeFrames {
        mode: *mode,
        name: speaker.say(&format!("crown-mode-{}", mode.key())),
        frames: (0..days.len())
            .map(|i| frame(speaker, &drawing, k * days.len() + i, i, days[i]))
            .collect(),
    });
    let from_clock = pictures.first().is_some_and(|p| p.theta_from_clock);
    CrownFrames {
        modes: modes.collect(),
        title: speaker.text("crown-title", &[("tag", tag.to_owned().into())]),
        spread: speaker.say(if from_clock {
            "crown-spread-clock"
        } else {
            "crown-spread-assumed"
        }),
        trunk: match look.trunk {
            Some(m) => speaker.text(
                "crown-trunk",
                &[("height", speaker.measure.length(m).into())],
            ),
            None => speaker.say("crown-trunk-unknown"),
        },
        drawing,
    }
}

fn frame(speaker: &Speaker, drawing: &Drawing, crown: usize, week: usize, day: Day) -> Frame {
    let weeks = WEEKS[week];
    let date = speaker.measure.date(day);
    let when = match weeks {
        0 => speaker.text("crown-now", &[("date", date.into())]),
        n => speaker.text(
            "crown-later",
            &[("n", i64::from(n).into()), ("date", date.into())],
        ),
    };
    Frame {
        crown,
        when,
        counts: counts(speaker, &drawing.crowns[crown]),
    }
}

fn counts(speaker: &Speaker, crown: &Crown) -> String {
    let [green, yellowing, brown] = crown.counts.map(|n| n as i64);
    let args = [
        ("green", green.into()),
        ("yellowing", yellowing.into()),
        ("brown", brown.into()),
    ];
    let fronds = speaker.text("crown-counts", &args);
    match crown.cut {
        0 => fronds,
        n => format!(
            "{fronds} {}",
            speaker.text("crown-counts-cut", &[("n", (n as i64).into())])
        ),
    }
}

/// Class of a frond in the style sheet: its colour, and whether it is far or to be cut.
pub fn class(placed: &Placed) -> String {
    let tint = match placed.tint {
        Tint::Green => "green",
        Tint::Yellowing => "yellowing",
        Tint::Brown => "brown",
    };
    let far = if placed.behind { " far" } else { "" };
    let cut = if placed.going { " going" } else { "" };
    format!("{tint}{far}{cut}")
}

impl CrownFrames {
    /// The frame shown first for a mode and a number of weeks; the nearest drawn week, "now" of the first mode without.
    pub fn frame(&self, mode: Mode, weeks: u32) -> (&ModeFrames, usize) {
        let mode = self
            .modes
            .iter()
            .find(|m| m.mode == mode)
            .unwrap_or(&self.modes[0]);
        let nearest = (0..WEEKS.len())
            .min_by_key(|&i| WEEKS[i].abs_diff(weeks))
            .unwrap_or(0);
        (mode, nearest)
    }

    /// All frames for the page's script: for each mode its frames, each with words and fronds
    /// `[shape, transform, class, cut mark or 0]`, far ones first.
    pub fn for_script(&self) -> Value {
        let frond = |f: &Placed| {
            json!([
                f.shape,
                f.transform,
                class(f),
                f.cut.as_deref().unwrap_or("")
            ])
        };
        let frame = |f: &Frame| {
            let fronds: Vec<Value> = self.drawing.crowns[f.crown]
                .fronds
                .iter()
                .map(frond)
                .collect();
            json!({ "when": f.when, "counts": f.counts, "fronds": fronds })
        };
        let modes = self.modes.iter().map(|m| {
            let frames: Vec<Value> = m.frames.iter().map(frame).collect();
            (m.mode.key().to_owned(), Value::from(frames))
        });
        json!({ "weeks": WEEKS, "modes": modes.collect::<serde_json::Map<_, _>>() })
    }
}
