//! Local rules against feeding: the months of the year in which it is barred.

use super::Analysis;
use model::{Day, NoFeeding};

/// Days after which a rule is taken to be in force all year, days.
const YEAR: i32 = 366;

/// The rules in force on a day.
pub fn barred_on(rules: &[NoFeeding], day: Day) -> impl Iterator<Item = &NoFeeding> {
    rules.iter().filter(move |rule| in_force(rule, day))
}

/// Whether a rule is in force on a day; it may run over the turn of the year.
fn in_force(rule: &NoFeeding, day: Day) -> bool {
    let (_, month, of_month) = day.ymd();
    let at = (month as u8, of_month as u8);
    if rule.from <= rule.to {
        rule.from <= at && at <= rule.to
    } else {
        at >= rule.from || at <= rule.to
    }
}

/// The first day on which a rule that is in force on a day is not in force any more.
pub fn free_again(rule: &NoFeeding, day: Day) -> Day {
    let days = (0..=YEAR).map(|n| day.plus(n));
    days.clone()
        .find(|day| !in_force(rule, *day))
        .unwrap_or(day.plus(YEAR))
}

/// Whether a rule bars a product. One whose contents nobody knows is barred: it may hold what the rule names.
pub fn bars(rule: &NoFeeding, analysis: Option<&Analysis>) -> bool {
    let Some(analysis) = analysis.filter(|_| !rule.nutrients.is_empty()) else {
        return true;
    };
    rule.nutrients.iter().any(|nutrient| {
        let share = match nutrient.trim().to_uppercase().as_str() {
            "N" => analysis.n,
            "P" => analysis.p2o5,
            "K" => analysis.k2o,
            _ => None,
        };
        share.is_none_or(|share| share > 0.0)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    fn rule(from: (u8, u8), to: (u8, u8), nutrients: &[&str]) -> NoFeeding {
        NoFeeding {
            from,
            to,
            nutrients: nutrients.iter().map(|n| (*n).to_owned()).collect(),
            rule: "an ordinance".to_owned(),
        }
    }

    #[test]
    fn a_rule_holds_from_its_first_to_its_last_day_and_over_the_turn_of_the_year() {
        let summer = rule((6, 1), (9, 30), &["N", "P"]);
        for (text, there) in [
            ("2026-05-31", false),
            ("2026-06-01", true),
            ("2026-09-30", true),
            ("2026-10-01", false),
        ] {
            let rules = [summer.clone()];
            assert_eq!(barred_on(&rules, day(text)).count() == 1, there, "{text}");
        }
        let winter = [rule((11, 15), (2, 28), &[])];
        for (text, there) in [
            ("2026-11-14", false),
            ("2026-12-31", true),
            ("2027-01-01", true),
            ("2027-03-01", false),
        ] {
            assert_eq!(barred_on(&winter, day(text)).count() == 1, there, "{text}");
        }
        assert_eq!(free_again(&summer, day("2026-07-04")), day("2026-10-01"));
        assert_eq!(free_again(&winter[0], day("2026-12-24")), day("2027-03-01"));
    }

    #[test]
    fn what_holds_nothing_of_the_barred_is_free_and_what_nobody_knows_is_not() {
        let np = rule((6, 1), (9, 30), &["N", "P"]);
        let free = Analysis::parse("0-0-16+6Mg").unwrap();
        let blend = Analysis::parse("8-0-12+4Mg").unwrap();
        assert!(!bars(&np, Some(&free)));
        assert!(bars(&np, Some(&blend)));
        assert!(bars(&np, None));
        assert!(bars(&rule((6, 1), (9, 30), &[]), Some(&free)));
    }
}
