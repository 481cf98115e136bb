//! Caution: spines and teeth.
//!
//! Says: date palm spines go through gloves and into joints: cut them off first, stab-proof gloves, a doctor for a
//! puncture at a joint. Other armed petioles: long sleeves and thick gloves.
//! Source: [spines]; gloves for teeth are common practice, no source.
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::species::Armature;
use model::{Severity, Species};

const SPINES: Say = Say::new("caution-spines", Severity::Caution).on(&["spines", "defer_all"]);
const TEETH: Say = Say::new("caution-teeth", Severity::Caution)
    .on(&["defer_all"])
    .practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "spines",
    part: Part::Caution,
    says: &[SPINES, TEETH],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let armature = sight.species.and_then(|s| Species::known(&s.armature));
    match armature {
        // armed without knowing how: as if spines
        Some(Armature::Spines | Armature::Armed) => Spoken::note(sight.say(&SPINES)),
        _ if sight.genus() == "Phoenix" => Spoken::note(sight.say(&SPINES)),
        Some(Armature::Teeth) => Spoken::note(sight.say(&TEETH)),
        Some(Armature::Unarmed) | None => Spoken::silent(),
    }
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn armed_palms_are_named() {
        for (species, said) in [
            ("Phoenix roebelenii", &["caution-spines"][..]),
            ("Phoenix", &["caution-spines"]),
            ("Washingtonia robusta", &["caution-teeth"]),
            ("Sabal palmetto", &[]),
            ("no such palm", &[]),
        ] {
            assert_eq!(
                codes(&super::RULE, &Scene::full(species)),
                said,
                "{species}"
            );
        }
    }
}
