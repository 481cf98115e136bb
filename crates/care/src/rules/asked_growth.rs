//! What an asked-for cut is in years of growth, and whether it asks for more than there is.
//!
//! Says: live fronds asked, divided by the fronds this palm makes in the year from today.
//! Source: "a dozen fronds is a year's growth" for a palm that makes one a month [jarvis-pasco].
//! Would change it: the palm's own pace, which the reading follows.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use crown::Cut;
use model::{Arg, Finding, Severity};

const YEARS: Say = Say::new("asked-years-growth", Severity::Info).source(&["jarvis-pasco"]);
const MORE: Say = Say::new("asked-more-than-there-is", Severity::Act);

/// The rule; in a plan nobody asks, so it keeps silent there.
pub const RULE: Rule = Rule {
    key: "asked_growth",
    part: Part::Take,
    says: &[YEARS, MORE],
    check: |_| Spoken::silent(),
};

/// Below this pace a palm makes no fronds worth dividing by, a year.
const STANDSTILL: f64 = 0.5;

/// Live fronds asked, in years of growth; `None` where the palm stands still.
pub fn years(sight: &Sight, cut: Cut) -> Option<f64> {
    let pace = sight.crown.fronds_per_year;
    (pace >= STANDSTILL).then(|| f64::from(cut.live()) / pace)
}

/// The findings of an asked-for cut.
pub fn findings(sight: &Sight, cut: Cut) -> Vec<Finding> {
    let live = sight.crown.live();
    let mut findings = Vec::new();
    if cut.live() > live {
        let finding = sight.say(&MORE);
        findings.push(
            finding
                .with("asked", Arg::Count(cut.live().into()))
                .with("live", Arg::Count(live.into())),
        );
    }
    if let Some(years) = years(sight, cut).filter(|_| cut.live() > 0) {
        let finding = sight
            .say(&YEARS)
            .with("asked", Arg::Count(cut.live().into()));
        findings.push(
            finding
                .with(
                    "pace",
                    Arg::Count(sight.crown.fronds_per_year.round() as i64),
                )
                .with("time", Arg::Days(years * 365.25)),
        );
    }
    findings
}

#[cfg(test)]
mod tests {
    use crate::scene::Scene;
    use crown::Cut;

    /// "A dozen fronds is a year's growth" [jarvis-pasco].
    #[test]
    fn a_dozen_is_a_years_growth() {
        let mut scene = Scene::full("Sabal palmetto");
        scene.crown.fronds_per_year = 12.0;
        let dozen = Cut {
            green: 10,
            yellowing: 2,
            brown: 5,
        };
        assert_eq!(super::years(&scene.sight(), dozen), Some(1.0));
        scene.crown.fronds_per_year = 0.0;
        assert_eq!(super::years(&scene.sight(), dozen), None);
        assert_eq!(
            super::findings(
                &scene.sight(),
                Cut {
                    brown: 9,
                    ..Cut::NONE
                }
            ),
            []
        );
    }
}
