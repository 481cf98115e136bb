//! Leaf bases and fibre come off only where they come by hand, and never in the upper band.
//!
//! Says: what is loose may be pulled; what resists stays, and so does the band just below the crown. The cut ball
//! below a Canary Island date palm's crown is not needed and may do harm.
//! Source: [peeling_no_damage]; the upper band is common practice, no source; the ball [cidp_ball_unneeded], against
//! contract clauses that ask for one [cidp_ball_48_60, cidp_ball_4_8ft].
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const BY_HAND: Say = Say::new("bases-by-hand", Severity::Info)
    .on(&["peeling_no_damage"])
    .practice();
const BALL: Say = Say::new("bases-no-ball", Severity::Info)
    .on(&["cidp_ball_unneeded"])
    .against(&["cidp_ball_48_60", "cidp_ball_4_8ft"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "leaf_bases",
    part: Part::Method,
    says: &[BY_HAND, BALL],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if sight.crownshaft() {
        return Spoken::silent();
    }
    let spoken = Spoken::note(sight.say(&BY_HAND));
    if sight.name() == "Phoenix canariensis" {
        spoken.and(sight.say(&BALL))
    } else {
        spoken
    }
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn bases_come_by_hand() {
        assert_eq!(
            codes(&super::RULE, &Scene::full("Sabal palmetto")),
            ["bases-by-hand"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("Phoenix canariensis")),
            ["bases-by-hand", "bases-no-ball"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("Wodyetia bifurcata")),
            [""; 0]
        );
    }
}
