//! Caution: a skirt of dead fronds.
//!
//! Says: never climb or stand beneath it and cut upward; the ring breaks loose, slides down and suffocates. From above,
//! from a lift, by trained people, with a rescue plan. A skirt is taken to hang when it was noted as a sign, or when a
//! fan palm (or a palm of unknown leaf) carries 15 dead fronds or more (assumed).
//! Source: six investigated deaths [skirt_never_below]; [skirt_from_above], [skirt_trained], [skirt_rescue].
//! Would change it: nothing known.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Severity, Species};

const ROWS: &[&str] = &[
    "skirt_never_below",
    "skirt_from_above",
    "skirt_trained",
    "skirt_rescue",
    "defer_all",
];
const SKIRT: Say = Say::new("caution-skirt", Severity::Act).on(ROWS);
const OVER: Say = Say::new("caution-skirt-over", Severity::Act).on(ROWS);

/// The rule.
pub const RULE: Rule = Rule {
    key: "skirt",
    part: Part::Caution,
    says: &[SKIRT, OVER],
    check,
};

/// Dead fronds that make a skirt (assumed).
const SKIRT_FROM: u32 = 15;

/// Whether a skirt hangs.
pub fn hangs(sight: &Sight) -> bool {
    let form = sight.species.and_then(|s| Species::known(&s.leaf_form));
    let fan = form.is_none_or(|f| f.is_fan()) && !sight.crownshaft();
    sight.sign("skirt") || (fan && sight.crown.brown >= SKIRT_FROM)
}

fn check(sight: &Sight) -> Spoken {
    if !hangs(sight) {
        return Spoken::silent();
    }
    let over = sight.palm.over.trim();
    let (say, over) = if over.is_empty() {
        (SKIRT, None)
    } else {
        (OVER, Some(Arg::Text(over.to_owned())))
    };
    let finding = sight
        .say(&say)
        .with("n", Arg::Count(sight.crown.brown.into()));
    Spoken::note(match over {
        Some(over) => finding.with("over", over),
        None => finding,
    })
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    #[test]
    fn many_dead_fronds_on_a_fan_palm_are_a_skirt() {
        for (species, brown, sign, over, said) in [
            ("Washingtonia filifera", 14, false, "", &[][..]),
            ("Washingtonia filifera", 15, false, "", &["caution-skirt"]),
            (
                "Washingtonia filifera",
                40,
                false,
                "path",
                &["caution-skirt-over"],
            ),
            ("Washingtonia filifera", 5, true, "", &["caution-skirt"]),
            ("Phoenix canariensis", 40, false, "", &[]),
            ("Roystonea regia", 40, false, "", &[]),
            ("no such palm", 15, false, "", &["caution-skirt"]),
        ] {
            let mut scene = Scene::full(species);
            scene.crown.brown = brown;
            scene.palm.over = over.into();
            if sign {
                scene.look().signs.push("skirt".into());
            }
            assert_eq!(codes(&super::RULE, &scene), said, "{species}, {brown} dead");
        }
    }
}
