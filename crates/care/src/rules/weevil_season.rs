//! Where palm weevils fly, no green frond of a date palm is cut outside the cold months.
//!
//! Says: December and January in the north (half a year later in the south, assumed); elsewhere in the year fresh
//! cuts draw the weevil. Other palms: a warning only.
//! Source: [weevil_cut_months], [weevil_attraction]; against it stands trade advice to cut Canary Island date palms
//! July to September, against a fungus [cidp_cut_months_trade], and desert advice for summer [desert_annual_summer].
//! Would change it: the flight months of the place.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::Severity;

const WAIT: Say = Say::new("weevil-season-wait", Severity::Refuse)
    .on(&["weevil_cut_months", "weevil_attraction"])
    .against(&["cidp_cut_months_trade", "desert_annual_summer"]);
const DRAWN: Say = Say::new("weevil-fresh-cuts", Severity::Caution).on(&["weevil_attraction"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "weevil_season",
    part: Part::Take,
    says: &[WAIT, DRAWN],
    check,
};

fn check(sight: &Sight) -> Spoken {
    if !sight.grounds.weevil_area {
        return Spoken::silent();
    }
    if sight.genus() == "Phoenix" && !matches!(sight.northern_month(), 12 | 1) {
        let limit = Limit {
            live: Some(0),
            yellowing_stay: true,
            dead_stay: false,
        };
        return Spoken::limit(sight.say(&WAIT), limit);
    }
    Spoken::note(sight.say(&DRAWN))
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};
    use model::{Day, units::Position};

    #[test]
    fn date_palms_wait_for_the_cold_months() {
        let mut scene = Scene::full("Phoenix canariensis");
        for (weevils, month, lat, said) in [
            (false, 6, 36.7, &[][..]),
            (true, 6, 36.7, &["weevil-season-wait"]),
            (true, 12, 36.7, &["weevil-fresh-cuts"]),
            (true, 1, 36.7, &["weevil-fresh-cuts"]),
            (true, 2, 36.7, &["weevil-season-wait"]),
            (true, 6, -33.0, &["weevil-fresh-cuts"]),
            (true, 7, -33.0, &["weevil-fresh-cuts"]),
            (true, 8, -33.0, &["weevil-season-wait"]),
            (true, 12, -33.0, &["weevil-season-wait"]),
        ] {
            scene.grounds.weevil_area = weevils;
            scene.today = Day::from_ymd(2026, month, 15).unwrap();
            scene.palm.position = Some(Position { lat, lon: 0.0 });
            assert_eq!(codes(&super::RULE, &scene), said, "month {month} at {lat}");
        }
    }
}
