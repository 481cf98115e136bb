//! Hold: a nest, a roost or a swarm in the crown.
//!
//! Says: nobody cuts until it is empty. Instead: stay away from bees and wasps and call somebody who takes them;
//! for birds and bats ask the wildlife office, because many are protected and may not be moved.
//! Source: a municipal palm specification has the crew look for bees and nests on the way up and report before
//! cutting [inspect_before_cut]; the rest is common practice, no source.
//! Would change it: local law with dates for a named species.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const NEST: Say = Say::new("hold-nest", Severity::Refuse)
    .on(&["inspect_before_cut"])
    .practice();
const BATS: Say = Say::new("hold-bats", Severity::Refuse)
    .on(&["inspect_before_cut"])
    .practice();
const BEES: Say = Say::new("hold-bees", Severity::Refuse)
    .on(&["inspect_before_cut"])
    .practice();

/// The rule.
pub const RULE: Rule = Rule {
    key: "nest",
    part: Part::Hold,
    says: &[NEST, BATS, BEES],
    check,
};

/// Signs, which are also hold reasons, with what is said of each.
const KINDS: [(&str, Say); 3] = [("nest", NEST), ("bats", BATS), ("bees", BEES)];

fn check(sight: &Sight) -> Spoken {
    let mut spoken = Spoken::silent();
    for (key, say) in KINDS {
        if sight.sign(key) || sight.hold(key).is_some() {
            spoken.limit = Limit::NOTHING;
            spoken.findings.push(sight.say(&say));
        }
    }
    spoken
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn a_nest_holds_whether_seen_or_set() {
        let mut scene = Scene::full("Phoenix sylvestris");
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.look().signs.push("bees".into());
        assert_eq!(codes(&super::RULE, &scene), ["hold-bees"]);
        scene.hold("nest");
        assert_eq!(codes(&super::RULE, &scene), ["hold-nest", "hold-bees"]);
    }

    #[test]
    fn a_hold_that_ran_out_holds_no_more() {
        let mut scene = Scene::full("Phoenix sylvestris");
        scene.hold("nest");
        scene.holds[0].until = Some(scene.today.plus(-1));
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.holds[0].until = Some(scene.today);
        assert_eq!(codes(&super::RULE, &scene), ["hold-nest"]);
    }
}
