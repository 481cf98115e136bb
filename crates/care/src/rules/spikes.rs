//! No climbing spikes.
//!
//! Says: every spike hole in a palm stays for life. Strict reading: never.
//! Source: [spikes_prohibited]; against it one city allows them above 65 ft [spikes_over_65ft], another on palms at
//! large [spikes_allowed_palms].
//! Would change it: a palm that is taken down anyway.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const NONE: Say = Say::new("no-spikes", Severity::Refuse)
    .on(&["spikes_prohibited"])
    .against(&["spikes_over_65ft", "spikes_allowed_palms"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "spikes",
    part: Part::Method,
    says: &[NONE],
    check,
};

fn check(sight: &Sight) -> Spoken {
    Spoken::note(sight.say(&NONE))
}

#[cfg(test)]
mod tests {
    use crate::scene::Scene;

    #[test]
    fn spikes_are_never_allowed_and_who_says_otherwise_is_named() {
        let scene = Scene::full("Washingtonia robusta");
        let spoken = (super::RULE.check)(&scene.sight());
        assert_eq!(spoken.findings[0].code, "no-spikes");
        assert_eq!(
            spoken.findings[0].conflicts,
            ["spikes_over_65ft", "spikes_allowed_palms"]
        );
    }
}
