//! Caution: what falls, and who is beneath.
//!
//! Says: nobody under the cut, the cutter stands to the side, one cutter in a zone. No published radius was found;
//! commonly the crown's radius and one frond's length more are kept free, and since the crown is about a frond's
//! length wide to each side (assumed) that is two frond lengths. What lies beneath is closed off first.
//! Source: [drop_zone_pruning] (radius unknown; common practice, no source), [pole_handling].
//! Would change it: a published radius.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Finding, Metres, Severity, Species};

const ROWS: &[&str] = &["drop_zone_pruning", "pole_handling", "defer_all"];
const ZONE: Say = Say::new("caution-drop-zone", Severity::Caution)
    .on(ROWS)
    .practice();
const RADIUS: Say = Say::new("caution-drop-zone-radius", Severity::Caution)
    .on(ROWS)
    .practice();
const OVER: Say = Say::new("caution-drop-zone-over", Severity::Act)
    .on(ROWS)
    .practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "drop_zone",
    part: Part::Caution,
    says: &[ZONE, RADIUS, OVER],
    check,
};

fn check(sight: &Sight) -> Spoken {
    let over = sight.palm.over.trim();
    let spoken = Spoken::note(zone(sight));
    if over.is_empty() {
        return spoken;
    }
    spoken.and(sight.say(&OVER).with("over", Arg::Text(over.to_owned())))
}

fn zone(sight: &Sight) -> Finding {
    match sight.species.and_then(|s| Species::known(&s.leaf_length)) {
        Some(frond) => sight
            .say(&RADIUS)
            .with("radius", Arg::Length(Metres(2.0 * frond.0))),
        None => sight.say(&ZONE),
    }
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn what_lies_beneath_is_closed_off() {
        let mut scene = Scene::full("Cocos nucifera");
        assert_eq!(codes(&super::RULE, &scene), ["caution-drop-zone-radius"]);
        scene.palm.over = "car park".into();
        assert_eq!(
            codes(&super::RULE, &scene),
            ["caution-drop-zone-radius", "caution-drop-zone-over"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("no such palm")),
            ["caution-drop-zone"]
        );
    }
}
