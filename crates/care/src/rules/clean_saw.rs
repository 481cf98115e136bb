//! Where a wilt travels on blades, every palm gets a clean saw.
//!
//! Says: disinfect the hand saw before and after each Canary Island date palm or use a new one; other palms known to
//! take Fusarium wilt are treated alike (our reading). Elsewhere clean tools at least between sites.
//! Source: [handsaw_sterile_each], [clean_every_site].
//! Would change it: a species row that says a palm does not take the wilt.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Severity, Species};

const EACH: Say =
    Say::new("clean-saw-each-palm", Severity::Act).on(&["handsaw_sterile_each", "bath_change"]);
const SITE: Say = Say::new("clean-saw-each-site", Severity::Info).on(&["clean_every_site"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "clean_saw",
    part: Part::Method,
    says: &[EACH, SITE],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let wilts = sight.species.and_then(|s| Species::known(&s.fusarium)) == Some(true);
    let each = wilts || sight.name() == "Phoenix canariensis";
    Spoken::note(sight.say(if each { &EACH } else { &SITE }))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn a_palm_that_takes_the_wilt_gets_its_own_clean_saw() {
        assert_eq!(
            codes(&super::RULE, &Scene::full("Phoenix canariensis")),
            ["clean-saw-each-palm"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("Bismarckia nobilis")),
            ["clean-saw-each-site"]
        );
    }
}
