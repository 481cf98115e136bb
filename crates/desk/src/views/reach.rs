//! How to get at a palm: the way in a sentence, every tool, the places to stand, and a drawing from above.

pub mod draw;
mod json;
#[cfg(test)]
mod tests;

pub use json::json;

use super::case::StemToday;
use super::said::{Said, Speaker};
use super::walk::Trouble;
use crate::forms::read_length;
use crate::judging;
use crate::measure::Units;
use crate::office::Office;
use crate::reaching::{Reached, Told, crews, reached};
use care::Stand;
use care::reach::{Fit, Fits, HAND_REACH, Place};
use draw::Above;
use model::knowledge::{Edge, ToolRow};
use model::{Metres, Severity};

/// The fields of the form as they were typed.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Question {
    /// Stem.
    pub stem: u16,
    /// Width of a petiole; bare numbers are centimetres or inches.
    pub petiole: String,
    /// How high hands work; bare numbers are metres or feet.
    pub hand: String,
    /// Name of a crew; empty: nobody chosen.
    pub crew: String,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct ReachView {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// The stem in view.
    pub stem: u16,
    /// What is wrong with the question; then the answer is the one without it.
    pub troubles: Vec<Trouble>,
    /// Names of crews.
    pub crews: Vec<String>,
    /// What the palm's own page shows as well.
    pub brief: Brief,
    /// Every tool.
    pub tools: Vec<ToolLine>,
    /// How the pole is held.
    pub pole: Option<String>,
    /// All there is to say, the worst first.
    pub findings: Vec<Said>,
}

/// The way in short.
#[derive(Clone, PartialEq, Debug)]
pub struct Brief {
    /// In a sentence.
    pub sentence: String,
    /// Weight of the worst there is to say: `info`, `caution`, `act`, `refuse`.
    pub weight: &'static str,
    /// What must not be missed: refusals, and what somebody must do first.
    pub urgent: Vec<Said>,
    /// From above; `None` where nothing is known to draw.
    pub above: Option<Above>,
    /// Where to stand.
    pub places: Vec<PlaceLine>,
    /// The circle kept free.
    pub keep_out: String,
}

/// A tool.
#[derive(Clone, PartialEq, Debug)]
pub struct ToolLine {
    /// Its key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// What speaks for or against it.
    pub says: String,
    /// It is one to take.
    pub taken: bool,
    /// What there is to know of it.
    pub text: String,
    /// How that is known, where it must be said.
    pub mark: Option<String>,
}

/// A place to stand.
#[derive(Clone, PartialEq, Debug)]
pub struct PlaceLine {
    /// Its number in the drawing.
    pub n: usize,
    /// In words.
    pub text: String,
}

/// The page of a palm's stem; `None` if there is no such palm or stem.
pub fn view(speaker: &Speaker, office: &Office, tag: &str, asked: &Question) -> Option<ReachView> {
    let crews = crews(office);
    let (told, troubles) = told(speaker, &crews, asked);
    let of = |record: &model::PalmRecord, reached: &Reached| ReachView {
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        stem: asked.stem,
        troubles: troubles.clone(),
        crews: crews.iter().map(|crew| crew.name.clone()).collect(),
        brief: brief(speaker, reached),
        tools: tools(speaker, reached),
        pole: pole(speaker, reached),
        findings: findings(speaker, reached),
    };
    with_stem(office, tag, asked.stem, &told, of)
}

/// Reckons a stem of a palm by its tag and hands it on; `None` if there is no such palm or stem.
pub fn with_stem<T>(
    office: &Office,
    tag: &str,
    stem: u16,
    told: &Told,
    then: impl FnOnce(&model::PalmRecord, &Reached) -> T,
) -> Option<T> {
    let state = office.state();
    let record = state.by_tag(tag)?;
    let reading = office.reading(record.id)?;
    let judged = judging::in_brief(office, record, &reading);
    let at = StemToday::of(
        office,
        record,
        &reading,
        &judged,
        stem,
        None,
        care::Grounds::default(),
    )?;
    Some(then(record, &reached(&at, told)))
}

/// What the form tells, and what in it cannot be read.
fn told(speaker: &Speaker, crews: &[model::CrewWords], asked: &Question) -> (Told, Vec<Trouble>) {
    let mut troubles = Vec::new();
    let mut told = Told::default();
    let units = speaker.measure.units;
    let mut length = |field: &'static str, typed: &str, short: bool, low: f64, high: f64| {
        let typed = typed.trim();
        let bare = typed.parse::<f64>().is_ok() || typed.replace(',', ".").parse::<f64>().is_ok();
        let with_unit = match (short && bare, units) {
            (true, Units::Metric) => format!("{typed} cm"),
            (true, Units::UsCustomary) => format!("{typed} in"),
            (false, _) => typed.to_owned(),
        };
        let read = read_length(&with_unit, units).filter(|m| (low..=high).contains(&m.0));
        if read.is_none() && !typed.is_empty() {
            let show = |m: f64| match short {
                true => speaker.measure.short_length(Metres(m)),
                false => speaker.measure.length(Metres(m)),
            };
            let args = [("low", show(low).into()), ("high", show(high).into())];
            let text = speaker.text(&format!("reach-bad-{field}"), &args);
            troubles.push(Trouble { field, text });
        }
        read
    };
    told.petiole = length("petiole", &asked.petiole, true, 0.002, 0.4);
    told.hand_reach = length("hand", &asked.hand, false, 1.0, 3.5).unwrap_or(HAND_REACH);
    told.crew = crews.iter().find(|crew| crew.name == asked.crew).cloned();
    (told, troubles)
}

/// The way in short.
pub fn brief(speaker: &Speaker, reached: &Reached) -> Brief {
    let all = findings(speaker, reached);
    let urgent = |said: &Said| matches!(said.weight, "refuse" | "act");
    let worst = reached.reach.findings.iter().map(|f| f.severity).max();
    Brief {
        sentence: sentence(speaker, reached),
        weight: super::said::weight(worst.unwrap_or(Severity::Info)),
        urgent: all.into_iter().filter(urgent).collect(),
        above: draw::above(speaker, reached),
        places: places(speaker, reached),
        keep_out: match reached.reach.keep_out {
            Some(radius) => speaker.text(
                "reach-circle",
                &[("radius", speaker.measure.length(radius).into())],
            ),
            None => speaker.say("reach-circle-unknown"),
        },
    }
}

/// All there is to say, without the sentence that ends each caution: the page says it once.
fn findings(speaker: &Speaker, reached: &Reached) -> Vec<Said> {
    let closing = speaker.say("common-closing");
    let mut all = speaker.findings(&reached.reach.findings);
    for said in &mut all {
        if let Some(words) = said.text.strip_suffix(closing.as_str()) {
            said.text = words.trim_end().to_owned();
        }
    }
    all
}

fn sentence(speaker: &Speaker, reached: &Reached) -> String {
    let reach = &reached.reach;
    if reach.refused {
        return speaker.say("reach-head-refused");
    }
    let way = match reach.stand {
        Stand::Unknown => return speaker.say("reach-head-unknown"),
        Stand::Ground => "reach-head-ground",
        Stand::GroundWithPole => "reach-head-pole",
        Stand::Lift => "reach-head-lift",
        Stand::LiftFromAbove => "reach-head-above",
    };
    let with = if reached.by_hand {
        speaker.say("reach-with-hand")
    } else {
        with(speaker, reached)
    };
    speaker.text(way, &[("with", with.into())])
}

/// What is cut with: the tool to take first; where that hangs on the petiole, the next one, too.
fn with(speaker: &Speaker, reached: &Reached) -> String {
    let mut blades = reached
        .reach
        .takes()
        .filter(|fit| fit.tool.edge != Edge::None);
    let Some(first) = blades.next() else {
        return speaker.say("reach-with-nothing");
    };
    let name = |tool: &ToolRow| lower(speaker.texts(&tool.name)).into();
    match (
        first.fits,
        blades.find(|fit| matches!(fit.fits, Fits::Reaches(_))),
    ) {
        (Fits::IfUpTo(_, width), Some(next)) => {
            let width = speaker.measure.short_length(width);
            let args = [
                ("tool", name(first.tool)),
                ("width", width.into()),
                ("next", name(next.tool)),
            ];
            speaker.text("reach-with-either", &args)
        }
        _ => speaker.text("reach-with-one", &[("tool", name(first.tool))]),
    }
}

/// A name within a sentence.
fn lower(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().map(|c| c.to_lowercase().to_string());
    first.unwrap_or_default() + letters.as_str()
}

fn pole(speaker: &Speaker, reached: &Reached) -> Option<String> {
    let pole = reached.reach.pole()?;
    let measure = &speaker.measure;
    let args = [
        ("length", measure.length(pole.length).into()),
        ("degrees", measure.number(pole.degrees, 0).into()),
        ("out", measure.length(pole.out).into()),
        ("hands", measure.length(pole.hands).into()),
    ];
    Some(speaker.text("reach-pole", &args))
}

fn tools(speaker: &Speaker, reached: &Reached) -> Vec<ToolLine> {
    let line = |fit: &Fit| {
        let mut says = fits(speaker, fit.fits);
        if !fit.at_hand && fit.fits.takes() {
            says = speaker.text("reach-not-at-hand", &[("says", says.into())]);
        }
        ToolLine {
            key: fit.tool.key.clone(),
            name: speaker.texts(&fit.tool.name).to_owned(),
            says,
            taken: fit.takes(),
            text: speaker.texts(&fit.tool.text).to_owned(),
            mark: speaker.basis(fit.tool.basis),
        }
    };
    reached.reach.fits.iter().map(line).collect()
}

fn fits(speaker: &Speaker, fits: Fits) -> String {
    let measure = &speaker.measure;
    let args = match fits {
        Fits::IfUpTo(_, width) | Fits::Narrow(width) => {
            vec![("width", measure.short_length(width).into())]
        }
        Fits::Short(top) => vec![("top", measure.length(top).into())],
        _ => vec![],
    };
    speaker.text(&format!("reach-fit-{}", fits.key()), &args)
}

/// The eight directions of the drawing from its right side on, the reader at its foot.
const WAYS: [&str; 8] = [
    "right",
    "front-right",
    "front",
    "front-left",
    "left",
    "back-left",
    "back",
    "back-right",
];

fn places(speaker: &Speaker, reached: &Reached) -> Vec<PlaceLine> {
    let line = |(i, place): (usize, &Place)| {
        let way = (place.degrees / 45.0).round() as usize % 8;
        let where_ = speaker.say(&format!("reach-way-{}", WAYS[way]));
        let wide = (place.to - place.from).rem_euclid(360.0);
        let args = [
            ("where", where_.into()),
            ("out", speaker.measure.length(Metres(place.out_m)).into()),
            ("fronds", (place.ranks.len() as i64).into()),
            ("wide", speaker.measure.number(wide, 0).into()),
        ];
        PlaceLine {
            n: i + 1,
            text: speaker.text("reach-place", &args),
        }
    };
    reached.reach.places.iter().enumerate().map(line).collect()
}
