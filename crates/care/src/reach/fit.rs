//! Which tool does it here, and how its pole is held.

use super::{Ask, FLATTEST, LOWEST_HANDS, STEEPEST};
use crate::plan::Stand;
use model::knowledge::{Edge, Grip, ToolRow};
use model::{Metres, Span, math};

/// A pole as it is held.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pole {
    /// From the hands to the blade.
    pub length: Metres,
    /// Above level, degrees.
    pub degrees: f64,
    /// From the cut to the hands, on the level.
    pub out: Metres,
    /// Height of the hands above the ground.
    pub hands: Metres,
}

/// What speaks for or against a tool.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Fits {
    /// It does it, with this pole if it has one.
    Reaches(Option<Pole>),
    /// It does it if the petiole is no wider than this, which nobody has measured.
    IfUpTo(Option<Pole>, Metres),
    /// It does not open wide enough.
    Narrow(Metres),
    /// It reaches no higher than this from the ground.
    Short(Metres),
    /// Its pole is too long to be held so low.
    Long,
    /// It brings people up where nothing reaches from the ground.
    Lifts,
    /// It is not needed here.
    Idle,
    /// It is never used for this.
    Never,
    /// The height is unknown.
    Unknown,
}

impl Fits {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Fits::Reaches(_) => "reaches",
            Fits::IfUpTo(..) => "if-up-to",
            Fits::Narrow(_) => "narrow",
            Fits::Short(_) => "short",
            Fits::Long => "long",
            Fits::Lifts => "lifts",
            Fits::Idle => "idle",
            Fits::Never => "never",
            Fits::Unknown => "unknown",
        }
    }

    /// Whether it does it, or may.
    pub fn takes(self) -> bool {
        matches!(self, Fits::Reaches(_) | Fits::IfUpTo(..) | Fits::Lifts)
    }

    /// Its pole.
    pub fn pole(self) -> Option<Pole> {
        match self {
            Fits::Reaches(pole) | Fits::IfUpTo(pole, _) => pole,
            _ => None,
        }
    }
}

/// A tool with what speaks for or against it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fit {
    /// The tool.
    pub tool: &'static ToolRow,
    /// What speaks for or against it.
    pub fits: Fits,
    /// Whether it is at hand.
    pub at_hand: bool,
}

impl Fit {
    /// Whether it is one to take: it does it, and it is at hand.
    pub fn takes(&self) -> bool {
        self.at_hand && self.fits.takes()
    }
}

/// The highest cut that a tool reaches from the ground: hands raised, the pole at its longest and steepest.
pub fn top(tool: &ToolRow, hand_reach: Metres) -> Metres {
    let pole = tool.pole.map_or(0.0, |pole| pole.high);
    let height = hand_reach.0 + pole * math::sin(STEEPEST.to_radians());
    Metres(tool.top.map_or(height, |top| top.0.min(height)))
}

/// How a pole is held for a cut at a height: as flat as it may be, so that the hands are as far out from under the cut as
/// they can. `None`: it does not reach, or is too long to be held so low.
pub fn pole(span: Span, cut: Metres, hand_reach: Metres) -> Option<Pole> {
    let flat = math::sin(FLATTEST.to_radians());
    // how much higher than the hands the cut is: between hands raised and hands low
    let (least, most) = (cut.0 - hand_reach.0, cut.0 - LOWEST_HANDS.0);
    let (low, high) = (span.low * flat, span.high * flat);
    let (length, rise) = if least > high {
        (span.high, least)
    } else {
        let rise = most.min(high);
        (rise / flat, rise)
    };
    if rise < low || rise > span.high * math::sin(STEEPEST.to_radians()) {
        return None;
    }
    let out = (length * length - rise * rise).max(0.0).sqrt();
    Some(Pole {
        length: Metres(length),
        degrees: math::atan2(rise, out).to_degrees(),
        out: Metres(out),
        // never a rounding higher than hands go
        hands: Metres((cut.0 - rise).min(hand_reach.0)),
    })
}

/// Every tool of the table, those to take first in order of preference: what is in the hand before what is on a pole,
/// loppers before teeth, a drawn edge last; then the others in the order of the table.
pub(super) fn fits(ask: &Ask, stand: Stand) -> Vec<Fit> {
    let mut fits: Vec<Fit> = ask
        .knowledge
        .tools
        .iter()
        .map(|tool| Fit {
            tool,
            fits: of(ask, stand, tool),
            at_hand: ask.has(&tool.key),
        })
        .collect();
    let machine = |fit: &Fit| fit.tool.grip != Grip::Machine;
    fits.sort_by_key(|fit| {
        let taken = fit.takes();
        let order = (
            machine(fit),
            fit.tool.grip,
            edge(fit.tool.edge),
            motor(fit.tool),
        );
        (!taken, taken.then_some(order))
    });
    fits
}

/// Loppers leave a smoother cut than teeth (common practice, no source).
fn edge(edge: Edge) -> u8 {
    match edge {
        Edge::Shears => 0,
        Edge::Teeth => 1,
        Edge::Drawn => 2,
        Edge::None => 3,
    }
}

/// What runs by itself comes after what an arm moves.
fn motor(tool: &ToolRow) -> bool {
    matches!(tool.key.as_str(), "chain-saw" | "reciprocating-saw")
}

fn of(ask: &Ask, stand: Stand, tool: &ToolRow) -> Fits {
    if tool.grip == Grip::Ladder {
        return Fits::Never;
    }
    if stand == Stand::Unknown {
        return Fits::Unknown;
    }
    let lift = matches!(stand, Stand::Lift | Stand::LiftFromAbove);
    let pole = match tool.grip {
        Grip::Machine if lift => return Fits::Lifts,
        Grip::Machine => return Fits::Idle,
        // nothing is cut where fronds come by hand
        _ if ask.stub.is_none() => return Fits::Idle,
        Grip::Hand if lift => None,
        Grip::Pole if lift => return short(ask, tool),
        Grip::Hand if out_of_hand(ask, tool) => return short(ask, tool),
        Grip::Hand => None,
        _ => match held(ask, tool) {
            Ok(pole) => Some(pole),
            Err(why) => return why,
        },
    };
    open(ask, tool, pole)
}

fn short(ask: &Ask, tool: &ToolRow) -> Fits {
    // from beneath a skirt nothing is used, however far it reaches
    if ask.skirt {
        return Fits::Never;
    }
    Fits::Short(top(tool, ask.hand_reach))
}

fn out_of_hand(ask: &Ask, tool: &ToolRow) -> bool {
    ask.crown_base
        .is_some_and(|base| base > top(tool, ask.hand_reach))
}

fn held(ask: &Ask, tool: &ToolRow) -> Result<Pole, Fits> {
    let (Some(span), Some(base)) = (tool.pole, ask.crown_base) else {
        return Err(Fits::Unknown);
    };
    let high = top(tool, ask.hand_reach);
    if base > high {
        return Err(Fits::Short(high));
    }
    pole(span, base, ask.hand_reach).ok_or(Fits::Long)
}

/// Whether the petiole goes in.
fn open(ask: &Ask, tool: &ToolRow, pole: Option<Pole>) -> Fits {
    match (tool.opening, ask.petiole) {
        (Some(opening), Some(petiole)) if petiole > opening => Fits::Narrow(opening),
        (Some(opening), None) => Fits::IfUpTo(pole, opening),
        _ => Fits::Reaches(pole),
    }
}
