//! Frost-hit fronds wait.
//!
//! Says: after a freeze everything stays, brown fronds too, until the risk of more frost is past and new fronds are
//! out. Strict reading: three of them, counted between looks that both lie after the freeze.
//! Source: [frost_keep_leaves] (2 to 3 new leaves), [cold_wait]; against it stands that dead fronds may go at any
//! time [remove_dead_ok].
//! Would change it: nothing known.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Day, Severity};

const WAIT: Say = Say::new("frost-wait", Severity::Refuse)
    .on(&["frost_keep_leaves", "cold_wait"])
    .against(&["remove_dead_ok"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "frost",
    part: Part::Take,
    says: &[WAIT],
    check,
};

/// New fronds to wait for: the strict end of "2 to 3".
const NEW_FRONDS: u32 = 3;

fn check(sight: &Sight) -> Spoken {
    let Some(freeze) = sight.grounds.freeze_on.filter(|day| *day <= sight.today) else {
        return Spoken::silent();
    };
    let out = new_since(sight, freeze);
    if out >= NEW_FRONDS {
        return Spoken::silent();
    }
    let finding = sight
        .say(&WAIT)
        .with("freeze", Arg::Date(freeze))
        .with("out", Arg::Count(out.into()));
    Spoken::limit(finding, Limit::NOTHING)
}

/// New fronds counted at looks whose own look before lies on or after the freeze.
fn new_since(sight: &Sight, freeze: Day) -> u32 {
    let pairs = sight
        .inspections
        .windows(2)
        .filter(|pair| pair[0].date >= freeze);
    pairs.filter_map(|pair| pair[1].new_leaves).sum()
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};
    use model::Inspection;

    #[test]
    fn everything_waits_for_three_new_fronds() {
        let mut scene = Scene::full("Syagrus romanzoffiana");
        let freeze = scene.today.plus(-100);
        scene.grounds.freeze_on = Some(freeze);
        assert_eq!(codes(&super::RULE, &scene), ["frost-wait"]);
        // 4 new since a look before the freeze: some may have come before it
        scene.inspections = [(-10, None), (20, Some(4)), (60, Some(2))]
            .map(|(days, new)| Inspection {
                new_leaves: new,
                ..Inspection::blank(1, freeze.plus(days))
            })
            .to_vec();
        assert_eq!(codes(&super::RULE, &scene), ["frost-wait"]);
        scene.inspections.push(Inspection {
            new_leaves: Some(1),
            ..Inspection::blank(1, freeze.plus(90))
        });
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
    }
}
