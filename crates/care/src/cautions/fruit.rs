//! Caution: falling fruit.
//!
//! Says: coconuts and heavy bunches come down first, lowered or with nobody beneath. Speaks for coconuts, and where
//! fruit was noted as a sign.
//! Source: common practice, no source.
//! Would change it: a weight of the fruit in the species row.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const FRUIT: Say = Say::new("caution-fruit", Severity::Caution)
    .on(&["drop_zone_pruning", "defer_all"])
    .practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "fruit",
    part: Part::Caution,
    says: &[FRUIT],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if sight.genus() == "Cocos" || sight.sign("fruit") {
        return Spoken::note(sight.say(&FRUIT));
    }
    Spoken::silent()
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn coconuts_and_noted_fruit_are_minded() {
        assert_eq!(
            codes(&super::RULE, &Scene::full("Cocos nucifera")),
            ["caution-fruit"]
        );
        let mut scene = Scene::full("Phoenix dactylifera");
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.look().signs.push("fruit".into());
        assert_eq!(codes(&super::RULE, &scene), ["caution-fruit"]);
    }
}
