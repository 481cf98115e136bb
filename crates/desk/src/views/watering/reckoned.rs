//! How a plan was reckoned, and what is not known.

use super::super::said::{Cited, Speaker};
use crate::watering::{CROWN_ACROSS, Watered, crown_across};
use care::Settled;
use care::watering::{How, Missing, Use, ZoneKind};
use model::knowledge::FactorKind;
use model::{Basis, SourceKey, Span};

/// A step of the reckoning.
#[derive(Clone, PartialEq, Debug)]
pub struct StepLine {
    /// Stable word.
    pub key: &'static str,
    /// What it is.
    pub name: String,
    /// Its figure.
    pub value: String,
    /// Where it comes from and what it rests on.
    pub notes: Vec<String>,
    /// Sources.
    pub sources: Vec<Cited>,
    /// How it is known, where no source is named.
    pub basis: Option<String>,
}

/// What a source says of the share of short grass's need that this palm has.
#[derive(Clone, PartialEq, Debug)]
pub struct FactorLine {
    /// Stable key of its row.
    pub key: String,
    /// What it was made for.
    pub text: String,
    /// The factor.
    pub figure: String,
    /// What this palm would need a day by it alone.
    pub need: String,
    /// What becomes of it: `used`, `container`, `other-air`, `no-figure`, `narrower`.
    pub used: &'static str,
    /// The same in words.
    pub used_words: String,
    /// How it is known, where that must be said.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// Something that is not known, and where to say it.
#[derive(Clone, PartialEq, Debug)]
pub struct Gap {
    /// Stable word.
    pub key: &'static str,
    /// What is missing and what it does.
    pub text: String,
    /// Where it is entered: `move`, `edit`, `inspect`, `import`, `log`, or nothing.
    pub place: &'static str,
}

/// The word of a gap in files and message keys.
pub(super) fn key(missing: &Missing) -> &'static str {
    match missing {
        Missing::Soil => "soil",
        Missing::SoilOfBall => "soil-of-ball",
        Missing::Ball => "ball",
        Missing::Crown => "crown",
        Missing::Counts => "counts",
        Missing::Place => "place",
        Missing::Weather(_) => "weather",
        Missing::Amounts(_) => "amounts",
    }
}

/// What is not known.
pub(super) fn gaps(speaker: &Speaker, watered: &Watered) -> Vec<Gap> {
    let moving = matches!(watered.settled, Settled::NotYet { .. });
    let gap = |missing: &Missing| {
        let n = match missing {
            Missing::Weather(n) | Missing::Amounts(n) => *n,
            _ => 0,
        };
        let code = match missing {
            Missing::Weather(_) if watered.place.is_none() => "water-gap-weather-no-climate",
            Missing::Soil if moving => "water-gap-soil-moved",
            _ => &format!("water-gap-{}", key(missing)),
        };
        Gap {
            key: key(missing),
            text: speaker.text(code, &[("n", i64::from(n).into())]),
            place: match missing {
                Missing::Soil | Missing::SoilOfBall | Missing::Ball if moving => "move",
                Missing::Soil | Missing::SoilOfBall | Missing::Ball => "",
                Missing::Place | Missing::Crown => "edit",
                Missing::Counts => "inspect",
                Missing::Weather(_) => "import",
                Missing::Amounts(_) => "log",
            },
        }
    };
    let unread = unread_crown(speaker, watered);
    watered.plan.missing.iter().map(gap).chain(unread).collect()
}

/// A figure across the crown that came in with a file and cannot be.
fn unread_crown(speaker: &Speaker, watered: &Watered) -> Option<Gap> {
    let palm = &watered.record.palm;
    let found = palm
        .extra
        .get(CROWN_ACROSS)
        .filter(|own| !own.trim().is_empty())?;
    crown_across(palm).is_none().then(|| Gap {
        key: "crown-not-read",
        text: speaker.text(
            "water-gap-crown-not-read",
            &[("found", found.clone().into())],
        ),
        place: "edit",
    })
}

/// Days to a decimal below ten.
pub(super) fn days(speaker: &Speaker, days: f64) -> String {
    let decimals = usize::from(days < 10.0);
    let n = (days * 10.0).round() / 10.0;
    let text = speaker.measure.number(days, decimals);
    speaker.text("water-days", &[("n", n.into()), ("text", text.into())])
}

/// The steps from the air to the days between two waterings.
pub(super) fn steps(speaker: &Speaker, watered: &Watered) -> Vec<StepLine> {
    let (m, plan) = (&speaker.measure, &watered.plan);
    let (zone, unknown) = (&plan.zone, || speaker.say("common-unknown"));
    let litres = |span: Option<Span>| span.map_or_else(unknown, |s| m.water_range(s.low, s.high));
    let area = |span: Option<Span>| span.map_or_else(unknown, |s| m.area_range(s.low, s.high));
    let depth = {
        let (low, high) = (zone.depth_m.low, zone.depth_m.high);
        m.length_range(low, high)
    };
    let measured = crown_across(&watered.record.palm).is_some();
    [
        (
            "reference",
            m.water_height(plan.reference.mm.low, plan.reference.mm.high),
            reference_notes(speaker, watered),
            Rests::On("fao56"),
        ),
        (
            "factor",
            m.range(plan.factor.low, plan.factor.high, 2),
            vec![speaker.say("water-step-factor-note")],
            Rests::Above,
        ),
        (
            "crown",
            area(plan.crown_m2),
            vec![speaker.say(if measured {
                "water-step-crown-measured"
            } else {
                "water-step-crown-by-frond"
            })],
            if measured {
                Rests::Keeper
            } else {
                Rests::Figure("crown-reach")
            },
        ),
        (
            "draws",
            m.percent_range(plan.crown_draws.low, plan.crown_draws.high),
            vec![speaker.say("water-step-draws-note")],
            Rests::Figure("leaf-power"),
        ),
        (
            "need",
            litres(plan.need_l),
            vec![speaker.say("water-step-need-note")],
            Rests::Above,
        ),
        (
            "roots",
            area(zone.area_m2),
            vec![
                speaker.say(&format!("water-roots-{}", zone.kind.key())),
                speaker.text("water-step-depth", &[("depth", depth.into())]),
            ],
            match zone.kind {
                ZoneKind::Whole => Rests::Figure("root-depth-palm"),
                _ => Rests::Figure("roots-start"),
            },
        ),
        (
            "held",
            m.percent_range(zone.held.low, zone.held.high),
            vec![speaker.say("water-step-held-note")],
            Rests::On("fao56"),
        ),
        ("total", litres(zone.total_l), Vec::new(), Rests::Above),
        (
            "fraction",
            m.percent_range(zone.fraction.low, zone.fraction.high),
            vec![speaker.say("water-step-fraction-note")],
            Rests::Figure("depletion-palm"),
        ),
        ("ready", litres(zone.ready_l), Vec::new(), Rests::Above),
    ]
    .into_iter()
    .map(|(key, value, notes, rests)| {
        let (basis, sources) = rests.cited(speaker);
        StepLine {
            key,
            name: speaker.say(&format!("water-step-{key}")),
            value,
            notes,
            basis,
            sources,
        }
    })
    .collect()
}

/// What a step rests on.
enum Rests {
    /// A source.
    On(&'static str),
    /// A figure of the tables.
    Figure(&'static str),
    /// What the keeper measured.
    Keeper,
    /// The steps above it, or what stands beside it.
    Above,
}

impl Rests {
    fn cited(self, speaker: &Speaker) -> (Option<String>, Vec<Cited>) {
        match self {
            Rests::On(key) => (None, speaker.cite(&[SourceKey(key.into())])),
            Rests::Figure(key) => match speaker.knowledge.water_figure(key) {
                Some(figure) => (speaker.basis(figure.basis), speaker.cite(&figure.sources)),
                None => (None, Vec::new()),
            },
            Rests::Keeper => (speaker.basis(Basis::Keeper), Vec::new()),
            Rests::Above => (None, Vec::new()),
        }
    }
}

fn reference_notes(speaker: &Speaker, watered: &Watered) -> Vec<String> {
    let reference = &watered.plan.reference;
    let place = watered.place.map_or("", |place| place.name.as_str());
    let code = format!("water-how-{}", reference.how.key());
    let mut notes = vec![speaker.text(&code, &[("place", place.to_owned().into())])];
    let stood_in = reference.stood_in.iter();
    notes.extend(stood_in.map(|own| speaker.say(&format!("water-stood-in-{}", own.key()))));
    if reference.how == How::Climate {
        notes.push(speaker.say("water-how-climate-note"));
    }
    notes
}

/// Every factor that speaks of this palm, with what it would make of today.
pub(super) fn factors(speaker: &Speaker, watered: &Watered) -> Vec<FactorLine> {
    let (m, plan) = (&speaker.measure, &watered.plan);
    let need = |factor: Span| {
        let mm = plan.reference.mm.times(factor).times(plan.crown_draws);
        plan.crown_m2.map(|area| mm.times(area))
    };
    let line = |own: &care::watering::FactorUse| {
        let row = own.row;
        FactorLine {
            key: row.key.clone(),
            text: speaker.texts(&row.text).to_owned(),
            figure: row.factor.map_or_else(
                || speaker.say("common-unknown"),
                |f| m.range(f.low, f.high, 2),
            ),
            need: row
                .factor
                .and_then(need)
                .map(|n| m.water_range(n.low, n.high))
                .unwrap_or_default(),
            used: own.used.key(),
            used_words: speaker.say(&format!("water-factor-{}", own.used.key())),
            basis: speaker.basis(row.basis),
            sources: speaker.cite(&row.sources),
        }
    };
    plan.factors.iter().map(line).collect()
}

/// That crop and landscape factors contradict each other, where both are used.
pub(super) fn conflict(speaker: &Speaker, watered: &Watered) -> Option<String> {
    let used = |kind: FactorKind| {
        let of = watered.plan.factors.iter();
        let own = of.filter(|f| f.used == Use::Used && f.row.kind == kind);
        own.filter_map(|f| f.row.factor).reduce(Span::hull)
    };
    let (crop, landscape) = (used(FactorKind::Crop)?, used(FactorKind::Landscape)?);
    let m = &speaker.measure;
    let args = [
        ("crop", m.range(crop.low, crop.high, 2).into()),
        (
            "landscape",
            m.range(landscape.low, landscape.high, 2).into(),
        ),
    ];
    Some(speaker.text("water-conflict", &args))
}
