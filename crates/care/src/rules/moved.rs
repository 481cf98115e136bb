//! A palm moved recently loses only wholly dead fronds until it is established.
//!
//! Says: kept fronds carry the palm while it makes roots. Established is computed (production back, loss ordinary)
//! and taken for granted after 540 days (assumed). The Sabal exception belongs to the day of digging and is shown,
//! not granted afterwards.
//! Source: removing or tying leaves gave no benefit where the ball stays moist [other_transplant_no_removal]; Sabal:
//! all leaves off at digging, 95 % alive against 64 % with a third kept [sabal_crop_at_transplant], kept leaves died
//! anyway [sabal_kept_leaves_die], up to two years to a full crown [sabal_full_crown_time].
//! Would change it: a trial on established palms of the species.

use crate::case::Settled;
use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity};

const MOVED: Say = Say::new("moved-dead-only", Severity::Refuse)
    .on(&["other_transplant_no_removal"])
    .against(&["sabal_crop_at_transplant"]);
const SABAL: Say = Say::new("moved-sabal-exception", Severity::Info).on(&[
    "sabal_crop_at_transplant",
    "sabal_kept_leaves_die",
    "sabal_full_crown_time",
]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "moved",
    part: Part::Take,
    says: &[MOVED, SABAL],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let Settled::NotYet {
        moved_on,
        assumed_by,
    } = sight.crown.settled
    else {
        return Spoken::silent();
    };
    let mut finding = sight
        .say(&MOVED)
        .with("moved", Arg::Date(moved_on))
        .with("until", Arg::Date(assumed_by));
    let sabal = sight.name() == "Sabal palmetto";
    if !sabal {
        finding.conflicts.clear();
    }
    let spoken = Spoken::limit(
        finding,
        Limit {
            live: Some(0),
            yellowing_stay: true,
            dead_stay: false,
        },
    );
    if sabal {
        spoken.and(sight.say(&SABAL))
    } else {
        spoken
    }
}

#[cfg(test)]
mod tests {
    use crate::case::Settled;
    use crate::scene::{Scene, codes, limit};

    #[test]
    fn a_moved_palm_keeps_what_is_not_dead() {
        for (species, said) in [
            ("Washingtonia robusta", &["moved-dead-only"][..]),
            // [broschat1991], [ep543] by way of the knowledge rows
            (
                "Sabal palmetto",
                &["moved-dead-only", "moved-sabal-exception"],
            ),
        ] {
            let mut scene = Scene::full(species);
            assert_eq!(codes(&super::RULE, &scene), [""; 0]);
            scene.moved_days_ago(63);
            assert_eq!(codes(&super::RULE, &scene), said, "{species}");
            let limit = limit(&super::RULE, &scene);
            assert!(limit.live == Some(0) && limit.yellowing_stay && !limit.dead_stay);
            scene.crown.settled = Settled::Established;
            assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        }
    }
}
