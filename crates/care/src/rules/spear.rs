//! Hold: the spear leans, is down, or came out when pulled.
//!
//! Says: nobody cuts; the only growing point may be dying, and every live frond is needed while that is found out.
//! Instead: look for cause (lightning, rot, wilt, a deep planting), dig nothing, disinfect nothing in the bud, have
//! a person who can diagnose look within days, come back in two weeks.
//! Source: common practice of the trade, no source.
//! Would change it: a source that tells a spear leaning in wind from a spear losing its hold.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Severity, Spear};

const LEANING: Say = Say::new("hold-spear-leaning", Severity::Refuse).practice();
const DOWN: Say = Say::new("hold-spear-down", Severity::Refuse).practice();
const PULLED: Say = Say::new("hold-spear-pulled", Severity::Refuse).practice();
const SET: Say = Say::new("hold-spear-set", Severity::Refuse).practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "spear",
    part: Part::Hold,
    says: &[LEANING, DOWN, PULLED, SET],
    check,
};

/// The sign that says the same as [`Spear::Pulled`].
const PULLED_SIGN: &str = "spear-pulls-out";

fn check(sight: &Sight) -> Spoken {
    let say = match sight.spear() {
        _ if sight.sign(PULLED_SIGN) => PULLED,
        Some(Spear::Leaning) => LEANING,
        Some(Spear::Down) => DOWN,
        Some(Spear::Pulled) => PULLED,
        Some(Spear::Firm) | None if sight.hold("spear").is_some() => SET,
        Some(Spear::Firm) | None => return Spoken::silent(),
    };
    Spoken::limit(sight.say(&say), Limit::NOTHING)
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};
    use model::Spear;

    #[test]
    fn only_a_firm_spear_lets_people_cut() {
        for (spear, said) in [
            (None, &[][..]),
            (Some(Spear::Firm), &[]),
            (Some(Spear::Leaning), &["hold-spear-leaning"]),
            (Some(Spear::Down), &["hold-spear-down"]),
            (Some(Spear::Pulled), &["hold-spear-pulled"]),
        ] {
            let mut scene = Scene::full("Washingtonia robusta");
            scene.look().spear = spear;
            assert_eq!(codes(&super::RULE, &scene), said, "{spear:?}");
        }
    }

    #[test]
    fn a_later_firm_spear_counts_and_a_set_hold_stands() {
        let mut scene = Scene::full("Washingtonia robusta");
        scene.look().spear = Some(Spear::Leaning);
        let mut later = scene.inspections[0].clone();
        later.date = later.date.plus(1);
        later.spear = Some(Spear::Firm);
        scene.inspections.push(later);
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.hold("spear");
        assert_eq!(codes(&super::RULE, &scene), ["hold-spear-set"]);
    }
}
