//! Fronds at digging: take, leave or nobody knows, by species and water.

use super::Dig;
use model::knowledge::{MovePalm, MoveSay, MoveTopic, MoveWhen, TransplantRow};

/// The advice with what it rests on.
#[derive(Clone, PartialEq, Debug)]
pub struct LeafAdvice<'k> {
    /// Take, leave, or unknown.
    pub say: MoveSay,
    /// It depends on whether the ball stays moist, and nobody has told.
    pub depends_on_water: bool,
    /// Rows the advice rests on, the deciding one first.
    pub rows: Vec<&'k TransplantRow>,
    /// Published figures beside it: survival, how long kept fronds lived, how long to a full crown.
    pub figures: Vec<&'k TransplantRow>,
    /// What is said of tying.
    pub tying: Vec<&'k TransplantRow>,
}

/// What to do with the fronds.
pub fn leaves<'k>(dig: &Dig<'k>) -> LeafAdvice<'k> {
    let all = || dig.knowledge.moving(MoveTopic::Leaves);
    let applies = |row: &TransplantRow| holds(dig, row.when);
    let own: Vec<&TransplantRow> = all()
        .filter(|row| row.names(dig.name()) && applies(row))
        .collect();
    let general: Vec<&TransplantRow> = all()
        .filter(|row| row.palm == MovePalm::Any && applies(row))
        .collect();
    // a species' own row decides whatever the water; what is said of all palms stands beside it where it agrees
    let decides = if own.is_empty() { &general } else { &own };
    let says: Vec<MoveSay> = decides.iter().map(|row| row.say).collect();
    let agree = says.windows(2).all(|pair| pair[0] == pair[1]);
    let say = match says.first() {
        Some(say) if agree => *say,
        _ => MoveSay::Unknown,
    };
    let beside = general
        .iter()
        .filter(|row| !own.is_empty() && row.say == say)
        .copied();
    LeafAdvice {
        say,
        depends_on_water: dig.moist.is_none()
            && decides
                .iter()
                .any(|row| matches!(row.when, MoveWhen::Moist | MoveWhen::Dry)),
        rows: decides.iter().copied().chain(beside).collect(),
        figures: named(
            dig,
            &[MoveTopic::Survival, MoveTopic::Kept, MoveTopic::FullAgain],
        ),
        tying: dig
            .knowledge
            .moving(MoveTopic::Untie)
            .filter(|row| row.palm == MovePalm::Any || row.names(dig.name()))
            .collect(),
    }
}

/// Whether a row's circumstance may hold: what is not known may be either.
fn holds(dig: &Dig, when: MoveWhen) -> bool {
    match when {
        MoveWhen::Moist => dig.moist != Some(false),
        MoveWhen::Dry => dig.moist != Some(true),
        MoveWhen::Hot => dig.hot,
        MoveWhen::Always | MoveWhen::Earth | MoveWhen::Sand => true,
    }
}

fn named<'k>(dig: &Dig<'k>, topics: &[MoveTopic]) -> Vec<&'k TransplantRow> {
    topics
        .iter()
        .flat_map(|topic| dig.knowledge.moving(*topic))
        .filter(|row| row.names(dig.name()))
        .collect()
}
