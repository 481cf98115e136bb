//! Rules, one a file, and the flat list of them with the cautions.

pub mod asked_growth;
pub mod clean_saw;
pub mod counted;
pub mod crownshaft;
pub mod dead;
pub mod fed;
pub mod frost;
pub mod full;
pub mod held;
pub mod leaf_bases;
pub mod level;
pub mod moved;
pub mod nest;
pub mod old_stubs;
pub mod over_trimming;
pub mod own_stem;
pub mod partly_dead;
pub mod regrowth;
pub mod skip_visit;
pub mod spear;
pub mod spikes;
pub mod stalks;
pub mod storm;
pub mod stroke;
pub mod stub;
pub mod suspect;
pub mod weevil_season;
pub mod wilt;
pub mod wires_within;

use crate::cautions;
use crate::rule::Rule;
use crate::sight::Sight;

/// Every rule, in the order in which findings are shown.
pub const ALL: &[Rule] = &[
    // holds
    wires_within::RULE,
    spear::RULE,
    wilt::RULE,
    suspect::RULE,
    nest::RULE,
    held::RULE,
    // what comes off and what stays
    dead::RULE,
    partly_dead::RULE,
    frost::RULE,
    moved::RULE,
    crownshaft::RULE,
    storm::RULE,
    weevil_season::RULE,
    counted::RULE,
    fed::RULE,
    full::RULE,
    level::RULE,
    regrowth::RULE,
    over_trimming::RULE,
    asked_growth::RULE,
    stalks::RULE,
    skip_visit::RULE,
    // how to cut
    own_stem::RULE,
    stub::RULE,
    stroke::RULE,
    leaf_bases::RULE,
    old_stubs::RULE,
    clean_saw::RULE,
    spikes::RULE,
    // what to mind
    cautions::wires::RULE,
    cautions::skirt::RULE,
    cautions::drop_zone::RULE,
    cautions::spines::RULE,
    cautions::fruit::RULE,
    cautions::lift::RULE,
    cautions::ladder::RULE,
    cautions::eyes::RULE,
];

/// Whether any live frond may go at all: no rule on the state of palm or place stands against it. What is left to ask
/// is how many.
pub fn may_lose_live(sight: &Sight) -> bool {
    let state = [
        frost::RULE,
        moved::RULE,
        crownshaft::RULE,
        storm::RULE,
        weevil_season::RULE,
        counted::RULE,
        fed::RULE,
        full::RULE,
    ];
    state
        .iter()
        .all(|rule| (rule.check)(sight).limit.live != Some(0))
}
