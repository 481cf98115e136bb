//! How to get at a crown: which tool reaches from the ground, where to stand, when only a lift will do, what to keep
//! free, and when nobody but line-clearance workers may come near.
//!
//! `docs/reach.md` has the method, the figures and their marks.

mod fit;
mod place;
mod say;
#[cfg(test)]
mod tests;
mod wires;

pub use fit::{Fit, Fits, Pole, pole, top};
pub use place::{Place, STEP_DEGREES, aside};
pub use say::SAYS;
pub use wires::{HIGHEST_KV, Line, line};

use crate::cautions::skirt;
use crate::plan::{Stand, StubLength};
use crate::rules::stub;
use crate::sight::Sight;
use crown::{Picture, PictureFrond};
use model::knowledge::{Grip, ToolRow};
use model::{Finding, Knowledge, Metres, Species};

/// So high a raised hand works: 8 ft (common practice, no source).
pub const HAND_REACH: Metres = Metres(8.0 * Metres::PER_FOOT);
/// A pole is held no steeper than this, degrees above level: steeper, and the cutter stands under the cut (assumed).
pub const STEEPEST: f64 = 75.0;
/// And no flatter: it grows too heavy in front of the body (assumed).
pub const FLATTEST: f64 = 50.0;
/// The lowest that hands hold a pole, above the ground (assumed).
pub const LOWEST_HANDS: Metres = Metres(1.2);

/// What is known of a stem and of those who come to it. `None` is unknown.
#[derive(Clone, Copy, Debug)]
pub struct Ask<'a> {
    /// Ground to the base of the crown, where the fronds to go are cut.
    pub crown_base: Option<Metres>,
    /// Length of a frond.
    pub frond: Option<Metres>,
    /// A fan palm.
    pub fan: Option<bool>,
    /// Thickness of the trunk.
    pub trunk: Option<Metres>,
    /// Width of a petiole where it is cut.
    pub petiole: Option<Metres>,
    /// Stub to leave; `None`: nothing is cut, the frond comes by hand.
    pub stub: Option<StubLength>,
    /// The drawn crown, those to go marked.
    pub fronds: &'a [PictureFrond],
    /// A skirt of dead fronds hangs.
    pub skirt: bool,
    /// Nearest overhead conductor to the crown.
    pub wires: Option<Metres>,
    /// Its voltage to ground, kV.
    pub line_kv: Option<f64>,
    /// A hold for wires is set.
    pub wires_held: bool,
    /// How high the hands of those who come work.
    pub hand_reach: Metres,
    /// Keys of the tools that are at hand; `None`: any.
    pub kit: Option<&'a [String]>,
    /// Words for what the crew is trained for; `None`: nobody has been chosen yet.
    pub skills: Option<&'a [String]>,
    /// Tools and rows to stand on.
    pub knowledge: &'static Knowledge,
}

impl<'a> Ask<'a> {
    /// What a sight and the drawn crown of the day tell; any tool, nobody chosen, the petiole not measured.
    pub fn of(sight: &Sight, picture: &'a Picture) -> Ask<'a> {
        let species = sight.species;
        Ask {
            crown_base: sight.palm.trunk_height,
            frond: species.and_then(|s| Species::known(&s.leaf_length)),
            fan: species
                .and_then(|s| Species::known(&s.leaf_form))
                .map(|form| form.is_fan()),
            trunk: species.and_then(|s| Species::known(&s.trunk_diameter)),
            petiole: None,
            stub: stub::length(sight),
            fronds: &picture.fronds,
            skirt: skirt::hangs(sight),
            wires: sight.palm.wires,
            line_kv: sight.grounds.line_kv,
            wires_held: sight.hold("wires").is_some(),
            hand_reach: HAND_REACH,
            kit: None,
            skills: None,
            knowledge: Knowledge::embedded(),
        }
    }

    /// Whether a tool is at hand. Those who are trained for a lift are taken to come with one.
    fn has(&self, key: &str) -> bool {
        let among = |words: &[String]| words.iter().any(|own| own == key);
        match (self.kit, self.skills) {
            (Some(kit), Some(skills)) if key == "lift" => among(kit) || among(skills),
            (None, Some(skills)) if key == "lift" => among(skills),
            (Some(kit), _) => among(kit),
            (None, _) => true,
        }
    }
}

/// How to get at a crown.
#[derive(Clone, PartialEq, Debug)]
pub struct Reach {
    /// Refused: nobody but line-clearance workers. Then there is no stand, tool or place.
    pub refused: bool,
    /// From where.
    pub stand: Stand,
    /// Every tool of the table with what speaks for or against it here: first those to take, in order of preference.
    pub fits: Vec<Fit>,
    /// The highest crown base that a tool at hand reaches from the ground; `None`: none does.
    pub top: Option<Metres>,
    /// Where to stand with the pole, round the drawn crown, clockwise. Empty without a pole or without fronds to go.
    pub places: Vec<Place>,
    /// Ranks of fronds to go that no place lets the pole at.
    pub blocked: Vec<u32>,
    /// Radius to keep people out of, from the trunk; `None` unknown.
    pub keep_out: Option<Metres>,
    /// The distance from wires that holds here.
    pub line: Line,
    /// What to say, the worst first.
    pub findings: Vec<Finding>,
}

impl Reach {
    /// The tools to take, in order of preference: those that reach, and those that reach if the petiole is narrow
    /// enough.
    pub fn takes(&self) -> impl Iterator<Item = &Fit> {
        self.fits.iter().filter(|fit| fit.takes())
    }

    /// The pole of the tool to take first, where it has one.
    pub fn pole(&self) -> Option<Pole> {
        self.takes().next()?.fits.pole()
    }
}

/// The answer.
pub fn reach(ask: &Ask) -> Reach {
    let line = line(ask);
    let refused = line.refuses();
    let stand = stand(ask);
    let fits = if refused {
        Vec::new()
    } else {
        fit::fits(ask, stand)
    };
    let first = fits.iter().find(|fit| fit.takes());
    let (places, blocked) = match first.and_then(|fit| fit.fits.pole()) {
        Some(pole) => place::places(ask, pole),
        None => (Vec::new(), Vec::new()),
    };
    let mut reach = Reach {
        refused,
        stand,
        fits,
        top: highest(ask),
        places,
        blocked,
        keep_out: keep_out(ask),
        line,
        findings: Vec::new(),
    };
    reach.findings = say::findings(ask, &reach);
    reach
}

/// From where the crown is got at with what is at hand: hands first, then a pole, else a lift. A skirt is only ever taken
/// from above.
pub fn stand(ask: &Ask) -> Stand {
    if ask.skirt {
        return Stand::LiftFromAbove;
    }
    let Some(base) = ask.crown_base else {
        return Stand::Unknown;
    };
    if base <= ask.hand_reach {
        return Stand::Ground;
    }
    // fronds that come by hand come from the ground only where a hand gets at them; a pole may still pull them
    let poles = tools(ask).filter(|tool| tool.grip == Grip::Pole);
    if poles
        .into_iter()
        .any(|tool| top(tool, ask.hand_reach) >= base)
    {
        Stand::GroundWithPole
    } else {
        Stand::Lift
    }
}

/// The tools at hand, in the order of the table.
fn tools<'a>(ask: &'a Ask<'a>) -> impl Iterator<Item = &'static ToolRow> + 'a {
    ask.knowledge.tools.iter().filter(|tool| ask.has(&tool.key))
}

/// The highest crown base within reach of the ground.
fn highest(ask: &Ask) -> Option<Metres> {
    let ground = |tool: &&ToolRow| matches!(tool.grip, Grip::Hand | Grip::Pole);
    let tops = tools(ask).filter(ground);
    let tops = tops.map(|tool| top(tool, ask.hand_reach));
    tops.max_by(|a, b| a.0.total_cmp(&b.0))
}

/// The highest crown base that a pole of the table reaches from the ground with hands at [`HAND_REACH`].
pub fn pole_top(knowledge: &Knowledge) -> Metres {
    let poles = knowledge
        .tools
        .iter()
        .filter(|tool| tool.grip == Grip::Pole);
    let tops = poles.map(|tool| top(tool, HAND_REACH).0);
    Metres(tops.fold(0.0, f64::max))
}

/// The crown's radius and one frond length more; the crown is about a frond wide to each side (assumed), as the caution
/// on what falls has it [drop_zone_pruning].
fn keep_out(ask: &Ask) -> Option<Metres> {
    ask.frond.map(|frond| Metres(2.0 * frond.0))
}
