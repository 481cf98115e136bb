//! Partly green and yellow fronds stay, above all when hunger is likely.
//!
//! Says: a hungry palm draws the nutrient out of its oldest fronds; taken early, it draws on the next ones up. Only
//! where live fronds may go at all (a full, fed, settled crown) may these, and then they count as live.
//! Hunger is called likely from a probability of 0.3 (assumed; before any count 0.28 is assumed).
//! Source: [keep_deficient_leaves], [k_leaf_removal_hastens], [dead_leaf_definition]; against it stands taking off
//! badly blighted leaves, minimally [petiole_blight_cut], and false smut on fed palms [graphiola_cut_condition].
//! Would change it: a leaf analysis that shows no shortage.

use super::may_lose_live;
use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use crown::Explanation;
use model::{Arg, Severity};

const ROWS: &[&str] = &["keep_deficient_leaves", "dead_leaf_definition"];
const LOOSER: &[&str] = &["petiole_blight_cut", "graphiola_cut_condition"];
const STAY: Say = Say::new("partly-dead-stay", Severity::Refuse)
    .on(ROWS)
    .against(LOOSER);
const HUNGRY: Say = Say::new("partly-dead-stay-hungry", Severity::Refuse)
    .on(&[
        "keep_deficient_leaves",
        "k_leaf_removal_hastens",
        "k_leaf_death_time",
        "dead_leaf_definition",
    ])
    .against(LOOSER);
const COUNT_AS_LIVE: Say = Say::new("partly-dead-count-as-live", Severity::Info)
    .on(ROWS)
    .against(LOOSER);

/// The rule.
pub const RULE: Rule = Rule {
    key: "partly_dead",
    part: Part::Take,
    says: &[STAY, HUNGRY, COUNT_AS_LIVE],
    check,
};

/// From this probability on hunger is called likely (assumed).
pub const HUNGER_LIKELY: f64 = 0.3;

fn check(sight: &Sight) -> Spoken {
    let n = Arg::Count(sight.crown.yellowing.into());
    let hunger = sight.crown.probabilities[Explanation::Hunger.index()];
    let stay = Limit {
        yellowing_stay: true,
        ..Limit::FREE
    };
    if hunger >= HUNGER_LIKELY {
        return Spoken::limit(
            sight
                .say(&HUNGRY)
                .with("n", n)
                .with("share", Arg::Share(hunger)),
            stay,
        );
    }
    if may_lose_live(sight) {
        return Spoken::note(sight.say(&COUNT_AS_LIVE).with("n", n));
    }
    Spoken::limit(sight.say(&STAY).with("n", n), stay)
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes, limit};

    #[test]
    fn yellow_stays_unless_the_palm_thrives() {
        let mut scene = Scene::full("Phoenix roebelenii");
        assert_eq!(codes(&super::RULE, &scene), ["partly-dead-count-as-live"]);
        assert!(!limit(&super::RULE, &scene).yellowing_stay);
        scene.crown.probabilities = [0.7, 0.0, 0.3, 0.0];
        assert_eq!(codes(&super::RULE, &scene), ["partly-dead-stay-hungry"]);
        assert!(limit(&super::RULE, &scene).yellowing_stay);
        scene.crown.probabilities = [0.75, 0.0, 0.25, 0.0];
        assert_eq!(codes(&super::RULE, &scene), ["partly-dead-stay"]);
        assert!(limit(&super::RULE, &scene).yellowing_stay);
    }
}
