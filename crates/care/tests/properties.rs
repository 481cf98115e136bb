//! What must hold of every decision, whatever the crown.

extern crate spearleaf_care as care;
mod scene;

use care::{Settled, Verdict, decide, plan_from};
use crown::Cut;
use model::Metres;
use proptest::prelude::*;
use scene::Scene;

fn any_scene() -> impl Strategy<Value = Scene> {
    let species = prop::sample::select(vec![
        "Sabal palmetto",
        "Phoenix canariensis",
        "Roystonea regia",
        "Washingtonia filifera",
        "no such palm",
    ]);
    let counts = (
        0u32..60,
        0u32..15,
        0u32..40,
        0u32..30,
        prop::option::of(0u32..40),
    );
    let state = (0.0..0.6f64, 0.0..0.6f64, 10.0..60.0f64, 0.0..40.0f64);
    let around = (
        any::<[bool; 6]>(),
        prop::option::of(0.5..40.0f64),
        prop::option::of(0i32..120),
    );
    (species, counts, state, around).prop_map(|(species, counts, state, around)| {
        let mut scene = Scene::full(species);
        let crown = &mut scene.crown;
        (
            crown.green,
            crown.yellowing,
            crown.brown,
            crown.below_level,
            crown.regrowth,
        ) = counts;
        let (hunger, decline, full, pace) = state;
        // half of the crowns thrive, or live cuts would hardly ever be tried
        let ([thrives, moved, storm, weevils, freeze, held], wires, ago) = around;
        if !thrives {
            crown.probabilities = [(1.0 - hunger - decline).max(0.0), 0.0, hunger, decline];
            crown.full_crown = full;
            crown.counted_days_ago = ago;
            scene.grounds.storm_expected = storm;
            scene.grounds.weevil_area = weevils;
            scene.grounds.freeze_on = freeze.then(|| scene.today.plus(-9));
            scene.palm.wires = wires.map(Metres);
        } else {
            crown.full_crown = f64::from(crown.green + crown.yellowing);
        }
        scene.crown.fronds_per_year = pace;
        if moved && !thrives {
            scene.moved_days_ago(100);
        }
        if held && moved {
            scene.hold("keeper");
        }
        scene
    })
}

fn any_cut() -> impl Strategy<Value = Cut> {
    (0u32..70, 0u32..20, 0u32..50).prop_map(|(green, yellowing, brown)| Cut {
        green,
        yellowing,
        brown,
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_nearest_allowed_cut_is_allowed(scene in any_scene(), asked in any_cut()) {
        let first = decide(&scene.sight(), asked);
        let again = decide(&scene.sight(), first.allowed);
        prop_assert_eq!(again.verdict, Verdict::Allowed);
        prop_assert_eq!(again.allowed, first.allowed);
        prop_assert_eq!(first.verdict == Verdict::Allowed, first.allowed == asked);
        prop_assert!(first.verdict == Verdict::Allowed || !first.findings.is_empty());
    }

    #[test]
    fn less_than_an_allowed_cut_is_allowed(scene in any_scene(), asked in any_cut(), less in any_cut()) {
        let allowed = decide(&scene.sight(), asked).allowed;
        let less = Cut {
            green: allowed.green.min(less.green),
            yellowing: allowed.yellowing.min(less.yellowing),
            brown: allowed.brown.min(less.brown),
        };
        prop_assert_eq!(decide(&scene.sight(), less).verdict, Verdict::Allowed);
    }

    #[test]
    fn nothing_more_passes_than_was_asked_and_nothing_is_always_allowed(scene in any_scene(), asked in any_cut()) {
        let got = decide(&scene.sight(), asked).allowed;
        prop_assert!(got.green <= asked.green && got.yellowing <= asked.yellowing && got.brown <= asked.brown);
        prop_assert_eq!(decide(&scene.sight(), Cut::NONE).verdict, Verdict::Allowed);
    }

    #[test]
    fn a_plan_takes_nothing_live_and_agrees_with_the_answers(scene in any_scene()) {
        let plan = plan_from(1, &scene.sight());
        prop_assert_eq!(plan.may_take.live(), 0);
        prop_assert_eq!(decide(&scene.sight(), plan.may_take).verdict, Verdict::Allowed);
        prop_assert_eq!(decide(&scene.sight(), plan.if_asked).verdict, Verdict::Allowed);
        prop_assert_eq!(plan.if_asked.green + plan.must_stay.green, scene.crown.green);
        prop_assert_eq!(plan.if_asked.yellowing + plan.must_stay.yellowing, scene.crown.yellowing);
        let more = Cut { green: plan.if_asked.green + 1, ..plan.if_asked };
        let beyond = more.green <= scene.crown.green && plan.must_stay.green > 0;
        prop_assert!(!beyond || decide(&scene.sight(), more).verdict != Verdict::Allowed);
        if !plan.holds.is_empty() {
            prop_assert_eq!((plan.may_take, plan.if_asked), (Cut::NONE, Cut::NONE));
        }
    }

    #[test]
    fn live_fronds_go_only_within_every_limit(scene in any_scene(), asked in any_cut()) {
        let live = decide(&scene.sight(), asked).allowed.live();
        let crown = scene.crown;
        if live > 0 {
            prop_assert!(live <= crown.below_level && Some(live) <= crown.regrowth);
            let moved = matches!(crown.settled, Settled::NotYet { .. });
            prop_assert!(!moved);
            prop_assert!(f64::from(crown.live()) >= 0.9 * crown.full_crown);
            prop_assert!(crown.probabilities[2] <= 0.2 && crown.probabilities[3] <= 0.1);
            prop_assert!(scene.holds.is_empty() && !scene.grounds.storm_expected);
        }
    }

    #[test]
    fn an_over_trimming_is_never_called_partly(scene in any_scene(), asked in any_cut()) {
        if asked.live() > scene.crown.below_level {
            prop_assert_eq!(decide(&scene.sight(), asked).verdict, Verdict::Refused);
        }
    }
}

/// The strategies reach crowns that may lose live fronds; without this the properties could hold of nothing.
#[test]
fn the_example_crown_may_lose_live_fronds() {
    let scene = Scene::full("Sabal palmetto");
    let asked = Cut {
        green: 3,
        ..Cut::NONE
    };
    assert_eq!(decide(&scene.sight(), asked).verdict, Verdict::Allowed);
}
