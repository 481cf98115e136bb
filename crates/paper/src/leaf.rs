//! What every sheet is told: paper, language and units, the day, whether it is the demo.

use desk::measure::{Measure, Units};
use desk::words::Value;
use model::Day;
use serde::Serialize;

/// Size of the paper.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Size {
    /// ISO 216: 210 × 297 mm.
    #[default]
    A4,
    /// ANSI/ASME Y14.1 size A: 8½ × 11 in.
    Letter,
}

impl Size {
    /// Both, in the order shown.
    pub const ALL: [Size; 2] = [Size::A4, Size::Letter];

    /// The word in addresses and options: `a4`, `letter`.
    pub fn key(self) -> &'static str {
        match self {
            Size::A4 => "a4",
            Size::Letter => "letter",
        }
    }

    /// From that word.
    pub fn parse(key: &str) -> Option<Size> {
        Size::ALL
            .into_iter()
            .find(|s| s.key().eq_ignore_ascii_case(key))
    }

    /// The usual paper where these units are used.
    pub fn usual(units: Units) -> Size {
        match units {
            Units::Metric => Size::A4,
            Units::UsCustomary => Size::Letter,
        }
    }

    /// Width and height, mm.
    pub fn mm(self) -> (f64, f64) {
        match self {
            Size::A4 => (210.0, 297.0),
            Size::Letter => (215.9, 279.4),
        }
    }
}

/// The leaf a sheet is printed on.
#[derive(Clone, Copy, Debug)]
pub struct Leaf {
    /// Size of the paper.
    pub size: Size,
    /// Language and units of the reader.
    pub measure: Measure,
    /// The day of printing, given from outside.
    pub day: Day,
    /// Whether everything on it is invented.
    pub demo: bool,
}

impl Leaf {
    /// Words without arguments.
    pub(crate) fn say(&self, code: &str) -> String {
        self.measure.words.say(code)
    }

    /// Words with arguments.
    pub(crate) fn text(&self, code: &str, args: &[(&'static str, Value)]) -> String {
        self.measure.words.text(code, args)
    }

    /// What the frame of every page shows.
    pub(crate) fn frame(&self, title: &str) -> Frame {
        let (width, height) = self.size.mm();
        let printed = [("date", self.measure.date(self.day).into())];
        Frame {
            lang: self.measure.words.lang().tag(),
            width,
            height,
            title: title.to_owned(),
            printed: self.text("sheet-printed", &printed),
            demo: self.demo.then(|| self.say("sheet-demo")),
        }
    }
}

/// The frame of every page, as templates read it.
#[derive(Clone, Serialize)]
pub(crate) struct Frame {
    lang: &'static str,
    width: f64,
    height: f64,
    title: String,
    printed: String,
    demo: Option<String>,
}
