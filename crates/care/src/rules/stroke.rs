//! The stroke goes from below upward, with the support side of the tool against the stub.
//!
//! Says: so the petiole does not tear down into the trunk, and the side that bruises comes off with the frond.
//! Silent where a skirt hangs: there nobody works from below, and the caution on skirts speaks.
//! Source: common practice, no source.
//! Would change it: a tool whose manual says otherwise.

use super::super::cautions::skirt;
use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const UPWARD: Say = Say::new("stroke-upward", Severity::Info).practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "stroke",
    part: Part::Method,
    says: &[UPWARD],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if sight.crownshaft() || skirt::hangs(sight) {
        return Spoken::silent();
    }
    Spoken::note(sight.say(&UPWARD))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn upward_but_never_under_a_skirt() {
        let mut scene = Scene::full("Washingtonia filifera");
        scene.crown.brown = 4;
        assert_eq!(codes(&super::RULE, &scene), ["stroke-upward"]);
        scene.crown.brown = 60;
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        assert_eq!(
            codes(&super::RULE, &Scene::full("Roystonea regia")),
            [""; 0]
        );
    }
}
