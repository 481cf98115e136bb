//! All that is to know before a palm is dug.

use super::{Ball, Dig, LeafAdvice, Load, ball, leaves, load};
use model::knowledge::{MovePalm, MoveTopic, SafetyRow, TransplantRow};

/// All that is to know before a palm is dug.
#[derive(Clone, PartialEq, Debug)]
pub struct Before<'k> {
    /// The root ball.
    pub ball: Ball<'k>,
    /// What hangs on the hook.
    pub load: Load<'k>,
    /// Cautions of lifting and digging.
    pub lifting: Vec<&'k TransplantRow>,
    /// Clearance of machine and load from overhead lines.
    pub lines: Vec<&'k SafetyRow>,
    /// Fronds.
    pub leaves: LeafAdvice<'k>,
    /// Time of the year, and heat.
    pub season: Vec<&'k TransplantRow>,
    /// Planting depth, with the trial of planting too deep.
    pub depth: Vec<&'k TransplantRow>,
    /// Props.
    pub bracing: Vec<&'k TransplantRow>,
    /// Water around the move.
    pub water: Vec<&'k TransplantRow>,
    /// Who comes first, whatever is said here.
    pub defer: Option<&'k SafetyRow>,
}

/// All that is to know before this palm is dug.
pub fn before<'k>(dig: &Dig<'k>) -> Before<'k> {
    let ball = ball(dig);
    let load = load(dig, &ball);
    Before {
        load,
        ball,
        lifting: about(dig, MoveTopic::Lift),
        lines: lines(dig),
        leaves: leaves(dig),
        season: about(dig, MoveTopic::Season),
        // the trial with a pygmy date palm is the only one there is: it is shown for every palm, under its name
        depth: dig.knowledge.moving(MoveTopic::Depth).collect(),
        bracing: about(dig, MoveTopic::Brace),
        water: about(dig, MoveTopic::Water),
        defer: dig.knowledge.safety("defer_all"),
    }
}

fn about<'k>(dig: &Dig<'k>, topic: MoveTopic) -> Vec<&'k TransplantRow> {
    dig.knowledge
        .moving(topic)
        .filter(|row| row.palm == MovePalm::Any || row.names(dig.name()))
        .collect()
}

/// Clearance by voltage; where the voltage is not known, the row for that. Beyond what the table knows too.
fn lines<'k>(dig: &Dig<'k>) -> Vec<&'k SafetyRow> {
    let key = match dig.line_kv {
        Some(kv) if kv <= 50.0 => "line_crane_50",
        Some(kv) if kv <= 200.0 => "line_crane_200",
        Some(kv) if kv <= 350.0 => "line_crane_350",
        _ => "line_crane_unknown",
    };
    dig.knowledge.safety(key).into_iter().collect()
}
