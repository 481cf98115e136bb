//! Flower and fruit stalks may come off at any time.
//!
//! Says: they feed nothing the palm needs; in Phoenix, Arizona, one visit at the end of bloom takes them with the rest.
//! Source: [remove_flower_fruit_ok]; for date and fan palms there [phoenix_area_flowering].
//! Would change it: an owner who wants the fruit.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const STALKS: Say = Say::new("stalks-any-time", Severity::Info).on(&["remove_flower_fruit_ok"]);
const BLOOM: Say = Say::new("stalks-after-bloom", Severity::Info)
    .on(&["remove_flower_fruit_ok", "phoenix_area_flowering"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "stalks",
    part: Part::Take,
    says: &[STALKS, BLOOM],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let bloom = matches!(sight.genus(), "Phoenix" | "Washingtonia");
    Spoken::note(sight.say(if bloom { &BLOOM } else { &STALKS }))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn stalks_may_always_go() {
        assert_eq!(
            codes(&super::RULE, &Scene::full("Cocos nucifera")),
            ["stalks-any-time"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("Washingtonia robusta")),
            ["stalks-after-bloom"]
        );
    }
}
