//! Before a move: root ball, weights, lifting, fronds, season, depth and props, each with who says so.

use super::super::said::{Cited, Speaker};
use crate::forms::read_length;
use crate::office::Office;
use care::moving::{Ball, Before, Claim, Dig, Ground, Mass, before};
use model::knowledge::{MoveSay, MoveTopic, SafetyRow, TransplantRow};
use model::{Knowledge, Metres, PalmRecord};
use std::sync::Arc;

/// Widest trunk or clump that is believed.
const WIDEST: Metres = Metres(10.0);

/// What an address asks, as it was typed.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Asked {
    /// Across the trunk, or the clump.
    pub diameter: String,
    /// The keeper's own radius of the ball.
    pub radius: String,
    /// The keeper's own depth.
    pub depth: String,
    /// Soil.
    pub soil: String,
    /// Can the ball be kept moist: `yes`, `no`, or nothing.
    pub moist: String,
    /// Great heat: anything.
    pub hot: String,
    /// Voltage of the line nearby, kV.
    pub kv: String,
    /// Live fronds that go with it.
    pub fronds: String,
}

/// A statement with where it comes from.
#[derive(Clone, PartialEq, Debug)]
pub struct Row {
    /// Stable key of the table.
    pub key: String,
    /// The words.
    pub text: String,
    /// Its figure with unit.
    pub figure: Option<String>,
    /// How it is known, where that must be said.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
    /// Weight: `info`, `caution`, `act`.
    pub weight: &'static str,
}

/// A figure to plan with, and what it was chosen from.
#[derive(Clone, PartialEq, Debug)]
pub struct Figure {
    /// What it is.
    pub name: String,
    /// The figure to plan with.
    pub value: String,
    /// What is said, one line a source.
    pub said: Vec<Row>,
}

/// A mass as a range.
#[derive(Clone, PartialEq, Debug)]
pub struct MassRow {
    /// What weighs.
    pub name: String,
    /// From ... to, or that it is not known.
    pub value: String,
    /// What it rests on.
    pub rows: Vec<Row>,
}

/// Statements under one heading.
#[derive(Clone, PartialEq, Debug)]
pub struct Group {
    /// Key of the heading.
    pub key: &'static str,
    /// The heading.
    pub title: String,
    /// Statements.
    pub rows: Vec<Row>,
}

/// Before a move.
#[derive(Clone, PartialEq, Debug)]
pub struct BeforeView {
    /// What was typed.
    pub asked: Asked,
    /// Fields that could not be read: name and words.
    pub troubles: Vec<(&'static str, String)>,
    /// Radius and depth.
    pub ball: Vec<Figure>,
    /// Remarks on the ball: sources differ, the keeper's own is below all.
    pub remarks: Vec<String>,
    /// Volume, if it can be told.
    pub volume: Option<String>,
    /// Masses: ball, trunk, crown, sum.
    pub masses: Vec<MassRow>,
    /// What is missing for the sum.
    pub missing: Vec<String>,
    /// Fronds: the advice in one sentence.
    pub leaves: String,
    /// Its key: `take`, `leave`, `unknown`.
    pub leaves_key: &'static str,
    /// What it rests on, with the published figures.
    pub leaves_rows: Vec<Row>,
    /// Lifting, lines, season, depth, props, water.
    pub groups: Vec<Group>,
    /// Who comes first.
    pub defer: Option<String>,
}

/// What is to know before this palm is dug.
pub(super) fn view(
    speaker: &Speaker,
    office: &Office,
    record: &Arc<PalmRecord>,
    asked: &Asked,
) -> BeforeView {
    let mut troubles = Vec::new();
    let dig = dig(speaker, office, record, asked, &mut troubles);
    let said = before(&dig);
    let leaves_key = match said.leaves.say {
        MoveSay::Take => "take",
        MoveSay::Leave => "leave",
        _ if said.leaves.depends_on_water => "depends",
        _ => "unknown",
    };
    let figures = said.leaves.figures.iter().chain(&said.leaves.tying);
    BeforeView {
        asked: asked.clone(),
        troubles,
        ball: ball(speaker, &said.ball),
        remarks: remarks(speaker, &said.ball),
        volume: said.ball.volume_m3.map(|v| speaker.measure.bulk(v)),
        masses: masses(speaker, &said),
        missing: said
            .load
            .missing
            .iter()
            .map(|code| speaker.say(code))
            .collect(),
        leaves: speaker.say(&format!("move-leaves-{leaves_key}")),
        leaves_key,
        leaves_rows: said
            .leaves
            .rows
            .iter()
            .chain(figures)
            .map(|row| of(speaker, row))
            .collect(),
        groups: groups(speaker, &said),
        defer: said.defer.map(|row| caution(speaker, row).text),
    }
}

fn dig<'a>(
    speaker: &Speaker,
    office: &Office,
    record: &Arc<PalmRecord>,
    asked: &Asked,
    troubles: &mut Vec<(&'static str, String)>,
) -> Dig<'a> {
    let palm = &record.palm;
    let mut length = |field: &'static str, text: &str| {
        let text = text.trim();
        let read = read_length(text, speaker.measure.units).filter(|l| l.0 > 0.0 && *l <= WIDEST);
        if read.is_none() && !text.is_empty() {
            troubles.push((field, speaker.say("move-ask-length")));
        }
        read
    };
    let diameter = length("diameter", &asked.diameter);
    let radius = length("radius", &asked.radius);
    let depth = length("depth", &asked.depth);
    let mut number = |field: &'static str, text: &str, most: f64| {
        let text = text.trim().replace(',', ".");
        let read = text.parse::<f64>().ok();
        let read = read.filter(|x| (0.0..=most).contains(x));
        if read.is_none() && !text.is_empty() {
            troubles.push((field, speaker.say("move-ask-number")));
        }
        read
    };
    let fronds = number("fronds", &asked.fronds, 1000.0).map(|n| n as u32);
    let site = office.state().work.sites.get(&palm.site).cloned();
    let kv = number("kv", &asked.kv, 1500.0).or(site.as_ref().and_then(|s| s.line_kv));
    let soil = match asked.soil.trim() {
        "" => site.map(|s| s.soil.clone()).unwrap_or_default(),
        typed => typed.to_owned(),
    };
    Dig {
        trunk_height: palm.trunk_height,
        diameter,
        fronds: fronds.or_else(|| counted(record)),
        ground: Ground::of(&soil),
        moist: match asked.moist.as_str() {
            "yes" => Some(true),
            "no" => Some(false),
            _ => None,
        },
        hot: !asked.hot.is_empty(),
        line_kv: kv,
        radius,
        depth,
        ..Dig::of(
            office.species(palm),
            palm.stems.max(1),
            Knowledge::embedded(),
        )
    }
}

/// Live fronds at the last count of every stem; `None` if one was never counted.
fn counted(record: &PalmRecord) -> Option<u32> {
    (1..=record.palm.stems.max(1))
        .map(|stem| record.looks(stem).rev().find_map(|look| look.live()))
        .sum()
}

fn ball(speaker: &Speaker, ball: &Ball) -> Vec<Figure> {
    let figure = |code, planned: Option<Metres>, claims: &[Claim]| {
        let value = planned.map(|l| speaker.measure.short_length(l));
        Figure {
            name: speaker.say(code),
            value: value.unwrap_or_else(|| speaker.say("common-unknown")),
            said: claims.iter().map(|claim| of(speaker, claim.row)).collect(),
        }
    };
    vec![
        figure("move-radius", ball.plan_radius, &ball.radius),
        figure("move-depth", ball.plan_depth, &ball.depth),
    ]
}

fn remarks(speaker: &Speaker, ball: &Ball) -> Vec<String> {
    let mut said = Vec::new();
    if ball.conflict {
        said.push(speaker.say("move-ball-differ"));
    }
    if ball.below_all {
        said.push(speaker.say("move-ball-below"));
    }
    said
}

fn masses(speaker: &Speaker, said: &Before) -> Vec<MassRow> {
    let load = &said.load;
    let range = |low: f64, high: f64| {
        let (low, high) = (rounded(low), rounded(high));
        let args = [
            ("low", speaker.measure.mass(low).into()),
            ("high", speaker.measure.mass(high).into()),
        ];
        speaker.text("move-mass-range", &args)
    };
    let part = |code: &str, mass: &Option<Mass>| MassRow {
        name: speaker.say(code),
        value: match mass {
            Some(mass) => range(mass.low, mass.high),
            None => speaker.say("common-unknown"),
        },
        rows: mass
            .iter()
            .flat_map(|m| &m.rows)
            .map(|row| of(speaker, row))
            .collect(),
    };
    let mut rows = vec![
        part("move-mass-ball", &load.ball),
        part("move-mass-trunk", &load.trunk),
        part("move-mass-crown", &load.crown),
    ];
    if let Some((low, high)) = load.total {
        let code = if load.missing.iter().any(|m| *m != "load-ground-unknown") {
            "move-mass-known"
        } else {
            "move-mass-sum"
        };
        rows.push(MassRow {
            name: speaker.say(code),
            value: range(low, high),
            rows: Vec::new(),
        });
    }
    rows
}

/// To two leading digits: the ranges are no finer.
fn rounded(kg: f64) -> f64 {
    let step = if kg >= 1000.0 {
        100.0
    } else if kg >= 100.0 {
        10.0
    } else {
        1.0
    };
    (kg / step).round() * step
}

fn groups(speaker: &Speaker, said: &Before) -> Vec<Group> {
    let lines = said.lines.iter().map(|row| caution(speaker, row));
    let mut lifting: Vec<Row> = lines.collect();
    lifting.extend(said.lifting.iter().map(|row| of(speaker, row)));
    let group = |key: &'static str, rows: Vec<Row>| Group {
        key,
        title: speaker.say(&format!("move-group-{key}")),
        rows,
    };
    let rows = |rows: &[&TransplantRow]| rows.iter().map(|row| of(speaker, row)).collect();
    let roots = rows(&said.ball.remarks);
    let all = vec![
        group("lift", lifting),
        group("roots", roots),
        group("season", rows(&said.season)),
        group("depth", rows(&said.depth)),
        group("brace", rows(&said.bracing)),
        group("water", rows(&said.water)),
    ];
    all.into_iter().filter(|g| !g.rows.is_empty()).collect()
}

/// A row of the table with its figure.
pub(super) fn of(speaker: &Speaker, row: &TransplantRow) -> Row {
    let name = match &row.palm {
        // the one trial of planting depth was made with this palm: it says so
        model::knowledge::MovePalm::Named(name) if row.what == MoveTopic::Depth => {
            format!("{name}: ")
        }
        _ => String::new(),
    };
    Row {
        key: row.key.clone(),
        text: format!("{name}{}", speaker.texts(&row.text)),
        figure: figure(speaker, row),
        basis: speaker.basis(row.basis),
        sources: speaker.cite(&row.sources),
        weight: match row.say {
            MoveSay::Act => "act",
            MoveSay::Caution => "caution",
            _ => "info",
        },
    }
}

fn figure(speaker: &Speaker, row: &TransplantRow) -> Option<String> {
    if row.unknown {
        return Some(speaker.say("common-unknown"));
    }
    let range = row.figure?;
    let m = &speaker.measure;
    let one = |x: f64| match row.what {
        MoveTopic::BallRadius | MoveTopic::BallDepth => m.short_length(Metres(x / 100.0)),
        MoveTopic::Roots
        | MoveTopic::TopRoots
        | MoveTopic::Survival
        | MoveTopic::Depth
        | MoveTopic::ShedShare => m.percent(x / 100.0),
        MoveTopic::Kept | MoveTopic::FullAgain | MoveTopic::TrunkColour | MoveTopic::Look => {
            m.duration(x)
        }
        MoveTopic::SoilDensity | MoveTopic::TrunkDensity => {
            speaker.text("move-per-m3", &[("kg", m.number(x, 0).into())])
        }
        MoveTopic::FrondMass => speaker.text("move-per-m", &[("kg", m.number(x, 1).into())]),
        _ => m.number(x, 0),
    };
    let args = [("high", one(range.high).into())];
    Some(match range.low {
        Some(low) if low == range.high => one(low),
        Some(low) => {
            let args = [("low", one(low).into()), ("high", one(range.high).into())];
            speaker.text("move-range", &args)
        }
        None => speaker.text("move-at-most", &args),
    })
}

fn caution(speaker: &Speaker, row: &SafetyRow) -> Row {
    let spanish = speaker.words().lang() == crate::words::Lang::Es;
    let (text, condition) = if spanish {
        (&row.text_es, &row.condition_es)
    } else {
        (&row.text, &row.condition)
    };
    let figure = row.number().map(|value| match row.unit.as_str() {
        "ft" => speaker.measure.length(Metres::from_feet(value)),
        unit => format!("{value} {unit}"),
    });
    let text = if condition.is_empty() {
        text.clone()
    } else {
        format!("{text} ({condition})")
    };
    Row {
        key: row.key.clone(),
        text,
        figure,
        basis: speaker.basis(row.basis),
        sources: speaker.cite(&row.sources),
        weight: "act",
    }
}
