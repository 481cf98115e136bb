//! Getting at a palm of the register: what the register and the day's drawn crown tell `care::reach`.

use crate::office::Office;
use crate::views::case::StemToday;
use care::reach::{Ask, HAND_REACH, Reach, reach};
use crown::PictureFrond;
use model::{CrewWords, Metres};

/// What the register does not know. `None` is unknown.
#[derive(Clone, PartialEq, Debug)]
pub struct Told {
    /// Width of a petiole where it is cut.
    pub petiole: Option<Metres>,
    /// How high the hands of those who come work.
    pub hand_reach: Metres,
    /// Who comes.
    pub crew: Option<CrewWords>,
}

impl Default for Told {
    fn default() -> Told {
        Told {
            petiole: None,
            hand_reach: HAND_REACH,
            crew: None,
        }
    }
}

/// How to get at a stem today, with the crown it was reckoned on.
#[derive(Clone, PartialEq, Debug)]
pub struct Reached {
    /// The answer.
    pub reach: Reach,
    /// The drawn crown: fronds of the cut plan marked.
    pub fronds: Vec<PictureFrond>,
    /// Length of a frond.
    pub frond: Option<Metres>,
    /// Thickness of the trunk.
    pub trunk: Option<Metres>,
    /// Ground to the crown's base.
    pub crown_base: Option<Metres>,
    /// Whether fronds come by hand and nothing is cut.
    pub by_hand: bool,
    /// Whether the plan takes anything today.
    pub takes: bool,
}

/// How to get at a stem for what its cut plan takes today.
pub fn reached(stem: &StemToday, told: &Told) -> Reached {
    let case = stem.case();
    let plan = care::cut_plan(&case);
    let picture = stem.reading().picture(plan.may_take, stem.today());
    let sight = care::facts::sight(&case);
    let crew = told.crew.as_ref();
    // a crew whose kit nobody has noted may carry anything
    let kit = crew
        .map(|crew| crew.kit.as_slice())
        .filter(|kit| !kit.is_empty());
    let ask = Ask {
        petiole: told.petiole,
        hand_reach: told.hand_reach,
        kit,
        skills: crew.map(|crew| crew.skills.as_slice()),
        ..Ask::of(&sight, &picture)
    };
    Reached {
        reach: reach(&ask),
        frond: ask.frond,
        trunk: ask.trunk,
        crown_base: ask.crown_base,
        by_hand: ask.stub.is_none(),
        takes: picture.fronds.iter().any(|frond| frond.cut),
        fronds: picture.fronds,
    }
}

/// Crews that work, by name.
pub fn crews(office: &Office) -> Vec<CrewWords> {
    let state = office.state();
    let working = state.work.crews.values().filter(|crew| !crew.gone);
    working.cloned().collect()
}
